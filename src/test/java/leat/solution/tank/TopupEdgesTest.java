package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import leat.solution.Concentrate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Where one of the amounts is nothing: it is 0 then, and no trace of a rounding. */
class TopupEdgesTest {
  /** 1.9 mS/cm at 5 mL/L: Q = 380 mS/cm. */
  private static final Concentrate FEED = new Concentrate(5, 1.9);

  private static Topup.Answer solve(
      double volume, double ec, double full, double target, double water) {
    return Topup.solve(TopupAsk.dry(volume, ec, full, target, water, FEED));
  }

  /**
   * A full tank under its target has room for nothing but feed, from a bucket to a pool: K = F (Q -
   * t)/(Q - e) stays, the rest is feed.
   */
  @Property
  void aFullWeakTankTakesNoWater(
      @ForAll @DoubleRange(min = 1, max = 1e6) double full,
      @ForAll @DoubleRange(min = 0.5, max = 1.4) double ec) {
    Topup.Answer a = solve(full, ec, full, 1.6, 0.3);
    double out = full * (1.6 - ec) / (380 - ec);
    assertThat(a.waterL()).isZero();
    assertThat(a.drainL()).isCloseTo(out, offset(1e-12 * full));
    assertThat(a.concentrateMl()).isCloseTo(1000 * out, offset(1e-9 * full));
  }

  /** A full tank over its target is thinned by water alone: F (e - t)/(e - w) of it. */
  @Property
  void aFullStrongTankTakesNoFeed(
      @ForAll @DoubleRange(min = 1, max = 1e6) double full,
      @ForAll @DoubleRange(min = 1.7, max = 3) double ec) {
    Topup.Answer a = solve(full, ec, full, 1.6, 0.3);
    double swapped = full * (ec - 1.6) / (ec - 0.3);
    assertThat(a.concentrateMl()).isZero();
    assertThat(a.waterL()).isCloseTo(swapped, offset(1e-12 * full));
    TopupSalts.Answer dry = TopupSalts.solve(full, ec, full, 1.6, 0.3, 1.9);
    assertThat(dry.recipeL()).isZero();
    assertThat(dry.drainL()).isCloseTo(swapped, offset(1e-12 * full));
  }

  /**
   * A tank that water alone brings to the target: V e + (F - V) w = F t, nothing drained or fed.
   */
  @Property
  void waterAloneCanBeTheWholeAnswer(
      @ForAll @DoubleRange(min = 1, max = 1e6) double full,
      @ForAll @DoubleRange(min = 0.6, max = 0.95) double part) {
    double ec = (1.6 - (1 - part) * 0.3) / part;
    Topup.Answer a = solve(part * full, ec, full, 1.6, 0.3);
    assertThat(a.drainL()).isZero();
    assertThat(a.concentrateMl()).isZero();
    assertThat(a.waterL()).isCloseTo((1 - part) * full, offset(1e-12 * full));
    TopupSalts.Answer dry = TopupSalts.solve(part * full, ec, full, 1.6, 0.3, 1.9);
    assertThat(dry.drainL()).isZero();
    assertThat(dry.recipeL()).isZero();
  }

  /** A volume that is over the mark by the rounding of a unit only is at the mark. */
  @Test
  void aHairOverTheMarkIsTheMark() {
    Topup.Answer hair = solve(Math.nextUp(45.0), 1.6, 45, 1.6, 0.3);
    assertThat(hair.drainL()).isZero();
    assertThat(hair.overFull()).isFalse();
    assertThat(TopupSalts.solve(Math.nextUp(45.0), 1.6, 45, 1.6, 0.3, 1.9).drainL()).isZero();
    assertThat(solve(45, 1.6, 45, 1.6, 0.3).overFull()).isFalse();
    assertThat(solve(45.001, 1.6, 45, 1.6, 0.3).overFull()).isTrue();
  }

