package leat.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Light over years, of meters and of typed needs, by hand. */
class LightYearsTest {
  /** 10 days of one June and 30 of the next: the means lie three quarters of the way. */
  @Test
  void aMonthOfSeveralYearsIsWeighedByItsDays() {
    MonthLight may = new MonthLight(5, 31, 38, 15, 28, 20, 1);
    MonthLight one = new MonthLight(6, 10, 40, 16, 30, 20, 2);
    MonthLight two = new MonthLight(6, 30, 42, 17, 34, 24, 5);
    List<MonthLight> means = MonthLight.mean(List.of(List.of(may, one), List.of(may, two)));
    assertThat(means).hasSize(2);
    assertThat(means.get(0)).isEqualTo(new MonthLight(5, 62, 38, 15, 28, 20, 2));
    assertThat(means.get(1)).isEqualTo(new MonthLight(6, 40, 41.5, 16.75, 33, 23, 7));
    MonthLight dark = new MonthLight(6, 30, 42, 17, 34, Double.NaN, 0);
    assertThat(MonthLight.mean(List.of(List.of(one), List.of(dark))).get(0).molM2()).isNaN();
  }

  /**
   * season-light.md section 5: k of the sun 54, white LED 70, fluorescent 74, sodium 82, halide.
   */
  @Test
  void eachLightHasItsFactor() {
    assertThat(LightMeter.words())
        .containsExactly("sun", "white-led", "fluorescent", "sodium", "halide");
    double[] factors = {54, 70, 74, 82, 71};
    for (int i = 0; i < factors.length; i++) {
      assertThat(LightMeter.luxPerUmol(LightMeter.words()[i])).isEqualTo(factors[i]);
    }
    assertThatThrownBy(() -> LightMeter.luxPerUmol("candle"))
        .isInstanceOf(Impossible.class)
        .hasMessageContaining("candle");
  }

  @Test
  void aTypedNeedIsOneMark() {
    LightNeed typed = LightNeed.typed(14);
    assertThat(typed.isTyped()).isTrue();
    assertThat(typed.lowMolM2()).isEqualTo(14);
    assertThat(typed.goodMolM2()).isEqualTo(14);
    assertThat(LightNeed.find("basil").isTyped()).isFalse();
    assertThat(typed.missingMolM2(9)).isEqualTo(5);
    assertThat(typed.missingMolM2(14)).isZero();
    assertThat(typed.missingMolM2(30)).isZero();
  }

  /** Lettuce and spinach ask for 10 at least, basil for 9. */
  @Test
  void theNeediestHasTheHighestLowMark() {
    LightNeed basil = LightNeed.find("basil");
    LightNeed lettuce = LightNeed.find("lettuce");
    LightNeed spinach = LightNeed.find("spinach");
    assertThat(LightNeed.neediest(List.of(basil, lettuce, spinach))).isSameAs(lettuce);
    assertThat(LightNeed.neediest(List.of(spinach, basil))).isSameAs(spinach);
    assertThat(LightNeed.neediest(List.of())).isNull();
  }

  /** 40 mol behind glass of 0.8, a quarter shaded: 40 x 0.8 x 0.75. */
  @Test
  void shadeIsTakenOff() {
    assertThat(DailyLight.shadedMolM2(40, 0.8, 0.25)).isCloseTo(24, within(1e-12));
    assertThat(DailyLight.shadedMolM2(40, 0.8, 0)).isCloseTo(32, within(1e-12));
    assertThatThrownBy(() -> DailyLight.shadedMolM2(40, 0.8, 1.1)).isInstanceOf(Impossible.class);
  }

  /** 30 MJ/m2 of June in the open are 0.45 x 4.57 x 30 = 61.7 mol/m2. */
  @Test
  void noLampIsNeededWhereLightIsEnough() {
    assertThat(DailyLight.molM2(30)).isCloseTo(61.695, within(1e-9));
    LampDay enough = new Lamp(60, 2.5, 0.5, 1).day(20, 20, 16);
    assertThat(enough.status()).isEqualTo(LampDay.Status.NONE_NEEDED);
    assertThat(enough.hours()).isZero();
  }
}
