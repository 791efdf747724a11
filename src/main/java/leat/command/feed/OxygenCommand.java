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
  static final Column SATURATION = Column.of("saturation_mg_L", "saturation", Show.MG_L);
  static final Column SEA_LEVEL = Column.of("sea_level_mg_L", "at sea level", Show.MG_L);
  static final Column PRESSURE = Column.number("pressure_kPa", "air pressure, kPa", 4);
  static final Column SHARE = Column.number("share_of_18_C_pct", "against 18 C, %", 3);
  static final Column FOUR = Column.number("four_mg_L_pct", "4 mg/L is, %", 2);

  private static final double WARM = 26;

  @Override
  public String name() {
    return "oxygen";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
              "--at",
              "TEMPERATURE",
              Kind.quantity(Dimension.TEMPERATURE),
              "29 C",
              "temperature of the solution; tank.warmest of the plan otherwise")
          .repeatable(),
      Flag.of(
              "--altitude",
              "HEIGHT",
              Kind.quantity(Dimension.LENGTH),
              "310 m",
              "height over the sea")
          .sets("site.altitude"),
      Flag.of(
          "--pressure",
          "PRESSURE",
          Kind.quantity(Dimension.PRESSURE),
          "976 hPa",
          "air pressure at the place itself, not the forecast's, instead of the altitude"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    List<Object> temperatures = call.values("--at");
    if (temperatures.isEmpty()) {
      Section tank = plan.section("tank");
      if (!tank.has("warmest")) {
        throw call.needs("--at");
      }
      temperatures.add(tank.need("warmest"));
      plan.taken().note("the tank's warmest water");
    }
    Double pressure = call.above0("--pressure");
    if (pressure != null && call.has("--altitude")) {
      throw new Refused(CommandErrors.notBoth(this, "--altitude", "--pressure"));
    }
    Double altitude = plan.section("site").maybe("altitude");
    if (altitude == null && pressure == null) {
      plan.taken().note("at sea level");
    }
    double kpa =
        pressure != null
            ? Units.KPA.fromBase(pressure)
            : Oxygen.pressureKpa(altitude == null ? 0 : altitude);
    Answer answer = new Answer(AT, SATURATION, SEA_LEVEL, PRESSURE, SHARE, FOUR);
    Oxygen.Answer first = null;
    double warmest = -1;
    for (int i = 0; i < temperatures.size(); i++) {
      Oxygen.Answer one;
      try {
        one = Oxygen.atPressure((Double) temperatures.get(i), kpa);
      } catch (Impossible e) {
        throw EcErrors.ofTemperature(call, "water", e);
      }
      first = i == 0 ? one : first;
      warmest = Math.max(warmest, one.celsius());
      answer
          .row()
          .set(AT, one.celsius())
          .set(SATURATION, one.saturationMgL())
          .set(SEA_LEVEL, one.seaLevelMgL())
          .set(PRESSURE, one.pressureKpa())
          .set(SHARE, one.shareOf18Pct())
          .set(FOUR, one.fourIsPct());
    }
    text(answer, first, kpa);
    answer.mind(
        "fits-in",
        "this is what fits in, not what is in there: falling water brings most of it back while the pump runs.");
    if (warmest > WARM) {
      answer.mind(
          "warm", "over 26 C roots want more while the water holds less, and rot spreads easily.");
    }
    answer.next(
        warmest > WARM
            ? "shade the tub, paint it white, let the pump rest less by day: leat duty"
            : "leat oxygen --at \"29 C\"   for the hottest week");
    return call.withTaken(answer);
  }

  private static void text(Answer answer, Oxygen.Answer first, double kpa) {
    if (answer.size() > 1) {
      answer.sentence(
          Phrase.of("Under ")
              .number(kpa, 4)
              .add(" kPa of air, water holds at most so much oxygen."));
      answer.table(AT, SATURATION, SHARE, FOUR);
      return;
    }
    double off = first.shareOf18Pct() - 100;
    Phrase words =
        Phrase.of("Water at ")
            .add(first.celsius(), Show.C)
            .add(kpa < 0.995 * Oxygen.ATMOSPHERE_KPA ? " up here holds " : " holds ")
            .add(first.saturationMgL(), Show.MG_L)
            .add(" of oxygen at most");
    if (Math.abs(off) >= 0.5) {
      words.add(", ").number(Math.abs(off), 2);
      words.add(off < 0 ? " % less than at 18 C" : " % more than at 18 C");
    }
    answer.sentence(words.add("."));
    Row row = answer.row(0);
    answer.figure(row, SATURATION, Phrase.of("at sea level ").add(first.seaLevelMgL(), Show.MG_L));
    answer.figure("air pressure", Phrase.of().number(kpa, 4).add(" kPa"));
    answer.figure(
        "under 4 mg/L",
        Phrase.of("roots suffer"),
        Phrase.of("that is ").number(first.fourIsPct(), 2).add(" % of saturation"));
    answer.working(
        Working.of(
            "oxygen at saturation",
            "C = C1 P (1 - pw/P)(1 - th P)/((1 - pw)(1 - th)), ln C1 a polynomial in 1/T",
            Phrase.of("t = ")
                .add(first.celsius(), Show.C)
                .add(", P = ")
                .number(kpa, 5)
                .add(" kPa, C1 = ")
                .add(first.seaLevelMgL(), Show.MG_L.digits(4)),
            first.saturationMgL(),
            Show.MG_L.digits(5),
            "0 to 40 C",
            "Benson and Krause 1984, as in Standard Methods 4500-O; standard atmosphere of ISO 2533"));
  }
}
