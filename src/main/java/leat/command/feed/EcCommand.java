package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
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
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.PpmScale;

/** {@code leat ec}: what a conductivity meter shows, on every scale and at 25 C. */
public final class EcCommand extends Command {
  static final Column EC = Column.of("ec_mS_cm", "as read", Show.MS_CM);
  static final Column EC25 = Column.of("ec25_mS_cm", "for targets", Show.MS_CM);
  static final Column PPM500 = Column.number("ppm500", "ppm x500", 3);
  static final Column PPM640 = Column.number("ppm640", "ppm x640", 3);
  static final Column PPM700 = Column.number("ppm700", "ppm x700", 3);
  static final Column STATUS = Column.plain("status", "status");

  /** For the text alone. */
  static final Column REFERENCE = Column.of("reference_C", "reference", Show.C.digits(2));

  private static final Column PER_DEGREE = Column.number("per_degree_pct", "a degree", 3);
  private static final Column WARMEST = Column.of("warmest_C", "warmest", Show.C.digits(3));

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
      Flag.of(
          "--scale",
          "500|640|700",
          Kind.NUMBER,
          "500",
          "ppm scale of the meter; meters.ec.scale of the plan otherwise"),
      Flag.of(
          "--coefficient",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "2 %",
          "change of the EC per degree Celsius, instead of 1.91 %"),
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
              "an ion of the solution, in mg/L, mmol/L or meq/L: predicts the EC; N-NO3 counts the nitrogen only")
          .repeatable(),
      Flag.of(
              "--weighed",
              "SALT=GRAMS",
              Kind.TEXT,
              "potassium-nitrate=21 g",
              DoseSaltsCommand.WEIGHED_MEANING)
          .repeatable(),
      Flag.of(
              "--volume",
              "VOLUME",
              Kind.quantity(Dimension.VOLUME),
              "45 L",
              "finished solution, with --weighed")
          .belongsTo("--weighed"),
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
    return new RowStream(call, new EcRows(call)).run(output);
  }

  static EcReading reading(double ec, Double at, Compensation by) {
    return at == null ? EcReading.at25(ec) : EcReading.raw(ec, at, by);
  }

  static void fill(Row row, EcReading reading) {
    row.set(EC25, reading.ec25())
        .set(PPM500, reading.ppm500())
        .set(PPM640, reading.ppm640())
        .set(PPM700, reading.ppm700());
  }

  /** Factor of the plan's last meter check; 1 without one. */
  static double slope(Plan plan) {
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

  /** The temperature that targets mean, for sentences. */
  static Row reference() {
    return Row.aside(REFERENCE).set(REFERENCE, EcReading.REFERENCE_CELSIUS);
  }

  /** The temperature function in Taken. */
  static void taken(Answer answer, Compensation by) {
    Row row =
        Row.aside(PER_DEGREE, WARMEST).set(PER_DEGREE, by.pctPerK()).set(WARMEST, by.warmest());
    if (by.isNaturalWater()) {
      answer.taken(row, "the natural-water function of ISO 7888, to {warmest_C}");
    } else {
      answer.taken(row, "{per_degree_pct} % per degree Celsius");
    }
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
    if (call.has("--ion") || call.has("--weighed")) {
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
    EcText text = EcText.of(scale(call, call.plan()), call.text("--unit"));
    if (call.has("--standard")) {
      if (call.operands().size() != 1) {
        throw new Refused(EcErrors.oneReading(this));
      }
      return EcStandard.answer(call, text.operand(call.operands().get(0)));
    }
    return new EcReadings(call, text).answer();
  }
}
