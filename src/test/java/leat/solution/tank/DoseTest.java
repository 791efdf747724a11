package leat.solution.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import leat.numeric.Roots;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DoseTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-dose.csv").atLeast(8);
  }

  static void close(Row r, String column, Double got) {
    if (!r.has(column)) {
      assertThat(got).as(r.idAndProvenance() + " " + column).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(r.idAndProvenance() + " " + column)
        .isCloseTo(want, offset(r.num("tol_rel") * Math.abs(want)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double rate = r.num("rate_mL_L");
    int n = (int) r.num("parts");
    double gain = r.num("rate_ec_mS_cm");
    FeedParts parts =
        r.text("rate_is").equals("total")
            ? FeedParts.sharing(rate, n, gain)
            : FeedParts.each(rate, n, gain);
    Dose.Answer a = Dose.byEc(r.num("volume_L"), r.num("from_mS_cm"), r.num("to_mS_cm"), parts);
    assertThat(a.status().word).isEqualTo(r.text("status"));
    close(r, "total_rate_mL_L", a.totalRateMlPerL());
    close(r, "concentrate_mL", a.concentrateMl());
    close(r, "final_volume_L", a.finalVolumeL());
    close(r, "final_ec_mS_cm", a.finalEcMsCm());
    close(r, "mL_per_L_of_water", a.mlPerLitreOfWater());
    close(r, "full_label_ec_mS_cm", a.fullLabelEcMsCm());
    close(r, "first_pour_mL", a.firstPourMl());
    if (a.reached()) {
      assertThat(a.partMl()).hasSize(n);
      for (double part : a.partMl()) {
        close(r, "part_mL", part);
      }
    } else {
      assertThat(a.partMl()).isNull();
    }
  }

  /** Second route: the root of the mixing balance, unequal parts. */
  @Test
  void unequalPartsByTheirOwnRates() {
    FeedParts parts = new FeedParts(new double[] {2, 3, 1}, 1.7);
    Dose.Answer a = Dose.byEc(60, 0.4, 1.5, parts);
    double root = Roots.bracketed(m -> (0.4 * 60 + 1.7 / 6 * m) / (60 + m / 1000) - 1.5, 0, 5000);
    assertThat(a.concentrateMl()).isCloseTo(root, withPercentage(1e-9));
    assertThat(a.partMl()[0]).isCloseTo(root / 3, withPercentage(1e-9));
    assertThat(a.partMl()[1]).isCloseTo(root / 2, withPercentage(1e-9));
    assertThat(a.partMl()[2]).isCloseTo(root / 6, withPercentage(1e-9));
    assertThat(a.firstPourPartMl()[1]).isCloseTo(0.75 * root / 2, withPercentage(1e-9));
    assertThat(a.partTeaspoons()[1]).isCloseTo(root / 10, withPercentage(1e-9));
    assertThat(a.labelShare()).isCloseTo(root / 360, withPercentage(1e-9));
  }

  @Test
  void byTheLabel() {
    FeedParts parts = FeedParts.sharing(5, 2, 1.9);
    Dose.Answer whole = Dose.byLabel(45, 0.3, 1, parts);
    assertThat(whole.concentrateMl()).isEqualTo(225);
    assertThat(whole.finalEcMsCm()).isCloseTo(whole.fullLabelEcMsCm(), offset(1e-12));
    Dose.Answer half = Dose.byLabel(45, 0.3, 0.5, parts);
    assertThat(half.partMl()).containsExactly(56.25, 56.25);
    assertThat(half.labelShare()).isCloseTo(0.5, offset(1e-12));
    assertThat(Dose.byLabel(45, 0.3, 0, parts).finalEcMsCm()).isEqualTo(0.3);
  }

  @Property
  void theEcIsReachedAndSaltIsKept(
      @ForAll @DoubleRange(min = 0.1, max = 1000) double volume,
      @ForAll @DoubleRange(min = 0, max = 2) double from,
      @ForAll @DoubleRange(min = 0.01, max = 2) double more,
      @ForAll @DoubleRange(min = 0.5, max = 20) double rate,
      @ForAll @DoubleRange(min = 0.2, max = 4) double gain,
      @ForAll @IntRange(min = 1, max = 6) int n) {
    FeedParts parts = FeedParts.sharing(rate, n, gain);
    Dose.Answer a = Dose.byEc(volume, from, from + more, parts);
    assertThat(a.reached()).isTrue();
    double salt = from * volume + gain / rate * a.concentrateMl();
    assertThat(salt).isCloseTo((from + more) * a.finalVolumeL(), withPercentage(1e-9));
    double sum = 0;
    for (double part : a.partMl()) {
      sum += part;
    }
    assertThat(sum).isCloseTo(a.concentrateMl(), withPercentage(1e-9));
  }

  @Test
  void aCupRoundsEachPartAndShowsWhatItDoes() {
    FeedParts parts = FeedParts.sharing(5, 2, 1.9);
    Dose.Answer a = Dose.byEc(45, 0.3, 1.6, parts);
    DoseRounding five = DoseRounding.of(a, 45, 0.3, parts, 5);
    assertThat(five.partMl()).containsExactly(75, 75);
    assertThat(five.concentrateMl()).isEqualTo(150);
    assertThat(five.finalVolumeL()).isCloseTo(45.15, offset(1e-12));
    assertThat(five.finalEcMsCm()).isCloseTo((0.3 * 45 + 0.38 * 150) / 45.15, offset(1e-12));
    assertThat(five.ecOffMsCm()).isCloseTo(five.finalEcMsCm() - 1.6, offset(1e-12));
    assertThat(five.worstPartOffPct()).isCloseTo(100 * (75 / 77.2991543 - 1), offset(1e-6));
    assertThat(five.aPartVanishes()).isFalse();
    DoseRounding huge = DoseRounding.of(a, 45, 0.3, parts, 200);
    assertThat(huge.aPartVanishes()).isTrue();
    assertThat(huge.finalEcMsCm()).isEqualTo(0.3);
    Dose.Answer none = Dose.byEc(45, 1.6, 1.6, parts);
    assertThat(DoseRounding.of(none, 45, 1.6, parts, 1).aPartVanishes()).isFalse();
    Dose.Answer pure = Dose.byEc(45, 0, 0, parts);
    assertThat(DoseRounding.of(pure, 45, 0, parts, 1).ecOffPct()).as("pure water stays").isZero();
  }

  @Test
  void refusesWhatCannotBe() {
    FeedParts parts = FeedParts.sharing(5, 2, 1.9);
    assertThatThrownBy(() -> Dose.byEc(0, 0.3, 1.6, parts)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Dose.byEc(45, -0.3, 1.6, parts)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Dose.byLabel(45, 0.3, -1, parts)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> FeedParts.sharing(5, 0, 1.9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> FeedParts.each(-5, 2, 1.9)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> new FeedParts(new double[0], 1.9)).isInstanceOf(Impossible.class);
    Dose.Answer a = Dose.byEc(45, 0.3, 1.6, parts);
    assertThatThrownBy(() -> DoseRounding.of(a, 45, 0.3, parts, 0)).isInstanceOf(Impossible.class);
    Dose.Answer no = Dose.byEc(45, 1.9, 1.6, parts);
    assertThatThrownBy(() -> DoseRounding.of(no, 45, 1.9, parts, 1)).isInstanceOf(Impossible.class);
    // just short of the concentrate's own strength: a swimming pool of it is no answer
    Dose.Answer weak = Dose.byEc(45, 0, 1.2 - 1e-12, FeedParts.sharing(1000, 1, 1.2));
    assertThat(weak.status()).isEqualTo(Dose.Status.CONCENTRATE_TOO_WEAK);
  }

  /** Within 5 % of the label's rate a dose is the label's (practice): by label 0.951 and 0.949. */
  @Test
  void aDoseIsTheLabelsWithinFivePerCent() {
    FeedParts parts = FeedParts.sharing(10, 2, 1.9);
    assertThat(Dose.byLabel(45, 0.3, 0.951, parts).underLabel()).isFalse();
    assertThat(Dose.byLabel(45, 0.3, 0.949, parts).underLabel()).isTrue();
    assertThat(Dose.byLabel(45, 0.3, 1.049, parts).overLabel()).isFalse();
    assertThat(Dose.byLabel(45, 0.3, 1.051, parts).overLabel()).isTrue();
    assertThat(Dose.byLabel(45, 0.3, 1.051, parts).underLabel()).isFalse();
    // 5 % itself is within; 64 L at 8 mL/L so that doubles say so
    FeedParts exact = FeedParts.sharing(8, 2, 1.9);
    assertThat(Dose.byLabel(64, 0.3, 0.95, exact).underLabel()).isFalse();
    assertThat(Dose.byLabel(64, 0.3, 1.05, exact).overLabel()).isFalse();
  }

  /** EC adds up by volume below 3 mS/cm: 2.9 is in range, 3.1 is not. */
  @Test
  void theRuleOfVolumesHoldsToThreeMilliSiemens() {
    FeedParts parts = FeedParts.sharing(10, 2, 1.9);
    assertThat(Dose.byEc(45, 0.3, 2.99, parts).inRange()).isTrue();
    assertThat(Dose.byEc(45, 0.3, 3.01, parts).inRange()).isFalse();
  }

  /** A step of 5 mL: 14 mL become 15, 7.1 % more; 12 become 10, a sixth less; 2 become nothing. */
  @Test
  void aCoarseStepIsOverTenPerCentOff() {
    FeedParts one = FeedParts.sharing(1, 1, 0.2);
    DoseRounding fair = DoseRounding.of(Dose.byLabel(14, 0.3, 1, one), 14, 0.3, one, 5);
    assertThat(fair.partMl()).containsExactly(15);
    assertThat(fair.worstPartOffPct()).isCloseTo(100 / 14.0, offset(1e-9));
    assertThat(fair.isCoarse()).isFalse();
    DoseRounding coarse = DoseRounding.of(Dose.byLabel(12, 0.3, 1, one), 12, 0.3, one, 5);
    assertThat(coarse.worstPartOffPct()).isCloseTo(-100 / 6.0, offset(1e-9));
    assertThat(coarse.isCoarse()).isTrue();
    // 50 mL in steps of 11 are 55: 10 % itself is as labels are
    DoseRounding tenth = DoseRounding.of(Dose.byLabel(50, 0.3, 1, one), 50, 0.3, one, 11);
    assertThat(tenth.worstPartOffPct()).isEqualTo(10);
    assertThat(tenth.isCoarse()).isFalse();
    DoseRounding gone = DoseRounding.of(Dose.byLabel(2, 0.3, 1, one), 2, 0.3, one, 5);
    assertThat(gone.aPartVanishes()).isTrue();
    assertThat(gone.isCoarse()).isTrue();
    // 14 L at 0.3 and 15 mL of 200 mS/cm: (4.2 + 3)/14.015, instead of (4.2 + 2.8)/14.014
    assertThat(fair.finalEcMsCm()).isCloseTo(7.2 / 14.015, offset(1e-12));
    assertThat(fair.ecOffMsCm()).isCloseTo(7.2 / 14.015 - 7 / 14.014, offset(1e-12));
    assertThat(fair.ecOffPct()).isCloseTo(100 * (7.2 / 14.015 / (7 / 14.014) - 1), offset(1e-9));
    assertThat(fair.finalVolumeL()).isCloseTo(14.015, offset(1e-12));
  }

  @Test
  void partsAreAlikeOrNot() {
    assertThat(new FeedParts(new double[] {2, 2, 2}, 1.9).alike()).isTrue();
    assertThat(new FeedParts(new double[] {2, 2, 3}, 1.9).alike()).isFalse();
    assertThat(new FeedParts(new double[] {2}, 1.9).alike()).isTrue();
    // 60 mL of 3 + 2 + 1: the smallest is a sixth
    assertThat(new FeedParts(new double[] {3, 2, 1}, 1.9).smallest(60))
        .isCloseTo(10, offset(1e-12));
    assertThat(new FeedParts(new double[] {1, 2, 3}, 1.9).smallest(60))
        .isCloseTo(10, offset(1e-12));
  }
}
