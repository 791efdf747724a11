package leat.check.feed;

import leat.check.Rule;

/** The rules of the feed: crops, target, oxygen, meters. */
public final class FeedRules {
  private FeedRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new CropsShare(),
      new TargetInBand(),
      new TargetAboveWater(),
      new OxygenFits(),
      new MetersChecked()
    };
  }
}
