package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.energy.Backup;
import leat.energy.Battery;
import leat.energy.BatterySize;
import leat.energy.Cautions;
import leat.energy.Draw;
import leat.energy.Inverter;
import leat.energy.Motor;
import leat.energy.Solar;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.system.BatteryOf;
import leat.system.DrawOf;
import leat.system.RunNeeds;

/** {@code leat duty backup}: a battery for a power cut. */
public final class DutyBackupCommand extends Command {
  private static final Show WH = Show.of(Units.WH, 3);
  static final Column HOURS = Column.of("hours_h", "power cut", Show.H);
  static final Column DRAW = Column.of("average_draw_W", "average draw", Show.W);
  static final Column PUMP = Column.of("pump_W", "pump's part", Show.W.digits(2));
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

  @Override
  public String name() {
    return "duty backup";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--hours", "TIME", DutyFlags.TIME, "6 h", "how long the power cut lasts")
          .sets("backup.hours"),
      Flag.of("--battery", "VOLTAGE", DutyFlags.VOLTAGE, "12.8 V", "voltage of the battery")
          .sets("backup.battery"),
      Flag.of(
              "--capacity",
              "CHARGE",
              Kind.quantity(Dimension.CHARGE),
              "20 Ah",
              "capacity of the battery you have")
          .sets("backup.capacity"),
      Flag.of(
              "--chemistry",
              "WORD",
              Kind.choice("lithium", "lead"),
              "lead",
              "lithium (iron phosphate) or lead")
          .sets("backup.chemistry"),
      Flag.of("--depth", "SHARE", DutyFlags.SHARE, "80 %", "share of it that may be taken out")
          .sets("backup.depth"),
      Flag.of("--reserve", "SHARE", DutyFlags.SHARE, "25 %", "reserve for age and cold")
          .sets("backup.reserve"),
      Flag.of("--inverter", "SHARE", DutyFlags.SHARE, "85 %", "efficiency of the inverter")
          .sets("backup.inverter"),
      Flag.of("--idle", "POWER", DutyFlags.POWER, "4 W", "draw of the inverter with nothing on")
          .sets("backup.idle"),
      DutyFlags.power(),
      DutyFlags.run(),
      DutyFlags.rest(),
      DutyFlags.controller(),
      DutyFlags.dc(),
      Flag.of(
          "--sun",
          "HOURS",
          Kind.quantity(Dimension.TIME_PER_DAY),
          "3.2 h/d",
          "peak sun hours of the worst month, for a solar panel that covers every day"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    if (!call.hasPlan()) {
      needed(call, plan);
    }
    Timetable timetable = DutyLine.timetable(call);
    Timing timing = timetable.busiest();
    if (timetable.size() > 1) {
      plan.taken().note("the busiest timing of the plan");
    }
    Section backup = plan.section("backup");
    Double owned = backup.maybe("capacity");
    Double hours = backup.maybe("hours");
    if (hours == null && owned == null) {
      throw backup.missing("hours");
    }
    Battery battery = BatteryOf.of(plan);
    Draw draw = DrawOf.of(plan);
    double cut = hours == null ? Units.H.toBase(1) : hours;
    Backup need = Backup.of(timing, draw, BatteryOf.inverter(plan), battery, cut);
    Double lasts =
        owned == null
            ? null
            : Double.valueOf(battery.lastsS(need.meanW(), BatteryOf.coulombs(owned)));
    if (hours == null) {
      need = Backup.of(timing, draw, BatteryOf.inverter(plan), battery, lasts);
    }
    return answer(call, battery, need, hours, lasts, timing);
  }

  private static void needed(Call call, Plan plan) {
    if (!plan.section("pump").has("power")) {
      throw call.needs("--power");
    }
    if (!plan.section("backup").has("battery")) {
      throw call.needs("--battery");
    }
    if (!plan.section("backup").has("hours") && !plan.section("backup").has("capacity")) {
      throw call.needs("--hours");
    }
  }

  private Answer answer(
      Call call, Battery battery, Backup need, Double hours, Double lasts, Timing timing) {
    Plan plan = call.plan();
    boolean direct = DrawOf.isDirect(plan);
    Backup other =
        direct
            ? null
            : Backup.of(timing, DrawOf.of(plan), Inverter.none(), battery, need.seconds());
    Answer answer =
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
    Row row =
        answer
            .row()
            .set(HOURS, hours)
            .set(DRAW, need.meanW())
            .set(PUMP, need.pumpMeanW())
            .set(IDLE, need.inverterIdleW())
            .set(OTHERS, need.othersMeanW())
            .set(ENERGY, need.energyJ())
            .set(MEAN_A, need.meanA())
            .set(PUMP_A, need.pumpOnA())
            .set(CAPACITY, BatteryOf.ampereHours(need.capacityPeukertC()))
            .set(LASTS, lasts)
            .set(DRY, RunNeeds.dryDay(plan))
            .set(PANEL, panel(call, need));
    if (other != null) {
      row.set(DC_ENERGY, other.energyJ())
          .set(DC_CAPACITY, BatteryOf.ampereHours(other.capacityPeukertC()));
    }
    boolean lead = "lead".equals(plan.section("backup").word("chemistry"));
    BatterySize buy = BatterySize.atLeast(need.capacityPeukertC(), lead);
    row.set(BUY, BatteryOf.ampereHours(buy.eachC())).set(BUY_COUNT, buy.count());
    if (!direct) {
      row.set(INVERTER, inverter(plan));
    }
    Row all = row.with(typed(plan));
    answer.sentence(all, sentence(buy, hours, lasts));
    figures(answer, all, need, buy, direct);
    working(answer, battery, need);
    call.withTaken(answer);
    minds(call, answer, all, direct);
    if (lasts != null && hours != null && lasts < hours) {
      answer.no();
    }
    return answer;
  }

  private static Double panel(Call call, Backup need) {
    Double sun = call.above0("--sun");
    if (sun == null) {
      return null;
    }
    call.plan().taken().note("panel, wires and charger give 70 %");
    return Solar.panelW(
        need.dayJ(),
        Units.H_D.fromBase(sun),
        Solar.USUAL_PERFORMANCE,
        BatteryOf.efficiency(call.plan()));
  }

  private static Row typed(Plan plan) {
    Section backup = plan.section("backup");
    return Row.aside(CUT, OWNED, VOLTS)
        .set(CUT, backup.typed("hours"))
        .set(OWNED, backup.typed("capacity"))
        .set(VOLTS, backup.typed("battery"));
  }

  /** The least inverter that is sold and starts the pump, or null. */
  private static Double inverter(Plan plan) {
    Section pump = plan.section("pump");
    double inrush = plan.section("controller").section("relay").get("inrush");
    OptionalDouble size =
        Inverter.sizeW(
            new Motor(pump.need("power"), Motor.USUAL_MAINS_V, pump.get("power_factor"), inrush));
    return size.isPresent() ? Double.valueOf(size.getAsDouble()) : null;
  }

  private static String sentence(BatterySize buy, Double hours, Double lasts) {
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

  private static void figures(
      Answer answer, Row row, Backup need, BatterySize buy, boolean direct) {
    answer.figure(row, DRAW, most(need));
    answer.figure(ENERGY.label(), row, "{battery_Wh}");
    answer.figure(row, PUMP_A, "size wire and fuse for this");
    answer.figure(row, CAPACITY, "reserve and depth counted");
    answer.figure(
        row, BUY, buy.count() == 1 ? "the next size that is sold" : "{buy_count} side by side");
    if (row.get(LASTS) != null) {
      answer.figure(LASTS.label(), row, "{lasts_h}");
    }
    if (!direct) {
      answer.figure(
          INVERTER.label(),
          row,
          "{inverter_W} or more",
          "so that it starts the pump; a pure sine wave");
      answer.figure(DC_ENERGY.label(), row, "{dc_battery_Wh}", "{dc_capacity_Ah}, no inverter");
    }
    if (row.get(PANEL) != null) {
      answer.figure(row, PANEL, "for a whole day, every day, in that sun");
    }
    answer.figure(row, DRY, "by day, about; so a cut may last that long with no battery");
  }

  private static String most(Backup need) {
    switch (need.largestPart()) {
      case INVERTER_IDLE:
        return "the inverter's idle {inverter_idle_W} is the most of it";
      case CONTROLLER_AND_COIL:
        return "controller and coil are the most of it";
      default:
        return "the pump is the most of it";
    }
  }

  private static void minds(Call call, Answer answer, Row row, boolean direct) {
    answer.safety("battery", Cautions.BATTERY);
    if (!direct) {
      answer.safety("mains", Cautions.MAINS);
    }
    answer.mind(
        "mean-current",
        row,
        "counted at the mean current; pulses of {pump_on_A} tire a battery more, so this is the hopeful side.");
    if (!direct) {
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
              + Call.quoted(call.plan().section("backup").typed("battery"))
              + "   with a pump on the battery itself");
    }
  }

  private static void working(Answer answer, Battery battery, Backup need) {
    answer.working(
        Working.of(
            "average draw",
            "W = P s/efficiency + inverter idle + controller + coil",
            Phrase.of("pump ")
                .add(need.pumpMeanW(), Show.W)
                .add(", idle ")
                .add(need.inverterIdleW(), Show.W)
                .add(", others ")
                .add(need.othersMeanW(), Show.W),
            need.meanW(),
            Show.W.digits(4),
            "any",
            "energy balance"));
    answer.working(
        Working.of(
            "capacity",
            "Ah = W h/(U depth) (1 + reserve), or Peukert's where that is more",
            Phrase.of("U = ")
                .add(battery.volts(), Show.V)
                .add(", depth ")
                .add(battery.depth(), Show.PERCENT)
                .add(", reserve ")
                .add(battery.reserve(), Show.PERCENT),
            BatteryOf.ampereHours(need.capacityPeukertC()),
            Show.AH.digits(4),
            "no bonus for slow discharge",
            "charge balance; W. Peukert's law"));
  }
}
