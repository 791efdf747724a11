package leat.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {
  @Provide
  Arbitrary<Double> numbers() {
    Arbitrary<Double> bits =
        Arbitraries.longs()
            .map(Double::longBitsToDouble)
            .filter(d -> Math.abs(d) <= Double.MAX_VALUE);
    Arbitrary<Double> usual = Arbitraries.doubles().between(-1e6, 1e6);
    Arbitrary<Double> short_ =
        Arbitraries.integers().between(-2000000, 2000000).map(i -> i / 1000.0);
    return Arbitraries.oneOf(bits, usual, short_);
  }

  private static BigDecimal rounded(double value, int digits) {
    return new BigDecimal(Double.toString(value))
        .round(new MathContext(15, RoundingMode.HALF_UP))
        .round(new MathContext(digits, RoundingMode.HALF_UP));
  }

  @Property(tries = 5000)
  void shortestIsTheRoundedValueAndShort(@ForAll("numbers") double value) {
    String text = NumberText.shortest(value);
    BigDecimal expected = rounded(value, 12);
    assertThat(new BigDecimal(text)).isEqualByComparingTo(expected);
    assertThat(text).matches("-?(0|[1-9][0-9]*)(\\.[0-9]*[1-9])?(E-?[0-9]+)?");
    double size = expected.abs().doubleValue();
    if (size >= 1e-6 && size < 1e15 || size == 0) {
      assertThat(text).doesNotContain("E");
    }
  }

  @Property(tries = 5000)
  void significantIsTheRoundedValue(
      @ForAll("numbers") double value, @ForAll @IntRange(min = 1, max = 15) int digits) {
    String text = NumberText.significant(value, digits);
    assertThat(new BigDecimal(text.replace(" ", ""))).isEqualByComparingTo(rounded(value, digits));
  }

  @Property(tries = 5000)
  void decimalsAreTheRoundedValue(
      @ForAll("numbers") double value, @ForAll @IntRange(min = 0, max = 15) int decimals) {
    String text = NumberText.decimals(value, decimals).replace(" ", "");
    BigDecimal clean =
        new BigDecimal(Double.toString(value)).round(new MathContext(15, RoundingMode.HALF_UP));
    assertThat(text).isEqualTo(plain(clean.setScale(decimals, RoundingMode.HALF_UP)));
  }

  private static String plain(BigDecimal value) {
    return value.toPlainString();
  }

  @ParameterizedTest
  @CsvSource({
    "0,0",
    "-0.0,0",
    "0.1,0.1",
    "13000,13000",
    "1e15,1E15",
    "999999999999999,1E15",
    "123456789012,123456789012",
    "1e-6,0.000001",
    "1.5e-7,1.5E-7",
    "0.30000000000000004,0.3",
    "-2.5,-2.5",
    "1e300,1E300"
  })
  void shortest(double value, String text) {
    assertThat(NumberText.shortest(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "2.3,3,2.30",
    "0.0015,2,0.0015",
    "13000,2,13 000",
    "13000,5,13 000",
    "1234,3,1230",
    "1234567,4,1 235 000",
    "9.996,3,10.0",
    "999.6,3,1000",
    "0,3,0",
    "-0.0,3,0",
    "2.675,3,2.68",
    "0.285,2,0.29",
    "12345.678,8,12 345.678",
    "-2.345,2,-2.3",
    "100,4,100.0",
    "9999.6,4,10 000"
  })
  void significant(double value, int digits, String text) {
    assertThat(NumberText.significant(value, digits)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "16,2,16.00",
    "0.004,2,0.00",
    "-0.004,2,0.00",
    "0.005,2,0.01",
    "0.5,0,1",
    "0.4,0,0",
    "9.995,2,10.00",
    "12345.6,1,12 345.6",
    "0,0,0",
    "-1.25,1,-1.3"
  })
  void decimals(double value, int decimals, String text) {
    assertThat(NumberText.decimals(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "-Infinity"})
  void refusesWhatIsNotFinite(double value) {
    assertThatThrownBy(() -> NumberText.shortest(value))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> NumberText.significant(value, 3))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> NumberText.significant(1, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> NumberText.decimals(1, 16))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @org.junit.jupiter.params.ParameterizedTest
  @org.junit.jupiter.params.provider.CsvSource({
    "6.5, 2, 6.5",
    "6.504, 2, 6.5",
    "6.505, 2, 6.51",
    "10, 1, 10",
    "0.04, 1, 0",
    "-0.04, 1, 0",
    "-2.25, 1, -2.3",
    "12345.67, 1, 12345.7",
    "0.999, 2, 1",
    "99.96, 1, 100"
  })
  void roundedToPaste(double value, int decimals, String text) {
    assertThat(NumberText.atMost(value, decimals)).isEqualTo(text);
  }
}
