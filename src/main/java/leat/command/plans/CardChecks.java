package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.plan.Plan;
import leat.plan.Section;
import leat.solution.Cautions;

/** Checks through the season, its end, and what to take care of. */
final class CardChecks {
  private final Plan plan;

  CardChecks(Plan plan) {
    this.plan = plan;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Each day: water at the cap while the pump runs; level above the refill mark.");
    lines.add("Each top-up: fill, stir, then measure EC and pH; write both down with the litres.");
    lines.add("Each week: strainer and intake clean; leaves, roots, smell of the water.");
    lines.add(
        plan.section("cap_sensor").isGiven()
            ? "Each month: both meters in their standards; the cap sensor wet and dry."
            : "Each month: both meters in their standards.");
    Section change = plan.section("season").section("change");
    if (change.has("every")) {
      lines.add("Every " + change.typed("every") + ": change the whole tank.");
    }
    Section season = plan.section("season");
    if (season.has("from") && season.has("to")) {
      lines.add("Season: " + season.typed("from") + " to " + season.typed("to") + ".");
    }
    return lines;
  }

  List<String> meters() {
    List<String> lines = new ArrayList<>();
    known(lines);
    lines.add("EC standard: date ________ showed ________   at ____ C");
    lines.add("pH buffers: date ________ showed ________   and ________");
    return lines;
  }

  private void known(List<String> lines) {
    Section ec = plan.section("meters").section("ec");
    Section ph = plan.section("meters").section("ph");
    if (ec.has("slope")) {
      lines.add(
          Phrase.of("EC: true is ")
                  .number(ec.need("slope"), 4)
                  .add(" times what it shows")
                  .render(false)
              + checked(ec));
    }
    if (ph.has("offset")) {
      lines.add(
          Phrase.of("pH: true is what it shows, and ")
                  .number(ph.need("offset"), 2)
                  .add(" added")
                  .render(false)
              + checked(ph));
    }
  }

  private static String checked(Section meter) {
    return meter.has("checked") ? " (checked " + meter.typed("checked") + ")." : ".";
  }

  static List<String> closing() {
    return List.of(
        "Take the plants out. Empty the tank over a bed.",
        "Fill, add the sanitiser that leat clean tells, run it, empty, rinse twice, smell.",
        "Dry pump and sender, strainer out, riser blown empty before frost.");
  }

  /** Cautions; those of mains not where the pump runs on direct current. */
  static List<String> cautions(boolean directCurrent) {
    List<String> lines = new ArrayList<>();
    if (!directCurrent) {
      lines.add(sentence(leat.energy.Cautions.MAINS));
    }
    lines.add(sentence(Cautions.ACID));
    lines.add("Bleach: " + Cautions.NEVER_WITH_ACID);
    lines.add("Feed: " + Cautions.CONCENTRATES);
    return lines;
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
