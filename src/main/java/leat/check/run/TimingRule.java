package leat.check.run;

import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;

/** A rule that judges entries of {@code timing}; {@link Finding#part} is the entry's number. */
abstract class TimingRule extends DeclaredRule {
  TimingRule(
      String id,
      String need,
      Show show,
      Double usualLimit,
      String source,
      String reads,
      String meaning) {
    super(id, need, show, usualLimit, source, reads, meaning);
  }

  /** Key of an entry, such as {@code timing[0].run}. */
  static String key(int entry, String name) {
    return "timing[" + entry + "]." + name;
  }

  @Override
  public final String part(Subject subject, Finding finding) {
    return finding.part() != Finding.WHOLE && subject.timetable().size() > 1
        ? place(finding)
        : null;
  }

  @Override
  public final String place(Finding finding) {
    return finding.part() == Finding.WHOLE ? "timing" : "timing[" + finding.part() + "]";
  }
}
