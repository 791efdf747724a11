package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.plan.Section;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupAsk;
import leat.solution.tank.TopupBand;

/** What {@code leat topup} says of one answer. */
final class TopupText {
  private static final Column KEPT = Column.of("kept_L", "kept", Show.L);
  private static final Column TANK = Column.of("tank_mS_cm", "the tank's EC", Show.MS_CM);
  private static final Column STRENGTH = Column.of("strength_mS_cm", "the feed's", Show.MS_CM);

  private final Answer answer;
  private final Row row;
  private final Topup.Answer one;

  /** The band, or null for one volume. */
  private final TopupBand band;

  private final TopupAsked asked;

  TopupText(Answer answer, Row row, Topup.Answer one, TopupBand band, TopupAsked asked) {
    this.answer = answer;
    this.asked = asked;
    this.one = one;
    this.band = band;
    this.row = row.with(TopupColumns.aside(one));
  }

  void sentenceAndFigures() {
    if (!one.reached()) {
      refusal();
    } else if (band != null) {
      answer.sentence(row, TopupSentence.of(band));
    } else {
      answer.sentence(row, TopupSentence.of(one));
    }
    if (one.reached() && band != null) {
      bandFigures();
    }
    figures();
  }

  private void refusal() {
    if (one.status() == Topup.Status.WATER_TOO_STRONG) {
      answer.sentence(
          row,
          "{target_ec_mS_cm} cannot be reached: the water itself is {water_ec_mS_cm}. The nearest is {nearest_ec_mS_cm}.");
      answer.mind(
          "water-too-strong",
          "thin the water with rain or filtered water, or aim at an EC above the water's own.");
      return;
    }
    answer.sentence(
        row,
        "{target_ec_mS_cm} cannot be reached: the feed is too weak. The nearest is {nearest_ec_mS_cm}, with feed alone.");
    answer.mind(
        "feed-too-weak",
        "look at the label's rate again: is it mL per litre, or litres per litre?");
  }

  private void bandFigures() {
    answer.figure("in the tank", row, "{volume_low_L..volume_high_L}", "full at {full_L}");
    if (band.drainsToOneMark()) {
      answer.figure(row, TopupColumns.KEEP, "whatever the sender reads");
    }
    answer.figure(
        "middle recipe",
        row,
        band.drainHighL() > 0 ? "drain {drain_L}" : "drain nothing",
        "{water_L} of water",
        "{concentrate_mL} of feed");
    ifItIs();
  }

  /** What the middle recipe makes at the ends of the band. */
  private void ifItIs() {
    if (band.middleVolumeIfLowL() != null) {
      answer.figure(
          "  if it is the least",
          row,
          "{mid_recipe_volume_if_low_L}",
          "{mid_recipe_ec_if_low_mS_cm}");
    }
    if (band.middleVolumeIfHighL() != null) {
      answer.figure(
          "  if it is the most",
          row,
          "{mid_recipe_volume_if_high_L}",
          "{mid_recipe_ec_if_high_mS_cm}",
          band.middleOverFull() ? "over the mark" : "");
    }
  }

  private void figures() {
    if (asked.rained()) {
      rained(answer, row, one.rainOverflowL());
    }
    if (one.afterRainL() < Litres.of(asked.full)) {
      answer.figure(
          row,
          TopupColumns.PLAIN,
          one.plainWaterClose() ? "close enough for most leaves" : "not close");
    }
    if (one.reached()) {
      poured();
    }
  }

  /** What the rain made of the tank. */
  static void rained(Answer answer, Row row, double overflowL) {
    answer.figure(
        row,
        TopupColumns.RAINED,
        "{after_rain_ec_mS_cm}",
        overflowL > 0 ? "ran over: {rain_overflow_L}" : "nothing ran over");
  }

  private void poured() {
    if (band == null && (one.drainL() == 0 || !one.drainsNothing())) {
      answer.figure(row, TopupColumns.DRAIN);
    }
    if (band == null || asked.feed.bottles() > 1 && one.concentrateMl() > 0) {
      bottles();
    }
    CansText.tell(answer, row, asked.cans(one.waterL()));
  }

