package leat.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leat.check.Designs;
import leat.check.Subject;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;

/**
 * One guess moved to its ends, and what a measure does.
 *
 * @param guess the guess
 * @param measure the measure
 * @param atLow value with the guess at its low end, base unit; NaN for unknown
 * @param asIs value of the plan as it is
 * @param atHigh value with the guess at its high end
 */
public record Nudge(Guess guess, Measure measure, double atLow, double asIs, double atHigh) {
  /** A share of the value under which a move is the solver's rounding. */
  private static final double STILL = 1e-9;

  /** Every guess to its two ends, the one that moves its measure most first. */
  public static List<Nudge> of(Plan plan, List<Measure> measures) {
    List<Nudge> all = new ArrayList<>();
    List<Guess> guesses = Guess.of(plan);
    for (Measure measure : measures) {
      double asIs = measure.known(new Subject(plan));
      for (Guess guess : guesses) {
        Designs designs = new Designs(plan, guess.path());
        all.add(
            new Nudge(
                guess,
                measure,
                at(designs, guess.low(), measure),
                asIs,
                at(designs, guess.high(), measure)));
      }
    }
    all.sort(
        Comparator.comparing((Nudge n) -> measures.indexOf(n.measure()))
            .thenComparing(n -> -n.swing()));
    return all;
  }

  private static double at(Designs designs, double number, Measure measure) {
    try {
      return measure.known(designs.with(number));
    } catch (Refused | Impossible e) {
      // the end of the guess is no design: no value there
      return Double.NaN;
    }
  }

  /** Whether the guess does not move the measure, or its ends are not known. */
  public boolean isStill() {
    double scale = Math.max(Math.abs(asIs), Math.max(Math.abs(atLow), Math.abs(atHigh)));
    return !(swing() > STILL * scale) || Double.isNaN(asIs);
  }

  /** How far the measure moves, in its base unit; 0 where it is not known. */
  public double swing() {
    double swing = Math.abs(atHigh - atLow);
    return Double.isNaN(swing) ? 0 : swing;
  }

  /** The nudge that moves its measure most against what it is; -1 when none moves any. */
  public static int mostMoved(List<Nudge> all) {
    int most = -1;
    double widest = 0;
    for (int i = 0; i < all.size(); i++) {
      double share = all.get(i).swing() / Math.max(Math.abs(all.get(i).asIs()), 1e-12);
      if (share > widest && !all.get(i).isStill()) {
        widest = share;
        most = i;
      }
    }
    return most;
  }
}
