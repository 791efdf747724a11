package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.Advice;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;
import leat.solution.Crop;
import leat.solution.Crops;
import leat.system.CropsOf;

/** One tank suits all crops of the plan. */
final class CropsShare extends DeclaredRule {
  private static final Show EC = Show.MS_CM.digits(2);
  private static final Show PH = Show.of(Units.NUMBER_UNIT, 2);

  CropsShare() {
    super(
        "crops-share",
        "one band",
        null,
        null,
        "bands of leat crops: Oklahoma State University Extension HLA-6722 Table 2, common practice",
        "crops[].name crops[].ec_low crops[].ec_high crops[].ph_low crops[].ph_high",
        "Whether a band of EC and one of pH is left that suits every crop. Books differ by a third, so a clash is a doubt and not a ban: the odd crop stays small or burns at its tips.");
  }

  @Override
  public List<Finding> measure(Subject subject) {
    Plan plan = subject.plan();
    if (lacksBand(plan)) {
      return List.of(Finding.unknown(this));
    }
    List<Crop> crops = CropsOf.known(plan);
    if (crops.size() < 2) {
      return List.of();
    }
    boolean share = Crops.share(crops).canShare();
    return List.of(Finding.words(this, share ? Verdict.PASS : Verdict.WARN, 0));
  }

  @Override
  public String words(Subject subject, Finding finding) {
    Crops.Shared shared = Crops.share(CropsOf.known(subject.plan()));
    return shared.canShare() ? band(shared) : apart(shared.clashes().get(0));
  }

  @Override
  public Phrase why(Subject subject, Finding finding) {
    Phrase keys = super.why(subject, finding);
    return keys.isEmpty() ? bandNeeded(subject.plan()) : keys;
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Crops.Shared shared = Crops.share(CropsOf.known(subject.plan()));
    Crops.Clash first = shared.clashes().get(0);
    Phrase advice = Phrase.of(first.one().name() + " and " + first.other().name() + " clash: ");
    List<Crop> out = shared.leaveOut();
    for (int i = 0; i < out.size(); i++) {
      advice.add(i == 0 ? "leave out " : " or ").add(out.get(i).name());
    }
    advice.add(out.isEmpty() ? "a tub of its own for each kind" : ", or give it a tub of its own");
    return Advice.none().note(advice);
  }

  /** Whether no band is known for a crop; refused without any crop. */
  static boolean lacksBand(Plan plan) {
    if (plan.root().sections("crops").isEmpty()) {
      throw plan.root().missing("crops");
    }
    return !CropsOf.unknown(plan).isEmpty();
  }

  static Phrase bandNeeded(Plan plan) {
    Section first = CropsOf.unknown(plan).get(0);
    return Phrase.of(
        "no band is known for "
            + first.text("name")
            + ": give "
            + first.path("ec_low")
            + ", ec_high, ph_low, ph_high");
  }

  private static String band(Crops.Shared shared) {
    return Phrase.of()
        .range(shared.ecLowMsCm(), shared.ecHighMsCm(), EC)
        .add(", pH ")
        .range(shared.phLow(), shared.phHigh(), PH)
        .render(false);
  }

  private static String apart(Crops.Clash clash) {
    Phrase words = Phrase.of();
    if (clash.ecGapMsCm() > 0) {
      words.add(clash.ecGapMsCm(), EC).add(" apart");
    }
    if (clash.phGap() > 0) {
      words.add(clash.ecGapMsCm() > 0 ? ", " : "").add("pH ").number(clash.phGap(), 2);
      words.add(" apart");
    }
    return words.render(false);
  }
}