  /** What the gauge calls empty has no EC, whatever was typed. */
  @Test
  void anEmptyTankHasNoEc() {
    Topup.Answer a = solve(0, 2, 45, 1.6, 0.3);
    assertThat(a.afterRainEcMsCm()).isZero();
    // 45 x (1.6 - 0.3)/(380 - 0.3) litres
    assertThat(a.concentrateMl()).isCloseTo(45_000 * 1.3 / 379.7, offset(1e-9));
  }

  /** Tank and water are alike and over the target: no share of either is under it. */
  @Test
  void tankAndWaterAlikeAndTooStrong() {
    Topup.Answer a = solve(31, 0.8, 45, 0.5, 0.8);
    assertThat(a.status()).isEqualTo(Topup.Status.WATER_TOO_STRONG);
    assertThat(a.nearestEcMsCm()).isEqualTo(0.8);
    assertThat(TopupSalts.solve(31, 0.8, 45, 0.5, 0.8, 1.9).status())
        .isEqualTo(Topup.Status.WATER_TOO_STRONG);
  }

  /** Tank and feed are alike, 2 mS/cm, and under the target of 3. */
  @Test
  void tankAndFeedAlikeAndTooWeak() {
    Concentrate weak = new Concentrate(1000, 2);
    Topup.Answer a = Topup.solve(TopupAsk.dry(31, 2, 45, 3, 0.3, weak));
    assertThat(a.status()).isEqualTo(Topup.Status.CONCENTRATE_TOO_WEAK);
    assertThat(a.nearestEcMsCm()).isEqualTo(2);
  }

  /** Water that is the target by another rounding, 0.1 + 0.2 for 0.3: filled with it alone. */
  @Test
  void waterAtTheTargetByAnotherRounding() {
    Topup.Answer a = solve(31, 0.3, 45, 0.3, 0.1 + 0.2);
    assertThat(a.reached()).isTrue();
    assertThat(a.drainL()).isZero();
    assertThat(a.concentrateMl()).isZero();
    assertThat(solve(31, 0.9, 45, 0.3, 0.1 + 0.2).drainL()).isCloseTo(31, offset(1e-9));
  }

  /** Water at the target, a tank over it: all of it goes, and nothing is weighed. */
  @Test
  void aTankIsEmptiedForWaterAtTheTarget() {
    TopupSalts.Answer a = TopupSalts.solve(31, 2, 45, 1, 1, 1.9);
    assertThat(a.reached()).isTrue();
    assertThat(a.drainL()).isEqualTo(31);
    assertThat(a.waterL()).isEqualTo(45);
    assertThat(a.recipeL()).isZero();
    assertThat(a.finalEcMsCm()).isCloseTo(1, offset(1e-12));
  }

  /** A cup is under 0.2 L, nothing under 5 mL (common practice): both ends are said. */
  @Test
  void nothingACupAndMore() {
    // a full tank of 45 L at 1.6 lets 45 (t - 1.6)/(380 - 1.6) go for a target t
    assertThat(full(1.6 + 378.4 * 0.0049 / 45).drainsNothing()).isTrue();
    assertThat(full(1.6 + 378.4 * 0.0049 / 45).drainsACup()).isFalse();
    assertThat(full(1.6 + 378.4 * 0.0051 / 45).drainsNothing()).isFalse();
    assertThat(full(1.6 + 378.4 * 0.0051 / 45).drainsACup()).isTrue();
    assertThat(full(1.6).drainsNothing()).isTrue();
    assertThat(solve(31, 0.8, 45, 0.5, 0.8).drainsNothing()).as("no answer").isFalse();
    assertThat(drains(0.005).drainsNothing()).isFalse();
    assertThat(drains(0.005).drainsACup()).isTrue();
    assertThat(drains(0.2).drainsACup()).isFalse();
    assertThat(drains(0.2).drainsMore()).isTrue();
  }

  private static Topup.Answer full(double target) {
    return solve(45, 1.6, 45, target, 0.3);
  }

  private static Topup.Answer drains(double litres) {
    return new Topup.Answer(
        Topup.Status.REACHED, 45, 1.6, 0, litres, litres, 0.0, 45.0, 1.6, null, 1.6, true, false);
  }
}
