package leat.solution.pitzer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leat.solution.Element;
import leat.solution.Elements;
import leat.solution.Salt;
import leat.solution.Salts;
import leat.solution.stock.Stock;
import leat.solution.stock.Stock.Verdict;
import leat.solution.stock.StockSalt;
import leat.solution.stock.StockSalts;
import org.junit.jupiter.api.Test;

/**
 * What a grower is told of a bottle, each verdict at its edge; sums by hand, rules as in
 * MixedBottle.
 */
class BottleByHandTest {
  private static Stock.Weighed w(String salt, double grams) {
    StockSalt listed = StockSalts.find(salt);
    return new Stock.Weighed(listed == null ? UnlistedSalt.of(Salts.of(salt)) : listed, grams);
  }

  private static MixedBottle.Answer mixed(double litres, double celsius, Stock.Weighed... all) {
    return MixedBottle.of(List.of(all), litres, celsius);
  }

  /**
   * 55 g of K2SO4 fall out of this one: it is told by potassium and sulfate, and who brings them.
   */
  @Test
  void theSaltsThatBringTheWorstSolid() {
    MixedBottle.Answer got =
        mixed(
            1,
            5,
            w("potassium-nitrate", 134),
            w("potassium-sulfate", 66.8),
            w("ammonium-nitrate", 5),
            w("magnesium-sulfate-7h2o", 156),
            w("boric-acid", 1),
            w("potassium-nitrate", 1),
            w("monopotassium-phosphate", 44.5));
    assertThat(got.verdict()).isEqualTo(Verdict.CRYSTALS);
    assertThat(got.worstSolid()).isEqualTo("K2SO4");
    assertThat(got.ions()).containsExactly("K", "SO4");
    assertThat(got.salts())
        .containsExactly(
            "potassium-nitrate",
            "potassium-sulfate",
            "magnesium-sulfate-7h2o",
            "monopotassium-phosphate");
    double sum = got.fallen().stream().mapToDouble(MixedBottle.Fallen::grams).sum();
    assertThat(got.fallsOutG()).isCloseTo(sum, within(1e-9));
  }

  /** Far too much of two salts without a common ion: both fall out, the heavier first. */
  @Test
  void whatFallsOutIsToldTheHeaviestFirst() {
    MixedBottle.Answer got = mixed(1, 5, w("ammonium-sulfate", 600), w("potassium-nitrate", 450));
    assertThat(got.fallen().size()).isGreaterThan(1);
    for (int i = 1; i < got.fallen().size(); i++) {
      assertThat(got.fallen().get(i).grams()).isLessThanOrEqualTo(got.fallen().get(i - 1).grams());
    }
    MixedBottle.Answer other = mixed(1, 5, w("potassium-nitrate", 450), w("ammonium-sulfate", 600));
    assertThat(other.fallen())
        .extracting(MixedBottle.Fallen::solid)
        .isEqualTo(got.fallen().stream().map(MixedBottle.Fallen::solid).toList());
  }

  /** 0.4 mL a gram: 3 kg of saltpetre alone fill 1.2 L, so nothing is left for water. */
  @Test
  void aBottleFullOfSalt() {
    MixedBottle.Answer got = mixed(1, 20, w("potassium-nitrate", 3000));
    assertThat(got.verdict()).isEqualTo(Verdict.CRYSTALS);
    assertThat(got.worstSolid()).isNull();
    assertThat(got.fallsOutG()).isNull();
  }

  /** Calcium with sulfate or either phosphate is Stock's question: keep apart. */
  @Test
  void calciumIsNotJudgedByTheModel() {
    Stock.Weighed calcium = w("calcium-nitrate-4h2o", 180);
    for (String salt :
        new String[] {
          "magnesium-sulfate-7h2o", "monopotassium-phosphate", "dipotassium-phosphate"
        }) {
      MixedBottle.Answer got = mixed(1, 5, calcium, w(salt, 60));
      assertThat(got.verdict()).as(salt).isEqualTo(Verdict.CLEAR);
      assertThat(got.worstIndex()).as(salt).isNull();
      assertThat(StockBottle.of(List.of(calcium, w(salt, 60)), 1, 5).calciumMeets()).isTrue();
    }
    MixedBottle.Answer none = mixed(1, 5, calcium, w("dipotassium-phosphate", 0));
    assertThat(none.worstIndex()).as("0 g do not meet it").isNotNull();
    // Sulfate and phosphate without calcium are judged.
    MixedBottle.Answer both =
        mixed(1, 5, w("magnesium-sulfate-7h2o", 60), w("monopotassium-phosphate", 60));
    assertThat(both.worstIndex()).isNotNull();
  }

