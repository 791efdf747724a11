package leat.command.run;

import java.util.OptionalDouble;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.energy.Cable;
import leat.energy.Copper;
import leat.quantity.NumberText;
import leat.system.CableOf;

/** A cable with what it loses, the fuse before it, and the least one that will do. */
final class DutyCableAnswer {
  private static final Show MM2 = Show.MM2.digits(2);
  static final Column SECTION = Column.of("section_mm2", "section", MM2);
  static final Column LOOP = Column.of("loop_ohm", "out and back", Show.OHM);
  static final Column CURRENT = Column.of("current_A", "current", Show.A);
  static final Column DROP = Column.of("drop_V", "lost on the way", Show.V);
  static final Column DROP_SHARE = Column.of("drop_pct", "drop", Show.PERCENT);
  static final Column PUMP_V = Column.of("pump_V", "at the pump", Show.V);
  static final Column PUMP_DROP =
      Column.of("electronic_drop_pct", "drop, electronic pump", Show.PERCENT);
  static final Column LOSS = Column.of("cable_loss_W", "heat in the cable", Show.W.digits(2));
  static final Column INRUSH_V = Column.of("start_pump_V", "at the start", Show.V);
  static final Column STARTS = Column.plain("starts", "starts");
  static final Column LEAST = Column.of("least_section_mm2", "least section", MM2);
  static final Column FOR_5 = Column.of("section_for_5pct_mm2", "for 5 % by copper", MM2);
  static final Column FUSE = Column.of("fuse_A", "fuse", Show.A.digits(2));
  static final Column CORD = Column.of("cord_carries_A", "cord carries", Show.A.digits(2));
  static final Column FUSE_FITS = Column.plain("fuse_protects_cord", "fuse protects the cord");
  static final Column GAUGE = Column.plain("gauge_awg", "wire gauge");
  static final Column LEAST_GAUGE = Column.plain("least_gauge_awg", "least gauge");
  static final Column VERDICT = Column.plain("verdict", "verdict");

  private static final Column[] COLUMNS = {
    SECTION,
    LOOP,
    CURRENT,
    DROP,
    DROP_SHARE,
    PUMP_V,
    PUMP_DROP,
    LOSS,
    INRUSH_V,
    STARTS,
    LEAST,
    FOR_5,
    FUSE,
    CORD,
    FUSE_FITS,
    GAUGE,
    LEAST_GAUGE,
    VERDICT
  };

  private static final Column SUPPLY = Column.plain("supply", "supply");
  private static final Column LENGTH = Column.plain("length", "length");
  private static final Column POWER = Column.plain("power", "power");
  private static final Column WIRE = Column.plain("wire", "wire");
  private static final Column WORST = Column.of("worst_drop_pct", "worst drop", Show.PERCENT);
  private static final Column WANTED_V = Column.of("least_voltage_V", "it wants", Show.V);

  private final Call call;
  private final CableOf cable;
  private final Cable with;
  private final String length;
  private final Double least;
  private final Answer answer = new Answer(COLUMNS);

  /**
   * @param length as it is told
   * @param least voltage that the pump needs to start, or null
   */
  DutyCableAnswer(Call call, CableOf cable, Cable with, String length, Double least) {
    this.call = call;
    this.cable = cable;
    this.with = with;
    this.length = length;
    this.least = least;
  }

  /**
   * @param gauge as typed, or null for a section
   * @param given whether the wire was named
   */
  Answer answer(
      double area, Double gauge, boolean given, OptionalDouble size, OptionalDouble leastGauge) {
    Row row = row(area, gauge, size, leastGauge).with(said(area, gauge));
    call.withTaken(answer);
    say(row, given);
    next(gauge != null, size, leastGauge);
    working(row);
    return with.verdict().passes() ? answer : answer.no();
  }

  /** No cord of the tables will do. */
  static Answer none(CableOf cable, String length) {
    Row row =
        Row.aside(POWER, SUPPLY, LENGTH)
            .set(POWER, cable.pumpTyped())
            .set(SUPPLY, cable.supplyTyped())
            .set(LENGTH, length);
    return new Answer(COLUMNS)
        .sentence(
            row,
            "No cord up to 6 mm2 feeds {power} at {supply} over {length}: put the supply nearer, or take a higher voltage.")
        .no();
  }

