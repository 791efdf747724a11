package leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Laws that hold for every season, by random seasons. */
class SeasonLawsTest {
  private static final double TARGET = 1.6;

  /** Random tanks and seasons; one seed, one season. */
  private static final class Drawn {
    final Random random;
    final TankPlan plan;
    final SeasonDays days;

    Drawn(long seed) {
      random = new Random(seed);
      double intake = 8 * random.nextDouble();
      double low = 20 * random.nextDouble();
      double full = low + 1 + 40 * random.nextDouble();
      Marks marks =
          new Marks(
              full, low, intake, full - 0.5 + 12 * random.nextDouble(), 3 * random.nextDouble());
      Refill[] refills = {Refill.AT_LOW, Refill.DAILY, Refill.every(4), Refill.NONE};
      Upkeep upkeep =
          new Upkeep(
              refills[random.nextInt(4)],
              random.nextBoolean() ? 1.2 : 0,
              random.nextBoolean() ? 1.9 : Upkeep.NEVER,
              random.nextBoolean() ? 5 + random.nextInt(30) : 0,
              random.nextBoolean() ? 0.5 + random.nextDouble() : Upkeep.NEVER);
      Feeding feeding = new Feeding(2 * random.nextDouble(), TARGET, 5, 1.9);
      RainCatch rain = new RainCatch(0.5 * random.nextDouble(), 0.9, 0.02);
      plan =
          TankPlan.filled(
              marks, feeding, rain, upkeep, new EcBand(1.2, 2), 3 * random.nextDouble());
      days = days(random, 1 + random.nextInt(150));
    }
  }

  private static SeasonDays days(Random random, int n) {
    SeasonDays days = home(random, n);
    int from = random.nextInt(n);
    return random.nextBoolean() ? days.away(from, from + random.nextInt(20)) : days;
  }

  private static SeasonDays home(Random random, int n) {
    double[] plants = new double[n];
    double[] open = new double[n];
    double[] rain = new double[n];
    for (int t = 0; t < n; t++) {
      plants[t] = random.nextInt(5) == 0 ? 0 : 9 * random.nextDouble();
      open[t] = random.nextDouble();
      rain[t] = random.nextInt(3) == 0 ? 40 * random.nextDouble() : 0;
    }
    return SeasonDays.of(plants, open, rain);
  }

  /**
   * Balances close by themselves in every run; here nothing may throw and the rows make the sums.
   */
  @Property(tries = 1500)
  void rowsAddUpToTheSums(@ForAll long seed) {
    Drawn d = new Drawn(seed);
    SeasonRun run = Season.run(d.plan, d.days, 1);
    Totals t = run.totals();
    assertThat(Season.totals(d.plan, d.days, 1)).isEqualTo(t);
    assertThat(run.days().stream().mapToDouble(DayRow::useL).sum())
        .isCloseTo(t.flows().waterUseL(), within(1e-9));
    assertThat(run.days().stream().mapToDouble(DayRow::waterL).sum())
        .isCloseTo(t.flows().waterL(), within(1e-9));
    assertThat(run.days().stream().mapToDouble(DayRow::thirstL).sum())
        .isCloseTo(t.flows().waterUseL() + t.flows().shortL(), within(1e-9));
    assertThat(run.days().stream().filter(DayRow::dry).count()).isEqualTo(t.counts().dryDays());
    assertThat(run.days().stream().filter(DayRow::awayDry).count())
        .isEqualTo(t.counts().awayDryDays());
    assertThat(run.days().stream().filter(r -> r.service() != Service.NONE).count())
        .isEqualTo(t.counts().services());
    for (DayRow row : run.days()) {
      assertThat(row.lowL()).isLessThanOrEqualTo(d.plan.marks().rimL() + 1e-9);
      assertThat(row.saltMsCmL()).isNotNegative();
    }
  }

  /** Ponds and thimbles, years of days: the closing check never cries wolf. */
  @Property(tries = 60)
  void balancesCloseAtAnySize(@ForAll long seed) {
    Random r = new Random(seed);
    double full = Math.pow(10, -2 + 7 * r.nextDouble());
    int n = 1 + r.nextInt(1500);
    double[] plants = new double[n];
    double[] open = new double[n];
    double[] rain = new double[n];
    for (int t = 0; t < n; t++) {
      plants[t] = full * r.nextDouble();
      open[t] = 0.1 * full * r.nextDouble();
      rain[t] = r.nextInt(3) == 0 ? 100 * r.nextDouble() : 0;
    }
    TankPlan plan =
        TankPlan.filled(
            new Marks(full, full * r.nextDouble(), 0.2 * full * r.nextDouble(), 1.1 * full, 0),
            new Feeding(r.nextDouble(), TARGET, 5, 1.9),
            new RainCatch(0.01 * full, 0.9, 0.02),
            new Upkeep(r.nextBoolean() ? Refill.DAILY : Refill.AT_LOW, 1.2, 1.9, 9, 2),
            EcBand.ANY,
            r.nextDouble());
    Totals t = Season.totals(plan, SeasonDays.of(plants, open, rain), 1.5);
    assertThat(t.evenings().volumeEndL()).isFinite();
    assertThat(t.evenings().saltEndMsCmL()).isFinite();
  }

