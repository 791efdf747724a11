package leat.check.feed;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.check.Verdict;
import leat.plan.Plan;
import leat.plan.Section;
import leat.solution.Crop;
import leat.solution.Crops;
import leat.system.CropsOf;

/** The EC and pH aimed at lie in the band that all crops share. */
public final class TargetInBand extends DeclaredRule {
  public TargetInBand() {
    super(
        "target-in-band",
        "in the crops' band",
        null,
        null,
        "bands of leat crops: Oklahoma State University Extension HLA-6722 Table 2, common practice",
        "target.ec target.ph crops[].name",
        "Whether the EC and the pH aimed at suit every crop of the plan. Outside its band a crop stays small, burns at its tips or cannot take up iron.");
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Plan plan = subject.plan();
    Section target = plan.section("target");
    double ec = target.need("ec");
    Finding unknown = CropsShare.unknownBand(this, plan);
    if (unknown != null) {
      return List.of(unknown);
    }
    List<Crop> crops = CropsOf.known(plan);
    Crops.Shared shared = Crops.share(crops);
    List<Finding> found = new ArrayList<>();
    if (shared.ecLowMsCm() != null) {
      found.add(ec(ec, shared).at("EC"));
    }
    Double ph = target.maybe("ph");
    if (shared.phLow() != null && ph != null) {
      found.add(ph(ph, shared).at("pH"));
    }
    return found;
  }

  private Finding ec(double ec, Crops.Shared shared) {
    boolean fits = ec >= shared.ecLowMsCm() && ec <= shared.ecHighMsCm();
    String words = Phrase.of(ec, Show.MS_CM).render(false);
    Phrase advice =
        Phrase.of("target.ec of ")
            .add(Math.max(shared.ecLowMsCm(), Math.min(shared.ecHighMsCm(), ec)), Show.MS_CM)
            .add("; the crops like ")
            .addBare(shared.ecLowMsCm(), Show.MS_CM)
            .add(" to ")
            .add(shared.ecHighMsCm(), Show.MS_CM);
    return judged(fits, words, advice);
  }

  private Finding ph(double ph, Crops.Shared shared) {
    boolean fits = ph >= shared.phLow() && ph <= shared.phHigh();
    String words = Phrase.of("pH ").number(ph, 3).render(false);
    Phrase advice =
        Phrase.of("target.ph of ")
            .number(Math.max(shared.phLow(), Math.min(shared.phHigh(), ph)), 3)
            .add("; the crops like ")
            .number(shared.phLow(), 2)
            .add(" to ")
            .number(shared.phHigh(), 2);
    return judged(fits, words, advice);
  }

  private Finding judged(boolean fits, String words, Phrase advice) {
    return Finding.words(
        this, fits ? Verdict.PASS : Verdict.WARN, words, fits ? Phrase.of() : advice);
  }
}
