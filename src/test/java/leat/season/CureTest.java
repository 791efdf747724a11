package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Advice, followed, works; one step less does not. */
class CureTest {
  private static SeasonDays steady(int n, double litres) {
    double[] plants = new double[n];
    Arrays.fill(plants, litres);
    return SeasonDays.of(plants, new double[n], new double[n]);
  }

  private static TankPlan tank(Refill refill) {
    return tank(refill, 0.5);
  }

  private static TankPlan tank(Refill refill, double uptake) {
    return TankPlan.filled(
        new Marks(45, 15, 5, 60, 2),
        new Feeding(0.3, 1.6, 5, 1.9),
        RainCatch.ROOFED,
        Upkeep.of(refill),
        new EcBand(1.2, 2),
        uptake);
  }

  @Test
  void theSheetsDryDayIsMendedByAHigherLowMark() {
    TankPlan plan = Cases.plan(Cases.row("SB08"));
    SeasonDays days = Cases.days("SB08");
    assertThat(Doubt.of(plan, days, 1)).containsExactly(Doubt.RESERVE_UNDER_HOTTEST_DAY);
    assertThat(Season.totals(plan, days, 1).firstDry()).isNotNegative();
    Double low = Cure.first(plan, days, 1, Lever.LOW, Steps.rising(15, 0.5, 44), Goal.NEVER_DRY);
    assertThat(low).isNotNull();
    assertThat(Season.totals(plan.low(low), days, 1).counts().dryDays()).isZero();
    if (low > 15.5) {
      assertThat(Season.totals(plan.low(low - 0.5), days, 1).counts().dryDays()).isPositive();
    }
  }

  /** An uptake that nobody named is 0.75 of the target, also of another target. */
  @Test
  void theUsualUptakeFollowsTheTarget() {
    TankPlan usual = tank(Refill.AT_LOW, TankPlan.usualUptake(1.6));
    assertThat(usual.target(1.2).uptakeMsCm()).isEqualTo(0.75 * 1.2);
    assertThat(tank(Refill.AT_LOW).target(1.2).uptakeMsCm()).isEqualTo(0.5);
  }

  @Test
  void everyOptionWorksAndTheSmallestMoveIsFirst() {
    TankPlan plan = tank(Refill.AT_LOW);
    SeasonDays days = steady(90, 4);
    assertThat(Season.totals(plan, days, 1).evenings().above().days())
        .isGreaterThan(Goal.EVENINGS_OUTSIDE);
    double[] part = new double[90];
    Arrays.fill(part, 3);
    List<CropPart> crops =
        List.of(new CropPart("cress", 4, new double[90]), new CropPart("chard", 20, part));
    List<Help.Option> ways = Help.options(plan, days, 1, crops, Goal.EC_IN_BAND);
    assertThat(ways).isNotEmpty();
    double before = 0;
    for (Help.Option way : ways) {
      assertThat(Goal.EC_IN_BAND.met(way.after())).isTrue();
      assertThat(way.move()).isGreaterThanOrEqualTo(before);
      before = way.move();
      if (way.lever() != null) {
        Totals again = Season.totals(way.lever().set(plan, way.to()), days, 1);
        assertThat(again).isEqualTo(way.after());
      }
    }
    assertThat(Help.options(tank(Refill.DAILY), steady(90, 1), 1, crops, Goal.NEVER_DRY)).isEmpty();
  }

  @Test
  void fewerPlantsAreWholePlants() {
    TankPlan plan = tank(Refill.every(7));
    SeasonDays days = steady(60, 8);
    double[] part = new double[60];
    Arrays.fill(part, 6);
    Integer kept = Cure.plants(plan, days, 1, part, 12, Goal.NEVER_DRY);
    // 40 L between full and intake carry 7 days of 2 + 0.5 a plant: 7 plants, exactly 38.5 L.
    assertThat(kept).isEqualTo(7);
    assertThat(Cure.plants(plan, steady(60, 20), 1, part, 12, Goal.NEVER_DRY)).isNull();
  }

