package leat.solution.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.Sheet;
import leat.numeric.Impossible;
import leat.solution.Element;
import leat.solution.ElementName;
import leat.solution.Elements;
import leat.solution.Label;
import org.junit.jupiter.api.Test;

class LabelledBottleTest {
  private static LabelledBottle bottle(Sheet.Row row) {
    Label label = Label.blank();
    for (String figure : row.text("label_pct").split(";")) {
      String[] pair = figure.split("=");
      label = label.with(ElementName.of(pair[0]), Double.parseDouble(pair[1]));
    }
    Double density =
        row.text("label_basis").equals("% w/w") ? (Double) row.num("density_g_mL") : null;
    return new LabelledBottle(row.text("case_id"), label, row.num("dose"), density);
  }

  private static LabelledBottle of(String id) {
    for (Sheet.Row row : Sheet.of("solution-labels.csv").rows()) {
      if (row.text("case_id").equals(id)) {
        return bottle(row);
      }
    }
    throw new IllegalArgumentException(id);
  }

  /** Rows LB03 (by weight) and LB10, poured together: the sheet's amounts add up. */
  @Test
  void twoBottlesAddUp() {
    List<LabelledBottle> both = List.of(of("LB03"), of("LB10"));
    Elements sum = LabelledBottle.together(both);
    assertThat(sum.of(Element.N)).isCloseTo(236 + 90.75, within(0.02));
    assertThat(sum.of(Element.K)).isCloseTo(293.87356 + 125.56038, within(0.05));
    assertThat(sum.of(Element.CA))
        .as("one label alone prints it")
        .isCloseTo(60.53474, within(0.02));
    assertThat(sum.knows(Element.S)).as("no label prints it").isFalse();
    Elements half = LabelledBottle.together(both, new double[] {25, 12.5}, 10);
    assertThat(half.of(Element.N)).isCloseTo((236 + 90.75) / 2, within(0.02));
  }

  @Test
  void byVolumeItsWeightIsNotKnown() {
    assertThat(of("LB03").weighs()).isTrue();
    assertThat(of("LB04").weighs()).isFalse();
    assertThat(of("LB04").isOddlyDense()).isFalse();
    assertThat(of("LB03").weighed(45).grams()).isCloseTo(45 * 5 * 1.18, within(1e-9));
    // LB04: grams in 100 mL, 5 mL/L; the millilitres stand for grams
    assertThat(of("LB04").weighed(45).grams()).isCloseTo(45 * 5, within(1e-9));
    Elements byVolume = LabelledBottle.together(List.of(of("LB04")));
    assertThat(byVolume.of(Element.N)).isCloseTo(200, within(0.02));
    assertThat(byVolume.of(Element.K)).isCloseTo(249.04539, within(0.05));
    assertThat(of("LB03").pouredMl(45)).isCloseTo(225, within(1e-9));
    assertThat(new LabelledBottle("x", Label.blank(), 5, 1.7).isOddlyDense()).isTrue();
    assertThat(new LabelledBottle("x", Label.blank(), 5, 1.6).isOddlyDense()).isFalse();
    assertThatThrownBy(() -> new LabelledBottle("x", Label.blank(), 0, null))
        .isInstanceOf(Impossible.class);
  }
}
