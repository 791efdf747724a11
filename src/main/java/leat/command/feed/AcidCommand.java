package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Refused;
import leat.plan.Section;
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
  static final Column FIRST = Column.of("first_pour_mL", "pour first", Show.ML);
  static final Column HALF = Column.of("half_of_rest_mL", "then each time", Show.ML);
  static final Column ACID_G = Column.of("acid_g", "acid", Show.G);
  static final Column FIRST_G = Column.of("first_pour_g", "pour first", Show.G);
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
  static final Column OPEN_PH = Column.number("ph_open_air_420ppm", "pH in open air", 2);
  static final Column STUFFY_PH = Column.number("ph_open_air_2000ppm", "pH in stuffy air", 2);
  static final Column NITROGEN = Column.of("N_mg_L", "nitrogen added", Show.MG_L.digits(2));
  static final Column PHOSPHORUS = Column.of("P_mg_L", "phosphorus added", Show.MG_L.digits(2));
  static final Column SULFUR = Column.of("S_mg_L", "sulfur added", Show.MG_L.digits(2));
  static final Column CHLORIDE = Column.of("Cl_mg_L", "chloride added", Show.MG_L.digits(2));

  static final Column WATER_ALKALINITY =
      Column.of("water_alkalinity_meq_L", "the fresh water's", Show.MEQ_L);
  static final Column PH = Column.number("ph", "pH", 3);
  static final Column TO = Column.number("to_ph", "pH wanted", 3);

  private static final Column[] COLUMNS = {
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
    CHLORIDE,
    WATER_ALKALINITY,
    PH,
    TO
  };

  @Override
  public String name() {
    return "acid";
  }

  @Override
  public Flag[] flags() {
    return AcidFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    Section water = call.plan().section("water");
    double fresh = need(call, water, "alkalinity", "--alkalinity");
    Double typed = call.quantity("--ph");
    double ph = typed == null ? need(call, water, "ph", "--ph") : typed;
    double to = target(call);
    double volume = volume(call);
    Acid acid = acid(call);
    double celsius =
        water.getOr("temperature", Carbonate.USUAL_CELSIUS, usualTemperature(), call.taken());
    boolean corrected = typed != null && corrected(call, water, ph);
    double alkalinity =
        corrected ? AcidNeed.leftBehind(fresh, water.need("ph"), to, celsius) : fresh;
    AcidNeed.Answer need = AcidNeed.of(Litres.of(volume), alkalinity, ph, to, celsius, acid);
    Answer answer = new Answer(COLUMNS);
    Row row = row(answer, need, volume);
    row.set(WATER_ALKALINITY, fresh).set(PH, ph).set(TO, to);
    taken(call, answer, water, acid);
    AcidText text = new AcidText(call, answer, row, need, acid, corrected);
    return need.status() == AcidNeed.Status.NO_ACID_NEEDED
        ? text.noneNeeded(ph < to)
        : text.told(water, celsius, to);
  }

  /** Whether a pH under the water's own says that acid was poured before. */
  private static boolean corrected(Call call, Section water, double ph) {
    return !call.has("--alkalinity")
        && water.has("ph")
        && AcidNeed.wasCorrected(ph, water.need("ph"));
  }

  private static String usualTemperature() {
    return "water of " + Phrase.of(Carbonate.USUAL_CELSIUS, Show.C.digits(2)).render(false);
  }

  private double target(Call call) {
    Section target = call.plan().section("target");
    double to = need(call, target, "ph", "--to");
    if (AcidNeed.isSour(to)) {
      throw new Refused(MixErrors.sourTarget(target, to));
    }
    return to;
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
    double full = TankOf.of(tank, call.taken()).volume(tank.need("full"));
    call.taken().note("a full tank, " + Phrase.of(full, Show.L).render(false));
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
    Row row = answer.row();
    amounts(row, need);
    air(row, need);
    return row.set(MEQ, need.needMeqL())
        .set(STATUS, need.status().word)
        .set(VOLUME, volume)
        .set(ALKALINITY, need.alkalinityMeqL())
        .set(LEFT, need.bufferMeqL())
        .set(FIRST_PH, need.firstPourPh())
        .set(FIRST_PH_HIGH, need.firstPourPhIfStripHigh())
        .set(NITROGEN, need.nitrogenMgL())
        .set(PHOSPHORUS, need.phosphorusMgL())
        .set(SULFUR, need.sulfurMgL())
        .set(CHLORIDE, need.chlorideMgL());
  }

  private static void amounts(Row row, AcidNeed.Answer need) {
    row.set(ACID, Litres.baseOfMl(need.acid().ml()))
        .set(FIRST, Litres.baseOfMl(need.firstPour().ml()))
        .set(HALF, Litres.baseOfMl(need.half().ml()))
        .set(ACID_G, Litres.baseOfG(need.acid().g()))
        .set(FIRST_G, Litres.baseOfG(need.firstPour().g()))
        .set(HALF_G, Litres.baseOfG(need.half().g()));
  }

  /** What days in the open make of it. */
  private static void air(Row row, AcidNeed.Answer need) {
    row.set(OPEN, Litres.baseOfMl(need.open().ml()))
        .set(OPEN_G, Litres.baseOfG(need.open().g()))
        .set(OPEN_MEQ, need.openNeedMeqL())
        .set(OPEN_PH, need.openPh())
        .set(STUFFY_PH, need.stuffyPh());
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
}
