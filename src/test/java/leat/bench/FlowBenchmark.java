package leat.bench;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leat.check.Designs;
import leat.check.Rule;
import leat.check.Rules;
import leat.check.Subject;
import leat.hydraulics.PipeSection;
import leat.hydraulics.Water;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Taken;
import leat.sweep.Axis;
import leat.sweep.Grid;
import leat.sweep.Judge;
import leat.sweep.Line;
import leat.sweep.Measure;
import leat.sweep.Measures;
import leat.system.PipeOf;
import leat.system.Waterway;

/**
 * Flow and margin alone of many bores of a plan's one riser, written down for bench-designs.py to
 * do again; and all rules on one thread and on two. Run by scripts/bench-designs.
 */
public final class FlowBenchmark {
  private static final String BORE = "towers[*].riser.bore";
  private static final double NARROW = 0.009;
  private static final double WIDE = 0.018;
  private static final int WRITTEN = 20_000;

  private static final com.sun.management.OperatingSystemMXBean PROCESSOR =
      (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private final File file;
  private final int n;
  private final int rounds;

  private FlowBenchmark(String file, int n, int rounds) {
    this.file = new File(file);
    this.n = n;
    this.rounds = rounds;
  }

  /** A plan, a file for the designs, how many a round, how many rounds. */
  public static void main(String[] args) throws IOException {
    FlowBenchmark all =
        new FlowBenchmark(args[0], Integer.parseInt(args[2]), Integer.parseInt(args[3]));
    all.flows(Path.of(args[1]));
    all.threads();
  }

  private Plan plan() {
    return PlanFile.read(file.getName(), file, null).read();
  }

  private double bore(int i, int of) {
    return NARROW + (WIDE - NARROW) * i / of;
  }

  private void flows(Path designsFile) throws IOException {
    Plan plan = plan();
    Designs designs = new Designs(plan, BORE);
    Measure flow = Measures.find("flow_low_L_min");
    Measure margin = Measures.find("margin_m");
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long best = Long.MAX_VALUE;
    double sum = 0;
    for (int round = 0; round < rounds; round++) {
      long start = clock.getCurrentThreadCpuTime();
      for (int i = 0; i < n; i++) {
        Subject subject = designs.with(bore(i, n));
        sum += flow.known(subject) + margin.known(subject);
      }
      best = Math.min(best, clock.getCurrentThreadCpuTime() - start);
    }
    try (PrintWriter out = new PrintWriter(designsFile.toFile(), StandardCharsets.UTF_8)) {
      constants(out, plan, designs.with(NARROW), n * 1e9 / best);
      for (int i = 0; i < WRITTEN; i++) {
        Subject subject = designs.with(bore(i, WRITTEN));
        out.println(bore(i, WRITTEN) + "," + flow.known(subject) + "," + margin.known(subject));
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%8.0f %-2s  %-54s  mean of both %.6g%n",
        n * 1e9 / best,
        "/s",
        "designs of " + file.getName() + ", flow and margin alone",
        sum / rounds / n);
  }

  /** What the other program is told: the plan's numbers, not its models. */
  private static void constants(PrintWriter out, Plan plan, Subject subject, double rate) {
    leat.plan.Section riser = plan.root().sections("towers").get(0).section("riser");
    PipeSection pipe =
        new PipeSection(
            riser.need("length"),
            riser.need("bore"),
            PipeOf.roughness(riser, new Taken()),
            Waterway.fittingsK(plan, riser, true, new Taken()));
    double lift =
        plan.root().sections("towers").get(0).need("outlet") - plan.section("tank").need("low");
    out.println(
        String.join(
            ",",
            String.valueOf(rate),
            String.valueOf(plan.section("pump").need("shutoff_head") * subject.believed().share()),
            String.valueOf(plan.section("pump").need("max_flow")),
            String.valueOf(lift),
            String.valueOf(pipe.length()),
            String.valueOf(pipe.roughness()),
            String.valueOf(pipe.fittingsK()),
            String.valueOf(Water.density(Water.USUAL_CELSIUS)),
            String.valueOf(Water.viscosity(Water.USUAL_CELSIUS))));
  }

  private void threads() {
    double[] rates = new double[2];
    double[] costs = {Double.MAX_VALUE, Double.MAX_VALUE};
    for (int round = 0; round < rounds; round++) {
      for (int jobs = 1; jobs <= 2; jobs++) {
        long before = PROCESSOR.getProcessCpuTime();
        rates[jobs - 1] = Math.max(rates[jobs - 1], rate(jobs));
        costs[jobs - 1] = Math.min(costs[jobs - 1], PROCESSOR.getProcessCpuTime() - before);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%8.2f %-2s  %-54s  one; %.0f /s, then %.0f /s by the clock; processor time a design %.2f times%n",
        rates[1] / rates[0],
        "x",
        "designs of " + file.getName() + ", two threads",
        rates[0],
        rates[1],
        costs[1] / costs[0]);
  }

  private double rate(int jobs) {
    Rule[] rules = Rules.all();
    Plan first = plan();
    Grid grid = Grid.sample(List.of(Axis.of(first, BORE, "9..18 mm")), 2L * n, 1, true);
    List<Judge> judges = new ArrayList<>();
    for (int j = 0; j < jobs; j++) {
      Plan own = plan();
      judges.add(new Judge(() -> own, grid, rules, List.of()));
    }
    long start = System.nanoTime();
    long[] seen = {0};
    new Line(grid, judges).run(0, grid.size(), one -> seen[0] += one.passes() > 0 ? 1 : 0);
    if (seen[0] != grid.size()) {
      throw new AssertionError(seen[0] + " of " + grid.size());
    }
    return grid.size() * 1e9 / (System.nanoTime() - start);
  }
}
