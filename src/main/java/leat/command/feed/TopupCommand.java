package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.sense.LevelColumns;
import leat.command.sense.SenderReading;
import leat.level.Divider;
import leat.level.Reading;
import leat.level.Status;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Span;
import leat.solution.tank.Cans;
import leat.solution.tank.FeedParts;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupAsk;
import leat.solution.tank.TopupBand;
import leat.system.ConcentrateOf;
import leat.system.SenderOf;
import leat.system.TankOf;

/** {@code leat topup}: what to drain and add to reach a volume and an EC. */
public final class TopupCommand extends Command {
  static final Column STATUS = Column.plain("status", "status");
  static final Column DRAIN = Column.of("drain_L", "drain", Show.L);
  static final Column WATER = Column.of("water_L", "water", Show.L);
  static final Column FEED = Column.of("concentrate_mL", "feed", Show.ML);
  static final Column FINAL_VOLUME = Column.of("final_volume_L", "full", Show.L);
  static final Column FINAL_EC = Column.of("final_ec_mS_cm", "EC then", Show.MS_CM);
  static final Column FULL = Column.of("full_L", "full", Show.L);
  static final Column NEAREST = Column.of("nearest_ec_mS_cm", "nearest EC", Show.MS_CM);
  static final Column PLAIN = Column.of("plain_water_ec_mS_cm", "plain water alone", Show.MS_CM);
  static final Column PART = Column.of("part_mL", "of each part", Show.ML);
  static final Column RAINED = Column.of("after_rain_L", "after the rain", Show.L);
  static final Column RAINED_EC = Column.of("after_rain_ec_mS_cm", "its EC", Show.MS_CM);
  static final Column OVERFLOW = Column.of("rain_overflow_L", "ran over", Show.L);
  static final Column CANS = Column.plain("cans", "cans");
  static final Column LAST_CAN = Column.of("last_can_L", "in the last can", Show.L);
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
  static final Column IF_LOW_EC = Column.of("mid_recipe_ec_if_low_mS_cm", "EC then", Show.MS_CM);
  static final Column IF_HIGH =
      Column.of("mid_recipe_volume_if_high_L", "if it is the most", Show.L);
  static final Column IF_HIGH_EC = Column.of("mid_recipe_ec_if_high_mS_cm", "EC then", Show.MS_CM);

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
    LAST_CAN
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

  private static final Kind VOLUME = Kind.quantity(Dimension.VOLUME);
  private static final Kind EC = Kind.quantity(Dimension.EC);

