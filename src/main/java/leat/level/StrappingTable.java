package leat.level;

import leat.numeric.Impossible;
import leat.numeric.MonotoneCubic;

/**
 * A tank known by its measured volumes at several levels (a strapping table, a dipstick): straight
 * between the points, or a monotone cubic through them. It is not drawn out beyond its ends.
 *
 * <p>Straight is the honest default; the monotone cubic follows a smooth wall better when the
 * points lie far apart.
 *
 * <p>Source: linear interpolation; {@link MonotoneCubic} (Fritsch and Butland 1984, as SciPy's
 * pchip). Check values: sheets level-strapping.csv and level-tank-volume.csv.
 */
public final class StrappingTable implements Tank {
  /** How the table is read between its points. */
  public enum Between {
    /** Straight. */
    LINEAR,
    /** A monotone cubic. */
    MONOTONE_CUBIC
  }

  private final double[] level;
  private final double[] volume;
  private final MonotoneCubic cubic;

  /**
   * @param levels levels, m, at least two, not negative, strictly rising
   * @param volumes volumes to them, m3, not negative, strictly rising
   * @param between how to read between the points
   * @throws Impossible if levels or volumes do not rise, or there are fewer than two points
   */
  public StrappingTable(double[] levels, double[] volumes, Between between) {
    if (levels.length < 2 || levels.length != volumes.length) {
      throw new Impossible("table", "at least two points are needed, a level and a volume each");
    }
    Accepted.sizeOrZero("table", levels[0]);
    Accepted.volumeOrZero("table", volumes[0]);
    for (int i = 1; i < levels.length; i++) {
      if (!(levels[i] > levels[i - 1])) {
        throw new Impossible("table", "its levels must rise from point to point");
      }
      if (!(volumes[i] > volumes[i - 1])) {
        throw new Impossible("table", "its volumes must rise from point to point");
      }
      Accepted.size("table", levels[i]);
      Accepted.size("table", levels[i] - levels[i - 1]);
      Accepted.volume("table", volumes[i]);
      Accepted.volume("table", volumes[i] - volumes[i - 1]);
    }
    this.level = levels.clone();
    this.volume = volumes.clone();
    this.cubic = between == Between.MONOTONE_CUBIC ? new MonotoneCubic(level, volume) : null;
  }

  @Override
  public double[] kinks() {
    return level.clone();
  }

  @Override
  public double height() {
    return level[level.length - 1];
  }

  @Override
  public double lowestLevel() {
    return level[0];
  }

  @Override
  public double lowestVolume() {
    return volume[0];
  }

  @Override
  public double capacity() {
    return volume[volume.length - 1];
  }

  @Override
  public double volume(double at) {
    double z = checkedLevel(at);
    if (cubic != null) {
      return cubic.value(z);
    }
    int k = Inverse.stretch(level, z);
    return volume[k] + (volume[k + 1] - volume[k]) * ((z - level[k]) / (level[k + 1] - level[k]));
  }

  @Override
  public double area(double at) {
    double z = checkedLevel(at);
    if (cubic != null) {
      return cubic.slope(z);
    }
    int k = Inverse.stretch(level, z);
    return (volume[k + 1] - volume[k]) / (level[k + 1] - level[k]);
  }

  @Override
  public double level(double net) {
    double v = checkedVolume(net);
    int k = Inverse.stretch(volume, v);
    if (cubic != null) {
      return Inverse.level(this, v, level[k], level[k + 1]);
    }
    return Math.min(
        level[k] + (level[k + 1] - level[k]) * ((v - volume[k]) / (volume[k + 1] - volume[k])),
        level[k + 1]);
  }
}
