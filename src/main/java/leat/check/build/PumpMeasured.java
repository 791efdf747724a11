package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Derate;

/** The pump was measured with a bucket and a watch. */
final class PumpMeasured extends DeclaredRule {
  PumpMeasured() {
    super(
        "pump-measured",
        MEASURED,
        Show.PERCENT,
        null,
        PRACTICE,
        ReadKeys.HEAD,
        "Whether the share of the printed head is measured or still a guess. Printed curves are optimistic by 15 to 30 %.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Derate believed = subject.waterway().believed();
    switch (believed.kind()) {
      case MEASURED:
        return List.of(Finding.valueOnly(this, Verdict.PASS, believed.share()));
      case NAMED:
      case NOT_NAMED:
        return List.of(Finding.valueOnly(this, Verdict.WARN, believed.shareForVerdict()));
      default:
        return List.of(Finding.words(this, Verdict.FAIL, believed.kind().ordinal()));
    }
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return subject.believed().kind().word();
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    if (finding.verdict() == Verdict.WARN) {
      return Advice.of("a bucket and a watch: the last line of leat pump says how");
    }
    return Advice.of(
        subject.believed().kind() == Derate.Kind.OVER_100
            ? "lift, bore, K or the bucket is wrong; measure again"
            : "pump.measured cannot be explained by this curve; measure again");
  }
}
