package leat.check.feed;

import java.util.List;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.solution.conductivity.MeterCheck;

/** The EC and pH meters were checked against standards. */
final class MetersChecked extends DeclaredRule {
  private static final int EC = 0;
  private static final int PH = 1;
  private static final int CHECKED = 0;
  private static final int NOT_CHECKED = 1;
  private static final int OFF = 2;

  MetersChecked() {
    super(
        "meters-checked",
        MEASURED,
        null,
        null,
        "over 10 % off clean or replace the probe: common practice",
        "meters.ec.slope meters.ec.checked meters.ph.offset meters.ph.checked",
        "Whether the meters were checked. A cheap EC meter is off by a tenth out of the box, a pH probe by half a unit after a dry winter; every dose hangs on them.");
  }

  private static Section meter(Subject subject, int part) {
    return subject.section("meters").section(part == EC ? "ec" : "ph");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Section ec = meter(subject, EC);
    int found = NOT_CHECKED;
    if (ec.has("slope")) {
      found = MeterCheck.isCorrectable(ec.need("slope")) ? CHECKED : OFF;
    }
    int ph = meter(subject, PH).has("offset") ? CHECKED : NOT_CHECKED;
    return List.of(finding(EC, found), finding(PH, ph));
  }

  private Finding finding(int meter, int saying) {
    Verdict verdict = saying == CHECKED ? Verdict.PASS : Verdict.WARN;
    return Finding.words(this, verdict, saying).at(meter);
  }

  @Override
  public String part(Subject subject, Finding finding) {
    return finding.part() == EC ? "EC" : "pH";
  }

  @Override
  public String place(Finding finding) {
    return finding.part() == EC ? "meters.ec" : "meters.ph";
  }

  @Override
  public String words(Subject subject, Finding finding) {
    if (finding.saying() != CHECKED) {
      return finding.saying() == OFF ? "over 10 % off" : "not checked";
    }
    Section meter = meter(subject, finding.part());
    return meter.has("checked") ? "checked " + meter.typed("checked") : "checked";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    if (finding.saying() == OFF) {
      return Advice.of("clean the probe, check again with fresh standard, or replace it");
    }
    return Advice.of(
        finding.part() == EC
            ? "leat ec READING --standard \"1.413 mS/cm\" --at TEMPERATURE, then meters.ec.slope"
            : "hold it in a fresh buffer of pH 7, then one of 4; then meters.ph.offset");
  }
}
