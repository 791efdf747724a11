package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Litres over litres, by hand; and the doubt that is left, by its two factors. */
class CalibrationTest {
  @Test
  void measuredOverModelled() {
    Calibration c = new Calibration(8, 30, 20);
    assertThat(c.modelledMeanL()).isEqualTo(2.5);
    assertThat(c.ratio()).isEqualTo(1.5);
    assertThat(c.factor()).isEqualTo(1.5);
    assertThat(c.isHeld()).isFalse();
  }

  @Test
  void aWeekIsEnoughAndSixDaysAreNot() {
    assertThat(new Calibration(7, 30, 20).isEnough()).isTrue();
    assertThat(new Calibration(6, 30, 20).isEnough()).isFalse();
    assertThat(new Calibration(7, 30, 0).isEnough()).as("nothing modelled").isFalse();
  }

  @Test
  void factorsBeyondTheEndsAreHeld() {
    assertThat(new Calibration(7, 60, 20).factor()).isEqualTo(3);
    assertThat(new Calibration(7, 60, 20).isHeld()).isFalse();
    assertThat(new Calibration(7, 61, 20).factor()).isEqualTo(3);
    assertThat(new Calibration(7, 61, 20).isHeld()).isTrue();
    assertThat(new Calibration(7, 6, 20).isHeld()).isFalse();
    assertThat(new Calibration(7, 5, 20).factor()).isEqualTo(0.3);
    assertThat(new Calibration(7, 5, 20).isHeld()).isTrue();
  }

  @Test
  void negativeLitresAreNoMeasurement() {
    assertThatThrownBy(() -> new Calibration(7, -1, 20)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Calibration(7, 1, -20)).isInstanceOf(Impossible.class);
  }

  /** 3 L of plants and 1 L of open water, already times a factor of 2. */
  @Test
  void aDaysThirstLiesBetweenTheSeasonsFactors() {
    DayThirst guessed = new DayThirst(3, 1, Thirst.GUESSED);
    assertThat(guessed.inAllL()).isEqualTo(4);
    assertThat(guessed.leastL()).isCloseTo(2.64, within(1e-12));
    assertThat(guessed.mostL()).isCloseTo(6.04, within(1e-12));
    DayThirst measured = new DayThirst(3, 1, Thirst.measured(2));
    assertThat(measured.leastL()).isCloseTo(0.86 * 4, within(1e-12));
    assertThat(measured.mostL()).isCloseTo(1.17 * 4, within(1e-12));
    assertThatThrownBy(() -> Thirst.measured(0)).isInstanceOf(Impossible.class);
  }

  /** Three quarters of the target, when nothing is known: common practice, no source. */
  @Test
  void theUsualUptake() {
    assertThat(TankPlan.usualUptake(1.6)).isCloseTo(1.2, within(1e-12));
  }
}
