package leat.command.run;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.energy.Draw;
import leat.plan.Plan;

/** What a controller would add to the energy of a timing, when none is counted. */
final class DutyHint {
  private static final Column HINT = Column.of("controller_W", "controller", Show.W.digits(2));
  private static final Column HINT_KWH =
      Column.of("controller_kWh", "controller's energy", Show.KWH.digits(2));
  private static final Column HINT_SHARE = Column.of("controller_pct", "of the pump", Show.PERCENT);

  private DutyHint() {}

  static void controller(Answer answer, Plan plan, DutyLine.Terms terms, DutyLine line) {
    if (plan.section("controller").has("power")) {
      return;
    }
    Draw.Hint hint = Draw.controllerHint(terms.period.days(), line.pumpJ);
    answer.mind(
        "controller-not-counted",
        Row.aside(HINT, HINT_KWH, HINT_SHARE)
            .set(HINT, hint.watts())
            .set(HINT_KWH, hint.joules())
            .set(HINT_SHARE, hint.share()),
        "the controller is not counted; at {controller_W} it adds {controller_kWh}, {controller_pct} of what the pump itself takes.");
  }
}
