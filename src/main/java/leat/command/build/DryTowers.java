package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.hydraulics.Balance;
import leat.system.Balanced;
import leat.system.Waterway;

/** Says which towers the pump cannot lift to, so that no valve helps them. */
final class DryTowers {
  private static final Column DRY = Column.plain("left_out", "left out");

  private DryTowers() {}

  static void say(Answer answer, Waterway way, Balanced balanced) {
    Row running = answer.row(0);
    StringBuilder dry = new StringBuilder();
    for (int t = 0; t < way.towers(); t++) {
      if (balanced.valve(t).flow() > 0) {
        running = answer.row(t);
      } else {
        dry.append(dry.length() == 0 ? "" : ", ").append(way.name(t));
      }
    }
    answer.sentence(
        running.with(Row.aside(DRY).set(DRY, dry.toString())), others(balanced.balance()));
  }

  private static String others(Balance balance) {
    if (balance.share().isEmpty()) {
      return "No valve helps {left_out}: the outlet is higher than the pump can lift. Each of the others can get {set_flow_L_min}.";
    }
    return balance.status() == Balance.Status.LEFT_OUT
        ? "No valve helps {left_out}: the outlet is higher than the pump can lift. Each of the others gets the flow it wants."
        : "No valve helps {left_out}: the outlet is higher than the pump can lift. Each of the others can get {share_of_wanted_pct} of what it wants.";
  }
}
