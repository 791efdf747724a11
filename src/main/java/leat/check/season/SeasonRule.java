package leat.check.season;

import java.util.List;
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
import leat.season.Goal;
import leat.season.Totals;
import leat.system.SeasonCure;

/** A rule on the sums of the season's shown run. */
abstract class SeasonRule extends DeclaredRule {
  static final Show DAYS = Show.of(Units.D, 2);
  static final String READS =
      "season site.weather site.months site.latitude site.exposure crops tank hold_up water feed target thirst";
  private final Goal goal;
  private final Verdict breach;

  SeasonRule(
      String id,
      Show show,
      double limit,
      Goal goal,
      Verdict breach,
      String source,
      String meaning) {
    super(id, AT_MOST, show, limit, source, READS, meaning);
    this.goal = goal;
    this.breach = breach;
  }

  @Override
  protected boolean allows(double limit) {
    return limit >= 0;
  }

  @Override
  protected String allowed() {
    return "of 0 or more";
  }

  @Override
  public String place(Finding finding) {
    return "season";
  }

  /** Whether the plan asks for a season at all: dates, and weather or crops with dates. */
  static boolean applies(Plan plan) {
    Section season = plan.section("season");
    if (!season.has("from") || !season.has("to")) {
      return false;
    }
    Section site = plan.section("site");
    boolean weather = site.has("weather") || site.has("months");
    List<Section> crops = plan.root().sections("crops");
    for (int i = 0; i < crops.size() && !weather; i++) {
      weather = crops.get(i).has("sow");
    }
    return weather;
  }

  /** The number of the shown run that is judged, in the base unit. */
  abstract double value(Totals shown);

  @Override
  public List<Finding> measure(Subject subject) {
    if (!applies(subject.plan())) {
      return List.of();
    }
    double value = value(subject.seasonRuns().totals());
    return List.of(atMost(value, limit(subject), breach));
  }

  @Override
  public Advice advice(Subject subject, Finding finding) {
    Advice advice = Advice.none();
    List<SeasonCure> cures =
        SeasonCure.of(
            subject.plan(), subject.seasonLaid(), subject.seasonRuns(), goal, subject.taken());
    for (int i = 0; i < cures.size(); i++) {
      advice.cure(Cure.measures(cures.get(i).key(), cures.get(i).value()));
    }
    return advice.say("no one key mends it; `leat season` shows the days");
  }
}
