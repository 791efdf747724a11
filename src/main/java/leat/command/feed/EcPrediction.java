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
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.Compounds;
import leat.quantity.NamedQuantity;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.Ion;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.conductivity.Compensation;
import leat.solution.conductivity.IonConductivity;
import leat.solution.conductivity.IonEc;
import leat.solution.conductivity.PpmScale;
import leat.solution.recipes.Recipe;
import leat.solution.recipes.Weighed;
import leat.system.SaltsOf;

/** The part of {@code leat ec} that predicts an EC from ions and weighed salts. */
final class EcPrediction {
  static final Column LOW = Column.of("ec25_low_mS_cm", "at least", Show.MS_CM);
  static final Column HIGH = Column.of("ec25_high_mS_cm", "at most", Show.MS_CM);
  static final Column STRENGTH = Column.number("ionic_strength_mol_L", "ionic strength", 3);
  static final Column CATIONS = Column.of("cations_meq_L", "cations", Show.MEQ_L.digits(3));
  static final Column ANIONS = Column.of("anions_meq_L", "anions", Show.MEQ_L.digits(3));
  static final Column BALANCE = Column.number("balance_pct", "charge balance", 2);

  /** For the text alone. */
  private static final Column AT = Column.of("at_C", "read at", Show.C);

  private static final Column COOL = Column.of("cool_C", "cool", Show.C.digits(2));
  private static final Column MMOL = Column.number("strength_mmol_L", "strength", 3);
  private static final Column FREE = Column.number("free_mol_L", "free", 4);
  private static final Column LIMIT = Column.of("limit_mS_cm", "limit", Show.MS_CM.digits(4));
  private static final Column OFF = Column.number("off_pct", "off by", 2);

  /** A tank in spring, in the command proposed; any temperature would do. */
  private static final double COOL_CELSIUS = 18;

  private final Call call;
  private final Plan plan;

  EcPrediction(Call call) {
    this.call = call;
    this.plan = call.plan();
  }

