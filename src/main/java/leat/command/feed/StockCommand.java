package leat.command.feed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.Units;
import leat.solution.pitzer.MixedBottle;
import leat.solution.pitzer.Strength;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockWater;
import leat.system.ConcentrateOf;
import leat.system.DrinksOf;
import leat.system.StockOf;
import leat.system.TankOf;

/** {@code leat stock}: what to weigh into two bottles; solubility and precipitation. */
public final class StockCommand extends Command {
  static final Column BOTTLE = Column.plain("bottle", "bottle");
  static final Column SALT = Column.plain("salt", "salt");
  static final Column GRAMS = Column.of("grams", "weigh", Show.G);
  static final Column SHARE =
      Column.of("share_of_solubility_pct", "of what the cold can hold", Show.PERCENT);
  static final Column VERDICT = Column.plain("verdict", "verdict");
  static final Column RATE = Column.of("rate_mL_L", "a litre of tower water takes", Show.ML_L);
  static final Column MAKES = Column.of("makes_L", "makes", Show.L);
  static final Column SEASON = Column.of("season_L", "the season takes", Show.L);
  static final Column BOTTLES = Column.plain("bottles_season", "bottles a season");
  static final Column MIX = Column.plain("mix_verdict", "in the tank");
  static final Column GYPSUM = Column.number("mix_si_gypsum", "index of gypsum", 2);
  static final Column BRUSHITE = Column.number("mix_si_brushite", "index of calcium phosphate", 2);

  private static final double USUAL_COLDEST = 5;
  private static final double BOTTLE_PH = 5.5;
  private static final double TANK_PH = 6;
  private static final String[] NAMES = {"tank", "bottle 1", "bottle 2"};

  @Override
  public String name() {
    return "stock";
  }

  @Override
  public Flag[] flags() {
    Kind volume = Kind.quantity(Dimension.VOLUME);
    return new Flag[] {
      Flag.of(
              "--weigh",
              "SALT=GRAMS",
              Kind.GRAMS,
              "potassium-nitrate=80",
              "a salt and its grams; feed.stock.grams of the plan otherwise")
          .repeatable(),
      Flag.of(
          "--for",
          "VOLUME",
          volume,
          "45 L",
          "the grams are for this much tower water, as `dose salts` tells them; for one bottle"
              + " otherwise"),
      Flag.of("--bottle", "VOLUME", volume, "1 L", "size of each bottle").sets("feed.stock.bottle"),
      Flag.of("--makes", "VOLUME", volume, "200 L", "tower water that one bottle of each makes")
          .sets("feed.stock.makes"),
      Flag.of(
              "--coldest",
              "TEMP",
              Kind.quantity(Dimension.TEMPERATURE),
              "5 C",
              "coldest night where the bottles stand")
          .sets("feed.stock.coldest"),
      Flag.on("--one-bottle", "judges all salts in one bottle"),
      Flag.of(
          "--season",
          "VOLUME",
          volume,
          "900 L",
          "solution the season takes; from the plan otherwise"),
    };
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section stock = plan.section("feed").section("stock");
    List<Stock.Weighed> salts = salts(call);
    Double season = season(call, plan);
    if (salts.isEmpty()) {
      if (!call.hasPlan() || plan.section("feed").sections("parts").isEmpty()) {
        throw call.needs("--weigh");
      }
      return bought(call, plan, stock, season);
    }
    if (!stock.has("bottle") && !call.hasPlan()) {
      throw call.needs("--bottle");
    }
    double bottle = Litres.of(stock.need("bottle"));
    double coldest = stock.getOr("coldest", USUAL_COLDEST, "coldest night 5 C");
    Double forTower = call.above0("--for");
    double makes = makes(call, stock, salts, bottle, coldest, forTower);
    if (forTower != null) {
      salts = StockBottles.scaled(salts, Litres.of(forTower), makes);
    }
    return judge(call, salts, bottle, coldest, makes, season);
  }

  private static List<Stock.Weighed> salts(Call call) {
    List<Stock.Weighed> salts = new ArrayList<>();
    List<Object> typed = call.values("--weigh");
    for (int i = 0; i < typed.size(); i++) {
      leat.quantity.NamedQuantity one = (leat.quantity.NamedQuantity) typed.get(i);
      salts.add(weighed(call.plan(), one.name(), one.quantity().value()));
    }
    return typed.isEmpty() ? StockOf.salts(call.plan()) : salts;
  }

