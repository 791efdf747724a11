package leat.check;

import java.util.ArrayList;
import java.util.List;
import leat.check.build.StandingRules;
import leat.check.build.WaterRules;
import leat.check.feed.FeedRules;
import leat.check.feed.SolutionRules;
import leat.check.run.DutyRules;
import leat.check.season.SeasonRules;
import leat.check.sense.LevelRules;
import leat.numeric.Impossible;
import leat.plan.Refused;

/** The one list of rules, in the order they are judged and shown. */
public final class Rules {

  private Rules() {}

  /** Made when the first rule is asked for, and kept: rules hold no state. */
  private static final class Made {
    static final Rule[] ALL =
        joined(
            WaterRules.all(),
            StandingRules.all(),
            LevelRules.all(),
            DutyRules.all(),
            FeedRules.all(),
            SolutionRules.all(),
            SeasonRules.all());
  }

  /** All rules. */
  public static Rule[] all() {
    return Made.ALL.clone();
  }

  private static Rule[] joined(Rule[]... groups) {
    List<Rule> all = new ArrayList<>();
    for (int g = 0; g < groups.length; g++) {
      for (int i = 0; i < groups[g].length; i++) {
        all.add(groups[g][i]);
      }
    }
    return all.toArray(new Rule[0]);
  }

  /** Ids of all rules. */
  public static String[] ids() {
    Rule[] all = Made.ALL;
    String[] ids = new String[all.length];
    for (int i = 0; i < ids.length; i++) {
      ids[i] = all[i].id();
    }
    return ids;
  }

  /** The rule of an id, or null. */
  public static Rule find(String id) {
    Rule[] all = Made.ALL;
    for (int i = 0; i < all.length; i++) {
      if (all[i].id().equals(id)) {
        return all[i];
      }
    }
    return null;
  }

  /** Every finding of all rules on a plan. */
  public static List<Finding> judge(Subject subject) {
    return judge(subject, Made.ALL);
  }

  /**
   * Every finding of some rules on a plan. A missing key, or a value that the models refuse, makes
   * its own rule unknown and no other.
   */
  public static List<Finding> judge(Subject subject, Rule[] rules) {
    subject.checkLimits();
    List<Finding> found = new ArrayList<>(rules.length);
    for (int i = 0; i < rules.length; i++) {
      judge(subject, rules[i], found);
    }
    return found;
  }

  private static void judge(Subject subject, Rule rule, List<Finding> found) {
    if (subject.isOff(rule)) {
      found.add(Finding.off(rule));
      return;
    }
    try {
      found.addAll(rule.measure(subject));
    } catch (Refused e) {
      found.add(Finding.lacking(rule, e.missingKeys()));
    } catch (Impossible e) {
      found.add(Finding.refused(rule, e.quantity() + ": " + e.getMessage()));
    }
  }
}
