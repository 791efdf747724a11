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
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.acid.Acid;
import leat.solution.acid.AcidNeed;
import leat.solution.acid.Carbonate;
import leat.system.AcidOf;
import leat.system.TankOf;

/** {@code leat acid}: acid to bring water of an alkalinity to a pH. */
public final class AcidCommand extends Command {
  static final Column ACID = Column.of("acid_mL", "acid", Show.ML);
  static final Column MEQ = Column.of("acid_meq_L", "buffer to undo", Show.MEQ_L);
  static final Column FIRST = Column.of("first_pour_mL", "first pour", Show.ML);
  static final Column HALF = Column.of("half_of_rest_mL", "then each time", Show.ML);
  static final Column ACID_G = Column.of("acid_g", "acid", Show.G);
  static final Column FIRST_G = Column.of("first_pour_g", "first pour", Show.G);
  static final Column HALF_G = Column.of("half_of_rest_g", "then each time", Show.G);
  static final Column STATUS = Column.plain("status", "status");
  static final Column VOLUME = Column.of("volume_L", "water", Show.L);
  static final Column ALKALINITY = Column.of("alkalinity_meq_L", "alkalinity", Show.MEQ_L);
  static final Column LEFT = Column.of("alkalinity_left_meq_L", "buffer left", Show.MEQ_L);
  static final Column OPEN = Column.of("acid_if_open_mL", "to hold it in the open", Show.ML);
  static final Column OPEN_G = Column.of("acid_if_open_g", "to hold it in the open", Show.G);
  static final Column OPEN_MEQ = Column.of("acid_if_open_meq_L", "in the open", Show.MEQ_L);
  static final Column FIRST_PH = Column.number("first_pour_ph", "after the first pour", 3);
  static final Column FIRST_PH_HIGH =
      Column.number("first_pour_ph_if_strip_high", "if the strip read high", 3);
  static final Column OPEN_PH = Column.number("ph_open_air_420ppm", "pH in open air", 3);
  static final Column STUFFY_PH = Column.number("ph_open_air_2000ppm", "pH in stuffy air", 3);
  static final Column NITROGEN = Column.of("N_mg_L", "nitrogen added", Show.MG_L.digits(2));
  static final Column PHOSPHORUS = Column.of("P_mg_L", "phosphorus added", Show.MG_L.digits(2));
  static final Column SULFUR = Column.of("S_mg_L", "sulfur added", Show.MG_L.digits(2));
  static final Column CHLORIDE = Column.of("Cl_mg_L", "chloride added", Show.MG_L.digits(2));

  private static final Kind PH = Kind.NUMBER;
  private static final double SMALL_ML = 1;

  @Override
  public String name() {
    return "acid";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "the water; a full tank of the plan otherwise"),
      Flag.of(
              "--alkalinity",
              "ALK",
              Kind.quantity(Dimension.ALKALINITY),
              "180 mg/L",
              "its alkalinity: mg/L as CaCO3, meq/L or dH of carbonate hardness")
          .sets("water.alkalinity"),
      Flag.of("--ph", "PH", PH, "7.6", "its pH").sets("water.ph"),
      Flag.of("--to", "PH", PH, "5.8", "the pH wanted").sets("target.ph"),
      Flag.of(
              "--acid",
              "NAME",
              Kind.TEXT,
              "nitric-60",
              "acid and strength in per cent by weight; citric is weighed")
          .sets("feed.acid.name"),
      Flag.of(
          "--density",
          "DENSITY",
          Kind.quantity(Dimension.MASS_CONCENTRATION),
          "1.37 kg/L",
          "the acid's, from its label; a handbook's otherwise"),
      Flag.of(
              "--temperature",
              "TEMP",
              Kind.quantity(Dimension.TEMPERATURE),
              "20 C",
              "temperature of the water")
          .sets("water.temperature"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Section water = call.plan().section("water");
    double alkalinity = need(call, water, "alkalinity", "--alkalinity");
    double ph = need(call, water, "ph", "--ph");
    double to = need(call, call.plan().section("target"), "ph", "--to");
    double volume = volume(call);
    Acid acid = acid(call);
    AcidNeed.refuseRaise(ph, to);
    double celsius = water.getOr("temperature", Carbonate.USUAL_CELSIUS, "water 20 C");
    AcidNeed.Answer need = AcidNeed.of(Litres.of(volume), alkalinity, ph, to, celsius, acid);
    Answer answer =
        new Answer(
            ACID,
            MEQ,
            FIRST,
            HALF,
            ACID_G,
            FIRST_G,
            HALF_G,
            STATUS,
            VOLUME,
            ALKALINITY,
            LEFT,
            OPEN,
            OPEN_G,
            OPEN_MEQ,
            FIRST_PH,
            FIRST_PH_HIGH,
            OPEN_PH,
            STUFFY_PH,
            NITROGEN,
            PHOSPHORUS,
            SULFUR,
            CHLORIDE);
    Row row = row(answer, need, volume);
    taken(call, answer, water, acid);
    if (need.status() == AcidNeed.Status.NO_ACID_NEEDED) {
      return answer.sentence(
          Phrase.of("No acid is needed: the water is at pH ").number(ph, 3).add(" already."));
    }
    text(answer, row, need, acid);
    workings(answer, need, acid, celsius);
    minds(call, answer, water, need, acid, to);
    answer.next(
        "leat dose "
            + (call.hasPlan() ? "--plan " + call.planName() + " " : "")
            + "--volume \""
            + Phrase.of(volume, Show.L).render(false)
            + (call.hasPlan() ? "\" --from READING" : "\" --from READING ...")
            + "   after the acid, not before: feed buffers too");
    return answer;
  }

