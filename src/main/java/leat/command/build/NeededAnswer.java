package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.hydraulics.OperatingPoint;
import leat.hydraulics.PumpNeeded;
import leat.system.Waterway;

/** Answers {@code leat pump --needed}: the least pump that gives what is wanted. */
final class NeededAnswer {
  static final Column SHUTOFF = Column.of("shutoff_head_m", "head on the box", Show.M);
  static final Column MOST = Column.of("max_flow_L_min", "flow on the box", Show.L_MIN);
  static final Column FLOW = Column.of("flow_L_min", "wanted, all together", Show.L_MIN);
  static final Column HEAD = Column.of("head_m", "head the towers take then", Show.M);
  static final Column PRINTED = Column.of("printed_head_m", "printed curve at that flow", Show.M);
  static final Column LIFT = Column.of("lift_m", "lift", Show.M);
  static final Column DERATE =
      Column.of("derate_pct", "share of the printed head", Show.PERCENT.digits(3));
  static final Column MARGIN = Column.of("margin_pct", "margin over the lift", Show.PERCENT);
  static final Column WATER = Column.of("hydraulic_power_W", "power in the water", Show.W);
  static final Column GOOD = Column.of("good_power_W", "a good pump takes", Show.W);
  static final Column POOR = Column.of("poor_power_W", "a poor pump takes", Show.W);
  static final Column YOURS = Column.of("power_W", "yours takes", Show.W);
  static final Column ENOUGH = Column.plain("yours_enough", "your pump gives that");
  static final Column YOUR_HEAD = Column.of("yours_shutoff_head_m", "head on your box", Show.M);
  static final Column YOUR_FLOW = Column.of("yours_max_flow_L_min", "flow on your box", Show.L_MIN);
  static final Column SHAPED =
      Column.of("same_shape_shutoff_head_m", "head needed with your pump's curve", Show.M);

  /** A command line to type, which may hold braces. */
  static final Column COMMAND = Column.plain("command", "command");

  private static final Column[] COLUMNS = {
    SHUTOFF, MOST, FLOW, HEAD, PRINTED, LIFT, DERATE, MARGIN, WATER, GOOD, POOR, YOURS, ENOUGH,
    YOUR_HEAD, YOUR_FLOW, SHAPED
  };

  private final Call call;
  private final Waterway way;

  NeededAnswer(Call call, Waterway way) {
    this.call = call;
    this.way = way;
  }

  Answer answer() {
    Double every = call.above0("--throttle-to");
    if (every == null && !call.hasPlan()) {
      throw call.needs("--throttle-to");
    }
    Double level = call.from0("--level");
    double over = call.has("--lift") ? 0 : level != null ? level : way.low();
    PumpNeeded needed =
        PumpNeeded.of(
            way.manifold(over),
            way.believed().shareOfAnother(),
            OperatingPoint.USUAL_MARGIN,
            way.water().density(),
            way.wants(every));
    Answer answer = new Answer(COLUMNS);
    Row row = answer.row();
    fill(row, needed);
    words(answer, row);
    workings(answer, row);
    call.withTaken(answer);
    next(answer, row);
    return answer;
  }

  private void next(Answer answer, Row row) {
    String lay =
        call.again("pump", "--lift", "--bore", "--length", "--k", "--roughness", "--ridges")
            + " --shutoff-head ... --max-flow ...";
    answer.next(
        row.with(Row.aside(COMMAND).set(COMMAND, lay)),
        "look for a pump whose printed curve passes {flow_L_min} at {printed_head_m:up} or more; then lay it over:  {command}");
  }

  private static void workings(Answer answer, Row row) {
    answer.working(
        row,
        HEAD,
        "H = lift + losses at the wanted flow of the worst tower",
        "Q = {flow_L_min}, lift {lift_m}",
        "steady flow, full pipe",
        "energy balance; losses of leat head");
    answer.working(
        row,
        PRINTED,
        "printed head = H/share",
        "H = {head_m}, share {derate_pct}",
        "the share that is left of the print",
        "definition");
    answer.working(
        row,
        WATER,
        "P = rho g Q H",
        "Q = {flow_L_min}, H = {head_m}",
        "in the water; a good small pump takes four times that, a poor one twenty times",
        "definition");
  }

  private void fill(Row row, PumpNeeded needed) {
    row.set(SHUTOFF, needed.shutoffHead())
        .set(MOST, needed.maxFlow())
        .set(FLOW, needed.flow())
        .set(HEAD, needed.head())
        .set(PRINTED, needed.printedHead())
        .set(LIFT, needed.lift())
        .set(DERATE, needed.derate())
        .set(MARGIN, OperatingPoint.USUAL_MARGIN)
        .set(WATER, needed.hydraulicWatts())
        .set(GOOD, needed.goodWatts())
        .set(POOR, needed.poorWatts());
    if (!way.hasPump()) {
      return;
    }
    PumpNeeded yours = needed.at(way.believed().shareForVerdict());
    row.set(ENOUGH, yours.metBy(way.printed()))
        .set(YOUR_HEAD, way.printed().shutoffHead())
        .set(YOUR_FLOW, way.printed().maxFlow())
        .set(SHAPED, PumpCommand.orNull(yours.shutoffHeadShapedAs(way.printed())));
    if (way.power().isKnown()) {
      row.set(YOURS, way.power().need());
    }
  }

  private void words(Answer answer, Row row) {
    answer.sentence(
        row,
        "The smallest pump that would do has {shutoff_head_m:up} and {max_flow_L_min:up} on its box.");
    answer.figure(row, FLOW, "");
    answer.figure(row, HEAD, "{lift_m} of it to climb");
    answer.figure(
        PRINTED.label(), row, "{printed_head_m:up} or more", "{derate_pct} of it is left");
    if (row.get(YOURS) == null) {
      answer.figure(GOOD.label(), row, "{good_power_W}", "a poor one {poor_power_W}");
    } else {
      answer.figure(
          GOOD.label(), row, "{good_power_W}", "a poor one {poor_power_W}, yours {power_W}");
    }
    if (way.hasPump()) {
      answer.figure(
          "your pump",
          row,
          "{yours_shutoff_head_m}",
          Boolean.TRUE.equals(row.get(ENOUGH))
              ? "{yours_max_flow_L_min}: gives the wanted flow"
              : "{yours_max_flow_L_min}: does not give the wanted flow");
    }
    minds(answer, row);
  }

  private void minds(Answer answer, Row row) {
    answer.mind(
        "two-numbers",
        row,
        "a box with more head and less flow, or the other way round, may do as well: its printed curve decides, and that is read at {flow_L_min}.");
    if (way.believed().shareOfAnother() != way.believed().share()) {
      answer.mind(
          "new-pump",
          row,
          "nobody has tried that pump: {derate_pct} of its printed head is taken.");
    }
  }
}
