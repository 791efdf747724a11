package leat.bench;

import java.io.File;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;
import leat.check.Designs;
import leat.check.Finding;
import leat.check.Rules;
import leat.check.Subject;
import leat.plan.Plan;
import leat.plan.PlanFile;

/**
 * Designs a second: a plan bound once, the bore of its risers varied, all rules judged, no advice.
 * Processor time of one thread; one design in a thousand is held against a fresh reading of the
 * plan's text. Run by scripts/bench-designs.
 */
public final class DesignsBenchmark {
  private static final String BORE = "towers[*].riser.bore";
  private static final double NARROW = 0.009;
  private static final double WIDE = 0.018;
  private static final int A_THOUSAND = 1000;

  private final Plan plan;
  private final String name;
  private final Designs designs;
  private final ThreadMXBean clock = ManagementFactory.getThreadMXBean();
  private int checked;

  private DesignsBenchmark(String file) {
    this.name = new File(file).getName();
    this.plan = PlanFile.read(name, new File(file), null).read();
    this.designs = new Designs(plan, BORE);
  }

  /** Plans, then how many designs a round, then how many rounds. */
  public static void main(String[] args) {
    int designs = Integer.parseInt(args[args.length - 2]);
    int rounds = Integer.parseInt(args[args.length - 1]);
    for (int i = 0; i < args.length - 2; i++) {
      new DesignsBenchmark(args[i]).run(designs, rounds);
    }
  }

  private void run(int n, int rounds) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < rounds; round++) {
      long start = clock.getCurrentThreadCpuTime();
      for (int i = 0; i < n; i++) {
        Rules.judge(designs.with(bore(i, n)));
      }
      best = Math.min(best, clock.getCurrentThreadCpuTime() - start);
    }
    for (int i = 0; i < n; i += A_THOUSAND) {
      compare(bore(i, n));
    }
    long[] shares = shares(n);
    long all = shares[0] + shares[1] + shares[2];
    System.out.printf(
        Locale.ROOT,
        "%8.0f %-2s  %-54s  binding %.0f %%, solving %.0f %%, judging %.0f %%; %d compared with a fresh check%n",
        n * 1e9 / best,
        "/s",
        "designs of " + name + ", every rule",
        100.0 * shares[0] / all,
        100.0 * shares[1] / all,
        100.0 * shares[2] / all,
        checked);
  }

  private static double bore(int i, int n) {
    return NARROW + (WIDE - NARROW) * i / n;
  }

  private long[] shares(int n) {
    long[] nanos = new long[3];
    for (int i = 0; i < n; i++) {
      long a = System.nanoTime();
      Subject subject = designs.with(bore(i, n));
      long b = System.nanoTime();
      subject.flowsLow();
      subject.flowsFull();
      long c = System.nanoTime();
      Rules.judge(subject);
      nanos[0] += b - a;
      nanos[1] += c - b;
      nanos[2] += System.nanoTime() - c;
    }
    return nanos;
  }

  private void compare(double bore) {
    List<Finding> laid = Rules.judge(designs.with(bore));
    List<Finding> fresh = Rules.judge(new Subject(plan.with(BORE, 1000 * bore + " mm")));
    if (laid.size() != fresh.size()) {
      throw new AssertionError(bore + ": " + laid.size() + " findings, fresh " + fresh.size());
    }
    for (int i = 0; i < laid.size(); i++) {
      Finding a = laid.get(i);
      Finding b = fresh.get(i);
      boolean same =
          a.rule() == b.rule()
              && a.verdict() == b.verdict()
              && a.part() == b.part()
              && near(a.value(), b.value())
              && near(a.limit(), b.limit());
      if (!same) {
        throw new AssertionError(bore + ": " + a.rule().id() + " " + a.value() + ", " + b.value());
      }
    }
    checked++;
  }

  /** The bore read as text may differ in its last digit. */
  private static boolean near(double a, double b) {
    return Double.isNaN(a) && Double.isNaN(b) || Math.abs(a - b) <= 1e-9 * (1 + Math.abs(a));
  }
}
