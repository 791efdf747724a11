package leat.check.sense;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Divider;
import leat.level.DividerDesign;
import leat.level.ESeries;
import leat.level.Sender;
import leat.plan.Section;
import leat.system.SenderOf;

/** The steps of the sender can be told apart by the ADC or the meter that reads it. */
final class StepsResolvable extends Rule {
  @Override
  public String id() {
    return "steps-resolvable";
  }

  @Override
  public String meaning() {
    return "Neighbouring steps of the sender that the ADC, or the meter, can take for each other when resistors, supply, reference and converter are all off the worst way.";
  }

  @Override
  public String need() {
    return "none";
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
    return "worst case of the divider; sheet level-divider-design";
  }

  @Override
  public String reads() {
    return "sender.steps sender.edges sender.ladder sender.divider sender.tolerance sender.reading";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Section section = subject.section("sender");
    if (!section.isGiven()) {
      return List.of();
    }
    Sender sender = subject.sender();
    int pairs = sender.staircase().size() - 1;
    if (!SenderOf.hasDivider(section)) {
      int alike = sender.overlaps();
      return List.of(finding(alike, pairs, "a meter", meterAdvice()));
    }
    double[] ohms = new double[pairs + 1];
    for (int i = 0; i < ohms.length; i++) {
      ohms[i] = sender.staircase().ohm(i);
    }
    double lead = sender.limits().lead();
    double tolerance = sender.limits().tolerance();
    int blind = section.section("divider").count("blind");
    Divider divider = SenderOf.divider(section);
    DividerDesign design = DividerDesign.of(divider, ohms, lead, tolerance, blind);
    int alike = alike(design);
    Phrase advice = Phrase.of();
    if (alike > 0) {
      DividerDesign best =
          DividerDesign.best(divider, ohms, lead, tolerance, null, ESeries.E24, blind);
      advice = best.allApart() ? resistor(best) : part(divider);
    }
    return List.of(finding(alike, pairs, "the ADC", advice));
  }

  private static int alike(DividerDesign design) {
    int n = 0;
    for (int i = 0; i < design.apart().length; i++) {
      n += design.apart()[i] ? 0 : 1;
    }
    return n;
  }

  private Finding finding(int alike, int pairs, String by, Phrase advice) {
    if (alike == 0) {
      return Finding.words(this, Verdict.PASS, "all told apart by " + by, Phrase.of());
    }
    return Finding.words(
        this, Verdict.FAIL, alike + " of " + pairs + " pairs alike to " + by, advice);
  }

  private static Phrase resistor(DividerDesign best) {
    return Phrase.of("sender.divider.resistor of ").add(best.divider().fixed(), Show.OHM);
  }

  private static Phrase part(Divider divider) {
    return Phrase.of(
        divider.ratiometric()
            ? "closer sender.tolerance, more sender.divider.bits, or fewer steps"
            : "sender.divider.ratiometric: true, the divider fed from the ADC's reference");
  }

  private static Phrase meterAdvice() {
    return Phrase.of("closer sender.tolerance or sender.reading, or fewer steps");
  }
}
