package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.level.Dipstick;
import leat.level.Divider;
import leat.level.LookupTable;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.solution.tank.Topup;
import leat.system.ConcentrateOf;
import leat.system.PlainTopup;
import leat.system.SenderOf;
import leat.system.TankOf;

/** What to pour, by what the sender reads or a stick shows. */
final class CardAmounts {
  private static final Column READING = Column.of("reading_ohm", "reading", Show.OHM);
  private static final Column FROM = Column.plain("from_counts", "from counts");
  private static final Column TO = Column.plain("to_counts", "to counts");
  private static final Column LEVEL = Column.of("level_mm", "level", Show.MM);
  private static final Column VOLUME = Column.of("volume_L", "in it", Show.L);
  private static final Column LOW = Column.of("volume_low_L", "at least", Show.L);
  private static final Column HIGH = Column.of("volume_high_L", "at most", Show.L);
  private static final Column DRAIN = Column.of("drain_L", "drain", Show.L.digits(2));
  private static final Column WATER = Column.of("water_L", "water", Show.L);
  private static final Column FEED = Column.of("concentrate_mL", "feed", Show.ML.digits(2));

  /** Rows that a card has room for. */
  static final int MOST_ROWS = 14;

  /** Columns of bottles that a card has room for. */
  private static final int MOST_BOTTLES = 4;

  /** A longer name of a bottle is cut. */
  private static final int LONGEST_HEADING = 18;

  private final Plan plan;
  private final Taken taken;
  private final boolean us;
  private final PlainTopup topup;
  private final double full;
  private final List<Column> bottles = new ArrayList<>();
  private final Answer answer;
  private boolean thinned;

  /**
   * @param topup null where feed, target or water is not known
   * @param taken notes the defaults that are taken
   */
  CardAmounts(Plan plan, PlainTopup topup, boolean us, Taken taken) {
    this.taken = taken;
    this.plan = plan;
    this.us = us;
    this.topup = topup;
    this.full = SenderOf.fullVolume(plan, taken);
    int n = topup == null ? 0 : topup.parts().ratesMlPerL().length;
    for (int i = 0; i < n; i++) {
      String key = "part_" + (i + 1) + "_mL";
      bottles.add(Column.of(key, ConcentrateOf.name(plan.section("feed"), i), Show.ML.digits(2)));
    }
    List<Column> all =
        new ArrayList<>(List.of(READING, FROM, TO, LEVEL, VOLUME, LOW, HIGH, DRAIN, WATER, FEED));
    all.addAll(bottles);
    this.answer = new Answer(all.toArray(new Column[0])).asList();
    if (SenderOf.isKnown(plan.section("sender"))) {
      bySender();
    } else {
      byStick(TankOf.of(plan.section("tank"), taken));
    }
  }

  /** An answer of no rows, where the plan says neither shape nor sender. */
  static Answer none() {
    return new Answer(LEVEL, VOLUME, WATER).asList();
  }

  Answer answer() {
    return answer;
  }

  private void bySender() {
    Section section = plan.section("sender");
    Divider divider = SenderOf.hasDivider(section) ? SenderOf.divider(section, taken) : null;
    Sender sender = SenderOf.of(plan, taken);
    Sender read = divider == null ? sender : sender.readBy(divider);
    List<LookupTable.Row> steps = steps(LookupTable.of(read, divider, Motion.UNKNOWN));
    if (read.staircase().falls()) {
      java.util.Collections.reverse(steps);
    }
    for (LookupTable.Row row : thin(steps)) {
      reading(row, read);
    }
  }

  private List<LookupTable.Row> steps(List<LookupTable.Row> all) {
    List<LookupTable.Row> steps = new ArrayList<>();
    for (LookupTable.Row row : all) {
      Reading reading = row.reading();
      boolean one = reading.hasBand() && reading.stepLow() == reading.stepHigh();
      if (one && reading.volume() < full && !sameStep(steps, reading)) {
        steps.add(row);
      }
    }
    return steps;
  }

  private static boolean sameStep(List<LookupTable.Row> steps, Reading reading) {
    return !steps.isEmpty() && steps.get(steps.size() - 1).reading().stepLow() == reading.stepLow();
  }

  private <T> List<T> thin(List<T> all) {
    int every = (all.size() + MOST_ROWS - 1) / MOST_ROWS;
    List<T> some = new ArrayList<>();
    for (int i = 0; i < all.size(); i += Math.max(1, every)) {
      some.add(all.get(i));
    }
    thinned = every > 1;
    return some;
  }

