package leat.check;

import leat.check.feed.CropsShare;
import leat.check.feed.MeterGuess;
import leat.check.feed.OxygenFits;
import leat.check.feed.TargetAboveWater;
import leat.check.feed.TargetInBand;

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
