package leat.check.feed;

import java.util.ArrayList;
import java.util.List;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.quantity.NumberText;
import leat.quantity.Units;
import leat.solution.pitzer.StockBottle;
import leat.solution.stock.MadeWater;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;
import leat.solution.stock.StockWater;
import leat.system.StockOf;

/** The salts of the plan's stock bottles stay dissolved, in the bottles and in the tank. */
final class PartsCompatible extends DeclaredRule {
  private static final double STEP = 0.1;
  private static final int BOTTLES = 2;

  /** The part that is the tank; parts 1 and 2 are the bottles. */
  private static final int TANK = 0;

  PartsCompatible() {
    super(
        "parts-compatible",
        "clear",
        null,
        null,
        "solubility tables; all ions of a bottle together by Pitzer; saturation indices of gypsum and brushite by Davies",
        "feed.stock water target.ph",
        "Whether the salts of feed.stock stay dissolved in the two bottles on the coldest night, and together in the tank at its pH. What settles out feeds nobody and clogs the cap.");
  }

  private static Section stock(Subject subject) {
    return subject.section("feed").section("stock");
  }

  private static double bottleL(Subject subject) {
    return Units.L.fromBase(stock(subject).need("bottle"));
  }

  private static double coldest(Subject subject) {
    return stock(subject)
        .getOr("coldest", Stock.USUAL_COLDEST, "coldest night 5 C", subject.taken());
  }

  private static List<Stock.Weighed> salts(Subject subject, int part) {
    List<Stock.Weighed> all = StockOf.salts(subject.plan());
    return part == TANK ? all : StockBottles.of(all, part);
  }

  /** A bottle by each salt alone and by all its ions together, the worse of both. */
  private static Stock.Verdict bottle(Subject subject, int part) {
    return StockBottle.of(salts(subject, part), bottleL(subject), coldest(subject)).verdict();
  }

  /** All salts together in the tank at a pH. */
  private static Stock.Verdict tank(Subject subject, double ph) {
    double bottle = bottleL(subject);
    double makes = Units.L.fromBase(stock(subject).need("makes"));
    StockWater water = StockOf.water(subject.section("water"), subject.taken());
    return Stock.mix(
            salts(subject, TANK),
            bottle,
            coldest(subject),
            ph,
            MadeWater.dilution(bottle, makes),
            water)
        .verdict();
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (salts(subject, TANK).isEmpty()) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>(BOTTLES + 1);
    for (int b = 1; b <= BOTTLES; b++) {
      if (!salts(subject, b).isEmpty()) {
        found.add(finding(bottle(subject, b)).at(b));
      }
    }
    double ph = subject.section("target").need("ph");
    found.add(finding(tank(subject, ph)).at(TANK));
    return found;
  }

  private Finding finding(Stock.Verdict verdict) {
    Verdict judged =
        verdict.no ? Verdict.FAIL : verdict == Stock.Verdict.CLEAR ? Verdict.PASS : Verdict.WARN;
    return Finding.words(this, judged, verdict.ordinal());
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return Stock.Verdict.values()[finding.saying()].word;
  }

  @Override
  public String part(Subject subject, Finding finding) {
    return finding.part() == Finding.WHOLE
        ? null
        : finding.part() == TANK ? "tank" : "bottle " + finding.part();
  }

  @Override
  public String place(Finding finding) {
    return finding.part() == TANK ? "target.ph" : "feed.stock";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return finding.part() == TANK ? thinner(subject) : larger(subject, finding.part());
  }

  private static Advice larger(Subject subject, int bottle) {
    Double enough =
        StockBottle.clearLitres(salts(subject, bottle), bottleL(subject), coldest(subject));
    Advice advice = Advice.of("keep it warmer");
    if (enough == null) {
      return advice;
    }
    return advice.cure(
        Cure.typed("feed.stock.bottle", NumberText.significant(enough, 4) + " L")
            .remark(" for the same grams"));
  }

  private static Advice thinner(Subject subject) {
    double ph = subject.section("target").need("ph");
    Advice advice =
        Advice.of("less calcium, or less of what it meets: more tower water from feed.stock.makes");
    for (double lower = ph - STEP; lower >= Stock.LOWEST_TANK_PH; lower -= STEP) {
      if (tank(subject, lower) == Stock.Verdict.CLEAR) {
        return advice.cure(Cure.typed("target.ph", NumberText.significant(lower, 2)));
      }
    }
    return advice;
  }
}
