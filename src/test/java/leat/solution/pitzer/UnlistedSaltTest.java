package leat.solution.pitzer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Salt;
import leat.solution.Salts;
import leat.solution.stock.Stock;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockSalts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Salts and products that the table of stock bottles lacks. Second route: salts of both lists, with
 * molar masses and ions typed into each by hand; the rest by the formula, IUPAC weights.
 */
class UnlistedSaltTest {
  private static final StockSalt NITRATE = StockSalts.find("calcium-nitrate-4h2o");
  private static final StockSalt PHOSPHATE = StockSalts.find("monopotassium-phosphate");

  private static Stock.Answer bottle(StockSalt salt, double grams) {
    List<Stock.Weighed> all =
        List.of(
            new Stock.Weighed(salt, grams),
            new Stock.Weighed(NITRATE, 5),
            new Stock.Weighed(PHOSPHATE, 2),
            new Stock.Weighed(StockSalts.find("magnesium-sulfate-7h2o"), 4));
    return Stock.bottle(all, 100, 15, 5.8);
  }

  /** Formed from its formula, a salt of the table is what the table says. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "calcium-nitrate-4h2o",
        "potassium-nitrate",
        "magnesium-sulfate-7h2o",
        "potassium-sulfate",
        "monopotassium-phosphate",
        "monoammonium-phosphate",
        "magnesium-nitrate-6h2o",
        "ammonium-nitrate",
        "ammonium-sulfate",
        "diammonium-phosphate",
        "magnesium-sulfate-1h2o",
        "potassium-chloride",
        "calcium-chloride-2h2o",
        "dipotassium-phosphate"
      })
  void aSaltOfBothLists(String name) {
    StockSalt listed = StockSalts.find(name);
    StockSalt formed = UnlistedSalt.of(Salts.of(name));
    assertThat(formed.name()).isEqualTo(name);
    assertThat(formed.soldGPerMol()).isCloseTo(listed.soldGPerMol(), within(0.02));
    assertThat(formed.solubilityKnown()).isFalse();
    assertThat(formed.other().name()).isEqualTo(name);
    assertThat(formed.hasCalcium()).isEqualTo(listed.hasCalcium());
    assertThat(formed.hasSulfateOrPhosphate()).isEqualTo(listed.hasSulfateOrPhosphate());
    Stock.Answer one = bottle(listed, 300);
    Stock.Answer other = bottle(formed, 300);
    assertThat(other.calcium()).isCloseTo(one.calcium(), within(1e-4 * one.calcium()));
    assertThat(other.sulfate()).isCloseTo(one.sulfate(), within(1e-4 * one.sulfate()));
    assertThat(other.phosphate()).isCloseTo(one.phosphate(), within(1e-4 * one.phosphate()));
    // The index counts the strength of all ions.
    assertThat(other.index().gypsum()).isCloseTo(one.index().gypsum(), within(1e-3));
    assertThat(other.index().brushite()).isCloseTo(one.index().brushite(), within(1e-3));
    for (String near : new String[] {"potassium-chloride", "ammonium-sulfate", "gypsum"}) {
      StockSalt by = StockSalts.find(near);
      assertThat(formed.commonIon(by)).as(near).isEqualTo(listed.commonIon(by));
    }
    assertThat(formed.commonIon(NITRATE)).isEqualTo(listed.commonIon(NITRATE));
    assertThat(formed.commonIon(PHOSPHATE)).isEqualTo(listed.commonIon(PHOSPHATE));
  }

  private static StockSalt own(Elements fractions) {
    return UnlistedSalt.of(Salt.own("own", fractions));
  }

  /** A product's ions: of iron a chelate, unless sulfate or phosphate says that it is none. */
  @Test
  void ironIsAChelate() {
    StockSalt chelate = StockSalts.find("iron-edta-13");
    StockSalt sulfate = UnlistedSalt.of(Salts.of("iron-sulfate-7h2o"));
    assertThat(sulfate.commonIon(chelate)).as("an iron salt is no chelate").isNull();
    assertThat(sulfate.hasSulfateOrPhosphate()).isTrue();
    assertThat(sulfate.soldGPerMol()).isCloseTo(278.01, within(0.02));
    StockSalt edta = UnlistedSalt.of(Salts.of("iron-edta-13"));
    assertThat(edta.commonIon(chelate)).isEqualTo("Fe");
    assertThat(edta.soldGPerMol()).as("no formula: a kilogram").isEqualTo(1000);
    Elements iron = Elements.UNKNOWN.with(Element.FE, 0.06).with(Element.K, 0.1);
    assertThat(own(iron).commonIon(chelate)).isEqualTo("Fe");
    assertThat(own(iron).commonIon(StockSalts.find("potassium-nitrate"))).isEqualTo("K");
    assertThat(own(iron.with(Element.S, 0.05)).commonIon(chelate)).isNull();
    assertThat(own(iron.with(Element.P, 0.05)).commonIon(chelate)).isNull();
    assertThat(own(Elements.UNKNOWN.with(Element.K, 0.1)).commonIon(chelate)).isNull();
  }

  /** 10 % of S in a kilogram are 100 g / 32.06 = 3.12 mol of sulfate; 5 % of P are 1.61 mol. */
  @Test
  void aLabelInMoles() {
    Elements label =
        Elements.UNKNOWN.with(Element.S, 0.1).with(Element.P, 0.05).with(Element.MG, 0.05);
    Stock.Answer got =
        Stock.bottle(List.of(new Stock.Weighed(own(label), 500)), 10, 15, Stock.BOTTLE_PH);
    assertThat(got.sulfate()).isCloseTo(50 * 3.119, within(0.02));
    assertThat(got.phosphate()).isCloseTo(50 * 1.614, within(0.02));
    assertThat(got.calcium()).isZero();
  }
}
