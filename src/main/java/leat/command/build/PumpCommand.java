package leat.command.build;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.command.MeasuredWords;
import leat.hydraulics.Cap;
import leat.hydraulics.Derate;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.OperatingPoint;
import leat.hydraulics.PumpCurve;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.MeasuredFlow;
import leat.system.PumpOf;
import leat.system.TankOf;
import leat.system.TowerAt;
import leat.system.Valves;
import leat.system.Waterway;

/** {@code leat pump}: where a pump's curve meets the risers. */
public final class PumpCommand extends Command {
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column AT = Column.plain("at", "tank");
  static final Column LEVEL = Column.of("level_mm", "level", Show.MM);
  static final Column FLOW = Column.of("flow_L_min", "flow", Show.L_MIN);
  static final Column HEAD = Column.of("head_m", "pump's head", Show.M);
  static final Column REACHES = Column.plain("reaches_top", "reaches the top");
  static final Column MARGIN = Column.of("margin_m", "margin", Show.M);
  static final Column MARGIN_PCT = Column.of("margin_pct", "margin over the lift", Show.PERCENT);
  static final Column FILL = Column.of("fill_time_s", "water at the top after", Show.S);
  static final Column RISER = Column.of("riser_L", "riser holds", Show.L);
  static final Column BACK = Column.of("drain_back_L", "drains back", Show.L);
  static final Column POWER = Column.of("hydraulic_power_W", "power in the water", Show.W);
  static final Column VELOCITY = Column.of("velocity_m_s", "speed", Show.M_S);
  static final Column FILM = Column.of("film_mm", "film", Show.MM.digits(2));
  static final Column FILM_SPEED = Column.of("film_speed_m_s", "film's speed", Show.M_S.digits(2));
  static final Column TRANSIT = Column.of("transit_s", "down the wall in", Show.S);
  static final Column PUSH = Column.of("push_N", "push on the cap", Show.N);
  static final Column HOLD = Column.of("hold_down_N", "cap holds down", Show.N);
  static final Column VALVE_HEAD = Column.of("valve_head_m", "held back", Show.M);
  static final Column VALVE_K = Column.number("valve_k", "K of the valve", 3);
  static final Column LITRE = Column.of("litre_in_s", "1 L in", Show.S);
  static final Column DERATE = Column.of("derate_pct", "share of the printed head", Show.PERCENT);
  static final Column DERATE_HIGH = Column.of("derate_high_pct", "at most", Show.PERCENT);
  static final Column FLOW_70 = Column.of("flow_at_70pct_L_min", "flow at 70 %", Show.L_MIN);
  static final Column EFFICIENCY = Column.of("efficiency_pct", "wire to water", Show.PERCENT);
  static final Column STATUS = Column.plain("status", "status");
  static final Column[] ONE = {
    FLOW, HEAD, REACHES, MARGIN, MARGIN_PCT, FILL, RISER, BACK, POWER,
    VELOCITY, DERATE, DERATE_HIGH, FLOW_70, EFFICIENCY, VALVE_HEAD, VALVE_K, LITRE, STATUS
  };
  static final Column[] PLAN = {
    TOWER, AT, LEVEL, FLOW, HEAD, REACHES, MARGIN, MARGIN_PCT, FILL,
    RISER, BACK, POWER, VELOCITY, FILM, FILM_SPEED, TRANSIT, PUSH, HOLD,
    DERATE, DERATE_HIGH, FLOW_70, EFFICIENCY, VALVE_HEAD, VALVE_K, LITRE, STATUS
  };

  @Override
  public String name() {
    return "pump";
  }

  @Override
  public boolean eachPlan() {
    return true;
  }

  @Override
  public Flag[] flags() {
    return PumpFlags.all();
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    oneQuestion(call);
    Plan plan = call.plan();
    if (call.has("--needed")) {
      return needed(call);
    }
    if (!PumpOf.isKnown(plan.section("pump")) && !call.hasPlan()) {
      throw new Refused(
          CommandErrors.neededOneOf(
              this,
              "a pump's curve is needed: --shutoff-head and --max-flow from its box, or several --point"));
    }
    if (call.has("--balance")) {
      BalanceAnswer.accept(this, call);
    }
    needLift(call);
    Waterway way =
        Waterway.of(plan, call.quantity("--temperature"), call.quantity("--lift"), call.taken());
    if (call.has("--measured")) {
      return new MeasuredAnswer(call, way).answer((MeasuredFlow) call.value("--measured"));
    }
    if (call.has("--balance")) {
      return new BalanceAnswer(call, way).answer();
    }
    if (call.has("--bores")) {
      return new PumpBores(call, way, HeadInput.tower(call, way)).answer(levels(call, way)[0]);
    }
    return flows(call, way);
  }

  private void needLift(Call call) {
    if (call.has("--lift") && call.has("--level")) {
      throw new Refused(CommandErrors.notBoth(this, "--lift", "--level"));
    }
    if (!call.hasPlan() && !call.has("--lift")) {
      throw call.needs("--lift");
    }
  }

  private Answer needed(Call call) {
    needLift(call);
    Waterway way =
        Waterway.ofPipes(
            call.plan(), call.quantity("--temperature"), call.quantity("--lift"), call.taken());
    return new NeededAnswer(call, way).answer();
  }

