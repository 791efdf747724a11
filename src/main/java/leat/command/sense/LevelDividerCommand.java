package leat.command.sense;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.level.Divider;
import leat.level.DividerDesign;
import leat.level.ESeries;
import leat.level.Staircase;
import leat.plan.Kind;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.system.SenderOf;

/** {@code leat level divider}: the fixed resistor that parts the sender's steps best at an ADC. */
public final class LevelDividerCommand extends Command {
  static final Show MA = Show.of(Units.MA, 3);
  static final Show MW = Show.of(Units.MW, 3);
  static final Column OHM = Column.of("step_ohm", "step", LevelColumns.OHM);
  static final Column COUNTS = Column.plain("counts", "counts");
  static final Column LOW = Column.plain("counts_low", "at least");
  static final Column HIGH = Column.plain("counts_high", "at most");
  static final Column MISREAD = Column.of("misread_ohm", "may be off by", Show.OHM);
  static final Column APART = Column.plain("apart", "told from next");
  static final Column BLIND = Column.plain("blind", "blind");
  static final Column CURRENT = Column.of("current_mA", "current", MA);
  static final Column POWER = Column.of("power_mW", "heat", MW);
  static final Column RESISTOR = Column.of("resistor_ohm", "resistor", LevelColumns.OHM);
  static final Column GAP = Column.number("smallest_gap_counts", "closest two", 3);

  static final Kind OHMS = Kind.quantity(Dimension.RESISTANCE);

  private static final Column[] COLUMNS = {
    OHM, COUNTS, LOW, HIGH, MISREAD, APART, BLIND, CURRENT, POWER, RESISTOR, GAP
  };

  private static final Flag[] FLAGS = {
    Flag.of("--ohm", "OHM", OHMS, "27 ohm", "a step of the sender, when no plan has them")
        .repeatable(),
    Flag.of(
            "--supply",
            "VOLTAGE",
            Kind.quantity(Dimension.VOLTAGE),
            "3.3 V",
            "supply of the divider")
        .sets("sender.divider.supply"),
    Flag.of(
            "--reference",
            "VOLTAGE",
            Kind.quantity(Dimension.VOLTAGE),
            "3.3 V",
            "reference of the ADC; the supply unless said")
        .sets("sender.divider.reference"),
    Flag.of("--bits", "N", Kind.COUNT, "12", "bits of the ADC").sets("sender.divider.bits"),
    Flag.of(
            "--sender-side",
            "SIDE",
            Kind.choice("low", "high"),
            "low",
            "low: the sender goes to ground; high: to the supply")
        .sets("sender.divider.sender_side"),
    Flag.of("--resistor", "OHM", OHMS, "180 ohm", "judges this resistor instead of choosing one"),
    Flag.of(
        "--series",
        "SERIES",
        Kind.choice("E6", "E12", "E24", "E48", "E96", "any"),
        "E24",
        LevelLadderCommand.SERIES_MEANING),
    Flag.of(
        "--max-current",
        "CURRENT",
        Kind.quantity(Dimension.CURRENT),
        "10 mA",
        "greatest current wanted in the sender"),
    Flag.of("--adc-error", "COUNTS", Kind.NUMBER, "3", "error of the ADC in counts")
        .sets("sender.divider.adc_error"),
    share("--resistor-tolerance", "tolerance of the fixed resistor", "resistor_tolerance"),
    share("--supply-tolerance", "tolerance of the supply", "supply_tolerance"),
    share("--reference-tolerance", "tolerance of the ADC's reference", "reference_tolerance"),
    Flag.of("--blind", "COUNTS", Kind.COUNT, "100", "counts near 0 that the ADC cannot read")
        .sets("sender.divider.blind"),
    Flag.of("--lead", "OHM", OHMS, "0.5 ohm", "resistance of the lead, there and back")
        .sets("sender.lead"),
    Flag.of(
            "--tolerance",
            "SHARE",
            Kind.quantity(Dimension.SHARE),
            "1 %",
            "tolerance of the sender's resistors")
        .sets("sender.tolerance"),
  };

