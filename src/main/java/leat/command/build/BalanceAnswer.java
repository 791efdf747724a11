package leat.command.build;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.command.MeasuredWords;
import leat.hydraulics.Balance;
import leat.hydraulics.Film;
import leat.hydraulics.SetValve;
import leat.plan.Refused;
import leat.system.Balanced;
import leat.system.Waterway;

/** Answers {@code leat pump --balance}: how far to close each tower's valve, jug in hand. */
final class BalanceAnswer {
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column STATUS = Column.plain("status", "status");
  static final Column SHARE =
      Column.of("share_of_wanted_pct", "share of wanted", Show.PERCENT.digits(3));
  static final Column LIMITING = Column.plain("limiting", "decides");
  static final Column LEFT =
      Column.of("left_for_others_L_min", "left for the others together", Show.L_MIN);
  static final Column SET = Column.of("set_flow_L_min", "set to", Show.L_MIN);
  static final Column HELD = Column.of("valve_head_m", "held back", Show.M);
  static final Column K = Column.number("valve_K", "K of the valve", 3);
  static final Column JUG_TIME = Column.of("jug_s", "jug full in", Show.S.digits(3));
  static final Column ORDER = Column.plain("order", "set as number");
  static final Column FULL = Column.of("flow_full_L_min", "tank full", Show.L_MIN);
  static final Column LOW = Column.of("flow_low_L_min", "refill mark", Show.L_MIN);
  static final Column WORN = Column.of("flow_70pct_L_min", "at 70 % of the head", Show.L_MIN);
  static final Column WANTED = Column.of("wanted_L_min", "wanted", Show.L_MIN);
  static final Column OPEN = Column.of("open_flow_L_min", "all open", Show.L_MIN);
  static final Column VALVE = Column.plain("valve", "valve");
  static final Column JUG = Column.of("jug_L", "jug", Show.L);
  static final Column ROUNDS = Column.number("rounds", "rounds", 2);
  static final Column CLOSED_FILM = Column.of("closed_film_L_min", "closes the film", Show.L_MIN);

  private static final Column NAMES = Column.plain("names", "towers in order");

  private final Call call;
  private final Waterway way;
  private final Answer answer =
      new Answer(
              TOWER,
              STATUS,
              SHARE,
              LIMITING,
              LEFT,
              SET,
              HELD,
              K,
              JUG_TIME,
              ORDER,
              FULL,
              LOW,
              WORN,
              WANTED,
              OPEN,
              VALVE,
              JUG,
              ROUNDS,
              CLOSED_FILM)
          .asList();

  BalanceAnswer(Call call, Waterway way) {
    this.call = call;
    this.way = way;
  }

  /** Balancing needs a plan with its marks, and asks for one thing. */
  static void accept(Command pump, Call call) {
    if (!call.hasPlan()) {
      throw new Refused(CommandErrors.neededPlan(pump));
    }
    String[] others = {"--lift", "--level"};
    for (int i = 0; i < others.length; i++) {
      if (call.has(others[i])) {
        throw new Refused(CommandErrors.notBoth(pump, "--balance", others[i]));
      }
    }
  }

  Answer answer() {
    boolean full = "full".equals(call.text("--at"));
    double level = full ? way.full() : way.low();
    Double jug = call.above0("--jug");
    Balanced balanced = balanced(level);
    for (int t = 0; t < way.towers(); t++) {
      fill(answer.row(), balanced, t, jug == null ? PumpWords.usualJug(call) : jug);
    }
    sentence(balanced);
    figures(balanced, full);
    minds(balanced);
    if (jug == null) {
      answer.taken(row(), "a jug of {jug_L}");
    }
    workings();
    MeasuredWords.say(answer, way.believed(), "");
    call.withTaken(answer);
    next(balanced);
    return balanced.balance().met() ? answer : answer.no();
  }

  private void workings() {
    answer.working(
        row(),
        JUG_TIME,
        "t = V/Q",
        "V = {jug_L}, Q = {set_flow_L_min}",
        "with all towers running",
        "definition");
    answer.working(
        row(),
        HELD,
        "valve's head = pump's head - lift - losses, all at the set flow",
        "Q = {set_flow_L_min}",
        "losses of the common pipe carry all towers' flow",
        "energy balance; losses of leat head");
  }

  private Balanced balanced(double level) {
    return "equal".equals(call.text("--balance"))
        ? Balanced.equal(way, level)
        : Balanced.wanted(way, level, call.above0("--throttle-to"));
  }

  private void figures(Balanced balanced, boolean full) {
    answer.figure(
        "valves are set", row(), full ? "with the tank full" : "with the tank at its refill mark");
    if (balanced.balance().leftForOthers().isPresent()) {
      answer.figure(row(), LEFT, "if {limiting} shall have all it wants");
    }
    answer.table(TOWER, OPEN, SET, JUG_TIME, ORDER, HELD, LOW, FULL, WORN);
  }

  private Row row() {
    return answer.row(0);
  }

