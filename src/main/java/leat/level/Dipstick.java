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
   * How far {@link #POURED} lifts the level where the tank is as wide as here.
   *
   * @param levelPerVolume of a {@link Mark}, m/m3
   * @return m
   */
  public static double rise(double levelPerVolume) {
    return POURED * levelPerVolume;
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
    Impossible.unlessPositive("every", every);
    double bottom = tank.lowestLevel();
    double top = tank.height();
    if ((top - bottom) / every > MOST_ROWS) {
      throw new Impossible(
          "every",
          "that makes over "
              + MOST_ROWS
              + " marks; a stick is read to a tenth of a millimetre at best");
    }
    List<Mark> marks = new ArrayList<>();
    marks.add(at(tank, bottom, low));
    long k = (long) Math.floor(bottom / every * (1 + Tank.ROUNDING)) + 1;
    for (; k * every < top * (1 - Tank.ROUNDING); k++) {
      marks.add(at(tank, k * every, low));
    }
    marks.add(at(tank, top, low));
    return marks;
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