  private static Stock.Weighed weighed(Plan plan, String name, double kg) {
    StockSalt salt = StockOf.find(plan, name);
    if (salt == null) {
      throw new Refused(MixErrors.unknownSalt(plan, name));
    }
    if (kg < 0) {
      throw new Refused(MixErrors.negativeWeight(name));
    }
    return new Stock.Weighed(salt, Units.G.fromBase(kg));
  }

  private static double makes(
      Call call,
      Section stock,
      List<Stock.Weighed> salts,
      double bottle,
      double coldest,
      Double forTower) {
    if (stock.has("makes")) {
      return Litres.of(stock.need("makes"));
    }
    if (forTower == null) {
      throw call.hasPlan() ? stock.missing("makes") : call.needs("--makes");
    }
    Double strongest = null;
    for (int b = 1; b <= 2; b++) {
      List<Stock.Weighed> there = call.has("--one-bottle") ? salts : StockBottles.of(salts, b);
      Double times =
          there.isEmpty() ? null : Strength.underBoth(there, Litres.of(forTower), coldest);
      if (times != null && (strongest == null || times < strongest)) {
        strongest = times;
      }
    }
    if (strongest == null) {
      throw call.needs("--makes");
    }
    return strongest * bottle;
  }

  private static Double season(Call call, Plan plan) {
    Double asked = call.from0("--season");
    if (asked != null) {
      return Litres.of(asked);
    }
    Section season = plan.section("season");
    Section tank = plan.section("tank");
    if (!season.has("from")
        || !season.has("to")
        || !plan.root().has("drinks") && !plan.root().has("crops")
        || !TankOf.isKnown(tank)
        || !tank.has("full")) {
      return null;
    }
    LocalDate from = (LocalDate) season.raw("from");
    LocalDate to = (LocalDate) season.raw("to");
    Double every = season.section("change").maybe("every");
    return StockBottles.seasonL(
        Litres.of(TankOf.of(tank).volume(tank.need("full"))),
        to.toEpochDay() - from.toEpochDay() + 1,
        every == null ? null : Double.valueOf(Units.D.fromBase(every)),
        Units.L_D.fromBase(DrinksOf.perSecond(plan)));
  }

  private static Answer empty() {
    return new Answer(
            BOTTLE,
            SALT,
            GRAMS,
            SHARE,
            VERDICT,
            RATE,
            MAKES,
            SEASON,
            BOTTLES,
            MIX,
            GYPSUM,
            BRUSHITE,
            BottleIons.SOLID,
            BottleIons.INDEX,
            BottleIons.BAND,
            BottleIons.FALLS_OUT)
        .asList();
  }

  private static Row row(Answer answer, String bottle, double rate, double makes, Double season) {
    Row row =
        answer
            .row()
            .set(BOTTLE, bottle)
            .set(RATE, rate)
            .set(MAKES, Litres.base(makes))
            .set(SEASON, Litres.base(season));
    return season == null ? row : row.set(BOTTLES, StockBottles.season(season, makes).whole());
  }

  private Answer bought(Call call, Plan plan, Section stock, Double season) {
    double bottle = stock.has("bottle") ? Litres.of(stock.need("bottle")) : 1;
    if (!stock.has("bottle")) {
      stock.took("bottles of 1 L");
    }
    Answer answer = empty();
    Section feed = plan.section("feed");
    List<Section> parts = feed.sections("parts");
    Phrase words = Phrase.of("A bottle of ").add(Litres.base(bottle), Show.L).add(" makes ");
    for (int i = 0; i < parts.size(); i++) {
      double rate = parts.get(i).need("rate");
      double makes = StockBottles.towerWaterL(bottle, rate);
      Row row = row(answer, ConcentrateOf.name(feed, i), rate, makes, season);
      words.add(i == 0 ? "" : i == parts.size() - 1 ? " and " : ", ");
      words.add(Litres.base(makes), Show.L).add(" (").add(ConcentrateOf.name(feed, i)).add(")");
      answer.figure(
          ConcentrateOf.name(feed, i),
          Phrase.of(rate, Show.ML_L),
          Phrase.of("makes ").add(Litres.base(makes), Show.L),
          row.get(BOTTLES) == null ? Phrase.of() : Phrase.of(row.get(BOTTLES) + " a season"));
    }
    if (season != null) {
      words.add("; the season takes ").add(Litres.base(season), Show.L);
    }
    answer.sentence(words.add(" at label strength."));
    call.withTaken(answer);
    answer.mind(
        "parts-apart", "never mix the bottles undiluted: what settles out never dissolves again.");
    if (season != null) {
      answer.mind(
          "season-guess",
          "first fill, changes and what the plants drink, all at label strength: most towers take"
              + " less.");
    }
    return answer.next("leat topup --plan " + call.planName() + " ...   what a can takes");
  }

