package leat.energy;

import static leat.energy.DutyTest.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SuggestionTest {
  private static final LeastRun LEAST = new LeastRun(2.52, 7.78, 20);
  private static final Draw DRAW = new Draw(22, 1.2, 0.4, Coil.WHILE_RUNNING);
  private static final int H = 3600;

  @Test
  void theLeastEnergyRunsShortAndRestsLong() {
    Suggestion s = Suggestion.of(LEAST, LongestRest.of(1800), DRAW, 0);
    assertThat(s.timing().runS()).isEqualTo(31);
    assertThat(s.timing().restS()).isEqualTo(1800);
    assertThat(s.runBound()).isEqualTo(Suggestion.RunBound.LEAST_RUN);
    assertThat(s.restBound()).isEqualTo(LongestRest.Bound.DRY_LIMIT);
    assertThat(s.meanW()).isCloseTo(1.2 + 22.4 * 31 / 1831, within(1e-12));
  }

  @Test
  void thePlugsWaterOrTheStartsMayBind() {
    Suggestion s = Suggestion.of(LEAST, LongestRest.of(1800, 864.7), DRAW, 900);
    assertThat(s.timing().restS()).isEqualTo(864);
    assertThat(s.timing().runS()).isEqualTo(36);
    assertThat(s.restBound()).isEqualTo(LongestRest.Bound.PLUG_WATER);
    assertThat(s.runBound()).isEqualTo(Suggestion.RunBound.LEAST_CYCLE);
  }

  @Test
  void aRestUnderASecondIsNone() {
    Suggestion s = Suggestion.of(LEAST, LongestRest.of(0.5), DRAW, 0);
    assertThat(s.timing().withoutPause()).isTrue();
    assertThat(s.restBound()).isEqualTo(LongestRest.Bound.DRY_LIMIT);
  }

  @Test
  void cyclesForStarts() {
    assertThat(Suggestion.cycleForStarts(4)).isEqualTo(900);
    refused("starts an hour", () -> Suggestion.cycleForStarts(0));
    refused("least cycle", () -> Suggestion.of(LEAST, LongestRest.of(1800), DRAW, -1));
  }

  /** Every whole second within the bounds is tried; none takes less. */
  @Property(tries = 150)
  void nothingWithinTheBoundsTakesLess(
      @ForAll @DoubleRange(min = 0, max = 30) double fill,
      @ForAll @DoubleRange(min = 0, max = 30) double wetting,
      @ForAll @DoubleRange(min = 0.5, max = 200) double rest,
      @ForAll @IntRange(min = 0, max = 260) int leastCycle,
      @ForAll @DoubleRange(min = 0, max = 30) double pumpW,
      @ForAll @DoubleRange(min = 0, max = 5) double coilW,
      @ForAll @IntRange(min = 0, max = 2) int coil) {
    LeastRun least = new LeastRun(fill, 0.1, wetting);
    LongestRest longest = LongestRest.of(rest);
    Draw draw = new Draw(pumpW, 1, coilW, Coil.values()[coil]);
    Suggestion s = Suggestion.of(least, longest, draw, leastCycle);
    assertThat(least.coveredBy(s.timing())).isTrue();
    assertThat(longest.allows(s.timing())).isTrue();
    double best = draw.meanW(1); // without pause is always allowed, and starts nothing
    for (int on = 1; on <= 400; on++) {
      for (int off = 1; off <= 200; off++) {
        // rounding dust on a whole second is no second more, as in Suggestion
        if (on >= least.seconds() - Suggestion.WHOLE_S
            && off <= rest + Suggestion.WHOLE_S
            && on + off >= leastCycle) {
          best = Math.min(best, draw.meanW(on / (double) (on + off)));
        }
      }
    }
    assertThat(s.meanW()).isCloseTo(best, within(1e-12 * best));
    assertThat(draw.meanW(s.timing().share())).isCloseTo(s.meanW(), within(1e-12));
    assertThat(s.timing().withoutPause() || s.timing().cycleS() >= leastCycle).isTrue();
    assertThat(s.timing().runS()).isEqualTo(Math.rint(s.timing().runS()));
    if (s.runBound() == Suggestion.RunBound.LEAST_CYCLE) {
      assertThat(least.coveredBy(new Timing(s.timing().runS() - 1, 1))).isTrue();
      assertThat(s.timing().cycleS() - 1).isLessThan(leastCycle);
    } else if (s.runBound() == Suggestion.RunBound.LEAST_RUN) {
      assertThat(s.timing().runS()).isEqualTo(Math.max(1, least.wholeSeconds()));
    } else {
      assertThat(draw.meanW(1)).isLessThan(draw.meanW(0));
    }
    assertThat(s.timing().restS()).isEqualTo(Math.rint(s.timing().restS()));
  }

  @Test
  void timingsAreHeldAgainstDayAndNight() {
    Timetable plan =
        new Timetable(
            new Window[] {
              Window.always(),
              Window.between(22 * H, 6 * H),
              Cells.months(Window.between(11 * H, 17 * H), 6, 8)
            },
            new Timing[] {new Timing(90, 720), new Timing(20, 3000), new Timing(120, 2000)});
    ZoneId zone = ZoneId.of("Europe/Vienna");
    LongestRest day = LongestRest.of(1800);
    LongestRest night = LongestRest.of(3600);
    EntryBounds[] may =
        EntryBounds.of(
            plan,
            Dates.of(LocalDate.of(2027, 5, 12), 1, zone),
            DryLimit.usualNight(),
            LEAST,
            day,
            night);
    assertThat(may).hasSize(2);
    assertThat(may[0].byDay()).isTrue();
    assertThat(may[0].runCovers()).isTrue();
    assertThat(may[0].restWithin()).isTrue();
    assertThat(may[0].dayS()).isEqualTo(16 * H);
    assertThat(may[0].nightS()).isZero();
    assertThat(may[1].byDay()).isFalse();
    assertThat(may[1].runCovers()).isFalse();
    assertThat(may[1].longestRestS()).isEqualTo(3600);
    assertThat(may[1].restWithin()).isTrue();
    EntryBounds[] july =
        EntryBounds.of(
            plan,
            Dates.of(LocalDate.of(2027, 7, 12), 1, zone),
            Window.between(22 * H, 5 * H),
            LEAST,
            day,
            night);
    assertThat(july[1].byDay()).as("an hour of it is day").isTrue();
    assertThat(july[1].restWithin()).isFalse();
    assertThat(july[2].entry()).isEqualTo(2);
    assertThat(july[2].restWithin()).isFalse();
  }

  @Test
  void candidatesTradeWearForEnergy() {
    Suggestion s = Suggestion.of(LEAST, LongestRest.of(1800), DRAW, 0);
    Timing[] all = TradeOff.candidates(s);
    assertThat(all).hasSize(5);
    Motor motor = Cells.mains(22, 230);
    double[] days = new double[all.length];
    for (int i = 0; i < all.length; i++) {
      Duty duty = Duty.of(all[i], DRAW, 1e-7, 0, 0, 180);
      days[i] =
          RelayLife.of(motor, Contact.of(10, 1e5), duty.startsTotal(), 180).days().getAsDouble();
      assertThat(LEAST.coveredBy(all[i])).isTrue();
      assertThat(LongestRest.of(1800).allows(all[i])).isTrue();
      assertThat(duty.totalJ())
          .isGreaterThanOrEqualTo(Duty.of(all[0], DRAW, 1e-7, 0, 0, 180).totalJ());
    }
    assertThat(days[2]).isGreaterThan(days[0]);
    assertThat(days[4]).isLessThan(days[0]);
    assertThat(TradeOff.candidates(Suggestion.of(LEAST, LongestRest.of(0.5), DRAW, 0))).hasSize(1);
  }
}
