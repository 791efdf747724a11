package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Evenings by hand: a tank of 40 L, water of 0.4 mS/cm, target 1.5 mS/cm, and a concentrate of
 * which a mL brings 2/5 = 0.4 mS/cm L. All numbers of these days are exact in binary.
 */
class MachineTest {
  private static final Feeding FEED = new Feeding(0.4, 1.5, 5, 2);
  private static final Feeding TAP_AT_TARGET = new Feeding(1.5, 1.5, 5, 2);
  private static final DayInput STILL = new DayInput(0, 0, 0, Attendance.USUAL);

  private static Upkeep dilutingAbove(double msCm) {
    return new Upkeep(Refill.AT_LOW, 0, msCm, 0, Upkeep.NEVER);
  }

  private static DayRow still(
      Marks marks, Feeding feeding, Upkeep upkeep, double litres, double ec) {
    TankPlan plan =
        new TankPlan(
            marks,
            feeding,
            RainCatch.ROOFED,
            upkeep,
            EcBand.ANY,
            1.5,
            litres,
            ec,
            Since.FIRST_FILL);
    return TankDay.next(plan, TankState.start(plan), STILL).row();
  }

  private static Marks heel(double litres) {
    return new Marks(40, 30, 2, 50, litres);
  }

  @Test
  void aDayThatAsksNothingLeavesWaterAndSalt() {
    DayRow row = still(heel(0), FEED, Upkeep.of(Refill.NONE), 32, 1.25);
    assertThat(row.volumeL()).isEqualTo(32);
    assertThat(row.saltMsCmL()).isEqualTo(40);
    assertThat(row.event()).isEmpty();
  }

  /** 30 L of 2 mS/cm and 10 L of water are 64/40 = 1.6 mS/cm: under 1.6 there is no room. */
  @Test
  void aTopUpDrainsFirstWhenItWouldEndAboveTheLimit() {
    DayRow row = still(heel(0), FEED, dilutingAbove(1.55), 30, 2);
    assertThat(row.service()).isEqualTo(Service.DILUTE);
    // 60 - 2 Q + 0.4 (10 + Q) = 1.5 x 40 gives Q = 2.5.
    assertThat(row.drainedL()).isCloseTo(2.5, within(1e-12));
    assertThat(row.waterL()).isCloseTo(12.5, within(1e-12));
    assertThat(row.concentrateMl()).isZero();
    assertThat(row.volumeL()).isCloseTo(40, within(1e-12));
    assertThat(row.ecMsCm()).isCloseTo(1.5, within(1e-12));
  }

  @Test
  void aTopUpThatEndsAtTheLimitDrainsNothing() {
    DayRow row = still(heel(0), FEED, dilutingAbove(1.6), 30, 2);
    assertThat(row.service()).isEqualTo(Service.TOP_UP);
    assertThat(row.drainedL()).isZero();
    assertThat(row.waterL()).isEqualTo(10);
    assertThat(row.ecMsCm()).isCloseTo(1.6, within(1e-12));
  }

  @Test
  void theHeelCannotBeDrained() {
    DayRow row = still(heel(29), FEED, dilutingAbove(1.55), 30, 2);
    assertThat(row.drainedL()).isEqualTo(1);
    assertThat(row.waterL()).isEqualTo(11);
    // 60 - 2 + 0.4 x 11 over 40 L.
    assertThat(row.ecMsCm()).isCloseTo(62.4 / 40, within(1e-12));
  }

  /** Water as strong as the target thins nothing below it, however much is drained. */
  @Test
  void waterAtTheTargetDilutesNothing() {
    DayRow row = still(heel(0), TAP_AT_TARGET, dilutingAbove(1.55), 30, 2);
    assertThat(row.service()).isEqualTo(Service.TOP_UP);
    assertThat(row.drainedL()).isZero();
    assertThat(row.ecMsCm()).isCloseTo(75.0 / 40, within(1e-12));
  }

  /** A limit under the target is odd, but a tank at or under its target is fed, not thinned. */
  @Test
  void atTheTargetNothingIsDiluted() {
    for (double ec : new double[] {1.5, 1.375}) {
      DayRow row = still(heel(0), FEED, dilutingAbove(1), 30, ec);
      assertThat(row.service()).isEqualTo(Service.TOP_UP);
      assertThat(row.ecMsCm()).isCloseTo(1.5, within(1e-12));
      assertThat(row.volumeL()).isCloseTo(40, within(1e-12));
    }
  }

