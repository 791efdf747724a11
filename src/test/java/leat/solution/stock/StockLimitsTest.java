package leat.solution.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Ions;
import leat.solution.Salt;
import leat.solution.Salts;
import leat.solution.pitzer.UnlistedSalt;
import leat.solution.recipes.Recipe;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StockLimitsTest {
  /**
   * Potassium nitrate: 20.9 g in 100 g of water at 10 C (handbook). A litre with 209 g is full, and
   * full is not over full.
   */
  @Test
  void aSaturatedBottleIsTightAndOneGramMoreStaysOnTheFloor() {
    assertThat(nitrate(209).verdict()).isEqualTo(Stock.Verdict.TIGHT);
    assertThat(nitrate(210).verdict()).isEqualTo(Stock.Verdict.CRYSTALS);
  }

  private static Stock.Answer nitrate(double grams) {
    return Stock.bottle(StockTest.weighed("potassium-nitrate=" + grams), 1, 10, 6);
  }

  /** Handbook tables give solubility at 0, 10, 20 and 30 C: the ends are known, not beyond. */
  @Test
  void theEndsOfTheTableAreKnown() {
    StockSalt nitrate = StockSalts.find("potassium-nitrate");
    assertThat(nitrate.solubilityKnownAt(0)).isTrue();
    assertThat(nitrate.solubilityKnownAt(30)).isTrue();
    assertThat(nitrate.solubilityKnownAt(30.1)).isFalse();
    assertThat(StockSalts.find("iron-dtpa-11").solubilityKnownAt(20)).isTrue();
  }

  /** 2 L at 5 mL per litre: 2000/5 L of tower water. */
  @Test
  void aBottleOfTwoLitres() {
    assertThat(StockBottles.towerWaterL(2, 5)).isEqualTo(400);
  }

  @Test
  void aMillionBottlesAndNoMore() {
    assertThat(StockBottles.season(1e6, 1).whole()).isEqualTo(1_000_000);
    assertThatThrownBy(() -> StockBottles.season(1e6, 0.99)).isInstanceOf(Impossible.class);
  }

  /** Nothing weighed limits nothing. */
  @Test
  void noGramsSetNoLimit() {
    assertThat(StockBottles.strongest(StockTest.weighed("potassium-nitrate=0"), 1, 10)).isNull();
  }

  /** Names of ions count whole: a chelate's iron is not iron sulfate's, "Fe" is not "Fe2". */
  @Test
  void commonIonsByTheirWholeNames() {
    StockSalt chelate = StockSalts.find("iron-dtpa-11");
    StockSalt sulfate = UnlistedSalt.of(Salts.of("iron-sulfate-7h2o"));
    assertThat(chelate.commonIon(sulfate)).isNull();
    assertThat(sulfate.commonIon(chelate)).isNull();
    assertThat(sulfate.commonIon(StockSalts.find("potassium-sulfate"))).isEqualTo("SO4");
    assertThat(chelate.commonIon(StockSalts.find("iron-edta-13"))).isEqualTo("Fe");
    StockSalt greenhouse = StockSalts.find("calcium-nitrate-greenhouse"); // Ca NO3 NH4
    assertThat(greenhouse.commonIon(StockSalts.find("monoammonium-phosphate"))).isEqualTo("NH4");
    assertThat(greenhouse.commonIon(StockSalts.find("magnesium-nitrate-6h2o"))).isEqualTo("NO3");
  }

  /** Two products whose nitrogen has no stated form bring no ions, and so none in common. */
  @Test
  void productsWithoutIonsHaveNoneInCommon() {
    assertThat(formless("one").commonIon(formless("other"))).isNull();
  }

  private static StockSalt formless(String name) {
    return UnlistedSalt.of(Salt.own(name, Elements.UNKNOWN.with(Element.N, 0.2)));
  }

  /**
   * A salt of the long list in a bottle: 116.88 g of sodium chloride for 100 L are 20 mmol/L.
   * Published: 2.314 mS/cm (solution-ec-ions.csv, IS10); the sum is stated to -1 to +1.3 %.
   */
  @Test
  void aSaltOfTheLongListInTheMadeWater() {
    StockSalt common = UnlistedSalt.of(Salts.of("sodium-chloride"));
    Recipe recipe = MadeWater.of(List.of(new Stock.Weighed(common, 116.88)), 100, Ions.NONE);
    assertThat(recipe.ec().ec25()).isCloseTo(2.314, withPercentage(1.3));
    assertThat(recipe.salts().get(0).salt().name()).isEqualTo("sodium-chloride");
  }

  /**
   * Second route, past Davies as well, where the split is steep: a bracketed root of the equations
   * in the class comment.
   */
  @Property
  void theSplitOfPhosphateSettlesAtAnyStrength(
      @ForAll @DoubleRange(min = 100, max = 20_000) double phosphate,
      @ForAll @DoubleRange(min = 0, max = 14) double ph) {
    double root =
        Roots.bracketed(
            i -> {
              double d = Math.sqrt(i) / (1 + Math.sqrt(i)) - 0.3 * i;
              double ratio = Math.pow(10, ph - 7.2 + 3 * 0.509 * d);
              return 0.0005 * phosphate * (1 + 3 * ratio / (1 + ratio)) - i;
            },
            0,
            50);
    assertThat(Saturation.of(0, 0, phosphate, 0, ph).ionicStrengthMolL())
        .isCloseTo(root, offset(1e-9 * root));
  }
}
