package leat.check;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import leat.answer.Phrase;
import leat.numeric.Impossible;
import leat.plan.Refused;

/**
 * Words the advice on findings of a plan: each cure of a rule is tried on the plan, and told only
 * when the finding passes with it and no rule newly fails or becomes unknown.
 */
public final class Advisor {
  /** So many cures are told at most. */
  private static final int TOLD = 2;

  /** So many further keys are changed at most for what a cure newly breaks. */
  private static final int MOST_ADDED = 2;

  /** So many ways are tried for each of them. */
  private static final int WIDTH = 4;

  private static final String OR = ", or ";

  private final Subject subject;
  private final Map<Finding, Phrase> told = new IdentityHashMap<>();
  private List<Finding> before;

  /** For findings on a plan. */
  public Advisor(Subject subject) {
    this.subject = subject;
  }

  /** The cures that work, at most two; empty when none does. */
  public List<Cure> working(Finding finding) {
    if (before == null) {
      before = Rules.judge(subject);
    }
    List<Cure> cures = asked(subject, finding).cures();
    List<Cure> good = new ArrayList<>();
    for (int more = 0; more <= MOST_ADDED && good.isEmpty(); more++) {
      for (int i = 0; i < cures.size() && good.size() < TOLD; i++) {
        Cure cure = containsOne(cures.get(i), good) ? null : mended(finding, cures.get(i), more);
        if (cure != null && !containsOne(cure, good)) {
          good.add(cure);
        }
      }
    }
    return good;
  }

  /**
   * A cure, with up to so many cures of what it newly breaks; null when the finding does not pass
   * with it, or something else newly fails.
   */
  private Cure mended(Finding finding, Cure cure, int more) {
    try {
      Subject changed = new Subject(cure.on(subject.plan()), subject.believedSoFar());
      List<Finding> after = Rules.judge(changed);
      Finding bad = failing(finding, after);
      if (bad == null) {
        bad = spoilt(after);
      }
      return bad == null ? cure : more == 0 ? null : mended(finding, cure, changed, bad, more);
    } catch (Refused | Impossible e) {
      return null;
    }
  }

  private Cure mended(Finding finding, Cure cure, Subject changed, Finding spoilt, int more) {
    if (spoilt.verdict() == Verdict.UNKNOWN) {
      return null;
    }
    List<Cure> cures = asked(changed, spoilt).cures();
    for (int i = 0; i < cures.size() && i < WIDTH; i++) {
      Cure both = cure.and(cures.get(i));
      Cure whole = both == null ? null : mended(finding, both, more - 1);
      if (whole != null) {
        return whole;
      }
    }
    return null;
  }

  /** What a rule advises; the models may have no answer for a limit that no tower can keep. */
  private static Advice asked(Subject subject, Finding finding) {
    try {
      return finding.rule().advice(subject, finding);
    } catch (Impossible e) {
      return Advice.of("no change is known that keeps this limit");
    }
  }

  /** What to change, or why it is unknown; empty for what passes. */
  public Phrase advice(Finding finding) {
    Phrase words = told.get(finding);
    if (words == null) {
      words = worded(finding);
      told.put(finding, words);
    }
    return words;
  }

  private Phrase worded(Finding finding) {
    if (finding.verdict() == Verdict.UNKNOWN) {
      return finding.rule().why(subject, finding);
    }
    Phrase words = Phrase.of();
    if (!finding.isBreach()) {
      return words;
    }
    List<Cure> good = working(finding);
    for (int i = 0; i < good.size(); i++) {
      words.add(i == 0 ? "" : OR).add(good.get(i).words());
    }
    Advice advice = asked(subject, finding);
    if (words.isEmpty()) {
      words.add(advice.otherwise());
    }
    if (!advice.also().isEmpty()) {
      words.add(words.isEmpty() ? "" : OR).add(advice.also());
    }
    if (!advice.note().isEmpty()) {
      words.add(words.isEmpty() ? "" : "; ").add(advice.note());
    }
    return words;
  }

  /** Whether a cure only adds keys to one that works already. */
  private static boolean containsOne(Cure cure, List<Cure> good) {
    for (int i = 0; i < good.size(); i++) {
      if (cure.keys().containsAll(good.get(i).keys())) {
        return true;
      }
    }
    return false;
  }

  /** A finding of the same rule and part that does not pass; null when all do. */
  private static Finding failing(Finding finding, List<Finding> after) {
    for (int i = 0; i < after.size(); i++) {
      Finding now = after.get(i);
      boolean same =
          now.part() == finding.part()
              || now.part() == Finding.WHOLE
              || finding.part() == Finding.WHOLE;
      if (now.rule() == finding.rule() && same && now.verdict() != Verdict.PASS) {
        return now;
      }
    }
    return null;
  }

  /** The first finding that newly fails, or newly cannot be judged; null when none does. */
  private Finding spoilt(List<Finding> after) {
    for (int i = 0; i < after.size(); i++) {
      Finding now = after.get(i);
      if (now.verdict() == Verdict.FAIL && !wasBad(now)
          || now.verdict() == Verdict.UNKNOWN && wasJudged(now)) {
        return now;
      }
    }
    return null;
  }

  /** Whether it was judged there, or anywhere when it is now unknown as a whole. */
  private boolean wasJudged(Finding now) {
    for (int i = 0; i < before.size(); i++) {
      Finding then = before.get(i);
      boolean there = now.part() == Finding.WHOLE || then.part() == now.part();
      if (then.rule() == now.rule()
          && there
          && (then.isBreach() || then.verdict() == Verdict.PASS)) {
        return true;
      }
    }
    return false;
  }

  private boolean wasBad(Finding now) {
    for (int i = 0; i < before.size(); i++) {
      Finding then = before.get(i);
      if (then.isSameAs(now) || then.rule() == now.rule() && then.part() == Finding.WHOLE) {
        return then.verdict() == Verdict.FAIL || then.verdict() == Verdict.UNKNOWN;
      }
    }
    return false;
  }
}
