package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.hydraulics.Film;
import leat.system.TowerAt;
import leat.system.Waterway;

/** The formulas of {@code leat pump} with their numbers, for {@code --explain}. */
final class PumpWorkings {
  private static final Column SHUTOFF = Column.of("derated_m", "shut-off head left", Show.M);
  private static final Column LIFT = Column.of("lift_m", "lift", Show.M);
  private static final Column STACK = Column.of("stack_mm", "wall", Show.MM);
  private static final Column AROUND = Column.of("around_mm", "wall around", Show.MM);
  private static final String BALANCE =
      "energy balance; losses of leat head; the curve between its points a monotone cubic, PCHIP";

  private PumpWorkings() {}

  /** Of the first tower at the first level. */
  static void flows(Answer answer, Row figures, Waterway way, TowerAt tower) {
    Row row =
        figures.with(
            Row.aside(SHUTOFF, LIFT)
                .set(SHUTOFF, way.curve().shutoffHead())
                .set(LIFT, tower.riser().lift()));
    answer.working(
        row,
        PumpCommand.MARGIN,
        "margin = share x printed shut-off head - lift",
        "shut-off head left {derated_m}, lift {lift_m}",
        "at this level; no water moves",
        "definition");
    answer.working(
        row,
        PumpCommand.FLOW,
        "share x H(Q) = lift + losses(Q)",
        "head there {head_m}, lift {lift_m}, share {derate_pct}",
        "steady flow, full pipe",
        BALANCE);
    water(answer, row);
    film(answer, row, tower.film());
  }

  private static void water(Answer answer, Row row) {
    answer.working(
        row,
        PumpCommand.FILL,
        "t = V/Q",
        "V of the riser above the level, at most {riser_L}, Q = {flow_L_min}",
        "cautious: while it fills it flows faster",
        "definition");
    answer.working(
        row,
        PumpCommand.POWER,
        "P = rho g Q H",
        "Q = {flow_L_min}, H = {head_m}",
        "in the water, not from the socket",
        "definition");
  }

  private static void film(Answer answer, Row row, Film film) {
    if (film != null) {
      Row wall =
          row.with(
              Row.aside(STACK, AROUND).set(STACK, film.height()).set(AROUND, film.perimeter()));
      answer.working(
          wall,
          PumpCommand.FILM,
          "h = (3 nu Q/(g b))^(1/3), b the wall around, nu of the water",
          "Q = {flow_L_min}, b = {around_mm}; it runs down {stack_mm}",
          "film Re up to 1500, a vertical smooth wall",
          "Nusselt 1916");
    }
  }
}
