package leat.command.plans;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.cli.Call;
import leat.command.sense.LogAlarmWords;
import leat.energy.DryLimit;
import leat.level.Tank;
import leat.log.LogAlarm;
import leat.paper.CardPage;
import leat.paper.PaperSize;
import leat.plan.Plan;
import leat.plan.Section;
import leat.system.DrawOf;
import leat.system.PlainTopup;
import leat.system.RunNeeds;
import leat.system.SenderOf;
import leat.system.TankOf;
import leat.system.TimetableOf;

/** The sections of a card, as far as the plan says enough for each. */
final class CardParts {
  private static final Column MARK = Column.plain("mark", "mark");
  private static final Column LEVEL = Column.of("level_mm", "level", Show.MM);
  private static final Column VOLUME = Column.of("volume_L", "holds", Show.L);

  /** Entries of a timetable that a card has room for. */
  private static final int MOST_TIMINGS = 6;

  final LeftOut left = new LeftOut();
  final Answer marks = new Answer(MARK, LEVEL, VOLUME);
  private final Call call;
  private final Plan plan;
  private final boolean us;
  private final LocalDate date;
  private final CardPage page;
  private CardAmounts amounts;
  private PlainTopup topup;

  CardParts(Call call, Plan plan, PaperSize paper, LocalDate date, boolean us) {
    this.call = call;
    this.plan = plan;
    this.us = us;
    this.date = date;
    this.page = new CardPage(PlanCardCommand.shortened(plan.title()), paper);
  }

  Answer amounts() {
    return amounts == null ? CardAmounts.none() : amounts.answer();
  }

  String page() {
    left.make("marks", this::marks);
    left.make("feed", () -> topup = PlainTopup.of(plan, call.taken()));
    left.make("amounts", this::amountsTable);
    left.make("timing", this::timing);
    left.make("target", this::target);
    alarms();
    page.lines("Checks", new CardChecks(plan).lines());
    left.make("EC meter", () -> plan.section("meters").section("ec").need("slope"));
    left.make("pH meter", () -> plan.section("meters").section("ph").need("offset"));
    page.lines("Meters", new CardChecks(plan).meters());
    page.lines("Closing the season", CardChecks.closing());
    page.cautions("Care", CardChecks.cautions(DrawOf.isDirect(plan)));
    foot();
    return page.write();
  }

  private void foot() {
    List<String> missing = left.words();
    if (!missing.isEmpty()) {
      page.foot("Left out, because the plan lacks it: " + String.join("; ", missing) + ".");
    }
    for (String line : PlanCardCommand.made(call, plan, date)) {
      page.foot(line);
    }
  }

  private void marks() {
    Section tank = plan.section("tank");
    if (!TankOf.isKnown(tank)) {
      marksByVolume(tank);
      return;
    }
    Tank shape = TankOf.of(tank, call.taken());
    mark("rim", shape, shape.height());
    mark("spills", shape, tank.maybe("rim_overflow"));
    mark("full", shape, tank.need("full"));
    mark("refill mark", shape, tank.maybe("low"));
    mark("pump's intake, air below", shape, tank.maybe("intake"));
    table();
  }

  private void marksByVolume(Section tank) {
    double full = SenderOf.fullVolume(plan, call.taken());
    Double holds = tank.maybe("holds");
    marks.row().set(MARK, "rim").set(VOLUME, holds);
    marks.row().set(MARK, "full").set(VOLUME, full);
    table();
  }

  private void mark(String name, Tank tank, Double level) {
    if (level != null) {
      marks.row().set(MARK, name).set(LEVEL, level).set(VOLUME, tank.volume(level));
    }
  }

  private void table() {
    List<String[]> rows = new ArrayList<>();
    for (int i = 0; i < marks.size(); i++) {
      rows.add(
          new String[] {
            (String) marks.row(i).get(MARK),
            Answer.phrase(marks.row(i), LEVEL).render(us),
            Answer.phrase(marks.row(i), VOLUME).render(us)
          });
    }
    page.table("Marks, from the floor inside", new String[] {"mark", "level", "holds"}, rows);
  }

  private void amountsTable() {
    amounts = new CardAmounts(plan, topup, us, call.taken());
    page.table("Top-up to full", amounts.head(), amounts.rows(), amounts.below());
  }

  private void timing() {
    TimetableOf.of(plan);
    List<String[]> rows = new ArrayList<>();
    List<Section> entries = plan.root().sections("timing");
    for (int i = 0; i < entries.size() && i < MOST_TIMINGS; i++) {
      Section entry = entries.get(i);
      rows.add(
          new String[] {
            entry.typed("run") + " on, " + entry.typed("rest") + " off",
            when(entry, i == 0, entries.size())
          });
    }
    if (entries.size() > MOST_TIMINGS) {
      rows.add(new String[] {entries.size() - MOST_TIMINGS + " more", "see the plan"});
    }
    alarm(rows);
    page.words("Pump", rows);
  }

  private void alarm(List<String[]> rows) {
    DryLimit dry = RunNeeds.dryLimit(plan, call.taken());
    rows.add(
        new String[] {
          "longest rest",
          Phrase.of()
              .duration(dry.dayS())
              .add(" by day, ")
              .duration(dry.nightS())
              .add(" by night")
              .render(us)
        });
    rows.add(new String[] {"alarm after", Phrase.of().duration(dry.alarmS()).render(us)});
  }

  private static String when(Section entry, boolean first, int entries) {
    if (first) {
      return entries == 1 ? "always" : "at all other times";
    }
    List<String> words = new ArrayList<>();
    if (entry.has("from")) {
      words.add(bare(entry, "from") + " to " + bare(entry, "to"));
    }
    if (entry.has("days")) {
      words.add(entry.list("days").toString().replaceAll("[\\[\\]]", ""));
    }
    if (entry.has("months")) {
      words.add("months " + entry.list("months").toString().replaceAll("[\\[\\]]", ""));
    }
    return String.join(", ", words);
  }

  private static String bare(Section entry, String key) {
    return entry.typed(key).replace("\"", "").replace("'", "");
  }

  private void target() {
    Section target = plan.section("target");
    List<String[]> rows = new ArrayList<>();
    double ec = target.need("ec");
    rows.add(new String[] {"EC", band(ec, target.maybe("ec_low"), target.maybe("ec_high"))});
    if (target.has("ph")) {
      rows.add(new String[] {"pH", ph(target)});
    }
    Double water = plan.section("water").maybe("ec");
    if (water != null) {
      rows.add(new String[] {"the water's own EC", Phrase.of(water, Show.MS_CM).render(us)});
    }
    page.words("Solution", rows);
  }

  private String band(double aim, Double low, Double high) {
    Phrase words = Phrase.of(aim, Show.MS_CM);
    if (low != null && high != null) {
      words.add(", good from ").range(low, high, Show.MS_CM);
    }
    return words.render(us);
  }

  private static String ph(Section target) {
    Phrase words = Phrase.of().number(target.need("ph"), 2);
    if (target.has("ph_low") && target.has("ph_high")) {
      words.add(", good from ").number(target.need("ph_low"), 2);
      words.add(" to ").number(target.need("ph_high"), 2);
    }
    return words.render(false);
  }

  private void alarms() {
    List<String[]> rows = new ArrayList<>();
    for (LogAlarm.Kind kind : LogAlarm.Kind.values()) {
      rows.add(new String[] {LogAlarmWords.meaning(kind), LogAlarmWords.first(kind)});
    }
    page.words("Alarms, and what to do first", rows);
  }
}
