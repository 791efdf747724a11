package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Sums of seasons by hand: water, drink and target of 1.5 mS/cm, so that the EC stands still and no
 * concentrate is poured.
 */
class LedgerTest {
  private static TankPlan tank(Upkeep upkeep, EcBand band) {
    return TankPlan.filled(
        new Marks(40, 15, 5, 60, 2),
        new Feeding(1.5, 1.5, 5, 2),
        RainCatch.ROOFED,
        upkeep,
        band,
        1.5);
  }

  private static SeasonDays steady(int n, double litres) {
    double[] plants = new double[n];
    Arrays.fill(plants, litres);
    return SeasonDays.of(plants, new double[n], new double[n]);
  }

  @Test
  void anEveningAtTheEndOfTheBandIsInside() {
    Totals t = Season.totals(tank(Upkeep.of(Refill.DAILY), new EcBand(1.5, 1.5)), steady(6, 5), 1);
    assertThat(t.evenings().outside()).isEqualTo(new Streak(0, -1));
    assertThat(t.evenings().above().days()).isZero();
    assertThat(t.evenings().below().days()).isZero();
  }

  @Test
  void eveningsOutsideAreCountedFromTheFirstDay() {
    Streak all = new Streak(6, 0);
    Upkeep daily = Upkeep.of(Refill.DAILY);
    Totals weak = Season.totals(tank(daily, new EcBand(1.625, 2)), steady(6, 5), 1);
    assertThat(weak.evenings().below()).isEqualTo(all);
    assertThat(weak.evenings().above().days()).isZero();
    assertThat(weak.evenings().outside()).isEqualTo(all);
    Totals strong = Season.totals(tank(daily, new EcBand(1, 1.375)), steady(6, 5), 1);
    assertThat(strong.evenings().above()).isEqualTo(all);
    assertThat(strong.evenings().below().days()).isZero();
    assertThat(strong.evenings().ecEndMsCm()).isEqualTo(1.5);
  }

  /** Of 35 L between full and intake nothing is left on day 0 by a thirst of 36 L. */
  @Test
  void theFirstDryDayMayBeTheFirst() {
    TankPlan never = tank(Upkeep.of(Refill.NONE), EcBand.ANY);
    Totals home = Season.totals(never, steady(3, 36), 1);
    assertThat(home.firstDry()).isZero();
    assertThat(home.firstAwayDry()).isEqualTo(-1);
    assertThat(home.flows().shortL()).isEqualTo(1 + 36 + 36);
    Totals away = Season.totals(never, steady(3, 36).away(0, 2), 1);
    assertThat(away.firstAwayDry()).isZero();
    assertThat(away.firstDry()).isEqualTo(-1);
    Totals later = Season.totals(never, steady(4, 18), 1);
    assertThat(later.firstDry()).isEqualTo(1);
    assertThat(Season.totals(never, steady(4, 18).away(1, 3), 1).firstAwayDry()).isEqualTo(1);
  }

  /** Changed every 3 days: 5 and 10 L are added before each change, the first time on day 1. */
  @Test
  void theTapsSaltIsToldOfTheFirstOfEqualEvenings() {
    Upkeep upkeep = new Upkeep(Refill.DAILY, 0, Upkeep.NEVER, 3, Upkeep.NEVER);
    Totals t = Season.totals(tank(upkeep, EcBand.ANY), steady(9, 5), 1);
    assertThat(t.counts().changes()).isEqualTo(2);
    assertThat(t.counts().topups()).isEqualTo(6);
    assertThat(t.counts().services()).isEqualTo(8);
    // 10 L of 1.5 mS/cm against 40 L of 1.5; the last evening is not served.
    assertThat(t.tapSalt().most()).isCloseTo(0.25, within(1e-12));
    assertThat(t.tapSalt().mostDay()).isEqualTo(1);
    assertThat(t.tapSalt().end()).isCloseTo(0.25, within(1e-12));
    assertThat(t.daysACan(10)).isCloseTo(10 * 9 / 45.0, within(1e-12));
  }

  @Test
  void aTankThatWasNeverToppedUpHasNoDayOfIt() {
    Totals t = Season.totals(tank(Upkeep.of(Refill.NONE), EcBand.ANY), steady(3, 1), 1);
    assertThat(t.tapSalt()).isEqualTo(new Totals.TapSalt(0, -1, 0));
  }

  @Test
  void anEmptyTankHasNoEcAtTheEnd() {
    Marks toTheFloor = new Marks(40, 15, 0, 60, 2);
    TankPlan plan =
        TankPlan.filled(
            toTheFloor,
            new Feeding(1.5, 1.5, 5, 2),
            RainCatch.ROOFED,
            Upkeep.of(Refill.NONE),
            EcBand.ANY,
            1.5);
    Totals empty = Season.totals(plan, steady(2, 20), 1);
    assertThat(empty.evenings().volumeEndL()).isZero();
    assertThat(empty.evenings().ecEndMsCm()).isNaN();
    assertThat(empty.evenings().ecMinMsCm()).isEqualTo(1.5);
    Totals always = Season.totals(plan, steady(1, 40), 1);
    assertThat(always.evenings().ecMinMsCm()).isNaN();
    assertThat(always.evenings().ecMaxMsCm()).isNaN();
    assertThat(always.evenings().lowestL()).isZero();
  }
}