  /** (1.5 - 1) x 40 mS/cm L are missing; a mL brings 0.4 and takes 0.0015 of it as room. */
  @Test
  void aFullTankThatIsTooWeakGetsConcentrateAlone() {
    DayRow row = still(heel(0), FEED, Upkeep.of(Refill.DAILY), 40, 1);
    assertThat(row.service()).isEqualTo(Service.TOP_UP);
    assertThat(row.waterL()).isZero();
    assertThat(row.concentrateMl()).isCloseTo(20 / 0.3985, within(1e-9));
    assertThat(row.ecMsCm()).isCloseTo(1.5, within(1e-12));
  }

  /** 10 mL of room, 50 mL wanted: concentrate alone, a little over the mark. */
  @Test
  void anAlmostFullTankHasNoRoomForWater() {
    DayRow row = still(heel(0), FEED, Upkeep.of(Refill.DAILY), 39.99, 1);
    assertThat(row.waterL()).isZero();
    assertThat(row.concentrateMl()).isCloseTo(0.5 * 39.99 / 0.3985, within(1e-9));
    assertThat(row.ecMsCm()).isCloseTo(1.5, within(1e-12));
    assertThat(row.volumeL()).isGreaterThan(40);
  }

  @Test
  void concentrateAloneIsPouredUnderItsLimitNotAtIt() {
    Upkeep dose = new Upkeep(Refill.NONE, 1.25, Upkeep.NEVER, 0, Upkeep.NEVER);
    assertThat(still(heel(0), FEED, dose, 32, 1.25).service()).isEqualTo(Service.NONE);
    DayRow row = still(heel(0), FEED, dose, 32, 1.125);
    assertThat(row.service()).isEqualTo(Service.DOSE);
    assertThat(row.concentrateMl()).isCloseTo(0.375 * 32 / 0.3985, within(1e-9));
  }

  @Test
  void theTankIsToppedUpAtTheLowMarkNotAboveIt() {
    Upkeep atLow = Upkeep.of(Refill.AT_LOW);
    assertThat(still(heel(0), FEED, atLow, 30, 1.5).service()).isEqualTo(Service.TOP_UP);
    assertThat(still(heel(0), FEED, atLow, 30.001, 1.5).service()).isEqualTo(Service.NONE);
  }

  /** Four top-ups of 5 L are half of 40 L: the evening after is a change. */
  @Test
  void aChangeIsDueWhenTheShareOfWaterIsReached() {
    TankPlan plan =
        TankPlan.filled(
            heel(0),
            TAP_AT_TARGET,
            RainCatch.ROOFED,
            new Upkeep(Refill.DAILY, 0, Upkeep.NEVER, 0, 0.5),
            EcBand.ANY,
            1.5);
    TankState state = TankState.start(plan);
    DayInput five = new DayInput(5, 0, 0, Attendance.USUAL);
    for (int t = 0; t < 4; t++) {
      TankDay.Step step = TankDay.next(plan, state, five);
      assertThat(step.row().service()).as("day " + t).isEqualTo(Service.TOP_UP);
      state = step.state();
    }
    assertThat(state.addedL()).isEqualTo(20);
    TankDay.Step changed = TankDay.next(plan, state, five);
    assertThat(changed.row().service()).isEqualTo(Service.CHANGE);
    assertThat(changed.row().drainedL()).isEqualTo(35);
    assertThat(changed.state().addedL()).isZero();
  }

  /** SeasonDays counts the evening before as day -1; a tank in use may be older. */
  @Test
  void aTankInUseIsChangedByItsOwnCount() {
    Upkeep upkeep = new Upkeep(Refill.NONE, 0, Upkeep.NEVER, 10, Upkeep.NEVER);
    for (int since : new int[] {-9, -10}) {
      TankPlan plan =
          new TankPlan(
              heel(0),
              FEED,
              RainCatch.ROOFED,
              upkeep,
              EcBand.ANY,
              1.5,
              40,
              1.5,
              new Since(since, since, 0));
      Service done = TankDay.next(plan, TankState.start(plan), STILL).row().service();
      assertThat(done).isEqualTo(since == -10 ? Service.CHANGE : Service.NONE);
      assertThat(plan.since().isEarlier()).isTrue();
    }
    assertThat(Since.FIRST_FILL.isEarlier()).isFalse();
    assertThat(new Since(-2, -2, 0).isEarlier()).isTrue();
  }
}
