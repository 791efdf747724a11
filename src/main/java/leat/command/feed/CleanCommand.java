package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.solution.tank.Clean;
import leat.system.TankOf;

/** {@code leat clean}: sanitiser dilution for closing the season. */
public final class CleanCommand extends Command {
  static final Column BOTTLE = Column.of("bottle_mL", "from the bottle", Show.ML);
  static final Column WATER = Column.of("water_L", "water", Show.L);
  static final Column VOLUME = Column.of("final_volume_L", "then in all", Show.L);
  static final Column STRENGTH = Column.of("strength_mg_L", "strength", Show.MG_L);
  static final Column PER_LITRE = Column.of("bottle_mL_L", "from the bottle", Show.ML_L);
  static final Column OLD = Column.of("bottle_if_old_mL", "from an old bottle", Show.ML);
  static final Column CONTACT = Column.of("contact_min", "let it run", Show.MIN);
  static final Column IN_BOTTLE = Column.of("bottle_g_L", "in the bottle", Show.of(Units.G_L, 3));
  static final Column NEEDS = Column.of("loop_needs_L", "loop needs", Show.L);
  static final Column STATUS = Column.plain("status", "status");
  static final Column FULL = Column.of("full_L", "full", Show.L);

  private static final Column MOST = Column.of("volume_L", "volume", Show.L);
  private static final String PEROXIDE = "peroxide";

  @Override
  public String name() {
    return "clean";
  }

  @Override
  public Flag[] flags() {
    return CleanFlags.all();
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section clean = plan.section("clean");
    boolean bleach = bleach(call, clean);
    boolean other = isOther(clean, bleach);
    needStrength(call, clean, other);
    Double needs = loop(plan, call.taken());
    Double full = full(plan, call.taken());
    double volume = volume(call, full);
    double aim = aim(call, clean, bleach, other);
    double contact = contact(call, clean, bleach, other);
    Clean.Answer one = dilute(call, clean, bleach, volume, aim);
    Answer answer =
        new Answer(
            BOTTLE, WATER, VOLUME, STRENGTH, PER_LITRE, OLD, CONTACT, IN_BOTTLE, NEEDS, STATUS,
            FULL);
    Row row = answer.row().set(CONTACT, contact).set(NEEDS, needs).set(FULL, full);
    fill(row, one, volume, aim);
    CleanText text =
        new CleanText(answer, row, one, bleach, Units.PERCENT.fromBase(clean.need("strength")));
    return one.reached()
        ? told(call, text, needs != null && volume < needs, full != null && volume < full)
        : refused(call, text);
  }

  private static Answer refused(Call call, CleanText text) {
    text.refusal();
    text.cautions();
    return call.withTaken(text.answer()).no();
  }

  private static Answer told(Call call, CleanText text, boolean tooLittle, boolean dryWall) {
    text.sentenceAndFigures(tooLittle);
    call.withTaken(text.answer());
    text.cautions();
    text.volumeMinds(tooLittle, dryWall);
    return text.answer();
  }

  private static void fill(Row row, Clean.Answer one, double volume, double aim) {
    row.set(BOTTLE, Litres.baseOfMl(one.bottleMl()))
        .set(WATER, Litres.base(one.waterL()))
        .set(VOLUME, volume)
        .set(STRENGTH, aim)
        .set(PER_LITRE, one.bottleMlPerL())
        .set(OLD, Litres.baseOfMl(one.bottleMlIfOld()))
        .set(IN_BOTTLE, Units.G_L.toBase(one.bottleGPerL()))
        .set(STATUS, one.status().word);
  }

  /** Whether what the plan says of strength, aim and time is about the other sanitiser. */
  private static boolean isOther(Section clean, boolean bleach) {
    String with = clean.text("with");
    return with != null && with.equals(PEROXIDE) == bleach;
  }

  private static void needStrength(Call call, Section clean, boolean other) {
    if (other && !call.has("--strength")) {
      throw call.needs("--strength");
    }
    if (!clean.has("strength")) {
      throw call.hasPlan() ? clean.missing("strength") : call.needs("--strength");
    }
  }

