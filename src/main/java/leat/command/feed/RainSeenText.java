package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.season.RainSeen;
import leat.season.TankPlan;
import leat.solution.tank.Topup;

/** Rain that shows only in the tank: volume and EC the last time, and what is read now. */
final class RainSeenText {
  static final Flag WAS =
      Flag.of(
              "--was",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "45 L",
              "what was in the tank after the last top-up: tells the rain that fell in since")
          .belongsTo("--was-ec");
  static final Flag WAS_EC =
      Flag.of(
              "--was-ec",
              "EC",
              Kind.quantity(Dimension.EC),
              "1.6 mS/cm",
              "the EC that it had then, with --was")
          .belongsTo("--was");

  static final Column RAIN = Column.of("rain_since_L", "rain since then", Show.L.digits(2));
  static final Column LOW = Column.of("rain_since_low_L", "at least", Show.L.digits(2));
  static final Column HIGH = Column.of("rain_since_high_L", "at most", Show.L.digits(2));
  static final Column DRUNK = Column.of("drunk_since_L", "drunk since then", Show.L.digits(2));
  private static final Column BEFORE = Column.of("was_L", "then", Show.L);
  private static final Column BEFORE_EC = Column.of("was_mS_cm", "EC then", Show.MS_CM);
  private static final Column[] OWN = {RAIN, LOW, HIGH, DRUNK};

  private final Call call;
  private final RainSeen seen;

  private RainSeenText(Call call, RainSeen seen) {
    this.call = call;
    this.seen = seen;
  }

  /** What the tank tells of rain; null when it is not asked. */
  static RainSeenText of(Call call, double nowL, double nowMsCm, double targetMsCm) {
    Double before = call.above0("--was");
    if (before == null) {
      return null;
    }
    double uptake = uptake(call, targetMsCm);
    Double rain = call.plan().section("rain").maybe("ec");
    return new RainSeenText(
        call,
        RainSeen.since(
            Litres.of(before),
            call.from0("--was-ec"),
            nowL,
            nowMsCm,
            uptake,
            targetMsCm,
            rain == null ? Topup.RAIN_EC_MS_CM : rain));
  }

  private static double uptake(Call call, double targetMsCm) {
    Section season = call.plan().section("season");
    Double uptake = season.maybe("uptake");
    if (uptake == null) {
      call.taken().note("plants take up salt at 0.75 of the target EC");
    }
    return uptake == null ? TankPlan.usualUptake(targetMsCm) : uptake;
  }

  /** Columns with those of the rain behind them. */
  static Column[] with(Column[] columns, RainSeenText rain) {
    if (rain == null) {
      return columns;
    }
    Column[] all = java.util.Arrays.copyOf(columns, columns.length + OWN.length);
    System.arraycopy(OWN, 0, all, columns.length, OWN.length);
    return all;
  }

  /** Fills the row and says it. */
  void tell(Answer answer, Row row) {
    if (seen.isPoured()) {
      answer.figure(RAIN.label(), row, "-", "there is more than then, and no less salt");
      answer.mind(
          "not-rain",
          "the level rose and the EC hardly fell: rain does not do that. Was feed poured in, or is one of the readings wrong?");
      return;
    }
    fill(row);
    if (!seen.shows()) {
      answer.figure(RAIN.label(), row, "none that shows", "drunk since then: {drunk_since_L}");
      return;
    }
    answer.figure(
        row, RAIN, "{rain_since_low_L..rain_since_high_L}", "drunk since then: {drunk_since_L}");
    answer.mind(
        "rain-seen",
        "the rain is told by what it thinned, and is as sure as what plants take up. A gauge is surer: --rainfall with tank.rain_area.");
    working(answer, row);
  }

  private void fill(Row row) {
    row.set(RAIN, Litres.base(seen.rainL()))
        .set(LOW, Litres.base(seen.lowL()))
        .set(HIGH, Litres.base(seen.highL()))
        .set(DRUNK, Litres.base(seen.drunkL()));
  }

  private void working(Answer answer, Row row) {
    answer.working(
        row.with(
            Row.aside(BEFORE, BEFORE_EC)
                .set(BEFORE, call.quantity("--was"))
                .set(BEFORE_EC, call.quantity("--was-ec"))),
        RAIN,
        "R = (V2 E2 - V1 E1 + (V1 - V2) u)/(r - u)",
        "V1 = {was_L}, E1 = {was_mS_cm}",
        "nothing ran over, nothing was poured; uptake u 0.4 to 1.1 of the target",
        "mass balance of water and salt");
  }
}
