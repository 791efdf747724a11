package leat.check.build;

import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Mends;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Gap;
import leat.hydraulics.ManifoldFlow;
import leat.system.TowerAt;

/** The spreader's gap is wide enough not to clog. */
final class GapClogs extends TowerRule {
  GapClogs() {
    super(
        At.FULL,
        "gap-clogs",
        AT_LEAST,
        Show.MM,
        Gap.LEAST_WIDTH,
        PRACTICE,
        "towers[].cap.gap",
        "Width of the slot between spreader and wall: under a millimetre it is a strainer that clogs.");
  }

  @Override
  Finding judge(Subject subject, TowerAt tower, ManifoldFlow flows) {
    Double gap =
        subject.plan().root().sections("towers").get(tower.number()).section("cap").maybe("gap");
    if (gap == null) {
      return Finding.unknown(this, Phrase.of("needs " + key(tower, "cap.gap")));
    }
    double limit = limit(subject);
    return atLeast(
        gap, limit, Verdict.WARN, Mends.of(Phrase.of(), key(tower, "cap.gap"), limit, Show.MM));
  }
}
