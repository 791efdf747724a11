package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.parts.DeckLoad;
import leat.quantity.Units;

/** The whole does not press too much on the deck. */
final class DeckHolds extends DeclaredRule {
  private static final Show PRESS = Show.of(Units.KPA, Units.PSI, 3);

  DeckHolds() {
    super(
        "deck-load",
        AT_MOST,
        PRESS,
        DeckLoad.USUAL,
        "from memory, not verified: 2.5 to 4 kN/m2 recommended for balconies",
        "tank towers",
        "Weight of tank and towers, full and running, over the area of the foot. A deck's own limit is for the whole floor; somebody who knows the deck decides. Silent until tank.mass is told.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("tank").has("mass")) {
      return List.of();
    }
    Double press = subject.deck().pressure();
    return press == null
        ? List.of(Finding.unknown(this))
        : List.of(atMost(press, limit(subject), Verdict.WARN));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    double mass = subject.deck().wholeMass();
    double area = DeckLoad.areaFor(mass, finding.limit());
    return Advice.none()
        .also(
            Phrase.of("a stiff board of at least ")
                .addAtLeast(area, Show.of(Units.M2, Units.FT2, 2))
                .add(" under it"));
  }
}