  @Override
  public String name() {
    return "topup";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.VOLUMES,
          "31 L",
          "what is in the tank; a band as 28..34 L when a stepped sender reads it"),
      Flag.of(
          "--reading",
          "OHM",
          Kind.TEXT,
          "119",
          "instead of a volume, what the plan's sender reads, with the pump off"),
      Flag.on("--counts", "the reading is counts of the ADC, through sender.divider"),
      Flag.of(
          "--motion",
          "WAY",
          Kind.choice("unknown", "rising", "falling"),
          "falling",
          "which way the level has moved since the reading last changed"),
      Flag.of("--ec", "EC", EC, "2.1 mS/cm", "its EC at 25 C"),
      Flag.of("--full", "VOLUME", VOLUME, "45 L", "litres at the full mark; the plan's otherwise"),
      Flag.of("--target", "EC", EC, "1.6 mS/cm", "EC aimed at").sets("target.ec"),
      Flag.of("--water-ec", "EC", EC, "0.3 mS/cm", "EC of the water poured").sets("water.ec"),
      Flag.of(
          "--rate",
          "RATE",
          Kind.quantity(Dimension.VOLUME_RATIO),
          "5 mL/L",
          "label rate, all parts together"),
      Flag.of("--rate-ec", "EC", EC, "1.9 mS/cm", "what that rate adds to pure water")
          .sets("feed.rate_ec"),
      Flag.of("--parts", "N", Kind.COUNT, "2", "equal bottles that share the rate"),
      Flag.of("--rain", "VOLUME", VOLUME, "3 L", "rain that has fallen in since the reading"),
      Flag.of(
          "--rainfall",
          "DEPTH",
          Kind.quantity(Dimension.LENGTH),
          "12 mm",
          "the same by a rain gauge, over tank.rain_area of the plan"),
      Flag.of("--rain-ec", "EC", EC, "0.03 mS/cm", "EC of the rain").sets("rain.ec"),
      Flag.of("--can", "VOLUME", VOLUME, "10 L", "biggest can: splits the water")
          .sets("season.catch"),
    };
  }

  /** What is in the tank, m3: one volume, or a band. */
  private static final class Held {
    final double low;
    final double middle;
    final double high;
    final Reading reading;

    Held(double low, double middle, double high, Reading reading) {
      this.low = low;
      this.middle = middle;
      this.high = high;
      this.reading = reading;
    }

    boolean isBand() {
      return reading != null || high > low;
    }
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    FeedParts feed = feed(call);
    if (call.has("--reading")) {
      Reading reading = reading(call);
      if (!reading.hasBand()) {
        return fault(call, feed, reading);
      }
      return answer(
          call,
          plan,
          feed,
          new Held(reading.volumeLow(), reading.volume(), reading.volumeHigh(), reading));
    }
    return answer(call, plan, feed, volume(call));
  }

  private Answer answer(Call call, Plan plan, FeedParts feed, Held held) {
    TopupAsk ask = ask(call, held, feed);
    boolean band = held.isBand();
    Answer answer = new Answer(columns(band, feed));
    TopupBand solved =
        band ? TopupBand.solve(ask, Litres.of(held.low), Litres.of(held.high)) : null;
    Topup.Answer one = band ? solved.middle() : Topup.solve(ask);
    Row row = row(answer, one, feed).set(FULL, Litres.base(ask.fullL()));
    Cans cans = cans(plan, one, row);
    if (band) {
      bandRow(row, solved, held);
    }
    if (!one.reached()) {
      refusal(answer, row, ask, one);
    } else if (band) {
      bandText(answer, row, solved, ask, held);
    } else {
      text(answer, row, one, ask);
    }
    figures(call, answer, row, one, solved, feed, cans);
    workings(answer, ask, one);
    call.withTaken(answer);
    if (held.reading != null) {
      readingMinds(answer, plan, held.reading);
    }
    minds(answer, ask, one, solved);
    next(call, answer, one, band);
    return one.reached() ? answer : answer.no();
  }

  private Reading reading(Call call) {
    if (call.has("--volume")) {
      throw new Refused(CommandErrors.notBoth(this, "--volume", "--reading"));
    }
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    Plan plan = call.plan();
    Divider divider = call.has("--counts") ? SenderOf.divider(plan.section("sender")) : null;
    return new SenderReading(SenderOf.of(plan), divider, LevelColumns.motion(call))
        .ofOperand(call.text("--reading"));
  }

  private static Answer fault(Call call, FeedParts feed, Reading reading) {
    Answer answer = new Answer(columns(true, feed));
    answer.row().set(SENDER, reading.status().word()).set(STATUS, "no-volume");
    answer.sentence(
        Phrase.of(
            "The sender reads "
                + reading.status().word()
                + ": what is in the tank is not known, and nothing is to be poured."));
    call.withTaken(answer);
    return answer
        .next(
            "measure the level with a stick: leat tank --plan "
                + call.planName()
                + " --level ... , then leat topup --volume ...")
        .no();
  }

  private static void readingMinds(Answer answer, Plan plan, Reading reading) {
    if (reading.status() != Status.OK) {
      answer.mind(
          "sender-doubt",
          reading.status() == Status.BETWEEN_STEPS
              ? "a reading between two steps is a poor contact or a wet plug more often than a"
                  + " level; look if it comes again."
              : "the sender's reading is not plain ("
                  + reading.status().word()
                  + "): look into the"
                  + " tank before you pour.");
    }
    Double heldUp = plan.root().maybe("hold_up");
    answer.mind(
        "pump-off",
        heldUp == null
            ? Phrase.of("read with the pump off: running towers hold some litres.")
            : Phrase.of("read with the pump off: running towers hold ")
                .add(heldUp, Show.L)
                .add("."));
  }

  private static Column[] columns(boolean band, FeedParts feed) {
    int parts = equal(feed) ? 0 : feed.ratesMlPerL().length;
    int n = ONE.length + (band ? BAND.length : 0);
    Column[] columns = java.util.Arrays.copyOf(ONE, n + parts);
    if (band) {
      System.arraycopy(BAND, 0, columns, ONE.length, BAND.length);
    }
    for (int i = 0; i < parts; i++) {
      columns[n + i] = Column.of("part_" + (i + 1) + "_mL", "part " + (i + 1), Show.ML);
    }
    return columns;
  }

  private static boolean equal(FeedParts feed) {
    double[] rates = feed.ratesMlPerL();
    for (int i = 1; i < rates.length; i++) {
      if (rates[i] != rates[0]) {
        return false;
      }
    }
    return true;
  }

  private Held volume(Call call) {
    Span span = (Span) call.value("--volume");
    if (span == null) {
      throw call.needs("--volume");
    }
    if (span.low().value() < 0) {
      throw new Refused(CommandErrors.cannotBeNegative("--volume", call.text("--volume")));
    }
    Section tank = call.plan().section("tank");
    if (TankOf.isKnown(tank)) {
      double capacity = TankOf.of(tank).capacity();
      if (span.high().value() > capacity) {
        throw new Refused(MixErrors.overTheRim(call.text("--volume"), capacity));
      }
    }
    return new Held(span.low().value(), span.middle(), span.high().value(), null);
  }

  private static FeedParts feed(Call call) {
    Section section = call.plan().section("feed");
    Double rate = call.above0("--rate");
    if (rate == null && !section.has("parts")) {
      throw call.hasPlan() ? section.missing("parts") : call.needs("--rate");
    }
    if (!section.has("rate_ec")) {
      throw call.hasPlan() ? section.missing("rate_ec") : call.needs("--rate-ec");
    }
    Double parts = call.above0("--parts");
    if (rate == null && parts != null) {
      throw call.needs("--rate");
    }
    if (rate == null) {
      return ConcentrateOf.of(section);
    }
    return FeedParts.sharing(rate, parts == null ? 1 : parts.intValue(), section.need("rate_ec"));
  }

  private TopupAsk ask(Call call, Held held, FeedParts feed) {
    Plan plan = call.plan();
    Double ec = call.from0("--ec");
    if (ec == null && held.high > 0) {
      throw call.needs("--ec");
    }
    Double full = call.above0("--full");
    if (full == null) {
      if (!call.hasPlan()) {
        throw call.needs("--full");
      }
      full = SenderOf.fullVolume(plan);
    }
    Section target = plan.section("target");
    if (!target.has("ec") && !call.hasPlan()) {
      throw call.needs("--target");
    }
    Section water = plan.section("water");
    if (!water.has("ec") && !call.hasPlan()) {
      throw call.needs("--water-ec");
    }
    double rain = rain(call);
    double rainEc =
        rain > 0
            ? plan.section("rain")
                .getOr("ec", Topup.RAIN_EC_MS_CM, "rain " + Topup.RAIN_EC_MS_CM + " mS/cm")
            : Topup.RAIN_EC_MS_CM;
    return new TopupAsk(
        Litres.of(held.middle),
        ec == null ? 0 : ec,
        Litres.of(full),
        target.need("ec"),
        water.need("ec"),
        feed.together(),
        rain,
        rainEc);
  }

  private double rain(Call call) {
    Double litres = call.from0("--rain");
    Double depth = call.from0("--rainfall");
    if (litres != null && depth != null) {
      throw new Refused(CommandErrors.notBoth(this, "--rain", "--rainfall"));
    }
    if (depth != null) {
      return Topup.rainfallL(call.plan().section("tank").need("rain_area"), depth);
    }
    return litres == null ? 0 : Litres.of(litres);
  }

  private static Row row(Answer answer, Topup.Answer one, FeedParts feed) {
    Row row =
        answer
            .row()
            .set(STATUS, one.status().word)
            .set(DRAIN, Litres.base(one.drainL()))
            .set(WATER, Litres.base(one.waterL()))
            .set(FEED, Litres.baseOfMl(one.concentrateMl()))
            .set(FINAL_VOLUME, Litres.base(one.finalVolumeL()))
            .set(FINAL_EC, one.finalEcMsCm())
            .set(NEAREST, one.nearestEcMsCm())
            .set(PLAIN, one.plainWaterEcMsCm())
            .set(RAINED, Litres.base(one.afterRainL()))
            .set(RAINED_EC, one.afterRainEcMsCm())
            .set(OVERFLOW, Litres.base(one.rainOverflowL()));
    if (one.reached()) {
      double[] parts = feed.split(one.concentrateMl());
      if (equal(feed)) {
        row.set(PART, Litres.baseOfMl(parts[0]));
      } else {
        Column[] columns = answer.columns();
        for (int i = 0; i < parts.length; i++) {
          row.set(columns[columns.length - parts.length + i], Litres.baseOfMl(parts[i]));
        }
      }
    }
    return row;
  }

  private static Cans cans(Plan plan, Topup.Answer one, Row row) {
    Double can = plan.section("season").maybe("catch");
    if (can == null || one.waterL() == null) {
      return null;
    }
    Cans cans = Cans.of(one.waterL(), Litres.of(can));
    row.set(CANS, cans.count());
    row.set(LAST_CAN, Litres.base(cans.lastL()));
    return cans;
  }

  private static void bandRow(Row row, TopupBand band, Held held) {
    row.set(SENDER, held.reading == null ? null : held.reading.status().word())
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

  private static Double shown(Row row, Column column) {
    return (Double) row.get(column);
  }

  private static void text(Answer answer, Row row, Topup.Answer one, TopupAsk ask) {
    boolean water = one.waterL() > 0;
    boolean feed = one.concentrateMl() > 0;
    Phrase words = Phrase.of();
    if (one.drainsACup()) {
      words.add("Take out a cup first (").add(shown(row, DRAIN), Show.ML).add("), then add ");
    } else if (one.drainL() > 0) {
      words.add("Drain ").add(shown(row, DRAIN), Show.L).add(", then add ");
    } else {
      words.add(water || feed ? "Add " : "Nothing to do");
    }
    if (water) {
      words.add(shown(row, WATER), Show.L).add(" of water");
    }
    if (feed) {
      words.add(water ? " and " : "").add(shown(row, FEED), Show.ML).add(" of feed");
    }
    words.add(": ").add(shown(row, FINAL_VOLUME), Show.L).add(" at ");
    words.add(shown(row, FINAL_EC), Show.MS_CM).add(".");
    answer.sentence(one.drainL() > 0 || !water && !feed ? words : words.add(" Drain nothing."));
  }

  private static void bandText(Answer answer, Row row, TopupBand band, TopupAsk ask, Held held) {
    Phrase words =
        Phrase.of("Fill to the mark, stir, measure, dose: ")
            .addBare(shown(row, WATER_LOW), Show.L)
            .add(" to ")
            .add(shown(row, WATER_HIGH), Show.L)
            .add(" of water, then ")
            .addBare(shown(row, FEED_LOW), Show.ML)
            .add(" to ")
            .add(shown(row, FEED_HIGH), Show.ML)
            .add(" of feed.");
    answer.sentence(words);
    answer.figure(
        "in the tank",
        Phrase.of().addBare(held.low, Show.L).add(" to ").add(held.high, Show.L),
        Phrase.of("full at ").add(Litres.base(ask.fullL()), Show.L));
    answer.figure(
        "middle recipe",
        Phrase.of(shown(row, WATER), Show.L).add(" of water"),
        Phrase.of(shown(row, FEED), Show.ML).add(" of feed"));
    if (band.middleVolumeIfLowL() != null) {
      answer.figure(
          "  if it is the least",
          Phrase.of(shown(row, IF_LOW), Show.L),
          Phrase.of(shown(row, IF_LOW_EC), Show.MS_CM));
    }
    if (band.middleVolumeIfHighL() != null) {
      answer.figure(
          "  if it is the most",
          Phrase.of(shown(row, IF_HIGH), Show.L),
          Phrase.of(shown(row, IF_HIGH_EC), Show.MS_CM),
          Phrase.of(band.middleOverFull() ? "over the mark" : ""));
    }
  }

  private static void refusal(Answer answer, Row row, TopupAsk ask, Topup.Answer one) {
    Phrase words = Phrase.of().add(ask.targetMsCm(), Show.MS_CM).add(" cannot be reached: ");
    if (one.status() == Topup.Status.WATER_TOO_STRONG) {
      words.add("the water itself is ").add(ask.waterEcMsCm(), Show.MS_CM);
      words.add(". The nearest is ").add(one.nearestEcMsCm(), Show.MS_CM).add(".");
      answer.sentence(words);
      answer.mind(
          "water-too-strong",
          "thin the water with rain or filtered water, or aim at an EC above the water's own.");
      return;
    }
    words.add("the feed is too weak. The nearest is ");
    words.add(one.nearestEcMsCm(), Show.MS_CM).add(", undiluted.");
    answer.sentence(words);
    answer.mind("feed-too-weak", "look at the label's rate again: is it mL a litre, or L a litre?");
  }

  private static void figures(
      Call call,
      Answer answer,
      Row row,
      Topup.Answer one,
      TopupBand band,
      FeedParts feed,
      Cans cans) {
    if (one.rainOverflowL() > 0 || call.has("--rain") || call.has("--rainfall")) {
      answer.figure(
          row,
          RAINED,
          Phrase.of(one.afterRainEcMsCm(), Show.MS_CM),
          Phrase.of(one.rainOverflowL() > 0 ? "ran over: " : "")
              .add(
                  one.rainOverflowL() > 0
                      ? Phrase.of(shown(row, OVERFLOW), Show.L)
                      : Phrase.of("nothing ran over")));
    }
    if (one.afterRainL() < Litres.of(shown(row, FULL))) {
      answer.figure(
          row,
          PLAIN,
          Phrase.of(one.plainWaterClose() ? "close enough for most leaves" : "not close"));
    }
    if (!one.reached()) {
      return;
    }
    if (band == null) {
      answer.figure(row, DRAIN);
      answer.figure(row, FEED, split(call, one, feed));
    } else {
      Phrase drain = Phrase.of();
      if (band.drainHighL() > 0) {
        drain.addBare(shown(row, DRAIN_LOW), Show.L).add(" to ");
      }
      answer.figure("drain", drain.add(shown(row, DRAIN_HIGH), Show.L));
      if (feed.ratesMlPerL().length > 1) {
        answer.figure("feed, middle", split(call, one, feed));
      }
    }
    if (cans != null && cans.count() > 0) {
      answer.figure("carry", carried(cans));
    }
  }

  private static Phrase split(Call call, Topup.Answer one, FeedParts feed) {
    double[] parts = feed.split(one.concentrateMl());
    Phrase words = Phrase.of();
    if (parts.length == 1) {
      return words;
    }
    if (call.has("--rate")) {
      return words
          .add(Litres.baseOfMl(parts[0]), Show.ML)
          .add(" of each of ")
          .count(parts.length)
          .add(" parts");
    }
    Section section = call.plan().section("feed");
    for (int i = 0; i < parts.length; i++) {
      words.add(i == 0 ? "" : ", ").add(Litres.baseOfMl(parts[i]), Show.ML).add(" of ");
      words.add(ConcentrateOf.name(section, i));
    }
    return words;
  }

  private static Phrase carried(Cans cans) {
    Phrase words = Phrase.of().count(cans.count()).add(cans.count() == 1 ? " can" : " cans");
    if (cans.full() > 0 && cans.lastL() > 0 && cans.lastL() < Topup.CUP_L) {
      return Phrase.of()
          .count(cans.full())
          .add(cans.full() == 1 ? " can and " : " cans and ")
          .add(Litres.base(cans.lastL()), Show.ML);
    }
    if (cans.lastL() > 0 && cans.full() > 0) {
      words.add(", the last with ").add(Litres.base(cans.lastL()), Show.L);
    } else if (cans.lastL() > 0) {
      words.add(" with ").add(Litres.base(cans.lastL()), Show.L);
    }
    return words;
  }

  private static void workings(Answer answer, TopupAsk ask, Topup.Answer one) {
    if (!one.reached()) {
      return;
    }
    double q = ask.feed().strengthMsCm();
    answer.working(
        Working.of(
            "feed",
            "m = (F (t - w) - K (e - w)) / (Q - w),  Q = 1000 g / r",
            Phrase.of("F = ")
                .add(Litres.base(ask.fullL()), Show.L)
                .add(", t = ")
                .add(ask.targetMsCm(), Show.MS_CM)
                .add(", w = ")
                .add(ask.waterEcMsCm(), Show.MS_CM)
                .add(", K = ")
                .add(Litres.base(one.afterRainL() - one.drainL()), Show.L)
                .add(", e = ")
                .add(one.afterRainEcMsCm(), Show.MS_CM)
                .add(", Q = ")
                .add(q, Show.MS_CM),
            Litres.baseOfMl(one.concentrateMl()),
            Show.ML.digits(4),
            "EC up to 3 mS/cm, where it mixes by volume to a few per cent",
            "balance of volume and salt"));
    answer.working(
        Working.of(
            "water",
            "W = F - K - m",
            Phrase.of("m = ").add(Litres.baseOfMl(one.concentrateMl()), Show.ML),
            Litres.base(one.waterL()),
            Show.L.digits(4),
            "any",
            "balance of volume"));
  }

  private static void minds(Answer answer, TopupAsk ask, Topup.Answer one, TopupBand band) {
    if (band != null && band.doubtful()) {
      answer.mind(
          "doubtful",
          "for some volumes of the band there is an answer and for others none: measure the level"
              + " before you pour.");
    } else if (band != null && band.middleOverFull()) {
      answer.mind(
          "over-the-mark",
          "poured by the middle recipe it could end over the mark; the mark on the wall is exact,"
              + " the reading is not.");
    }
    if (one.overFull()) {
      answer.mind(
          "over-full",
          "it stands over the full mark already: rain, or a wrong reading. Look before you drain.");
    }
    if (one.reached() && one.drainL() >= Topup.CUP_L) {
      answer.mind("drained", "what is drained is feed: give it to the beds, not to a pond.");
    }
    if (!Topup.VALID.holds(one.afterRainEcMsCm(), ask.targetMsCm())) {
      answer.mind(
          "ec-range",
          "over 3 mS/cm EC no longer adds up by volume; the true EC ends lower: measure.");
    }
    if (one.reached() && one.concentrateMl() > 0) {
      answer.mind(
          "labels-differ",
          "pour three quarters of the feed, stir, wait ten minutes, measure: labels differ by 10 to"
              + " 20 %. Never mix the bottles undiluted.");
    }
  }

  private static void next(Call call, Answer answer, Topup.Answer one, boolean band) {
    if (!one.reached()) {
      return;
    }
    if (band) {
      answer.next(
          "leat dose "
              + (call.hasPlan() ? "--plan " + call.planName() + " " : "")
              + "--volume \""
              + Phrase.of(Litres.base(one.finalVolumeL()), Show.L).render(false)
              + (call.hasPlan() ? "\" --from READING" : "\" --from READING ...")
              + "   when it is filled, stirred and measured");
      return;
    }
    if (one.waterL() > 0) {
      String volume = Phrase.of(Litres.base(one.waterL()), Show.L).render(false);
      answer.next(
          "leat acid "
              + (call.hasPlan() ? "--plan " + call.planName() + " " : "")
              + "--volume \""
              + volume
              + (call.hasPlan() ? "\"" : "\" ...")
              + "   hard water lifts the pH with every can");
    }
  }
}
