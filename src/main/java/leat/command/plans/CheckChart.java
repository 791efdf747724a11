package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.check.Finding;
import leat.check.Verdict;

/** How far each finding lies from its limit, the worst first. */
final class CheckChart {
  /** Longer bars are cut here: a limit passed ten times over tells no more. */
  private static final double LONGEST = 1;

  private static final Verdict[] DRAWN = {Verdict.FAIL, Verdict.WARN, Verdict.PASS};

  private static final String[] TONES = {"bad", "doubt", "good"};

  private static final String[] LABELS = {"fails", "warns", "passes"};

  private CheckChart() {}

  static Chart of(JudgedPlan plan, boolean named) {
    List<Finding> shown = shown(plan);
    String[] names = new String[shown.size()];
    Phrase[] words = new Phrase[names.length];
    for (int i = 0; i < names.length; i++) {
      names[i] = name(plan, shown.get(i));
      words[i] = words(plan, shown.get(i));
    }
    Chart chart =
        Chart.of(
            (named ? plan.name + ": how" : "How")
                + " far each rule is from its limit, cut at 100 %",
            Axis.names("rule", names),
            Axis.of("on the good side of the limit", Show.PERCENT));
    for (int v = 0; v < DRAWN.length; v++) {
      bars(chart, shown, v, words);
    }
    return chart.limit("limit", 0);
  }

  private static List<Finding> shown(JudgedPlan plan) {
    List<Finding> shown = new ArrayList<>();
    for (Verdict verdict : DRAWN) {
      for (Finding finding : plan.found) {
        if (finding.verdict() == verdict && !Double.isNaN(finding.margin())) {
          shown.add(finding);
        }
      }
    }
    return shown;
  }

  private static String name(JudgedPlan plan, Finding finding) {
    String part = finding.rule().part(plan.subject, finding);
    String word = finding.verdict() == Verdict.FAIL ? "FAIL" : finding.verdict().word();
    return word + " " + finding.rule().id() + (part == null ? "" : ", " + part);
  }

  private static Phrase words(JudgedPlan plan, Finding finding) {
    return CheckWords.value(plan, finding)
        .add(", " + finding.rule().need() + " ")
        .add(finding.limit(), finding.rule().show());
  }

  private static void bars(Chart chart, List<Finding> shown, int v, Phrase[] words) {
    double[] margins = new double[shown.size()];
    boolean any = false;
    for (int i = 0; i < margins.length; i++) {
      boolean is = shown.get(i).verdict() == DRAWN[v];
      double margin = Math.max(-LONGEST, Math.min(LONGEST, shown.get(i).margin()));
      margins[i] = is ? margin : Double.NaN;
      any |= is;
    }
    if (any) {
      chart.bars(LABELS[v], margins, words).tone(TONES[v]);
    }
  }
}
