package leat.command.feed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.numeric.Impossible;
import leat.plan.Origin;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.Compounds;
import leat.quantity.NamedQuantity;
import leat.quantity.Nearest;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.quantity.Unreadable;
import leat.solution.Ion;
import leat.solution.IonName;
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

  private Ions typedIons() {
    List<String> typed = call.texts("--ion");
    Ions ions = Ions.NONE;
    for (int i = 0; i < typed.size(); i++) {
      NamedQuantity one = named("--ion", typed.get(i), Units.MG_L);
      IonName name;
      try {
        name = IonName.of(one.name());
      } catch (Impossible e) {
        String near = Nearest.of(one.name(), Arrays.asList(IonName.names()));
        throw new Refused(EcErrors.noIon(one.name(), e.getMessage(), near));
      }
      ions = ions.andMilligrams(name, one.quantity().value());
    }
    return ions;
  }

  Answer answer() {
    Ions ions = typedIons();
    boolean weighs = call.has("--weighed");
    boolean fromPlan = weighs && !call.has("--ion") && SaltsOf.hasWater(plan);
    if (fromPlan) {
      ions = SaltsOf.water(plan);
    }
    boolean tap = fromPlan || ions.of(Ion.HCO3) > 0 || ions.of(Ion.CO3) > 0;
    boolean complete = true;
    if (weighs) {
      Double volume = call.above0("--volume");
      if (volume == null) {
        throw call.needs("--volume");
      }
      Recipe recipe = Recipe.mix(weighed(call), Units.L.fromBase(volume), ions);
      ions = recipe.ions();
      complete = recipe.ionsComplete();
    }
    IonEc ec = IonConductivity.of(ions);
    Answer answer = filled(ions, ec, tap);
    if (weighs) {
      answer.taken(
          Phrase.of(
              fromPlan
                  ? "the ions of the plan's water"
                  : call.has("--ion") ? "--ion as the water's own" : "pure water"));
    }
    minds(answer, ions, ec, complete);
    call.withTaken(answer);
    answer.next("leat ec READING --at \"18 C\"   to compare with the meter");
    return answer;
  }

  private Answer filled(Ions ions, IonEc ec, boolean tap) {
    Answer answer =
        new Answer(
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
            BALANCE);
    Double at = call.quantity("--at");
    Compensation by = EcCommand.compensation(call);
    double raw = at == null ? ec.ec25() : ec.rawAt(at, by);
    Row row =
        answer
            .row()
            .set(EcCommand.EC, raw)
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
    answer.sentence(
        Phrase.of("These ions make an EC of about ")
            .add(ec.ec25(), Show.MS_CM)
            .add(" at 25 C, ")
            .addBare(ec.low(tap), Show.MS_CM)
            .add(" to ")
            .add(ec.high(tap), Show.MS_CM)
            .add("."));
    if (at != null) {
      answer.figure(
          "at " + call.text("--at"),
          Phrase.of(raw, Show.MS_CM),
          Phrase.of("what a meter without compensation shows"));
      answer.taken(EcCommand.taken(by));
    }
    answer.figure(
        "ions",
        Phrase.of(ions.cations(), CATIONS.show()).add(" positive"),
        Phrase.of(ions.anions(), ANIONS.show()).add(" negative"));
    answer.figure(
        "ionic strength", Phrase.of().number(1000 * ec.ionicStrength(), 3).add(" mmol/L"));
    answer.figure(
        "as ppm",
        Phrase.of().number(PpmScale.PPM500.ppm(ec.ec25()), 3).add(" (x500)"),
        Phrase.of().number(PpmScale.PPM640.ppm(ec.ec25()), 3).add(" (x640)"),
        Phrase.of().number(PpmScale.PPM700.ppm(ec.ec25()), 3).add(" (x700)"));
    answer.working(
        Working.of(
            "EC of the ions",
            "EC25 = sum c L gamma^alpha, log10 gamma = -0.509 z^2 (sqrt I/(1 + sqrt I) - 0.3 I), sulfate pairs taken out",
            Phrase.of("I = ")
                .number(ec.freeIonicStrength(), 4)
                .add(" mol/L free, without any interaction ")
                .add(ec.ecLimit(), Show.MS_CM.digits(4)),
            ec.ec25(),
            Show.MS_CM.digits(5),
            "ionic strength to 0.1 mol/L",
            "Appelo 2010, Specific conductance; limiting conductivities of the CRC Handbook"));
    return answer;
  }

  private static void minds(Answer answer, Ions ions, IonEc ec, boolean complete) {
    if (ions.isDoubtful()) {
      answer.mind(
          "charge-balance",
          Phrase.of("positive and negative ions differ by ")
              .number(Math.abs(ions.balancePct()), 2)
              .add(
                  " %: an ion is missing or mistyped (NO3 or N-NO3?), and the EC is off by about half of that."));
    }
    if (!ec.inRange()) {
      answer.mind("ion-range", "stronger than the sum was checked for (0.1 mol/L).");
    }
    if (!complete) {
      answer.mind(
          "hidden-ions",
          "one product does not say what form its nitrogen has: the EC comes out too low.");
    }
  }
}