  private double need(Call call, Section section, String key, String flag) {
    if (!section.has(key)) {
      throw call.hasPlan() ? section.missing(key) : call.needs(flag);
    }
    return section.need(key);
  }

  private static double volume(Call call) {
    Double asked = call.above0("--volume");
    if (asked != null) {
      return asked;
    }
    if (!call.hasPlan()) {
      throw call.needs("--volume");
    }
    Section tank = call.plan().section("tank");
    double full = TankOf.of(tank).volume(tank.need("full"));
    tank.took("a full tank, " + Phrase.of(full, Show.L).render(false));
    return full;
  }

  private Acid acid(Call call) {
    Section section = call.plan().section("feed").section("acid");
    if (!section.has("name")) {
      throw call.hasPlan() ? section.missing("name") : call.needs("--acid");
    }
    Double density = call.above0("--density");
    return AcidOf.of(section, density == null ? 0 : Units.KG_L.fromBase(density));
  }

  private static Row row(Answer answer, AcidNeed.Answer need, double volume) {
    return answer
        .row()
        .set(ACID, Litres.baseOfMl(need.acid().ml()))
        .set(MEQ, need.needMeqL())
        .set(FIRST, Litres.baseOfMl(need.firstPour().ml()))
        .set(HALF, Litres.baseOfMl(need.half().ml()))
        .set(ACID_G, Litres.baseOfG(need.acid().g()))
        .set(FIRST_G, Litres.baseOfG(need.firstPour().g()))
        .set(HALF_G, Litres.baseOfG(need.half().g()))
        .set(STATUS, need.status().word)
        .set(VOLUME, volume)
        .set(ALKALINITY, need.alkalinityMeqL())
        .set(LEFT, need.leftMeqL())
        .set(OPEN, Litres.baseOfMl(need.open().ml()))
        .set(OPEN_G, Litres.baseOfG(need.open().g()))
        .set(OPEN_MEQ, need.openNeedMeqL())
        .set(FIRST_PH, need.firstPourPh())
        .set(FIRST_PH_HIGH, need.firstPourPhIfStripHigh())
        .set(OPEN_PH, need.openPh())
        .set(STUFFY_PH, need.stuffyPh())
        .set(NITROGEN, need.nitrogenMgL())
        .set(PHOSPHORUS, need.phosphorusMgL())
        .set(SULFUR, need.sulfurMgL())
        .set(CHLORIDE, need.chlorideMgL());
  }

  private static void taken(Call call, Answer answer, Section water, Acid acid) {
    String typed = water.typed("alkalinity");
    if (typed != null && (typed.contains("mg") || typed.contains("ppm")) && !typed.contains("O3")) {
      answer.taken(Phrase.of("alkalinity as CaCO3"));
    }
    if (!acid.isSolid() && !call.has("--density")) {
      answer.taken(
          Phrase.of("acid of ").add(Units.KG_L.toBase(acid.densityKgL()), Show.of(Units.KG_L, 4)));
    }
    call.withTaken(answer);
  }

  private static String named(Acid acid) {
    if (acid.isSolid()) {
      return "citric acid";
    }
    return leat.quantity.NumberText.shortest(acid.percent()) + " % " + acid.kind().word + " acid";
  }

  private static Phrase amount(Row row, Acid acid, Column ml, Column g) {
    return Answer.phrase(row, acid.isSolid() ? g : ml);
  }

  private static void text(Answer answer, Row row, AcidNeed.Answer need, Acid acid) {
    answer.sentence(
        Phrase.of("About ")
            .add(amount(row, acid, ACID, ACID_G))
            .add(" of " + named(acid) + "; " + (acid.isSolid() ? "dissolve and pour " : "pour "))
            .add(amount(row, acid, FIRST, FIRST_G))
            .add(", stir, wait an hour, measure, then the rest in halves."));
    answer.figure(
        row,
        MEQ,
        Phrase.of("of ")
            .addBare(need.alkalinityMeqL(), Show.MEQ_L)
            .add(": ")
            .add(need.leftMeqL(), Show.MEQ_L)
            .add(" stays as buffer"));
    answer.figure(
        "after the first pour",
        Phrase.of("pH ").number(need.firstPourPh(), 3),
        need.firstPourPhIfStripHigh() == null
            ? Phrase.of()
            : Phrase.of("pH ")
                .number(need.firstPourPhIfStripHigh(), 3)
                .add(" if the strip read a fifth too high"));
    answer.figure(
        "then, in halves", amount(row, acid, HALF, HALF_G), Phrase.of("and measure each time"));
    answer.figure(
        OPEN.label(),
        amount(row, acid, OPEN, OPEN_G),
        Phrase.of("over days; left alone it climbs to pH ")
            .number(need.stuffyPh(), 2)
            .add(" to ")
            .number(need.openPh(), 2));
    brought(answer, row, NITROGEN, "count it in your salts");
    brought(answer, row, PHOSPHORUS, "count it in your salts");
    brought(answer, row, SULFUR, "as sulfate");
    brought(answer, row, CHLORIDE, "leaves bear little of it");
  }

