package leat.system;

import java.time.LocalDate;
import java.util.List;
import leat.energy.Bill;
import leat.energy.Dates;
import leat.energy.Draw;
import leat.energy.Timetable;
import leat.parts.BuildList;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.season.Batch;
import leat.season.FirstFill;
import leat.season.Money;
import leat.season.Prices;
import leat.season.TankPlan;
import leat.solution.acid.Acid;
import leat.solution.acid.AcidNeed;
import leat.solution.acid.Carbonate;

/** Energy and money of a plan's season. */
public final class MoneyOf {
  private static final String[] BOUGHT = {"pump", "tank", "sender", "controller", "other"};

  private final SeasonOf season;
  private double[] energyJ;
  private double[] energyCost;
  private double runS = Double.NaN;
  private final Prices prices;
  private final FirstFill firstFill;

  /** All that lasts, by whole spools, by the filament used; NaN when nothing is priced. */
  private final double lasting;

  private final double lastingByMass;
  private final PumpWarmth warmth;

  /** Whether the season goes on from a tank in use: what was poured, sown, bought is spent. */
  private final boolean goesOn;

  private int plantsHarvested;
  private int standing;
  private double kg = Double.NaN;
  private double shop = Double.NaN;
  private double seed = Double.NaN;

  private MoneyOf(Plan plan, SeasonOf season, Taken taken) {
    this.season = season;
    TankPlan tank = season.tank();
    goesOn = tank.since().isEarlier();
    firstFill =
        !goesOn && tank.startL() > 0 && tank.startMsCm() > 0
            ? FirstFill.of(tank.feeding(), tank.startL(), tank.startMsCm())
            : new FirstFill(goesOn ? 0 : tank.startL(), 0, tank.startL(), tank.startMsCm());
    prices = prices(plan, taken);
    energy(plan, taken);
    harvest();
    double bought = bought(plan);
    BuildList printed = goesOn || !BuildOf.isPriced(plan) ? null : BuildOf.of(plan, null, taken);
    lasting = printed == null ? bought : plus(bought, printed, printed.filamentCost());
    lastingByMass = printed == null ? bought : plus(bought, printed, printed.filamentCostByMass());
    warmth = warmth(plan, taken);
  }

  /** Energy and money of a season. */
  public static MoneyOf of(Plan plan, SeasonOf season, Taken taken) {
    return new MoneyOf(plan, season, taken);
  }

  private static Prices prices(Plan plan, Taken taken) {
    Section water = plan.section("water");
    Section acid = plan.section("feed").section("acid");
    Double perM3 = water.maybe("price");
    double acidMl = acidMlPerL(plan, taken);
    Double acidPrice = acid.maybe("price");
    return new Prices(
        perM3 == null ? Double.NaN : Units.L.toBase(perM3),
        feedPerMl(plan.section("feed").sections("parts")),
        acidMl,
        acidPrice == null ? Double.NaN : Units.ML.toBase(acidPrice));
  }

  /** Price of a mL of all parts by their rates; NaN unless each has a price. */
  private static double feedPerMl(List<Section> parts) {
    double rates = 0;
    double money = 0;
    for (int i = 0; i < parts.size(); i++) {
      Double price = parts.get(i).maybe("price");
      double rate = parts.get(i).need("rate");
      rates += rate;
      money += price == null ? Double.NaN : rate * Units.ML.toBase(price);
    }
    return money / rates;
  }

  /** Acid for a litre of water; NaN when the plan names no acid or does not know its water. */
  private static double acidMlPerL(Plan plan, Taken taken) {
    Section water = plan.section("water");
    Section acid = plan.section("feed").section("acid");
    Section target = plan.section("target");
    if (!acid.has("name")
        || !water.has("alkalinity")
        || !water.has("ph")
        || !target.has("ph")
        || target.need("ph") > water.need("ph")) {
      return Double.NaN;
    }
    double celsius = water.getOr("temperature", Carbonate.USUAL_CELSIUS, "water 20 C", taken);
    Acid named = AcidOf.of(acid);
    AcidNeed.Answer need =
        AcidNeed.of(
            1, water.need("alkalinity"), water.need("ph"), target.need("ph"), celsius, named);
    return need.acid().ml() == null ? Double.NaN : need.acid().ml();
  }

