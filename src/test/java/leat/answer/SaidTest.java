package leat.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities written in words, in US units; factors: 25.4 mm an inch, 3.785411784 L a gallon. */
class SaidTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "water 20 C | water 68 F",
        "outside 5 to 35 C roots suffer | outside 41 to 95 F roots suffer",
        "bores of 4 to 50 mm. | bores of 0.16 to 2.0 in.",
        "never below 0 C. | never below 32 F.",
        "under -1 C pipes freeze | under 30 F pipes freeze",
        "filled, 44.1 L, so | filled, 11.6 gal, so",
        "wall 0.0015 mm, smooth | wall 0.000059 in, smooth",
        "0.005 m2 of open water | 0.054 ft2 of open water",
        "1.91 % per degree Celsius | 1.91 % per degree Celsius",
        "of 1.234 kg/L | of 1.234 kg/L",
        "type \"10 L in 65 s\" then | type \"10 L in 65 s\" then",
        "5 mL of each, 21 g | 5 mL of each, 21 g",
        "R10 C30 x10 m | R10 C30 x10 m",
        "24 h, 2.5 times | 24 h, 2.5 times",
      })
  void inUs(String metric, String us) {
    assertThat(Said.inUs(metric)).isEqualTo(us);
    assertThat(Phrase.said(metric).render(false)).isEqualTo(metric);
  }
}
