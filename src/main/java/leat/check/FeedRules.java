package leat.check;

/** The rules of the feed: crops, target, oxygen, meters. */
final class FeedRules {
  private FeedRules() {}

  /** In the order they are shown. */
  static Rule[] all() {
    return new Rule[] {
      new CropsShare(),
      new TargetInBand(),
      new TargetAboveWater(),
      new OxygenFits(),
      new MeterGuess()
    };
  }
}
