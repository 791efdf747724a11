package leat.check;

/** The rules of the sender. */
final class LevelRules {
  private LevelRules() {}

  /** In the order they are shown. */
  static Rule[] all() {
    return new Rule[] {
      new StepsResolvable(),
      new LowAboveStep(),
      new IntakeSeen(),
      new SenderBlind(),
      new StepAgainstThirst(),
      new DipSeen(),
      new SenderGuess()
    };
  }
}
