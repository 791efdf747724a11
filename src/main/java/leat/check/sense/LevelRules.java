package leat.check.sense;

import leat.check.Rule;

/** The rules of the sender. */
public final class LevelRules {
  private LevelRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new StepsResolvable(),
      new LowAboveStep(),
      new IntakeSeen(),
      new FullSeen(),
      new StepUnderThirst(),
      new DipSeen(),
      new SenderFitted()
    };
  }
}