  private static void brought(Answer answer, Row row, Column column, String remark) {
    if ((Double) row.get(column) > 0) {
      answer.figure(row, column, Phrase.of(remark));
    }
  }

  private static void minds(
      Call call, Answer answer, Section water, AcidNeed.Answer need, Acid acid, double to) {
    answer.mind("acid-handling", handling(acid));
    if (acid.isOverHousehold()) {
      answer.mind(
          "no-household-good",
          "over 40 % is no household good: a weaker one does the same with more mL. In some"
              + " countries it may not be sold to you: ask there.");
    } else if (acid.isRestricted()) {
      answer.mind(
          "restricted",
          acid.kind() == Acid.Kind.NITRIC
              ? "nitric acid over 3 % is restricted for the public in the EU: ask what holds where"
                  + " you live, or take citric or phosphoric."
              : "sulfuric acid over 15 % is restricted for the public in the EU: ask what holds"
                  + " where you live.");
    }
    if (acid.isSolid()) {
      answer.mind("eaten", "microbes eat citric acid in days: the pH climbs back.");
    }
    if (!acid.isSolid() && need.firstPour().ml() < SMALL_ML) {
      answer.mind(
          "a-drop",
          "so little wants a 1 mL syringe, or an acid thinned first: one part into nine of water.");
    }
    if (need.targetOutside() && to < 7) {
      answer.mind("all-buffer-gone", "under pH 4.5 no buffer is left: a drop too much bites.");
    }
    if (need.fizzes()) {
      answer.mind(
          "would-fizz",
          "such a water would fizz: alkalinity and pH hardly belong together, measure both again.");
    }
    String typed = water.typed("alkalinity");
    answer.mind(
        "alkalinity-strips",
        typed != null && typed.contains("dH")
            ? "degrees count only as carbonate hardness, not as total hardness; strips are good to"
                + " 20 %."
            : "strips are good to 20 %; the supplier's report is better.");
  }

  private static String handling(Acid acid) {
    String common =
        acid.isSolid()
            ? "gloves and goggles; dissolve it in a cup of water first; never near bleach: chlorine"
                + " gas. Keep it locked away."
            : "acid into water, never water into acid. Goggles, gloves, outdoors; never near bleach:"
                + " chlorine gas. Keep it locked away; what its label says comes first.";
    if (acid.kind() == Acid.Kind.NITRIC) {
      return common + " Nitric acid fumes, stains and feeds fire.";
    }
    return acid.kind() == Acid.Kind.SULFURIC
        ? common + " Sulfuric acid heats as it mixes."
        : common;
  }

  private static void workings(Answer answer, AcidNeed.Answer need, Acid acid, double celsius) {
    answer.working(
        Working.of(
            "buffer left at the target",
            "left = CT (a1 + 2 a2) + Kw/h - h,  CT from the first pH",
            Phrase.of("CT = ")
                .number(need.totalCarbonateMmolL(), 4)
                .add(" mmol/L, pK1 = ")
                .number(need.pk1(), 4)
                .add(", pK2 = ")
                .number(need.pk2(), 5)
                .add(" at ")
                .add(celsius, Show.C),
            need.leftMeqL(),
            Show.MEQ_L.digits(4),
            "water 0 to 90 C; activities left out, 2 % at 0.01 mol/L",
            "Plummer and Busenberg 1982"));
    answer.working(
        Working.of(
            "acid, closed",
            "meq/L = alkalinity - left;  mmol/L = meq/n",
            Phrase.of("n = ").number(need.protons(), 4).add(" protons a molecule at the target"),
            need.needMeqL(),
            Show.MEQ_L.digits(4),
            "target pH 4.5 to 8.3",
            "charge balance"));
    if (need.acidMolPerL() != null) {
      answer.working(
          Working.of(
              "by volume",
              "mL = mmol/L V / (mol/L of the bottle);  mol/L = 10 p density / M",
              Phrase.of("bottle ").number(need.acidMolPerL(), 4).add(" mol/L"),
              Litres.baseOfMl(need.acid().ml()),
              Show.ML.digits(4),
              "density at 20 C",
              "handbook densities"));
    }
  }
}
