package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.hydraulics.Derate;
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
    Derate believed = way.believed();
    switch (believed.kind()) {
      case MEASURED:
        return List.of(Finding.valueOnly(this, Verdict.PASS, believed.share(), Phrase.of()));
      case OVER_100:
      case BEYOND_CURVE:
      case NO_FLOW:
        return List.of(
            Finding.words(
                this,
                Verdict.FAIL,
                believed.measured().status().word(),
                Phrase.of("pump.measured cannot be explained by this curve; measure again")));
      default:
        return List.of(Finding.valueOnly(this, Verdict.WARN, believed.share(), advice));
    }
  }
}