  private Answer judge(
      Call call,
      List<Stock.Weighed> salts,
      double bottle,
      double coldest,
      double makes,
      Double season) {
    Answer answer = empty();
    boolean no = false;
    Stock.Verdict worst = Stock.Verdict.CLEAR;
    Stock.Answer mix = mix(call, salts, bottle, coldest, makes);
    boolean doubted = mix.verdict() == Stock.Verdict.DOUBTFUL;
    double rate = 1000 * bottle / makes;
    int bottles = call.has("--one-bottle") ? 1 : 2;
    for (int b = 1; b <= bottles; b++) {
      List<Stock.Weighed> there = bottles == 1 ? salts : StockBottles.of(salts, b);
      if (there.isEmpty()) {
        continue;
      }
      Stock.Answer one = Stock.bottle(there, bottle, coldest, BOTTLE_PH);
      MixedBottle.Answer ions = MixedBottle.of(there, bottle, coldest);
      Stock.Verdict verdict = MixedBottle.worse(one.verdict(), ions.verdict());
      worst = MixedBottle.worse(verdict, worst);
      doubted |= one.verdict() == Stock.Verdict.DOUBTFUL;
      no |= verdict.no;
      int first = answer.size();
      bottle(answer, one, verdict, mix, NAMES[b], rate, makes, season);
      BottleIons.tell(answer, first, ions);
      bottleMinds(answer, one, ions, NAMES[b]);
    }
    if (bottles == 2) {
      neither(answer, StockBottles.of(salts, 0), mix, rate, makes, season);
    }
    answer.figure("in the tank", Phrase.of(mix.verdict().word), tankRemark(mix));
    worst = MixedBottle.worse(mix.verdict(), worst);
    no |= mix.verdict().no;
    sentence(answer, bottle, makes, coldest, worst, mix, bottles);
    season(answer, season, makes);
    call.withTaken(answer);
    if (!StockBottles.of(salts, 0).isEmpty() && bottles == 2) {
      answer.mind(
          "neither-bottle",
          "gypsum brings calcium and sulfate at once: into neither bottle, weigh it into the tank.");
    }
    if (worst == Stock.Verdict.DOUBTFUL && doubted) {
      answer.mind(
          "ion-pairs",
          "it may settle out: the simple sum leaves out ion pairs, up to 0.5 of an index.");
    }
    answer.next("label both with date and mL a litre; keep dark, cool, locked away from children");
    return no ? answer.no() : answer;
  }

  private static Stock.Answer mix(
      Call call, List<Stock.Weighed> salts, double bottle, double coldest, double makes) {
    Section water = call.plan().section("water");
    StockWater tap = StockOf.water(water);
    double ph = call.plan().section("target").getOr("ph", TANK_PH, "tank at pH 6");
    return Stock.mix(salts, bottle, coldest, ph, makes / bottle, tap);
  }

  private static void bottle(
      Answer answer,
      Stock.Answer one,
      Stock.Verdict verdict,
      Stock.Answer mix,
      String name,
      double rate,
      double makes,
      Double season) {
    for (int i = 0; i < one.shares().size(); i++) {
      Stock.Share share = one.shares().get(i);
      row(answer, name, rate, makes, season)
          .set(SALT, share.salt().name())
          .set(GRAMS, Litres.baseOfG(share.grams()))
          .set(SHARE, share.share())
          .set(VERDICT, verdict.word)
          .set(MIX, mix.verdict().word)
          .set(GYPSUM, mix.index().gypsum())
          .set(BRUSHITE, mix.index().brushite());
      answer.figure(
          i == 0 ? name + ": " + verdict.word : "",
          Phrase.of(share.salt().name()),
          Phrase.of(Litres.baseOfG(share.grams()), Show.G),
          share.share() == null
              ? Phrase.of("solubility not known")
              : Phrase.of(share.share(), Show.PERCENT).add(" of what the cold can hold"));
    }
  }

