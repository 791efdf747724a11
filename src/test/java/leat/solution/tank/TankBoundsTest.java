package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leat.numeric.Impossible;
import leat.solution.Concentrate;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/**
 * A saturated brine of common salt has about 250 mS/cm at 25 C (handbooks, from memory). So much is
 * a slip of the unit wherever the EC of a tank, a water or an aim is asked, and is refused by name.
 */
class TankBoundsTest {
  private static final double BRINE = 250;
  private static final FeedParts PARTS = FeedParts.sharing(5, 2, 1.9);
  private static final Concentrate FEED = PARTS.together();

  private static void refused(String quantity, ThrowingCallable asked) {
    assertThatThrownBy(asked)
        .isInstanceOfSatisfying(
            Impossible.class, no -> assertThat(no.quantity()).isEqualTo(quantity));
  }

  @Test
  void inADose() {
    refused("from", () -> Dose.byEc(45, BRINE, 300, PARTS));
    refused("to", () -> Dose.byEc(45, 0.3, BRINE, PARTS));
    refused("from", () -> Dose.byLabel(45, BRINE, 1, PARTS));
    refused("from", () -> Dose.ecAfter(45, BRINE, 100, FEED));
  }

  @Test
  void inThinning() {
    refused("from", () -> Thinning.of(45, BRINE, 1.6, 0.3));
    refused("to", () -> Thinning.of(45, 2.4, -1, 0.3));
    refused("water-ec", () -> Thinning.of(45, 2.4, 1.6, BRINE));
  }

  @Test
  void inATank() {
    refused("ec", () -> TopupAsk.dry(31, BRINE, 45, 1.6, 0.3, FEED));
    refused("target", () -> TopupAsk.dry(31, 1.4, 45, BRINE, 0.3, FEED));
    refused("water-ec", () -> TopupAsk.dry(31, 1.4, 45, 1.6, BRINE, FEED));
    refused("rain-ec", () -> new TopupAsk(31, 1.4, 45, 1.6, 0.3, FEED, 3, BRINE));
    refused("ec", () -> Topup.plainWaterEc(31, BRINE, 45, 0.3));
    refused("water-ec", () -> Topup.plainWaterEc(31, 1.4, 45, BRINE));
    refused("ec", () -> Rained.of(31, BRINE, 45, 3, 0.02));
    refused("rain-ec", () -> Rained.of(31, 1.4, 45, 3, BRINE));
    refused("target", () -> Drift.ecMsCm(31, 45, BRINE, 1.2));
    refused("uptake", () -> Drift.ecMsCm(31, 45, 1.6, BRINE));
  }

  /** 12 mm on 0.5 m2 are 6 L; of these three quarters arrive. */
  @Test
  void theShareOfTheRainThatArrives() {
    assertThat(Topup.rainfallL(0.5, 0.012, 1)).isCloseTo(6, within(1e-12));
    assertThat(Topup.rainfallL(0.5, 0.012, 0.75)).isCloseTo(4.5, within(1e-12));
  }

  /** Two parts of 2.5 mL/L are the 5 mL/L of a label for both together; 5 of each are not. */
  @Test
  void partsOfTheSameRateTogether() {
    assertThat(FeedParts.each(2.5, 2, 1.9).ratedAs(PARTS)).isTrue();
    assertThat(new FeedParts(new double[] {4, 1}, 1.7).ratedAs(PARTS)).isTrue();
    assertThat(FeedParts.each(5, 2, 1.9).ratedAs(PARTS)).isFalse();
    assertThat(FeedParts.each(2, 2, 1.9).ratedAs(PARTS)).isFalse();
    // a rate rounded twice, within a hundredth (common practice): of 50 mL/L half a millilitre
    assertThat(FeedParts.sharing(50.4, 1, 1.9).ratedAs(FeedParts.sharing(50, 1, 1.9))).isTrue();
    assertThat(FeedParts.sharing(50.6, 1, 1.9).ratedAs(FeedParts.sharing(50, 1, 1.9))).isFalse();
  }
}
