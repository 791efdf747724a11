package leat.check.sense;

import java.util.List;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;
import leat.system.SenderOf;

/** The steps were fitted, not guessed. */
final class SenderFitted extends DeclaredRule {
  SenderFitted() {
    super(
        "sender-fitted",
        MEASURED,
        null,
        null,
        PRACTICE,
        "sender.edges sender.steps sender.ladder",
        "Whether the sender's steps were found by pouring known litres; a drawing or a data sheet is a guess.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    Section sender = subject.section("sender");
    boolean fitted = sender.has("edges");
    if (!SenderOf.isKnown(sender)) {
      throw sender.missing("steps");
    }
    return List.of(Finding.words(this, fitted ? Verdict.PASS : Verdict.WARN, 0));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    return finding.verdict() == Verdict.PASS ? "fitted" : "not fitted";
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    return Advice.of("pour known amounts, then leat level fit pours.csv gives sender.edges");
  }
}
