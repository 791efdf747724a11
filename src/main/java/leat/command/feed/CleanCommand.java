package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.tank.Clean;
import leat.system.TankOf;

/** {@code leat clean}: sanitiser dilution for closing the season. */
public final class CleanCommand extends Command {
  static final Column BOTTLE = Column.of("bottle_mL", "from the bottle", Show.ML);
  static final Column WATER = Column.of("water_L", "water", Show.L);
  static final Column VOLUME = Column.of("final_volume_L", "in the loop", Show.L);
  static final Column STRENGTH = Column.of("strength_mg_L", "strength", Show.MG_L);
  static final Column PER_LITRE = Column.of("bottle_mL_L", "for each litre", Show.ML_L);
  static final Column OLD = Column.of("bottle_if_old_mL", "from an old bottle", Show.ML);
  static final Column CONTACT = Column.of("contact_min", "let it run", Show.MIN);
  static final Column IN_BOTTLE = Column.of("bottle_g_L", "in the bottle", Show.of(Units.G_L, 3));
  static final Column NEEDS = Column.of("loop_needs_L", "loop needs", Show.L);
  static final Column STATUS = Column.plain("status", "status");

  private static final double OVERNIGHT_S = 8 * 3600;
  private static final String HYPOCHLORITE = "hypochlorite";

  @Override
  public String name() {
    return "clean";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "25 L",
          "water and sanitiser together; what the plan's loop needs otherwise"),
      Flag.of(
              "--with",
              "AGENT",
              Kind.choice(HYPOCHLORITE, "peroxide"),
              HYPOCHLORITE,
              "sanitiser: household bleach or peroxide")
          .sets("clean.with"),
      Flag.of(
              "--strength",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "2.5 %",
              "strength on the bottle's label")
          .sets("clean.strength"),
      Flag.of(
          "--basis",
          "COUNTS",
          Kind.choice("volume", "weight", "hypochlorite-volume", "hypochlorite-weight"),
          "weight",
          "what the label's per cent counts: grams of the agent in 100 mL or in 100 g; or grams of"
              + " sodium hypochlorite"),
      Flag.of(
          "--density",
          "DENSITY",
          Kind.quantity(Dimension.MASS_CONCENTRATION),
          "1.08 kg/L",
          "the bottle's density, for labels by weight"),
      Flag.of(
              "--aim",
              "STRENGTH",
              Kind.quantity(Dimension.MASS_CONCENTRATION),
              "200 mg/L",
              "strength wanted in the loop; 3 g/L of peroxide is 0.3 %")
          .sets("clean.aim"),
      Flag.of("--contact", "TIME", Kind.quantity(Dimension.TIME), "30 min", "how long it runs")
          .sets("clean.contact"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section clean = plan.section("clean");
    String with = clean.text("with");
    if (with == null) {
      throw call.hasPlan() ? clean.missing("with") : call.needs("--with");
    }
    if (!clean.has("strength")) {
      throw call.hasPlan() ? clean.missing("strength") : call.needs("--strength");
    }
    boolean bleach = HYPOCHLORITE.equals(with);
    Double needs = loop(plan);
    double volume = volume(call, needs);
    double aim =
        bleach
            ? clean.getOr("aim", Clean.USUAL_CHLORINE_MG_L, "200 mg/L of free chlorine")
            : clean.getOr("aim", 1e4 * Clean.USUAL_PEROXIDE_PCT, "0.3 % peroxide");
    double contact =
        bleach
            ? clean.getOr("contact", Clean.USUAL_CHLORINE_CONTACT_S, "30 min")
            : clean.getOr("contact", OVERNIGHT_S, "overnight, 8 h");
    Clean.Answer one = dilute(call, clean, bleach, volume, aim);
    Answer answer =
        new Answer(
            BOTTLE, WATER, VOLUME, STRENGTH, PER_LITRE, OLD, CONTACT, IN_BOTTLE, NEEDS, STATUS);
    Row row =
        answer
            .row()
            .set(BOTTLE, Litres.baseOfMl(one.bottleMl()))
            .set(WATER, Litres.base(one.waterL()))
            .set(VOLUME, volume)
            .set(STRENGTH, aim)
            .set(PER_LITRE, one.bottleMlPerL())
            .set(OLD, Litres.baseOfMl(one.bottleMlIfOld()))
            .set(CONTACT, contact)
            .set(IN_BOTTLE, Units.G_L.toBase(one.bottleGPerL()))
            .set(NEEDS, needs)
            .set(STATUS, one.status().word);
    if (!one.reached()) {
      answer.sentence(
          Phrase.of("The bottle is too weak: it holds ")
              .add(Units.G_L.toBase(one.bottleGPerL()), IN_BOTTLE.show())
              .add(", and ")
              .add(aim, Show.MG_L)
              .add(" is wanted."));
      cautions(answer, bleach, clean);
      return call.withTaken(answer).no();
    }
    text(answer, row, one, bleach, clean, volume, contact, needs);
    call.withTaken(answer);
    cautions(answer, bleach, clean);
    if (needs != null && volume < needs) {
      answer.mind("too-little", "it is less than the loop needs: the pump will draw air.");
    }
    answer.next("dry pump and sender, strainer out, riser blown empty before frost");
    return answer;
  }

  private static Double loop(Plan plan) {
    Section tank = plan.section("tank");
    if (!TankOf.isKnown(tank) || !tank.has("intake")) {
      return null;
    }
    Double held = plan.root().maybe("hold_up");
    return TankOf.of(tank).volume(tank.need("intake")) + (held == null ? 0 : held);
  }

