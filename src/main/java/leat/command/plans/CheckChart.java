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

  private CheckChart() {}

  static Chart of(JudgedPlan plan, boolean named) {
    List<Finding> shown = new ArrayList<>();
    for (Verdict verdict : DRAWN) {
      for (Finding finding : plan.found) {
        if (finding.verdict() == verdict && !Double.isNaN(finding.margin())) {
          shown.add(finding);
        }
      }
    }
    String[] names = new String[shown.size()];
    Phrase[] words = new Phrase[names.length];
    for (int i = 0; i < names.length; i++) {
      Finding finding = shown.get(i);
      String part = finding.rule().part(plan.subject, finding);
      String word = finding.verdict() == Verdict.FAIL ? "FAIL" : finding.verdict().word();
      names[i] = word + " " + finding.rule().id() + (part == null ? "" : ", " + part);
      words[i] =
          CheckWords.value(plan, finding)
              .add(", " + finding.rule().need() + " ")
              .add(finding.limit(), finding.rule().show());
    }
    Chart chart =
        Chart.of(
            (named ? plan.name + ": how" : "How")
                + " far each rule is from its limit, cut at 100 %",
            Axis.names("rule", names),
            Axis.of("on the good side of the limit", Show.PERCENT));
    String[] labels = {"fails", "warns", "passes"};
    for (int v = 0; v < DRAWN.length; v++) {
      double[] margins = new double[names.length];
      boolean any = false;
      for (int i = 0; i < names.length; i++) {
        boolean is = shown.get(i).verdict() == DRAWN[v];
        double margin = Math.max(-LONGEST, Math.min(LONGEST, shown.get(i).margin()));
        margins[i] = is ? margin : Double.NaN;
        any |= is;
      }
      if (any) {
        chart.bars(labels[v], margins, words).tone(TONES[v]);
      }
    }
    return chart.limit("limit", 0);
  }
}
