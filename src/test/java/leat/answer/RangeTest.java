package leat.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** "{low..high}" of a template: one number when both ends read the same in the units shown. */
class RangeTest {
  private static final Column LOW = Column.of("low_L", "low", Show.L);
  private static final Column HIGH = Column.of("high_L", "high", Show.L);

  private static String said(Double low, Double high, boolean us) {
    Row row = Row.aside(LOW, HIGH).set(LOW, low).set(HIGH, high);
    return Answer.filled(row, "pour {low_L..high_L} of it").render(us);
  }

  @Test
  void twoEndsAndOne() {
    assertThat(said(0.0235, 0.0271, false)).isEqualTo("pour 23.5 to 27.1 L of it");
    assertThat(said(0.02511, 0.02513, false)).isEqualTo("pour 25.1 L of it");
    assertThat(said(0.0, 0.0, false)).isEqualTo("pour 0 L of it");
    // 25.14 and 25.16 L differ in litres and are one number of gallons: 6.64 and 6.65
    assertThat(said(0.02514, 0.02516, false)).isEqualTo("pour 25.1 to 25.2 L of it");
    assertThat(said(0.02514, 0.02515, true)).isEqualTo("pour 6.64 gal of it");
    assertThat(said(null, 0.02, false)).isEqualTo("pour - of it");
  }

  @Test
  void aKeyThatIsNoneIsABug() {
    assertThatThrownBy(() -> Answer.filled(Row.aside(LOW), "{low_L..high_L}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("high_L");
  }
}
