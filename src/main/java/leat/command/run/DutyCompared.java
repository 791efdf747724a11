package leat.command.run;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.energy.Cautions;
import leat.energy.RelayLife;
import leat.energy.Saving;
import leat.energy.Timetable;
import leat.energy.Timing;
import leat.plan.Plan;
import leat.system.DrawOf;

/** A timing with its energy and money, beside the others that it is compared with. */
final class DutyCompared {
  private static final Column SUBJECT = Column.plain("subject", "timing");
  private static final Column OTHER = Column.plain("other", "other timing");
  private static final Column OTHER_COST = Column.money("other_cost", "other costs");
  private static final Column OTHER_KWH = Column.of("other_kWh", "other takes", Show.KWH);
  private static final Column APART_COST = Column.money("apart_cost", "costs apart");
  private static final Column APART_KWH = Column.of("apart_kWh", "apart", Show.KWH);
  private static final Column INRUSH = Column.of("inrush_A", "at the start", Show.A);
  private static final Column CONTACT = Column.of("contact_A", "contact", Show.A);
  private static final Column PUMP_W = Column.of("pump_W", "pump", Show.W);
  private static final Column OTHERS_W = Column.of("others_W", "controller and coil", Show.W);
  private static final Column EXACT_SHARE =
      Column.of("share_pct", "pump runs", Show.PERCENT.digits(3));

  private final Call call;
  private final Plan plan;
  private final DutyLine.Terms terms;
  private final List<DutyLine> lines;
  private final DutyLine first;
  private final boolean priced;
  private final Answer answer = new Answer(DutyRows.ALL).csvColumns(DutyRows.OF_CSV);
  private final Row[] words;
  private boolean dry;

  DutyCompared(Call call, DutyLine.Terms terms, List<DutyLine> lines) {
    this.call = call;
    this.plan = call.plan();
    this.terms = terms;
    this.lines = lines;
    this.first = lines.get(0);
    this.priced = terms.price.isPriced();
    this.words = new Row[lines.size()];
  }

  Answer answer() {
    double operations = DrawOf.operations(plan, call.taken());
    for (int i = 0; i < words.length; i++) {
      words[i] = row(lines.get(i), operations);
    }
    figures();
    relay();
    DutyBounds bounds = DutyBounds.judge(answer, plan, first.timetable, terms.period, call.taken());
    dry = bounds.dry();
    Phrase broken = bounds.first();
    Phrase sentence = Answer.filled(sentenceRow(), sentence());
    answer.sentence(broken == null ? sentence : Phrase.of().add(broken).add(sentence));
    pictures();
    call.withTaken(answer);
    minds();
    next();
    working();
    return answer;
  }

  private void pictures() {
    Timetable table = first.timetable;
    if (terms.period.dates() != null && (table.size() > 1 || terms.price.tariff().size() > 1)) {
      DutyDay.draw(answer, table, DutyLine.names(call, table), terms.price, terms.period.dates());
    }
    if (call.wantsChart()) {
      answer.chart(DutyChart.of(lines, terms.price, terms.period.dates()));
    }
  }

  private Row row(DutyLine line, double operations) {
    Row row = answer.row();
    DutyRows.fill(row, terms, line, operations);
    Timing timing = line.timing();
    row.set(DutyRows.RUN, timing == null ? null : Double.valueOf(timing.runS()))
        .set(DutyRows.REST, timing == null ? null : Double.valueOf(timing.restS()))
        .set(DutyRows.RUN_TOTAL, line.runS)
        .set(DutyRows.STARTS_TOTAL, line.starts);
    if (line != first) {
      DutyRows.saved(row, terms, first.saved(line));
    }
    return row.with(DutyRows.words(terms, line, operations));
  }

  private Row sentenceRow() {
    Row aside =
        Row.aside(SUBJECT, OTHER, OTHER_COST, OTHER_KWH, APART_COST, APART_KWH)
            .set(SUBJECT, subject(first));
    if (lines.size() > 1) {
      DutyLine other = lines.get(1);
      Saving saving = first.saved(other);
      aside
          .set(OTHER, onOff(other.name))
          .set(OTHER_COST, other.cost)
          .set(OTHER_KWH, other.j)
          .set(APART_COST, Math.abs(saving.money()))
          .set(APART_KWH, Math.abs(saving.energyJ()));
    }
    return words[0].with(aside);
  }

  private String sentence() {
    if (lines.size() == 1) {
      return priced
          ? "{subject} costs {cost_total:money} {currency} in {period}."
          : "{subject} takes {kwh_total} in {period}.";
    }
    return compared(first.saved(lines.get(1)));
  }

