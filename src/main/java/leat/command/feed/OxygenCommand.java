package leat.command.feed;

import java.util.ArrayList;
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
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.Oxygen;

/** {@code leat oxygen}: oxygen that water can hold. */
public final class OxygenCommand extends Command {
  static final Column AT = Column.of("at_C", "water", Show.C);
  static final Column SATURATION = Column.of("saturation_mg_L", "can hold", Show.MG_L);
  static final Column SEA_LEVEL = Column.of("sea_level_mg_L", "at sea level", Show.MG_L);
  static final Column PRESSURE =
      Column.of("pressure_kPa", "air pressure", Show.of(Units.KPA, Units.PSI, 4));
  static final Column SHARE = Column.number("share_of_18_C_pct", "against cool water, %", 3);
  static final Column FOUR = Column.number("four_mg_L_pct", "4 mg/L is, %", 2);
  static final Column NEED = Column.of("roots_need_mg_L", "roots need", Show.MG_L.digits(2));

  /** For the text alone. */
  private static final Column OFF = Column.number("off_pct", "off by", 2);

  private static final Column COMPARED = Column.of("compared_C", "compared with", Show.C.digits(2));
  private static final Column WARM = Column.of("warm_C", "warm from", Show.C.digits(2));
  private static final Column HOT = Column.of("hot_C", "a hot week", Show.C.digits(2));
  private static final Column ENOUGH = Column.of("enough_to_C", "enough to", Show.C.digits(2));

  private static final Kind TEMPERATURE = Kind.quantity(Dimension.TEMPERATURE);

  @Override
  public String name() {
    return "oxygen";
  }

  @Override
  public String operands() {
    return "[TEMPERATURE...]";
  }

  @Override
  public Flag[] flags() {
    return OxygenFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    List<Object> temperatures = temperatures(call);
    double kpa = pressureKpa(call);
    Answer answer = new Answer(AT, SATURATION, SEA_LEVEL, PRESSURE, SHARE, FOUR, NEED);
    Oxygen.Answer worst = null;
    for (int i = 0; i < temperatures.size(); i++) {
      Oxygen.Answer one = at(call, (Double) temperatures.get(i), kpa);
      worst = worst == null || one.celsius() > worst.celsius() ? one : worst;
      fill(answer.row(), one);
    }
    say(answer, worst);
    minds(answer, worst);
    next(call, answer, worst);
    return call.withTaken(answer);
  }

  private static void say(Answer answer, Oxygen.Answer worst) {
    if (answer.size() == 1) {
      one(answer, worst);
    } else {
      answer.sentence(
          answer.row(0), "Under {pressure_kPa} of air, water can hold this much oxygen.");
      answer.table(AT, SATURATION, NEED, SHARE, FOUR);
    }
  }

  private static List<Object> temperatures(Call call) {
    List<Object> temperatures = new ArrayList<>();
    for (int i = 0; i < call.operands().size(); i++) {
      temperatures.add(call.operand(i, TEMPERATURE));
    }
    temperatures.addAll(call.values("--at"));
    if (temperatures.isEmpty()) {
      Section tank = call.plan().section("tank");
      if (!tank.has("warmest")) {
        throw call.needs("--at");
      }
      temperatures.add(tank.need("warmest"));
      call.taken().note("the tank's warmest water");
    }
    return temperatures;
  }

  private double pressureKpa(Call call) {
    Plan plan = call.plan();
    Double pressure = call.above0("--pressure");
    if (pressure != null && call.has("--altitude")) {
      throw new Refused(CommandErrors.notBoth(this, "--altitude", "--pressure"));
    }
    if (pressure != null) {
      return Units.KPA.fromBase(pressure);
    }
    return Oxygen.pressureKpa(
        plan.section("site").getOr("altitude", 0, "at sea level", call.taken()));
  }

  private static Oxygen.Answer at(Call call, double celsius, double kpa) {
    try {
      return Oxygen.atPressure(celsius, kpa);
    } catch (Impossible e) {
      throw EcErrors.ofTemperature(call, "water", e);
    }
  }

