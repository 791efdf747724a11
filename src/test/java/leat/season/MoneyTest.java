package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** By hand: water 0.002 a L, feed 0.01 a mL, 0.1 mL of acid a L at 0.03 a mL. */
class MoneyTest {
  private static final double NONE = Double.NaN;
  private static final Offset<Double> CENTS = within(1e-12);
  private static final Prices ALL = new Prices(0.002, 0.01, 0.1, 0.03);
  private static final Prices FREE = new Prices(NONE, NONE, NONE, NONE);

  /** 36 L and 180 mL: 0.072 + 1.8 + 0.108. */
  private static final FirstFill FILL = new FirstFill(36, 180, 36.18, 1.6);

  private static final double FIRST = 1.98;

  private static Totals poured(double litres, double ml) {
    return new Totals(
        3,
        new Totals.Flows(90, 0, 0, 0, litres, ml, 0, 0),
        new Totals.Counts(0, 0, 0, 0, 0, 0, 0),
        new Totals.Evenings(1, 2, 3, 4, 5, new Streak(0, -1), new Streak(0, -1), new Streak(0, -1)),
        new Totals.TapSalt(0, -1, 0),
        -1,
        -1);
  }

  private static DayRow row(int day, double litres, double ml) {
    return new DayRow(
        day, 0, 0, 0, 0, 0, 0, litres, ml, 40, 60, false, false, false, Service.TOP_UP);
  }

  private static Money money(Prices prices, double[] energy, double seed) {
    return new Money(prices, energy, FILL, seed, 60, 100, 70);
  }

  @Test
  void eachPourHasItsPrice() {
    assertThat(ALL.water(100)).isCloseTo(0.2, CENTS);
    assertThat(ALL.feed(300)).isCloseTo(3, CENTS);
    assertThat(ALL.acidMl(100)).isCloseTo(10, CENTS);
    assertThat(ALL.acid(100)).isCloseTo(0.3, CENTS);
    assertThat(ALL.poured(100, 300)).isCloseTo(3.5, CENTS);
  }

  @Test
  void whatHasNoPriceCountsNothingAndNothingIsNoMoney() {
    assertThat(FREE.any()).isFalse();
    assertThat(FREE.poured(100, 300)).isNaN();
    assertThat(new Prices(0.002, NONE, NONE, NONE).poured(100, 300)).isCloseTo(0.2, CENTS);
    assertThat(new Prices(NONE, 0.01, NONE, NONE).poured(100, 300)).isCloseTo(3, CENTS);
    assertThat(new Prices(NONE, NONE, 0.1, 0.03).poured(100, 300)).isCloseTo(0.3, CENTS);
    assertThat(new Prices(NONE, NONE, 0.1, NONE).any()).as("acid without a price").isFalse();
    assertThat(new Prices(NONE, NONE, NONE, 0.03).any()).as("a price without acid").isFalse();
    assertThat(new Prices(0, NONE, NONE, NONE).poured(100, 300)).isZero();
  }

  @Test
  void energyIsSummedOverItsDays() {
    Money m = money(FREE, new double[] {1, 2, 4}, NONE);
    assertThat(m.energy()).isEqualTo(7);
    assertThat(m.energy(1, 2)).isEqualTo(6);
    assertThat(m.energy(1, 1)).isEqualTo(2);
    Money none = money(FREE, null, NONE);
    assertThat(none.energy()).isNaN();
    assertThat(none.energy(0, 1)).isNaN();
  }

  @Test
  void aDayOrDaysInARow() {
    double[] energy = {1, 2, 4};
    // 10 L and 30 mL: 0.02 + 0.3 + 0.03.
    assertThat(money(ALL, energy, NONE).of(row(1, 10, 30), 1)).isCloseTo(2.35, CENTS);
    assertThat(money(ALL, energy, NONE).of(row(1, 10, 30), 2)).isCloseTo(6.35, CENTS);
    assertThat(money(ALL, null, NONE).of(row(1, 10, 30), 2)).isCloseTo(0.35, CENTS);
    assertThat(money(FREE, energy, NONE).of(row(1, 10, 30), 2)).isEqualTo(6);
    assertThat(money(FREE, null, NONE).of(row(1, 10, 30), 2)).isNaN();
  }

  @Test
  void theSeasonIsItsDaysTheFirstFillAndTheSeed() {
    double[] energy = {1, 2, 4};
    Totals t = poured(100, 300);
    assertThat(money(ALL, energy, 5).first()).isCloseTo(FIRST, CENTS);
    assertThat(money(ALL, energy, 5).season(t)).isCloseTo(3.5 + 7 + FIRST + 5, CENTS);
    assertThat(money(ALL, energy, NONE).season(t)).isCloseTo(3.5 + 7 + FIRST, CENTS);
    assertThat(money(ALL, null, 5).season(t)).isCloseTo(3.5 + FIRST + 5, CENTS);
    assertThat(money(FREE, energy, 5).season(t)).isEqualTo(12);
    assertThat(money(FREE, null, 5).season(t)).as("seed alone is no season").isNaN();
  }

  /** Bought for 100 (70 with the spools' rest kept), 60 a season in a shop. */
  @Test
  void whatWasBoughtIsPaidBackByWhatIsSaved() {
    Money m = money(FREE, new double[] {10}, NONE);
    assertThat(m.payback(poured(0, 0))).isEqualTo(2);
    assertThat(m.paybackAt(20)).isEqualTo(2.5);
    assertThat(m.paybackLeast(20)).isEqualTo(1.75);
    assertThat(m.paybackAt(60)).as("nothing saved").isNaN();
    assertThat(m.paybackAt(70)).as("dearer than the shop").isNaN();
    assertThat(m.paybackAt(NONE)).isNaN();
  }
}
