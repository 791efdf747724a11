package leat.bench;

import java.io.File;
import java.util.List;
import leat.check.Finding;
import leat.check.Rules;
import leat.check.Subject;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Slot;

public final class DesignsBenchmark {
  public static void main(String[] args) {
    Plan plan = PlanFile.read(args[0], new File("examples/" + args[0]), null).read();
    Slot slot = plan.slot("towers[*].riser.bore");
    long bind = 0;
    long solve = 0;
    long judge = 0;
    for (int round = 0; round < 6; round++) {
      int n = 20000;
      bind = solve = judge = 0;
      int findings = 0;
      for (int i = 0; i < n; i++) {
        long a = System.nanoTime();
        Plan design = plan.with(slot, 0.009 + 0.009 * i / n);
        long b = System.nanoTime();
        Subject subject = new Subject(design);
        subject.flowsLow();
        subject.flowsFull();
        long c = System.nanoTime();
        List<Finding> found = Rules.judge(subject);
        findings += found.size();
        long d = System.nanoTime();
        bind += b - a;
        solve += c - b;
        judge += d - c;
      }
      double all = bind + solve + judge;
      System.out.printf(
          "%s %.0f/s bind %.1f us solve %.1f us judge %.1f us  %d%n",
          args[0], n / all * 1e9, bind / 1e3 / n, solve / 1e3 / n, judge / 1e3 / n, findings);
    }
  }
}
