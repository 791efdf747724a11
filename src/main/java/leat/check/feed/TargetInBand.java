package leat.check.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.Cure;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.Crops;
import leat.system.CropsOf;

/** The EC and pH aimed at lie in the band that all crops share. */
final class TargetInBand extends DeclaredRule {
  private static final int EC = 0;
  private static final int PH = 1;
  private static final Show BARE = Show.of(Units.NUMBER_UNIT, 3);

  TargetInBand() {
    super(
        "target-in-band",
        "in the crops' band",
        null,
        null,
        "bands of leat crops: Oklahoma State University Extension HLA-6722 Table 2, common practice",
        "target.ec target.ph crops[].name crops[].ec_low crops[].ec_high crops[].ph_low crops[].ph_high",
        "Whether the EC and the pH aimed at suit every crop of the plan. Outside its band a crop stays small, burns at its tips or cannot take up iron.");
  }

  private static Crops.Shared shared(Subject subject) {
    return Crops.share(CropsOf.known(subject.plan()));
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Plan plan = subject.plan();
    Section target = plan.section("target");
    double ec = target.need("ec");
    if (CropsShare.lacksBand(plan)) {
      return List.of(Finding.unknown(this));
    }
    Crops.Shared shared = shared(subject);
    List<Finding> found = new ArrayList<>(2);
    if (shared.ecLowMsCm() != null) {
      boolean fits = ec >= shared.ecLowMsCm() && ec <= shared.ecHighMsCm();
      found.add(Finding.words(this, fits ? Verdict.PASS : Verdict.WARN, EC).at(EC));
    }
    Double ph = target.maybe("ph");
    if (shared.phLow() != null && ph != null) {
      boolean fits = ph >= shared.phLow() && ph <= shared.phHigh();
      found.add(Finding.words(this, fits ? Verdict.PASS : Verdict.WARN, PH).at(PH));
    }
    return found;
  }

  @Override
  public String part(Subject subject, Finding finding) {
    return finding.part() == EC ? "EC" : finding.part() == PH ? "pH" : null;
  }

  @Override
  public String place(Finding finding) {
    return finding.part() == EC ? "target.ec" : finding.part() == PH ? "target.ph" : "target";
  }

  @Override
  public Phrase why(Subject subject, Finding finding) {
    Phrase keys = super.why(subject, finding);
    return keys.isEmpty() ? CropsShare.bandNeeded(subject.plan()) : keys;
  }

  @Override
  public String words(Subject subject, Finding finding) {
    Section target = subject.section("target");
    return finding.part() == EC
        ? Phrase.of(target.need("ec"), Show.MS_CM).render(false)
        : Phrase.of("pH ").add(target.need("ph"), BARE).render(false);
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Crops.Shared shared = shared(subject);
    Section target = subject.section("target");
    return finding.part() == EC
        ? into(target, "ec", shared.ecLowMsCm(), shared.ecHighMsCm(), Show.MS_CM)
        : into(target, "ph", shared.phLow(), shared.phHigh(), BARE);
  }

  /** The nearest end of a band, and the band. */
  private static Advice into(Section target, String key, double low, double high, Show show) {
    String path = target.path(key);
    return Advice.none()
        .note(Phrase.of("the crops like ").range(low, high, show))
        .cure(
            target.need(key) < low ? Cure.atLeast(path, low, show) : Cure.atMost(path, high, show));
  }
}
