package leat.check.feed;

import leat.check.Rule;

/** The rules of water, acid and stock bottles. */
public final class SolutionRules {
  private SolutionRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new WaterAlkalinity(), new ChangeInterval(), new PartsCompatible(), new AcidHousehold()
    };
  }
}
