package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Working;

/** The formulas of {@code leat wind} and {@code leat parts} with their numbers. */
final class StandingWorkings {
  private static final String EN = "EN 1991-1-4 for the pressure, statics for the moment";

  private StandingWorkings() {}

  /** Of a state of the tower in a gust. */
  static void wind(Answer answer, Row row) {
    number(
        answer,
        row,
        WindColumns.OVERTURNING,
        "M = q sum(A c z), q = rho v^2/2",
        "v = {gust_m_s}, rho = {air_kg_m3}",
        "gusts at the tower; drag good to a third",
        EN);
    number(
        answer,
        row,
        WindColumns.RIGHTING,
        "W = m g e, e half the foot, square to its short side",
        "m = {total_mass_kg}",
        "a level, stiff ground",
        "statics");
    number(
        answer,
        row,
        WindColumns.SAFETY,
        "W / M",
        "W = {righting_Nm}, M = {overturning_Nm} N m",
        "1.667 is wanted: 0.9 of the weight against 1.5 times the wind",
        "EN 1990, loss of equilibrium (EQU)");
    if (row.get(WindColumns.TIPS) != null) {
      answer.working(
          Working.of(
              WindColumns.TIPS.label(),
              "v sqrt(W / M)",
              Answer.filled(row, "v = {gust_m_s}, safety {safety_factor}"),
              (Double) row.get(WindColumns.TIPS),
              WindColumns.TIPS.show(),
              "the wind's push grows with the square of its speed",
              "statics"));
    }
  }

  private static void number(
      Answer answer,
      Row row,
      Column column,
      String formula,
      String with,
      String range,
      String source) {
    if (row.get(column) != null) {
      double result = (Double) row.get(column);
      answer.working(
          Working.number(
              column.label(),
              formula,
              Answer.filled(row, with),
              result,
              column.digits(),
              range,
              source));
    }
  }

  /** Of the printed parts. */
  static void parts(Answer answer, Row row) {
    quantity(
        answer,
        row,
        PartsCommand.GROSS,
        "sum(pieces x mass) x (1 + waste)",
        "parts of {filament_net_kg}",
        "masses as the slicer or a scale gives them");
    quantity(
        answer,
        row,
        PartsCommand.DECK,
        "m g / area of the foot",
        "m = {mass_whole_kg}",
        "evenly spread; feet press harder");
  }

  private static void quantity(
      Answer answer, Row row, Column column, String formula, String with, String range) {
    if (row.get(column) != null) {
      double result = (Double) row.get(column);
      answer.working(
          Working.of(
              column.label(),
              formula,
              Answer.filled(row, with),
              result,
              column.show(),
              range,
              "sums of the plan's own figures"));
    }
  }
}
