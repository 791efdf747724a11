package leat.check.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.numeric.Impossible;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.stock.Stock;
import leat.solution.stock.StockBottles;
import leat.system.StockOf;

/** The salts of the plan's stock bottles stay dissolved, in the bottles and in the tank. */
final class PartsCompatible extends DeclaredRule {
  private static final double USUAL_COLDEST = 5;
  private static final double BOTTLE_PH = 5.5;
  private static final double LOWEST_PH = 5.0;
  private static final double STEP = 0.1;

  PartsCompatible() {
    super(
        "parts-compatible",
        "clear",
        null,
        null,
        "solubility tables; saturation indices of gypsum and brushite by Davies",
        "feed.stock water target.ph",
        "Whether the salts of feed.stock stay dissolved in the two bottles on the coldest night, and together in the tank at its pH. What settles out feeds nobody and clogs the cap.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    try {
      return judged(subject);
    } catch (Impossible e) {
      return List.of(
          Finding.unknown(this, Phrase.of("feed.stock: " + e.quantity() + ": " + e.getMessage())));
    }
  }

  private List<Finding> judged(Subject subject) {
    Section stock = subject.section("feed").section("stock");
    List<Stock.Weighed> salts = StockOf.salts(subject.plan());
    if (salts.isEmpty()) {
      return List.of();
    }
    double bottle = Units.L.fromBase(stock.need("bottle"));
    double makes = Units.L.fromBase(stock.need("makes"));
    double coldest = stock.getOr("coldest", USUAL_COLDEST, "coldest night 5 C");
    List<Finding> found = new ArrayList<>();
    for (int b = 1; b <= 2; b++) {
      List<Stock.Weighed> there = StockBottles.of(salts, b);
      if (!there.isEmpty()) {
        Stock.Answer one = Stock.bottle(there, bottle, coldest, BOTTLE_PH);
        found.add(finding(one.verdict(), room(there, bottle, coldest)).at("bottle " + b));
      }
    }
    found.add(inTheTank(subject, salts, bottle, coldest, makes).at("tank"));
    return found;
  }

  private static Phrase room(List<Stock.Weighed> there, double bottle, double coldest) {
    Double times = StockBottles.strongest(there, bottle, coldest);
    return times == null
        ? Phrase.of()
        : Phrase.of("feed.stock.bottle of ")
            .number(Math.ceil(10 * bottle / times) / 10, 4)
            .add(" L for the same grams, or keep it warmer");
  }

  private Finding inTheTank(
      Subject subject, List<Stock.Weighed> salts, double bottle, double coldest, double makes) {
    double ph = subject.section("target").need("ph");
    leat.solution.stock.StockWater water = StockOf.water(subject.section("water"));
    Stock.Answer mix = Stock.mix(salts, bottle, coldest, ph, makes / bottle, water);
    if (mix.verdict() == Stock.Verdict.CLEAR) {
      return finding(mix.verdict(), Phrase.of());
    }
    for (double lower = ph - STEP; lower >= LOWEST_PH; lower -= STEP) {
      Stock.Answer then = Stock.mix(salts, bottle, coldest, lower, makes / bottle, water);
      if (then.verdict() == Stock.Verdict.CLEAR) {
        return finding(mix.verdict(), Phrase.of("target.ph of ").number(lower, 2));
      }
    }
    return finding(
        mix.verdict(),
        Phrase.of(
            "less calcium, or less of what it meets: more tower water from feed.stock.makes"));
  }

  private Finding finding(Stock.Verdict verdict, Phrase advice) {
    Verdict judged =
        verdict.no ? Verdict.FAIL : verdict == Stock.Verdict.CLEAR ? Verdict.PASS : Verdict.WARN;
    return Finding.words(this, judged, verdict.word, judged == Verdict.PASS ? Phrase.of() : advice);
  }
}
