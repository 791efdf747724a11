package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.solution.Concentrate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TopupTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-topup.csv").atLeast(14);
  }

  static Stream<Row> bands() {
    return Sheet.of("solution-topup.csv").having("drain_L_at_low_volume").atLeast(1);
  }

  static TopupAsk ask(Row r) {
    return new TopupAsk(
        r.num("volume_L"),
        r.num("ec_mS_cm"),
        r.num("full_L"),
        r.num("target_mS_cm"),
        r.num("water_ec_mS_cm"),
        new Concentrate(r.num("rate_mL_L"), r.num("rate_ec_mS_cm")),
        r.num("rain_L"),
        r.numOr("rain_ec_mS_cm", Topup.RAIN_EC_MS_CM));
  }

  static void close(Row r, String column, Double got) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(want, offset(r.num("tol_abs") + r.num("tol_rel") * Math.abs(want)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    Topup.Answer a = Topup.solve(ask(r));
    assertThat(a.status().word).isEqualTo(r.text("status"));
    close(r, "after_rain_volume_L", a.afterRainL());
    close(r, "after_rain_ec_mS_cm", a.afterRainEcMsCm());
    close(r, "rain_overflow_L", a.rainOverflowL());
    close(r, "drain_L", a.drainL());
    close(r, "water_L", a.waterL());
    close(r, "concentrate_mL", a.concentrateMl());
    close(r, "final_volume_L", a.finalVolumeL());
    close(r, "final_ec_mS_cm", a.finalEcMsCm());
    if (r.has("nearest_ec_mS_cm")) {
      close(r, "nearest_ec_mS_cm", a.nearestEcMsCm());
    }
  }

  @ParameterizedTest
  @MethodSource("bands")
  void bandAgreesWithTheSheet(Row r) {
    TopupBand b = TopupBand.solve(ask(r), r.num("volume_low_L"), r.num("volume_high_L"));
    close(r, "drain_L_at_low_volume", b.lowest().drainL());
    close(r, "drain_L_at_high_volume", b.highest().drainL());
    close(r, "water_L_at_low_volume", b.lowest().waterL());
    close(r, "water_L_at_high_volume", b.highest().waterL());
    close(r, "concentrate_mL_at_low_volume", b.lowest().concentrateMl());
    close(r, "concentrate_mL_at_high_volume", b.highest().concentrateMl());
    close(r, "mid_recipe_volume_if_low_L", b.middleVolumeIfLowL());
    close(r, "mid_recipe_ec_if_low_mS_cm", b.middleEcIfLowMsCm());
    close(r, "mid_recipe_volume_if_high_L", b.middleVolumeIfHighL());
    close(r, "mid_recipe_ec_if_high_mS_cm", b.middleEcIfHighMsCm());
    assertThat(b.middleOverFull()).isTrue();
    assertThat(b.doubtful()).isFalse();
    assertThat(b.waterLowL()).isLessThan(b.waterHighL());
    assertThat(b.waterLowL()).isEqualTo(b.highest().waterL());
    assertThat(b.drainHighL()).isEqualTo(b.highest().drainL());
    assertThat(b.concentrateHighMl()).isEqualTo(b.lowest().concentrateMl());
  }

  /**
   * One random state out of a wide range: weak concentrates, rain, over-full tanks, strong water.
   */
  static TopupAsk random(Random dice) {
    double full = 1 + 199 * dice.nextDouble();
    double volume =
        dice.nextInt(8) == 0 ? full * (dice.nextInt(3)) / 2 : 1.3 * full * dice.nextDouble();
    double water = dice.nextInt(6) == 0 ? 0 : 2 * dice.nextDouble();
    double target = dice.nextInt(10) == 0 && water > 0 ? water : 0.05 + 3 * dice.nextDouble();
    double ec = dice.nextInt(10) == 0 ? target : 4 * dice.nextDouble();
    double strength = water + Math.pow(10, -3 + 6 * dice.nextDouble());
    double rate = 1 + 99 * dice.nextDouble();
    double rain = dice.nextInt(3) == 0 ? 0.4 * full * dice.nextDouble() : 0;
    return new TopupAsk(
        volume,
        ec,
        full,
        target,
        water,
        new Concentrate(rate, Math.min(strength * rate / 1000, 199)),
        rain,
        Topup.RAIN_EC_MS_CM);
  }

  @Test
  void volumeAndSaltCloseForAHundredThousandRandomTopups() {
    Random dice = new Random(20260401);
    int reached = 0;
    int asked = 0;
    while (asked < 100_000) {
      TopupAsk ask;
      try {
        ask = random(dice);
      } catch (Impossible weak) {
        continue;
      }
      asked++;
      Topup.Answer a = Topup.solve(ask);
      assertThat(a.afterRainL() + a.rainOverflowL())
          .isCloseTo(ask.volumeL() + ask.rainL(), offset(1e-9 * ask.fullL()));
      if (!a.reached()) {
        assertThat(a.nearestEcMsCm()).isNotNull().isNotEqualTo(ask.targetMsCm());
        continue;
      }
      reached++;
      double kept = a.afterRainL() - a.drainL();
      double m = a.concentrateMl() / 1000;
      assertThat(a.drainL()).isBetween(0.0, a.afterRainL());
      assertThat(a.waterL()).isBetween(0.0, ask.fullL());
      assertThat(m).isBetween(0.0, ask.fullL());
      assertThat(kept).isBetween(0.0, ask.fullL());
      double volume = kept + a.waterL() + m;
      assertThat(volume).isCloseTo(ask.fullL(), offset(1e-9 * ask.fullL()));
      assertThat(a.finalVolumeL()).isEqualTo(ask.fullL());
      double salt =
          a.afterRainEcMsCm() * kept
              + ask.waterEcMsCm() * a.waterL()
              + ask.feed().strengthMsCm() * m;
      double want = ask.targetMsCm() * ask.fullL();
      assertThat(salt).as("%s", ask).isCloseTo(want, offset(1e-9 * want));
      assertThat(a.finalEcMsCm()).isCloseTo(ask.targetMsCm(), offset(1e-9 * ask.targetMsCm()));
    }
    assertThat(reached).isBetween(50_000, 99_000);
  }

  /** A second route: a fine search over what is kept finds no answer that drains less. */
  @Test
  void aSearchFindsNothingBetter() {
    Random dice = new Random(7);
    int no = 0;
    for (int n = 0; n < 2000; n++) {
      TopupAsk ask;
      try {
        ask = random(dice);
      } catch (Impossible weak) {
        continue;
      }
      Topup.Answer a = Topup.solve(ask);
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 2000; i++) {
        double kept = a.afterRainL() * i / 2000;
        double room = ask.fullL() - kept;
        double q = ask.feed().strengthMsCm();
        double w = ask.waterEcMsCm();
        double salt = ask.targetMsCm() * ask.fullL() - a.afterRainEcMsCm() * kept;
        double m = (salt - w * room) / (q - w);
        if (room >= 0 && m >= 0 && m <= room) {
          least = Math.min(least, a.afterRainL() - kept);
        }
      }
      if (a.reached()) {
        assertThat(least).as("%s", ask).isGreaterThanOrEqualTo(a.drainL() - 1e-9 * ask.fullL());
      } else {
        no++;
        assertThat(least).as("%s", ask).isInfinite();
      }
    }
    assertThat(no).isGreaterThan(100);
  }

  /** Every volume inside a band gives amounts inside those of its ends, rain or not. */
  @Test
  void theEndsBoundTheBand() {
    Random dice = new Random(11);
    int seen = 0;
    while (seen < 500) {
      TopupAsk ask;
      try {
        ask = random(dice);
      } catch (Impossible weak) {
        continue;
      }
      double low = 0.8 * ask.volumeL();
      double high = 1.1 * ask.volumeL();
      TopupBand b = TopupBand.solve(ask, low, high);
      if (!b.middle().reached() || b.doubtful()) {
        continue;
      }
      seen++;
      for (int i = 0; i <= 20; i++) {
        Topup.Answer a = Topup.solve(ask.holding(low + (high - low) * i / 20));
        assertThat(a.reached()).as("%s", ask).isTrue();
        double spare = (ask.rainL() > 0 ? 1e-3 : 1e-9) * ask.fullL();
        assertThat(a.drainL())
            .as("drain %s", ask)
            .isBetween(b.drainLowL() - spare, b.drainHighL() + spare);
        assertThat(a.waterL())
            .as("water %s", ask)
            .isBetween(b.waterLowL() - spare, b.waterHighL() + spare);
        assertThat(a.concentrateMl())
            .as("feed %s", ask)
            .isBetween(b.concentrateLowMl() - 1e3 * spare, b.concentrateHighMl() + 1e3 * spare);
      }
    }
  }

  /** Where the rain begins to overflow the amounts have a corner: it is looked at exactly. */
  @Test
  void theCornersOfRainAreInTheBand() {
    Random dice = new Random(12);
    int seen = 0;
    while (seen < 200) {
      TopupAsk ask;
      try {
        ask = random(dice);
      } catch (Impossible weak) {
        continue;
      }
      double brim = ask.fullL() - ask.rainL();
      double low = 0.83 * brim;
      double high = Math.min(1.21 * brim, 1.001 * ask.fullL());
      if (!(ask.rainL() > 0 && low > 0 && high > brim)) {
        continue;
      }
      seen++;
      TopupBand b = between(ask, low, high);
      double[] corners = {brim, Math.min(ask.fullL(), high)};
      for (double corner : corners) {
        Topup.Answer a = Topup.solve(ask.holding(corner));
        if (a.reached()) {
          double spare = 1e-12 * ask.fullL();
          assertThat(a.drainL()).isBetween(b.drainLowL() - spare, b.drainHighL() + spare);
          assertThat(a.waterL()).isBetween(b.waterLowL() - spare, b.waterHighL() + spare);
          assertThat(a.concentrateMl())
              .isBetween(b.concentrateLowMl() - 1e3 * spare, b.concentrateHighMl() + 1e3 * spare);
        }
      }
    }
  }

  @Test
  void anEndWithoutAnAnswerIsDoubtful() {
    TopupAsk ask = TopupAsk.dry(36, 1, 45, 1.4, 1.8, new Concentrate(5, 1.9));
    TopupBand b = TopupBand.solve(ask, 10, 40);
    assertThat(b.middle().reached()).isTrue();
    assertThat(b.lowest().status()).isEqualTo(Topup.Status.WATER_TOO_STRONG);
    assertThat(b.doubtful()).isTrue();
    assertThat(b.lowest().nearestEcMsCm()).isCloseTo((10 * 1 + 35 * 1.8) / 45, offset(1e-12));
    assertThat(between(ask, 10, 40).middle().afterRainL()).isEqualTo(25);
  }

  @Test
  void waterAloneAndTheCup() {
    Topup.Answer a = Topup.solve(TopupAsk.dry(31, 2.1, 45, 1.6, 0.3, new Concentrate(5, 1.9)));
    assertThat(a.plainWaterEcMsCm()).isCloseTo(1.54, offset(0.001));
    assertThat(a.plainWaterClose()).isTrue();
    assertThat(a.drainsACup()).isFalse();
    Topup.Answer full = Topup.solve(TopupAsk.dry(45, 1.2, 45, 1.6, 0.3, new Concentrate(5, 1.9)));
    assertThat(full.drainsACup()).isTrue();
    assertThat(full.plainWaterEcMsCm()).isEqualTo(1.2);
    assertThat(full.plainWaterClose()).isFalse();
    Topup.Answer over = Topup.solve(TopupAsk.dry(60, 1.6, 45, 1.6, 0.3, new Concentrate(5, 1.9)));
    assertThat(over.overFull()).isTrue();
    assertThat(over.drainL()).isCloseTo(15, offset(1e-9));
  }

  @Test
  void cansCarryTheWholeVolume() {
    assertThat(Cans.of(31, 10)).isEqualTo(new Cans(4, 3, 1, 7.75));
    assertThat(Cans.of(30, 10)).isEqualTo(new Cans(3, 3, 0, 10));
    assertThat(Cans.of(0, 10)).isEqualTo(new Cans(0, 0, 0, 0));
    assertThat(Cans.of(4, 10)).isEqualTo(new Cans(1, 0, 4, 4));
    assertThat(Cans.of(0.3, 0.1).count()).isEqualTo(3);
    // 9 x 1000.3 is 9002.7 less a rounding
    assertThat(Cans.of(9002.7, 1000.3)).isEqualTo(new Cans(9, 9, 0, 9002.7 / 9));
    assertThat(Cans.of(1e6, 1).count()).as("a million and no more").isEqualTo(1_000_000);
    assertThatThrownBy(() -> Cans.of(5, 0)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Cans.of(1e6, 1e-3)).isInstanceOf(Impossible.class);
  }

  @Test
  void refusesWhatCannotBe() {
    Concentrate feed = new Concentrate(5, 1.9);
    assertThatThrownBy(() -> TopupAsk.dry(-1, 2, 45, 1.6, 0.3, feed)).hasMessageContaining("neg");
    assertThatThrownBy(() -> TopupAsk.dry(1, -2, 45, 1.6, 0.3, feed)).hasMessageContaining("neg");
    assertThatThrownBy(() -> TopupAsk.dry(1, 2, 0, 1.6, 0.3, feed)).hasMessageContaining("above");
    assertThatThrownBy(() -> TopupAsk.dry(1, 2, 45, 0, 0.3, feed)).hasMessageContaining("above");
    assertThatThrownBy(() -> TopupAsk.dry(1, 2, 45, Double.NaN, 0.3, feed))
        .isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> TopupAsk.dry(1, 2, 45, 1.6, 1.5, new Concentrate(1000, 1.5)))
        .hasMessageContaining("no stronger");
    assertThatThrownBy(() -> new Concentrate(0, 1.9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new Concentrate(5, 0)).isInstanceOf(Impossible.class);
    TopupAsk ask = TopupAsk.dry(31, 2.1, 45, 1.6, 0.3, feed);
    assertThatThrownBy(() -> TopupBand.solve(ask, 32, 34)).isInstanceOf(Impossible.class);
  }

  /**
   * Rain to the brim of a tank under its target: the most that must be drained is there, between
   * two of the samples. By hand: 100 L full, 20 L of rain at 0.02 mS/cm; 80 L at 1 mS/cm become 100
   * L at (80 + 0.4)/100 = 0.804; of these K = 100 (Q - t)/(Q - 0.804) can stay to make room for the
   * concentrate, Q = 1000 x 2/4 = 500: 100 x 498.5/499.196 L. A little less in the tank leaves
   * room, a little more is stronger.
   */
  @Test
  void theMostDrainedIsWhereTheRainComesToTheBrim() {
    TopupAsk ask = new TopupAsk(78.5, 1, 100, 1.5, 0.5, new Concentrate(4, 2), 20, 0.02);
    TopupBand b = between(ask, 60, 97);
    assertThat(b.drainHighL()).isCloseTo(100 - 100 * 498.5 / 499.196, offset(1e-9));
    assertThat(b.drainLowL()).isZero();
    assertThat(Topup.solve(ask.holding(80.4)).drainL()).isLessThan(b.drainHighL());
    assertThat(Topup.solve(ask.holding(79.9)).drainL()).isLessThan(b.drainHighL());
    assertThat(Topup.solve(ask.holding(80)).drainL()).isEqualTo(b.drainHighL());
  }

  private static final Concentrate FEED = new Concentrate(5, 1.9);

  /**
   * A cup is 0.2 L. A full tank of 45 L at 1.6 lifted to 1.7 must let 45 x 0.1/(380 - 1.6) = 0.0119
   * L go; to 3.5, 45 x 1.9/378.4 = 0.226 L.
   */
  @Test
  void aCupIsTwoDecilitres() {
    Topup.Answer little = Topup.solve(TopupAsk.dry(45, 1.6, 45, 1.7, 0.3, FEED));
    assertThat(little.drainL()).isCloseTo(4.5 / 378.4, offset(1e-12));
    assertThat(little.drainsACup()).isTrue();
    assertThat(little.drainsMore()).isFalse();
    assertThat(little.keptL()).isCloseTo(45 - 4.5 / 378.4, offset(1e-12));
    Topup.Answer more = Topup.solve(TopupAsk.dry(45, 1.6, 45, 3.5, 0.3, FEED));
    assertThat(more.drainL()).isCloseTo(85.5 / 378.4, offset(1e-12));
    assertThat(more.drainsACup()).isFalse();
    assertThat(more.drainsMore()).isTrue();
    Topup.Answer none = Topup.solve(TopupAsk.dry(30, 1.6, 45, 1.6, 0.3, FEED));
    assertThat(none.drainsACup()).isFalse();
    assertThat(none.drainsMore()).isFalse();
    Topup.Answer no = Topup.solve(TopupAsk.dry(10, 1, 45, 0.2, 0.8, FEED));
    assertThat(no.reached()).isFalse();
    assertThat(no.keptL()).isNull();
    assertThat(no.drainsMore()).isFalse();
    assertThat(no.drainsACup()).isFalse();
  }

  /** Water alone within 5 % of the target is a fair answer: of 1.6 that is 1.52 to 1.68. */
  @Test
  void plainWaterIsCloseWithinFivePerCent() {
    // (30 e + 15 x 0.3)/45
    assertThat(plainClose((1.521 * 45 - 4.5) / 30)).isTrue();
    assertThat(plainClose((1.519 * 45 - 4.5) / 30)).isFalse();
    assertThat(plainClose((1.679 * 45 - 4.5) / 30)).isTrue();
    assertThat(plainClose((1.681 * 45 - 4.5) / 30)).isFalse();
  }

  private static boolean plainClose(double ec) {
    return Topup.solve(TopupAsk.dry(30, ec, 45, 1.6, 0.3, FEED)).plainWaterClose();
  }

  /**
   * The nearest that can be had when the feed is weaker than the target: feed of Q = 1000 x 0.01/5
   * = 2 mS/cm for a target of 3. A tank of 30 L at 1 filled with it has (30 + 15 x 2)/45 = 1.333,
   * less than 2 itself, so the tank is emptied; one at 2.5 is filled to (75 + 30)/45 = 2.333.
   */
  @Test
  void theNearestOfAWeakFeed() {
    Concentrate weak = new Concentrate(5, 0.01);
    Topup.Answer emptied = Topup.solve(TopupAsk.dry(30, 1, 45, 3, 0.3, weak));
    assertThat(emptied.status()).isEqualTo(Topup.Status.CONCENTRATE_TOO_WEAK);
    assertThat(emptied.nearestEcMsCm()).isCloseTo(2, offset(1e-12));
    Topup.Answer filled = Topup.solve(TopupAsk.dry(30, 2.5, 45, 3, 0.3, weak));
    assertThat(filled.nearestEcMsCm()).isCloseTo(105 / 45.0, offset(1e-12));
  }

  /**
   * Over the target all states of the tank come to one mark: at 2.5 mS/cm 1.6 wants K (2.5 - 0.3) =
   * 45 x 1.3, 26.59 L kept, whether 30 or 40 L are there. Under it nothing is drained.
   */
  @Test
  void aStrongTankIsDrainedToOneMark() {
    TopupBand strong = between(TopupAsk.dry(35, 2.5, 45, 1.6, 0.3, FEED), 30, 40);
    assertThat(strong.drainsToOneMark()).isTrue();
    assertThat(strong.lowest().keptL()).isCloseTo(45 * 1.3 / 2.2, offset(1e-9));
    TopupBand weak = between(TopupAsk.dry(35, 1.2, 45, 1.6, 0.3, FEED), 30, 40);
    assertThat(weak.drainsToOneMark()).isFalse();
    TopupBand both = between(TopupAsk.dry(35, 2.5, 45, 1.6, 0.3, FEED), 20, 40);
    assertThat(both.drainsToOneMark()).isFalse();
    TopupBand no = between(TopupAsk.dry(36, 1, 45, 1.4, 1.8, FEED), 10, 40);
    assertThat(no.drainsToOneMark()).isFalse();
  }

  /**
   * 31 L in cans of 10: three full and 1 L; 30.1 L: a cup; 0.1 L alone is no cup after full ones.
   */
  @Test
  void theLastCanIsACup() {
    assertThat(Cans.of(31, 10).lastIsACup()).isFalse();
    assertThat(Cans.of(30.1, 10).lastIsACup()).isTrue();
    assertThat(Cans.of(30, 10).lastIsACup()).isFalse();
    assertThat(Cans.of(0.1, 10).lastIsACup()).isFalse();
    assertThat(Cans.of(30.21, 10).lastIsACup()).isFalse();
    assertThat(new Cans(4, 3, 0.2, 7.55).lastIsACup()).as("a cup is under 0.2 L").isFalse();
  }

  /** A band whose middle is half way. */
  private static TopupBand between(TopupAsk ask, double lowL, double highL) {
    return TopupBand.solve(ask.holding(0.5 * (lowL + highL)), lowL, highL);
  }
}
