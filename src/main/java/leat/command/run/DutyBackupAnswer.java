package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.energy.Backup;
import leat.energy.Battery;
import leat.energy.BatterySize;
import leat.energy.Cautions;
import leat.energy.Inverter;
import leat.energy.Motor;
import leat.energy.Solar;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;
import leat.system.BatteryOf;
import leat.system.DrawOf;
import leat.system.RunNeeds;

/** A battery for a power cut: what it must hold, which one to buy, how long one's own lasts. */
final class DutyBackupAnswer {
  private static final Show WH = Show.of(Units.WH, 3);
  static final Column HOURS = Column.of("hours_h", "hours without mains", Show.H);
  static final Column DRAW = Column.of("average_draw_W", "average draw", Show.W);
  static final Column PUMP = Column.of("pump_W", "pump", Show.W.digits(2));
  static final Column IDLE = Column.of("inverter_idle_W", "inverter idle", Show.W.digits(2));
  static final Column OTHERS = Column.of("others_W", "controller and coil", Show.W.digits(2));
  static final Column ENERGY = Column.of("battery_Wh", "from the battery", WH);
  static final Column MEAN_A = Column.of("average_A", "average current", Show.A.digits(2));
  static final Column PUMP_A = Column.of("pump_on_A", "while the pump runs", Show.A.digits(2));
  static final Column CAPACITY = Column.of("capacity_Ah", "battery needed", Show.AH);
  static final Column LASTS = Column.of("lasts_h", "yours lasts", Show.H.digits(2));
  static final Column DC_ENERGY = Column.of("dc_battery_Wh", "with a battery pump", WH);
  static final Column DC_CAPACITY = Column.of("dc_capacity_Ah", "battery then", Show.AH);
  static final Column DRY =
      Column.of("dry_limit_min", "roots want water after", Show.MIN.digits(2));
  static final Column BUY = Column.of("buy_Ah", "battery to buy", Show.AH.digits(2));
  static final Column BUY_COUNT = Column.plain("buy_count", "so many side by side");
  static final Column INVERTER = Column.of("inverter_W", "inverter", Show.W);
  private static final Column OWNED = Column.plain("owned", "yours");
  private static final Column CUT = Column.plain("cut", "power cut");
  private static final Column VOLTS = Column.plain("volts", "battery");
  static final Column PANEL = Column.of("panel_W", "solar panel", Show.W);
  private static final Column U = Column.of("volts_V", "battery", Show.V);
  private static final Column DEPTH = Column.of("depth_pct", "depth", Show.PERCENT);
  private static final Column RESERVE = Column.of("reserve_pct", "reserve", Show.PERCENT);

  private final Call call;
  private final Plan plan;
  private final Battery battery;
  private final Backup need;
  private final BatterySize buy;
  private final boolean direct;
  private final Double hours;
  private final Double lasts;
  private final Answer answer =
      new Answer(
          HOURS,
          DRAW,
          PUMP,
          IDLE,
          OTHERS,
          ENERGY,
          MEAN_A,
          PUMP_A,
          CAPACITY,
          LASTS,
          DC_ENERGY,
          DC_CAPACITY,
          DRY,
          PANEL,
          BUY,
          BUY_COUNT,
          INVERTER);

  /**
   * @param hours length of the cut, s, or null when only the battery is told
   * @param lasts how long the battery lasts that one has, s, or null
   */
  DutyBackupAnswer(Call call, Battery battery, Backup need, Double hours, Double lasts) {
    this.call = call;
    this.plan = call.plan();
    this.battery = battery;
    this.need = need;
    this.hours = hours;
    this.lasts = lasts;
    this.direct = DrawOf.isDirect(plan);
    boolean lead = "lead".equals(plan.section("backup").word("chemistry", call.taken()));
    this.buy = BatterySize.atLeast(need.capacityPeukertC(), lead);
  }

  Answer answer(Timing timing) {
    Row all = fill(timing).with(typed());
    answer.sentence(all, sentence());
    figures(all);
    working(all);
    call.withTaken(answer);
    minds(all);
    return lasts != null && hours != null && lasts < hours ? answer.no() : answer;
  }

  private Row fill(Timing timing) {
    Row row = answer.row().set(HOURS, hours).set(LASTS, lasts);
    draw(row);
    row.set(DRY, RunNeeds.dryDay(plan, call.taken())).set(PANEL, panel());
    if (!direct) {
      Backup other =
          Backup.of(
              timing, DrawOf.of(plan, call.taken()), Inverter.none(), battery, need.seconds());
      row.set(DC_ENERGY, other.energyJ())
          .set(DC_CAPACITY, BatteryOf.ampereHours(other.capacityPeukertC()))
          .set(INVERTER, inverter());
    }
    return row.set(BUY, BatteryOf.ampereHours(buy.eachC())).set(BUY_COUNT, buy.count());
  }

  private void draw(Row row) {
    row.set(DRAW, need.meanW())
        .set(PUMP, need.pumpMeanW())
        .set(IDLE, need.inverterIdleW())
        .set(OTHERS, need.othersMeanW())
        .set(ENERGY, need.energyJ())
        .set(MEAN_A, need.meanA())
        .set(PUMP_A, need.pumpOnA())
        .set(CAPACITY, BatteryOf.ampereHours(need.capacityPeukertC()));
  }