  /** Salts that belong in neither bottle. */
  private static void neither(
      Answer answer,
      List<Stock.Weighed> salts,
      Stock.Answer mix,
      double rate,
      double makes,
      Double season) {
    for (int i = 0; i < salts.size(); i++) {
      row(answer, NAMES[0], rate, makes, season)
          .set(SALT, salts.get(i).salt().name())
          .set(GRAMS, Litres.baseOfG(salts.get(i).grams()))
          .set(VERDICT, "neither-bottle")
          .set(MIX, mix.verdict().word)
          .set(GYPSUM, mix.index().gypsum())
          .set(BRUSHITE, mix.index().brushite());
      answer.figure(
          "into the tank",
          Phrase.of(salts.get(i).salt().name()),
          Phrase.of(Litres.baseOfG(salts.get(i).grams()), Show.G));
    }
  }

  private static void bottleMinds(
      Answer answer, Stock.Answer one, MixedBottle.Answer ions, String name) {
    if (one.verdict() == Stock.Verdict.KEEP_APART || one.verdict() == Stock.Verdict.PRECIPITATES) {
      answer.mind(
          "keep-apart",
          name
              + ": calcium with sulfate or phosphate makes gypsum or calcium phosphate; two bottles"
              + " keep them apart.");
    }
    if (one.verdict() == Stock.Verdict.CRYSTALS) {
      answer.mind(
          "crystals", name + ": more than the cold can hold; make it weaker, or keep it warmer.");
    }
    BottleIons.minds(answer, ions, name);
    if (ions.worstIndex() == null
        && one.commonIon() != null
        && Stock.overWorking(one.commonIonShare())) {
      answer.mind(
          "common-ion",
          name
              + ": its salts share "
              + one.commonIon()
              + " and hinder each other; expect less to dissolve.");
    }
  }

  private static Phrase tankRemark(Stock.Answer mix) {
    Phrase words = Phrase.of();
    if (mix.index().gypsum() != null) {
      words.add("gypsum index ").number(mix.index().gypsum(), 2);
    }
    if (mix.index().brushite() != null) {
      words.add(words.isEmpty() ? "" : ", ").add("calcium phosphate ");
      words.number(mix.index().brushite(), 2);
    }
    return words.isEmpty() ? words : words.add("; settles out over 0");
  }

  private static void sentence(
      Answer answer,
      double bottle,
      double makes,
      double coldest,
      Stock.Verdict worst,
      Stock.Answer mix,
      int bottles) {
    Phrase words =
        Phrase.of(bottles == 2 ? "Two bottles of " : "One bottle of ")
            .add(Litres.base(bottle), Show.L)
            .add(bottles == 2 ? ", each for " : " for ")
            .add(Litres.base(makes), Show.L)
            .add(" of tower water: ");
    switch (worst) {
      case CRYSTALS:
        words.add("salt can crystallise at ").add(coldest, Show.C).add(".");
        break;
      case KEEP_APART:
        words.add("calcium must not share a bottle with sulfate or phosphate.");
        break;
      case PRECIPITATES:
        words.add("something settles out").add(mix.verdict().no ? " in the tank." : ".");
        break;
      case DOUBTFUL:
        words.add("something may settle out.");
        break;
      case TIGHT:
        words.add("at ").add(coldest, Show.C).add(" salt may crystallise: little is to spare.");
        break;
      case UNKNOWN:
        words.add("not all of it can be judged.");
        break;
      default:
        words.add("nothing settles out down to ").add(coldest, Show.C).add(".");
    }
    answer.sentence(words);
  }

  private static void season(Answer answer, Double season, double makes) {
    answer.figure(
        "a litre of tower water",
        Phrase.of("takes ").add((Double) answer.row(0).get(RATE), Show.ML_L).add(" of each"));
    if (season != null) {
      StockBottles.Season need = StockBottles.season(season, makes);
      answer.figure(
          "a season",
          Phrase.of()
              .count(need.whole())
              .add(need.whole() == 1 ? " bottle of each" : " bottles of each"),
          Phrase.of("for ").add(Litres.base(season), Show.L));
    }
  }
}