  /** A season cut in two and joined is the season, to the last bit. */
  @Property(tries = 800)
  void cutAndJoined(@ForAll long seed, @ForAll @IntRange(max = 200) int at) {
    Drawn d = new Drawn(seed);
    List<DayRow> whole = Season.run(d.plan, d.days, 1).days();
    int cut = Math.min(at, d.days.length());
    TankState[] state = {TankState.start(d.plan)};
    List<DayRow> joined = new ArrayList<>();
    joined.addAll(part(d, state, 0, cut));
    joined.addAll(part(d, state, cut, d.days.length()));
    assertThat(joined).isEqualTo(whole);
  }

  private static List<DayRow> part(Drawn d, TankState[] state, int from, int to) {
    List<DayRow> rows = new ArrayList<>();
    for (int t = from; t < to; t++) {
      TankDay.Step step = TankDay.next(d.plan, state[0], DayInput.of(d.days, t));
      rows.add(step.row());
      state[0] = step.state();
    }
    return rows;
  }

  /**
   * Second route: one day drunk in sips while the towers run. The tank's own level is what the
   * towers leave in it; a sip that would take it under the intake finds no water.
   */
  @Property(tries = 300)
  void runningTowersLeaveLessToDrink(@ForAll long seed) {
    Random r = new Random(seed);
    double intake = 8 * r.nextDouble();
    double held = 5 * r.nextDouble();
    double start = 25 * r.nextDouble();
    double thirst = 15 * r.nextDouble();
    int sips = 20_000;
    double inTank = start - held;
    double drunk = 0;
    for (int i = 0; i < sips; i++) {
      double sip = thirst / sips;
      if (inTank - sip >= intake) {
        inTank -= sip;
        drunk += sip;
      }
    }
    TankPlan plan =
        new TankPlan(
            new Marks(30, 10, intake, 40, 0, held),
            new Feeding(0.3, TARGET, 5, 1.9),
            RainCatch.ROOFED,
            new Upkeep(Refill.NONE, 0, Upkeep.NEVER, 0, Upkeep.NEVER),
            EcBand.ANY,
            1.2,
            start,
            TARGET);
    DayRow day = Season.run(plan, one(thirst), 1).days().get(0);
    assertThat(day.useL()).isCloseTo(drunk, within(2 * thirst / sips + 1e-9));
    assertThat(day.volumeL() + day.useL()).isCloseTo(start, within(1e-9));
  }

  private static SeasonDays one(double plants) {
    return SeasonDays.of(new double[] {plants}, new double[] {0}, new double[] {0});
  }

  /** What the towers hold is not lost: as if the intake lay so many litres higher, day by day. */
  @Property(tries = 800)
  void heldWaterIsAnIntakeHigherUp(@ForAll long seed) {
    Drawn d = new Drawn(seed);
    Marks m = d.plan.marks();
    double held = 6 * new Random(seed + 1).nextDouble();
    Marks running = new Marks(m.fullL(), m.lowL(), m.intakeL(), m.rimL(), m.heelL(), held);
    Marks higher = new Marks(m.fullL(), m.lowL(), m.intakeL() + held, m.rimL(), m.heelL());
    assertThat(Season.run(with(d.plan, running), d.days, 1))
        .isEqualTo(Season.run(with(d.plan, higher), d.days, 1));
  }

  private static TankPlan with(TankPlan plan, Marks marks) {
    return TankPlan.filled(
        marks, plan.feeding(), plan.rain(), plan.upkeep(), plan.band(), plan.uptakeMsCm());
  }

  @Property(tries = 800)
  void ecOfAMixLiesBetweenItsParts(@ForAll long seed) {
    Random r = new Random(seed);
    double ec = 3 * r.nextDouble();
    double volume = 1 + 40 * r.nextDouble();
    double full = volume + 20 * r.nextDouble() + 0.1;
    double waterEc = 2 * r.nextDouble();
    double rainEc = 0.5 * r.nextDouble();
    TankPlan plan =
        new TankPlan(
            new Marks(full, 0, 0, full + 50, 0),
            new Feeding(waterEc, TARGET, 5, 1.9),
            new RainCatch(1, 1, rainEc),
            Upkeep.of(Refill.DAILY),
            EcBand.ANY,
            0,
            volume,
            ec);
    double mm = 10 * r.nextDouble();
    DayInput rain = new DayInput(0, 0, mm, Attendance.NOBODY);
    double rained = TankDay.next(plan, TankState.start(plan), rain).row().ecMsCm();
    assertThat(rained).isBetween(Math.min(ec, rainEc) - 1e-12, Math.max(ec, rainEc) + 1e-12);
    DayInput still = new DayInput(0, 0, 0, Attendance.USUAL);
    DayRow filled = TankDay.next(plan, TankState.start(plan), still).row();
    double strongest = Math.max(Math.max(ec, waterEc), 380);
    assertThat(filled.ecMsCm()).isBetween(Math.min(ec, waterEc) - 1e-12, strongest);
    if (filled.concentrateMl() > 0) {
      assertThat(filled.ecMsCm()).isCloseTo(TARGET, within(1e-9));
    } else {
      assertThat(filled.ecMsCm()).isLessThanOrEqualTo(Math.max(ec, waterEc) + 1e-12);
    }
  }

