package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.ElementName;
import leat.solution.Elements;
import leat.solution.Ion;
import leat.solution.IonName;
import leat.solution.Ions;
import leat.solution.Label;
import leat.solution.Salt;
import leat.solution.Salts;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RecipeFitTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-recipe-inverse.csv").atLeast(12);
  }

  static List<Asked> asked(String list) {
    List<Asked> asked = new ArrayList<>();
    for (String one : list.split(";")) {
      String[] parts = one.split("=");
      asked.add(Asked.of(parts[0], Double.parseDouble(parts[1])));
    }
    return asked;
  }

  static List<Salt> salts(String list) {
    return Stream.of(list.split(";")).map(Salts::of).toList();
  }

  private static RecipeFit fit(String asked, String salts, double litres) {
    return RecipeFit.solve(asked(asked), salts(salts), litres, Ions.NONE);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    RecipeFit fit = fit(r.text("ask_mg_L"), r.text("salts"), r.num("volume_L"));
    String as = r.idAndProvenance();
    String kind = r.text("kind");
    assertThat(fit.unique()).as(as).isEqualTo(!kind.equals("not-unique"));
    assertThat(fit.exact()).as(as).isEqualTo(!kind.equals("least-squares"));
    double tol = r.num("tol_rel");
    String[] grams = r.has("grams") ? r.text("grams").split(";") : new String[0];
    for (int i = 0; i < grams.length; i++) {
      Weighed weighed = fit.recipe().salts().get(i);
      String[] parts = grams[i].split("=");
      double expected = Double.parseDouble(parts[1]);
      assertThat(weighed.salt().name()).isEqualTo(parts[0]);
      assertThat(weighed.grams())
          .as(as)
          .isCloseTo(expected, within(Math.max(tol * expected, r.num("tol_abs_g"))));
    }
    String[] got = r.text("got_mg_L").split(";");
    String[] missed = r.text("missed_pct").split(";");
    for (int i = 0; i < got.length; i++) {
      Missed element = fit.elements().get(i);
      String[] parts = got[i].split("=");
      assertThat(element.element().label()).isEqualTo(parts[0]);
      // grams are given to tol_abs_g: that much of salt is at most that much of element
      double slack = 1000 * r.num("tol_abs_g") / r.num("volume_L");
      double expected = Double.parseDouble(parts[1]);
      assertThat(element.got()).as(as).isCloseTo(expected, within(tol * expected + slack));
      String pct = missed[i].substring(missed[i].indexOf('=') + 1);
      assertThat(element.hasPct()).isEqualTo(!pct.isEmpty());
      if (element.hasPct()) {
        // five digits printed
        assertThat(element.missedPct()).as(as).isCloseTo(Double.parseDouble(pct), within(5e-3));
      }
    }
    assertThat(fit.sumSqRelMiss())
        .as(as)
        .isCloseTo(r.num("sum_sq_rel_miss"), within(tol * r.num("sum_sq_rel_miss") + 1e-18));
    if (r.has("ec_mS_cm")) {
      Recipe recipe = fit.recipe();
      assertThat(recipe.ec().ec25()).isCloseTo(r.num("ec_mS_cm"), withinPercentage(0.02));
      assertThat(recipe.ions().cations())
          .isCloseTo(r.num("cations_meq_L"), withinPercentage(100 * tol));
      assertThat(recipe.ions().anions())
          .isCloseTo(r.num("anions_meq_L"), withinPercentage(100 * tol));
      assertThat(recipe.ec().ecWithoutPairs())
          .isCloseTo(r.num("ec_no_pairs_mS_cm"), withinPercentage(0.02));
    }
  }

  /** The Hoagland 1 answer recovers what was weighed for the forward sheet's RE01. */
  @Test
  void thereAndBack() {
    List<Weighed> weighed =
        RecipeTest.weighed(
            "monopotassium-phosphate=6;potassium-nitrate=23;calcium-nitrate-4h2o=53;"
                + "magnesium-sulfate-7h2o=22;iron-dtpa-11=1");
    Elements made = Recipe.mix(weighed, 45, Ions.NONE).total();
    List<Asked> asked = new ArrayList<>();
    for (Element e : List.of(Element.N, Element.P, Element.K, Element.CA, Element.MG, Element.FE)) {
      asked.add(new Asked(e, made.of(e)));
    }
    RecipeFit fit =
        RecipeFit.solve(asked, weighed.stream().map(Weighed::salt).toList(), 45, Ions.NONE);
    assertThat(fit.exact()).isTrue();
    assertThat(fit.unique()).isTrue();
    for (int i = 0; i < weighed.size(); i++) {
      assertThat(fit.recipe().salts().get(i).grams())
          .isCloseTo(weighed.get(i).grams(), within(1e-9));
    }
  }

  /** IV07: the two nitrates share the nitrogen; the lightest leaves out the heavier one. */
  @Test
  void theLightestOfSeveral() {
    RecipeFit fit =
        fit("N=120;K=150", "potassium-nitrate;calcium-nitrate-4h2o;ammonium-nitrate", 31);
    assertThat(fit.unique()).isFalse();
    assertThat(fit.exact()).isTrue();
    assertThat(fit.leaveOut()).extracting(Salt::name).containsExactly("calcium-nitrate-4h2o");
    RecipeFit without = fit("N=120;K=150", "potassium-nitrate;ammonium-nitrate", 31);
    assertThat(without.unique()).isTrue();
    assertThat(fit.recipe().totalGrams()).isCloseTo(without.recipe().totalGrams(), within(1e-9));
  }

  /** Two hydrates of one salt: proportional columns, the drier one is lighter. */
  @Test
  void twoHydrates() {
    RecipeFit fit = fit("Mg=40", "magnesium-sulfate-7h2o;magnesium-sulfate-1h2o", 45);
    assertThat(fit.recipe().salts().get(0).grams()).isZero();
    assertThat(fit.recipe().salts().get(1).grams())
        .isCloseTo(40 * 45 / 1000.0 / 0.17564462, withinPercentage(0.01));
    assertThat(fit.leaveOut()).extracting(Salt::name).containsExactly("magnesium-sulfate-7h2o");
  }

  @Test
  void theWaterCounts() {
    Ions water = Ions.NONE.andMilligrams(IonName.of("Ca"), 62).andAlkalinity(3.6);
    RecipeFit fit =
        RecipeFit.solve(
            asked("K=100;Ca=50"), salts("potassium-nitrate;calcium-nitrate-4h2o"), 45, water);
    Missed ca = fit.elements().get(1);
    assertThat(ca.got()).isCloseTo(62, within(1e-9));
    assertThat(ca.fromWater()).isCloseTo(62, within(1e-9));
    assertThat(ca.missedPct()).isCloseTo(24, within(1e-9));
    assertThat(fit.recipe().salts().get(1).grams()).isZero();
    assertThat(fit.elements().get(0).isHit()).isTrue();
    RecipeFit more = RecipeFit.solve(asked("Ca=100"), salts("calcium-nitrate-4h2o"), 45, water);
    assertThat(more.recipe().fromSalts().of(Element.CA)).isCloseTo(38, within(1e-9));
    assertThat(more.exact()).isTrue();
  }

  @Test
  void whatNobodyBringsAndWhatBringsNothing() {
    RecipeFit fit = fit("K=100;Fe=2", "potassium-nitrate;calcium-chloride-2h2o", 45);
    assertThat(fit.unbrought()).containsExactly(Element.FE);
    assertThat(fit.idle()).extracting(Salt::name).containsExactly("calcium-chloride-2h2o");
    assertThat(fit.recipe().salts().get(1).grams()).isZero();
    assertThat(fit.unique()).isTrue();
    assertThat(fit.worstMissPct()).isCloseTo(100, within(1e-9));
    assertThat(fit.isWithin(5)).isFalse();
  }

  @Test
  void theScaleRounds() {
    RecipeFit fit = fit("N=150;K=180;Ca=120", "calcium-nitrate-4h2o;potassium-nitrate", 45);
    RecipeFit onScale = fit.rounded(1);
    assertThat(onScale.recipe().salts()).extracting(Weighed::grams).containsExactly(32.0, 21.0);
    assertThat(onScale.sumSqRelMiss()).isGreaterThanOrEqualTo(fit.sumSqRelMiss());
    assertThat(onScale.elements().get(2).got())
        .isCloseTo(1000 * 32 * 0.16971704 / 45, withinPercentage(0.01));
    RecipeFit byHand = RecipeFit.judge(asked("N=150;K=180;Ca=120"), onScale.recipe(), Ions.NONE);
    assertThat(byHand.sumSqRelMiss()).isEqualTo(onScale.sumSqRelMiss());
    assertThat(fit.isWithin(1)).isTrue();
    assertThat(fit.isWithin(0.5)).isFalse();
  }

  /** A user's own product by its label, and oxides asked. */
  @Test
  void ownSaltsAndOxides() {
    Label label =
        Label.blank()
            .with(ElementName.of("N-NO3"), 10.1)
            .with(ElementName.of("N-NH4"), 1.9)
            .with(ElementName.of("P2O5"), 12)
            .with(ElementName.of("K2O"), 36);
    RecipeFit fit = RecipeFit.solve(asked("K2O=288"), List.of(label.asSalt("own")), 10, Ions.NONE);
    assertThat(fit.recipe().salts().get(0).grams()).isCloseTo(8, within(1e-9));
    assertThat(fit.recipe().total().of(Element.N)).isCloseTo(96, within(1e-9));
    assertThat(fit.recipe().ionsComplete()).isTrue();
  }

  /**
   * Second route: every set of at most four salts solved by the singular values of Hipparchus; the
   * least squares of the non-negative ones. Third: the conditions of Karush, Kuhn and Tucker.
   */
  @Property(tries = 200)
  void agreesWithASearchOfEverySupport(@ForAll int seed) {
    Random random = new Random(seed);
    int n = 1 + random.nextInt(7);
    int m = 1 + random.nextInt(6);
    List<Salt> salts = new ArrayList<>();
    for (String name : pick(random, List.of(Salts.names()).subList(0, 20), n)) {
      salts.add(Salts.of(name));
    }
    List<Asked> asked = new ArrayList<>();
    for (String name :
        pick(random, List.of("N-NO3", "N-NH4", "P", "K", "Ca", "Mg", "S", "Cl"), m)) {
      asked.add(Asked.of(name, 20 + 200 * random.nextDouble()));
    }
    RecipeFit fit = RecipeFit.solve(asked, salts, 40, Ions.NONE);
    assertThat(fit.sumSqRelMiss()).isCloseTo(bestOfAllSupports(asked, salts), within(1e-9));
    assertThat(fit.unique()).isEqualTo(fit.leaveOut().isEmpty());
    if (!fit.unique()) {
      List<Salt> fewer = new ArrayList<>(salts);
      fewer.removeAll(fit.leaveOut());
      RecipeFit again = RecipeFit.solve(asked, fewer, 40, Ions.NONE);
      assertThat(again.unique()).isTrue();
      assertThat(again.sumSqRelMiss()).isCloseTo(fit.sumSqRelMiss(), within(1e-9));
      assertThat(again.recipe().totalGrams()).isCloseTo(fit.recipe().totalGrams(), within(1e-6));
    }
  }

  private static List<String> pick(Random random, List<String> from, int n) {
    List<String> left = new ArrayList<>(from);
    java.util.Collections.shuffle(left, random);
    return left.subList(0, Math.min(n, left.size()));
  }

  private static double bestOfAllSupports(List<Asked> asked, List<Salt> salts) {
    double best = asked.size();
    for (int set = 1; set < 1 << salts.size(); set++) {
      double[][] a = new double[asked.size()][Integer.bitCount(set)];
      double[] b = new double[asked.size()];
      for (int i = 0; i < asked.size(); i++) {
        b[i] = 1;
        int k = 0;
        for (int j = 0; j < salts.size(); j++) {
          if ((set >> j & 1) == 1) {
            a[i][k++] =
                1000 * salts.get(j).fraction(asked.get(i).element()) / 40 / asked.get(i).mgPerL();
          }
        }
      }
      Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(a);
      RealVector x =
          new SingularValueDecomposition(matrix).getSolver().solve(new ArrayRealVector(b));
      if (x.getMinValue() >= -1e-9) {
        double norm = matrix.operate(x).subtract(new ArrayRealVector(b)).getNorm();
        best = Math.min(best, norm * norm);
      }
    }
    return best;
  }

  /** Of all answers the lightest: no mix of the whole list weighs less for the same elements. */
  @Property(tries = 100)
  void everySaltOffered(@ForAll int seed) {
    Random random = new Random(seed);
    List<Asked> asked = new ArrayList<>();
    for (String name : List.of("N-NO3", "N-NH4", "P", "K", "Ca", "Mg", "S", "Fe", "B")) {
      asked.add(Asked.of(name, 1 + 200 * random.nextDouble()));
    }
    List<Salt> all = Stream.of(Salts.names()).map(Salts::of).toList();
    RecipeFit fit = RecipeFit.solve(asked, all, 40, Ions.NONE);
    for (Weighed weighed : fit.recipe().salts()) {
      assertThat(weighed.grams()).isFinite().isNotNegative();
    }
    List<Salt> used =
        fit.recipe().salts().stream().filter(w -> w.grams() > 0).map(Weighed::salt).toList();
    assertThat(used).hasSizeLessThanOrEqualTo(asked.size());
    RecipeFit alone = RecipeFit.solve(asked, used, 40, Ions.NONE);
    assertThat(alone.unique()).isTrue();
    assertThat(alone.recipe().totalGrams())
        .isCloseTo(fit.recipe().totalGrams(), withinPercentage(1e-6));
    List<Salt> others = new ArrayList<>(all);
    for (int i = 0; i < 20; i++) {
      others.remove(random.nextInt(others.size()));
    }
    RecipeFit fewer = RecipeFit.solve(asked, others, 40, Ions.NONE);
    assertThat(fewer.sumSqRelMiss()).isGreaterThanOrEqualTo(fit.sumSqRelMiss() - 1e-9);
    if (fewer.exact() && fit.exact()) {
      assertThat(fewer.recipe().totalGrams())
          .isGreaterThanOrEqualTo(fit.recipe().totalGrams() - 1e-6);
    }
  }

  /** Amounts over twelve powers of ten, some of them 0: every figure of the answer is a number. */
  @Property(tries = 300)
  void nothingIsEverNotANumber(@ForAll int seed) {
    Random random = new Random(seed);
    Ions water = Ions.NONE;
    for (int i = 0; i < Ion.count(); i++) {
      if (random.nextInt(3) == 0) {
        water = water.and(Ion.at(i), Math.pow(10, -12 + 13 * random.nextDouble()));
      }
    }
    List<Asked> asked = new ArrayList<>();
    for (String name : pick(random, List.of("N", "N-NH4", "P", "K", "Ca", "S", "Fe", "Mo"), 5)) {
      double amount = Math.pow(10, -6 + 10 * random.nextDouble());
      asked.add(Asked.of(name, random.nextInt(5) == 0 ? 0 : amount));
    }
    List<Salt> salts = new ArrayList<>();
    for (String name : pick(random, List.of(Salts.names()), 1 + random.nextInt(35))) {
      salts.add(Salts.of(name));
    }
    double litres = Math.pow(10, -3 + 9 * random.nextDouble());
    RecipeFit fit = RecipeFit.solve(asked, salts, litres, water);
    assertThat(fit.sumSqRelMiss()).isFinite();
    assertThat(fit.worstMissPct()).isFinite();
    assertThat(fit.recipe().totalGrams()).isFinite().isNotNegative();
    assertThat(fit.recipe().ions().balancePct()).isFinite();
    for (Missed missed : fit.elements()) {
      assertThat(missed.got()).isFinite().isGreaterThanOrEqualTo(missed.fromWater());
      assertThat(missed.missedPct()).isFinite();
    }
    if (fit.recipe().ec() != null) {
      assertThat(fit.recipe().ec().ec25()).isFinite().isNotNegative();
      assertThat(fit.recipe().ec().ecSquareRule()).isFinite();
    }
  }

  @Test
  void refusesTheImpossible() {
    assertThatThrownBy(() -> fit("N=1;N=2", "potassium-nitrate", 1)).hasMessageContaining("twice");
    assertThatThrownBy(() -> fit("P=1;P2O5=2", "potassium-nitrate", 1))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> fit("N=1", "potassium-nitrate;potassium-nitrate", 1))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> fit("N=1", "potassium-nitrate", 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> fit("N=-1", "potassium-nitrate", 1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RecipeFit.solve(List.of(), salts("borax"), 1, Ions.NONE))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> RecipeFit.solve(asked("N=1"), List.of(), 1, Ions.NONE))
        .isInstanceOf(Impossible.class);
    Salt own = Salt.own("own", Elements.UNKNOWN.with(Element.N, 0.2));
    assertThatThrownBy(() -> RecipeFit.solve(asked("N-NO3=1"), List.of(own), 1, Ions.NONE))
        .hasMessageContaining("own");
    assertThat(RecipeFit.solve(asked("N=20"), List.of(own), 1, Ions.NONE).exact()).isTrue();
    assertThat(fit("N=0", "potassium-nitrate", 1).recipe().totalGrams()).isZero();
  }
}
