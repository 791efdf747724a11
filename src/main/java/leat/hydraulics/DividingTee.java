package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * A 90 degree tee of equal bores that divides the flow; y is the branch's share. K on the velocity
 * of the combined flow.
 *
 * <pre>
 * branch (1 + 0.3 y^2)(1 + 0.3 y^2);   run 2 y^2 (2y - 1) for y &lt;= 0.5, else 0.3 y^2 (2y - 1)
 * </pre>
 *
 * <p>Source: Crane TP-410 (2009). Check values: hydraulics-fittings.csv.
 */
public final class DividingTee {
  private DividingTee() {}

  /**
   * Into the branch.
   *
   * @param branchShare y, -, 0 to 1
   * @return K, -
   * @throws Impossible outside
   */
  public static double branch(double branchShare) {
    double y = accept(branchShare);
    double k = 1 + 0.3 * y * y;
    return k * k;
  }

  /**
   * Straight through; may be a gain (below 0).
   *
   * @param branchShare y, -, 0 to 1
   * @return K, -
   * @throws Impossible outside
   */
  public static double run(double branchShare) {
    double y = accept(branchShare);
    return (y <= 0.5 ? 2 : 0.3) * y * y * (2 * y - 1);
  }

  private static double accept(double y) {
    return Impossible.unlessWithin("share", y, 0, 1, "a share is between 0 and 100 %");
  }
}
