package leat.command.feed;

import java.util.List;
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
import leat.cli.Output;
import leat.cli.RowStream;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.NaturalWater;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.LinearCompensation;
import leat.solution.conductivity.MeterCheck;
import leat.solution.conductivity.PpmScale;

/** {@code leat ec}: what a conductivity meter shows, on every scale and at 25 C. */
public final class EcCommand extends Command {
  static final Column EC = Column.of("ec_mS_cm", "as read", Show.MS_CM);
  static final Column EC25 = Column.of("ec25_mS_cm", "at 25 C", Show.MS_CM);
  static final Column PPM500 = Column.number("ppm500", "ppm x500", 3);
  static final Column PPM640 = Column.number("ppm640", "ppm x640", 3);
  static final Column PPM700 = Column.number("ppm700", "ppm x700", 3);
  static final Column STATUS = Column.plain("status", "status");

  @Override
  public String name() {
    return "ec";
  }

  @Override
  public String operands() {
    return "[READING...]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--at",
          "TEMPERATURE",
          Kind.quantity(Dimension.TEMPERATURE),
          "18 C",
          "temperature of a reading without compensation; leave it out when the meter says ATC"),
      Flag.of("--scale", "500|640|700", Kind.NUMBER, "500", "ppm scale of the meter"),
      Flag.of(
          "--coefficient",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "2 %",
          "change of the EC a degree, instead of 1.91 %"),
      Flag.on("--natural-water", "function of ISO 7888 for tap and well water, 0 to 35.9 C"),
      Flag.of(
          "--standard",
          "EC",
          Kind.quantity(Dimension.EC),
          "1.413 mS/cm",
          "checks the meter: the value on the bottle of potassium chloride standard, at 25 C"),
      Flag.of(
              "--compensates",
              "YES",
              Kind.YES_NO,
              "true",
              "whether the meter brings its readings to 25 C itself (ATC)")
          .sets("meters.ec.compensates"),
      Flag.of(
              "--ion",
              "NAME=MG_L",
              Kind.TEXT,
              "NO3=620",
              "an ion of the solution in mg/L: predicts the EC; N-NO3 counts the nitrogen only")
          .repeatable(),
      Flag.of(
              "--weighed",
              "SALT=GRAMS",
              Kind.TEXT,
              "potassium-nitrate=21 g",
              "a salt weighed into --volume: predicts the EC")
          .repeatable(),
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "finished solution, with --weighed"),
      Flag.of(
          "--unit",
          "UNIT",
          Kind.choice("mS/cm", "uS/cm", "dS/m", "mS/m", "ppm"),
          "uS/cm",
          "unit of bare numbers, where the column's name does not end in it"),
      RowStream.COLUMN,
      RowStream.ROWS,
      RowStream.PREFIX,
      RowStream.STRICT,
    };
  }

  @Override
  public int stream(Call call, Output output) {
    if (!call.has("--column")) {
      return -1;
    }
    return new RowStream(call, rows(call)).run(output);
  }

  private static RowStream.Function rows(Call call) {
    String column = call.text("--column");
    String unit = call.has("--unit") ? call.text("--unit") : EcText.unitOf(column);
    EcText text = EcText.of(scale(call, call.plan()), unit);
    Compensation by = compensation(call);
    Double at = call.quantity("--at");
    double slope = slope(call.plan());
    boolean repeats = EC.key().equals(column) && !call.has("--prefix");
    Column[] columns =
        repeats
            ? new Column[] {EC25, PPM500, PPM640, PPM700, STATUS}
            : new Column[] {EC, EC25, PPM500, PPM640, PPM700, STATUS};
    return new RowStream.Function() {
      @Override
      public Column[] columns() {
        return columns;
      }

      @Override
      public Column status() {
        return STATUS;
      }

      @Override
      public void answer(String cell, Row into) {
        double read;
        try {
          read = text.read(cell);
        } catch (Unreadable e) {
          throw unit == null && "no-unit".equals(e.code()) ? EcErrors.noUnitInRows(e) : e;
        }
        EcReading reading = reading(MeterCheck.corrected(read, slope), at, by);
        if (!repeats) {
          into.set(EC, reading.ec());
        }
        fill(into, reading);
        into.set(STATUS, "ok");
      }
    };
  }

  private static EcReading reading(double ec, Double at, Compensation by) {
    return at == null ? EcReading.at25(ec) : EcReading.raw(ec, at, by);
  }

  private static void fill(Row row, EcReading reading) {
    row.set(EC25, reading.ec25())
        .set(PPM500, reading.ppm500())
        .set(PPM640, reading.ppm640())
        .set(PPM700, reading.ppm700());
  }

  /** Factor of the plan's last meter check; 1 without one. */
  private static double slope(Plan plan) {
    Double slope = plan.section("meters").section("ec").maybe("slope");
    return slope == null ? 1 : slope;
  }

  static PpmScale scale(Call call, Plan plan) {
    Double scale = call.quantity("--scale");
    if (scale == null) {
      scale = plan.section("meters").section("ec").maybe("scale");
    }
    return scale == null ? null : PpmScale.of(scale);
  }

  static Compensation compensation(Call call) {
    Double coefficient = call.quantity("--coefficient");
    if (call.has("--natural-water")) {
      if (coefficient != null) {
        throw new Refused(EcErrors.twoFunctions(call.command));
      }
      return Compensation.NATURAL_WATER;
    }
    return coefficient == null
        ? Compensation.DEFAULT
        : Compensation.linear(Units.PERCENT.fromBase(coefficient));
  }

  static Phrase taken(Compensation by) {
    return by.isNaturalWater()
        ? Phrase.of("natural-water function of ISO 7888, 0 to 35.9 C, 0.06 to 1 mS/cm")
        : Phrase.of().number(by.pctPerK(), 3).add(" % a degree, 0 to 60 C");
  }

  @Override
  public Answer answer(Call call) {
    try {
      return answerOf(call);
    } catch (Impossible e) {
      throw EcErrors.ofTemperature(call, "temperature", e);
    }
  }

  private Answer answerOf(Call call) {
    boolean predicts = call.has("--ion") || call.has("--weighed");
    if (predicts) {
      if (!call.operands().isEmpty()) {
        throw new Refused(
            CommandErrors.notBoth(
                this,
                "\"" + call.operands().get(0) + "\"",
                call.has("--ion") ? "--ion" : "--weighed"));
      }
      return new EcPrediction(call).answer();
    }
    if (call.operands().isEmpty()) {
      throw new Refused(EcErrors.noReading(this));
    }
    Plan plan = call.plan();
    EcText text = EcText.of(scale(call, plan), call.text("--unit"));
    if (call.has("--standard")) {
      if (call.operands().size() != 1) {
        throw new Refused(EcErrors.oneReading(this));
      }
      return EcStandard.answer(call, text.operand(call.operands().get(0)));
    }
    return convert(call, plan, text);
  }

  private Answer convert(Call call, Plan plan, EcText text) {
    Answer answer = new Answer(EC, EC25, PPM500, PPM640, PPM700);
    Compensation by = compensation(call);
    Double at = call.quantity("--at");
    double slope = slope(plan);
    List<String> typed = call.operands();
    EcReading first = null;
    for (int i = 0; i < typed.size(); i++) {
      EcReading reading = reading(MeterCheck.corrected(text.operand(typed.get(i)), slope), at, by);
      fill(answer.row().set(EC, reading.ec()), reading);
      first = i == 0 ? reading : first;
    }
    if (typed.size() == 1) {
      one(call, answer, first, text);
    } else {
      answer.sentence(
          Phrase.of()
              .count(typed.size())
              .add(
                  at == null
                      ? " readings, taken as already at 25 C."
                      : " readings, brought to 25 C."));
      answer.table(at == null ? new Column[] {EC25, PPM500, PPM640, PPM700} : columns());
    }
    taken(call, answer, plan, by, at);
    minds(call, answer, by, at, plan);
    next(call, answer, first, at);
    return answer;
  }

  private static Column[] columns() {
    return new Column[] {EC, EC25, PPM500, PPM640, PPM700};
  }

  private static void one(Call call, Answer answer, EcReading r, EcText text) {
    String typed = call.operands().get(0);
    boolean ppm = text.isPpm(typed);
    Row row = answer.row(0);
    if (call.has("--at")) {
      answer.sentence(
          Phrase.of("At 25 C this solution reads ")
              .add(r.ec25(), Show.MS_CM)
              .add(": a meter without compensation shows ")
              .addBare(r.ec(), Show.MS_CM)
              .add(" at " + call.text("--at") + "."));
      answer.figure("at " + call.text("--at"), Phrase.of(r.ec(), Show.MS_CM));
    } else if (ppm) {
      answer.sentence(
          Phrase.of()
              .add(NumberText.shortest(text.ppm(typed)))
              .add(" ppm on the scale of ")
              .count(text.scale.factor())
              .add(" is an EC of ")
              .add(r.ec25(), Show.MS_CM)
              .add("."));
    } else {
      answer.sentence(
          Phrase.of("An EC of ")
              .add(r.ec25(), Show.MS_CM)
              .add(" at 25 C is ")
              .number(r.ppm500(), 3)
              .add(" ppm on the scale of 500, ")
              .number(r.ppm640(), 3)
              .add(" on 640, ")
              .number(r.ppm700(), 3)
              .add(" on 700."));
    }
    answer.figure(row, EC25, Phrase.of("compare this one with targets"));
    answer.figure(
        "as ppm",
        Phrase.of().number(r.ppm500(), 3).add(" (x500)"),
        Phrase.of().number(r.ppm640(), 3).add(" (x640)"),
        Phrase.of().number(r.ppm700(), 3).add(" (x700)"));
    workings(call, answer, r);
  }

  private static void workings(Call call, Answer answer, EcReading r) {
    Compensation by = compensation(call);
    if (call.has("--at")) {
      answer.working(
          Working.of(
              "EC at 25 C",
              by.isNaturalWater()
                  ? "EC25 = f25 EC, f25 = p(T)/p(25), p a polynomial of the fourth degree"
                  : "EC25 = EC / (1 + a (T - 25)/100)",
              Phrase.of("EC = ")
                  .add(r.ec(), Show.MS_CM)
                  .add(", T = ")
                  .add(r.celsius(), Show.C)
                  .add(", f25 = ")
                  .number(r.f25(), 5),
              r.ec25(),
              Show.MS_CM.digits(5),
              by.isNaturalWater() ? "0 to 35.9 C, 0.06 to 1 mS/cm" : "0 to 60 C",
              by.isNaturalWater()
                  ? "ISO 7888:1985 (EN 27888), table of f25"
                  : "common instrument practice; 1.91 % is the coefficient of freshwater meters"));
    }
    answer.working(
        Working.number(
            "ppm on the scale of 500",
            "ppm = 500 EC25",
            Phrase.of("EC25 = ").add(r.ec25(), Show.MS_CM.digits(5)),
            r.ppm500(),
            5,
            "any",
            "common instrument practice"));
  }

  private static void taken(Call call, Answer answer, Plan plan, Compensation by, Double at) {
    if (at != null) {
      answer.taken(taken(by));
    } else {
      answer.taken(Phrase.of("the reading is already at 25 C"));
    }
    Section meter = plan.section("meters").section("ec");
    if (meter.has("slope")) {
      answer.taken(
          Phrase.of("the meter's factor ")
              .number(meter.need("slope"), 4)
              .add(" from its last check"));
    }
    if (!call.has("--scale") && meter.has("scale") && anyPpm(call)) {
      answer.taken(Phrase.of("ppm on the meter's scale of ").number(meter.need("scale"), 3));
    }
    call.withTaken(answer);
  }

  private static boolean anyPpm(Call call) {
    EcText text = EcText.of(null, call.text("--unit"));
    for (int i = 0; i < call.operands().size(); i++) {
      if (text.isPpm(call.operands().get(i))) {
        return true;
      }
    }
    return false;
  }

  private static void minds(Call call, Answer answer, Compensation by, Double at, Plan plan) {
    Object atc = plan.section("meters").section("ec").raw("compensates");
    if (at != null && Boolean.TRUE.equals(atc)) {
      answer.mind(
          "corrected-twice",
          "the plan's meter compensates: it has done this already. Type its readings without --at.");
    } else if (at != null && atc == null) {
      answer.mind("atc", "if your meter says ATC it has done this already: type it without --at.");
    } else if (at == null && Boolean.FALSE.equals(atc)) {
      answer.mind(
          "not-compensated",
          "the plan's meter does not compensate: say the solution's temperature with --at.");
    }
    if (at != null && Compensation.isCold(at)) {
      answer.mind("cold", "below 10 C a feed brought to 25 C reads up to 4 % high.");
    }
    double coefficient = by.pctPerK();
    if (at != null && !by.isNaturalWater() && !LinearCompensation.USUAL.holds(coefficient)) {
      answer.mind("coefficient", "meters and feeds have 1.8 to 2.2 % a degree.");
    }
    double most = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < answer.size(); i++) {
      double ec25 = (Double) answer.row(i).get(EC25);
      most = Math.max(most, ec25);
      least = Math.min(least, ec25);
    }
    if (at != null
        && by.isNaturalWater()
        && !(NaturalWater.WATERS.holds(least) && NaturalWater.WATERS.holds(most))) {
      answer.mind(
          "natural-water-range",
          "ISO 7888 is made for waters of 0.06 to 1 mS/cm, not for a feed: 1.91 % a degree fits a feed better.");
    }
    if (most > 10) {
      answer.mind(
          "very-strong",
          "over 10 mS/cm no plant lives: is this a stock bottle, or uS/cm typed as mS/cm?");
    }
  }

  private static void next(Call call, Answer answer, EcReading first, Double at) {
    Section meter = call.plan().section("meters").section("ec");
    if (!meter.has("slope")) {
      answer.next(
          "leat ec \"1.36 mS/cm\" --standard \"1.413 mS/cm\" --at \"22 C\"   to check the meter");
    } else if (call.hasPlan()) {
      answer.next("leat dose --plan " + call.planName() + " --volume ... --from READING");
    }
  }
}
