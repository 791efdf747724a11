package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.quantity.NumberText;
import leat.quantity.Units;

/** What {@code leat duty cable} says: the drop, the fuse, and the least wire that will do. */
final class DutyCableAnswer {
  private static final Column SUPPLY = Column.plain("supply", "supply");
  private static final Column LENGTH = Column.plain("length", "length");
  private static final Column POWER = Column.plain("power", "power");
  private static final Column THICKEST = Column.plain("thickest", "thickest");
  private static final Column WIRE = Column.plain("wire", "wire");
  private static final Column WORST = Column.of("worst_drop_pct", "worst drop", Show.PERCENT);
  private static final Column WANTED_V = Column.of("least_voltage_V", "it wants", Show.V);

  private final CableAsked asked;
  private final Answer answer = new Answer(CableColumns.COLUMNS);

  /** The cable that the text tells. */
  private Cable with;

  DutyCableAnswer(CableAsked asked) {
    this.asked = asked;
  }

  /**
   * A wire that was named.
   *
   * @param gauge as typed, or null for a section
   */
  Answer named(double area, Double gauge) {
    Row row = answer.row();
    CableColumns.fill(row, asked, area, gauge);
    return tell(row, area, gauge, "{wire} over {length} ", asked.with(area));
  }

  /**
   * The least wire that will do: of the usual sections in mm2, which CSV and JSON always tell; to a
   * reader of US units the text tells the least usual gauge in its place.
   */
  Answer least(double area) {
    Row row = answer.row();
    CableColumns.fill(row, asked, area, null);
    OptionalDouble gauge = asked.leastGauge();
    String take = "Take {wire}: over {length} it ";
    if (!asked.call.us() || gauge.isEmpty()) {
      return tell(row, area, null, take, asked.with(area));
    }
    double own = Copper.gaugeArea(gauge.getAsDouble());
    Row text = Row.aside(CableColumns.COLUMNS);
    CableColumns.fill(text, asked, own, gauge.getAsDouble());
    return tell(text, own, gauge.getAsDouble(), take, asked.with(area));
  }

  private Answer tell(Row plain, double area, Double gauge, String start, Cable judged) {
    with = asked.with(area);
    Row row = plain.with(said(area, gauge));
    asked.call.withTaken(answer);
    say(row, start);
    next(gauge != null || asked.call.us());
    working(row);
    return judged.verdict().passes() ? answer : answer.no();
  }

  /** No cord of the tables will do. */
  Answer none() {
    Row row =
        Row.aside(POWER, SUPPLY, LENGTH, THICKEST)
            .set(POWER, asked.cable.pumpTyped())
            .set(SUPPLY, asked.cable.supplyTyped())
            .set(LENGTH, asked.length())
            .set(THICKEST, thickest());
    answer.sentence(
        row,
        "No cord up to {thickest} feeds {power} at {supply} over {length}: put the supply nearer, or take a higher voltage.");
    return asked.call.withTaken(answer).no();
  }

  private Row said(double area, Double gauge) {
    return Row.aside(SUPPLY, LENGTH, WIRE, WORST, WANTED_V, THICKEST)
        .set(SUPPLY, asked.cable.supplyTyped())
        .set(LENGTH, asked.length())
        .set(WIRE, wire(area, gauge))
        .set(WORST, with.feeds() ? with.worstDropShare() : 1)
        .set(WANTED_V, asked.leastV)
        .set(THICKEST, thickest());
  }

  private String wire(double area, Double gauge) {
    OptionalDouble printed =
        gauge == null && asked.call.us() ? Copper.gaugeOf(area) : OptionalDouble.empty();
    if (gauge == null && printed.isEmpty()) {
      return mm2(area);
    }
    return NumberText.shortest(gauge == null ? printed.getAsDouble() : gauge) + " AWG";
  }

  /** The thickest usual size, as this reader buys it. */
  private String thickest() {
    double[] gauges = Copper.usualGauges();
    double[] sizes = Copper.tableSizes();
    return asked.call.us()
        ? NumberText.shortest(gauges[gauges.length - 1]) + " AWG"
        : NumberText.shortest(Units.MM2.fromBase(sizes[sizes.length - 1])) + " mm2";
  }

  private static String mm2(double area) {
    return Answer.filled(
            Row.aside(CableColumns.SECTION).set(CableColumns.SECTION, area), "{section_mm2}")
        .render(false);
  }

