package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.numeric.Impossible;
import leat.plan.Refused;

/** The parts of something made from a plan: each is made, or left out with what the plan lacks. */
final class LeftOut {
  static final Column PART = Column.plain("part", "part");
  static final Column GIVEN = Column.plain("given", "given");
  static final Column NEEDS = Column.plain("needs", "needs");

  private final List<String> parts = new ArrayList<>();
  private final List<String> needs = new ArrayList<>();

  /** Makes a part; whether it is there. Mistakes other than missing keys are told as ever. */
  boolean make(String part, Runnable maker) {
    String lacking = null;
    try {
      maker.run();
    } catch (Refused e) {
      lacking = e.missingKeys();
    } catch (Impossible e) {
      lacking = e.quantity() + ": " + e.getMessage();
    }
    parts.add(part);
    needs.add(lacking);
    return lacking == null;
  }

  /** A row for each part. */
  void rows(Answer answer) {
    for (int i = 0; i < parts.size(); i++) {
      answer
          .row()
          .set(PART, parts.get(i))
          .set(GIVEN, needs.get(i) == null)
          .set(NEEDS, needs.get(i));
    }
  }

  /** A note for each part that is left out. */
  void minds(Answer answer) {
    for (int i = 0; i < parts.size(); i++) {
      if (needs.get(i) != null) {
        Row row = Row.aside(PART, NEEDS).set(PART, parts.get(i)).set(NEEDS, needs.get(i));
        answer.mind(
            "left-out",
            row,
            needs.get(i).indexOf(": ") < 0
                ? "left out: {part}; it needs {needs} in the plan."
                : "left out: {part}. {needs}.");
      }
    }
  }

  /** "cap sensor (it needs cap_sensor.wet)" for each part that is left out. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (needs.get(i) != null) {
        boolean keys = needs.get(i).indexOf(": ") < 0;
        words.add(parts.get(i) + (keys ? " (needs " : " (") + needs.get(i) + ")");
      }
    }
    return words;
  }

  /** The parts that are there, with commas between. */
  String made() {
    List<String> made = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      if (needs.get(i) == null) {
        made.add(parts.get(i));
      }
    }
    return String.join(", ", made);
  }
}
