package leat.command.feed;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Unreadable;
import leat.solution.Crop;
import leat.solution.EcSlip;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.MeterCheck;
import leat.system.CropsOf;

/**
 * An EC as it is typed for {@code dose} and {@code topup}: mS/cm, or ppm of the meter's scale. What
 * the meter read is brought to 25 C and corrected by the plan's last check of the meter; what no
 * tower can have is asked back.
 */
final class EcTyped {
  static final String WATER_EC_MEANING =
      "EC of the water that is poured in, or ppm; water.ec of the plan otherwise";

  static final Flag SCALE =
      Flag.of(
          "--scale",
          "500|640|700",
          Kind.NUMBER,
          "500",
          "ppm scale of the meter; meters.ec.scale of the plan otherwise");
  static final Flag AT =
      Flag.of(
          "--at",
          "TEMP",
          Kind.quantity(Dimension.TEMPERATURE),
          "18 C",
          "temperature of the solution, for a meter that does not bring its reading to 25 C");

  private static final Column SLOPE = Column.number("slope", "slope", 4);
  private static final Column SCALE_WORD = Column.plain("scale", "scale");
  private static final Column CELSIUS = Column.of("at_C", "at", Show.C);

  private final Call call;
  private final Plan plan;
  private final EcText text;
  private final Section meter;

  EcTyped(Call call) {
    this.call = call;
    this.plan = call.plan();
    this.meter = plan.section("meters").section("ec");
    this.text = EcText.of(EcCommand.scale(call, plan), null);
  }

  /** The EC of a flag, mS/cm at 25 C, or null when it is not given. */
  Double of(String flag) {
    String typed = call.text(flag);
    if (typed == null) {
      return null;
    }
    double ec;
    try {
      ec = text.read(typed);
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag(flag, typed), "", e));
    }
    if (ec < 0) {
      throw new Refused(CommandErrors.cannotBeNegative(flag, typed));
    }
    return ec;
  }

  /** What the meter read, as the EC at 25 C that it stands for; null when it is not given. */
  Double reading(String flag) {
    Double shown = of(flag);
    return shown == null ? null : (Double) corrected(shown);
  }

  /** The same of a cell of rows, which may hold a bare number of mS/cm. */
  double cell(String typed, String bare) {
    return corrected(EcText.of(text.scale, bare).read(typed));
  }

  private double corrected(double shown) {
    Double slope = meter.maybe("slope");
    double ec = slope == null ? shown : MeterCheck.corrected(shown, slope);
    Double at = call.quantity("--at");
    return at == null ? ec : Compensation.DEFAULT.to25(ec, at);
  }

  /** The EC aimed at, of the flag or the plan; asked back when no crop wants it. */
  double target(String flag) {
    Double typed = of(flag);
    Section target = plan.section("target");
    if (typed == null && !target.has("ec") && !call.hasPlan()) {
      throw call.needs(flag);
    }
    double ec = typed == null ? target.need("ec") : typed;
    if (typed != null && !(ec > 0)) {
      throw new Refused(CommandErrors.mustBeAbove0(flag, call.text(flag)));
    }
    double highest = highestOfCrops();
    if (ec > EcSlip.mostAimedAt(highest)) {
      throw new Refused(
          typed == null
              ? target.problem("ec", "ec-slip", MixErrors.slippedTarget(ec, highest))
              : MixErrors.slip(flag, MixErrors.slippedTarget(ec, highest)));
    }
    return ec;
  }

  /** The EC of the water, of the flag or the plan; asked back when no water has it. */
  double water(String flag, double target) {
    Double typed = of(flag);
    Section water = plan.section("water");
    if (typed == null && !water.has("ec") && !call.hasPlan()) {
      throw call.needs(flag);
    }
    return believed(
        typed == null ? water.path("ec") : flag, typed == null ? water.need("ec") : typed, target);
  }

  /** Refuses what a flag read when it cannot belong to an EC aimed at. */
  double believed(String flag, double ec, double target) {
    double aimed = Math.max(target, highestAimed());
    if (ec > EcSlip.mostRead(aimed)) {
      throw new Refused(MixErrors.slip(flag, MixErrors.slippedReading(ec, aimed)));
    }
    return ec;
  }

  private double highestAimed() {
    Double high = plan.section("target").maybe("ec_high");
    return high == null ? 0 : high;
  }

  private double highestOfCrops() {
    List<Crop> crops = CropsOf.known(plan);
    double highest = 0;
    for (int i = 0; i < crops.size(); i++) {
      highest = Math.max(highest, crops.get(i).ecHighMsCm());
    }
    return highest > 0 ? highest : EcSlip.highestOfAnyCrop();
  }

  /** Says what was done to the meter's readings. */
  void taken(Answer answer, String... readings) {
    boolean read = false;
    for (int i = 0; i < readings.length; i++) {
      read |= call.has(readings[i]);
    }
    Row row = Row.aside(SLOPE, SCALE_WORD, CELSIUS);
    if (anyPpm() && !call.has("--scale")) {
      row.set(SCALE_WORD, text.scale.factor());
      answer.taken(row, "ppm on the meter's scale of {scale}");
    }
    Double slope = meter.maybe("slope");
    if (read && slope != null) {
      row.set(SLOPE, slope);
      answer.taken(row, "the meter's reading times {slope}, by its last check");
    }
    Double at = call.quantity("--at");
    if (read && at != null) {
      row.set(CELSIUS, at);
      answer.taken(row, "the meter's reading corrected for {at_C}");
    }
  }

  /**
   * Whether an EC was typed as ppm. Those that this answer does not need are read as well: ppm
   * without a scale is refused.
   */
  private boolean anyPpm() {
    String[] all = {"--ec", "--from", "--target", "--to", "--water-ec"};
    Flag[] flags = call.command.flags();
    boolean ppm = false;
    for (int i = 0; i < flags.length; i++) {
      for (int k = 0; k < all.length; k++) {
        if (flags[i].name().equals(all[k]) && call.has(all[k])) {
          of(all[k]);
          ppm |= text.isPpm(call.text(all[k]));
        }
      }
    }
    return ppm;
  }

  /** Doubts about the meter, from what the plan says of it. */
  void minds(Answer answer) {
    if (!meter.has("compensates")) {
      return;
    }
    boolean compensates = meter.yes("compensates", call.taken());
    if (compensates && call.has("--at")) {
      answer.mind(
          "compensates",
          "the plan's meter corrects for temperature itself: leave --at out, or it counts twice.");
    } else if (!compensates && !call.has("--at")) {
      answer.mind(
          "not-compensated",
          "the plan's meter does not correct for temperature: say the solution's with --at.");
    }
  }
}
