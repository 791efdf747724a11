package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.MeasuredWords;
import leat.energy.DryLimit;
import leat.energy.Timing;
import leat.level.CapSensor;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.system.RunNeeds;
import leat.system.SetValves;
import leat.system.TimetableOf;
import leat.system.TowerAt;
import leat.system.Waterway;

/** {@code leat duty cap}: threshold and wait for the moisture sensor in the cap. */
public final class DutyCapCommand extends Command {
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column WET = Column.plain("wet_counts", "water runs at");
  static final Column DRY = Column.plain("dry_counts", "dry at");
  static final Column SIDE = Column.plain("wet_side", "wet lies");
  static final Column FULL = Column.of("wet_after_full_s", "tank full", Show.S);
  static final Column LOW = Column.of("wet_after_low_s", "at the refill mark", Show.S);
  static final Column JUDGE = Column.plain("judge_after_s", "judge after s");
  static final Column RUN = Column.of("shortest_run_s", "shortest run", Show.S.digits(2));
  static final Column ALARM = Column.of("alarm_after_min", "alarm after", Show.MIN.digits(2));

  private static final Column DRY_TOWER = Column.plain("dry_tower", "no water");

  @Override
  public String name() {
    return "duty cap";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of("--wet", "COUNTS", Kind.COUNT, "1350", "counts of the sensor under running water")
          .sets("cap_sensor.wet"),
      Flag.of("--dry", "COUNTS", Kind.COUNT, "2750", "counts of the sensor when dried out")
          .sets("cap_sensor.dry"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    Plan plan = call.plan();
    Section section = plan.section("cap_sensor");
    CapSensor sensor = new CapSensor(section.need("wet"), section.need("dry"));
    Waterway way = Waterway.judged(plan, call.taken());
    SetValves valves = SetValves.of(way, call.taken());
    DryLimit dry = RunNeeds.dryLimit(plan, call.taken());
    Double run = shortestRun(plan);
    Answer answer = new Answer(TOWER, WET, DRY, SIDE, FULL, LOW, JUDGE, RUN, ALARM);
    for (int t = 0; t < way.towers(); t++) {
      OptionalDouble low = new TowerAt(way, t, valves.low(way)).fillTime();
      OptionalDouble full = new TowerAt(way, t, valves.flows(way, way.full())).fillTime();
      Row row = sensor(answer.row(), sensor).set(RUN, run).set(ALARM, dry.alarmS());
      fill(row.set(TOWER, way.name(t)), full, low);
    }
    MeasuredWords.say(answer, way.believed(), "");
    alarm(answer, dry, plan);
    say(call, answer, sensor, run);
    return answer;
  }

  private static void alarm(Answer answer, DryLimit dry, Plan plan) {
    if (dry.alarmsWithin(RunNeeds.longestRest(plan))) {
      answer.mind(
          "alarm-in-rest",
          "dry_limit.alarm is no longer than the longest rest of timing: a sensor that dries in a rest raises it each time.");
    }
  }

  /** The first tower whose cap no water reaches with the tank low, or null. */
  private static String dryTower(Answer towers) {
    for (int i = 0; i < towers.size(); i++) {
      if (towers.row(i).get(LOW) == null) {
        return (String) towers.row(i).get(TOWER);
      }
    }
    return null;
  }

  /** When water is at the last cap with the tank low, s. */
  private static double latest(Answer towers) {
    double latest = 0;
    for (int i = 0; i < towers.size(); i++) {
      Object low = towers.row(i).get(LOW);
      latest = low == null ? latest : Math.max(latest, (Double) low);
    }
    return latest;
  }

  private static Row sensor(Row row, CapSensor sensor) {
    return row.set(WET, sensor.wetAt())
        .set(DRY, sensor.dryAt())
        .set(SIDE, sensor.fewerIsWet() ? "at-or-under" : "at-or-over");
  }

  private static void fill(Row row, OptionalDouble full, OptionalDouble low) {
    if (full.isPresent()) {
      row.set(FULL, full.getAsDouble());
    }
    if (low.isPresent()) {
      row.set(LOW, low.getAsDouble()).set(JUDGE, CapSensor.judgeAfter(low.getAsDouble()));
    }
  }

  /** The shortest run of the plan's timings, or null when it names none. */
  private static Double shortestRun(Plan plan) {
    if (!TimetableOf.isKnown(plan)) {
      return null;
    }
    leat.energy.Timetable table = TimetableOf.of(plan);
    double least = Double.MAX_VALUE;
    for (int i = 0; i < table.size(); i++) {
      Timing timing = table.timing(i);
      least = Math.min(least, timing.runS());
    }
    return least;
  }

  private static void say(Call call, Answer answer, CapSensor sensor, Double run) {
    String dryTower = dryTower(answer);
    Row said = said(answer, sensor, run);
    boolean late = run != null && CapSensor.judgeAfter(latest(answer)) > run;
    answer.sentence(said, sentence(sensor, dryTower, late));
    figures(answer, said, sensor);
    call.withTaken(answer);
    answer.taken(said, "judged after twice the time that water needs");
    answer.mind(
        "cap-drifts",
        "sensors drift with salt and age: read wet and dry again each month. Counts between the two thresholds say nothing yet.");
    working(answer, said, sensor);
    answer.next(call.again("duty") + "   tells the least run that wets the lowest pot too");
    if (dryTower != null || late) {
      answer.no();
    }
  }

  private static Row said(Answer answer, CapSensor sensor, Double run) {
    double latest = latest(answer);
    return Row.aside(DRY_TOWER, WET, DRY, LOW, JUDGE, RUN, ALARM)
        .set(DRY_TOWER, dryTower(answer))
        .set(WET, sensor.wetAt())
        .set(DRY, sensor.dryAt())
        .set(LOW, latest)
        .set(JUDGE, CapSensor.judgeAfter(latest))
        .set(RUN, run)
        .set(ALARM, (Double) answer.row(0).get(ALARM));
  }

  private static String sentence(CapSensor sensor, String dryTower, boolean late) {
    if (dryTower != null) {
      return "No water reaches the cap of {dry_tower} with the tank at the refill mark: its alarm would be right.";
    }
    String threshold =
        sensor.fewerIsWet()
            ? "Water runs at {wet_counts} counts or fewer; it is at the cap {wet_after_low_s} after the pump's start, so judge after {judge_after_s} s."
            : "Water runs at {wet_counts} counts or more; it is at the cap {wet_after_low_s} after the pump's start, so judge after {judge_after_s} s.";
    return late
        ? "The shortest run, {shortest_run_s}, ends before the sensor can be judged. " + threshold
        : threshold;
  }

  private static void figures(Answer answer, Row said, CapSensor sensor) {
    answer.figure(
        "dry",
        said,
        sensor.fewerIsWet() ? "{dry_counts} counts or more" : "{dry_counts} counts or fewer",
        "alarm when it stays so for {alarm_after_min}");
    answer.table(TOWER, FULL, LOW, JUDGE);
  }

  private static void working(Answer answer, Row said, CapSensor sensor) {
    answer.working(
        Working.number(
            "threshold",
            "counts = wet + 0.5 (dry - wet)",
            Answer.filled(said, "towards wet"),
            sensor.wetAt(),
            5,
            "either sense",
            "common practice, no source"));
  }
}
