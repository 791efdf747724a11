package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.quantity.NumberText;
import leat.solution.Cautions;
import leat.solution.tank.Clean;

/** What {@code leat clean} says. */
final class CleanText {
  private static final Column PERCENT = Column.plain("percent", "percent");
  private static final Column AGENT = Column.plain("agent", "agent");
  private static final Column LIMIT = Column.number("limit_pct", "limit", 2);

  private final Answer answer;
  private final Row row;
  private final Clean.Answer one;
  private final boolean bleach;
  private final double percent;

  CleanText(Answer answer, Row row, Clean.Answer one, boolean bleach, double percent) {
    this.answer = answer;
    this.one = one;
    this.bleach = bleach;
    this.percent = percent;
    this.row =
        row.with(
            Row.aside(PERCENT, AGENT)
                .set(PERCENT, NumberText.shortest(percent))
                .set(AGENT, bleach ? "hypochlorite" : "peroxide"));
  }

  Answer answer() {
    return answer;
  }

  void refusal() {
    answer.sentence(
        row, "The bottle is too weak: it holds {bottle_g_L}, and {strength_mg_L} is wanted.");
  }

  void sentenceAndFigures(boolean tooLittle) {
    answer.sentence(
        row,
        "Fill {water_L} of water, add {bottle_mL} of {percent} % {agent}, run {contact_min:duration} without plants, empty, rinse twice.");
    answer.figure(
        row, CleanCommand.STRENGTH, bleach ? "free chlorine" : "peroxide", "{bottle_mL_L}");
    if (one.bottleMlIfOld() != null) {
      answer.figure(row, CleanCommand.OLD, "half a year takes about a fifth, warmth more");
    }
    if (row.get(CleanCommand.NEEDS) != null) {
      answer.figure(
          row,
          CleanCommand.NEEDS,
          tooLittle
              ? "intake mark and towers: it is too little"
              : "intake mark and towers: it is enough");
    }
    answer.figure("rinse", row, "twice {final_volume_L}, then smell");
    working();
    answer.next("dry pump and sender, strainer out, riser blown empty before frost");
  }

  private void working() {
    answer.working(
        Working.of(
            "from the bottle",
            "mL = 1000 V y / C",
            Answer.filled(row, "V = {final_volume_L}, y = {strength_mg_L}, C = {bottle_g_L}"),
            (Double) row.get(CleanCommand.BOTTLE),
            Show.ML.digits(4),
            "any strength the bottle is above",
            "balance of mass"));
  }

  void cautions() {
    if (bleach) {
      answer.safety("never-with-acid", Cautions.NEVER_WITH_ACID);
      answer.safety(
          "chlorine-handling",
          "gloves, goggles, open air, no plants in the loop; not into a pond or a bed. Chlorine eats metal and pump seals: rinse well.");
      return;
    }
    answer.safety(
        "peroxide-handling",
        "gloves and goggles: it burns skin. Never with bleach or acid, and no plants in the loop.");
    if (Clean.isRestricted(percent)) {
      answer.mind(
          "restricted",
          Row.aside(LIMIT).set(LIMIT, Clean.PEROXIDE_RESTRICTED_PCT),
          "peroxide over {limit_pct} % is restricted for the public in the EU; 3 % from the pharmacy does it, with more of it.");
    }
  }

  void volumeMinds(boolean tooLittle, boolean dryWall) {
    if (tooLittle) {
      answer.mind("too-little", "it is less than the loop needs: the pump will draw air.");
    }
    if (dryWall) {
      answer.mind(
          "dry-wall",
          row,
          "the wall above that up to the full mark stays dry: wet it with a sponge, or fill to {full_L}.");
    }
  }
}
