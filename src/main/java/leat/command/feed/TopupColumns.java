package leat.command.feed;

import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupBand;

/** The columns of {@code leat topup} and how its results fill them. */
final class TopupColumns {
  static final Column STATUS = Column.plain("status", "status");
  static final Column DRAIN = Column.of("drain_L", "drain", Show.L);
  static final Column WATER = Column.of("water_L", "water", Show.L);
  static final Column FEED = Column.of("concentrate_mL", "feed", Show.ML);
  static final Column FINAL_VOLUME = Column.of("final_volume_L", "then in all", Show.L);
  static final Column FINAL_EC = Column.of("final_ec_mS_cm", "EC then", Show.MS_CM);
  static final Column FULL = Column.of("full_L", "full", Show.L);
  static final Column NEAREST = Column.of("nearest_ec_mS_cm", "nearest EC", Show.MS_CM);
  static final Column PLAIN = Column.of("plain_water_ec_mS_cm", "plain water alone", Show.MS_CM);
  static final Column PART = Column.of("part_mL", "of each bottle", Show.ML);
  static final Column RAINED = Column.of("after_rain_L", "after the rain", Show.L);
  static final Column RAINED_EC = Column.of("after_rain_ec_mS_cm", "its EC", Show.MS_CM);
  static final Column OVERFLOW = Column.of("rain_overflow_L", "ran over", Show.L);
  static final Column CANS = Column.plain("cans", "cans");
  static final Column LAST_CAN = Column.of("last_can_L", "in the last can", Show.L);
  static final Column TARGET = Column.of("target_ec_mS_cm", "wanted", Show.MS_CM);
  static final Column WATER_EC = Column.of("water_ec_mS_cm", "the water's EC", Show.MS_CM);
  static final Column KEEP = Column.of("keep_L", "left after draining", Show.L);
  static final Column SENDER = Column.plain("sender_status", "sender");
  static final Column VOLUME_LOW = Column.of("volume_low_L", "at least", Show.L);
  static final Column VOLUME_HIGH = Column.of("volume_high_L", "at most", Show.L);
  static final Column DRAIN_LOW = Column.of("drain_low_L", "drain at least", Show.L);
  static final Column DRAIN_HIGH = Column.of("drain_high_L", "drain at most", Show.L);
  static final Column WATER_LOW = Column.of("water_low_L", "water at least", Show.L);
  static final Column WATER_HIGH = Column.of("water_high_L", "water at most", Show.L);
  static final Column FEED_LOW = Column.of("concentrate_low_mL", "feed at least", Show.ML);
  static final Column FEED_HIGH = Column.of("concentrate_high_mL", "feed at most", Show.ML);
  static final Column IF_LOW =
      Column.of("mid_recipe_volume_if_low_L", "if it is the least", Show.L);
  static final Column IF_LOW_EC =
      Column.of("mid_recipe_ec_if_low_mS_cm", "EC if it is the least", Show.MS_CM);
  static final Column IF_HIGH =
      Column.of("mid_recipe_volume_if_high_L", "if it is the most", Show.L);
  static final Column IF_HIGH_EC =
      Column.of("mid_recipe_ec_if_high_mS_cm", "EC if it is the most", Show.MS_CM);

  private static final Column[] ONE = {
    DRAIN,
    WATER,
    FEED,
    FINAL_VOLUME,
    FINAL_EC,
    STATUS,
    FULL,
    NEAREST,
    PLAIN,
    PART,
    RAINED,
    RAINED_EC,
    OVERFLOW,
    CANS,
    LAST_CAN,
    TARGET,
    WATER_EC,
    KEEP
  };
  private static final Column[] BAND = {
    SENDER,
    VOLUME_LOW,
    VOLUME_HIGH,
    DRAIN_LOW,
    DRAIN_HIGH,
    WATER_LOW,
    WATER_HIGH,
    FEED_LOW,
    FEED_HIGH,
    IF_LOW,
    IF_LOW_EC,
    IF_HIGH,
    IF_HIGH_EC
  };

  /** What the text alone tells: the drain as a cup. */
  static final Column CUP = Column.of("drain_mL", "drain", Show.ML);

  private TopupColumns() {}

  /** The columns of one answer: with a band or without, and a column for each unequal bottle. */
  static Column[] of(boolean band, LabelRate feed) {
    Column[] bottles = feed.columns();
    Column[] bands = band ? BAND : new Column[0];
    Column[] all = java.util.Arrays.copyOf(ONE, ONE.length + bands.length + bottles.length);
    System.arraycopy(bands, 0, all, ONE.length, bands.length);
    System.arraycopy(bottles, 0, all, ONE.length + bands.length, bottles.length);
    return all;
  }

  /** One answer, in a row of these columns. */
  static void fill(Row row, Column[] columns, TopupAsked asked, Topup.Answer one) {
    row.set(STATUS, one.status().word)
        .set(DRAIN, Litres.base(one.drainL()))
        .set(WATER, Litres.base(one.waterL()))
        .set(FEED, Litres.baseOfMl(one.concentrateMl()))
        .set(FINAL_VOLUME, Litres.base(one.finalVolumeL()))
        .set(FINAL_EC, one.finalEcMsCm())
        .set(FULL, asked.full)
        .set(NEAREST, one.nearestEcMsCm())
        .set(PLAIN, one.plainWaterEcMsCm())
        .set(RAINED, Litres.base(one.afterRainL()))
        .set(RAINED_EC, one.afterRainEcMsCm())
        .set(OVERFLOW, Litres.base(one.rainOverflowL()))
        .set(TARGET, asked.target)
        .set(WATER_EC, asked.waterEc)
        .set(KEEP, Litres.base(one.keptL()));
    if (one.reached()) {
      poured(row, columns, asked, one);
    }
  }

  private static void poured(Row row, Column[] columns, TopupAsked asked, Topup.Answer one) {
    asked.feed.fill(row, PART, columns, asked.feed.parts.split(one.concentrateMl()));
    CansText.fill(row, asked.cans(one.waterL()));
  }

  /** The ends of a band. */
  static void fillBand(Row row, TopupBand band, Held held) {
    row.set(SENDER, held.status())
        .set(VOLUME_LOW, held.low)
        .set(VOLUME_HIGH, held.high)
        .set(DRAIN_LOW, Litres.base(band.drainLowL()))
        .set(DRAIN_HIGH, Litres.base(band.drainHighL()))
        .set(WATER_LOW, Litres.base(band.waterLowL()))
        .set(WATER_HIGH, Litres.base(band.waterHighL()))
        .set(FEED_LOW, Litres.baseOfMl(band.concentrateLowMl()))
        .set(FEED_HIGH, Litres.baseOfMl(band.concentrateHighMl()))
        .set(IF_LOW, Litres.base(band.middleVolumeIfLowL()))
        .set(IF_LOW_EC, band.middleEcIfLowMsCm())
        .set(IF_HIGH, Litres.base(band.middleVolumeIfHighL()))
        .set(IF_HIGH_EC, band.middleEcIfHighMsCm());
  }

  /** What the text alone tells beside a row. */
  static Row aside(Topup.Answer one) {
    return Row.aside(CUP).set(CUP, Litres.base(one.drainL()));
  }
}
