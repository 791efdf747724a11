package leat.sweep;

import java.math.BigInteger;
import java.util.List;
import leat.plan.Refused;
import org.hipparchus.random.HaltonSequenceGenerator;

/**
 * The designs of some axes in order: every combination, the last key quickest; or a sample of a
 * Halton sequence shifted by a seed; or rows that were given.
 */
public final class Grid {
  /** More designs than this want {@code --yes}. */
  public static final long MOST_UNASKED = 100_000_000L;

  /** Step between the states of a stream of numbers (SplitMix64). */
  static final long GOLDEN = 0x9E3779B97F4A7C15L;

  private final List<Axis> axes;
  private final long size;
  private final boolean sampled;
  private final boolean rows;
  private final double[] shift;

  /** One generator a thread: it is cheap to move on, dear to make. */
  private final ThreadLocal<HaltonSequenceGenerator> halton;

  private Grid(List<Axis> axes, long size, boolean sampled, boolean rows, double[] shift) {
    this.axes = axes;
    this.size = size;
    this.sampled = sampled;
    this.rows = rows;
    this.shift = shift;
    this.halton = ThreadLocal.withInitial(() -> new HaltonSequenceGenerator(axes.size()));
  }

  /** Every combination. */
  public static Grid full(List<Axis> axes, boolean yes) {
    BigInteger size = BigInteger.ONE;
    for (Axis axis : axes) {
      if (axis.isSampled()) {
        throw new Refused(SweepErrors.noSample(axis.path()));
      }
      size = size.multiply(BigInteger.valueOf(axis.size()));
    }
    boolean much = size.compareTo(BigInteger.valueOf(MOST_UNASKED)) > 0;
    if (much && !yes || size.bitLength() > 62) {
      throw new Refused(SweepErrors.tooManyDesigns(size.toString()));
    }
    return new Grid(axes, size.longValue(), false, false, null);
  }

  /** A sample: numbers between ends, or one of the values listed. */
  public static Grid sample(List<Axis> axes, long designs, long seed, boolean yes) {
    if (designs > MOST_UNASKED && !yes) {
      throw new Refused(SweepErrors.tooManyDesigns(String.valueOf(designs)));
    }
    double[] shift = new double[axes.size()];
    long state = seed;
    for (int i = 0; i < shift.length; i++) {
      state += GOLDEN;
      shift[i] = unit(state);
    }
    return new Grid(axes, designs, true, false, shift);
  }

  /** The axes side by side: row after row. */
  public static Grid rows(List<Axis> axes) {
    return new Grid(axes, axes.isEmpty() ? 0 : axes.get(0).size(), false, true, null);
  }

  /** A number from 0 to 1 of a 64-bit state (the finaliser of SplitMix64, Steele et al. 2014). */
  static double unit(long state) {
    long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) >>> 11) * 0x1.0p-53;
  }

  /** Its axes. */
  public List<Axis> axes() {
    return axes;
  }

  /** Number of designs. */
  public long size() {
    return size;
  }

  /** A design: which value of each axis, or for a sampled axis its number. */
  public Design design(long index) {
    int n = axes.size();
    int[] at = new int[n];
    double[] numbers = new double[n];
    if (sampled) {
      draw(halton.get().skipTo((int) index), at, numbers);
      return new Design(index, at, numbers);
    }
    long rest = index;
    for (int i = n - 1; i >= 0; i--) {
      at[i] = rows ? (int) index : (int) (rest % axes.get(i).size());
      rest = rows ? rest : rest / axes.get(i).size();
      numbers[i] = axes.get(i).isNumber() ? axes.get(i).number(at[i]) : Double.NaN;
    }
    return new Design(index, at, numbers);
  }

  private void draw(double[] point, int[] at, double[] numbers) {
    for (int i = 0; i < at.length; i++) {
      double u = point[i] + shift[i];
      u -= Math.floor(u);
      Axis axis = axes.get(i);
      if (axis.isSampled()) {
        numbers[i] = axis.number(0) + u * (axis.number(1) - axis.number(0));
        at[i] = -1;
      } else {
        at[i] = (int) (u * axis.size());
        numbers[i] = axis.isNumber() ? axis.number(at[i]) : Double.NaN;
      }
    }
  }

  /** What stands in the column of an axis for a design. */
  public String typed(Design design, int axis) {
    int at = design.at()[axis];
    return at < 0 ? axes.get(axis).typed(design.numbers()[axis]) : axes.get(axis).typed(at);
  }
}
