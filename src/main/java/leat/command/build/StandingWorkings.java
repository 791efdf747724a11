package leat.command.build;

import leat.answer.Answer;
import leat.answer.Row;

/** The formulas of {@code leat wind} and {@code leat parts} with their numbers. */
final class StandingWorkings {
  private static final String EN = "EN 1991-1-4 for the pressure, statics for the moment";

  private static final String SUMS = "sums of the plan's own figures";

  private StandingWorkings() {}

  /** Of a state of the tower in a gust. */
  static void wind(Answer answer, Row row) {
    answer.working(
        row,
        WindColumns.OVERTURNING,
        "M = q sum(A c z), q = rho v^2/2",
        "v = {gust_m_s}, rho = {air_kg_m3}",
        "gusts at the tower; drag good to a third",
        EN);
    answer.working(
        row,
        WindColumns.RIGHTING,
        "W = m g e, e half the foot, square to its short side",
        "m = {total_mass_kg}",
        "a level, stiff ground",
        "statics");
    safety(answer, row);
  }

  private static void safety(Answer answer, Row row) {
    answer.working(
        row,
        WindColumns.SAFETY,
        "W / M",
        "W = {righting_Nm}, M = {overturning_Nm} N m",
        "1.667 is wanted: 0.9 of the weight against 1.5 times the wind",
        "EN 1990, loss of equilibrium (EQU)");
    answer.working(
        row,
        WindColumns.TIPS,
        "v sqrt(W / M)",
        "v = {gust_m_s}, safety {safety_factor}",
        "the wind's push grows with the square of its speed",
        "statics");
  }

  /** Of the printed parts. */
  static void parts(Answer answer, Row row) {
    answer.working(
        row,
        PartsCommand.GROSS,
        "sum(pieces x mass) x (1 + waste)",
        "parts of {filament_net_kg}",
        "masses as the slicer or a scale gives them",
        SUMS);
    answer.working(
        row,
        PartsCommand.DECK,
        "m g / area of the foot",
        "m = {mass_whole_kg}",
        "evenly spread; feet press harder",
        SUMS);
  }
}
