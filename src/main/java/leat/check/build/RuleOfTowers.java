package leat.check.build;

import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.check.DeclaredRule;
import leat.check.Finding;
import leat.check.Subject;
import leat.plan.Section;

/** A rule with one finding a tower; {@link Finding#part} is the tower's number in the plan. */
abstract class RuleOfTowers extends DeclaredRule {
  RuleOfTowers(
      String id,
      String need,
      Show show,
      Double usualLimit,
      String source,
      String reads,
      String meaning) {
    super(id, need, show, usualLimit, source, reads, meaning);
  }

  /** Keys of a tower without which it cannot be judged, such as {@code cap.gap}. */
  String[] needs() {
    return new String[0];
  }

  @Override
  public final String place(Finding finding) {
    return finding.part() == Finding.WHOLE ? "towers" : "towers[" + finding.part() + "]";
  }

  @Override
  public final String tower(Subject subject, Finding finding) {
    if (finding.part() == Finding.WHOLE) {
      return null;
    }
    String own = towers(subject).get(finding.part()).text("name");
    return own == null ? "tower " + (finding.part() + 1) : own;
  }

  @Override
  public final String part(Subject subject, Finding finding) {
    return finding.part() != Finding.WHOLE && towers(subject).size() > 1
        ? tower(subject, finding)
        : null;
  }

  @Override
  public final Phrase why(Subject subject, Finding finding) {
    if (finding.part() == Finding.WHOLE) {
      return super.why(subject, finding);
    }
    Section tower = towers(subject).get(finding.part());
    StringBuilder lacking = new StringBuilder();
    String[] needs = needs();
    for (int i = 0; i < needs.length; i++) {
      String lacks = lacks(tower, needs[i]);
      if (lacks != null) {
        lacking.append(lacking.length() == 0 ? "needs " : " and ").append(lacks);
      }
    }
    return Phrase.of(lacking.toString());
  }

  /** Path of a key that a tower lacks, null when it has it. */
  private static String lacks(Section tower, String key) {
    if ("modules".equals(key)) {
      return tower.sections(key).isEmpty() ? tower.path(key) : null;
    }
    int dot = key.indexOf('.');
    Section holder = dot < 0 ? tower : holder(tower, key.substring(0, dot));
    String name = key.substring(dot + 1);
    return holder == null || holder.has(name) ? null : holder.path(name);
  }

  /** A section of a tower, of modules the lowest; null without modules, which is told alone. */
  private static Section holder(Section tower, String name) {
    if (!"modules".equals(name)) {
      return tower.section(name);
    }
    List<Section> modules = tower.sections(name);
    return modules.isEmpty() ? null : modules.get(0);
  }

  static List<Section> towers(Subject subject) {
    List<Section> towers = subject.plan().root().sections("towers");
    if (towers.isEmpty()) {
      throw subject.plan().root().missing("towers");
    }
    return towers;
  }

  /** Key path of a tower's key, such as {@code towers[0].outlet}. */
  static String key(int tower, String name) {
    return "towers[" + tower + "]." + name;
  }
}