  private Double panel() {
    Double sun = call.above0("--sun");
    if (sun == null) {
      return null;
    }
    double back = BatteryOf.efficiency(plan, call.taken());
    call.taken()
        .note(
            "panel, wires and charger give 70 %, the battery gives back "
                + leat.answer.Phrase.of(back, leat.answer.Show.PERCENT.digits(2)).render(false));
    return Solar.panelW(need.dayJ(), Units.H_D.fromBase(sun), Solar.USUAL_PERFORMANCE, back);
  }

  private Row typed() {
    Section backup = plan.section("backup");
    return Row.aside(CUT, OWNED, VOLTS)
        .set(CUT, backup.typed("hours"))
        .set(OWNED, backup.typed("capacity"))
        .set(VOLTS, backup.typed("battery"));
  }

  /** The least inverter that is sold and starts the pump, or null. */
  private Double inverter() {
    Section pump = plan.section("pump");
    double inrush = plan.section("controller").section("relay").get("inrush", call.taken());
    OptionalDouble size =
        Inverter.sizeW(
            new Motor(
                pump.need("power"),
                Motor.USUAL_MAINS_V,
                pump.get("power_factor", call.taken()),
                inrush));
    return size.isPresent() ? Double.valueOf(size.getAsDouble()) : null;
  }

  private String sentence() {
    if (lasts == null) {
      return buy.count() == 1
          ? "{cut} without mains need {battery_Wh}: buy a {volts} battery of {buy_Ah}."
          : "{cut} without mains need {battery_Wh}: buy {buy_count} {volts} batteries of {buy_Ah}, side by side.";
    }
    if (hours == null) {
      return "Your battery of {owned} lasts {lasts_h}.";
    }
    if (lasts >= hours) {
      return "Your battery of {owned} lasts {lasts_h}: enough for {cut}.";
    }
    return buy.count() == 1
        ? "Your battery of {owned} lasts {lasts_h}, not {cut}: buy one of {buy_Ah}."
        : "Your battery of {owned} lasts {lasts_h}, not {cut}: buy {buy_count} of {buy_Ah}, side by side.";
  }

  private void figures(Row row) {
    answer.figure(row, DRAW, most());
    answer.figure(ENERGY.label(), row, "{battery_Wh}");
    answer.figure(row, PUMP_A, "size wire and fuse for this");
    answer.figure(row, CAPACITY, "reserve and depth counted");
    answer.figure(
        row, BUY, buy.count() == 1 ? "the next size that is sold" : "{buy_count} side by side");
    if (row.get(LASTS) != null) {
      answer.figure(LASTS.label(), row, "{lasts_h}");
    }
    other(row);
    if (row.get(PANEL) != null) {
      answer.figure(row, PANEL, "for a whole day, every day, in that sun");
    }
    answer.figure(row, DRY, "by day, about; so a cut may last that long with no battery");
  }

  private void other(Row row) {
    if (!direct) {
      answer.figure(
          INVERTER.label(),
          row,
          "{inverter_W} or more",
          "so that it starts the pump; a pure sine wave");
      answer.figure(DC_ENERGY.label(), row, "{dc_battery_Wh}", "{dc_capacity_Ah}, no inverter");
    }
  }

  private String most() {
    switch (need.largestPart()) {
      case INVERTER_IDLE:
        return "the inverter's idle {inverter_idle_W} is the most of it";
      case CONTROLLER_AND_COIL:
        return "controller and coil are the most of it";
      default:
        return "the pump is the most of it";
    }
  }

  private void minds(Row row) {
    answer.safety("battery", Cautions.BATTERY);
    if (!direct) {
      answer.safety("mains", Cautions.MAINS);
    }
    answer.mind(
        "mean-current",
        row,
        "counted at the mean current; pulses of {pump_on_A} tire a battery more, so this is the hopeful side.");
    if (!direct) {
      next();
    }
  }

  private void next() {
    answer.next(
        call.again(
                "duty backup",
                "--hours",
                "--battery",
                "--capacity",
                "--chemistry",
                "--power",
                "--run",
                "--rest",
                "--controller")
            + " --dc "
            + ShellWord.quoted(plan.section("backup").typed("battery"))
            + "   with a pump on the battery itself");
  }

  private void working(Row all) {
    Row row =
        all.with(
            Row.aside(U, DEPTH, RESERVE)
                .set(U, battery.volts())
                .set(DEPTH, battery.depth())
                .set(RESERVE, battery.reserve()));
    answer.working(
        Working.of(
            "average draw",
            "W = P s/efficiency + inverter idle + controller + coil",
            Answer.filled(row, "pump {pump_W}, idle {inverter_idle_W}, others {others_W}"),
            need.meanW(),
            Show.W.digits(4),
            "any",
            "energy balance"));
    capacity(row);
  }

  private void capacity(Row row) {
    answer.working(
        Working.of(
            "capacity",
            "Ah = W h/(U depth) (1 + reserve), or Peukert's where that is more",
            Answer.filled(row, "U = {volts_V}, depth {depth_pct}, reserve {reserve_pct}"),
            BatteryOf.ampereHours(need.capacityPeukertC()),
            Show.AH.digits(4),
            "no bonus for slow discharge",
            "charge balance; W. Peukert's law"));
  }
}
