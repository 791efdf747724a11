package leat.system;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Section;
import leat.plan.Value;

/**
 * Cap and spreader of a tower, in values.
 *
 * @param gap width of the spreader's slot, m
 * @param spreader its diameter, m
 * @param plate thickness of the plate that the slot goes through, m
 * @param mass of the cap, kg
 * @param clearance between outlet and cap, m
 * @param grip that holds the cap down, N
 * @param taken what was taken by default for the cap's push, in the words of {@code Taken:}
 */
public record TopPiece(
    Value gap,
    Value spreader,
    double plate,
    Value mass,
    double clearance,
    double grip,
    List<String> taken) {

  static TopPiece of(Section cap) {
    List<String> taken = new ArrayList<>();
    take(taken, cap, "clearance");
    take(taken, cap, "grip");
    return new TopPiece(
        cap.value("gap"),
        cap.value("spreader"),
        cap.orDefault("plate"),
        cap.value("mass"),
        cap.orDefault("clearance"),
        cap.orDefault("grip"),
        taken);
  }

  private static void take(List<String> taken, Section cap, String key) {
    if (!cap.has(key)) {
      taken.add(cap.takenAs(key));
    }
  }
}
