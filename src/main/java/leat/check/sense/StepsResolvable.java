package leat.check.sense;

import java.util.List;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.ReadKeys;
import leat.check.Subject;
import leat.check.Verdict;
import leat.level.Divider;
import leat.level.DividerDesign;
import leat.level.ESeries;
import leat.level.Sender;
import leat.plan.Section;
import leat.plan.Taken;
import leat.system.SenderOf;

/** The steps of the sender can be told apart by the ADC or the meter that reads it. */
final class StepsResolvable extends DeclaredRule {
  private static final String[] TOLERANCES = {"2 %", "1 %", "0.5 %"};
  private static final String[] BITS = {"12", "16"};

  StepsResolvable() {
    super(
        "steps-resolvable",
        "none alike",
        null,
        null,
        "worst case of the divider; sheet level-divider-design",
        "sender.divider sender.tolerance sender.reading sender.lead"
            + ReadKeys.SENDER
            + " tank.holds",
        "Neighbouring steps of the sender that the ADC, or the meter, can take for each other when resistors, supply, reference and converter are all off the worst way.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    if (!subject.section("sender").isGiven()) {
      return List.of();
    }
    int alike = alike(subject);
    return List.of(Finding.words(this, alike == 0 ? Verdict.PASS : Verdict.FAIL, alike));
  }

  /** Pairs of neighbours that can be taken for each other. */
  private static int alike(Subject subject) {
    Section section = subject.section("sender");
    Sender sender = subject.sender();
    if (!SenderOf.hasDivider(section)) {
      return sender.overlaps();
    }
    DividerDesign design =
        DividerDesign.of(
            SenderOf.divider(section, subject.taken()),
            ohms(sender),
            sender.limits().lead(),
            sender.limits().tolerance(),
            blind(section, subject.taken()));
    int n = 0;
    for (int i = 0; i < design.apart().length; i++) {
      n += design.apart()[i] ? 0 : 1;
    }
    return n;
  }

  private static int blind(Section section, Taken taken) {
    return section.section("divider").count("blind", taken);
  }

  private static double[] ohms(Sender sender) {
    double[] ohms = new double[sender.staircase().size()];
    for (int i = 0; i < ohms.length; i++) {
      ohms[i] = sender.staircase().ohm(i);
    }
    return ohms;
  }

  @Override
  public String words(Subject subject, Finding finding) {
    String by = SenderOf.hasDivider(subject.section("sender")) ? "the ADC" : "a meter";
    int pairs = subject.sender().staircase().size() - 1;
    return finding.saying() == 0
        ? "all told apart by " + by
        : finding.saying() + " of " + pairs + " pairs alike to " + by;
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Section section = subject.section("sender");
    if (!SenderOf.hasDivider(section)) {
      Advice advice = Advice.of("closer sender.tolerance or sender.reading, or fewer steps");
      for (int i = 0; i < TOLERANCES.length; i++) {
        advice.cure(Cure.typed("sender.tolerance", TOLERANCES[i]));
      }
      for (int i = 0; i < TOLERANCES.length; i++) {
        advice.cure(
            Cure.typed("sender.tolerance", TOLERANCES[i])
                .andTyped("sender.reading", TOLERANCES[i]));
      }
      return advice;
    }
    return dividerAdvice(subject, section);
  }

  private static Advice dividerAdvice(Subject subject, Section section) {
    Divider now = SenderOf.divider(section, subject.taken());
    Advice advice = Advice.of("fewer steps");
    advice.cure(resistor(subject, section, now));
    if (!now.ratiometric()) {
      advice.cure(Cure.typed("sender.divider.ratiometric", "true"));
      advice.cure(fromReference(subject, section, now));
    }
    for (int i = 0; i < TOLERANCES.length; i++) {
      advice.cure(Cure.typed("sender.tolerance", TOLERANCES[i]));
    }
    for (int i = 0; i < BITS.length; i++) {
      advice.cure(Cure.typed("sender.divider.bits", BITS[i]));
    }
    return advice.cure(Cure.typed("sender.divider.adc_error", "1"));
  }

  /** The divider fed from the ADC's reference, with the best resistor for that. */
  private static Cure fromReference(Subject subject, Section section, Divider now) {
    Divider fed =
        new Divider(
            now.side(),
            now.supply(),
            0,
            now.fixed(),
            now.fixedTolerance(),
            now.bits(),
            now.supply(),
            0,
            true,
            now.adcError());
    Cure resistor = resistor(subject, section, fed);
    return resistor == null
        ? null
        : resistor
            .andTyped("sender.divider.ratiometric", "true")
            .andAtMost("sender.divider.reference", now.supply(), Show.V);
  }

  /** The best resistor of the series, or null when none tells all steps apart. */
  private static Cure resistor(Subject subject, Section section, Divider divider) {
    Sender sender = subject.sender();
    DividerDesign best =
        DividerDesign.best(
            divider,
            ohms(sender),
            sender.limits().lead(),
            sender.limits().tolerance(),
            null,
            ESeries.E24,
            blind(section, subject.taken()));
    return best.allApart()
        ? Cure.atMost("sender.divider.resistor", best.divider().fixed(), Show.OHM)
        : null;
  }
}
