package leat.command.feed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.plan.Section;
import leat.quantity.NumberText;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.KclStandard;
import leat.solution.conductivity.MeterCheck;

/** The part of {@code leat ec} that checks a meter against a standard. */
final class EcStandard {
  static final Column SHOWN = Column.of("shown_mS_cm", "the meter shows", Show.MS_CM.digits(4));
  static final Column EXPECTED =
      Column.of("expected_mS_cm", "it should show", Show.MS_CM.digits(4));
  static final Column LABEL = Column.of("standard_mS_cm", "the bottle says", Show.MS_CM.digits(4));
  static final Column AT = Column.of("at_C", "in a beaker of", Show.C);
  static final Column SLOPE = Column.number("slope", "slope", 4);
  static final Column ERROR = Column.number("error_pct", "reads too high by", 2);
  static final Column COMPENSATES = Column.plain("compensates", "compensates");
  static final Column FAULTY = Column.plain("faulty", "past correcting");
  static final Column PASTE = Column.plain("plan", "for the plan");

  /** For the text alone. */
  private static final Column OFF = Column.number("off_pct", "off by", 2);

  private static final Column NAME = Column.plain("standard", "standard");
  private static final Column TRUE = Column.of("true_mS_cm", "true", Show.MS_CM.digits(4));
  private static final Column AFTER = Column.of("after_mS_cm", "after", Show.MS_CM.digits(4));

  private static final Column DEGREE = Column.number("degree_pct", "per degree", 1);

  private EcStandard() {}

  static Answer answer(Call call, double shown) {
    Section meter = call.plan().section("meters").section("ec");
    Object atc = meter.raw("compensates");
    Double at = call.quantity("--at");
    double celsius = at == null ? EcReading.REFERENCE_CELSIUS : at;
    KclStandard standard = KclStandard.ofLabel(call.quantity("--standard"));
    Compensation by = EcCommand.compensation(call);
    MeterCheck check = check(atc, shown, standard, celsius, by);
    boolean known = check.certain() || check.sameEitherWay();
    Answer answer =
        new Answer(LABEL, AT, SHOWN, EXPECTED, SLOPE, ERROR, COMPENSATES, FAULTY, PASTE);
    Row row = answer.row().set(LABEL, standard.ec25()).set(AT, celsius).set(SHOWN, shown);
    fill(row, check, check.faulty() ? null : lines(call, meter, check));
    text(answer, row, check, standard);
    if (at == null) {
      answer.taken(EcCommand.reference(), "the beaker at {reference_C}");
    }
    EcCommand.taken(answer, by, call.us());
    call.withTaken(answer);
    minds(answer, check, known, at, call.us());
    next(call, answer, meter, check);
    return answer;
  }

  private static MeterCheck check(
      Object compensates, double shown, KclStandard standard, double celsius, Compensation by) {
    if (compensates == null) {
      return MeterCheck.unknown(shown, standard, celsius, by);
    }
    return (Boolean) compensates
        ? MeterCheck.compensated(shown, standard, celsius, by)
        : MeterCheck.raw(shown, standard, celsius, by);
  }

  private static void fill(Row row, MeterCheck check, String lines) {
    row.set(EXPECTED, check.expected())
        .set(SLOPE, check.slope())
        .set(ERROR, check.errorPct())
        .setAny(COMPENSATES, check.certain() ? (Object) check.compensates() : null)
        .set(FAULTY, check.faulty())
        .set(PASTE, lines);
  }

  private static void next(Call call, Answer answer, Section meter, MeterCheck check) {
    if (check.faulty()) {
      answer.next("clean the probe, take fresh standard, and check again; then replace it");
    } else {
      call.intoPlan(answer, keys(call, meter, check));
    }
  }

  private static String[] keys(Call call, Section meter, MeterCheck check) {
    List<String> keys = new ArrayList<>();
    keys.add("meters.ec.slope");
    keys.add(NumberText.significant(check.slope(), 4));
    keys.add("meters.ec.checked");
    keys.add(LocalDate.now(call.terminal.clock()).toString());
    if (check.certain() && !meter.has("compensates")) {
      keys.add("meters.ec.compensates");
      keys.add(String.valueOf(check.compensates()));
    }
    return keys.toArray(new String[0]);
  }

