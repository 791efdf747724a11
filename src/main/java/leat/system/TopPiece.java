package leat.system;

import leat.plan.Section;
import leat.plan.Taken;
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
 */
public record TopPiece(
    Value gap, Value spreader, Value plate, Value mass, Value clearance, Value grip) {

  static TopPiece of(Section cap, Taken taken) {
    return new TopPiece(
        cap.value("gap"),
        cap.value("spreader"),
        cap.value("plate", taken),
        cap.value("mass"),
        cap.value("clearance", taken),
        cap.value("grip", taken));
  }
}