  private Row row(double area, Double gauge, OptionalDouble size, OptionalDouble leastGauge) {
    Row row =
        answer
            .row()
            .set(SECTION, area)
            .set(LOOP, with.loopOhm())
            .set(CURRENT, with.currentA())
            .set(DROP, with.lostV())
            .set(DROP_SHARE, with.lostShare())
            .set(PUMP_V, DutyRows.orNull(with.pumpV()))
            .set(PUMP_DROP, DutyRows.orNull(with.pumpDropShare()))
            .set(LOSS, DutyRows.orNull(with.lossW()))
            .set(INRUSH_V, with.startV())
            .set(LEAST, DutyRows.orNull(size))
            .set(FOR_5, with.areaFor5Pct())
            .set(FUSE, DutyRows.orNull(with.fuseA()))
            .set(CORD, DutyRows.orNull(with.cordLimitA()))
            .set(VERDICT, with.verdict().word());
    if (leastGauge.isPresent()) {
      row.set(LEAST_GAUGE, (int) leastGauge.getAsDouble());
    }
    OptionalDouble same = gauge == null ? Copper.gaugeFor(area) : OptionalDouble.of(gauge);
    if (same.isPresent()) {
      row.set(GAUGE, (int) same.getAsDouble());
    }
    if (least != null) {
      row.set(STARTS, with.starts());
    }
    if (with.cord() != Cable.Cord.UNKNOWN) {
      row.set(FUSE_FITS, with.cord() == Cable.Cord.PROTECTED);
    }
    return row;
  }

  private Row said(double area, Double gauge) {
    return Row.aside(SUPPLY, LENGTH, WIRE, WORST, WANTED_V)
        .set(SUPPLY, cable.supplyTyped())
        .set(LENGTH, length)
        .set(WIRE, gauge == null ? mm2(area) : NumberText.shortest(gauge) + " AWG")
        .set(WORST, with.feeds() ? with.worstDropShare() : 1)
        .set(WANTED_V, least);
  }

  private static String mm2(double area) {
    return Answer.filled(Row.aside(SECTION).set(SECTION, area), "{section_mm2}").render(false);
  }

  private void say(Row row, boolean given) {
    answer.sentence(
        Answer.filled(row, given ? "{wire} over {length} " : "Take {wire}: over {length} it ")
            .add(Answer.filled(row, verdict(with.verdict()))));
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
        DROP.label(),
        row,
        with.dropShare() < 1 ? "{drop_V}" : "all of it",
        "{drop_pct}",
        "brushed pump");
    if (with.feeds()) {
      answer.figure(row, PUMP_V, "{electronic_drop_pct} lost", "electronic pump");
      answer.figure(LOSS.label(), row, "{cable_loss_W}");
    }
    answer.figure("at the start", row, "{start_pump_V}", starts());
    leastWire(row);
    answer.figure(
        row,
        FUSE,
        with.cordLimitA().isPresent()
            ? "the cord carries {cord_carries_A}"
            : "ask the maker what this cord carries");
  }

  private void leastWire(Row row) {
    boolean section = row.get(LEAST) != null;
    if (section && row.get(LEAST_GAUGE) != null) {
      answer.figure(row, LEAST, "or {least_gauge_awg} AWG, of the usual sizes");
    } else if (section) {
      answer.figure(row, LEAST, "of the usual sizes");
    } else {
      answer.figure(LEAST.label(), row, "none up to 6 mm2 will do");
    }
  }

  private String starts() {
    if (least == null) {
      return "does it start at that? --least-voltage";
    }
    return with.starts() ? "starts" : "does not start, it wants {least_voltage_V}";
  }

  /** The least wire that will do, in the terms that were typed. */
  private void next(boolean gauge, OptionalDouble size, OptionalDouble awg) {
    if (with.verdict() == Cable.Verdict.GOOD || (gauge ? awg : size).isEmpty()) {
      return;
    }
    String line =
        call.again(
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
            ? line + " --gauge \"" + (int) awg.getAsDouble() + " AWG\"   the least that will do"
            : line + " --section \"" + mm2(size.getAsDouble()) + "\"   the least that will do");
  }

  private void working(Row row) {
    answer.working(
        Working.of(
            "drop, constant current",
            "drop = I R, I = P/U, R = 2 L r (1 + 0.00393 (T - 20))",
            Answer.filled(row, "I = {current_A}, R = {loop_ohm}"),
            with.dropV(),
            Show.V.digits(4),
            "sections of IEC 60228, 0.5 to 6 mm2; others by resistivity",
            "IEC 60228 maxima at 20 C; Ohm's law"));
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
