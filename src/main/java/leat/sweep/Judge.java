package leat.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
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
 * Judges and measures designs of one plan, for one thread. Texts are laid over and bound once for
 * each combination of them; numbers are laid over what is bound.
 */
public final class Judge {
  private static final int KEPT = 64;

  private final Supplier<Plan> written;
  private final Grid grid;
  private final Rule[] rules;
  private final List<Measure> measures;
  private final String[] numberPaths;
  private Plan base;

  /** The plan, where no text is laid over it. */
  private Bound only;

  private final Map<String, Bound> bound =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bound> eldest) {
          return size() > KEPT;
        }
      };

  private record Bound(Designs designs, String refused) {}

  /**
   * A judge.
   *
   * @param written reads the plan as it is varied from; read once, by this judge alone
   * @param grid the designs
   * @param rules the rules that are judged
   * @param measures the numbers that are wanted
   */
  public Judge(Supplier<Plan> written, Grid grid, Rule[] rules, List<Measure> measures) {
    this.written = written;
    this.grid = grid;
    this.rules = rules.clone();
    this.measures = measures;
    List<String> paths = new ArrayList<>();
    for (Axis axis : grid.axes()) {
      if (axis.isNumber()) {
        paths.add(axis.path());
      }
    }
    this.numberPaths = paths.toArray(new String[0]);
  }

  /** Why a measure of a design is not known; null when it is, or when it has none. */
  public String why(Design design, Measure measure) {
    Bound plan = bound(design);
    return plan.refused() != null
        ? plan.refused()
        : measure.why(plan.designs().with(numbers(design)));
  }

  private double[] numbers(Design design) {
    double[] numbers = new double[numberPaths.length];
    int n = 0;
    for (int i = 0; i < design.numbers().length; i++) {
      if (grid.axes().get(i).isNumber()) {
        numbers[n++] = design.numbers()[i];
      }
    }
    return numbers;
  }

  /** One design. */
  public Judged judge(Design design) {
    Bound plan = bound(design);
    if (plan.refused() != null) {
      return refused(design, plan.refused());
    }
    try {
      return judged(design, plan.designs().with(numbers(design)));
    } catch (Refused e) {
      return refused(design, said(e));
    } catch (Impossible e) {
      return refused(design, e.quantity() + ": " + e.getMessage());
    }
  }

  private static String said(Refused e) {
    return e.problems().get(0).path() + ": " + e.problems().get(0).message();
  }

  private Judged refused(Design design, String why) {
    double[] nothing = new double[measures.size()];
    Arrays.fill(nothing, Double.NaN);
    return new Judged(design, 0, 0, 0, 0, null, nothing, why);
  }

  private Judged judged(Design design, Subject subject) {
    int[] counts = new int[Verdict.size()];
    Rule worst = null;
    Verdict worstVerdict = Verdict.PASS;
    if (rules.length > 0) {
      for (Finding finding : Rules.judge(subject, rules)) {
        counts[finding.verdict().ordinal()]++;
        if (finding.verdict().ordinal() < worstVerdict.ordinal()) {
          worst = finding.rule();
          worstVerdict = finding.verdict();
        }
      }
    }
    return new Judged(
        design,
        counts[Verdict.PASS.ordinal()],
        counts[Verdict.FAIL.ordinal()],
        counts[Verdict.WARN.ordinal()],
        counts[Verdict.UNKNOWN.ordinal()],
        worst,
        measured(subject),
        null);
  }

  private double[] measured(Subject subject) {
    double[] values = new double[measures.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = measures.get(i).known(subject);
    }
    return values;
  }

  /** The plan with a design's texts laid over. */
  private Bound bound(Design design) {
    if (numberPaths.length == grid.axes().size()) {
      only = only == null ? bind(design) : only;
      return only;
    }
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < design.at().length; i++) {
      if (!grid.axes().get(i).isNumber()) {
        key.append(design.at()[i]).append(' ');
      }
    }
    return bound.computeIfAbsent(key.toString(), k -> bind(design));
  }

  private Bound bind(Design design) {
    if (base == null) {
      base = written.get();
    }
    try {
      Plan plan = base;
      for (int i = 0; i < design.at().length; i++) {
        Axis axis = grid.axes().get(i);
        if (!axis.isNumber()) {
          plan = plan.with(axis.path(), axis.value(design.at()[i]));
        }
      }
      return new Bound(new Designs(plan, numberPaths), null);
    } catch (Refused e) {
      return new Bound(null, said(e));
    } catch (Impossible e) {
      return new Bound(null, e.quantity() + ": " + e.getMessage());
    }
  }
}
