package leat.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Supplier;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Second routes and refusals of the sender's side. */
class SenderLawsTest {
  private static final Tank BOX = TaperedBox.box(0.5, 0.4, 0.3, 0);

  private static void refused(String quantity, Supplier<?> what) {
    assertThatThrownBy(what::get)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }

  private static Staircase steps(double[] mm, double[] ohm, double hysteresis) {
    return Staircase.bySteps(BOX, SheetTanks.times(mm, 1e-3), ohm, hysteresis * 1e-3);
  }

  @Test
  void wrongStepsAreRefused() {
    refused("steps", () -> steps(new double[] {40, 60}, new double[] {10}, 0));
    refused("steps", () -> steps(new double[] {40}, new double[] {10}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 60}, new double[] {10, 20, 30}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 80}, new double[] {10, 20, 20}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 80}, new double[] {10, 30, 20}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 80}, new double[] {10, -20, -30}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 301}, new double[] {10, 20, 30}, 0));
    refused("steps", () -> steps(new double[] {40, 60, 300}, new double[] {10, 20, 30}, 0));
    refused("hysteresis", () -> steps(new double[] {40, 60, 80}, new double[] {1, 2, 3}, 61));
    refused("hysteresis", () -> steps(new double[] {40, 60, 80}, new double[] {1, 2, 3}, -1));
    refused(
        "edges",
        () -> Staircase.byEdges(BOX, new double[] {0.02, 0.07}, new double[] {20, 30}, 10, 0));
    refused(
        "edges",
        () ->
            Staircase.byEdgesAlone(0.06, new double[] {0.02, 0.02}, new double[] {20, 30}, 10, 0));
    Staircase good = steps(new double[] {40, 60, 80}, new double[] {10, 20, 30}, 4);
    refused("open_above", () -> new Sender(good, new Limits(1, 0.02, 0, 31, 2), 0.05));
    refused("short_below", () -> new Sender(good, new Limits(1, 0.02, 0, 1000, 25), 0.05));
    refused("full", () -> new Sender(good, Limits.DEFAULT, 0));
    refused("tolerance", () -> new Limits(1, 1, 0, 1000, 2));
  }

  @Test
  void wrongLaddersAreRefused() {
    double[] reeds = Ladder.evenReeds(3, 0.04, 0.02);
    double[] parts = {0, 10, 10};
    Ladder.ReturnAt bottom = Ladder.ReturnAt.BOTTOM;
    refused("drop_out", () -> new Ladder(reeds, parts, bottom, 0.01, 0.01, 0.03, 0.09));
    refused(
        "resistors", () -> new Ladder(reeds, parts, Ladder.ReturnAt.TOP, 0.01, 0.012, 0.03, 0.09));
    refused("stops", () -> new Ladder(reeds, parts, bottom, 0.01, 0.012, 0.06, 0.09));
    refused("stops", () -> new Ladder(reeds, parts, bottom, 0.01, 0.012, 0.09, 0.03));
    refused("reeds", () -> Ladder.evenReeds(1, 0.04, 0.02));
    Ladder ladder = new Ladder(reeds, parts, bottom, 0.01, 0.012, 0.03, 0.09);
    refused("reeds", () -> Staircase.byLadder(TaperedBox.box(0.4, 0.3, 0.07, 0), ladder));
    assertThat(Ladder.evenResistors(3, 240, 33)).containsExactly(103.5, 103.5, 33);
    assertThat(Ladder.evenResistors(3, 0, 190)).containsExactly(0, 95, 95);
  }

  /** A step by its edges in litres and by its levels is one sender. */
  @Test
  void edgesInLitresSayTheSameAsLevels() {
    double[] ohm = {10, 27, 43, 62};
    Staircase a = steps(new double[] {40, 60, 90, 150}, ohm, 5);
    Staircase b =
        Staircase.byEdges(
            BOX, new double[] {0.012, 0.018, 0.03}, new double[] {27, 43, 62}, 10, 0.005);
    for (Motion m : Motion.values()) {
      for (int i = 0; i < 4; i++) {
        assertThat(b.levelLow(i, m)).isCloseTo(a.levelLow(i, m), within(1e-12));
        assertThat(b.levelHigh(i, m)).isCloseTo(a.levelHigh(i, m), within(1e-12));
        assertThat(b.volumeLow(i, m)).isCloseTo(a.volumeLow(i, m), within(1e-12));
        assertThat(b.volumeHigh(i, m)).isCloseTo(a.volumeHigh(i, m), within(1e-12));
        assertThat(b.ohm(i)).isEqualTo(a.ohm(i));
      }
    }
    assertThat(a.volumeHigh(0, Motion.UNKNOWN)).isCloseTo(0.012, within(1e-12));
    assertThat(a.volumeLow(3, Motion.UNKNOWN)).isCloseTo(0.145 * 0.2, within(1e-12));
    assertThat(a.widestMiddleBand()).isCloseTo((0.150 - 0.085) * 0.2, within(1e-12));
  }

  /** The rule of the sheet in its plain words, against the precomputed segments. */
  @Test
  void decodeIsThePlainRule() {
    Random r = new Random(11);
    for (int c = 0; c < 300; c++) {
      int n = 2 + r.nextInt(12);
      double[] mm = new double[n];
      double[] ohm = new double[n];
      for (int i = 0; i < n; i++) {
        mm[i] = 20 + i * 20;
        ohm[i] = i == 0 ? r.nextInt(3) * 5 : ohm[i - 1] + 3 + r.nextInt(20);
      }
      boolean falls = r.nextBoolean();
      double[] byStep = ohm.clone();
      for (int i = 0; falls && i < n; i++) {
        byStep[i] = ohm[n - 1 - i];
      }
      Limits limits = new Limits(r.nextInt(4), 0.01 * r.nextInt(8), 0, 1000, 2);
      Sender sender = new Sender(steps(mm, byStep, 3), limits, 0.05);
      Reading out = new Reading();
      for (int k = 0; k < 300; k++) {
        double x = k < n ? ohm[k] + limits.halfWindow(ohm[k]) : -5 + 400 * r.nextDouble();
        sender.decode(x, Motion.UNKNOWN, out);
        assertThat(out.status()).as("%s of %s", x, limits).isEqualTo(plain(x, ohm, limits));
      }
    }
  }

  private static Status plain(double x, double[] ohm, Limits limits) {
    int hits = 0;
    for (double o : ohm) {
      hits += Math.abs(x - o) <= limits.reading() + limits.tolerance() * o + 1e-9 ? 1 : 0;
    }
    if (x >= limits.openAbove()) {
      return Status.OPEN;
    }
    if (hits == 1) {
      return x < limits.shortBelow() ? Status.OK_OR_SHORT : Status.OK;
    }
    if (hits > 1) {
      return Status.AMBIGUOUS;
    }
    if (x < limits.shortBelow()) {
      return Status.SHORT;
    }
    return x < ohm[0]
        ? Status.UNDER_RANGE
        : x > ohm[ohm.length - 1] ? Status.OVER_RANGE : Status.BETWEEN_STEPS;
  }

  /** Every string of a small ladder, one by one. */
  @Test
  void noStringOfTheSeriesDoesBetter() {
    Random r = new Random(5);
    for (int c = 0; c < 60; c++) {
      double[] target = new double[4];
      for (int i = 0; i < 4; i++) {
        target[i] =
            i == 0
                ? (r.nextBoolean() ? 0 : 5 + 20 * r.nextDouble())
                : target[i - 1] + 5 + 40 * r.nextDouble();
      }
      ESeries series = new ESeries[] {ESeries.E6, ESeries.E12, ESeries.E24}[r.nextInt(3)];
      LadderDesign d = LadderDesign.of(series, target);
      double[] least = {Double.MAX_VALUE, Double.MAX_VALUE};
      every(series.milliohms(), target, 0, 0, 0, 0, least);
      assertThat(d.maxError()).isCloseTo(least[0], within(1e-9));
      assertThat(d.sumOfSquares()).isCloseTo(least[1], within(1e-6));
      assertThat(d.maxError()).isLessThanOrEqualTo(d.feedForwardMaxError() + 1e-9);
    }
  }

  private static void every(
      long[] values,
      double[] target,
      int i,
      long node,
      double worst,
      double squares,
      double[] least) {
    if (i == target.length) {
      if (worst < least[0] - 1e-9 || worst < least[0] + 1e-9 && squares < least[1]) {
        least[0] = Math.min(worst, least[0]);
        least[1] = squares;
      }
      return;
    }
    if (i == 0 && target[0] == 0) {
      every(values, target, 1, 0, 0, 0, least);
      return;
    }
    for (long v : values) {
      double error = Math.abs((node + v) / 1000.0 - target[i]);
      if (Math.max(worst, error) <= least[0] + 1e-9 && error < 20) {
        every(
            values,
            target,
            i + 1,
            node + v,
            Math.max(worst, error),
            squares + error * error,
            least);
      }
    }
  }

  /** The best fixed resistor against a dense grid of resistors. */
  @Test
  void noFixedResistorSeparatesBetter() {
    Random r = new Random(17);
    for (int c = 0; c < 200; c++) {
      int n = 2 + r.nextInt(10);
      double[] ohm = new double[n];
      for (int i = 0; i < n; i++) {
        ohm[i] = i == 0 ? r.nextInt(30) : ohm[i - 1] + 2 + 40 * r.nextDouble();
      }
      double lead = r.nextDouble();
      Divider d =
          LevelFixtures.divider(
              r.nextBoolean() ? Divider.Side.LOW : Divider.Side.HIGH, 3.3, 1, 12, 3.3);
      Double limit = r.nextBoolean() ? null : 0.005 + 0.02 * r.nextDouble();
      DividerDesign best = DividerDesign.best(d, ohm, lead, 0.01, limit, null, 0);
      assertThat(best.greatestCurrent()).isLessThanOrEqualTo(limit == null ? 1e9 : limit + 1e-12);
      for (double f = Math.max(1, best.leastFixed()); f < 5000; f *= 1.003) {
        DividerDesign other = DividerDesign.of(d.withFixed(f), ohm, lead, 0.01, 0);
        assertThat(other.gap()).isLessThanOrEqualTo(best.gap() * (1 + 1e-12));
      }
    }
  }

  /** Whatever the parts do within their tolerance, the sender lies in the band of its code. */
  @Test
  void theSenderLiesInTheBandOfItsCode() {
    Random r = new Random(23);
    for (int c = 0; c < 20_000; c++) {
      Divider.Side side = r.nextBoolean() ? Divider.Side.LOW : Divider.Side.HIGH;
      boolean ratiometric = r.nextBoolean();
      double reference = ratiometric ? 3.3 : 2.5;
      Divider d = new Divider(side, 3.3, 0.05, 220, 0.05, 10, reference, 0.02, ratiometric, 2);
      double ohm = 300 * r.nextDouble();
      double lead = r.nextDouble();
      double fixed = 220 * (1 + 0.05 * (2 * r.nextDouble() - 1));
      double supply = 3.3 * (1 + 0.05 * (2 * r.nextDouble() - 1));
      double ref = ratiometric ? supply : 2.5 * (1 + 0.02 * (2 * r.nextDouble() - 1));
      double total = ohm + lead;
      double v = side == Divider.Side.LOW ? total / (total + fixed) : fixed / (total + fixed);
      double error = 2 * (2 * r.nextDouble() - 1);
      int code =
          (int) Math.min(1023, Math.max(0, Math.floor(1024 * v * supply / ref + error + 0.5)));
      Divider.Band band = d.band(code, lead);
      assertThat(ohm).isGreaterThanOrEqualTo(band.low() - 1e-9);
      if (band.high() != null) {
        assertThat(ohm).isLessThanOrEqualTo(band.high() + 1e-9);
      }
    }
  }

  @Test
  void stepsKnowTheirSpread() {
    Divider d = LevelFixtures.divider(Divider.Side.LOW, 3.3, 180, 12, 3.3);
    Divider.Step step = d.step(10, 0.4, 0.02, 250);
    assertThat(step.code()).isEqualTo(224);
    assertThat(step.codeLow()).isLessThan(224);
    assertThat(step.codeHigh()).isGreaterThan(224);
    assertThat(step.blind()).isTrue();
    assertThat(d.step(10, 0.4, 0.02, 0).blind()).isFalse();
    assertThat(step.ohmLow()).isLessThan(10);
    assertThat(step.ohmHigh()).isGreaterThan(10);
  }
}
