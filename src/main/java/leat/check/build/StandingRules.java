package leat.check.build;

import leat.check.Rule;

/** The rules of standing and building: wind, lines, pots, deck. */
public final class StandingRules {
  private StandingRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new WindTip(),
      new WindSlide(),
      new WindLid(),
      new WindJoint(),
      new WindLine(),
      new GuyAnchor(),
      new PotsFit(),
      new SameColumnSpacing(),
      new DeckHolds()
    };
  }
}