  private void fill(Row row, Balanced balanced, int t, double jug) {
    Balance balance = balanced.balance();
    Integer place = balanced.place(t);
    row.set(TOWER, way.name(t))
        .set(STATUS, balance.status().word())
        .set(SHARE, PumpCommand.orNull(balance.share()))
        .set(LIMITING, balanced.limiting())
        .set(LEFT, PumpCommand.orNull(balance.leftForOthers()))
        .set(ROUNDS, balance.rounds())
        .set(FULL, balanced.atFull(t))
        .set(LOW, balanced.atLow(t))
        .set(WORN, balanced.atWorn(t))
        .set(JUG, jug)
        .set(JUG_TIME, PumpCommand.orNull(balanced.jugTime(t, jug)));
    if (place != null) {
      row.set(ORDER, place.intValue());
    }
    fill(row, balanced.valve(t), balanced.film(t));
  }

  private static void fill(Row row, SetValve valve, Film film) {
    row.set(SET, valve.flow())
        .set(HELD, PumpCommand.orNull(valve.head()))
        .set(K, PumpCommand.orNull(valve.k()))
        .set(WANTED, valve.wanted())
        .set(OPEN, valve.openFlow())
        .set(VALVE, valve.state().word())
        .set(CLOSED_FILM, film == null ? null : Double.valueOf(film.flowForClosedFilm()));
  }

  private void sentence(Balanced balanced) {
    String said = said(balanced.balance().status(), balanced.balance().share().isEmpty());
    if (said == null) {
      DryTowers.say(answer, way, balanced);
    } else {
      answer.sentence(row(), said);
    }
  }

  /** What is said where all towers get water or none does, else null. */
  private static String said(Balance.Status status, boolean equal) {
    switch (status) {
      case WANTED:
        return "With the valves set, every tower gets the flow it wants.";
      case EQUAL:
        return "Every tower can get {set_flow_L_min}, no more: {limiting} decides, its valve stays open.";
      case SHORT:
        return "The pump cannot give all that is wanted: each tower can get {share_of_wanted_pct} of it; {limiting} decides, its valve stays open.";
      case END_OF_CURVE:
        return equal
            ? "The printed curve of the pump ends first: {set_flow_L_min} for each tower is the most that it promises."
            : "The printed curve of the pump ends first: it promises each tower {share_of_wanted_pct} of what it wants.";
      case NO_FLOW:
        return "No tower gets water: every outlet is higher than the pump can lift.";
      default:
        return null;
    }
  }

  private void minds(Balanced balanced) {
    for (int t = 0; t < way.towers(); t++) {
      minds(answer.row(t), balanced, t);
    }
    if (balanced.driesWhenWorn()) {
      answer.mind(
          "dry-when-worn",
          "with 70 % of the printed head left one tower gets nothing: look again when the pump is a year old.");
    }
    if (way.believed().measured() == null) {
      answer.mind(
          "derate-guess",
          "how much of the printed head is left is a guess; the jugs, not this table, set the valves.");
    }
  }

  private void minds(Row row, Balanced balanced, int t) {
    Film film = balanced.film(t);
    if (film != null && film.rivuletsLikely()) {
      answer.mind(
          "rivulets",
          row,
          "{tower}: {set_flow_L_min} runs in rivulets on clean plastic; about {closed_film_L_min:up} closes the film.");
    }
    valve(row, balanced, t);
    if (row.get(JUG_TIME) != null && SetValve.tooQuick((Double) row.get(JUG_TIME))) {
      answer.mind(
          "small-jug",
          row,
          "a jug that fills in {jug_s} is too small for a watch that is good to a second: take a larger one.");
    }
  }

  private void valve(Row row, Balanced balanced, int t) {
    if (balanced.lacksValve(t)) {
      answer.mind(
          "valve-needed", row, "{tower}: the plan has no valve in this riser; it needs one.");
    }
    if (balanced.valve(t).wantsClamp()) {
      answer.mind(
          "coarse-valve",
          row,
          "{tower}: a ball valve is too coarse to hold back so much (K {valve_K}); take a screw clamp or a smaller pump.");
    }
  }

  private void next(Balanced balanced) {
    if (balanced.balance().rounds() == 0) {
      answer.next(call.again("pump") + "   to see each tower with its valve open");
      return;
    }
    StringBuilder names = new StringBuilder();
    int[] order = balanced.order();
    int valves = 0;
    for (int i = 0; i < order.length; i++) {
      int t = order[i];
      if (balanced.valve(t).state() != SetValve.State.OPEN) {
        names.append(valves == 0 ? "" : ", then ").append(way.name(t));
        names.append(way.count(t) > 1 ? " (each of " + way.count(t) + ")" : "");
        valves += way.count(t);
      }
    }
    Row row = row().with(Row.aside(NAMES).set(NAMES, names.toString()));
    if (valves == 0) {
      answer.next(call.again("pump") + "   to see each tower with its valve open");
    } else if (valves == 1) {
      answer.next(
          row,
          "open all valves, let all towers run, and close the one of {names} until the jug ({jug_L}) fills in its time. Pour the water back.");
    } else {
      answer.next(
          row,
          "open all valves, let all towers run, and close one after the other until the jug ({jug_L}) fills in its time: {names}. Go round {rounds} times, as each valve that is closed gives the others more. Pour the water back.");
    }
  }
}
