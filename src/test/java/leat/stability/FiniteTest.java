package leat.stability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Supplier;
import leat.numeric.Impossible;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

/** Whatever is typed, an answer is refused or a finite number. */
class FiniteTest {
  @Provide
  Arbitrary<Double> wild() {
    return Arbitraries.frequencyOf(
        Tuple.of(6, Arbitraries.doubles().between(0, 3)),
        Tuple.of(2, Arbitraries.doubles().between(-10, 1000)),
        Tuple.of(1, Arbitraries.of(0.0, -0.0, -1.0, 1e9, Double.NaN, Double.POSITIVE_INFINITY)));
  }

  private static void finite(Supplier<Double> what) {
    Double value;
    try {
      value = what.get();
    } catch (Impossible refused) {
      assertThat(refused.getMessage()).isNotBlank();
      return;
    }
    if (value != null) {
      assertThat(value).isFinite();
    }
  }

  @Property
  void windIsRefusedOrFinite(
      @ForAll("wild") double a,
      @ForAll("wild") double b,
      @ForAll("wild") double c,
      @ForAll Terrain terrain) {
    finite(() -> SiteWind.ofMean(a, terrain, b, c, null).gust());
    finite(() -> SiteWind.ofGust(a, terrain, b, c, null).mean());
    finite(() -> SiteWind.ofMean(a, terrain, b, 1, c).pressure(1.25));
    finite(() -> Air.speed(a, b));
  }

  @Property
  void balanceIsRefusedOrFinite(
      @ForAll("wild") double a,
      @ForAll("wild") double b,
      @ForAll("wild") double c,
      @ForAll("wild") double d,
      @ForAll @IntRange(min = 0, max = 9) int n) {
    finite(() -> new Standing(a, b, Faces.of(List.of(new Face(c, d, 1.2))), 0.3).tipsAt(1.25));
    finite(() -> new Standing(a, b, Faces.of(List.of(new Face(c, d, 1.2))), 0.3).slidesAt(1.25));
    finite(() -> new Standing(a, b, Faces.of(List.of(new Face(c, d, 1.2))), 0.3).massToPass(100));
    finite(() -> new GuyLines(n, a, b, true).under(c).tension());
    finite(() -> new GuyLines(n, a, b, true).under(c).footLoad());
    finite(() -> new GuyLines(n, a, b, true).leastRing(c, d));
    finite(() -> new GuyLines(n, a, b, true).leastRun(c, d));
    finite(() -> new Joint(0, a, b, c, Faces.of(List.of(new Face(0.3, d, 1.2))), 0).opensAt(1.25));
    finite(
        () -> {
          Column tower =
              new Column(0.3, List.of(new Ring(a, b, 0, c, n)), 0, 0, 0.3, d, 0.1, 0, null);
          Tub tub = new Tub(4, 0.6, 0.4, 0.35, 1.3, 0, Foot.box(a, b));
          return new Assembly(tub, List.of(tower), 0.3).worst(Situation.refillMark(d)).tipsAt(1.25);
        });
  }
}