  private void bottles() {
    int n = asked.feed.bottles();
    answer.figure(
        band == null ? "feed" : "feed, middle recipe",
        row,
        "{concentrate_mL}",
        n > 1 && one.concentrateMl() > 0 ? "in all, from " + n + " bottles" : "");
    double[] ml = asked.feed.parts.split(one.concentrateMl());
    for (int i = 0; i < n && n > 1 && one.concentrateMl() > 0; i++) {
      Row bottle = Row.aside(LabelRate.AMOUNT).set(LabelRate.AMOUNT, Litres.baseOfMl(ml[i]));
      answer.figure("  " + asked.feed.name(i), bottle, "{bottle_mL}");
    }
  }

  private Row balance(TopupAsk ask) {
    return Row.aside(KEPT, TANK, STRENGTH)
        .set(KEPT, Litres.base(one.keptL()))
        .set(TANK, one.afterRainEcMsCm())
        .set(STRENGTH, ask.feed().strengthMsCm());
  }

  void workings(TopupAsk ask) {
    if (!one.reached()) {
      return;
    }
    answer.working(
        Working.of(
            "feed",
            "m = (F (t - w) - K (e - w)) / (Q - w),  Q = 1000 g / r",
            Answer.filled(
                row.with(balance(ask)),
                "F = {full_L}, t = {target_ec_mS_cm}, w = {water_ec_mS_cm}, K = {kept_L}, e = {tank_mS_cm}, Q = {strength_mS_cm}"),
            Litres.baseOfMl(one.concentrateMl()),
            Show.ML.digits(4),
            EcRange.words(),
            "balance of volume and salt"));
    water();
  }

  private void water() {
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

  void minds() {
    ofTheBand();
    ofTheTank(answer, one.overFull(), one.drainsMore());
    if (!Topup.VALID.holds(one.afterRainEcMsCm(), asked.target)) {
      EcRange.mind(answer);
    }
    asked.typed.minds(answer);
    if (one.reached() && one.concentrateMl() > 0) {
      answer.mind(
          "labels-differ",
          "pour three quarters of the feed, stir, wait ten minutes, measure: labels differ by 10 to 20 %. Never mix the bottles undiluted.");
      SmallPours.mind(answer, asked.feed.parts.smallest(one.concentrateMl()));
    }
  }

  /** Doubts about what is in the tank, and about what leaves it. */
  static void ofTheTank(Answer answer, boolean overFull, boolean drainsMore) {
    if (overFull) {
      answer.mind(
          "over-full",
          "it stands over the full mark already: rain, or a wrong reading. Look before you drain. Rain that is in the reading is counted: leave --rain out.");
    }
    if (drainsMore) {
      answer.mind("drained", "what is drained is feed: give it to the beds, not to a pond.");
    }
  }

  private void ofTheBand() {
    if (band != null && band.doubtful()) {
      answer.mind(
          "doubtful",
          "for some volumes of the band there is an answer and for others none: measure the level before you pour.");
    } else if (band != null && band.middleOverFull()) {
      answer.mind(
          "over-the-mark",
          "poured by the middle recipe it could end over the mark; the mark on the wall is exact, the reading is not.");
    }
  }

  private static String target(Call call) {
    return call.has("--target")
        ? " --to " + ShellWord.quoted(call.text("--target"))
        : call.hasPlan() ? "" : " --to TARGET";
  }

  void next() {
    Call call = asked.call;
    if (!one.reached()) {
      return;
    }
    if (band != null) {
      String to = target(call);
      answer.next(
          row,
          NextLine.of(call.again("dose", "--rate", "--rate-ec", "--parts", "--scale", "--at"))
              + " --volume \"{final_volume_L}\" --from READING"
              + to
              + "   when it is filled, stirred and measured");
    } else if (one.waterL() > 0) {
      acid(answer, row, call);
    }
  }

  /** The acid for the water that is poured, with a gap for each thing that no plan says. */
  static void acid(Answer answer, Row row, Call call) {
    Section water = call.plan().section("water");
    answer.next(
        row,
        NextLine.of(call.again("acid"))
            + " --volume \"{water_L}\""
            + (water.has("alkalinity") ? "" : " --alkalinity ...")
            + (water.has("ph") ? "" : " --ph ...")
            + (call.plan().section("target").has("ph") ? "" : " --to 5.8")
            + (call.plan().section("feed").section("acid").has("name") ? "" : " --acid ...")
            + "   hard water lifts the pH with every can: acid into the can, before the feed");
  }
}
