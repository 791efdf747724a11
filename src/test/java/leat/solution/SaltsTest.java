package leat.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.solution.conductivity.IonConductivityTest;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

public class SaltsTest {
  private static final List<String> COLUMNS =
      List.of(
          "n_no3", "n_nh4", "p", "k", "ca", "mg", "s", "cl", "na", "fe", "mn", "zn", "cu", "b",
          "mo");

  static Stream<Row> rows() {
    return Sheet.of("solution-salts.csv").atLeast(35);
  }

  public static Element element(String column) {
    return ElementName.of(label(column)).element();
  }

  private static String label(String column) {
    switch (column) {
      case "n_no3":
        return "N-NO3";
      case "n_nh4":
        return "N-NH4";
      default:
        return column.substring(0, 1).toUpperCase() + column.substring(1);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Salt salt = Salts.of(r.id());
    Percentage close = withinPercentage(100 * r.num("tol_rel"));
    assertThat(salt.formula()).isEqualTo(r.text("formula"));
    assertThat(salt.molarMass()).as(r.id()).isCloseTo(r.numOr("molar_mass_g_mol", 0), close);
    for (String column : COLUMNS) {
      assertThat(salt.fraction(element(column)))
          .as(r.id() + " " + column)
          .isCloseTo(r.num(column + "_mass_fraction"), close);
    }
    assertThat(salt.fraction(Element.N))
        .isCloseTo(salt.fraction(Element.N_NO3) + salt.fraction(Element.N_NH4), within(1e-12));
    Ions expected =
        r.has("ions_per_formula")
            ? IonConductivityTest.ions(r.text("ions_per_formula"))
            : Ions.NONE;
    for (int i = 0; i < Ion.count(); i++) {
      assertThat(salt.ionsPerGram().of(Ion.at(i)) * salt.molarMass() / 1000)
          .as(r.id() + " " + Ion.at(i))
          .isCloseTo(expected.of(Ion.at(i)), within(1e-12));
    }
    for (int i = 0; i < Salt.SOLUBILITY_CELSIUS.length; i++) {
      String column = "as_sold_g_per_kg_water_" + Salt.SOLUBILITY_CELSIUS[i] + "C";
      assertThat(salt.knowsSolubility(i)).isEqualTo(r.has(column));
      assertThat(salt.solubility(i)).as(r.id()).isCloseTo(r.numOr(column, 0), close);
    }
  }

  @Test
  void theListIsTheSheet() {
    assertThat(Salts.names())
        .as("salts, in the order of the sheet, each with a row there")
        .containsExactlyElementsOf(
            Sheet.of("solution-salts.csv").rows().stream().map(Row::id).toList());
  }

  /** Whole salts carry no charge; the molybdate of ammonium molybdate is left out, and said so. */
  @Test
  void saltsAreNeutral() {
    for (String name : Salts.names()) {
      Salt salt = Salts.of(name);
      if (!name.equals("ammonium-molybdate")) {
        assertThat(salt.ionsPerGram().balance()).as(name).isCloseTo(0, within(1e-12));
      }
    }
  }

  /** What the ions carry is what the formula holds, element by element. */
  @Test
  void ionsAndFractionsAgree() {
    for (String name : Salts.names()) {
      Salt salt = Salts.of(name);
      if (salt.formula().isEmpty() || name.equals("boric-acid")) {
        continue;
      }
      Elements inIons = salt.ionsPerGram().elements();
      for (int i = 0; i < Element.count(); i++) {
        Element element = Element.at(i);
        boolean leftOut =
            element == Element.B || name.equals("ammonium-molybdate") && element == Element.MO;
        if (!leftOut) {
          assertThat(inIons.of(element) / 1000)
              .as(name + " " + element)
              .isCloseTo(salt.fraction(element), within(1e-12));
        }
      }
    }
  }

  @Test
  void unknownSalts() {
    assertThat(Salts.find("epsom").name()).isEqualTo("magnesium-sulfate-7h2o");
    assertThat(Salts.find("Calcium nitrate 4h2o").name()).isEqualTo("calcium-nitrate-4h2o");
    // two salts go by this name: nothing is guessed
    assertThat(Salts.find("calcium-nitrate")).isNull();
    assertThat(Salts.find("table-salt")).isNull();
    assertThatThrownBy(() -> Salts.of("table-salt")).isInstanceOf(Impossible.class);
  }

  @Test
  void formulas() {
    assertThat(Formula.of("((NH4)2Mg)2H2O").count(Atom.N)).isEqualTo(4);
    assertThat(Formula.of("10H2O").waterMass()).isCloseTo(180.15, within(1e-9));
    assertThat(Formula.of("Ca(NO3)2.4H2O").waterMass()).isCloseTo(72.06, within(1e-9));
    assertThat(Formula.of("KNO3").waterMass()).isZero();
    // nitrilotriacetic acid, a chelator: 191.14 g/mol on its bottle
    assertThat(Formula.of("C6H9NO6").molarMass()).isCloseTo(191.14, within(0.005));
    // a chain of 500 ethylene units with its ends: 500 x 28.054 + 2 x 1.008
    assertThat(Formula.of("C1000H2002").molarMass()).isCloseTo(14029, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "x",
        "Xx",
        "Ca(",
        "Ca()",
        "Ca)",
        "(Ca))",
        "Ca.",
        ".Ca",
        "Ca0",
        "Ca-2",
        "2",
        "(NO3",
        "Ca99999",
        "CaCl2..H2O",
        "()",
        "(.)",
        "(Ca.Cl)"
      })
  void noFormula(String text) {
    assertThatThrownBy(() -> Formula.of(text)).isInstanceOf(Impossible.class);
  }

  /** Salts that leave bicarbonate or HPO4 take acid up: the list says so. */
  @Test
  void whatRaisesThePhIsNoted() {
    for (String name : Salts.names()) {
      Salt salt = Salts.of(name);
      if (salt.ionsPerGram().of(Ion.HCO3) > 0) {
        assertThat(salt.note()).as(name).contains("alkalinity");
      } else if (salt.ionsPerGram().of(Ion.HPO4) > 0) {
        assertThat(salt.note()).as(name).contains("raises pH");
      }
    }
  }

  /** A salt without a price is not free, and a free one has a price. */
  @Test
  void aPriceOfNoughtIsAPrice() {
    Salt salt = Salts.of("potassium-nitrate");
    assertThat(salt.hasPrice()).isFalse();
    assertThat(salt.pricePerKg()).isZero();
    assertThat(salt.withPrice(0).hasPrice()).isTrue();
    assertThatThrownBy(() -> salt.withPrice(-1)).isInstanceOf(Impossible.class);
  }

  /** Flowers of sulfur are sulfur and nothing else. */
  @Test
  void anElementAloneIsAllOfIt() {
    assertThat(Salt.own("sulfur", Elements.UNKNOWN.with(Element.S, 1)).fraction(Element.S))
        .isEqualTo(1);
  }

  @Test
  void ownSalts() {
    Elements content =
        Elements.UNKNOWN.with(Element.N_NO3, 0.10).with(Element.K, 0.30).with(Element.FE, 0.001);
    Salt own = Salt.own("leftover", content).withPrice(12);
    assertThat(own.fraction(Element.N)).isCloseTo(0.10, within(1e-12));
    assertThat(own.ionsKnown()).isTrue();
    assertThat(own.ionsPerGram().of(Ion.K)).isCloseTo(300 / 39.0983, within(1e-9));
    assertThat(own.ionsPerGram().of(Ion.FE)).isZero();
    assertThat(own.pricePerKg()).isEqualTo(12);
    assertThat(own.hasPrice()).isTrue();
    assertThat(Salt.own("urea-like", Elements.UNKNOWN.with(Element.N, 0.46)).ionsKnown()).isFalse();
    assertThatThrownBy(
            () -> Salt.own("x", Elements.UNKNOWN.with(Element.N, 0.6).with(Element.K, 0.6)))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("100 %");
    assertThatThrownBy(
            () -> Salt.own("x", Elements.UNKNOWN.with(Element.N, 0.1).with(Element.N_NO3, 0.2)))
        .isInstanceOf(Impossible.class);
  }
}
