package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.command.MeasuredWords;
import leat.hydraulics.MeasuredDerate;
import leat.plan.Refused;
import leat.quantity.MeasuredFlow;
import leat.quantity.Quantity;
import leat.quantity.Units;
import leat.system.TankOf;
import leat.system.Waterway;

/**
 * Answers {@code leat pump --measured}: the share of the printed head that explains a bucket and a
 * watch.
 */
final class MeasuredAnswer {
  static final Column DERATE = Column.of("derate_pct", "share of the printed head", Show.PERCENT);
  static final Column LOW = Column.of("derate_low_pct", "at least", Show.PERCENT);
  static final Column HIGH = Column.of("derate_high_pct", "at most", Show.PERCENT);
  static final Column FLOW = Column.of("measured_L_min", "measured", Show.L_MIN);
  static final Column EXPECTED = Column.of("printed_L_min", "printed curve promises", Show.L_MIN);
  static final Column HEAD = Column.of("head_m", "head it gives there", Show.M);
  static final Column STATUS = Column.plain("status", "status");

  private final Call call;
  private final Waterway way;

  MeasuredAnswer(Call call, Waterway way) {
    this.call = call;
    this.way = way;
  }

  Answer answer(MeasuredFlow typed) {
    MeasuredFlow flow = at(typed);
    Answer answer = new Answer(DERATE, LOW, HIGH, FLOW, EXPECTED, HEAD, STATUS);
    if (!call.has("--lift") && flow.level() == null) {
      answer.taken(Phrase.of("the tank full during the trial"));
    }
    MeasuredDerate found = call.has("--lift") ? way.measureAtLift(flow) : way.measure(flow);
    Row row = fill(answer.row(), found);
    answer.sentence(row, sentence(found));
    answer.figure(row, FLOW, way.towers() > 1 ? "all towers together" : "");
    answer.figure(row, EXPECTED);
    answer.figure(row, HEAD);
    minds(answer, found, flow);
    working(answer, row);
    call.withTaken(answer);
    if (found.derate().isPresent() && found.status() == MeasuredDerate.Status.VALUE) {
      call.intoPlan(answer, "pump.measured", typed(typed, found));
    }
    return found.usable() ? answer : answer.no();
  }

  private static Row fill(Row row, MeasuredDerate found) {
    return row.set(DERATE, PumpCommand.orNull(found.derate()))
        .set(LOW, PumpCommand.orNull(found.low()))
        .set(HIGH, PumpCommand.orNull(found.high()))
        .set(FLOW, found.flow())
        .set(EXPECTED, found.printedFlow())
        .set(HEAD, found.systemHead())
        .set(STATUS, found.status().word());
  }

  private static void working(Answer answer, Row row) {
    answer.working(
        row,
        DERATE,
        "share = head that lift and losses take at the flow / head that the print gives there",
        "flow {measured_L_min}, head {head_m}",
        "0 to 100 %; all that the print does not explain is put on the pump",
        "energy balance; sheet of the tower, a bucket and a watch");
  }

  /** The level of the trial: after the @, else --level. */
  private MeasuredFlow at(MeasuredFlow typed) {
    Double level = call.from0("--level");
    if (typed.level() != null) {
      TankOf.acceptLevel(call.plan(), "measured", typed.level().value());
    }
    if (level == null) {
      return typed;
    }
    TankOf.acceptLevel(call.plan(), "level", level);
    if (typed.level() != null) {
      throw new Refused(CommandErrors.notBoth(call.command, "--level", "--measured ... @ LEVEL"));
    }
    return new MeasuredFlow(typed.flow(), typed.bucket(), Quantity.of(level, Units.M));
  }

  /** The flow as the plan takes it, with the level of the trial behind it. */
  private String typed(MeasuredFlow typed, MeasuredDerate found) {
    String level = typed.level() != null ? typed.level().text() : call.text("--level");
    String flow = Phrase.of(found.flow(), Show.L_MIN.digits(4)).render(call.us());
    return level == null ? flow : flow + " @ " + level;
  }

  static String nothingCame() {
    return "Nothing came out: the pump has at most {derate_high_pct} of its printed head left.";
  }

  private static String sentence(MeasuredDerate found) {
    switch (found.status()) {
      case BEYOND_CURVE:
        return "No share of the printed head explains {measured_L_min}: it is past the end of the printed curve.";
      case NO_FLOW:
        return nothingCame();
      default:
        return found.low().isPresent() && found.high().isPresent()
            ? "Your pump gives {derate_pct} of its printed head ({derate_low_pct} to {derate_high_pct} for a second on the watch)."
            : "Your pump gives {derate_pct} of its printed head.";
    }
  }

  private static void minds(Answer answer, MeasuredDerate found, MeasuredFlow flow) {
    if (found.status() == MeasuredDerate.Status.OVER_100) {
      answer.mind("over-100", MeasuredWords.OVER);
    } else if (found.status() == MeasuredDerate.Status.BEYOND_CURVE) {
      answer.mind("beyond-curve", MeasuredWords.BEYOND);
    } else if (found.status() == MeasuredDerate.Status.VALUE) {
      answer.mind(
          "one-bucket",
          "one bucket cannot tell a weak pump from a kinked riser. A second bucket with the outlet a good deal lower can.");
    }
    if (flow.bucket() != null && flow.bucket().time().value() < MeasuredDerate.LEAST_CATCH) {
      answer.mind(
          "short-catch", "collect for at least 25 s: a second on the watch weighs less then.");
    }
  }
}
