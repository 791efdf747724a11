package leat.solution.recipes;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.Ions;
import leat.solution.LeastMass;
import leat.solution.NonNegativeLeastSquares;
import leat.solution.Salt;

/**
 * Grams of salts for asked elements: exact where the salts allow, else the nearest.
 *
 * <pre>
 * x >= 0 grams, A[e,s] = 1000 w(s,e)/V, b asked less the water's own
 * minimise over the asked elements   sum ((A x - b)_e / asked_e)^2      (asked 0: per 1 mg/L)
 * </pre>
 *
 * <p>The relative weight makes 1 % of magnesium count like 1 % of nitrogen. Elements not asked are
 * free. What the water brings beyond the asked stays a miss. When several weighings do equally well
 * the one of least total mass is taken and {@link #unique} is false.
 *
 * <p>Source: {@link NonNegativeLeastSquares}, {@link LeastMass}; the tie-break is a decision of
 * ours. Check values: sheet solution-recipe-inverse.csv.
 *
 * @param elements the asked ones, in the order asked
 * @param recipe grams (a salt held at nought stands with 0 g), ions, EC, cost
 * @param water ions of the water, mmol/L
 * @param exact whether every asked element is hit
 * @param unique whether no other weighing does as well
 * @param leaveOut salts at 0 g that could take part in another weighing as good: leave one out and
 *     the answer is the only one
 * @param idle offered salts that bring nothing asked
 * @param unbrought elements asked above what the water has that no offered salt brings
 * @param sumSqRelMiss what was minimised, -
 * @param worstMissPct largest miss, per cent (asked 0: 100 per 1 mg/L)
 */