  private void energy(Plan plan, Taken taken) {
    if (!TimetableOf.isKnown(plan) || !plan.section("pump").has("power")) {
      return;
    }
    Timetable timetable = TimetableOf.of(plan);
    TariffOf price = TariffOf.of(plan, 0);
    Draw draw = DrawOf.of(plan, taken);
    Dates all = ZoneOf.season(plan, taken);
    energyJ = new double[season.days()];
    energyCost = price.isPriced() ? new double[season.days()] : null;
    runS = 0;
    for (int t = 0; t < energyJ.length; t++) {
      LocalDate date = season.from().plusDays(t);
      Bill bill = Bill.of(timetable, price.tariff(), draw, new Dates(date, date, all.zone()));
      energyJ[t] = bill.totalJ();
      runS += bill.runS();
      if (energyCost != null) {
        energyCost[t] = bill.energyCost();
      }
    }
  }

  private void harvest() {
    for (int c = 0; c < season.crops().size(); c++) {
      Grown crop = season.crops().get(c);
      for (int i = 0; i < crop.batches().batches().size(); i++) {
        Batch batch = crop.batches().batches().get(i);
        boolean sown = goesOn && batch.sow().isBefore(season.from());
        if (!sown && Grown.stands(batch, season.from(), season.to())) {
          seed = plus(seed, batch.seeds(), crop.seedPrice());
        }
        if (Grown.isHarvested(batch, season.from(), season.to())) {
          plantsHarvested += batch.plants();
          kg = plus(kg, batch.plants(), crop.harvestKg());
          shop = plus(shop, batch.plants(), crop.shopPrice());
        } else if (Grown.stands(batch, season.from(), season.to())) {
          standing += batch.plants();
        }
      }
    }
  }

  private static double plus(double sum, int count, Double each) {
    if (each == null) {
      return sum;
    }
    return (Double.isNaN(sum) ? 0 : sum) + count * each;
  }

  /** What was bought and what is printed of filament at a price, as {@code parts} prices it. */
  private static double plus(double bought, BuildList printed, Double filament) {
    return filament == null ? bought : plus(bought, 1, plus(filament, 1, printed.energyCost()));
  }

  private double bought(Plan plan) {
    Section section = plan.section("prices");
    double sum = Double.NaN;
    for (int i = 0; i < BOUGHT.length && !goesOn; i++) {
      sum = plus(sum, 1, section.maybe(BOUGHT[i]));
    }
    return sum;
  }

  /** The money. */
  public Money money() {
    return new Money(prices, energyCost, firstFill, seed, shop, lasting, lastingByMass);
  }

  /** Energy from one day to another, both included, J; NaN when not known. */
  public double energyJ(int first, int last) {
    if (energyJ == null) {
      return Double.NaN;
    }
    double sum = 0;
    for (int t = first; t <= last; t++) {
      sum += energyJ[t];
    }
    return sum;
  }

  /** Running of the pump over the season, s; NaN when not known. */
  public double runS() {
    return runS;
  }

  /** Bounds of the warmth that the pump brings; null when its running is not known. */
  public PumpWarmth warmth() {
    return warmth;
  }

  private PumpWarmth warmth(Plan plan, Taken taken) {
    if (Double.isNaN(runS)) {
      return null;
    }
    double seconds = Units.D.toBase(season.days());
    return PumpWarmth.of(plan, plan.section("pump").need("power") * runS / seconds, taken);
  }

  /** What was poured before the first day. */
  public FirstFill firstFill() {
    return firstFill;
  }

  /** Plants harvested within the season. */
  public int plantsHarvested() {
    return plantsHarvested;
  }

  /** Harvest, kg; NaN when no crop says it. */
  public double harvestKg() {
    return kg;
  }
}