  @Test
  void eachLeverMovesItsOwn() {
    TankPlan plan = tank(Refill.AT_LOW);
    assertThat(Lever.FULL.set(plan, 50).marks()).isEqualTo(new Marks(50, 15, 5, 60, 2));
    assertThat(Lever.FULL.set(plan, 50).startL()).isEqualTo(50);
    assertThat(Lever.TANK.set(plan, 50).marks()).isEqualTo(new Marks(50, 15, 5, 65, 2));
    assertThat(Lever.LOW.set(plan, 20).marks().lowL()).isEqualTo(20);
    assertThat(Lever.TARGET.set(plan, 1.3).feeding().targetMsCm()).isEqualTo(1.3);
    assertThat(Lever.TARGET.set(plan, 1.3).startMsCm()).isEqualTo(1.3);
    assertThat(Lever.DILUTE_ABOVE.set(plan, 1.9).upkeep().diluteAboveMsCm()).isEqualTo(1.9);
    assertThat(Lever.DOSE_BELOW.set(plan, 1.1).upkeep().doseBelowMsCm()).isEqualTo(1.1);
    assertThat(Lever.CHANGE_DAYS.set(plan, 14).upkeep().changeDays()).isEqualTo(14);
    assertThat(Lever.REFILL_DAYS.set(plan, 3).upkeep().refill()).isEqualTo(Refill.every(3));
  }

  @Test
  void changesKeepTheTapSaltDown() {
    TankPlan plan = tank(Refill.AT_LOW);
    SeasonDays days = steady(90, 6);
    Totals t = Season.totals(plan, days, 1);
    assertThat(Goal.TAP_SALT_LOW.met(t)).isFalse();
    assertThat(t.tapSalt().end()).isEqualTo(t.tapSalt().most());
    assertThat(t.tapSalt().most()).isEqualTo(0.3 * t.flows().waterL() / (45 * 1.6), within(1e-12));
    Double every =
        Cure.first(plan, days, 1, Lever.CHANGE_DAYS, Steps.falling(90, 1, 1), Goal.TAP_SALT_LOW);
    assertThat(every).isNotNull();
    Totals changed = Season.totals(Lever.CHANGE_DAYS.set(plan, every), days, 1);
    assertThat(changed.tapSalt().most()).isLessThanOrEqualTo(Totals.TapSalt.ADVISE_CHANGE);
    assertThat(changed.tapSalt().end()).isLessThanOrEqualTo(changed.tapSalt().most());
  }

  @Test
  void stepsAreWholeMultiples() {
    assertThat(Steps.rising(45, 0.5, 46.5)).containsExactly(45.5, 46, 46.5);
    assertThat(Steps.rising(45.2, 0.5, 46)).containsExactly(45.5, 46);
    assertThat(Steps.falling(1.6, 0.05, 1.5)).hasSize(2);
    assertThat(Steps.falling(1.62, 0.1, 1.5)).hasSize(2);
    assertThat(Steps.rising(10, 1, 10)).isEmpty();
    assertThat(Steps.rising(0, 1, 100_000)).as("as many as are tried").hasSize(100_000);
    assertThatThrownBy(() -> Steps.rising(0, 1, 100_001)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Steps.rising(1, 0, 2)).isInstanceOf(Impossible.class);
    assertThatThrownBy(() -> Steps.rising(1, 1e-9, 2)).isInstanceOf(Impossible.class);
  }

  /** Second route: all sets of evenings. The hottest day fits under the low mark, see the class. */
  @Property(tries = 25)
  void theNeighbourComesAsSeldomAsCanBe(@ForAll long seed) {
    Random r = new Random(seed);
    int n = 16;
    double[] plants = new double[n];
    double[] rain = new double[n];
    for (int t = 0; t < n; t++) {
      plants[t] = 3 + 7 * r.nextDouble();
      rain[t] = r.nextInt(4) == 0 ? 10 * r.nextDouble() : 0;
    }
    SeasonDays days = SeasonDays.of(plants, new double[n], rain).away(4, 11);
    TankPlan plan = tank(r.nextBoolean() ? Refill.AT_LOW : Refill.every(2)).full(30);
    int[] visits = Neighbour.days(plan, days, 1);
    int fewest = Integer.MAX_VALUE;
    for (int set = 0; set < 1 << 14; set++) {
      if (Integer.bitCount(set) < fewest && carried(plan, days, set)) {
        fewest = Integer.bitCount(set);
      }
    }
    assertThat(visits).isNotNull();
    assertThat(visits.length).isEqualTo(fewest);
  }

  private static boolean carried(TankPlan plan, SeasonDays days, int set) {
    SeasonDays visited = days;
    for (int t = 0; t < 14; t++) {
      if ((set >> t & 1) == 1) {
        visited = visited.filledOn(t);
      }
    }
    return Goal.AWAY_CARRIED.met(Season.totals(plan, visited, 1));
  }

  @Test
  void aTankThatDoesNotLastADayHasNoNeighbour() {
    TankPlan plan = tank(Refill.DAILY);
    assertThat(Neighbour.days(plan, steady(20, 41).away(5, 9), 1)).isNull();
  }
}
