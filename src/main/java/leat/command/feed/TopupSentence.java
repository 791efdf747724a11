package leat.command.feed;

import leat.solution.tank.Topup;
import leat.solution.tank.TopupBand;

/** What is done, in order, in one sentence: drain, water, feed. */
final class TopupSentence {
  private TopupSentence() {}

  /** What is drained leaves room either for water or for feed: both are never wanted then. */
  static String of(Topup.Answer one) {
    boolean water = one.waterL() > 0;
    boolean feed = one.concentrateMl() > 0;
    if (one.drainsACup()) {
      return water
          ? "Take out a cup first ({drain_mL}), then add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}."
          : cup(feed);
    }
    if (!one.drainsNothing()) {
      return water
          ? "Drain {drain_L}, then add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. It needs no feed."
          : drain(feed);
    }
    return water ? added(feed) : undiluted(feed);
  }

  private static String cup(boolean feed) {
    return feed
        ? "Take out a cup first ({drain_mL}), then add {concentrate_mL} of feed: {final_volume_L} at {final_ec_mS_cm}."
        : "Take out a cup ({drain_mL}) and add nothing: {final_volume_L} at {final_ec_mS_cm}.";
  }

  private static String drain(boolean feed) {
    return feed
        ? "Drain {drain_L}, then add {concentrate_mL} of feed: {final_volume_L} at {final_ec_mS_cm}."
        : "Drain {drain_L} and add nothing: {final_volume_L} at {final_ec_mS_cm}.";
  }

  private static String added(boolean feed) {
    return feed
        ? "Add {water_L} of water and {concentrate_mL} of feed: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
        : "Add {water_L} of water: {final_volume_L} at {final_ec_mS_cm}. Drain nothing.";
  }

  private static String undiluted(boolean feed) {
    return feed
        ? "Add {concentrate_mL} of feed: {final_volume_L} at {final_ec_mS_cm}. Drain nothing."
        : "Nothing to do: {final_volume_L} at {final_ec_mS_cm}.";
  }

  static String of(TopupBand band) {
    boolean feed = band.concentrateHighMl() > 0;
    if (band.drainHighL() > 0 && band.drainLowL() == 0) {
      return feed
          ? "Drain up to {drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then pour {concentrate_low_mL..concentrate_high_mL} of feed."
          : "Drain up to {drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no feed.";
    }
    if (band.drainHighL() > 0) {
      return feed
          ? "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure; then pour {concentrate_low_mL..concentrate_high_mL} of feed."
          : "Drain {drain_low_L..drain_high_L}, fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no feed.";
    }
    return feed
        ? "Fill to the mark, stir, measure, dose: {water_low_L..water_high_L} of water, then {concentrate_low_mL..concentrate_high_mL} of feed."
        : "Fill to the mark with {water_low_L..water_high_L} of water, stir and measure: it needs no feed.";
  }
}
