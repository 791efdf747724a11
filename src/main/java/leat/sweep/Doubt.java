package leat.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leat.check.Designs;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.check.Verdict;
import leat.numeric.Impossible;
import leat.plan.Plan;
import leat.plan.Refused;

/**
 * How sure a rule's verdict is when all guesses are drawn together.
 *
 * @param rule the rule
 * @param share of the draws in which it passes, of those in which it is judged; NaN when never
 * @param hangsOn the guess that its passing goes with most; null when it always or never passes
 */
public record Doubt(Rule rule, double share, Guess hangsOn) {
  /** Draws of all guesses, evenly between their ends; the same seed gives the same answer. */
  public static List<Doubt> of(Plan plan, List<Guess> guesses, Rule[] rules, int draws, long seed) {
    String[] paths = new String[guesses.size()];
    for (int g = 0; g < paths.length; g++) {
      paths[g] = guesses.get(g).path();
    }
    Designs designs = new Designs(plan, paths);
    Map<String, Tally> tallies = new TreeMap<>();
    long state = seed;
    for (int d = 0; d < draws; d++) {
      double[] at = new double[paths.length];
      double[] numbers = new double[paths.length];
      for (int g = 0; g < paths.length; g++) {
        state += Grid.GOLDEN;
        at[g] = Grid.unit(state);
        numbers[g] = guesses.get(g).low() + at[g] * (guesses.get(g).high() - guesses.get(g).low());
      }
      count(designs, numbers, at, rules, tallies);
    }
    List<Doubt> all = new ArrayList<>();
    for (Rule rule : rules) {
      Tally tally = tallies.get(rule.id());
      if (tally != null) {
        int most = tally.most();
        all.add(new Doubt(rule, tally.share(), most < 0 ? null : guesses.get(most)));
      }
    }
    return all;
  }

  private static void count(
      Designs designs, double[] numbers, double[] at, Rule[] rules, Map<String, Tally> tallies) {
    Subject subject;
    try {
      subject = designs.with(numbers);
    } catch (Refused | Impossible e) {
      // draws that are no design are judged by no rule
      return;
    }
    Map<String, Verdict> worst = new TreeMap<>();
    for (Finding finding : Rules.judge(subject, rules)) {
      worst.merge(
          finding.rule().id(), finding.verdict(), (a, b) -> a.ordinal() <= b.ordinal() ? a : b);
    }
    worst.forEach(
        (id, verdict) -> {
          if (verdict != Verdict.UNKNOWN && verdict != Verdict.OFF) {
            tallies.computeIfAbsent(id, k -> new Tally(at.length)).add(verdict == Verdict.PASS, at);
          }
        });
  }

  /** Sums of one rule, for its share and for the correlation of its passing with each guess. */
  private static final class Tally {
    private long n;
    private long passed;
    private final double[] sum;
    private final double[] squares;
    private final double[] sumPassed;

    Tally(int guesses) {
      sum = new double[guesses];
      squares = new double[guesses];
      sumPassed = new double[guesses];
    }

    void add(boolean passes, double[] at) {
      n++;
      passed += passes ? 1 : 0;
      for (int g = 0; g < at.length; g++) {
        sum[g] += at[g];
        squares[g] += at[g] * at[g];
        sumPassed[g] += passes ? at[g] : 0;
      }
    }

    double share() {
      return n == 0 ? Double.NaN : (double) passed / n;
    }

    /** The guess of the strongest correlation; -1 when the rule always or never passes. */
    int most() {
      int most = -1;
      double strongest = 0;
      for (int g = 0; passed > 0 && passed < n && g < sum.length; g++) {
        double covariance = sumPassed[g] / n - share() * sum[g] / n;
        double spread = squares[g] / n - sum[g] / n * sum[g] / n;
        double strength = spread > 0 ? covariance * covariance / spread : 0;
        if (strength > strongest) {
          strongest = strength;
          most = g;
        }
      }
      return most;
    }
  }
}