  /** Hydrogen phosphate is not in the model: with ammonium and magnesium it may make struvite. */
  @Test
  void struviteIsDoubtful() {
    Stock.Weighed diammonium = w("diammonium-phosphate", 50);
    Stock.Weighed dipotassium = w("dipotassium-phosphate", 50);
    Stock.Weighed magnesium = w("magnesium-nitrate-6h2o", 50);
    Stock.Weighed ammonium = w("ammonium-nitrate", 50);
    assertThat(mixed(1, 15, diammonium, magnesium).verdict()).isEqualTo(Verdict.DOUBTFUL);
    assertThat(mixed(1, 15, dipotassium, magnesium, ammonium).verdict())
        .isEqualTo(Verdict.DOUBTFUL);
    assertThat(mixed(1, 15, dipotassium, magnesium).verdict()).isEqualTo(Verdict.CLEAR);
    assertThat(mixed(1, 15, dipotassium, ammonium).verdict()).isEqualTo(Verdict.CLEAR);
    assertThat(mixed(1, 15, dipotassium).verdict()).isEqualTo(Verdict.CLEAR);
    assertThat(mixed(1, 15, dipotassium).worstIndex()).isNull();
    // Without the magnesium the same bottle with 0 g of hydrogen phosphate is computed.
    assertThat(mixed(1, 15, w("dipotassium-phosphate", 0), w("potassium-nitrate", 50)).worstIndex())
        .isNotNull();
  }

  /**
   * Else a first look decides, at 0.7: by hand, saltpetre of 20.9 g in 100 g of water at 10 C is
   * 2.067 mol/kg; with 20 g of K2HPO4 (174.18 g/mol, 0.230 mol of K) the root of both ions' shares.
   */
  @Test
  void besideHydrogenPhosphateAFirstLookDecides() {
    for (double grams : new double[] {110, 140}) {
      double water = 0.999 * (1 - (0.40 * grams + 0.35 * 20 * 78.2 / 174.18) / 1000);
      double nitrate = grams / 101.10;
      double look = Math.sqrt(nitrate * (nitrate + 2 * 20 / 174.18)) / water / 2.067;
      assertThat(look < 0.7).as("%.3f", look).isEqualTo(grams == 110);
      Verdict got =
          mixed(1, 10, w("potassium-nitrate", grams), w("dipotassium-phosphate", 20)).verdict();
      assertThat(got).isEqualTo(grams == 110 ? Verdict.CLEAR : Verdict.UNKNOWN);
    }
  }

  /** 5 g a litre of what nobody knows is borne; boric acid of the table is known. */
  @Test
  void whatTheModelDoesNotKnow() {
    StockSalt own = UnlistedSalt.of(Salt.own("seaweed", Elements.UNKNOWN.with(Element.N, 0.02)));
    StockSalt boric = UnlistedSalt.of(Salts.of("boric-acid"));
    for (StockSalt salt : List.of(own, boric)) {
      for (double litres : new double[] {1, 2}) {
        for (double perLitre : new double[] {5, 5.1}) {
          Verdict got =
              mixed(
                      litres,
                      15,
                      new Stock.Weighed(salt, perLitre * litres),
                      w("potassium-nitrate", 20 * litres))
                  .verdict();
          assertThat(got).isEqualTo(perLitre == 5 ? Verdict.CLEAR : Verdict.UNKNOWN);
        }
      }
    }
    assertThat(mixed(1, 15, w("boric-acid", 20), w("potassium-nitrate", 20)).verdict())
        .isEqualTo(Verdict.CLEAR);
    assertThat(mixed(1, 15, w("boric-acid", 20)).fallsOutG()).isZero();
    // Two of 3 g are 6.
    assertThat(mixed(1, 15, new Stock.Weighed(own, 3), new Stock.Weighed(boric, 3)).verdict())
        .isEqualTo(Verdict.UNKNOWN);
  }

