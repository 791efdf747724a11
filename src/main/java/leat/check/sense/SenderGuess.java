package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Section;

/** The steps were fitted, not guessed. */
final class SenderGuess extends Rule {
  @Override
  public String id() {
    return "sender-guess";
  }

  @Override
  public String meaning() {
    return "Whether the sender's steps were found by pouring known litres; a drawing or a data sheet is a guess.";
  }

  @Override
  public String need() {
    return MEASURED;
  }

  @Override
  public Show show() {
    return null;
  }

  @Override
  public Double usualLimit() {
    return null;
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  public String reads() {
    return "sender.edges";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section sender = subject.section("sender");
    if (!sender.isGiven()) {
      return List.of();
    }
    if (sender.has("edges")) {
      return List.of(Finding.words(this, Verdict.PASS, "fitted", Phrase.of()));
    }
    subject.sender();
    return List.of(
        Finding.words(
            this,
            Verdict.WARN,
            "not fitted",
            Phrase.of("pour known litres, then leat level fit pours.csv gives sender.edges")));
  }
}