  private void say(Row row, String start) {
    answer.sentence(Answer.filled(row, start).add(Answer.filled(row, verdict(with.verdict()))));
    figures(row);
    if (with.cord() == Cable.Cord.UNPROTECTED) {
      answer.mind(
          "cord-too-thin", "no fuse both holds and protects this cord: take a thicker one.");
    }
    answer.mind(
        "fuse-time-lag",
        "the fuse sits at the supply's end, time-lag for the start; it protects the cable, not the pump.");
  }

  /** The one verdict, as the end of the sentence. */
  private static String verdict(Cable.Verdict verdict) {
    switch (verdict) {
      case CANNOT_FEED:
        return "cannot feed an electronic pump: as the voltage falls it draws more, and there is no end to it.";
      case DOES_NOT_START:
        return "leaves {start_pump_V} at the start, and the pump wants {least_voltage_V}: it does not start.";
      case CORD_TOO_THIN:
        return "loses {worst_drop_pct} of {supply}, and is too thin for the fuse of {fuse_A} that the pump needs.";
      case TOO_MUCH:
        return "loses {worst_drop_pct} of {supply}: too much.";
      case MUCH:
        return "loses {worst_drop_pct} of {supply}: much, the pump gives less.";
      default:
        return "loses {worst_drop_pct} of {supply}: good.";
    }
  }

  private void figures(Row row) {
    answer.figure(
        CableColumns.DROP.label(),
        row,
        with.dropShare() < 1 ? "{drop_V}" : "all of it",
        "{drop_pct}",
        "brushed pump");
    if (with.feeds()) {
      answer.figure(row, CableColumns.PUMP_V, "{electronic_drop_pct} lost", "electronic pump");
      answer.figure(CableColumns.LOSS.label(), row, "{cable_loss_W}");
    }
    answer.figure("at the start", row, "{start_pump_V}", starts());
    leastWire(row);
    answer.figure(
        row,
        CableColumns.FUSE,
        with.cordLimitA().isPresent()
            ? "the cord carries {cord_carries_A}"
            : "ask the maker what this cord carries");
  }

  private void leastWire(Row row) {
    boolean section = row.get(CableColumns.LEAST) != null;
    boolean gauge = row.get(CableColumns.LEAST_GAUGE) != null;
    if (asked.call.us()) {
      answer.figure(
          CableColumns.LEAST_GAUGE.label(),
          row,
          gauge ? "{least_gauge_awg} AWG" : "none up to {thickest} will do",
          gauge ? "of the usual sizes" : "");
    } else if (section) {
      answer.figure(
          row,
          CableColumns.LEAST,
          gauge ? "or {least_gauge_awg} AWG, of the usual sizes" : "of the usual sizes");
    } else {
      answer.figure(CableColumns.LEAST.label(), row, "none up to {thickest} will do");
    }
  }

  private String starts() {
    if (asked.leastV == null) {
      return "does it start at that? --least-voltage";
    }
    return with.starts() ? "starts" : "does not start, it wants {least_voltage_V}";
  }

  /** The least wire that will do, in the terms that were typed, or that this reader knows. */
  private void next(boolean gauge) {
    OptionalDouble least = gauge ? asked.leastGauge() : asked.leastSize();
    if (with.verdict() == Cable.Verdict.GOOD || least.isEmpty()) {
      return;
    }
    String line =
        asked.call.again(
            "duty cable",
            "--dc",
            "--power",
            "--length",
            "--strands",
            "--temperature",
            "--inrush",
            "--least-voltage",
            "--drop");
    answer.next(
        gauge
            ? line + " --gauge \"" + (int) least.getAsDouble() + " AWG\"   the least that will do"
            : line + " --section \"" + mm2(least.getAsDouble()) + "\"   the least that will do");
  }

  private void working(Row row) {
    answer.working(
        Working.of(
            "drop, constant current",
            "drop = I R, I = P/U, R = 2 L r (1 + 0.00393 (T - 20))",
            Answer.filled(row, "I = {current_A}, R = {loop_ohm}"),
            with.dropV(),
            Show.V.digits(4),
            asked.call.us()
                ? "metric cords by IEC 60228; wire gauges by resistivity"
                : "sections of IEC 60228, 0.5 to 6 mm2; others by resistivity",
            "IEC 60228 maxima at 20 C; Ohm's law"));
    fuse(row);
  }

  private void fuse(Row row) {
    answer.working(
        Working.of(
            "fuse",
            "next blade size at or above 1.25 P/U, U at the pump",
            Answer.filled(row, "U = {pump_V}"),
            with.fuseA().orElse(0),
            Show.A.digits(2),
            "1 to 30 A",
            "common practice"));
  }
}
