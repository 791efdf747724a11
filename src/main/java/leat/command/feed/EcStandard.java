package leat.command.feed;

import java.time.LocalDate;
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
import leat.solution.conductivity.KclStandard;
import leat.solution.conductivity.MeterCheck;

/** The part of {@code leat ec} that checks a meter against a standard. */
final class EcStandard {
  static final Column SHOWN = Column.of("shown_mS_cm", "the meter shows", Show.MS_CM.digits(4));
  static final Column EXPECTED =
      Column.of("expected_mS_cm", "it should show", Show.MS_CM.digits(4));
  static final Column LABEL = Column.of("standard_mS_cm", "the bottle says", Show.MS_CM.digits(4));
  static final Column AT = Column.of("at_C", "in a beaker of", Show.C);
  static final Column SLOPE = Column.number("slope", "factor", 4);
  static final Column ERROR = Column.number("error_pct", "reads too high by", 2);
  static final Column COMPENSATES = Column.plain("compensates", "compensates");
  static final Column FAULTY = Column.plain("faulty", "past correcting");
  static final Column PASTE = Column.plain("plan", "for the plan");

  private static final double ROOM_CELSIUS = 25;

  private EcStandard() {}

  static Answer answer(Call call, double shown) {
    Section meter = call.plan().section("meters").section("ec");
    Object atc = meter.raw("compensates");
    Double at = call.quantity("--at");
    double celsius = at == null ? ROOM_CELSIUS : at;
    KclStandard standard = KclStandard.ofLabel(call.quantity("--standard"));
    Compensation by = EcCommand.compensation(call);
    MeterCheck check =
        atc == null
            ? MeterCheck.unknown(shown, standard, celsius, by)
            : (Boolean) atc
                ? MeterCheck.compensated(shown, standard, celsius, by)
                : MeterCheck.raw(shown, standard, celsius, by);
    boolean known = check.certain() || same(check);
    Answer answer =
        new Answer(LABEL, AT, SHOWN, EXPECTED, SLOPE, ERROR, COMPENSATES, FAULTY, PASTE);
    Row row =
        answer
            .row()
            .set(LABEL, standard.ec25())
            .set(AT, celsius)
            .set(SHOWN, shown)
            .set(EXPECTED, check.expected())
            .set(SLOPE, check.slope())
            .set(ERROR, check.errorPct())
            .setAny(COMPENSATES, check.certain() ? (Object) check.compensates() : null)
            .set(FAULTY, check.faulty())
            .set(PASTE, check.faulty() ? null : lines(call, meter, check));
    text(answer, row, check, standard);
    if (at == null) {
      answer.taken(Phrase.of("the beaker at 25 C"));
    }
    answer.taken(EcCommand.taken(by));
    call.withTaken(answer);
    minds(answer, check, known, at);
    if (check.faulty()) {
      answer.next("clean the probe, take fresh standard, and check again; then replace it");
    } else {
      answer.next("paste into the plan:\n  " + row.get(PASTE));
    }
    return answer;
  }

  /** Whether both kinds of meter would show the same, as they do near 25 C. */
  private static boolean same(MeterCheck check) {
    return Math.abs(check.compensatedShows() / check.trueEc() - 1) < 0.005;
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

  private static void text(Answer answer, Row row, MeterCheck check, KclStandard standard) {
    double error = check.errorPct();
    Phrase words = Phrase.of("The meter reads ");
    if (Math.abs(error) < 0.5) {
      words.add("true, within half a per cent.");
    } else {
      words
          .number(Math.abs(error), 2)
          .add(" % too ")
          .add(error > 0 ? "high" : "low")
          .add(
              check.faulty() ? ": too much to correct by a factor." : ": multiply its readings by ")
          .add(check.faulty() ? Phrase.of() : Phrase.of().number(check.slope(), 4).add("."));
    }
    answer.sentence(words);
    answer.figure(row, LABEL, Phrase.of(standard.name()).add(", at 25 C"));
    answer.figure(row, AT);
    answer.figure(
        row,
        EXPECTED,
        check.compensates()
            ? Phrase.of("with compensation (ATC)")
            : Phrase.of("without compensation"));
    answer.figure(row, SHOWN);
    answer.working(
        Working.number(
            "factor for the meter's readings",
            "slope = expected / shown",
            Phrase.of("true EC there = ")
                .add(check.trueEc(), Show.MS_CM.digits(4))
                .add(", brought to 25 C by the meter = ")
                .add(check.compensatedShows(), Show.MS_CM.digits(4)),
            check.slope(),
            5,
            "standard 0 to 40 C",
            "potassium chloride: CRC Handbook after Wu et al. 1991, OIML R 56, tables of instrument manuals"));
  }

  private static void minds(Answer answer, MeterCheck check, boolean known, Double at) {
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
    if (at == null) {
      answer.mind(
          "beaker-temperature",
          "without a thermometer in the beaker the check is good to a few per cent; a meter without compensation is off 2 % a degree.");
    }
    if (!check.standard().isTabulated()) {
      answer.mind(
          "odd-standard",
          "no table holds this standard: its course with temperature is good to 1 %. Check at 25 C.");
    }
  }
}
