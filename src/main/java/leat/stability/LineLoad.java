package leat.stability;

import leat.numeric.Impossible;

/**
 * What guy lines see, pull from the worst side.
 *
 * <p>Source: {@link GuyLines}.
 *
 * @param moment about the anchors' plane that the lines hold, N m
 * @param ringPull level pull on the ring, N
 * @param tension of the worst line, N
 * @param pegLevel level pull on its peg, N
 * @param pegUplift upward pull on its peg, N
 * @param footLoad most that the lines press on the foot, N
 */
public record LineLoad(
    double moment,
    double ringPull,
    double tension,
    double pegLevel,
    double pegUplift,
    double footLoad) {

  /** Breaking load to buy: knots and anchor too, N. */
  public double breakingNeeded() {
    return tension / GuyLines.BREAKING_SHARE;
  }

  /**
   * What a line, its knots and its anchor may see.
   *
   * @param breaking load at which it breaks, N, above 0
   * @return N
   * @throws Impossible if not above 0
   */
  public static double mayPull(double breaking) {
    return GuyLines.BREAKING_SHARE * Impossible.unlessPositive("breaking load", breaking);
  }

  /** Share used of what a line that breaks at {@code breaking} N may see, -: 1 is the limit. */
  public double utilisation(double breaking) {
    return breakingNeeded() / Impossible.unlessPositive("breaking load", breaking);
  }
}
