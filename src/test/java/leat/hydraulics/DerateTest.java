package leat.hydraulics;

import static leat.hydraulics.Cases.L_MIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DerateTest {
  private static final Line LINE =
      new Line(Liquid.water(20), new PipeSection(2.2, 0.013, 1.5e-6, 2.5));
  private static final PumpCurve PRINTED = PumpCurve.parabola(2.4, 20 * L_MIN);

  static Stream<Row> flows() {
    return Sheet.of("hydraulics-derate.csv").atLeast(7);
  }

  /** The sheet's trials: a value, over 100 %, beyond the curve, nothing. */
  @ParameterizedTest
  @MethodSource("flows")
  void whatATrialLeavesToBelieve(Row r) {
    PumpCurve printed = Cases.printed(r);
    Riser riser = new Riser(Cases.plain(r, Cases.water(r)), r.num("static_head_m"));
    double flow = r.num("measured_flow_L_min") * L_MIN;
    MeasuredDerate trial = MeasuredDerate.of(printed, riser, flow);
    Derate d = Derate.of(trial);
    String status = r.text("status");
    assertThat(d.unexplained())
        .isEqualTo(status.equals("over_100") || status.equals("beyond_curve"));
    switch (status) {
      case "value" -> {
        assertThat(d.kind()).isEqualTo(Derate.Kind.MEASURED);
        assertThat(100 * d.share()).isCloseTo(r.num("derate_pct"), within(1e-4));
        assertThat(OperatingPoint.of(printed.derated(d.share()), riser).flow() / L_MIN)
            .isCloseTo(flow / L_MIN, within(1e-6));
      }
      case "over_100" -> {
        assertThat(d.share()).isEqualTo(1);
        assertThat(100 * trial.derate().getAsDouble()).isCloseTo(r.num("derate_pct"), within(1e-4));
      }
      case "beyond_curve" -> {
        assertThat(d.share()).isEqualTo(1);
        assertThat(trial.derate()).isEmpty();
      }
      case "no_flow" -> assertThat(trial.derate()).isEmpty();
      default -> throw new AssertionError(status);
    }
  }

  @Test
  void nothingMeasuredLeavesACeilingAtWhichExactlyNothingFlows() {
    Riser riser = new Riser(LINE, 1.8);
    Derate d = Derate.of(MeasuredDerate.of(PRINTED, riser, 0));
    assertThat(d.kind()).isEqualTo(Derate.Kind.NO_FLOW);
    assertThat(d.unexplained()).isFalse();
    assertThat(d.high().getAsDouble()).isCloseTo(0.75, within(1e-12));
    assertThat(OperatingPoint.of(PRINTED.derated(d.share()), riser).flow()).isEqualTo(0.0);
    // over the shut-off head, or no lift at all: nothing limits it
    assertThat(Derate.of(MeasuredDerate.of(PRINTED, new Riser(LINE, 3), 0)).share()).isEqualTo(1);
    assertThat(Derate.of(MeasuredDerate.of(PRINTED, new Riser(LINE, 0), 0)).share()).isEqualTo(1);
  }

  @Test
  void withoutAnyWordThePrintIsForFiguresOnly() {
    Derate d = Derate.notNamed();
    assertThat(d.share()).isEqualTo(1);
    assertThat(PRINTED.derated(d.share())).isSameAs(PRINTED);
    assertThat(d.shareForVerdict()).isEqualTo(0.7);
    assertThat(PRINTED.derated(d.shareForVerdict()).shutoffHead()).isCloseTo(1.68, within(1e-12));
    Derate named = Derate.named(0.85);
    assertThat(named.shareForVerdict()).isEqualTo(0.85);
    assertThat(named.share()).isEqualTo(0.85);
    assertThat(named.high()).isEmpty();
  }

  /** It stays what it is while the tower changes: through 8 mm less comes than through 13 mm. */
  @Test
  void aFrozenDerateDoesNotHealANarrowTube() {
    Riser asMeasured = new Riser(LINE, 1.2);
    Derate d = Derate.of(MeasuredDerate.of(PRINTED, asMeasured, 6 * L_MIN));
    Line narrow = LINE.with(0, LINE.section(0).withBore(0.008));
    double less = OperatingPoint.of(PRINTED.derated(d.share()), new Riser(narrow, 1.2)).flow();
    assertThat(less).isLessThan(0.9 * 6 * L_MIN);
  }
}