  /** Water whose salt is the target's: no concentrate, so volumes follow water alone. */
  private static TankPlan plainWater(Random r, Refill refill, double full, double rim) {
    return TankPlan.filled(
        new Marks(full, 10, 5, rim, 2),
        new Feeding(TARGET, TARGET, 5, 1.9),
        new RainCatch(0.3, 0.9, TARGET),
        Upkeep.of(refill),
        EcBand.ANY,
        0);
  }

  /** Where the days of filling do not hang on the volume. At the low mark they do: see below. */
  @Property(tries = 600)
  void moreRainNeverLowersTheOverflow(@ForAll long seed) {
    Random r = new Random(seed);
    Refill refill = r.nextBoolean() ? Refill.NONE : Refill.every(1 + r.nextInt(6));
    TankPlan plan = plainWater(r, refill, 30, 30 + 10 * r.nextDouble());
    SeasonDays days = home(r, 2 + r.nextInt(90));
    double[] plants = new double[days.length()];
    double[] open = new double[plants.length];
    double[] more = new double[plants.length];
    for (int t = 0; t < more.length; t++) {
      plants[t] = days.plantsL(t);
      open[t] = days.openL(t);
      more[t] = days.rainMm(t) + (r.nextInt(4) == 0 ? 30 * r.nextDouble() : 0);
    }
    SeasonDays wetter = SeasonDays.of(plants, open, more);
    if (r.nextBoolean()) {
      int from = r.nextInt(plants.length);
      days = days.away(from, from + 9);
      wetter = wetter.away(from, from + 9);
    }
    double before = Season.totals(plan, days, 1).flows().overflowL();
    double after = Season.totals(plan, wetter, 1).flows().overflowL();
    assertThat(after).isGreaterThanOrEqualTo(before - 1e-9);
  }

  @Property(tries = 600)
  void aLargerTankNeverHasMoreDryDays(@ForAll long seed) {
    Random r = new Random(seed);
    Refill refill = r.nextBoolean() ? Refill.NONE : Refill.every(1 + r.nextInt(9));
    TankPlan plan = plainWater(r, refill, 20, 25);
    SeasonDays days = days(r, 2 + r.nextInt(90));
    int small = Season.totals(plan, days, 1).counts().dryDays();
    int large = Season.totals(plan.tank(20 + 30 * r.nextDouble()), days, 1).counts().dryDays();
    assertThat(large).isLessThanOrEqualTo(small);
  }

  /** Topped up at low, no tank runs dry that keeps the hottest day's thirst under its low mark. */
  @Property(tries = 600)
  void enoughUnderTheLowMarkIsNeverDry(@ForAll long seed) {
    Random r = new Random(seed);
    SeasonDays days = days(r, 2 + r.nextInt(90)).home();
    double full = 12 + days.mostThirstL() + 30 * r.nextDouble();
    TankPlan plan = plainWater(r, Refill.AT_LOW, full, full + 3).low(5 + days.mostThirstL() + 1e-6);
    assertThat(Doubt.of(plan, days, 1)).isEmpty();
    assertThat(Season.totals(plan, days, 1).counts().dryDays()).isZero();
  }

  /**
   * Topped up at the low mark the day of filling hangs on the volume, so both laws have exceptions:
   * the larger tank is still a little above its mark when the hot day comes.
   */
  @Test
  void atTheLowMarkALargerTankMayBeDryInstead() {
    double[] plants = {10, 14, 0};
    SeasonDays days = SeasonDays.of(plants, new double[3], new double[3]);
    Random r = new Random(1);
    TankPlan small = plainWater(r, Refill.AT_LOW, 20, 30);
    assertThat(Season.totals(small, days, 1).counts().dryDays()).isZero();
    TankPlan larger = small.full(20.5);
    assertThat(Season.totals(larger, days, 1).counts().dryDays()).isEqualTo(1);
    assertThat(Doubt.of(small, days, 1)).contains(Doubt.RESERVE_UNDER_HOTTEST_DAY);
  }
}
