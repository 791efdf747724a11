package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;

/**
 * How advice is put together: what is tried on the plan before it is told, in which order, and the
 * words around it. A wish that is no rule of leat proposes the cures; the plan and all else are
 * real.
 */
class AdvisorTest {
  /** A tank fuller than 250 mm, say, with advice as each test wants it. */
  private static final class Wish extends DeclaredRule {
    private final Advice advice;

    Wish(Advice advice) {
      super("wish", AT_MOST, Show.MM, 0.25, PRACTICE, "tank.full", "A wish.");
      this.advice = advice;
    }

    @Override
    public List<Finding> measure(Subject subject) {
      return List.of(atMost(subject.section("tank").need("full"), 0.25, Verdict.FAIL));
    }

    @Override
    public Advice advice(Subject subject, Finding finding) {
      return advice;
    }
  }

  private static Plan plan(String... sets) {
    Plan.Draft draft =
        PlanFile.read("first-tower.yaml", new File("examples/first-tower.yaml"), null);
    for (String set : sets) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  private static String told(Advice advice, String... sets) {
    Subject subject = new Subject(plan(sets));
    Wish wish = new Wish(advice);
    return new Advisor(subject).advice(wish.measure(subject).get(0)).render(false);
  }

  private static Cure full(double metres) {
    return Cure.atMost("tank.full", metres, Show.MM);
  }

  private static Cure outlet(double metres) {
    return Cure.atLeast("towers[0].outlet", metres, Show.M);
  }

  private static Cure rest(String rest) {
    return Cure.typed("timing[0].rest", rest);
  }

  @Test
  void twoCuresAtMostTheBestFirst() {
    Advice three = Advice.none().cure(full(0.25)).cure(outlet(1.32)).cure(rest("13 min"));
    assertThat(told(three)).isEqualTo("tank.full of 250 mm, or towers[0].outlet of 1.32 m");
  }

  @Test
  void wordsForNoneForAnyCaseAndForWhy() {
    Advice cured = Advice.of("a smaller can").cure(full(0.25));
    assertThat(told(cured)).isEqualTo("tank.full of 250 mm");
    Advice withBoth = Advice.of("a smaller can").cure(full(0.25)).also("a taller tub");
    assertThat(told(withBoth.note(Phrase.of("it spills"))))
        .isEqualTo("tank.full of 250 mm, or a taller tub; it spills");
    assertThat(told(Advice.of("a smaller can").also("a taller tub")))
        .isEqualTo("a smaller can, or a taller tub");
    assertThat(told(Advice.none().also("a taller tub").note(Phrase.of("it spills"))))
        .isEqualTo("a taller tub; it spills");
    assertThat(told(Advice.none().note(Phrase.of("it spills")))).isEqualTo("it spills");
    assertThat(told(Advice.none())).isEmpty();
    assertThat(told(Advice.none().cure(null))).isEmpty();
  }

  @Test
  void whatPassesNeedsNoWords() {
    assertThat(told(Advice.of("a smaller can").cure(full(0.25)), "tank.full=250 mm")).isEmpty();
  }

  /** The outlet at 1.2 m lies under the stack of 1.21 m: outlet-over-top would newly fail. */
  @Test
  void aCureThatBreaksSomethingElseIsNotTold() {
    Cure low = Cure.atMost("towers[0].outlet", 1.2, Show.M);
    assertThat(told(Advice.of("a smaller can").cure(rest("31 min")).cure(full(0.25))))
        .as("a rest over rest-day's 30 min")
        .isEqualTo("tank.full of 250 mm");
    // with what mends the stack it does
    assertThat(told(Advice.of("a smaller can").cure(low)))
        .isEqualTo(
            "towers[0].outlet of 1.20 m with towers[0].modules[0].count of 5 (1 module fewer)");
  }

  /** A cure that needs more keys is told only when none stands alone. */
  @Test
  void theSimpleCureGoesFirst() {
    Cure low = Cure.atMost("towers[0].outlet", 1.2, Show.M);
    assertThat(told(Advice.none().cure(low).cure(full(0.25)))).isEqualTo("tank.full of 250 mm");
  }

  @Test
  void aRuleThatWasBrokenBeforeForbidsNothing() {
    Advice advice = Advice.none().cure(full(0.25));
    assertThat(told(advice, "timing[0].rest=31 min")).isEqualTo("tank.full of 250 mm");
    assertThat(told(advice, "towers[0].cap.mass=")).isEqualTo("tank.full of 250 mm");
  }

  @Test
  void aCureThatLeavesSomethingUnknownIsNotTold() {
    Cure off = Cure.typed("limits", "{no-siphon: -1 m}");
    assertThat(told(Advice.of("a smaller can").cure(off))).isEqualTo("a smaller can");
    // oxygen is unknown already: a limit it cannot keep changes nothing
    Cure unknown = Cure.typed("limits", "{oxygen: 0 mg/L}");
    assertThat(told(Advice.of("a smaller can").cure(unknown)))
        .isEqualTo("limits of {oxygen: 0 mg/L}");
  }

  @Test
  void aCureThatThePlanRefusesIsNotTold() {
    assertThat(told(Advice.of("a smaller can").cure(Cure.typed("tank.full", "1 m"))))
        .isEqualTo("a smaller can");
    assertThat(told(Advice.of("a smaller can").cure(Cure.typed("tank.full", "much"))))
        .isEqualTo("a smaller can");
  }

  @Test
  void aCureThatOnlyAddsToOneThatWorksIsNotTold() {
    Cure more = full(0.25).andTyped("timing[0].rest", "13 min");
    assertThat(told(Advice.none().cure(full(0.25)).cure(more).cure(outlet(1.32))))
        .isEqualTo("tank.full of 250 mm, or towers[0].outlet of 1.32 m");
  }

  /** Two faults at once, each cured for itself: the other one does not stand in the way. */
  @Test
  void eachOfTwoFaultsIsCuredByItself() {
    Plan two = plan("tank.full=318 mm", "timing[0].rest=31 min");
    assertThat(Judged.find(two, "freeboard", null).advice())
        .isEqualTo("tank.full of 308 mm; 0.271 L come in");
    assertThat(Judged.find(two, "rest-day", null).advice())
        .startsWith("timing[0].rest of 30.0 min");
  }

  @Test
  void theSameWordsAreFoundOnce() {
    Subject subject = new Subject(plan("tank.full=318 mm"));
    Advisor advisor = new Advisor(subject);
    for (Finding finding : Rules.judge(subject)) {
      assertThat(advisor.advice(finding)).isSameAs(advisor.advice(finding));
    }
  }
}
