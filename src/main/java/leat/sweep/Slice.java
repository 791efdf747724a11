package leat.sweep;

import leat.plan.Refused;

/**
 * One of several blocks of designs that follow each other: the i-th of n.
 *
 * @param i from 1
 * @param n how many
 */
public record Slice(long i, long n) {
  /** The whole. */
  public static final Slice WHOLE = new Slice(1, 1);

  /**
   * A typed slice such as 2/4.
   *
   * @throws Refused when it is none
   */
  public static Slice of(String typed) {
    int at = typed.indexOf('/');
    try {
      Slice slice =
          new Slice(
              Long.parseLong(typed.substring(0, Math.max(0, at)).strip()),
              Long.parseLong(typed.substring(at + 1).strip()));
      if (slice.i >= 1 && slice.i <= slice.n) {
        return slice;
      }
    } catch (NumberFormatException e) {
      throw new Refused(SweepErrors.badSlice(typed));
    }
    throw new Refused(SweepErrors.badSlice(typed));
  }

  /** First design of it. */
  public long from(long size) {
    return share(i - 1, size);
  }

  /** The design behind its last. */
  public long to(long size) {
    return share(i, size);
  }

  private long share(long block, long size) {
    return block * (size / n) + Math.min(block, size % n);
  }

  /** Whether it is the first, which has the header. */
  public boolean isFirst() {
    return i == 1;
  }
}
