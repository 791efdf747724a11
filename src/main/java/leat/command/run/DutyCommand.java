package leat.command.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.energy.Cautions;
import leat.energy.Draw;
import leat.energy.RelayLife;
import leat.energy.Saving;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.system.DrawOf;
import leat.system.PeriodOf;
import leat.system.TariffOf;
import leat.system.ZoneOf;

/** {@code leat duty}: pump timing, its energy and money, against other timings. */
public final class DutyCommand extends Command {
  static final Column TIMING = Column.plain("timing", "timing");
  static final Column RUN = Column.of("run_s", "run", Show.S.digits(4));
  static final Column REST = Column.of("rest_s", "rest", Show.S.digits(4));
  static final Column SHARE = Column.of("run_share_pct", "pump runs", Show.PERCENT.digits(3));
  static final Column STARTS = Column.number("starts_per_day", "starts per day", 3);
  static final Column KWH_DAY = Column.of("kwh_day", "energy per day", Show.KWH);
  static final Column COST_DAY = Column.number("cost_day", "cost per day", 3);
  static final Column KWH = Column.of("kwh_total", "energy in all", Show.KWH);
  static final Column COST = Column.number("cost_total", "cost in all", 4);
  static final Column CURRENCY = Column.plain("currency", "currency");
  static final Column DAYS = Column.number("days", "days", 4);
  static final Column SAVED_KWH = Column.of("saving_kwh", "energy kept", Show.KWH);
  static final Column SAVED = Column.number("saving_cost", "you keep", 4);
  static final Column SAVED_SHARE = Column.of("saving_pct", "less energy", Show.PERCENT);
  static final Column RUN_TOTAL = Column.of("run_total_h", "pump in all", Show.H);
  static final Column STARTS_TOTAL = Column.number("starts_total", "starts in all", 3);
  static final Column RELAY_DAYS = Column.number("relay_days", "relay lasts days", 3);
  private static final int OF_CSV = 9;

  private static final Column INRUSH = Column.of("inrush_A", "at the start", Show.A);
  private static final Column CONTACT = Column.of("contact_A", "contact", Show.A);
  private static final Column HINT = Column.of("controller_W", "controller", Show.W.digits(2));
  private static final Column HINT_KWH =
      Column.of("controller_kWh", "controller's energy", Show.KWH.digits(2));
  private static final Column HINT_SHARE = Column.of("controller_pct", "of the pump", Show.PERCENT);