public record RecipeFit(
    List<Missed> elements,
    Recipe recipe,
    Ions water,
    boolean exact,
    boolean unique,
    List<Salt> leaveOut,
    List<Salt> idle,
    List<Element> unbrought,
    double sumSqRelMiss,
    double worstMissPct) {

  /**
   * The best weighing.
   *
   * @param asked elements, each once
   * @param salts offered salts, each once
   * @param litres volume of the finished solution, L
   * @param water ions of the water, mmol/L; {@link Ions#NONE} for pure water
   * @throws Impossible if nothing is asked or offered, something twice, the volume not above 0, or
   *     a form of nitrogen asked of a salt that does not say its forms
   */
  public static RecipeFit solve(List<Asked> asked, List<Salt> salts, double litres, Ions water) {
    Recipe.checkVolume(litres);
    check(asked, salts);
    Weighing best = Weighing.lightest(asked, salts, litres, water.elements());
    List<Weighed> weighed = new ArrayList<>();
    List<Salt> leaveOut = new ArrayList<>();
    List<Salt> idle = new ArrayList<>();
    for (int j = 0; j < salts.size(); j++) {
      weighed.add(new Weighed(salts.get(j), best.grams()[j]));
      if (best.alternative()[j]) {
        leaveOut.add(salts.get(j));
      }
      if (best.idle()[j]) {
        idle.add(salts.get(j));
      }
    }
    Recipe recipe = Recipe.mix(weighed, litres, water);
    return judged(asked, recipe, water, leaveOut, idle, unbrought(asked, salts, recipe));
  }

  /**
   * How a recipe weighed by hand meets what was asked.
   *
   * @param asked elements, each once
   * @param recipe the weighed one
   * @param water ions of its water, mmol/L
   * @throws Impossible as {@link #solve}
   */
  public static RecipeFit judge(List<Asked> asked, Recipe recipe, Ions water) {
    List<Salt> salts = new ArrayList<>();
    for (Weighed weighed : recipe.salts()) {
      salts.add(weighed.salt());
    }
    check(asked, salts);
    return judged(asked, recipe, water, List.of(), List.of(), unbrought(asked, salts, recipe));
  }

  /**
   * The same recipe weighed on a scale, with what that makes of the asked elements.
   *
   * @param step smallest step the scale shows, g
   * @throws Impossible if the step is not above 0
   */
  public RecipeFit rounded(double step) {
    List<Asked> asked = new ArrayList<>();
    for (Missed missed : elements) {
      asked.add(new Asked(missed.element(), missed.asked()));
    }
    Recipe onScale = recipe.rounded(step, water);
    RecipeFit fit = judged(asked, onScale, water, leaveOut, idle, unbrought);
    return new RecipeFit(
        fit.elements,
        onScale,
        water,
        fit.exact,
        unique,
        leaveOut,
        idle,
        unbrought,
        fit.sumSqRelMiss,
        fit.worstMissPct);
  }

  /**
   * Whether no asked element is missed by more than that.
   *
   * @param pct allowed miss, per cent
   */
  public boolean isWithin(double pct) {
    return worstMissPct <= pct;
  }

  /** Asked elements of which there is nothing, or which nothing that was offered brings. */
  public List<Element> missing() {
    List<Element> missing = new ArrayList<>();
    for (Missed one : elements) {
      if (isMissing(one)) {
        missing.add(one.element());
      }
    }
    return missing;
  }

  /** Those of them that a salt here would bring, had it not been rounded to nothing or left out. */
  public List<Element> leftOut() {
    List<Element> left = missing();
    left.removeAll(unbrought);
    return left;
  }

  private boolean isMissing(Missed one) {
    return one.asked() > 0 && (one.got() <= 0 || unbrought.contains(one.element()));
  }

  /** Largest miss of the elements that are not missing altogether, per cent. */
  public double worstOfOthersPct() {
    double worst = 0;
    for (Missed one : elements) {
      worst = isMissing(one) ? worst : Math.max(worst, Math.abs(100 * one.relative()));
    }
    return worst;
  }

  /** Whether there is at least as much of each element as was asked. */
  public boolean isOver() {
    boolean over = true;
    for (Missed one : elements) {
      over &= one.missed() >= 0 || !one.isWorthNaming();
    }
    return over;
  }

  /** Whether all elements that are not missing altogether are met as well as salts are pure. */
  public boolean othersMet() {
    boolean met = true;
    for (Missed one : elements) {
      met &= isMissing(one) || !one.isWorthNaming();
    }
    return met;
  }

  private static RecipeFit judged(
      List<Asked> asked,
      Recipe recipe,
      Ions water,
      List<Salt> leaveOut,
      List<Salt> idle,
      List<Element> unbrought) {
    List<Missed> elements = new ArrayList<>();
    boolean exact = true;
    double sum = 0;
    double worst = 0;
    for (Asked one : asked) {
      Missed missed = Missed.of(one, recipe);
      elements.add(missed);
      exact &= missed.isHit();
      sum += missed.relative() * missed.relative();
      worst = Math.max(worst, Math.abs(100 * missed.relative()));
    }
    return new RecipeFit(
        List.copyOf(elements),
        recipe,
        water,
        exact,
        leaveOut.isEmpty(),
        List.copyOf(leaveOut),
        List.copyOf(idle),
        List.copyOf(unbrought),
        sum,
        worst);
  }

  private static void check(List<Asked> asked, List<Salt> salts) {
    if (asked.isEmpty()) {
      throw new Impossible("ask", "an element is needed, such as N=150");
    }
    if (salts.isEmpty()) {
      throw new Impossible("salt", "a salt is needed, such as calcium-nitrate-4h2o");
    }
    for (int i = 0; i < asked.size(); i++) {
      Element element = asked.get(i).element();
      for (int j = 0; j < i; j++) {
        if (asked.get(j).element() == element) {
          throw new Impossible(element.label(), "it is asked twice");
        }
      }
      if (element == Element.N_NO3 || element == Element.N_NH4) {
        checkForms(salts, element);
      }
    }
    for (int i = 0; i < salts.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (salts.get(i).name().equals(salts.get(j).name())) {
          throw new Impossible(salts.get(i).name(), "it is named twice");
        }
      }
    }
  }

  private static void checkForms(List<Salt> salts, Element element) {
    for (Salt salt : salts) {
      if (!salt.ionsKnown()) {
        throw new Impossible(
            element.label(), salt.name() + " does not say what form its nitrogen has: ask N");
      }
    }
  }

  private static List<Element> unbrought(List<Asked> asked, List<Salt> salts, Recipe recipe) {
    List<Element> none = new ArrayList<>();
    for (Asked one : asked) {
      boolean brought = one.mgPerL() <= recipe.fromWater().of(one.element());
      for (Salt salt : salts) {
        brought |= salt.fraction(one.element()) > 0;
      }
      if (!brought) {
        none.add(one.element());
      }
    }
    return none;
  }
}
