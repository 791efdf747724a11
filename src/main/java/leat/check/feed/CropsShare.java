package leat.check.feed;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Rule;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Section;
import leat.solution.Crop;
import leat.solution.Crops;
import leat.system.CropsOf;

/** One tank suits all crops of the plan. */
public final class CropsShare extends DeclaredRule {
  private static final Show EC = Show.MS_CM.digits(2);

  public CropsShare() {
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
  public List<Finding> judge(Subject subject) {
    Plan plan = subject.plan();
    Finding unknown = unknownBand(this, plan);
    if (unknown != null) {
      return List.of(unknown);
    }
    List<Crop> crops = CropsOf.known(plan);
    if (crops.size() < 2) {
      return List.of();
    }
    Crops.Shared shared = Crops.share(crops);
    if (shared.canShare()) {
      return List.of(Finding.words(this, Verdict.PASS, band(shared), Phrase.of()));
    }
    Crops.Clash first = shared.clashes().get(0);
    Phrase advice = Phrase.of(first.one().name() + " and " + first.other().name() + " clash: ");
    List<Crop> out = shared.leaveOut();
    for (int i = 0; i < out.size(); i++) {
      advice.add(i == 0 ? "leave out " : " or ").add(out.get(i).name());
    }
    advice.add(out.isEmpty() ? "a tub of its own for each kind" : ", or give it a tub of its own");
    return List.of(Finding.words(this, Verdict.WARN, apart(first), advice));
  }

  /** The unknown finding for crops without a band, or null; refused without any crop. */
  static Finding unknownBand(Rule rule, Plan plan) {
    if (plan.root().sections("crops").isEmpty()) {
      throw plan.root().missing("crops");
    }
    List<Section> unknown = CropsOf.unknown(plan);
    if (unknown.isEmpty()) {
      return null;
    }
    Section first = unknown.get(0);
    return Finding.unknown(
        rule,
        Phrase.of(
            "no band is known for "
                + first.text("name")
                + ": give "
                + first.path("ec_low")
                + ", ec_high, ph_low, ph_high"));
  }

  private static String band(Crops.Shared shared) {
    return Phrase.of()
        .addBare(shared.ecLowMsCm(), EC)
        .add(" to ")
        .addBare(shared.ecHighMsCm(), EC)
        .add(", pH ")
        .number(shared.phLow(), 2)
        .add(" to ")
        .number(shared.phHigh(), 2)
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
