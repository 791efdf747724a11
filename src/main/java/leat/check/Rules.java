package leat.check;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.check.build.WaterRules;
import leat.check.feed.SolutionRules;
import leat.check.run.DutyRules;
import leat.check.sense.LevelRules;
import leat.plan.Refused;

/** The one list of rules, in the order they are judged and shown. */
public final class Rules {
  private Rules() {}

  /** All rules. */
  public static Rule[] all() {
    return joined(
        WaterRules.all(), LevelRules.all(), DutyRules.all(), FeedRules.all(), SolutionRules.all());
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
    Rule[] all = all();
    String[] ids = new String[all.length];
    for (int i = 0; i < ids.length; i++) {
      ids[i] = all[i].id();
    }
    return ids;
  }

  /** The rule of an id, or null. */
  public static Rule find(String id) {
    Rule[] all = all();
    for (int i = 0; i < all.length; i++) {
      if (all[i].id().equals(id)) {
        return all[i];
      }
    }
    return null;
  }

  /** Every finding on a plan; a missing key makes its rule's finding unknown. */
  public static List<Finding> judge(Subject subject) {
    subject.checkLimits();
    List<Finding> found = new ArrayList<>();
    Rule[] all = all();
    for (int i = 0; i < all.length; i++) {
      try {
        found.addAll(all[i].judge(subject));
      } catch (Refused e) {
        if (e.problems().size() != 1 || !"missing-key".equals(e.problems().get(0).code())) {
          throw e;
        }
        found.add(Finding.unknown(all[i], Phrase.of("needs " + e.problems().get(0).key())));
      }
    }
    return found;
  }
}
