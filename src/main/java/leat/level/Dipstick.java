package leat.level;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * A dipstick: volumes at even levels, from the lowest to the rim; and the size a tank needs for a
 * thirst and a time.
 *
 * <p>Source: {@link Tank}; arithmetic.
 */
public final class Dipstick {
  /** Most rows a dipstick has, so that a slip of the unit does not fill a disk. */
  public static final int MOST_ROWS = 20_000;

  /** A surface smaller than this has no slope worth giving, m2. */
  private static final double LEAST_AREA = 1e-12;

  /** A thirst smaller than this is none, m3/s. */
  private static final double LEAST_THIRST = 1e-15;

  /** A volume by which the rise of the level is told, m3. */
  public static final double POURED = 0.001;

  private Dipstick() {}

  /**
   * How far a little water lifts the level where the tank is as wide as here.
   *
   * @param levelPerVolume of a {@link Mark}, m/m3
   * @param poured m3, such as {@link #POURED}
   * @return m
   */
  public static double rise(double levelPerVolume, double poured) {
    return poured * levelPerVolume;
  }

  /**
   * One mark.
   *
   * @param level level, m
   * @param volume net volume to it, m3
   * @param aboveLow volume above that at the low mark, m3; negative below it, null when no low mark
   *     was given
   * @param area free surface, m2: a millimetre more is a thousandth of it in m3
   * @param levelPerVolume m of level a m3 brings here, the same number as mm a litre; null where
   *     the surface has no area (the point of a cone)
   */
  public record Mark(
      double level, double volume, Double aboveLow, double area, Double levelPerVolume) {}

  /**
   * The mark at a level.
   *
   * @param tank the tank
   * @param level level, m
   * @param low level of the low mark, m, or null for none
   * @throws Impossible if a level lies outside the tank
   */
  public static Mark at(Tank tank, double level, Double low) {
    double z = tank.checkedLevel(level);
    double volume = tank.volume(z);
    double area = tank.area(z);
    return new Mark(
        z,
        volume,
        low == null ? null : Double.valueOf(volume - tank.volume(low)),
        area,
        area > LEAST_AREA ? Double.valueOf(1 / area) : null);
  }

  /**
   * Marks at the lowest known level, at each multiple of a step above it, and at the rim.
   *
   * @param tank the tank
   * @param every the step, m
   * @param low level of the low mark, m, or null for none
   * @throws Impossible if the step is not above 0 or makes over {@link #MOST_ROWS} marks
   */
  public static List<Mark> marks(Tank tank, double every, Double low) {
    List<Mark> marks = new ArrayList<>();
    for (double level : steps(tank.lowestLevel(), tank.height(), every)) {
      marks.add(at(tank, level, low));
    }
    return marks;
  }

  /**
   * Marks at even volumes: the lowest volume, each multiple of a step above it, and the rim.
   *
   * @param tank the tank
   * @param every the step, m3
   * @param low level of the low mark, m, or null for none
   * @throws Impossible if the step is not above 0 or makes over {@link #MOST_ROWS} marks
   */
  public static List<Mark> marksByVolume(Tank tank, double every, Double low) {
    double[] volumes = steps(tank.lowestVolume(), tank.capacity(), every);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < volumes.length; i++) {
      boolean end = i == 0 || i == volumes.length - 1;
      double level = i == 0 ? tank.lowestLevel() : end ? tank.height() : tank.level(volumes[i]);
      marks.add(at(tank, level, low));
    }
    return marks;
  }

  /** The two ends of a span and each multiple of a step between them. */
  private static double[] steps(double bottom, double top, double every) {
    Impossible.unlessPositive("every", every);
    if ((top - bottom) / every > MOST_ROWS) {
      throw new Impossible(
          "every",
          "that makes over "
              + MOST_ROWS
              + " marks; a stick is read to a tenth of a millimetre at best");
    }
    long first = (long) Math.floor(bottom / every * (1 + Tank.ROUNDING)) + 1;
    int between = 0;
    while ((first + between) * every < top * (1 - Tank.ROUNDING)) {
      between++;
    }
    double[] steps = new double[between + 2];
    steps[0] = bottom;
    for (int i = 1; i <= between; i++) {
      steps[i] = (first + i - 1) * every;
    }
    steps[between + 1] = top;
    return steps;
  }

  /**
   * The finest even step of 1, 2 or 5 times a power of ten units that makes at most so many marks.
   *
   * @param span what is marked, in the base unit
   * @param most most marks
   * @param unit the unit that the step is even in, in the base unit: 0.001 for mm
   * @throws Impossible if the span or the unit is not above 0, or no mark is allowed
   */
  public static double evenStep(double span, int most, double unit) {
    Impossible.unlessPositive("span", span);
    Impossible.unlessPositive("unit", unit);
    Impossible.unlessPositive("marks", most);
    double ten = Math.pow(10, Math.floor(Math.log10(span / most / unit)));
    double[] even = {1, 2, 5};
    for (double times : even) {
      if (times * ten * unit * most >= span * (1 - Tank.ROUNDING)) {
        return times * ten * unit;
      }
    }
    return 10 * ten * unit;
  }

  /**
   * Volume between two levels.
   *
   * @param tank the tank
   * @param from lower level, m
   * @param to upper level, m
   * @return volume, m3; negative when {@code from} is the higher
   * @throws Impossible if a level lies outside the tank
   */
  public static double between(Tank tank, double from, double to) {
    return tank.volume(to) - tank.volume(from);
  }

  /**
   * What a thirst over a time asks of a tank.
   *
   * @param drunk volume drunk in that time, m3
   * @param unusable volume below the low mark, m3
   * @param needed both together, m3: what the tank must hold at its full mark
   * @param fits whether the tank holds it below its full mark
   * @param level level of the needed volume, m; null when it lies above the rim
   * @param lasts time the tank lasts from full to low at that thirst, s; null when there is none
   * @param scale factor on every length of the tank (low and full mark too) by which the same shape
   *     has just enough: cube root of drunk over the volume between low and full
   */
  public record Need(
      double drunk,
      double unusable,
      double needed,
      boolean fits,
      Double level,
      Double lasts,
      double scale) {}

  /**
   * The size needed for a thirst and a time.
   *
   * @param tank the tank
   * @param low level of the low mark, m
   * @param full level of the full mark, m, above low
   * @param thirst volume drunk a second, m3/s
   * @param time how long, s
   * @throws Impossible if full is not above low, or thirst or time are negative
   */
  public static Need need(Tank tank, double low, double full, double thirst, double time) {
    Impossible.unlessWithin("thirst", thirst, 0, 1000, "it must lie from 0 to 1000 m3/s");
    Impossible.unlessWithin("days", time, 0, 1e10, "it must lie from 0 to 300 years");
    double unusable = tank.volume(low);
    double usable = tank.volume(full) - unusable;
    if (!(usable > LEAST_AREA)) {
      throw new Impossible("full", "the full mark must lie above the low mark");
    }
    double drunk = thirst * time;
    double needed = unusable + drunk;
    return new Need(
        drunk,
        unusable,
        needed,
        drunk <= usable * (1 + Tank.ROUNDING),
        needed <= tank.capacity() ? Double.valueOf(tank.level(needed)) : null,
        thirst > LEAST_THIRST ? Double.valueOf(usable / thirst) : null,
        Math.cbrt(drunk / usable));
  }
}
