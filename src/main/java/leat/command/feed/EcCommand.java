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
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Units;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.EcReading;
import leat.solution.conductivity.PpmScale;

/** {@code leat ec}: what a conductivity meter shows, on every scale and at 25 C. */
public final class EcCommand extends Command {
  static final Column EC = Column.of("ec_mS_cm", "at its temperature", Show.MS_CM);
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
    return EcFlags.all();
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
  static void taken(Answer answer, Compensation by, boolean us) {
    Row row =
        Row.aside(PER_DEGREE, WARMEST)
            .set(PER_DEGREE, by.pctPer(degree(us)))
            .set(WARMEST, by.warmest());
    if (by.isNaturalWater()) {
      answer.taken(row, "the natural-water function of ISO 7888, to {warmest_C}");
    } else {
      answer.taken(
          row,
          us
              ? "{per_degree_pct} % per degree Fahrenheit"
              : "{per_degree_pct} % per degree Celsius");
    }
  }

  /** One degree of the reader's thermometer, K. */
  static double degree(boolean us) {
    return us ? Units.F_DIFFERENCE.toBase(1) : 1;
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
    EcText text = EcText.of(scale(call, call.plan()), (String) call.value("--unit"));
    if (call.has("--standard")) {
      if (call.operands().size() != 1) {
        throw new Refused(EcErrors.oneReading(this));
      }
      return EcStandard.answer(call, text.operand(call.operands().get(0)));
    }
    return new EcReadings(call, text).answer();
  }
}