  private static void fill(Row row, Oxygen.Answer one) {
    row.set(AT, one.celsius())
        .set(SATURATION, one.saturationMgL())
        .set(SEA_LEVEL, one.seaLevelMgL())
        .set(PRESSURE, Units.KPA.toBase(one.pressureKpa()))
        .set(SHARE, one.shareOf18Pct())
        .set(FOUR, one.fourIsPct())
        .set(NEED, one.rootsNeedMgL());
  }

  private static Row words(Oxygen.Answer one) {
    return Row.aside(OFF, COMPARED, WARM, HOT, ENOUGH)
        .set(OFF, one.offPct())
        .set(COMPARED, Oxygen.COMPARED_CELSIUS)
        .set(WARM, Oxygen.WARM_CELSIUS)
        .set(HOT, Oxygen.HOT_WEEK_CELSIUS)
        .set(ENOUGH, Oxygen.celsiusEnough(one.pressureKpa()));
  }

  private static String sentence(Oxygen.Answer one) {
    if (one.offPct() == 0) {
      return "At {at_C} water can hold {saturation_mg_L} of oxygen.";
    }
    return one.lessThanAt18()
        ? "At {at_C} water can hold {saturation_mg_L} of oxygen, {off_pct} % less than at {compared_C}."
        : "At {at_C} water can hold {saturation_mg_L} of oxygen, {off_pct} % more than at {compared_C}.";
  }

  private static void one(Answer answer, Oxygen.Answer one) {
    Row row = answer.row(0).with(words(one));
    answer.sentence(row, sentence(one));
    if (one.thinAir()) {
      answer.figure(row, SATURATION, "at sea level {sea_level_mg_L}");
    } else {
      answer.figure(row, SATURATION, "{share_of_18_C_pct} % of what it holds at {compared_C}");
    }
    answer.figure(row, NEED, "in water of {at_C}; they use more as it warms");
    answer.figure("under 4 mg/L", row, "roots suffer", "that is {four_mg_L_pct} % of saturation");
    answer.figure(row, PRESSURE, new Phrase[0]);
    workings(answer, row, one);
  }

  private static void workings(Answer answer, Row row, Oxygen.Answer one) {
    answer.working(
        Working.of(
            "oxygen at saturation",
            "C = C1 P (1 - pw/P)(1 - th P)/((1 - pw)(1 - th)), ln C1 a polynomial in 1/T",
            Answer.filled(row, "t = {at_C}, P = {pressure_kPa}, C1 = {sea_level_mg_L}"),
            one.saturationMgL(),
            Show.MG_L.digits(5),
            "0 to 40 C",
            "Benson and Krause 1984, as in Standard Methods 4500-O; standard atmosphere of ISO 2533"));
    answer.working(
        Working.of(
            "what roots need",
            "4 mg/L up to 20 C, doubled for each 10 K above",
            Answer.filled(row, "t = {at_C}"),
            one.rootsNeedMgL(),
            Show.MG_L,
            "0 to 40 C",
            "common practice, no source"));
  }

  private static void minds(Answer answer, Oxygen.Answer worst) {
    Row row = answer.row(0).with(words(worst));
    answer.mind(
        "fits-in",
        "this is what fits in, not what is in there: falling water brings most of it back while the pump runs.");
    if (worst.tooLittle()) {
      answer.mind(
          "too-little-oxygen",
          row,
          "less fits in than roots need: keep the water under {enough_to_C}, or let air bubble through it.");
    }
    if (worst.warm()) {
      answer.mind(
          "warm",
          row,
          "over {warm_C} roots want more while the water holds less, and rot spreads easily.");
    }
  }

  private static void next(Call call, Answer answer, Oxygen.Answer worst) {
    if (worst.warm()) {
      answer.next("shade the tank, paint it white, let the pump rest less by day: leat duty");
    } else {
      NextLine.of(
          answer,
          call.again("oxygen", "--altitude", "--pressure"),
          words(worst),
          " --at \"{hot_C}\"   for the hottest week");
    }
  }
}
