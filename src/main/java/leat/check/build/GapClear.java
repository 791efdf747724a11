package leat.check.build;

import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Gap;
import leat.plan.Section;

/** The spreader's gap is wide enough not to clog. */
final class GapClear extends ShapeRule {
  GapClear() {
    super(
        "gap-clear",
        AT_LEAST,
        Show.MM,
        Gap.LEAST_WIDTH,
        PRACTICE,
        "towers[].cap.gap",
        "Width of the slot between spreader and wall: under a millimetre it is a strainer that clogs.");
  }

  @Override
  String[] needs() {
    return new String[] {"cap.gap"};
  }

  @Override
  Finding measure(Subject subject, Section tower) {
    Double gap = tower.section("cap").maybe("gap");
    return gap == null ? Finding.unknown(this) : atLeast(gap, limit(subject), Verdict.WARN);
  }

  @Override
  Advice advice(Subject subject, Section tower, Finding finding) {
    return Advice.none()
        .cure(Cure.atLeast(key(finding.part(), "cap.gap"), finding.limit(), Show.MM));
  }
}
