package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Amounts of ions as laboratories print them. Weights: IUPAC 2021, Ca 40.078, N 14.007. */
class IonAmountTest {
  @Test
  void byWeightNumberAndCharge() {
    assertThat(IonAmount.mgPerL("62 mg/L", 40.078, 2)).isEqualTo(62);
    assertThat(IonAmount.mgPerL("0.062 g/L", 40.078, 2)).isCloseTo(62, within(1e-9));
    for (String typed : new String[] {"2.5 mmol/L", " 2.5mmol/l ", "5/2 mmol/L", "+2.5 mmol/L"}) {
      assertThat(IonAmount.mgPerL(typed, 40.078, 2)).as(typed).isCloseTo(100.195, within(1e-9));
    }
    for (String typed : new String[] {"5 meq/L", "5meq/l"}) {
      assertThat(IonAmount.mgPerL(typed, 40.078, 2)).as(typed).isCloseTo(100.195, within(1e-9));
    }
    assertThat(IonAmount.mgPerL("-2 mmol/L", 14.007, 1)).isCloseTo(-28.014, within(1e-9));
  }

  @Test
  void whatIsCounted() {
    assertThat(IonAmount.isCounted("2 mmol/L")).isTrue();
    assertThat(IonAmount.isCounted("2 meq/l")).isTrue();
    assertThat(IonAmount.isCounted("2 mg/L")).isFalse();
    assertThat(IonAmount.isCounted("mmol/L")).isFalse();
  }

  /** The mend keeps the unit: a bare number would be mg/L. */
  @Test
  void refusals() {
    assertThatThrownBy(() -> IonAmount.mgPerL("2,5 mmol/L", 40, 2))
        .isInstanceOf(Unreadable.class)
        .hasMessage("decimals take a point: type \"2.5 mmol/L\"; got \"2,5 mmol/L\"");
    assertThatThrownBy(() -> IonAmount.mgPerL("2 g mmol/L", 40, 2)).isInstanceOf(Unreadable.class);
    assertThatThrownBy(() -> IonAmount.mgPerL("2 meq/L", 10.8, 0))
        .isInstanceOf(Unreadable.class)
        .hasMessageContaining("leat ec --ion");
    assertThatThrownBy(() -> IonAmount.mgPerL("mmol/L", 40, 2)).isInstanceOf(Unreadable.class);
  }
}
