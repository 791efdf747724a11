package leat.check.build;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.MeasuredDerate;
import leat.system.Waterway;

/** The pump was measured with a bucket and a watch. */
final class PumpMeasured extends DeclaredRule {
  PumpMeasured() {
    super(
        "pump-measured",
        MEASURED,
        Show.PERCENT,
        null,
        PRACTICE,
        "pump towers pipe tank.full",
        "Whether the share of the printed head is measured or still a guess. Printed curves are optimistic by 15 to 30 %.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Waterway way = subject.waterway();
    MeasuredDerate measured = way.believed().measured();
    if (measured == null) {
      return List.of(Finding.valueOnly(this, Verdict.WARN, way.derate()));
    }
    return List.of(
        measured.status() == MeasuredDerate.Status.VALUE
            ? Finding.valueOnly(this, Verdict.PASS, way.derate())
            : Finding.words(this, Verdict.FAIL, measured.status().ordinal()));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return subject.waterway().believed().measured().status().word();
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    MeasuredDerate measured = subject.waterway().believed().measured();
    if (measured == null) {
      return Advice.of("a bucket and a watch: leat pump --plan ... --measured \"10 L in 65 s\"");
    }
    return Advice.of(
        measured.status() == MeasuredDerate.Status.OVER_100
            ? "lift, bore, K or the bucket is wrong; measure again"
            : "pump.measured cannot be explained by this curve; measure again");
  }
}
