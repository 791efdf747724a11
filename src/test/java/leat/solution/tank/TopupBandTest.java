package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import leat.solution.Concentrate;
import org.junit.jupiter.api.Test;

class TopupBandTest {
  private static final Concentrate FEED = new Concentrate(5, 1.9);

  private static TopupBand strong(double low, double middle, double high) {
    return TopupBand.solve(TopupAsk.dry(middle, 3.2, 45, 1.6, 0.3, FEED), low, high);
  }

  /**
   * Row TU03 of solution-topup.csv with its volume as a band: of 31 L at 3.2 mS/cm 10.8276 L go and
   * 24.8276 L of water come. Are there 28 L, 17.1724 are left and 42 L are made, of (17.1724 x 3.2
   * + 24.8276 x 0.3)/42; are there 34, 48 L.
   */
  @Test
  void theMiddleRecipeOnAnotherVolume() {
    TopupBand b = strong(28, 31, 34);
    assertThat(b.middle().drainL()).isCloseTo(10.8275862, offset(1e-6));
    assertThat(b.middleVolumeIfLowL()).isCloseTo(42, offset(1e-9));
    assertThat(b.middleEcIfLowMsCm()).isCloseTo(1.4857143, offset(1e-6));
    assertThat(b.middleVolumeIfHighL()).isCloseTo(48, offset(1e-9));
    assertThat(b.middleEcIfHighMsCm()).isCloseTo(1.7, offset(1e-6));
    assertThat(b.middleOverFull()).isTrue();
    // 45 x 1.3/2.9 = 20.17 L stay, whatever is there
    assertThat(b.drainLowL()).isCloseTo(28 - 58.5 / 2.9, offset(1e-9));
    assertThat(b.drainHighL()).isCloseTo(34 - 58.5 / 2.9, offset(1e-9));
  }

  /** Less there than is to be drained: all of it goes, and the water alone is there. */
  @Test
  void theDrainEmptiesTheTankAtTheLowEnd() {
    TopupBand b = strong(5, 31, 34);
    assertThat(b.middleVolumeIfLowL()).isCloseTo(24.8275862, offset(1e-6));
    assertThat(b.middleEcIfLowMsCm()).isCloseTo(0.3, offset(1e-9));
  }

  /** With the middle at the high end its recipe fills the tank to the mark there, not past it. */
  @Test
  void toTheMarkIsNotPastIt() {
    assertThat(strong(28, 31, 31).middleOverFull()).isFalse();
    assertThat(strong(28, 31, 31.001).middleOverFull()).isTrue();
  }

  /** A full tank at its target needs nothing; if it was empty there is nothing to measure. */
  @Test
  void nothingIntoAnEmptyTank() {
    TopupBand b = TopupBand.solve(TopupAsk.dry(45, 1.6, 45, 1.6, 0.3, FEED), 0, 45);
    assertThat(b.middleVolumeIfLowL()).isNull();
    assertThat(b.middleEcIfLowMsCm()).isNull();
    assertThat(b.middleVolumeIfHighL()).isEqualTo(45);
  }

  /** A strong tank of any size is drained to one mark, however much is in it. */
  @Test
  void oneMarkInATankOfAnySize() {
    Random dice = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double full = 5 + 8e5 * dice.nextDouble();
      double ec = 2.3 + 0.7 * dice.nextDouble(); // at 2.3 mS/cm 1.3/2 of full stays
      TopupAsk ask = TopupAsk.dry(0.77 * full, ec, full, 1.6, 0.3, FEED);
      TopupBand b = TopupBand.solve(ask, 0.71 * full, 1.13 * full);
      assertThat(b.drainsToOneMark()).as("%s", ask).isTrue();
      assertThat(b.lowest().keptL()).isCloseTo(full * 1.3 / (ec - 0.3), offset(1e-9 * full));
    }
  }

  /** One volume alone, nothing of it drained: there is no mark to drain to. */
  @Test
  void noMarkWhereNothingIsDrained() {
    TopupAsk ask = TopupAsk.dry(31, 2.1, 45, 1.6, 0.3, FEED);
    assertThat(TopupBand.solve(ask, 31, 31).drainsToOneMark()).isFalse();
  }

  /**
   * Rain on a tank about its mark: 100 L full, 20 L at 0.02 mS/cm, 1 mS/cm there, 1.5 wanted, Q =
   * 500. Under the mark the fuller tank is the less thinned and lets less go; over it all above the
   * mark goes as well. So least goes at the mark itself: 100 x 1 + 20 x 0.02 in 120 L are 0.83667,
   * and 100 (Q - 1.5)/(Q - 0.83667) stay. The samples of 90 to 111 L miss it.
   */
  @Test
  void theLeastDrainedIsAtTheMark() {
    TopupAsk ask = new TopupAsk(95, 1, 100, 1.5, 0.5, new Concentrate(4, 2), 20, 0.02);
    TopupBand b = TopupBand.solve(ask, 90, 111);
    double ec = 100.4 / 120;
    assertThat(b.drainLowL()).isCloseTo(100 - 100 * 498.5 / (500 - ec), offset(1e-9));
  }
}
