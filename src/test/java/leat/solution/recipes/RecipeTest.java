package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
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
import leat.solution.Salt;
import leat.solution.Salts;
import leat.solution.SaltsTest;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RecipeTest {
  private static final List<String> COLUMNS =
      List.of(
          "n_no3", "n_nh4", "p", "k", "ca", "mg", "s", "cl", "na", "fe", "mn", "zn", "cu", "b",
          "mo");

  static Stream<Row> rows() {
    return Sheet.of("solution-recipe.csv").atLeast(7);
  }

  static Stream<Row> published() {
    return Sheet.of("solution-recipe.csv").having("published_mg_L").atLeast(2);
  }

  static List<Weighed> weighed(String list) {
    List<Weighed> salts = new ArrayList<>();
    for (String one : list.split(";")) {
      String[] parts = one.split("=");
      salts.add(new Weighed(Salts.of(parts[0]), Double.parseDouble(parts[1])));
    }
    return salts;
  }

  private static Recipe mix(Row r) {
    return Recipe.mix(weighed(r.text("salts_g")), r.num("volume_L"), Ions.NONE);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Recipe recipe = mix(r);
    Percentage close = withinPercentage(100 * r.num("tol_rel"));
    assertThat(recipe.total().of(Element.N)).isCloseTo(r.num("n_mg_L"), close);
    for (String column : COLUMNS) {
      assertThat(recipe.total().of(SaltsTest.element(column)))
          .as(r.idAndProvenance() + column)
          .isCloseTo(r.num(column + "_mg_L"), close);
    }
    assertThat(recipe.ions().cations()).isCloseTo(r.num("cations_meq_L"), close);
    assertThat(recipe.ions().anions()).isCloseTo(r.num("anions_meq_L"), close);
    Percentage closeEc = withinPercentage(100 * r.num("tol_rel_ec"));
    assertThat(recipe.ec().ec25()).as(r.id()).isCloseTo(r.num("ec_mS_cm"), closeEc);
    assertThat(recipe.ec().ecWithoutPairs())
        .as(r.id())
        .isCloseTo(r.num("ec_no_pairs_mS_cm"), closeEc);
    assertThat(recipe.ionsComplete()).isTrue();
    assertThat(recipe.tapWater()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("published")
  void thePublishedRecipesComeOut(Row r) {
    Recipe recipe = mix(r);
    for (String one : r.text("published_mg_L").split(";")) {
      String[] parts = one.split("=");
      assertThat(recipe.total().of(ElementName.of(parts[0]).element()))
          .as(r.idAndProvenance() + one)
          .isCloseTo(
              Double.parseDouble(parts[1]), withinPercentage(100 * r.num("tol_rel_published")));
    }
  }

  private static Recipe fromMillimoles(Object... saltsAndMillimoles) {
    List<Weighed> salts = new ArrayList<>();
    for (int i = 0; i < saltsAndMillimoles.length; i += 2) {
      Salt salt = Salts.of((String) saltsAndMillimoles[i]);
      double mmol = ((Number) saltsAndMillimoles[i + 1]).doubleValue();
      salts.add(new Weighed(salt, mmol * salt.molarMass() / 1000));
    }
    return Recipe.mix(salts, 1, Ions.NONE);
  }

  /**
   * Hoagland and Arnon, California Agricultural Experiment Station circular 347 (1950), solution 2:
   * NH4H2PO4 1, KNO3 6, Ca(NO3)2 4, MgSO4 2 mmol/L; published mg/L N 210 (14 of it ammonium), P 31,
   * K 235, Ca 160, Mg 48, S 64, printed to the whole mg (Mg 48.6 as 48).
   */
  @Test
  void hoagland2() {
    Recipe recipe =
        fromMillimoles(
            "monoammonium-phosphate", 1,
            "potassium-nitrate", 6,
            "calcium-nitrate-4h2o", 4,
            "magnesium-sulfate-7h2o", 2);
    Elements got = recipe.total();
    assertThat(got.of(Element.N)).isCloseTo(210, within(0.5));
    assertThat(got.of(Element.N_NH4)).isCloseTo(14, within(0.5));
    assertThat(got.of(Element.P)).isCloseTo(31, within(0.5));
    assertThat(got.of(Element.K)).isCloseTo(235, within(0.5));
    assertThat(got.of(Element.CA)).isCloseTo(160, within(0.5));
    assertThat(got.of(Element.MG)).isCloseTo(48, within(1.0));
    assertThat(got.of(Element.S)).isCloseTo(64, within(0.5));
    assertThat(recipe.ions().balance()).isCloseTo(0, within(1e-9));
  }

  /** Steiner's universal solution, meq/L: NO3 12, H2PO4 1, SO4 7; K 7, Ca 9, Mg 4 (from memory). */
  @Test
  void steiner() {
    Ions ions =
        fromMillimoles(
                "monopotassium-phosphate", 1,
                "potassium-nitrate", 3,
                "calcium-nitrate-4h2o", 4.5,
                "magnesium-sulfate-7h2o", 2,
                "potassium-sulfate", 1.5)
            .ions();
    assertThat(ions.of(Ion.NO3)).isCloseTo(12, within(1e-9));
    assertThat(ions.of(Ion.H2PO4)).isCloseTo(1, within(1e-9));
    assertThat(2 * ions.of(Ion.SO4)).isCloseTo(7, within(1e-9));
    assertThat(ions.of(Ion.K)).isCloseTo(7, within(1e-9));
    assertThat(2 * ions.of(Ion.CA)).isCloseTo(9, within(1e-9));
    assertThat(2 * ions.of(Ion.MG)).isCloseTo(4, within(1e-9));
  }

  private static List<Weighed> random(List<Double> grams) {
    String[] names = Salts.names();
    List<Weighed> salts = new ArrayList<>();
    for (int i = 0; i < grams.size(); i++) {
      salts.add(new Weighed(Salts.of(names[i]), grams.get(i)));
    }
    return salts;
  }

  @Property
  void twiceTheSaltInTwiceTheWaterIsTheSame(
      @ForAll @Size(min = 1, max = 35) List<@DoubleRange(min = 0, max = 3) Double> grams,
      @ForAll @DoubleRange(min = 1, max = 100) double litres) {
    Recipe once = Recipe.mix(random(grams), litres, Ions.NONE);
    Recipe twice =
        Recipe.mix(random(grams.stream().map(g -> 2 * g).toList()), 2 * litres, Ions.NONE);
    Recipe stronger =
        Recipe.mix(random(grams.stream().map(g -> 2 * g).toList()), litres, Ions.NONE);
    for (int i = 0; i < Element.count(); i++) {
      Element e = Element.at(i);
      assertThat(twice.total().of(e)).isCloseTo(once.total().of(e), within(1e-9));
      assertThat(stronger.total().of(e)).isCloseTo(2 * once.total().of(e), withinPercentage(1e-9));
    }
    // mass: the elements never weigh more than what was weighed
    assertThat(once.total().sum())
        .isLessThanOrEqualTo(1000 * once.totalGrams() / once.litres() * (1 + 1e-12));
    assertThat(once.total().of(Element.N))
        .isCloseTo(once.total().of(Element.N_NO3) + once.total().of(Element.N_NH4), within(1e-9));
  }

  @Property
  void wholeSaltsBalance(
      @ForAll @Size(min = 1, max = 29) List<@DoubleRange(min = 0, max = 3) Double> grams) {
    Recipe recipe = Recipe.mix(random(grams), 10, Ions.NONE);
    assertThat(recipe.ions().balance()).isCloseTo(0, within(1e-9));
  }

  @Test
  void waterCostAndScale() {
    Ions water = Ions.NONE.andMilligrams(IonName.of("calcium"), 62).andAlkalinity(3.6);
    Salt priced = Salts.of("potassium-nitrate").withPrice(4);
    Recipe recipe = Recipe.mix(List.of(new Weighed(priced, 21.0147)), 45, water);
    assertThat(recipe.total().of(Element.CA)).isCloseTo(62, within(1e-9));
    assertThat(recipe.fromSalts().of(Element.CA)).isZero();
    assertThat(recipe.fromWater().of(Element.CA)).isCloseTo(62, within(1e-9));
    assertThat(recipe.tapWater()).isTrue();
    assertThat(recipe.cost()).isCloseTo(0.0840588, within(1e-9));
    assertThat(recipe.costComplete()).isTrue();
    Recipe onScale = recipe.rounded(0.1, water);
    assertThat(onScale.salts().get(0).grams()).isEqualTo(21.0);
    assertThat(recipe.rounded(0.5, water).salts().get(0).grams()).isEqualTo(21.0);
    assertThat(recipe.rounded(5, water).salts().get(0).grams()).isEqualTo(20.0);
    assertThat(new Weighed(priced, 0.05).isTooLittle()).isTrue();
    assertThat(new Weighed(priced, 0).isTooLittle()).isFalse();
    Recipe bottle = Recipe.mix(weighed("calcium-nitrate-4h2o=180"), 1, Ions.NONE);
    assertThat(bottle.ec()).isNull();
    assertThat(bottle.total().of(Element.CA)).isCloseTo(30549, within(1.0));
  }

  @Test
  void aProductOfUnknownNitrogen() {
    Salt own = Salt.own("own", Elements.UNKNOWN.with(Element.N, 0.2).with(Element.K, 0.1));
    Recipe recipe = Recipe.mix(List.of(new Weighed(own, 10)), 10, Ions.NONE);
    assertThat(recipe.ionsComplete()).isFalse();
    assertThat(recipe.total().of(Element.N)).isCloseTo(200, within(1e-9));
    assertThat(recipe.total().knows(Element.N_NO3)).isFalse();
    assertThat(recipe.total().of(Element.P)).isZero();
  }

  @Test
  void refusesTheImpossible() {
    List<Weighed> some = weighed("potassium-nitrate=1");
    assertThatThrownBy(() -> Recipe.mix(some, 0, Ions.NONE)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Recipe.mix(some, Double.NaN, Ions.NONE))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> weighed("potassium-nitrate=-1")).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> some.get(0).rounded(0)).isInstanceOf(Impossible.class);
    assertThat(Recipe.mix(List.of(), 10, Ions.NONE).ec().ec25()).isZero();
  }
}
