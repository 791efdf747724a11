package leat.check.season;

import leat.check.Rule;

/** The rules of the season. */
public final class SeasonRules {
  private SeasonRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new SeasonDry(),
      new SeasonEcHigh(),
      new SeasonEcLow(),
      new SeasonOverflow(),
      new AwayDry(),
      new TankWarm(),
      new FrostPipes()
    };
  }
}