  private String compared(Saving saving) {
    if (saving.isNone()) {
      return priced
          ? "{subject} costs {cost_total:money} {currency} in {period}; {other} would cost the same."
          : "{subject} takes {kwh_total} in {period}; {other} would take the same.";
    }
    if (priced) {
      return saving.money() < 0
          ? "{subject} costs {cost_total:money} {currency} in {period}; {other} would cost {other_cost:money} {currency}, so this one costs {apart_cost:money} {currency} more."
          : "{subject} costs {cost_total:money} {currency} in {period}; {other} would cost {other_cost:money} {currency}, so you keep {apart_cost:money} {currency}.";
    }
    return saving.energyJ() < 0
        ? "{subject} takes {kwh_total} in {period}; {other} would take {other_kWh}, so this one takes {apart_kWh} more."
        : "{subject} takes {kwh_total} in {period}; {other} would take {other_kWh}, so you keep {apart_kWh}.";
  }

  private static String subject(DutyLine line) {
    Timing timing = line.timing();
    if (timing == null) {
      return "The plan's timing";
    }
    return timing.withoutPause() ? "Running without pause" : onOff(line.name);
  }

  /** "90 s on, 12 min off" for "90 s/12 min". */
  private static String onOff(String name) {
    int slash = name.indexOf('/');
    return slash < 0
        ? name
        : name.substring(0, slash).strip() + " on, " + name.substring(slash + 1).strip() + " off";
  }

  private void figures() {
    if (lines.size() > 1) {
      figure("", "{timing}");
    }
    figure("pump runs", "{run_share_pct}");
    figure("starts per day", "{starts}");
    figure("pump in all", "{run_total_h}, {starts_total} starts");
    figure("energy per day", "{kwh_day}");
    figure("energy in all", "{kwh_total}");
    if (priced) {
      figure("cost in all", "{cost_total:money} {currency}");
    }
    relayLife();
  }

  private void relayLife() {
    Phrase[] cells = new Phrase[words.length];
    for (int i = 0; i < cells.length; i++) {
      boolean never = words[i].get(DutyRows.RELAY_DAYS) == null;
      cells[i] =
          Answer.filled(
              words[i], never ? "never switches" : "{relay_days} days ({operations} operations)");
    }
    answer.figure("relay life", cells);
  }

  private void figure(String label, String template) {
    Phrase[] cells = new Phrase[words.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = Answer.filled(words[i], template);
    }
    answer.figure(label, cells);
  }

  private void relay() {
    if (!DrawOf.isRelayKnown(plan)) {
      return;
    }
    RelayLife life =
        RelayLife.of(
            DrawOf.motor(plan, call.taken()),
            DrawOf.contact(plan, call.taken()),
            first.starts,
            terms.period.days());
    Row row =
        Row.aside(INRUSH, CONTACT)
            .set(INRUSH, life.inrushA())
            .set(CONTACT, DrawOf.contact(plan, call.taken()).ratedA());
    contact(row, life);
  }

  private void contact(Row row, RelayLife life) {
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

  private void minds() {
    DutyHint.controller(answer, plan, terms, first);
    if (!DrawOf.isDirect(plan)) {
      answer.safety("mains", Cautions.MAINS);
    } else if (plan.section("controller").section("relay").has("rated")) {
      answer.mind("direct-current-contact", Cautions.DIRECT_CURRENT_CONTACT);
    }
  }

  private void next() {
    if (!call.hasPlan()) {
      answer.next(
          "leat duty --plan PLAN --suggest   finds the shortest run that wets the lowest pot");
    } else if (dry) {
      answer.next(call.again("pump") + "   says by how much, and whether valves help");
    } else if (answer.exitCode() == 1) {
      answer.next(call.again("duty") + " --suggest   finds a timing that keeps the roots wet");
    } else if (lines.size() == 1) {
      answer.next(
          call.again("duty", "--run", "--rest", "--price", "--days", "--from", "--to")
              + " --against \"15 min/15 min\"   sets it beside a mechanical timer");
    }
  }

  private void working() {
    Row row =
        words[0].with(
            Row.aside(PUMP_W, OTHERS_W, EXACT_SHARE)
                .set(PUMP_W, terms.draw.pumpW())
                .set(OTHERS_W, terms.draw.othersW(first.share))
                .set(EXACT_SHARE, first.share));
    if (first.timing() == null) {
      overTimings(row);
    } else {
      ofOneTiming(row);
    }
  }

  private void overTimings(Row row) {
    answer.working(
        Working.of(
            "energy in all",
            "E = sum over timings of (P s + P_controller + P_coil s) x seconds in force",
            Answer.filled(row, "P = {pump_W}, mean s = {share_pct}"),
            first.j,
            Show.KWH.digits(4),
            "local clock, days of 23 and 25 h included",
            "energy balance; java.time rules of the zone"));
  }

  private void ofOneTiming(Row row) {
    answer.working(
        Working.of(
            "share of running",
            "s = run/(run + rest)",
            Answer.filled(row, "run = {run_s}, rest = {rest_s}"),
            first.share,
            Show.PERCENT.digits(4),
            "any",
            "definition"));
    answer.working(
        Working.of(
            "energy per day",
            "E = 24 h (P s + P_controller + P_coil s)",
            Answer.filled(row, "P = {pump_W}, controller and coil {others_W}"),
            first.jDay,
            Show.KWH.digits(4),
            "the label's power; a throttled pump takes less",
            "energy balance"));
  }
}
