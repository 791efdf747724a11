package leat.solution.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StockTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-stock.csv").atLeast(10);
  }

  static Stream<Row> salts() {
    return Sheet.of("solution-salts.csv")
        .where(r -> StockSalts.find(r.text("case_id")) != null)
        .atLeast(15);
  }

  static List<Stock.Weighed> weighed(String text) {
    List<Stock.Weighed> salts = new ArrayList<>();
    for (String part : text.split(";")) {
      String[] pair = part.split("=");
      salts.add(new Stock.Weighed(StockSalts.find(pair[0]), Double.parseDouble(pair[1])));
    }
    return salts;
  }

  static void close(Row r, String column, Double got, double tolerance) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(r.num(column), offset(tolerance));
  }

  static void relative(Row r, String column, Double got) {
    close(r, column, got, r.has(column) ? r.num("tol_rel") * Math.abs(r.num(column)) : 0);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Stock.Answer a =
        Stock.mix(
            weighed(r.text("salts_g")),
            r.num("bottle_L"),
            r.num("temperature_C"),
            r.num("ph"),
            r.num("dilution"),
            StockWater.PURE);
    assertThat(a.verdict().word).as(r.idAndProvenance()).isEqualTo(r.text("verdict"));
    for (String part : r.text("share_of_solubility").split(";")) {
      String[] pair = part.split("=");
      if (pair[0].equals("gypsum")) {
        continue; // the sheet's gypsum row is in dihydrate grams: see saturatedGypsum
      }
      Stock.Share share =
          a.shares().stream().filter(s -> s.salt().name().equals(pair[0])).findFirst().get();
      assertThat(share.share())
          .as(r.idAndProvenance() + pair[0])
          .isCloseTo(Double.parseDouble(pair[1]), withPercentage(100 * r.num("tol_rel")));
    }
    assertThat(a.worst().salt().name()).isEqualTo(r.text("worst_salt"));
    if (!r.text("worst_salt").equals("gypsum")) {
      relative(r, "worst_share", a.worst().share());
    }
    relative(r, "Ca_mmol_L", a.calcium());
    relative(r, "SO4_mmol_L", a.sulfate());
    relative(r, "P_mmol_L", a.phosphate());
    relative(r, "ionic_strength_mol_L", a.index().ionicStrengthMolL());
    assertThat(a.index().daviesHolds()).isEqualTo(r.text("davies_valid").equals("true"));
    relative(r, "gamma_divalent", a.index().gammaDivalent());
    double si = r.num("tol_si");
    close(r, "si_gypsum", a.index().gypsum(), si);
    close(r, "si_brushite", a.index().brushite(), si);
  }

  /**
   * Published: saturated gypsum in pure water holds 15.2 mmol/L at 25 C, 2.617 g/L of the
   * dihydrate: its share is 1. The sheet's 0.797 takes a solubility of the dihydrate for one of the
   * anhydrous salt; times 172.17/136.14 it is 1 as well.
   */
  @Test
  void saturatedGypsum() {
    Stock.Answer a = Stock.bottle(weighed("gypsum=2.617"), 1, 25, 7);
    assertThat(a.worst().share()).isCloseTo(1, withPercentage(1));
    assertThat(a.calcium()).isCloseTo(15.2, offset(0.05));
    assertThat(0.797433777 * 172.17 / 136.14).isCloseTo(1, withPercentage(1));
  }

  /** The other table of salts: same molar masses and solubility at 0, 10 and 20 C. */
  @ParameterizedTest
  @MethodSource("salts")
  void agreesWithTheTableOfSalts(Row r) {
    StockSalt salt = StockSalts.find(r.text("case_id"));
    if (r.has("molar_mass_g_mol") && salt.soldGPerMol() > 1) {
      assertThat(salt.soldGPerMol())
          .as(r.id())
          .isCloseTo(r.num("molar_mass_g_mol"), withPercentage(100 * r.num("tol_rel")));
    }
    for (int celsius = 0; celsius <= 20; celsius += 10) {
      String anhydrous = solubilityColumn(r, celsius);
      if (anhydrous != null && r.has(anhydrous)) {
        // both are handbook tables printed to three digits
        assertThat(10 * salt.solubility(celsius))
            .as(r.id() + " at " + celsius)
            .isCloseTo(r.num(anhydrous), withPercentage(0.5));
      }
    }
  }

  private static String solubilityColumn(Row r, int celsius) {
    for (String column : r.cells().keySet()) {
      if (column.startsWith("anhydrous_g_per") && column.endsWith("_" + celsius + "C")) {
        return column;
      }
    }
    return null;
  }

  /** Second route for the ionic strength and split: a bracketed root of the same equations. */
  @Property
  void ionicStrengthIsSelfConsistent(
      @ForAll @DoubleRange(min = 0, max = 20) double ca,
      @ForAll @DoubleRange(min = 0, max = 20) double so4,
      @ForAll @DoubleRange(min = 0, max = 20) double p,
      @ForAll @DoubleRange(min = 0, max = 60) double other,
      @ForAll @DoubleRange(min = 4, max = 9) double ph) {
    double root =
        Roots.bracketed(
            i -> {
              double d = Math.sqrt(i) / (1 + Math.sqrt(i)) - 0.3 * i;
              double ratio = Math.pow(10, ph - 7.2 + 3 * 0.509 * d);
              double hpo4 = p * ratio / (1 + ratio);
              return 0.0005 * (4 * ca + 4 * so4 + other + (p - hpo4) + 4 * hpo4) - i;
            },
            0,
            2);
    assertThat(Saturation.of(ca, so4, p, other, ph).ionicStrengthMolL())
        .isCloseTo(root, offset(1e-9));
  }

  @Property
  void higherPhNeverHelpsPhosphate(
      @ForAll @DoubleRange(min = 4.5, max = 8) double ph,
      @ForAll @DoubleRange(min = 0.5, max = 5) double ca) {
    double low = Saturation.of(ca, 2, 1, 10, ph).brushite();
    assertThat(Saturation.of(ca, 2, 1, 10, ph + 0.3).brushite()).isGreaterThan(low);
  }

  @Test
  void tapWaterAddsItsCalcium() {
    List<Stock.Weighed> salts = weighed("monopotassium-phosphate=27");
    StockWater tap = StockWater.tap(80.156, 24.305, 96.056, 3);
    Stock.Answer a = Stock.mix(salts, 1, 10, 6, 200, tap);
    assertThat(a.calcium()).isCloseTo(2, offset(1e-9));
    assertThat(a.sulfate()).isCloseTo(1, offset(1e-9));
    assertThat(tap.othersZ2()).isCloseTo(7, offset(1e-9));
    assertThat(a.index().brushite()).isNotNull();
    assertThat(Stock.mix(salts, 1, 10, 6, 200, StockWater.PURE).index().brushite()).isNull();
  }

  @Test
  void twoPotassiumSaltsHinderEachOther() {
    Stock.Answer a =
        Stock.bottle(weighed("potassium-nitrate=80;monopotassium-phosphate=27"), 1, 10, 5);
    assertThat(a.commonIon()).isEqualTo("K");
    assertThat(a.commonIonShare()).isCloseTo(0.38277512 + 0.147540984, offset(1e-6));
    Stock.Answer none =
        Stock.bottle(weighed("potassium-nitrate=80;magnesium-sulfate-7h2o=95"), 1, 10, 5);
    assertThat(none.commonIon()).isNull();
    assertThat(none.commonIonShare()).isZero();
  }

  @Test
  void theSameSaltTwiceIsOneSalt() {
    Stock.Answer once = Stock.bottle(weighed("potassium-nitrate=160"), 1, 5, 5);
    Stock.Answer twice =
        Stock.bottle(weighed("potassium-nitrate=80;potassium-nitrate=80"), 1, 5, 5);
    assertThat(twice.shares()).hasSize(1);
    assertThat(twice.worst().share()).isEqualTo(once.worst().share());
    assertThat(twice.commonIon()).isNull();
  }

  @Test
  void solubilityIsStraightBetweenAndMarkedOutside() {
    StockSalt nitrate = StockSalts.find("potassium-nitrate");
    assertThat(nitrate.solubility(5)).isCloseTo(17.1, offset(1e-12));
    assertThat(nitrate.solubility(30)).isEqualTo(45.8);
    assertThat(nitrate.solubilityKnownAt(35)).isFalse();
    assertThat(nitrate.solubility(35)).isEqualTo(45.8);
    assertThat(StockSalts.find("iron-dtpa-11").solubilityKnownAt(5)).isFalse();
    assertThat(StockSalts.find("calcium-sulfate-2h2o").name()).isEqualTo("gypsum");
    assertThat(StockSalts.names())
        .hasSizeGreaterThan(20)
        .contains("gypsum", "calcium-sulfate-2h2o");
    for (String name : StockSalts.names()) {
      StockSalt salt = StockSalts.find(name);
      assertThat(salt.solubility(0)).as(name).isPositive();
      assertThat(salt.solubility(0)).as(name).isLessThanOrEqualTo(salt.solubility(30));
    }
  }

  @Test
  void aSaltOfUnknownSolubilityHasNoShare() {
    StockSalt own = new StockSalt("own", 200, 200, new double[0], new double[0], 0, 0, 0, 2, "X");
    Stock.Answer a = Stock.bottle(List.of(new Stock.Weighed(own, 50)), 1, 10, 6);
    assertThat(a.shares().get(0).share()).isNull();
    assertThat(a.worst()).isNull();
    assertThat(StockBottles.strongest(List.of(new Stock.Weighed(own, 50)), 1, 10)).isNull();
    assertThatThrownBy(() -> own.solubility(10)).isInstanceOf(Impossible.class);
  }

  @Test
  void twoBottlesKeepCalciumApart() {
    List<Stock.Weighed> all =
        weighed(
            "calcium-nitrate-4h2o=180;potassium-nitrate=80;magnesium-sulfate-7h2o=95;"
                + "monopotassium-phosphate=27;iron-dtpa-11=2");
    List<Stock.Weighed> one = StockBottles.of(all, 1);
    List<Stock.Weighed> two = StockBottles.of(all, 2);
    assertThat(one)
        .extracting(w -> w.salt().name())
        .containsExactly("calcium-nitrate-4h2o", "iron-dtpa-11");
    assertThat(two).hasSize(3);
    assertThat(StockBottles.of(all, 0)).isEmpty();
    assertThat(StockBottles.bottleFor(StockSalts.find("gypsum"))).isZero();
    assertThat(Stock.bottle(one, 1, 10, 5).verdict()).isEqualTo(Stock.Verdict.CLEAR);
    assertThat(Stock.bottle(two, 1, 10, 5).verdict()).isEqualTo(Stock.Verdict.CLEAR);
    assertThat(Stock.bottle(all, 1, 10, 5).verdict()).isEqualTo(Stock.Verdict.KEEP_APART);
  }

  @Test
  void howStrongAndHowFar() {
    List<Stock.Weighed> tower = weighed("potassium-nitrate=0.4;magnesium-sulfate-7h2o=0.475");
    double times = StockBottles.strongest(tower, 1, 10);
    assertThat(times).isCloseTo(0.8 * 209 / 0.4, withPercentage(1e-9));
    Stock.Answer a = Stock.bottle(StockBottles.scaled(tower, 1, times), 1, 10, 6);
    assertThat(a.worst().share()).isCloseTo(0.8, offset(1e-9));
    assertThat(StockBottles.towerWaterL(1, 5)).isEqualTo(200);
    assertThat(StockBottles.season(900, 200)).isEqualTo(new StockBottles.Season(4.5, 5));
    assertThat(StockBottles.season(800, 200).whole()).isEqualTo(4);
    assertThat(StockBottles.season(0, 200).whole()).isZero();
  }

  /** The strongest bottle stands at the limit itself: one verdict for it, however it was scaled. */
  @Property
  void theLimitItselfIsClear(
      @ForAll @DoubleRange(min = 1, max = 900) double grams,
      @ForAll @DoubleRange(min = 1, max = 100) double towerL,
      @ForAll @DoubleRange(min = 0, max = 30) double celsius) {
    List<Stock.Weighed> tower = weighed("potassium-nitrate=" + grams);
    double times = StockBottles.strongest(tower, towerL, celsius);
    List<Stock.Weighed> bottle = StockBottles.scaled(tower, towerL, times);
    assertThat(Stock.bottle(bottle, 1, celsius, 6).verdict()).isEqualTo(Stock.Verdict.CLEAR);
    assertThat(Stock.overWorking(0.8001)).isTrue();
  }

  @Test
  void refusesWhatCannotBe() {
    List<Stock.Weighed> salts = weighed("potassium-nitrate=80");
    assertThatThrownBy(() -> Stock.bottle(List.of(), 1, 10, 5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Stock.bottle(salts, 0, 10, 5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Stock.bottle(salts, 1, -1, 5)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Stock.bottle(salts, 1, 10, 15)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Stock.mix(salts, 1, 10, 5, 0.5, StockWater.PURE))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Stock.Weighed(salts.get(0).salt(), -1))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> StockBottles.towerWaterL(1, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> StockWater.tap(-1, 0, 0, 0)).isInstanceOf(Impossible.class);
  }
}
