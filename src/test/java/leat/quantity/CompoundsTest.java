package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CompoundsTest {
  private static void fits(String typed, String pattern) {
    assertThat(typed).matches(Pattern.compile(pattern));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "540 mm x 360 mm",
        "540 x 360 mm",
        "540mmX360mm",
        "54 cm * 36 cm",
        "540 mm\u00d7360 mm",
        "0.54x0.36 m"
      })
  void sizes(String typed) {
    Size size = Compounds.size(typed);
    assertThat(size.length().value()).isEqualTo(0.54);
    assertThat(size.width().value()).isEqualTo(0.36);
    fits(typed, SchemaPattern.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"600 L/h @ 1.7 m", "600 L/h@1.7 m", "10 L/min@170cm", "600 lph @ 170 cm"})
  void points(String typed) {
    PumpPoint point = Compounds.point(typed);
    assertThat(point.flow().value()).isCloseTo(600 / 3.6e6, within(1e-18));
    assertThat(point.head().value()).isEqualTo(1.7);
    fits(typed, SchemaPattern.point());
  }

  @Test
  void stepsAndEdges() {
    SenderStep step = Compounds.step("40 mm = 10 ohm");
    assertThat(step.at().value()).isEqualTo(0.04);
    assertThat(step.reading().value()).isEqualTo(10);
    SenderStep edge = Compounds.edge("20.1 L = 21.5 Ω");
    assertThat(edge.at().in(Units.L)).isCloseTo(20.1, within(1e-12));
    assertThat(edge.reading().value()).isEqualTo(21.5);
    fits("40 mm=10 ohm", SchemaPattern.step());
    fits("20.1 L = 21.5 Ω", SchemaPattern.edge());
  }

  @Test
  void bucketsAndMeasuredFlows() {
    assertThat(Compounds.measured("10 L in 65 s").bucket().flow())
        .isCloseTo(0.01 / 65, within(1e-18));
    assertThat(Compounds.measured("10 L in 1 min 5 s").bucket().time().value()).isEqualTo(65);
    MeasuredFlow flow = Compounds.measured("9.2 L/min @ 330 mm");
    assertThat(flow.flow().in(Units.L_MIN)).isCloseTo(9.2, within(1e-12));
    assertThat(flow.level().value()).isEqualTo(0.33);
    assertThat(flow.bucket()).isNull();
    MeasuredFlow bucket = Compounds.measured("10 L in 65 s @ 330 mm");
    assertThat(bucket.flow().value()).isCloseTo(0.01 / 65, within(1e-18));
    assertThat(bucket.bucket().time().value()).isEqualTo(65);
    assertThat(bucket.level().value()).isEqualTo(0.33);
    assertThat(Compounds.measured("9.2 L/min").level()).isNull();
    for (String typed : List.of("9.2 L/min @ 330 mm", "9.2 L/min", "10 L in 65 s @ 33 cm")) {
      fits(typed, SchemaPattern.measured());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "28..34 L",
        "28 L..34 L",
        "28 to 34 L",
        "28 L to 34 L",
        "28 – 34 L",
        "28–34 L",
        "28 - 34 L",
        "28…34 L",
        "28000 mL .. 34 L"
      })
  void ranges(String typed) {
    Span span = Compounds.range(typed, Dimension.VOLUME);
    assertThat(span.low().value()).isEqualTo(0.028);
    assertThat(span.high().value()).isEqualTo(0.034);
    assertThat(span.middle()).isCloseTo(0.031, within(1e-17));
    assertThat(span.high().value()).isGreaterThan(span.low().value());
    fits(typed, SchemaPattern.range(Dimension.VOLUME));
  }

  @Test
  void oneValueIsARangeOfNoWidth() {
    Span span = Compounds.rangeOrOne("31 L", Dimension.VOLUME);
    assertThat(span.high().value()).isEqualTo(span.low().value());
    assertThat(span.middle()).isEqualTo(0.031);
    assertThat(Compounds.rangeOrOne("-3..5 C", Dimension.TEMPERATURE).low().value()).isEqualTo(-3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"90 s/12 min", "90 s / 12 min", "1.5/12 min", "1 min 30 s/720 s", "1/40 h/12 min"})
  void timings(String typed) {
    RunAndRest timing = Compounds.timing(typed);
    assertThat(timing.run().value()).isEqualTo(90);
    assertThat(timing.rest().value()).isEqualTo(720);
  }

  @Test
  void cadences() {
    assertThat(Compounds.cadence("at low").atLow()).isTrue();
    assertThat(Compounds.cadence("daily").every().value()).isEqualTo(86400);
    assertThat(Compounds.cadence("every 3 d").every().value()).isEqualTo(3 * 86400);
    for (String typed : List.of("at low", "daily", "every 3 d")) {
      fits(typed, SchemaPattern.cadence());
    }
  }

  @Test
  void variations() {
    assertThat(Variation.of("0.8..1.4 m step 0.2 m", Dimension.LENGTH))
        .extracting(Quantity::typed)
        .containsExactly("0.8 m", "1 m", "1.2 m", "1.4 m");
    assertThat(Variation.of("10mm,12mm, 1/2 in", Dimension.LENGTH))
        .extracting(Quantity::value)
        .containsExactly(0.01, 0.012, 0.0127);
    assertThat(Variation.of("18..24 C step 2 K", Dimension.TEMPERATURE)).hasSize(4);
    assertThat(Variation.of("64..70 F step 2 F", Dimension.TEMPERATURE)).hasSize(4);
    assertThat(Variation.of("4..8 step 2", Dimension.COUNT))
        .extracting(Quantity::value)
        .containsExactly(4.0, 6.0, 8.0);
    assertThat(Variation.of("0.2..0.35 EUR/kWh step 0.1 EUR/kWh", Dimension.MONEY_PER_ENERGY))
        .extracting(Quantity::typed)
        .containsExactly("0.2 EUR/kWh", "0.3 EUR/kWh");
    assertThat(Variation.of("5..5 % step 1 %", Dimension.SHARE)).hasSize(1);
  }

  @Test
  void named() {
    NamedQuantity named = Compounds.named(" N = 150", Units.MG_L);
    assertThat(named.name()).isEqualTo("N");
    assertThat(named.quantity().value()).isEqualTo(150);
    assertThat(Compounds.named("Ca=0.12 g/L", Units.MG_L).quantity().value()).isEqualTo(120);
  }
}