  private boolean bleach(Call call, Section clean) {
    Object typed = call.value("--with");
    String with = typed == null ? clean.text("with") : (String) typed;
    if (with == null) {
      throw call.hasPlan() ? clean.missing("with") : call.needs("--with");
    }
    return !with.equals(PEROXIDE);
  }

  private static double aim(Call call, Section clean, boolean bleach, boolean other) {
    double usual = bleach ? Clean.USUAL_CHLORINE_MG_L : Clean.mgLOfPct(Clean.USUAL_PEROXIDE_PCT);
    String words =
        Phrase.of(usual, Show.MG_L.digits(2)).render(false)
            + (bleach ? " of free chlorine" : " of peroxide");
    return getOr(clean, "aim", other && !call.has("--aim"), usual, words, call.taken());
  }

  private static double getOr(
      Section clean, String key, boolean other, double usual, String words, Taken taken) {
    if (!other) {
      return clean.getOr(key, usual, words, taken);
    }
    taken.note(words);
    return usual;
  }

  private static double contact(Call call, Section clean, boolean bleach, boolean other) {
    double usual = bleach ? Clean.USUAL_CHLORINE_CONTACT_S : Clean.USUAL_PEROXIDE_CONTACT_S;
    String words = Phrase.of().duration(usual).render(false);
    return getOr(
        clean,
        "contact",
        other && !call.has("--contact"),
        usual,
        bleach ? words : "overnight, " + words,
        call.taken());
  }

  private static Double loop(Plan plan, Taken taken) {
    Section tank = plan.section("tank");
    if (!TankOf.isKnown(tank) || !tank.has("intake")) {
      return null;
    }
    Double held = plan.root().maybe("hold_up");
    return TankOf.of(tank, taken).volume(tank.need("intake")) + (held == null ? 0 : held);
  }

  private static Double full(Plan plan, Taken taken) {
    Section tank = plan.section("tank");
    return TankOf.isKnown(tank) && tank.has("full")
        ? (Double) TankOf.of(tank, taken).volume(tank.need("full"))
        : null;
  }

  private static double volume(Call call, Double full) {
    Double asked = call.above0("--volume");
    if (asked != null) {
      Held.refuseOverTheRim(call, asked);
      return asked;
    }
    if (!call.hasPlan()) {
      throw call.needs("--volume");
    }
    Section tank = call.plan().section("tank");
    if (full == null) {
      TankOf.of(tank, call.taken());
      throw tank.missing("full");
    }
    Row mark = Row.aside(MOST).set(MOST, full);
    String words = "filled to the full mark, {volume_L}, so that the whole wall gets wet";
    call.taken().note(Answer.filled(mark, words).render(false));
    return full;
  }

  private static Clean.Answer dilute(
      Call call, Section clean, boolean bleach, double volume, double aim) {
    double percent = Units.PERCENT.fromBase(clean.need("strength"));
    Object checked = call.value("--basis");
    Clean.Basis basis = checked == null ? Clean.Basis.usual(bleach) : basis((String) checked);
    if (checked == null) {
      call.taken()
          .note(
              bleach
                  ? "label counts available chlorine by volume"
                  : "label counts peroxide by weight");
    }
    double kgL = bleach ? bleachKgL(call, basis) : peroxideKgL(call, basis, percent);
    return bleach
        ? Clean.hypochlorite(Litres.of(volume), percent, basis, kgL, aim)
        : Clean.peroxide(Litres.of(volume), percent, basis, kgL, Clean.pctOfMgL(aim));
  }

  private static double peroxideKgL(Call call, Clean.Basis basis, double percent) {
    Double density = call.above0("--density");
    return density == null && basis.byWeight()
        ? Clean.peroxideDensity(percent)
        : density == null ? 1 : Units.KG_L.fromBase(density);
  }

  private static double bleachKgL(Call call, Clean.Basis basis) {
    Double density = call.above0("--density");
    if (basis.byWeight() && density == null) {
      call.taken()
          .note(
              "bleach of "
                  + Phrase.of(Units.KG_L.toBase(Clean.BLEACH_KG_L), Show.of(Units.KG_L, 3))
                      .render(false));
    }
    return density == null ? Clean.BLEACH_KG_L : Units.KG_L.fromBase(density);
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
}
