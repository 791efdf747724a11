package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Motion;
import leat.level.Staircase;

/** The sender sees up to the full mark. */
final class FullSeen extends DeclaredRule {
  FullSeen() {
    super(
        "full-seen",
        AT_LEAST,
        Show.L,
        null,
        "the plan's own full mark",
        "sender.edge_error tank.holds_full"
            + ReadKeys.SENDER
            + " tank.holds tank.corner tank.between",
        "Litres at which the top step of the sender begins; above it the sender reads the same up to the rim, so overfilling is not seen.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    Staircase stairs = subject.sender().staircase();
    double top = stairs.volumeLow(stairs.size() - 1, Motion.RISING);
    return List.of(atLeast(top, limitOr(subject, subject.sender().fullVolume()), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Staircase stairs = subject.sender().staircase();
    Phrase words =
        Phrase.of("a higher last step: full lies ")
            .add(finding.limit() - finding.value(), Show.L)
            .add(" above it");
    Advice advice = Advice.none().also(words);
    return stairs.hasLevels()
        ? advice.cure(
            Cure.atMost("tank.full", stairs.levelLow(stairs.size() - 1, Motion.RISING), Show.MM))
        : advice;
  }
}
