package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What helps, found by hand first. */
class HelpTest {
  private static TankPlan tank(Marks marks, Refill refill) {
    return TankPlan.filled(
        marks,
        new Feeding(0.3, 1.6, 5, 1.9),
        RainCatch.ROOFED,
        Upkeep.of(refill),
        new EcBand(1.2, 2),
        0.5);
  }

  private static double[] every(int n, double litres) {
    double[] plants = new double[n];
    Arrays.fill(plants, litres);
    return plants;
  }

  private static SeasonDays steady(int n, double litres) {
    return SeasonDays.of(every(n, litres), new double[n], new double[n]);
  }

  /**
   * 45, 31, 17 L: not yet at the low mark of 15 L, and 12 L over the intake are too few for a day
   * of 14 L. From 47 L three days end at the intake exactly; topped up at 17 L every second day it
   * never gets there; with 11 of 12 plants (1 L each) 45, 32, 19, 6 L.
   */
  @Test
  void aDryDayByThreeLevers() {
    TankPlan plan = tank(new Marks(45, 15, 5, 60, 2), Refill.AT_LOW);
    SeasonDays days = steady(30, 14);
    List<CropPart> crops = List.of(new CropPart("chard", 12, every(30, 12)));
    List<Help.Option> ways = Help.options(plan, days, 1, crops, Goal.NEVER_DRY);
    assertThat(ways).extracting(Help.Option::lever).containsExactly(Lever.FULL, null, Lever.LOW);
    assertThat(ways).extracting(Help.Option::from).containsExactly(45.0, 12.0, 15.0);
    assertThat(ways).extracting(Help.Option::to).containsExactly(47.0, 11.0, 17.0);
    assertThat(ways.get(0).move()).isCloseTo(2 / 45.0, within(1e-12));
    assertThat(ways.get(1).move()).isCloseTo(1 / 12.0, within(1e-12));
    assertThat(ways.get(2).move()).isCloseTo(2 / 15.0, within(1e-12));
    for (Help.Option way : ways) {
      assertThat(way.after().counts().dryDays()).isZero();
    }
    assertThat(ways.get(1).after().flows().waterUseL()).isCloseTo(30 * 13, within(1e-9));
  }

  /**
   * 35 L carry 7 days of 5 L. At 5.55 L a day 43.5 L are too few and 44 L enough, and so are 9 of
   * 10 plants of 0.55 L: both a tenth, told in the order of the levers.
   */
  @Test
  void ofEqualMovesTheMarkComesBeforeThePlants() {
    TankPlan plan = tank(new Marks(40, 15, 5, 60, 2), Refill.every(7));
    List<CropPart> crops = List.of(new CropPart("chard", 10, every(29, 5.52)));
    List<Help.Option> ways = Help.options(plan, steady(29, 5.55), 1, crops, Goal.NEVER_DRY);
    assertThat(ways).extracting(Help.Option::lever).containsExactly(Lever.FULL, null);
    assertThat(ways).extracting(Help.Option::to).containsExactly(44.0, 9.0);
    assertThat(ways.get(0).move()).isEqualTo(ways.get(1).move());
  }

  /** No target under half of what there is: 0.8 of 1.6 mS/cm is tried, 0.75 is not. */
  @Test
  void theTargetIsHalvedAtMost() {
    TankPlan plan = tank(new Marks(40, 15, 5, 60, 2), Refill.DAILY);
    SeasonDays days = steady(10, 0.01);
    Goal atMost08 = t -> t.evenings().ecMaxMsCm() < 0.81;
    Goal atMost075 = t -> t.evenings().ecMaxMsCm() < 0.76;
    List<Help.Option> ways = Help.options(plan, days, 1, List.of(), atMost08);
    assertThat(ways).hasSize(1);
    assertThat(ways.get(0).lever()).isEqualTo(Lever.TARGET);
    assertThat(ways.get(0).to()).isCloseTo(0.8, within(1e-12));
    assertThat(Help.options(plan, days, 1, List.of(), atMost075)).isEmpty();
  }

  /** 0.6 L over the intake, 0.35 L a day: only a top-up every day would do, at the full mark. */
  @Test
  void theLowMarkStaysUnderTheFullMark() {
    TankPlan plan = tank(new Marks(45, 44.4, 44.4, 45, 0), Refill.AT_LOW);
    SeasonDays days = steady(10, 0.35);
    assertThat(Season.totals(plan, days, 1).counts().dryDays()).isPositive();
    assertThat(Season.totals(plan.low(45), days, 1).counts().dryDays()).isZero();
    assertThat(Help.options(plan, days, 1, List.of(), Goal.NEVER_DRY)).isEmpty();
  }

  @Test
  void aMoveFromNothingIsTheLargestOfAll() {
    Totals any = Season.totals(tank(new Marks(45, 15, 5, 60, 2), Refill.DAILY), steady(2, 1), 1);
    assertThat(new Help.Option(Lever.LOW, 0, 5, any).move()).isInfinite();
    assertThat(new Help.Option(Lever.TARGET, 2, 1.5, any).move()).isEqualTo(0.25);
  }

  @Test
  void theThirstiestCropIsThatOfTheMostLitresAndTheFirstOfEquals() {
    CropPart cress = new CropPart("cress", 4, new double[] {1, 2, 3});
    CropPart chard = new CropPart("chard", 4, new double[] {0, 0, 7});
    CropPart basil = new CropPart("basil", 4, new double[] {7, 0, 0});
    assertThat(cress.sumL()).isEqualTo(6);
    assertThat(CropPart.thirstiest(List.of(cress, chard, basil))).isSameAs(chard);
    assertThat(CropPart.thirstiest(List.of(basil, cress))).isSameAs(basil);
    assertThat(CropPart.thirstiest(List.of())).isNull();
  }

  @Test
  void plantsAreTakenOneByOneDownToNone() {
    TankPlan plan = tank(new Marks(45, 15, 5, 60, 2), Refill.every(7));
    // Met as it is: one plant fewer is the first that is tried.
    assertThat(Cure.plants(plan, steady(20, 5), 1, every(20, 3), 6, Goal.NEVER_DRY)).isEqualTo(5);
    // 40 L carry 7 days of 5.5 L, which is the rest when all plants are gone.
    assertThat(Cure.plants(plan, steady(20, 9.5), 1, every(20, 4), 2, Goal.NEVER_DRY)).isZero();
    assertThat(Cure.plants(plan, steady(20, 9.8), 1, every(20, 4), 2, Goal.NEVER_DRY)).isNull();
  }

  @Test
  void aTankThatDidNotStartFullKeepsItsStart() {
    TankPlan half =
        new TankPlan(
            new Marks(40, 15, 5, 60, 2),
            new Feeding(0.3, 1.6, 5, 1.9),
            RainCatch.ROOFED,
            Upkeep.of(Refill.NONE),
            EcBand.ANY,
            0.5,
            20,
            1.6);
    assertThat(Lever.TANK.set(half, 50).startL()).isEqualTo(20);
    assertThat(Lever.FULL.set(half, 50).startL()).isEqualTo(20);
    TankPlan full = tank(new Marks(40, 15, 5, 60, 2), Refill.NONE);
    assertThat(Lever.TANK.set(full, 50).startL()).isEqualTo(50);
  }
}