  @Override
  public String name() {
    return "level divider";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
  }

  private static Flag share(String name, String meaning, String key) {
    return Flag.of(name, "SHARE", Kind.quantity(Dimension.SHARE), "5 %", meaning)
        .sets("sender.divider." + key);
  }

  @Override
  public Answer answer(Call call) {
    Section sender = call.plan().section("sender");
    Steps steps = Steps.of(call, sender);
    DividerDesign design = design(call, sender, steps);
    Answer answer = new Answer(COLUMNS).asList();
    rows(answer, design);
    LevelDividerWords words = new LevelDividerWords(call, answer, design, call.has("--resistor"));
    words.say(yours(call, sender, steps, design));
    answer.table(OHM, COUNTS, LOW, HIGH, MISREAD, CURRENT, POWER);
    call.withTaken(answer);
    boolean ownReference =
        !design.divider().ratiometric() && !sender.section("divider").has("reference_tolerance");
    return words.mindAndGoOn(steps.blind(), ownReference);
  }

  /** With a resistor of one's own, else the best of the series. */
  private static DividerDesign design(Call call, Section sender, Steps steps) {
    Double own = call.above0("--resistor");
    return own != null
        ? steps.of(SenderOf.divider(sender, own, call.taken()))
        : steps.best(
            SenderOf.divider(sender, 1, call.taken()), call.above0("--max-current"), series(call));
  }

  /** The plan's own resistor, where it is neither asked for nor the best; else null. */
  private static DividerDesign yours(Call call, Section sender, Steps steps, DividerDesign design) {
    Double planned = sender.section("divider").maybe("resistor");
    if (planned == null || call.has("--resistor") || planned == design.divider().fixed()) {
      return null;
    }
    return steps.of(SenderOf.divider(sender, planned, call.taken()));
  }

  /** What a divider reads: the sender's steps behind their wire. */
  private record Steps(double[] ohms, double lead, double tolerance, int blind) {
    static Steps of(Call call, Section sender) {
      return new Steps(
          LevelDividerCommand.ohms(call),
          sender.get("lead", call.taken()),
          sender.get("tolerance", call.taken()),
          sender.section("divider").count("blind", call.taken()));
    }

    DividerDesign of(Divider divider) {
      return DividerDesign.of(divider, ohms, lead, tolerance, blind);
    }

    DividerDesign best(Divider divider, Double mostCurrent, ESeries series) {
      return DividerDesign.best(divider, ohms, lead, tolerance, mostCurrent, series, blind);
    }
  }

  private static double[] ohms(Call call) {
    List<Object> given = call.values("--ohm");
    if (given.isEmpty()) {
      Staircase stairs = SenderOf.staircase(call.plan(), call.taken());
      double[] ohms = new double[stairs.size()];
      for (int i = 0; i < ohms.length; i++) {
        ohms[i] = stairs.ohm(i);
      }
      return ohms;
    }
    double[] ohms = new double[given.size()];
    for (int i = 0; i < ohms.length; i++) {
      ohms[i] = (Double) given.get(i);
    }
    return ohms;
  }

  private static ESeries series(Call call) {
    String word = call.text("--series");
    if (word == null) {
      call.taken().note("E24 resistors");
      return ESeries.E24;
    }
    return "any".equals(word) ? null : LevelLadderCommand.series(word);
  }

  private static void rows(Answer answer, DividerDesign design) {
    for (int i = 0; i < design.steps().length; i++) {
      Divider.Step step = design.steps()[i];
      answer
          .row()
          .set(OHM, step.ohm())
          .set(COUNTS, step.code())
          .set(LOW, step.codeLow())
          .set(HIGH, step.codeHigh())
          .set(MISREAD, step.misread())
          .set(BLIND, step.blind())
          .set(CURRENT, step.current())
          .set(POWER, step.power())
          .set(RESISTOR, design.divider().fixed())
          .set(GAP, design.gap());
      if (i + 1 < design.steps().length) {
        answer.row(i).set(APART, design.apart()[i]);
      }
    }
  }
}
