package leat.command.plans;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.level.Dipstick;
import leat.level.Motion;
import leat.level.Staircase;
import leat.level.Tank;
import leat.paper.PaperSize;
import leat.paper.Strip;
import leat.paper.StripMark;
import leat.plan.Checksum;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.system.SenderOf;
import leat.system.TankOf;

/** The dipstick of a plan's tank; of one whose shape is not known, litres by the sender. */
final class StripOf {
  private static final Column LEVEL = Column.of("level_mm", "level", Show.MM.digits(5));
  private static final Column VOLUME = Column.of("volume_L", "holds", Show.L.digits(5));
  private static final Column VOLUME_HIGH = Column.of("volume_high_L", "at most", Show.L.digits(5));
  private static final Column READING = Column.of("reading_ohm", "reading", Show.OHM);

  /** Most marks of volume. */
  private static final int MOST_VOLUMES = 60;

  /** A row of readings is as high on paper, mm. */
  private static final int ROW_MM = 9;

  private static final Show LITRES = Show.L.digits(4);
  private static final Show HEIGHT = Show.MM.digits(4);

  private final Plan plan;
  private final Taken taken;
  private final PaperSize paper;
  private final LocalDate date;
  private final boolean us;
  private final Section section;
  private final boolean levels;
  private final Answer marks;
  private final List<StripMark> drawn = new ArrayList<>();

  StripOf(Plan plan, PaperSize paper, LocalDate date, boolean us, Taken taken) {
    this.taken = taken;
    this.plan = plan;
    this.paper = paper;
    this.date = date;
    this.us = us;
    this.section = plan.section("tank");
    this.levels = TankOf.isKnown(section) || !SenderOf.isKnown(plan.section("sender"));
    this.marks = new Answer(LEVEL, VOLUME, VOLUME_HIGH, READING).asList();
  }

  boolean hasLevels() {
    return levels;
  }

  Answer marks() {
    return marks;
  }

  Strip strip() {
    return levels ? byLevel(TankOf.of(section, taken)) : byReading();
  }

  private Strip byLevel(Tank tank) {
    volumes(tank);
    heights(tank);
    across(tank, "low", "refill mark");
    across(tank, "full", "FULL: fill to here");
    across(tank, "rim_overflow", "spills");
    add(tank.height(), "rim, " + words(tank, tank.height()), StripMark.Kind.ACROSS);
    drawn.sort((a, b) -> Double.compare(a.mm(), b.mm()));
    return noted(
        new Strip(title(), paper, Units.MM.fromBase(tank.height()), drawn)
            .note(
                us
                    ? "Gallons on the left, inches on the right,"
                    : "Litres on the left, mm on the right,")
            .note("from the inside of the tank's floor.")
            .note("Cut along the dashes; tape it to the tank,")
            .note("its lower end level with the inside of the floor."));
  }

  private void volumes(Tank tank) {
    Unit volume = us ? LITRES.us() : LITRES.metric();
    double step = Dipstick.evenStep(tank.capacity(), MOST_VOLUMES, volume.toBase(1));
    List<Dipstick.Mark> volumes = Dipstick.marksByVolume(tank, step, null);
    for (int i = 0; i < volumes.size() - 1; i++) {
      Dipstick.Mark mark = volumes.get(i);
      marks.row().set(LEVEL, mark.level()).set(VOLUME, mark.volume());
      if (i > 0) {
        add(mark.level(), bare(mark.volume(), LITRES), StripMark.Kind.VOLUME);
      }
    }
  }

  /** Even heights: a tick each, words at each fifth or tenth. */
  private void heights(Tank tank) {
    Unit unit = us ? HEIGHT.us() : HEIGHT.metric();
    double tick = us ? unit.toBase(0.25) : unit.toBase(5);
    int worded = us ? 4 : 2;
    int n = 0;
    List<Dipstick.Mark> even = Dipstick.marks(tank, tick, null);
    for (int i = 0; i < even.size() - 1; i++) {
      boolean words = i == 0 ? even.get(0).level() == 0 : n % worded == 0;
      add(
          even.get(i).level(),
          words ? bare(even.get(i).level(), HEIGHT) : "",
          words ? StripMark.Kind.LEVEL : StripMark.Kind.TICK);
      n = i == 0 ? 1 : n + 1;
    }
  }

  private void across(Tank tank, String key, String words) {
    Double level = section.maybe(key);
    if (level != null) {
      add(level, words + ", " + words(tank, level), StripMark.Kind.ACROSS);
    }
  }

  private String words(Tank tank, double level) {
    return Phrase.of(tank.volume(level), LITRES).render(us);
  }

  /** A number of an even step, without its unit. */
  private String bare(double value, Show show) {
    return NumberText.shortest((us ? show.us() : show.metric()).fromBase(value));
  }

  private void add(double level, String words, StripMark.Kind kind) {
    drawn.add(new StripMark(Units.MM.fromBase(level), words, kind));
  }

  private String title() {
    return "Dipstick of " + plan.title();
  }

  private Strip noted(Strip strip) {
    return strip.note(date + ", plan " + Checksum.of(plan).substring(0, 12));
  }

  /** A row for each step, from the bottom up: its reading and its litres. */
  private Strip byReading() {
    Staircase steps =
        SenderOf.staircase(plan, taken)
            .withEdgeError(SenderOf.edgeError(plan.section("sender"), taken));
    for (int i = 0; i < steps.size(); i++) {
      double low = steps.volumeLow(i, Motion.UNKNOWN);
      double high = steps.volumeHigh(i, Motion.UNKNOWN);
      int at = ROW_MM * i + ROW_MM / 2;
      String litres = Phrase.of().range(low, high, Show.L).render(us);
      String ohm = Phrase.of(steps.ohm(i), Show.OHM).render(us);
      marks.row().set(VOLUME, low).set(VOLUME_HIGH, high).set(READING, steps.ohm(i));
      drawn.add(new StripMark(at, litres, StripMark.Kind.VOLUME));
      drawn.add(new StripMark(at, ohm, StripMark.Kind.LEVEL));
    }
    return noted(
        new Strip(title(), paper, ROW_MM * steps.size(), drawn)
            .note("The tank's shape is not known:")
            .note("volume on the left by what the sender reads, on the right.")
            .note("No scale of heights: hang it by the meter."));
  }
}
