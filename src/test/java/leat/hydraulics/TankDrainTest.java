package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TankDrainTest {
  static Stream<Row> rows() {
    return Sheet.of("hydraulics-drain.csv").atLeast(25);
  }

  private static void same(Row r, double ours, String column) {
    if (r.has(column)) {
      double want = r.num(column);
      assertThat(ours)
          .as(column + " " + r.idAndProvenance())
          .isCloseTo(want, within(Math.abs(want) * r.num("tol_rel")));
    }
  }

  private static TankDrain drain(Row r, double from, double to) {
    double centre = r.num("drain_centre_height_mm") / 1000;
    if (!r.has("hose_length_m")) {
      double bore = r.num("drain_bore_mm") / 1000;
      double cd = r.num("discharge_coefficient");
      return TankDrain.throughHole(Cases.area(r), bore, centre, cd, from, to);
    }
    PipeSection hose =
        new PipeSection(
            r.num("hose_length_m"),
            r.num("hose_bore_mm") / 1000,
            r.num("hose_rough_mm") / 1000,
            r.num("hose_K_sum"));
    Line line = new Line(Cases.water(r), hose);
    return TankDrain.throughHose(Cases.area(r), line, centre, r.num("hose_drop_m"), from, to);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithTheSheet(Row r) {
    double from = r.num("level_from_mm") / 1000;
    double to = r.num("level_to_mm") / 1000;
    TankDrain d = drain(r, from, to);
    same(r, d.seconds(), "drain_time_s");
    same(r, d.flowAtStart() / L_MIN, "flow_start_L_min");
    same(r, d.flowAtEnd() / L_MIN, "flow_end_L_min");
    same(r, d.volume() * 1000, "volume_drained_L");
    same(r, d.volumeLeft() * 1000, "volume_left_L");
    same(r, d.naiveSeconds(), "naive_volume_over_start_flow_s");
    if (!r.has("hose_length_m") && !r.text("shape").equals("lying-cylinder")) {
      assertThat(closed(r, from, to)).isCloseTo(d.seconds(), within(1e-9 * d.seconds()));
    }
  }

  /** A quadratic through the areas at three levels. */
  private static double closed(Row r, double from, double to) {
    var area = Cases.area(r);
    double centre = r.num("drain_centre_height_mm") / 1000;
    double step = 0.1;
    double a0 = area.applyAsDouble(centre);
    double a1 = area.applyAsDouble(centre + step);
    double a2 = area.applyAsDouble(centre + 2 * step);
    double c2 = (a2 - 2 * a1 + a0) / (2 * step * step);
    double c1 = (a1 - a0) / step - c2 * step;
    double cd = r.num("discharge_coefficient");
    double bore = r.num("drain_bore_mm") / 1000;
    double k = cd * Math.PI / 4 * bore * bore * Math.sqrt(2 * Liquid.GRAVITY);
    double over = primitive(a0, c1, c2, from - centre) - primitive(a0, c1, c2, to - centre);
    return 2 / k * over;
  }

  private static double primitive(double c0, double c1, double c2, double y) {
    return Math.sqrt(y) * (c0 + y * (c1 / 3 + y * c2 / 5));
  }

  @Property
  void drainingInTwoPartsTakesAsLong(
      @ForAll @Scale(4) @DoubleRange(min = 0.06, max = 0.26) double middle) {
    for (Row r : rows().toList()) {
      if (r.num("level_from_mm") < 270 || r.num("level_to_mm") > 50) {
        continue;
      }
      double whole = drain(r, 0.27, 0.05).seconds();
      double parts = drain(r, 0.27, middle).seconds() + drain(r, middle, 0.05).seconds();
      assertThat(parts).as(r.id()).isCloseTo(whole, withPercentage(1e-5));
    }
  }

  @Test
  void powersOfXIntegrate() {
    for (int n = 0; n < 22; n++) {
      int power = n;
      assertThat(Quadrature.integral(x -> Math.pow(x, power), 0, 2, 1e-13))
          .isCloseTo(Math.pow(2, n + 1) / (n + 1), withPercentage(1e-11));
    }
    assertThat(Quadrature.integral(x -> 1 / Math.sqrt(x), 0, 1, 1e-10))
        .isCloseTo(2, withPercentage(2));
  }

  @Test
  void refusesWhatDoesNotRun() {
    Line hose = new Line(Liquid.water(20), new PipeSection(2, 0.013, 0, 2));
    refused(() -> TankDrain.throughHole(h -> 0.2, 0.01, 0.05, 0.6, 0.2, 0.04), "level");
    refused(() -> TankDrain.throughHole(h -> 0.2, 0.01, 0.05, 0.6, 0.05, 0.05), "level");
    refused(() -> TankDrain.throughHole(h -> 0.2, 0.01, 0.05, 0.6, 0.1, 0.2), "level");
    refused(() -> TankDrain.throughHole(h -> 0.2, 0, 0.05, 0.6, 0.2, 0.1), "bore");
    refused(() -> TankDrain.throughHose(h -> 0.2, hose, 0.01, -0.2, 0.2, 0.1), "drop");
    refused(() -> TankDrain.throughHose(h -> 0.2, hose, 0.01, 0, 0.2, 0.01), "drop");
    assertThat(TankDrain.throughHole(h -> 0.2, 0.02, 0.01, 0.6, 0.2, 0.03).drawsAir()).isTrue();
  }

  private static void refused(Runnable what, String quantity) {
    assertThatThrownBy(what::run)
        .isInstanceOfSatisfying(
            Impossible.class, e -> assertThat(e.quantity()).isEqualTo(quantity));
  }
}