  @Override
  public String name() {
    return "duty";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      DutyFlags.power(),
      DutyFlags.run(),
      DutyFlags.rest(),
      Flag.of(
              "--against",
              "RUN/REST",
              Kind.TIMING,
              "15 min/15 min",
              "another timing to compare with")
          .repeatable(),
      Flag.of(
              "--price",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_ENERGY),
              "0.31 EUR/kWh",
              "price of energy")
          .sets("tariff.price"),
      Flag.of(
              "--standing",
              "PRICE",
              Kind.quantity(Dimension.MONEY_PER_TIME),
              "0.30 EUR/d",
              "standing charge of the meter")
          .sets("tariff.standing"),
      Flag.of(
          "--standing-share",
          "SHARE",
          DutyFlags.SHARE,
          "10 %",
          "share of the standing charge that the tower bears; none otherwise"),
      Flag.of("--days", "N", Kind.DAYS, "180", "length of the period"),
      Flag.of("--from", "DATE", Kind.DATE, "2027-04-10", "first day of the period")
          .sets("season.from"),
      Flag.of("--to", "DATE", Kind.DATE, "2027-10-15", "last day of the period").sets("season.to"),
      Flag.of("--time-zone", "ZONE", Kind.TEXT, "Europe/Vienna", "time zone of the clock")
          .sets("site.time_zone"),
      DutyFlags.controller(),
      Flag.of(
              "--relay",
              "CURRENT",
              Kind.quantity(Dimension.CURRENT),
              "10 A",
              "what the relay's contact is rated for, resistive")
          .sets("controller.relay.rated"),
      Flag.of("--cycles", "N", Kind.COUNT, "100000", "operations the relay is rated for")
          .sets("controller.relay.cycles"),
      Flag.of("--coil", "POWER", DutyFlags.POWER, "0.4 W", "draw of the relay's coil")
          .sets("controller.relay.coil"),
      DutyFlags.inrush(),
      DutyFlags.mains(),
      DutyFlags.dc(),
      Flag.on("--suggest", "proposes the timing of least energy, from the plan's towers"),
      Flag.of(
          "--most-starts",
          "RATE",
          Kind.quantity(Dimension.RATE),
          "4 /h",
          "with --suggest, most starts an hour"),
      Flag.of(
          "--plug-water",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "20 mL",
          "with --suggest, water that one plug and its roots hold"),
      Flag.of(
          "--plant-use",
          "FLOW",
          Kind.quantity(Dimension.FLOW),
          "0.12 L/d",
          "with --plug-water, what one plant drinks"),
      Flag.of("--dry-limit", "TIME", DutyFlags.TIME, "30 min", "longest rest by day")
          .sets("dry_limit.day"),
      Flag.of("--dry-limit-night", "TIME", DutyFlags.TIME, "60 min", "longest rest at night")
          .sets("dry_limit.night"),
      Flag.of("--wetting", "TIME", DutyFlags.TIME, "20 s", "how long the lowest pot is wetted")
          .sets("wetting"),
    };
  }

  @Override
  public Answer answer(Call call) {
    if (call.has("--suggest")) {
      if (!call.hasPlan()) {
        throw new Refused(CommandErrors.neededPlan(this));
      }
      String[] others = {"--against", "--run", "--rest"};
      for (int i = 0; i < others.length; i++) {
        if (call.has(others[i])) {
          throw new Refused(CommandErrors.notBoth(this, "--suggest", others[i]));
        }
      }
      return DutySuggestion.of(call, price(call));
    }
    Timetable timetable = DutyLine.timetable(call);
    List<Object> against = call.values("--against");
    DutyLine.Terms terms = terms(call, timetable);
    List<DutyLine> lines = new ArrayList<>();
    lines.add(terms.line(DutyLine.name(call, timetable), timetable));
    for (int i = 0; i < against.size(); i++) {
      leat.quantity.RunAndRest other = (leat.quantity.RunAndRest) against.get(i);
      lines.add(
          terms.line(
              call.texts("--against").get(i),
              Timetable.of(new Timing(other.run().value(), other.rest().value()))));
    }
    return answer(call, terms, lines);
  }

  private DutyLine.Terms terms(Call call, Timetable timetable) {
    Plan plan = call.plan();
    if (!plan.section("pump").has("power") && !call.hasPlan()) {
      throw call.needs("--power");
    }
    TariffOf price = price(call);
    PeriodOf period =
        PeriodOf.of(plan, timetable, price.tariff(), call.above0("--days"), call.text("--days"));
    return new DutyLine.Terms(plan, price, period);
  }

  private TariffOf price(Call call) {
    if (call.has("--days") && call.has("--to")) {
      throw new Refused(CommandErrors.notBoth(this, "--days", "--to"));
    }
    if (call.has("--time-zone")) {
      ZoneOf.check(call.plan());
    }
    if (call.has("--from") && !call.has("--days") && !call.plan().section("season").has("to")) {
      throw call.needs("--to");
    }
    Double share = call.from0("--standing-share");
    TariffOf price = TariffOf.of(call.plan(), share == null ? 0 : share);
    if (price.hasStanding() && share == null) {
      call.plan().taken().note("standing charge not counted, it is paid anyway");
    }
    return price;
  }

  private Answer answer(Call call, DutyLine.Terms terms, List<DutyLine> lines) {
    Answer answer =
        new Answer(
                TIMING,
                RUN,
                REST,
                SHARE,
                STARTS,
                KWH_DAY,
                COST_DAY,
                KWH,
                COST,
                CURRENCY,
                DAYS,
                SAVED_KWH,
                SAVED,
                SAVED_SHARE,
                RUN_TOTAL,
                STARTS_TOTAL,
                RELAY_DAYS)
            .csvColumns(OF_CSV);
    double operations = DrawOf.operations(call.plan());
    for (int i = 0; i < lines.size(); i++) {
      row(answer, terms, lines.get(0), lines.get(i), operations);
    }
    figures(answer, terms, lines, operations);
    relay(call, answer, terms, lines.get(0));
    Phrase broken = DutyBounds.judge(answer, call.plan(), lines.get(0).timetable, terms.period);
    Phrase words = sentence(terms, lines);
    answer.sentence(broken == null ? words : Phrase.of().add(broken).add(words));
    Timetable table = lines.get(0).timetable;
    if (terms.period.dates() != null && (table.size() > 1 || terms.price.tariff().size() > 1)) {
      DutyDay.draw(answer, table, DutyLine.names(call, table), terms.price, terms.period.dates());
    }
    call.withTaken(answer);
    minds(call, answer, terms, lines);
    working(answer, terms, lines.get(0));
    return answer;
  }

  private static void row(
      Answer answer, DutyLine.Terms terms, DutyLine first, DutyLine line, double operations) {
    Timing timing = line.timing();
    boolean priced = terms.price.isPriced();
    Row row =
        answer
            .row()
            .set(TIMING, line.name)
            .set(RUN, timing == null ? null : Double.valueOf(timing.runS()))
            .set(REST, timing == null ? null : Double.valueOf(timing.restS()))
            .set(SHARE, line.share)
            .set(STARTS, line.startsPerDay)
            .set(KWH_DAY, line.jDay)
            .set(COST_DAY, priced ? Double.valueOf(line.costDay) : null)
            .set(KWH, line.j)
            .set(COST, priced ? Double.valueOf(line.cost) : null)
            .set(CURRENCY, terms.price.currency())
            .set(DAYS, terms.period.days())
            .set(RUN_TOTAL, line.runS)
            .set(STARTS_TOTAL, line.starts)
            .set(RELAY_DAYS, orNull(RelayLife.days(operations, line.startsPerDay)));
    if (line != first) {
      Saving saving = first.saved(line);
      row.set(SAVED_KWH, saving.energyJ())
          .set(SAVED, priced ? Double.valueOf(saving.money()) : null)
          .set(SAVED_SHARE, orNull(saving.share()));
    }
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }

  private static Phrase sentence(DutyLine.Terms terms, List<DutyLine> lines) {
    DutyLine first = lines.get(0);
    Phrase words = what(first);
    amount(words, terms, first, " costs ", " takes ")
        .add(" in ")
        .add(whole(terms.period.days(), 3))
        .add(terms.period.days() == 1 ? " day" : " days");
    if (lines.size() == 1) {
      return words.add(".");
    }
    DutyLine other = lines.get(1);
    amount(words.add("; ").add(other.name), terms, other, " would cost ", " would take ");
    Saving saving = first.saved(other);
    boolean priced = terms.price.isPriced();
    double kept = priced ? saving.money() : saving.energyJ();
    if (Math.abs(saving.energyJ()) < 1) {
      return words.add(", the same.");
    }
    words.add(kept < 0 ? ", so this one takes " : ", so you keep ");
    if (priced) {
      words.money(Math.abs(kept), terms.price.currency());
    } else {
      words.add(Math.abs(kept), Show.KWH);
    }
    return words.add(kept < 0 ? " more." : ".");
  }

  private static Phrase what(DutyLine line) {
    Timing timing = line.timing();
    if (timing == null) {
      return Phrase.of("The plan's timing");
    }
    String run = line.name.substring(0, line.name.indexOf('/'));
    if (timing.withoutPause()) {
      return Phrase.of("Running without pause");
    }
    return Phrase.of(run).add(" every ").add(cycle(timing.cycleS()));
  }

  /** A whole number without decimals, others with significant digits. */
  public static Phrase whole(double value, int digits) {
    return NumberText.isWhole(value)
        ? Phrase.of().count((long) value)
        : Phrase.of().number(value, digits);
  }

  /** A cycle to the second where it matters: 13.5 min, not 14. */
  private static Phrase cycle(double seconds) {
    if (seconds < Units.MIN.toBase(2)) {
      return Phrase.of(seconds, Show.S.digits(3));
    }
    return seconds < Units.H.toBase(2) ? Phrase.of(seconds, Show.MIN) : Phrase.of(seconds, Show.H);
  }

  private static Phrase amount(
      Phrase words, DutyLine.Terms terms, DutyLine line, String costs, String takes) {
    return terms.price.isPriced()
        ? words.add(costs).money(line.cost, terms.price.currency())
        : words.add(takes).add(line.j, Show.KWH);
  }

  private static void figures(
      Answer answer, DutyLine.Terms terms, List<DutyLine> lines, double operations) {
    int n = lines.size();
    Phrase[] names = new Phrase[n];
    Phrase[] shares = new Phrase[n];
    Phrase[] starts = new Phrase[n];
    Phrase[] runs = new Phrase[n];
    Phrase[] days = new Phrase[n];
    Phrase[] all = new Phrase[n];
    Phrase[] costs = new Phrase[n];
    Phrase[] relays = new Phrase[n];
    for (int i = 0; i < n; i++) {
      DutyLine line = lines.get(i);
      names[i] = Phrase.of(line.name);
      shares[i] = Phrase.of(line.share, Show.PERCENT);
      starts[i] = whole(line.startsPerDay, 3);
      runs[i] = Phrase.of(line.runS, Show.H).add(", ").number(line.starts, 3).add(" starts");
      days[i] = Phrase.of(line.jDay, Show.KWH);
      all[i] = Phrase.of(line.j, Show.KWH);
      costs[i] = Phrase.of().money(line.cost, terms.price.currency());
      OptionalDouble relay = RelayLife.days(operations, line.startsPerDay);
      relays[i] =
          relay.isEmpty()
              ? Phrase.of("never switches")
              : Phrase.of().number(relay.getAsDouble(), 3).add(" days");
    }
    if (n > 1) {
      answer.figure("", names);
    }
    answer.figure(SHARE.label(), shares);
    answer.figure(STARTS.label(), starts);
    answer.figure(RUN_TOTAL.label(), runs);
    answer.figure(KWH_DAY.label(), days);
    answer.figure(KWH.label(), all);
    if (terms.price.isPriced()) {
      answer.figure(COST.label(), costs);
    }
    answer.figure("relay's " + grouped(operations), relays);
  }

  private static String grouped(double operations) {
    String text = Phrase.of().count(NumberText.nearest(operations)).render(false);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      if (i > 0 && (text.length() - i) % 3 == 0 && text.length() > 4) {
        out.append(' ');
      }
      out.append(text.charAt(i));
    }
    return out.toString();
  }

  private static void relay(Call call, Answer answer, DutyLine.Terms terms, DutyLine line) {
    if (!DrawOf.isRelayKnown(call.plan())) {
      return;
    }
    RelayLife life =
        RelayLife.of(
            DrawOf.motor(call.plan()),
            DrawOf.contact(call.plan()),
            line.starts,
            terms.period.days());
    Row row =
        Row.aside(INRUSH, CONTACT)
            .set(INRUSH, life.inrushA())
            .set(CONTACT, DrawOf.contact(call.plan()).ratedA());
    answer.figure(
        "contact at the start",
        row,
        "{inrush_A} of {contact_A}",
        life.suits() ? "suits" : "too much: its contact will weld or burn");
    if (!life.suits()) {
      answer.mind(
          "contact-overloaded",
          row,
          "a pump starts with {inrush_A}: its relay needs a contact rated for that, or a contactor between.");
    }
  }

  /** What a controller would add, when none is counted. */
  static void controllerHint(Answer answer, Plan plan, DutyLine.Terms terms, DutyLine line) {
    if (plan.section("controller").has("power")) {
      return;
    }
    Draw.Hint hint = Draw.controllerHint(terms.period.days(), line.pumpJ);
    answer.mind(
        "controller-not-counted",
        Row.aside(HINT, HINT_KWH, HINT_SHARE)
            .set(HINT, hint.watts())
            .set(HINT_KWH, hint.joules())
            .set(HINT_SHARE, hint.share()),
        "the controller is not counted; at {controller_W} it adds {controller_kWh}, {controller_pct} of what the pump itself takes.");
  }

  private void minds(Call call, Answer answer, DutyLine.Terms terms, List<DutyLine> lines) {
    Plan plan = call.plan();
    DutyLine first = lines.get(0);
    controllerHint(answer, plan, terms, first);
    if (DrawOf.isDirect(plan)) {
      if (plan.section("controller").section("relay").has("rated")) {
        answer.mind("direct-current-contact", Cautions.DIRECT_CURRENT_CONTACT);
      }
    } else {
      answer.safety("mains", Cautions.MAINS);
    }
    if (!call.hasPlan()) {
      answer.next(
          "leat duty --plan PLAN --suggest   finds the shortest run that wets the lowest pot");
    } else if (answer.exitCode() == 1) {
      answer.next(call.again("duty") + " --suggest   finds a timing that keeps the roots wet");
    } else if (lines.size() == 1) {
      answer.next(
          call.again("duty", "--run", "--rest", "--price", "--days", "--from", "--to")
              + " --against \"15 min/15 min\"   sets it beside a mechanical timer");
    }
  }

  private static void working(Answer answer, DutyLine.Terms terms, DutyLine line) {
    Timing timing = line.timing();
    if (timing == null) {
      answer.working(
          Working.of(
              "energy in all",
              "E = sum over timings of (P s + P_controller + P_coil s) x seconds in force",
              Phrase.of("P = ")
                  .add(terms.draw.pumpW(), Show.W)
                  .add(", mean s = ")
                  .add(line.share, Show.PERCENT.digits(3)),
              line.j,
              Show.KWH.digits(4),
              "local clock, days of 23 and 25 h included",
              "energy balance; java.time rules of the zone"));
      return;
    }
    answer.working(
        Working.of(
            "share of running",
            "s = run/(run + rest)",
            Phrase.of("run = ")
                .add(timing.runS(), Show.S.digits(4))
                .add(", rest = ")
                .add(timing.restS(), Show.S.digits(4)),
            line.share,
            Show.PERCENT.digits(4),
            "any",
            "definition"));
    answer.working(
        Working.of(
            "energy per day",
            "E = 24 h (P s + P_controller + P_coil s)",
            Phrase.of("P = ")
                .add(terms.draw.pumpW(), Show.W)
                .add(", controller and coil ")
                .add(terms.draw.othersW(line.share), Show.W),
            line.jDay,
            Show.KWH.digits(4),
            "the label's power; a throttled pump takes less",
            "energy balance"));
  }
}
