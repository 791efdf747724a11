package leat.check;

import java.util.List;
import leat.plan.Plan;

/** One finding with the words that check would write. */
public final class Judged {
  private final Subject subject;
  private final Finding finding;

  private Judged(Subject subject, Finding finding) {
    this.subject = subject;
    this.finding = finding;
  }

  /** All findings of all rules. */
  public static List<Judged> all(Plan plan) {
    Subject subject = new Subject(plan);
    return Rules.judge(subject).stream().map(f -> new Judged(subject, f)).toList();
  }

  /** The findings of one rule, measured alone: what it refuses is thrown. */
  public static List<Judged> by(Rule rule, Plan plan) {
    Subject subject = new Subject(plan);
    return rule.measure(subject).stream().map(f -> new Judged(subject, f)).toList();
  }

  /** The first finding of a rule, at a tower or wherever; null when there is none. */
  public static Judged find(Plan plan, String rule, String part) {
    for (Judged judged : all(plan)) {
      if (judged.rule().equals(rule) && (part == null || part.equals(judged.part()))) {
        return judged;
      }
    }
    return null;
  }

  public Finding finding() {
    return finding;
  }

  public String rule() {
    return finding.rule().id();
  }

  public Verdict verdict() {
    return finding.verdict();
  }

  public double value() {
    return finding.value();
  }

  public double limit() {
    return finding.limit();
  }

  public String part() {
    return finding.rule().part(subject, finding);
  }

  public String words() {
    return finding.rule().words(subject, finding);
  }

  /** Advice as it is written: the cures that work, and words. */
  public String advice() {
    return new Advisor(subject).advice(finding).render(false);
  }

  /** The cures that work. */
  public List<Cure> cures() {
    return new Advisor(subject).working(finding);
  }
}