  /** The list is by name, for salts with a formula; an own product of such a name is another. */
  @Test
  void aProductNamedLikeASalt() {
    assertThat(BottleSalt.of(Salts.of("potassium-nitrate")))
        .isSameAs(BottleSalt.find("potassium-nitrate"));
    Salt named = Salt.own("potassium-nitrate", Elements.UNKNOWN.with(Element.K, 0.2));
    BottleSalt own = BottleSalt.of(named);
    assertThat(own.name()).isEqualTo("potassium-nitrate");
    assertThat(own.molPerGram(Species.K)).isCloseTo(0.2 / 39.0983, within(1e-6));
    assertThat(BottleSalt.of(Salts.of("calcium-sulfate-2h2o")).fit())
        .isEqualTo(BottleSalt.Fit.FULL);
    assertThat(BottleSalt.find("seaweed")).isNull();
  }

  private static BottleSalt own(Object... label) {
    Elements all = Elements.UNKNOWN;
    for (int i = 0; i < label.length; i += 2) {
      all = all.with((Element) label[i], (Double) label[i + 1]);
    }
    return BottleSalt.of(Salt.own("own", all));
  }

  /**
   * Labels whose charges close within a tenth count, by analogy. By hand, meq a gram: K 0.391 g are
   * 10.0, N 0.14007 g as nitrate 10.0, Mg 0.1215 g 10.0, S 0.16033 g 10.0.
   */
  @Test
  void aLabelWhoseChargesClose() {
    assertThat(own(Element.K, 0.391, Element.N_NO3, 0.14).fit()).isEqualTo(BottleSalt.Fit.ANALOGY);
    assertThat(own(Element.MG, 0.1215, Element.N_NO3, 0.14).fit())
        .isEqualTo(BottleSalt.Fit.ANALOGY);
    assertThat(own(Element.K, 0.391, Element.S, 0.1603).fit()).isEqualTo(BottleSalt.Fit.ANALOGY);
    assertThat(own(Element.K, 0.391).fit()).isEqualTo(BottleSalt.Fit.BEYOND);
    assertThat(own(Element.N_NO3, 0.14).fit()).isEqualTo(BottleSalt.Fit.BEYOND);
    // 10 against 8.2 and 8.1 meq: 1.8 of 18.2 are 9.9 %, 1.9 of 18.1 10.5 %.
    assertThat(own(Element.K, 0.391, Element.N_NO3, 0.082 * 1.4007).fit())
        .isEqualTo(BottleSalt.Fit.ANALOGY);
    assertThat(own(Element.K, 0.391, Element.N_NO3, 0.081 * 1.4007).fit())
        .isEqualTo(BottleSalt.Fit.BEYOND);
    assertThat(own(Element.K, 0.391, Element.N, 0.14).fit())
        .as("nitrogen of unknown form")
        .isEqualTo(BottleSalt.Fit.BEYOND);
    assertThat(own(Element.FE, 0.06).fit()).isEqualTo(BottleSalt.Fit.INERT);
    // Boron in an own product does not make the rest of it nothing.
    assertThat(own(Element.K, 0.391, Element.N_NO3, 0.14, Element.B, 0.01).counts()).isTrue();
    assertThat(BottleSalt.of(Salts.of("borax")).counts()).isFalse();
    assertThat(BottleSalt.of(Salts.of("zinc-sulfate-7h2o")).counts()).isTrue();
    assertThat(own(Element.K, 0.391, Element.N_NO3, 0.14).mlPerGram())
        .isCloseTo(0.35 * (0.391 + 0.62), within(1e-3));
  }

  /** The same grams need the same litres, whatever bottle they stand in now. */
  @Test
  void theClearBottleIsOfTheGrams() {
    List<Stock.Weighed> all =
        List.of(
            w("potassium-nitrate", 134),
            w("potassium-sulfate", 66.8),
            w("magnesium-sulfate-7h2o", 156));
    double litres = StockBottle.clearLitres(all, 1, 5);
    assertThat(litres).isGreaterThan(1);
    assertThat(StockBottle.clearLitres(all, 2, 5)).isEqualTo(litres);
    assertThat(StockBottle.clearLitres(all, 0.7, 5)).isEqualTo(litres);
    assertThat(Math.round(10 * litres) / 10.0).isEqualTo(litres);
    // Nothing limits a bottle of what nobody knows.
    StockSalt own = UnlistedSalt.of(Salt.own("x", Elements.UNKNOWN.with(Element.FE, 0.06)));
    assertThat(StockBottle.clearLitres(List.of(new Stock.Weighed(own, 3)), 1, 5)).isNull();
  }

