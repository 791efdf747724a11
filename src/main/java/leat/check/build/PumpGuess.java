package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.system.HeadLeft;
import leat.system.Waterway;

/** The pump was measured with a bucket and a watch. */
final class PumpGuess extends DeclaredRule {
  PumpGuess() {
    super(
        "pump-guess",
        MEASURED,
        Show.PERCENT,
        null,
        PRACTICE,
        "pump.measured pump.derate",
        "Whether the share of the printed head is measured or still a guess. Printed curves are optimistic by 15 to 30 %.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Waterway way = subject.waterway();
    Phrase advice =
        Phrase.of("a bucket and a watch: leat pump --plan ... --measured \"10 L in 65 s\"");
    HeadLeft left = way.left();
    switch (left.from()) {
      case MEASURED:
        return List.of(Finding.valueOnly(this, Verdict.PASS, left.share(), Phrase.of()));
      case UNEXPLAINED:
      case NOTHING_CAME:
        return List.of(
            Finding.words(
                this,
                Verdict.FAIL,
                left.measured().status().word(),
                Phrase.of("pump.measured cannot be explained by this curve; measure again")));
      default:
        return List.of(Finding.valueOnly(this, Verdict.WARN, left.share(), advice));
    }
  }
}