  private void reading(LookupTable.Row stretch, Sender sender) {
    Reading reading = stretch.reading();
    Row row = answer.row();
    row.set(READING, sender.limits().lead() + reading.stepLowOhm())
        .set(LOW, reading.volumeLow())
        .set(HIGH, reading.volumeHigh());
    if (stretch.countsFrom() >= 0) {
      row.set(FROM, stretch.countsFrom()).set(TO, stretch.countsTo());
    }
    fill(row, reading.volume());
  }

  private void byStick(Tank tank) {
    Section section = plan.section("tank");
    Double mark = section.maybe("low");
    double low = mark == null ? tank.lowestLevel() : mark;
    double top = section.need("full");
    double unit = us ? Units.INCH.toBase(1) : Units.MM.toBase(1);
    double step = Dipstick.evenStep(top - low, MOST_ROWS - 2, unit);
    stick(tank, low);
    List<Dipstick.Mark> marks = Dipstick.marks(tank, step, null);
    for (int i = 1; i < marks.size() - 1; i++) {
      double level = marks.get(i).level();
      if (level > low && level < top) {
        stick(tank, level);
      }
    }
  }

  private void stick(Tank tank, double level) {
    fill(answer.row().set(LEVEL, level), tank.volume(level));
  }

  private void fill(Row row, double volume) {
    row.set(VOLUME, volume);
    if (topup == null) {
      row.set(WATER, full - volume);
      return;
    }
    Topup.Answer one = topup.at(volume);
    if (!one.reached()) {
      return;
    }
    row.set(DRAIN, Units.L.toBase(one.drainL()))
        .set(WATER, Units.L.toBase(one.waterL()))
        .set(FEED, Units.ML.toBase(one.concentrateMl()));
    double[] each = topup.parts().split(one.concentrateMl());
    for (int i = 0; i < each.length; i++) {
      row.set(bottles.get(i), Units.ML.toBase(each[i]));
    }
  }

  /** Whether some row drains first. */
  private boolean drains() {
    for (int i = 0; i < answer.size(); i++) {
      Double drain = (Double) answer.row(i).get(DRAIN);
      if (drain != null && drain > 0) {
        return true;
      }
    }
    return false;
  }

  private boolean bySteps() {
    return answer.size() > 0 && answer.row(0).get(READING) != null;
  }

  private boolean byCounts() {
    return bySteps() && answer.row(0).get(FROM) != null;
  }

  private List<Column> shown() {
    List<Column> shown = new ArrayList<>();
    shown.add(bySteps() ? READING : LEVEL);
    shown.add(VOLUME);
    if (drains()) {
      shown.add(DRAIN);
    }
    shown.add(WATER);
    if (bottles.size() > MOST_BOTTLES) {
      shown.add(FEED);
    } else {
      shown.addAll(bottles);
    }
    return shown;
  }

  /** Headings of the card's table. */
  String[] head() {
    List<String> head = new ArrayList<>();
    for (Column column : shown()) {
      if (column == READING) {
        head.add(byCounts() ? "counts" : "sender, ohm");
      } else {
        String unit = us ? column.show().us().symbol() : column.show().metric().symbol();
        head.add(PlanCardCommand.shortened(column.label(), LONGEST_HEADING) + ", " + unit);
      }
    }
    return head.toArray(new String[0]);
  }

  /** Its rows. */
  List<String[]> rows() {
    List<String[]> rows = new ArrayList<>();
    for (int i = 0; i < answer.size(); i++) {
      List<String> cells = new ArrayList<>();
      for (Column column : shown()) {
        cells.add(cell(answer.row(i), column));
      }
      rows.add(cells.toArray(new String[0]));
    }
    return rows;
  }

  private String cell(Row row, Column column) {
    if (column == READING && row.get(FROM) != null) {
      return row.get(FROM) + " - " + row.get(TO);
    }
    if (column == VOLUME && row.get(LOW) != null) {
      String low = Phrase.of().addBare((Double) row.get(LOW), Show.L).render(us);
      return low + " - " + Phrase.of().addBare((Double) row.get(HIGH), Show.L).render(us);
    }
    Double value = (Double) row.get(column);
    return value == null ? "-" : Phrase.of().addBare(value, column.show()).render(us);
  }

  /** What stands under the table. */
  String[] below() {
    List<String> lines = new ArrayList<>();
    if (bySteps()) {
      lines.add(
          "The sender knows a band, the amounts are for its middle: fill to the full mark by eye. Read with the pump off.");
    }
    if (thinned) {
      lines.add("Not every step of the sender is shown.");
    }
    if (topup != null) {
      lines.add(
          "For a tank that was full at its target and drifted as usual. Stir, measure, then correct: leat topup.");
      if (bottles.size() > MOST_BOTTLES) {
        lines.add("Feed: all bottles together, in the proportions of their rates.");
      }
    }
    return lines.toArray(new String[0]);
  }
}