  private static String lines(Call call, Section meter, MeterCheck check) {
    StringBuilder out = new StringBuilder("meters: {ec: {slope: ");
    out.append(NumberText.significant(check.slope(), 4));
    out.append(", checked: ").append(LocalDate.now(call.terminal.clock()));
    if (check.certain()) {
      out.append(", compensates: ").append(check.compensates());
    }
    if (meter.has("scale")) {
      out.append(", scale: ").append(NumberText.shortest(meter.need("scale")));
    }
    return out.append("}}").toString();
  }

  private static void text(Answer answer, Row plain, MeterCheck check, KclStandard standard) {
    Row row =
        plain.with(
            Row.aside(OFF, NAME, TRUE, AFTER)
                .set(OFF, check.offPct())
                .set(NAME, standard.name())
                .set(TRUE, check.trueEc())
                .set(AFTER, check.compensatedShows())
                .with(EcCommand.reference()));
    sentence(answer, row, check);
    answer.figure(row, LABEL, "{standard}, at {reference_C}");
    answer.figure(row, AT, new Phrase[0]);
    if (check.compensates()) {
      answer.figure(row, EXPECTED, "with compensation (ATC)");
    } else {
      answer.figure(row, EXPECTED, "without compensation");
    }
    answer.figure(row, SHOWN, new Phrase[0]);
    working(answer, row, check);
  }

  private static void working(Answer answer, Row row, MeterCheck check) {
    answer.working(
        Working.number(
            "factor for the meter's readings",
            "slope = expected / shown",
            Answer.filled(
                row,
                "true EC there = {true_mS_cm}, brought to {reference_C} by the meter = {after_mS_cm}"),
            check.slope(),
            5,
            "standard "
                + NumberText.shortest(KclStandard.VALID.low(0))
                + " to "
                + NumberText.shortest(KclStandard.VALID.high(0))
                + " C",
            "potassium chloride: CRC Handbook after Wu et al. 1991, OIML R 56, tables of instrument manuals"));
  }

  private static void sentence(Answer answer, Row row, MeterCheck check) {
    if (check.readsTrue()) {
      answer.sentence(row, "The meter reads true, within half a per cent.");
    } else if (check.faulty()) {
      answer.sentence(
          row,
          check.tooHigh()
              ? "The meter reads {off_pct} % too high: too much to correct by a factor."
              : "The meter reads {off_pct} % too low: too much to correct by a factor.");
    } else {
      answer.sentence(
          row,
          check.tooHigh()
              ? "The meter reads {off_pct} % too high: multiply its readings by {slope}."
              : "The meter reads {off_pct} % too low: multiply its readings by {slope}.");
    }
  }

  private static void minds(Answer answer, MeterCheck check, boolean known, Double at, boolean us) {
    if (check.faulty()) {
      answer.mind(
          "faulty-probe",
          "over 10 % off is a dirty or worn probe, or an old standard: clean first, then check again.");
    }
    if (!known && !check.faulty()) {
      answer.mind(
          "which-meter",
          "whether this meter compensates is a guess: --compensates true or false says it.");
    }
    beaker(answer, at, us);
    if (!check.standard().isTabulated()) {
      answer.mind(
          "odd-standard",
          EcCommand.reference(),
          "no table holds this standard: its course with temperature is good to 1 %. Check at {reference_C}.");
    }
  }

  private static void beaker(Answer answer, Double at, boolean us) {
    if (at == null) {
      answer.mind(
          "beaker-temperature",
          Row.aside(DEGREE).set(DEGREE, Compensation.DEFAULT.pctPer(EcCommand.degree(us))),
          us
              ? "without a thermometer in the beaker the check is good to a few per cent; a meter without compensation is off {degree_pct} % per degree Fahrenheit."
              : "without a thermometer in the beaker the check is good to a few per cent; a meter without compensation is off {degree_pct} % per degree Celsius.");
    }
  }
}