  /** Reads "NAME=VALUE" of a flag, with the same messages as everywhere. */
  static NamedQuantity named(String flag, String typed, Unit bare) {
    try {
      return Compounds.named(typed, bare);
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag(flag, typed), "", e));
    }
  }

  /** The salts of a repeated {@code --weighed}. */
  static List<Weighed> weighed(Call call) {
    List<String> typed = call.texts("--weighed");
    List<Weighed> all = new ArrayList<>();
    for (int i = 0; i < typed.size(); i++) {
      NamedQuantity one = named("--weighed", typed.get(i), Units.G);
      Salt salt = salt(call, "--weighed", one.name());
      for (int j = 0; j < all.size(); j++) {
        if (all.get(j).salt().name().equals(salt.name())) {
          throw new Refused(EcErrors.saltTwice("--weighed", one.name()));
        }
      }
      all.add(new Weighed(salt, one.quantity().in(Units.G)));
    }
    return all;
  }

  static Salt salt(Call call, String flag, String name) {
    Salt salt = SaltsOf.find(call.plan(), name);
    if (salt == null) {
      throw new Refused(EcErrors.noSalt(flag, name, SaltsOf.names(call.plan())));
    }
    return salt;
  }

  Answer answer() {
    Ions ions = IonTable.typed(call);
    boolean weighs = call.has("--weighed");
    boolean fromPlan = weighs && !call.has("--ion") && SaltsOf.hasWater(plan);
    if (fromPlan) {
      ions = SaltsOf.water(plan);
    }
    boolean tap = fromPlan || ions.of(Ion.HCO3) > 0 || ions.of(Ion.CO3) > 0;
    boolean complete = true;
    if (weighs) {
      Recipe recipe = recipe(ions);
      ions = recipe.ions();
      complete = recipe.ionsComplete();
    }
    IonEc ec = IonConductivity.of(ions);
    Answer answer = filled(ions, ec, tap);
    answer.jsonObject(answer).array("ions", IonTable.of(ions));
    if (weighs) {
      answer.taken(Phrase.of(water(fromPlan)));
    }
    minds(answer, ions, ec, complete);
    call.withTaken(answer);
    next(answer);
    return answer;
  }

  /** The weighed salts in water of these ions. */
  private Recipe recipe(Ions water) {
    Double volume = call.above0("--volume");
    if (volume == null) {
      throw call.needs("--volume");
    }
    return Recipe.mix(weighed(call), Units.L.fromBase(volume), water);
  }

  private static void next(Answer answer) {
    NextLine.of(
        answer,
        "leat ec READING",
        Row.aside(COOL).set(COOL, COOL_CELSIUS),
        " --at \"{cool_C}\"   to compare with the meter");
  }

  private String water(boolean fromPlan) {
    if (fromPlan) {
      return "the ions of the plan's water";
    }
    return call.has("--ion") ? "--ion as the water's own" : "pure water";
  }

  private static final Column[] COLUMNS = {
    EcCommand.EC,
    EcCommand.EC25,
    LOW,
    HIGH,
    EcCommand.PPM500,
    EcCommand.PPM640,
    EcCommand.PPM700,
    STRENGTH,
    CATIONS,
    ANIONS,
    BALANCE
  };

  private Answer filled(Ions ions, IonEc ec, boolean tap) {
    Answer answer = new Answer(COLUMNS);
    Double at = call.quantity("--at");
    Compensation by = EcCommand.compensation(call);
    Row row =
        answer
            .row()
            .set(EcCommand.EC, at == null ? ec.ec25() : ec.rawAt(at, by))
            .set(EcCommand.EC25, ec.ec25())
            .set(LOW, ec.low(tap))
            .set(HIGH, ec.high(tap))
            .set(EcCommand.PPM500, PpmScale.PPM500.ppm(ec.ec25()))
            .set(EcCommand.PPM640, PpmScale.PPM640.ppm(ec.ec25()))
            .set(EcCommand.PPM700, PpmScale.PPM700.ppm(ec.ec25()))
            .set(STRENGTH, ec.ionicStrength())
            .set(CATIONS, ions.cations())
            .set(ANIONS, ions.anions())
            .set(BALANCE, ions.balancePct());
    text(answer, row.with(aside(ions, ec, at)), ions, at != null);
    if (at != null) {
      EcCommand.taken(answer, by, call.us());
    }
    return answer;
  }

  private static Row aside(Ions ions, IonEc ec, Double at) {
    return Row.aside(AT, MMOL, FREE, LIMIT, OFF)
        .set(AT, at)
        .set(MMOL, ec.strengthMmolL())
        .set(FREE, ec.freeIonicStrength())
        .set(LIMIT, ec.ecLimit())
        .set(OFF, ions.offPct())
        .with(EcCommand.reference());
  }

  private static void text(Answer answer, Row row, Ions ions, boolean raw) {
    answer.sentence(
        row,
        "These ions make an EC of about {ec25_mS_cm} at {reference_C}, {ec25_low_mS_cm..ec25_high_mS_cm}.");
    if (raw) {
      answer.figure(
          "at that warmth", row, "{ec_mS_cm}", "what a meter without compensation shows at {at_C}");
    }
    answer.figure("ions", row, "{cations_meq_L} positive", "{anions_meq_L} negative");
    answer.figure("ionic strength", row, "{strength_mmol_L} mmol/L");
    answer.figure("as ppm", row, "{ppm500} (x500)", "{ppm640} (x640)", "{ppm700} (x700)");
    answer.block();
    IonTable.tell(answer, IonTable.of(ions));
    working(answer, row);
  }

  private static void working(Answer answer, Row row) {
    answer.working(
        Working.of(
            "EC of the ions",
            "EC25 = sum c L gamma^alpha, log10 gamma = -0.509 z^2 (sqrt I/(1 + sqrt I) - 0.3 I), sulfate pairs taken out",
            Answer.filled(
                row, "I = {free_mol_L} mol/L free, without any interaction {limit_mS_cm}"),
            (Double) row.get(EcCommand.EC25),
            Show.MS_CM.digits(5),
            "ionic strength to " + NumberText.shortest(IonConductivity.VALID.high(0)) + " mol/L",
            "Appelo 2010, Specific conductance; limiting conductivities of the CRC Handbook"));
  }

  private static void minds(Answer answer, Ions ions, IonEc ec, boolean complete) {
    if (ions.isDoubtful()) {
      answer.mind(
          "charge-balance",
          aside(ions, ec, null),
          "positive and negative ions differ by {off_pct} %: an ion is missing or mistyped (NO3 or N-NO3?), and the EC is off by about half of that.");
    }
    if (!ec.inRange()) {
      answer.mind("ion-range", "stronger than the sum was checked for.");
    }
    if (!complete) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: the EC comes out too low.");
    }
  }
}
