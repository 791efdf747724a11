package leat.command.feed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.Flag;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.pitzer.Strength;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;
import leat.solution.stock.StockSalt;
import leat.system.DrinksOf;
import leat.system.StockOf;
import leat.system.TankOf;

/** {@code leat stock}: what to weigh into two bottles; solubility and precipitation. */
public final class StockCommand extends Command {
  static final String WEIGH_MEANING =
      "a salt of the recipe and its grams; feed.stock.grams of the plan otherwise";

  static final String MAKES_MEANING = "tower water that the weighed salts make";

  @Override
  public String name() {
    return "stock";
  }

  @Override
  public Flag[] flags() {
    return StockFlags.all();
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    Plan plan = call.plan();
    Section stock = plan.section("feed").section("stock");
    List<Stock.Weighed> salts = salts(call);
    Double season = season(call, plan);
    if (salts.isEmpty()) {
      return bought(call, season);
    }
    if (!stock.has("bottle") && !call.hasPlan()) {
      throw call.needs("--bottle");
    }
    double bottle = Litres.of(stock.need("bottle"));
    Double coldestNight = stock.maybe("coldest");
    double coldest = coldestNight == null ? Stock.USUAL_COLDEST : coldestNight;
    Double forTower = call.above0("--for");
    double makes = makes(call, stock, salts, bottle, coldest, forTower);
    if (forTower != null) {
      salts = StockBottles.scaled(salts, Litres.of(forTower), makes);
    }
    return new StockJudged(call, salts, bottle, coldest, makes, season).answer();
  }

  private static Answer bought(Call call, Double season) {
    if (!call.hasPlan() || call.plan().section("feed").sections("parts").isEmpty()) {
      throw call.needs("--weigh");
    }
    return new StockBought(call, season).answer();
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
    Double times =
        Strength.ofBottles(salts, Litres.of(forTower), coldest, call.has("--one-bottle"));
    if (times == null) {
      throw call.needs("--makes");
    }
    return Strength.makesL(times, bottle);
  }

  /** Whether the plan has a season that can be run: dates, and weather or crops with dates. */
  private static boolean asksSeason(Plan plan) {
    if (!plan.section("season").has("from") || !plan.section("season").has("to")) {
      return false;
    }
    boolean known = plan.section("site").has("weather") || plan.section("site").has("months");
    List<Section> crops = plan.root().sections("crops");
    for (int i = 0; i < crops.size(); i++) {
      known |= crops.get(i).has("sow");
    }
    return known;
  }

  private static Double season(Call call, Plan plan) {
    Double asked = call.from0("--season");
    if (asked != null) {
      return Litres.of(asked);
    }
    Double forecast = asksSeason(plan) ? StockSeason.litres(plan, call.taken()) : null;
    return forecast == null ? firstFillAndChanges(call, plan) : forecast;
  }

  /** What a season takes at most, by its dates; null when the plan does not say enough. */
  private static Double firstFillAndChanges(Call call, Plan plan) {
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
        Litres.of(TankOf.of(tank, call.taken()).volume(tank.need("full"))),
        to.toEpochDay() - from.toEpochDay() + 1,
        every == null ? null : Double.valueOf(Units.D.fromBase(every)),
        Units.L_D.fromBase(DrinksOf.perSecond(plan)));
  }
}