  /** Nine tenths of a bottle may be salt, whatever its litres. */
  @Test
  void theStrongestBottleIsNineTenthsSalt() {
    List<Stock.Weighed> all =
        List.of(w("calcium-chloride-2h2o", 500), w("calcium-nitrate-4h2o", 5));
    double one = Strength.strongest(all, 1, 20);
    assertThat(Strength.strongest(all, 2, 20)).isCloseTo(2 * one, within(1e-6));
    double ml = Contents.of(MixedBottle.poured(all), 1, false).saltMl();
    assertThat(one * ml).isLessThanOrEqualTo(900 + 1e-3);
    assertThat(Strength.strongest(List.of(w("boric-acid", 5)), 1, 20)).isNull();
    assertThat(
            Strength.strongest(
                List.of(w("calcium-nitrate-4h2o", 5), w("potassium-sulfate", 5)), 1, 20))
        .isNull();
  }

  /** What limits: the ions where no share is known, the shares where the ions make no solid. */
  @Test
  void theWeakerOfBothLimits() {
    List<Stock.Weighed> sodium =
        List.of(new Stock.Weighed(UnlistedSalt.of(Salts.of("sodium-nitrate")), 100));
    Double ions = Strength.strongest(sodium, 1, 5);
    assertThat(ions).isNotNull();
    assertThat(Strength.underBoth(sodium, 1, 5)).isEqualTo(ions);
    List<Stock.Weighed> boric = List.of(w("boric-acid", 5));
    // 80 % of some 3 g in 100 g of water at 5 C, in a litre of bottle: 24 g, near five times 5.
    assertThat(Strength.underBoth(boric, 1, 5)).isBetween(4.0, 5.5);
    List<Stock.Weighed> mixed = List.of(w("potassium-nitrate", 134), w("potassium-sulfate", 66.8));
    assertThat(Strength.underBoth(mixed, 1, 5)).isEqualTo(Strength.strongest(mixed, 1, 5));
    List<Stock.Weighed> alone =
        List.of(w("calcium-chloride-2h2o", 500), w("calcium-nitrate-4h2o", 5));
    assertThat(Strength.underBoth(alone, 1, 5)).isLessThan(Strength.strongest(alone, 1, 5));
  }

  /** Salts that share an ion hinder each other: told only where the ions are not computed. */
  @Test
  void saltsThatShareAnIon() {
    List<Stock.Weighed> shared = new ArrayList<>();
    shared.add(w("potassium-nitrate", 60));
    shared.add(w("potassium-sulfate", 50));
    assertThat(StockBottle.of(shared, 1, 5).hinderEachOther()).as("computed").isFalse();
    shared.add(w("dipotassium-phosphate", 5));
    assertThat(StockBottle.of(shared, 1, 5).ions().worstIndex()).isNull();
    assertThat(StockBottle.of(shared, 1, 5).hinderEachOther()).isTrue();
    List<Stock.Weighed> weak = List.of(w("potassium-nitrate", 6), w("dipotassium-phosphate", 5));
    assertThat(StockBottle.of(weak, 1, 5).hinderEachOther()).isFalse();
    assertThat(StockBottle.of(List.of(w("dipotassium-phosphate", 5)), 1, 5).hinderEachOther())
        .isFalse();
  }

  /** Straight between the table's temperatures: KNO3 13.3 g at 0 C, 20.9 at 10, 45.8 at 30. */
  @Test
  void solubilityBetweenTheTablesTemperatures() {
    double[][] known = {{0, 13.3}, {5, 17.1}, {10, 20.9}, {15, 26.25}, {30, 45.8}};
    for (double[] one : known) {
      assertThat(Solid.at(0).saturated(one[0]))
          .as("%s C", one[0])
          .isCloseTo(10 * one[1] / 101.10, within(1e-3));
    }
  }
}