  private static double volume(Call call, Double needs) {
    Double asked = call.above0("--volume");
    if (asked != null) {
      return asked;
    }
    Section tank = call.plan().section("tank");
    if (!call.hasPlan()) {
      throw call.needs("--volume");
    }
    double low = TankOf.of(tank).volume(tank.need("low"));
    Double held = call.plan().root().maybe("hold_up");
    double volume = low + (held == null ? 0 : held);
    tank.took(
        "filled to the refill mark while it runs, "
            + Phrase.of(volume, Show.L).render(false)
            + " in all");
    return volume;
  }

  private static Clean.Answer dilute(
      Call call, Section clean, boolean bleach, double volume, double aim) {
    double percent = Units.PERCENT.fromBase(clean.need("strength"));
    String label = call.text("--basis");
    Object checked = call.value("--basis");
    Clean.Basis basis =
        checked == null
            ? bleach ? Clean.Basis.WEIGHT_IN_VOLUME : Clean.Basis.WEIGHT_IN_WEIGHT
            : basis(label);
    if (checked == null) {
      clean.took(
          bleach ? "label counts available chlorine by volume" : "label counts peroxide by weight");
    }
    Double density = call.above0("--density");
    if (bleach) {
      boolean byWeight =
          basis == Clean.Basis.WEIGHT_IN_WEIGHT || basis == Clean.Basis.HYPOCHLORITE_IN_WEIGHT;
      if (byWeight && density == null) {
        clean.took("bleach of 1.08 kg/L");
      }
      double kgL = density == null ? Clean.BLEACH_KG_L : Units.KG_L.fromBase(density);
      return Clean.hypochlorite(Litres.of(volume), percent, basis, kgL, aim);
    }
    double kgL = density == null ? Clean.peroxideDensity(percent) : Units.KG_L.fromBase(density);
    return Clean.peroxide(Litres.of(volume), percent, basis, kgL, Units.G_L.fromBase(aim) / 10);
  }

  private static Clean.Basis basis(String label) {
    switch (label) {
      case "volume":
        return Clean.Basis.WEIGHT_IN_VOLUME;
      case "weight":
        return Clean.Basis.WEIGHT_IN_WEIGHT;
      case "hypochlorite-volume":
        return Clean.Basis.HYPOCHLORITE_IN_VOLUME;
      default:
        return Clean.Basis.HYPOCHLORITE_IN_WEIGHT;
    }
  }

  private static void text(
      Answer answer,
      Row row,
      Clean.Answer one,
      boolean bleach,
      Section clean,
      double volume,
      double contact,
      Double needs) {
    answer.sentence(
        Phrase.of("Fill ")
            .add((Double) row.get(WATER), Show.L)
            .add(" of water, add ")
            .add((Double) row.get(BOTTLE), Show.ML)
            .add(" of " + percent(clean) + " % ")
            .add(bleach ? "hypochlorite" : "peroxide")
            .add(", run ")
            .duration(contact)
            .add(" without plants, empty, rinse twice."));
    answer.figure(
        row,
        STRENGTH,
        Phrase.of(bleach ? "free chlorine" : "peroxide"),
        Phrase.of(one.bottleMlPerL(), Show.ML_L));
    if (one.bottleMlIfOld() != null) {
      answer.figure(row, OLD, Phrase.of("half a year takes about a fifth, warmth more"));
    }
    if (needs != null) {
      answer.figure(
          row,
          NEEDS,
          Phrase.of(
              volume >= needs
                  ? "intake mark and towers: it is enough"
                  : "intake mark and towers: it is too little"));
    }
    answer.figure("rinse", Phrase.of("twice ").add(volume, Show.L).add(", then smell"));
    answer.working(
        Working.of(
            "from the bottle",
            "mL = 1000 V y / C",
            Phrase.of("V = ")
                .add(volume, Show.L)
                .add(", y = ")
                .add((Double) row.get(STRENGTH), Show.MG_L)
                .add(", C = ")
                .add((Double) row.get(IN_BOTTLE), IN_BOTTLE.show()),
            (Double) row.get(BOTTLE),
            Show.ML.digits(4),
            "any strength the bottle is above",
            "balance of mass"));
  }

  private static String percent(Section clean) {
    return leat.quantity.NumberText.shortest(Units.PERCENT.fromBase(clean.need("strength")));
  }

  private static void cautions(Answer answer, boolean bleach, Section clean) {
    if (bleach) {
      answer.mind(
          "never-with-acid",
          "never together with acid, vinegar or pH-down: chlorine gas. Nor with ammonia or feed, nor"
              + " with peroxide. Empty and rinse first.");
      answer.mind(
          "chlorine-handling",
          "gloves, goggles, open air, no plants in the loop; not into a pond or a bed. Chlorine eats"
              + " metal and pump seals: rinse well.");
      return;
    }
    answer.mind(
        "peroxide-handling",
        "gloves and goggles: it burns skin. Never with bleach or acid, and no plants in the loop.");
    if (Units.PERCENT.fromBase(clean.need("strength")) > Clean.PEROXIDE_RESTRICTED_PCT) {
      answer.mind(
          "restricted",
          "peroxide over 12 % is restricted for the public in the EU; 3 % from the pharmacy does it,"
              + " with more mL.");
    }
  }
}