  private static Answer flows(Call call, Waterway way) {
    Answer answer = call.hasPlan() ? new Answer(PLAN).asList() : new Answer(ONE);
    double[] levels = levels(call, way);
    List<List<TowerAt>> states = new ArrayList<>();
    for (int l = 0; l < levels.length; l++) {
      states.add(rows(call, answer, way, levels[l], at(call, l, levels.length)));
    }
    new PumpWords(call, answer, way, states, levels).write();
    PumpWorkings.flows(answer, answer.row(0), way, states.get(0).get(0));
    MeasuredWords.say(answer, way.believed(), "");
    if (call.wantsChart()) {
      String[] one = {call.has("--lift") ? "as told" : "at this level"};
      String[] both = {"at the refill mark", "full"};
      answer.chart(PumpChart.of(way, levels, levels.length == 1 ? one : both));
    }
    call.withTaken(answer);
    return anyDry(states) && !wateredByValves(call, way, levels[0]) ? answer.no() : answer;
  }

  /** Word for the level of the tank. */
  private static String at(Call call, int level, int levels) {
    if (levels == 1) {
      return call.has("--level") ? "level" : "lift";
    }
    return level == 0 ? "low" : "full";
  }

  /** What is asked: one thing at a time. */
  private void oneQuestion(Call call) {
    String[] questions = {"--balance", "--needed", "--bores", "--measured"};
    String first = null;
    for (int i = 0; i < questions.length; i++) {
      if (call.has(questions[i]) && first != null) {
        throw new Refused(CommandErrors.notBoth(this, first, questions[i]));
      }
      first = call.has(questions[i]) ? questions[i] : first;
    }
    if (call.has("--throttle-to") && ("--bores".equals(first) || "--measured".equals(first))) {
      throw new Refused(CommandErrors.notBoth(this, first, "--throttle-to"));
    }
  }

  private static double[] levels(Call call, Waterway way) {
    if (call.has("--lift")) {
      return new double[] {0};
    }
    Double level = call.from0("--level");
    if (level == null) {
      return new double[] {way.low(), way.full()};
    }
    TankOf.acceptLevel(call.plan(), "level", level);
    return new double[] {level};
  }

  /** Asked for valves, and every tower has the flow then, though one is dry with all open. */
  static boolean wateredByValves(Call call, Waterway way, double level) {
    Double wanted = call.above0("--throttle-to");
    return wanted != null && Valves.of(way, way.flows(level), wanted).allReachable();
  }

  private static boolean anyDry(List<List<TowerAt>> states) {
    for (int l = 0; l < states.size(); l++) {
      for (int t = 0; t < states.get(l).size(); t++) {
        if (!states.get(l).get(t).reaches()) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<TowerAt> rows(
      Call call, Answer answer, Waterway way, double level, String at) {
    ManifoldFlow flows = way.flows(level);
    boolean told = way.believed().kind() != Derate.Kind.NOT_NAMED;
    ManifoldFlow usual = told ? null : way.flowsAt(PumpCurve.USUAL_DERATE_WORN, level);
    Valves valves = Valves.of(way, flows, call.above0("--throttle-to"));
    List<TowerAt> towers = new ArrayList<>();
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = new TowerAt(way, t, flows);
      towers.add(tower);
      Row row = answer.row();
      fill(row, tower, flows, way);
      if (usual != null) {
        row.set(FLOW_70, usual.flow(way.riserOf(t)));
      }
      if (valves.areWanted()) {
        valve(row, valves, t, tower.reaches());
      }
      if (call.hasPlan()) {
        place(row, tower, at, call.has("--lift") ? null : Double.valueOf(level));
      }
    }
    return towers;
  }

  private static void place(Row row, TowerAt tower, String at, Double level) {
    row.set(TOWER, tower.name()).set(AT, at).set(LEVEL, level);
    film(row, tower);
  }

  private static void valve(Row row, Valves valves, int t, boolean reaches) {
    row.set(VALVE_HEAD, valves.of(t).valveHead())
        .set(VALVE_K, valves.of(t).valveK())
        .set(LITRE, valves.litreIn(t));
    if (!valves.of(t).reachable() && reaches) {
      row.set(STATUS, "wanted-flow-not-reachable");
    }
  }

  private static void fill(Row row, TowerAt tower, ManifoldFlow flows, Waterway way) {
    row.set(FLOW, tower.flow())
        .set(HEAD, flows.pumpHead())
        .set(REACHES, tower.reaches())
        .set(MARGIN, tower.margin())
        .set(MARGIN_PCT, orNull(tower.marginShare()))
        .set(FILL, orNull(tower.fillTime()))
        .set(RISER, tower.riserVolume())
        .set(BACK, tower.drainBack())
        .set(POWER, tower.hydraulicPower())
        .set(VELOCITY, tower.velocity())
        .set(DERATE, nothingCame(way) ? null : Double.valueOf(way.derate()))
        .set(DERATE_HIGH, nothingCame(way) ? orNull(way.believed().high()) : null)
        .set(EFFICIENCY, way.efficiency(flows))
        .set(STATUS, tower.reaches() ? status(flows) : "no-flow");
  }

  private static String status(ManifoldFlow flows) {
    return flows.status() == OperatingPoint.Status.RUN_OUT ? "run-out" : "flow";
  }

  private static void film(Row row, TowerAt tower) {
    Film film = tower.film();
    if (film != null) {
      row.set(FILM, film.thickness())
          .set(FILM_SPEED, film.meanSpeed())
          .set(TRANSIT, film.transitTime());
    }
    Cap cap = tower.cap();
    if (cap != null) {
      row.set(PUSH, cap.jetForce()).set(HOLD, cap.holdDown());
    }
  }

  /** A bucket that stayed empty tells a ceiling only. */
  static boolean nothingCame(Waterway way) {
    return way.believed().kind() == Derate.Kind.NO_FLOW;
  }

  static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }
}
