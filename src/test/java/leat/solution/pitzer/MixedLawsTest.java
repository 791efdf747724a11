package leat.solution.pitzer;

import static leat.solution.pitzer.Species.COUNT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import leat.solution.stock.Stock;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** What must hold for every bottle. */
class MixedLawsTest {
  private static Contents contents(long seed, double celsius) {
    return Contents.of(MixedBottle.poured(Bottles.random(seed, celsius)), 1, false);
  }

  /** Within the range of the model. */
  @Property
  void moreWaterNeverRaisesAnIndex(
      @ForAll @LongRange(min = 0, max = 1000000) long seed,
      @ForAll @DoubleRange(min = 0, max = 30) double celsius,
      @ForAll @DoubleRange(min = 1.01, max = 3) double more) {
    Contents bottle = contents(seed, celsius);
    double[] strong = bottle.molality();
    double[] weak = Contents.molality(bottle.moles(), bottle.waterKg() * more);
    if (!Pitzer.VALID.holds(celsius, Pitzer.ionicStrength(strong))) {
      return;
    }
    Brine brine = new Brine(strong, celsius);
    double[] before = brine.indices(strong);
    double[] after = brine.indices(weak);
    for (int s = 0; s < before.length; s++) {
      assertThat(after[s]).as(brine.solid(s).name()).isLessThanOrEqualTo(before[s]);
    }
  }

  @Property
  void somethingFallsOutOnlyOverAnIndexOf0(
      @ForAll @LongRange(min = 0, max = 1000000) long seed,
      @ForAll @DoubleRange(min = 0, max = 30) double celsius) {
    MixedBottle.Answer got = MixedBottle.of(Bottles.random(seed, celsius), 1, celsius);
    if (got.worstIndex() != null) {
      assertThat(got.fallsOutG() > 0).isEqualTo(got.worstIndex() > 0);
      assertThat(got.fallen().isEmpty()).isEqualTo(got.worstIndex() <= 0);
    }
  }

  @Property
  void whatFallsOutIsNotLost(
      @ForAll @LongRange(min = 0, max = 1000000) long seed,
      @ForAll @DoubleRange(min = 0, max = 30) double celsius) {
    Contents bottle = contents(seed, celsius);
    Brine brine = new Brine(bottle.moles(), celsius);
    FallOut out = new FallOut(brine, bottle);
    double[] all = out.dissolved();
    double water = out.waterKg();
    for (int s = 0; s < brine.size(); s++) {
      water += out.moles(s) * brine.solid(s).crystalWater() * 0.018015;
      for (int i = 0; i < COUNT; i++) {
        all[i] += out.moles(s) * brine.solid(s).count(i);
      }
    }
    for (int i = 0; i < COUNT; i++) {
      assertThat(all[i]).isCloseTo(bottle.moles()[i], offset(1e-9));
    }
    assertThat(water).isCloseTo(bottle.waterKg(), offset(1e-9));
  }

  /** Afterwards all is at rest: 0 where a solid lies, 0 or less elsewhere. */
  @Property
  void whatIsLeftIsAtRest(
      @ForAll @LongRange(min = 0, max = 1000000) long seed,
      @ForAll @DoubleRange(min = 0, max = 30) double celsius) {
    Contents bottle = contents(seed, celsius);
    Brine brine = new Brine(bottle.moles(), celsius);
    FallOut out = new FallOut(brine, bottle);
    double[] left = brine.indices(Contents.molality(out.dissolved(), out.waterKg()));
    for (int s = 0; s < left.length; s++) {
      assertThat(left[s]).isLessThan(1e-5);
      if (out.moles(s) > 0) {
        assertThat(left[s]).isCloseTo(0, offset(1e-5));
      }
    }
  }

  /**
   * The strongest bottle is clear, and a hundredth more is not, or the bottle is full of salt:
   * about one random bottle in a thousand is nearly all calcium chloride, of which no solid is
   * known to the model; nine tenths of the bottle end it.
   */
  @Property(tries = 300)
  void theStrongestIsJustClear(
      @ForAll @LongRange(min = 0, max = 1000000) long seed,
      @ForAll @DoubleRange(min = 0, max = 25) double celsius) {
    List<Stock.Weighed> bottle = Bottles.random(seed, celsius);
    Double factor = Strength.strongest(bottle, 1, celsius);
    if (factor == null) {
      return;
    }
    assertThat(verdict(bottle, factor, celsius)).isEqualTo(Stock.Verdict.CLEAR);
    double saltMl = Contents.of(MixedBottle.poured(bottle), 1, false).times(1.01 * factor).saltMl();
    if (saltMl <= 900) {
      assertThat(verdict(bottle, 1.01 * factor, celsius)).isNotEqualTo(Stock.Verdict.CLEAR);
    }
    assertThat(saltMl).isLessThan(920);
  }

  private static Stock.Verdict verdict(List<Stock.Weighed> bottle, double factor, double celsius) {
    List<Stock.Weighed> scaled = new ArrayList<>();
    for (Stock.Weighed one : bottle) {
      scaled.add(new Stock.Weighed(one.salt(), one.grams() * factor));
    }
    return MixedBottle.of(scaled, 1, celsius).verdict();
  }
}
