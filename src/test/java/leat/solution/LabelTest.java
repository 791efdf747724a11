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
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LabelTest {
  private static final List<String> COLUMNS =
      List.of("n_no3", "n_nh4", "p", "k", "ca", "mg", "s", "fe");

  static Stream<Row> rows() {
    return Sheet.of("solution-labels.csv").atLeast(9);
  }

  private static Label label(String list) {
    Label label = Label.blank();
    for (String one : list.split(";")) {
      String[] parts = one.split("=");
      label = label.with(ElementName.of(parts[0]), Double.parseDouble(parts[1]));
    }
    return label;
  }

  private static Elements brought(Row r) {
    Label label = label(r.text("label_pct"));
    if (r.text("dose_unit").equals("g/L")) {
      return label.ofPowder(r.num("dose"));
    }
    Label.Basis basis =
        r.text("label_basis").equals("% w/w")
            ? Label.Basis.WEIGHT_IN_WEIGHT
            : Label.Basis.WEIGHT_IN_VOLUME;
    return label.ofLiquid(r.num("dose"), basis, r.num("density_g_mL"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Elements brought = brought(r);
    check(r, brought, Element.N, "n_mg_L");
    for (String column : COLUMNS) {
      check(r, brought, SaltsTest.element(column), column + "_mg_L");
    }
  }

  private static void check(Row r, Elements brought, Element element, String column) {
    assertThat(brought.knows(element)).as(r.idAndProvenance() + column).isEqualTo(r.has(column));
    if (r.has(column)) {
      assertThat(brought.of(element))
          .as(r.idAndProvenance() + column)
          .isCloseTo(r.num(column), withinPercentage(100 * r.num("tol_rel")));
    } else {
      assertThatThrownBy(() -> brought.of(element)).isInstanceOf(IllegalStateException.class);
    }
  }

  /** The factors as printed in the handbooks, four digits. */
  @Test
  void factors() {
    assertThat(ElementName.of("P2O5").factor()).isCloseTo(0.4364, within(5e-5));
    assertThat(ElementName.of("K2O").factor()).isCloseTo(0.8301, within(6e-5));
    assertThat(ElementName.of("CaO").factor()).isCloseTo(0.7147, within(5e-5));
    assertThat(ElementName.of("MgO").factor()).isCloseTo(0.6030, within(5e-5));
    assertThat(ElementName.of("SO3").factor()).isCloseTo(0.4005, within(6e-5));
    assertThat(ElementName.of("K2O").isOxide()).isTrue();
    assertThat(ElementName.of("NO3-N").element()).isEqualTo(Element.N_NO3);
    assertThat(ElementName.of("NH4-N").element()).isEqualTo(Element.N_NH4);
    for (String name : ElementName.names()) {
      assertThat(ElementName.of(name).toElement(7) / ElementName.of(name).factor())
          .isCloseTo(7, within(1e-12));
    }
  }

  /** A pure salt's label and the salt itself bring the same: 52 % P2O5, 34 % K2O rounded. */
  @Test
  void aLabelAndItsSalt() {
    Salt byLabel = label("P2O5=52.15;K2O=34.61").asSalt("my-mkp");
    Salt byFormula = Salts.of("monopotassium-phosphate");
    assertThat(byLabel.fraction(Element.P))
        .isCloseTo(byFormula.fraction(Element.P), withinPercentage(0.02));
    assertThat(byLabel.fraction(Element.K))
        .isCloseTo(byFormula.fraction(Element.K), withinPercentage(0.02));
    assertThat(byLabel.ionsPerGram().balancePct()).isCloseTo(0, within(0.05));
  }

  @Property
  void proportional(
      @ForAll @DoubleRange(min = 0, max = 15) double n,
      @ForAll @DoubleRange(min = 0, max = 30) double k,
      @ForAll @DoubleRange(min = 0, max = 10) double dose) {
    Label label = label("N=" + n + ";K2O=" + k);
    assertThat(label.ofPowder(2 * dose).of(Element.K))
        .isCloseTo(2 * label.ofPowder(dose).of(Element.K), within(1e-9));
    assertThat(label.ofLiquid(dose, Label.Basis.WEIGHT_IN_WEIGHT, 1).of(Element.N))
        .isCloseTo(
            label.ofLiquid(dose, Label.Basis.WEIGHT_IN_VOLUME, 1.3).of(Element.N), within(1e-9));
  }

  /** The three figures of every feed are nitrogen, P2O5 and K2O: row LB01, 20-20-20 at 1 g/L. */
  @Test
  void theThreeFigures() {
    Label label = Label.blank().withNpk(20, 20, 20);
    assertThat(Label.blank().isBlank()).isTrue();
    assertThat(label.isBlank()).isFalse();
    Row row = Sheet.of("solution-labels.csv").rows().get(0);
    assertThat(row.text("label_pct")).isEqualTo("N=20;P2O5=20;K2O=20");
    Elements brought = label.ofPowder(row.num("dose"));
    check(row, brought, Element.N, "n_mg_L");
    check(row, brought, Element.P, "p_mg_L");
    check(row, brought, Element.K, "k_mg_L");
  }

  /** All of it may be printed, no more; both forms of nitrogen count when only they are printed. */
  @Test
  void aHundredPerCentIsTheMost() {
    assertThat(label("N=60;K2O=40").fractions().of(Element.N)).isCloseTo(0.6, within(1e-12));
    assertThat(label("N-NO3=30;N-NH4=30;K2O=40").fractions().of(Element.N))
        .isCloseTo(0.6, within(1e-12));
    assertThatThrownBy(() -> label("N-NO3=30;N-NH4=31;K2O=40")).hasMessageContaining("100 %");
  }

  @Test
  void refusesTheImpossible() {
    assertThatThrownBy(() -> label("N=60;K2O=41")).hasMessageContaining("100 %");
    assertThatThrownBy(() -> label("N-NO3=60;K2O=41")).hasMessageContaining("100 %");
    assertThatThrownBy(() -> label("K2O=10;K=8")).hasMessageContaining("twice");
    assertThatThrownBy(() -> label("K=-1")).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> label("NO3=10")).hasMessageContaining("N-NO3");
    assertThatThrownBy(() -> label("Xy=10")).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> label("N=5;N-NO3=6").fractions()).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> label("N=5").ofPowder(-1)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> label("N=5").ofLiquid(1, Label.Basis.WEIGHT_IN_WEIGHT, 0))
        .isInstanceOf(Impossible.class);
    assertThat(label("N=5").ofPowder(0).of(Element.N)).isZero();
    assertThat(label("N=12;N-NO3=10.1;N-NH4=1.9").fractions().of(Element.N))
        .isCloseTo(0.12, within(1e-12));
  }
}
