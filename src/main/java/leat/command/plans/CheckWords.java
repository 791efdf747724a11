package leat.command.plans;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.check.Finding;
import leat.check.Verdict;

/** How check words its findings: the columns, a plan's sentence, its lines and its rows. */
final class CheckWords {
  static final Column PLAN = Column.plain("plan", "plan");
  static final Column RULE = Column.plain("rule", "rule");
  static final Column VERDICT = Column.plain("verdict", "verdict");
  static final Column VALUE = Column.plain("value", "value");
  static final Column NEED = Column.plain("need", "need");
  static final Column LIMIT = Column.plain("limit", "limit");
  static final Column UNIT = Column.plain("unit", "unit");
  static final Column ADVICE = Column.plain("advice", "advice");
  static final Column PLACE = Column.plain("place", "place");
  static final Column TOWER = Column.plain("tower", "tower");
  static final Column PART = Column.plain("part", "part");
  static final Column WORDS = Column.plain("words", "found, in words");

  static final Column MEANING = Column.plain("meaning", "meaning");
  static final Column READS = Column.plain("reads", "reads");
  static final Column SOURCE = Column.plain("source", "source");

  private static final String UNREADABLE = "unreadable";
  private static final int MOST_DIGITS = 9;
  private static final Verdict[] ORDER = Verdict.values();

  private CheckWords() {}

  private static final Column[] COLUMNS = {
    PLAN, RULE, VERDICT, VALUE, NEED, LIMIT, UNIT, ADVICE, PLACE, TOWER, PART, WORDS, MEANING,
    READS, SOURCE
  };

  /** Columns that only an explanation has. */
  private static final int EXPLAINED = 3;

  /** An answer with the columns of findings; with their rules' words when they are explained. */
  static Answer answer(boolean explained) {
    int n = COLUMNS.length - (explained ? 0 : EXPLAINED);
    return new Answer(java.util.Arrays.copyOf(COLUMNS, n)).asList();
  }

  /** "Nothing fails: 23 pass, 3 warn, 6 need values that the plan lacks." */
  static Phrase sentence(JudgedPlan plan, boolean named, boolean no) {
    Phrase words = Phrase.of(named ? plan.name + ": " : "");
    if (plan.isBroken()) {
      return named ? words.add("it cannot be read.") : Phrase.of();
    }
    int fails = plan.count(Verdict.FAIL);
    if (fails == 0) {
      words.add("Nothing fails: ");
    } else {
      words.count(fails).add(fails == 1 ? " fails: " : " fail: ");
    }
    others(words, plan);
    return words.add(fails == 0 && no ? ". By --strict that is a no." : ".");
  }

  private static void others(Phrase words, JudgedPlan plan) {
    words.count(plan.count(Verdict.PASS)).add(plan.count(Verdict.PASS) == 1 ? " passes" : " pass");
    counted(words, plan.count(Verdict.WARN), " warns", " warn");
    counted(
        words,
        plan.lacking(),
        " needs values that the plan lacks",
        " need values that the plan lacks");
    int refused = plan.count(Verdict.UNKNOWN) - plan.lacking();
    counted(words, refused, " cannot be judged", " cannot be judged");
  }

  private static void counted(Phrase words, int n, String one, String several) {
    if (n > 0) {
      words.add(", ").count(n).add(n == 1 ? one : several);
    }
  }

  /** The lines of a plan, the worst first. */
  static void lines(Answer answer, JudgedPlan plan, boolean all) {
    int passes = 0;
    for (int v = 0; v < ORDER.length; v++) {
      for (int i = 0; i < plan.found.size(); i++) {
        Finding finding = plan.found.get(i);
        if (finding.verdict() != ORDER[v]) {
          continue;
        }
        if (finding.verdict() == Verdict.PASS && !all) {
          passes++;
          continue;
        }
        line(answer, plan, finding);
      }
    }
    if (passes > 0) {
      answer.figure(mark(Verdict.PASS) + passes + " more pass", Phrase.of("--all shows them"));
    }
  }

  private static void line(Answer answer, JudgedPlan plan, Finding finding) {
    String part = finding.rule().part(plan.subject, finding);
    Phrase advice = plan.advisor.advice(finding);
    Phrase remark =
        Phrase.of(part == null ? "" : part + (advice.isEmpty() ? "" : ": ")).add(advice);
    answer.figure(
        mark(finding.verdict()) + finding.rule().id(),
        value(plan, finding),
        need(finding, words(plan, finding)),
        remark);
  }

  /** A verdict, as wide as the widest. */
  private static String mark(Verdict verdict) {
    String word = verdict == Verdict.FAIL ? "FAIL" : verdict.word();
    return word + "         ".substring(word.length());
  }

  /** What was found, a number with its unit or words; "-" for nothing. */
  static Phrase value(JudgedPlan plan, Finding finding) {
    if (finding.hasValue()) {
      return Phrase.of(finding.value(), apart(finding));
    }
    String words = words(plan, finding);
    return Phrase.of(words == null ? "-" : words);
  }

  /** With digits enough that a breach does not read like its limit. */
  private static Show apart(Finding finding) {
    Show show = finding.rule().show();
    while (finding.isBreach()
        && finding.hasLimit()
        && show.digits() < MOST_DIGITS
        && readAlike(finding, show)) {
      show = show.digits(show.digits() + 1);
    }
    return show;
  }

  private static boolean readAlike(Finding finding, Show show) {
    return Phrase.readAlike(finding.value(), finding.limit(), show, false)
        || Phrase.readAlike(finding.value(), finding.limit(), show, true);
  }

  private static Phrase need(Finding finding, String words) {
    if (finding.verdict() == Verdict.UNKNOWN || finding.verdict() == Verdict.OFF) {
      return Phrase.of("-");
    }
    Phrase need = Phrase.of(finding.rule().need());
    boolean number = finding.rule().takesLimit();
    return finding.hasLimit()
        ? need.add(" ").add(finding.limit(), apart(finding))
        : number ? Phrase.of(words == null ? "-" : words) : need;
  }

  /** The words of a finding without a number, or whose number is not held against one; or null. */
  static String words(JudgedPlan plan, Finding finding) {
    boolean judged = finding.isBreach() || finding.verdict() == Verdict.PASS;
    if (!judged || finding.hasValue() && finding.hasLimit()) {
      return null;
    }
    String words = finding.rule().words(plan.subject, finding);
    return finding.hasValue() && "-".equals(words) ? null : words;
  }

  /** The row of a plan that cannot be read. */
  static void unreadable(Answer answer, JudgedPlan plan) {
    answer.row().set(PLAN, plan.name).set(VERDICT, UNREADABLE);
  }

  /** The row of a finding. */
  static Row row(Answer answer, JudgedPlan plan, Finding finding) {
    Show show = finding.rule().show();
    Phrase advice = plan.advisor.advice(finding);
    return answer
        .row()
        .set(PLAN, plan.name)
        .set(RULE, finding.rule().id())
        .set(VERDICT, finding.verdict().word())
        .setAny(VALUE, finding.hasValue() ? shown(finding.value(), show) : null)
        .set(NEED, finding.rule().need())
        .setAny(LIMIT, finding.hasLimit() ? shown(finding.limit(), show) : null)
        .set(UNIT, show == null ? null : show.metric().symbol())
        .set(ADVICE, advice.isEmpty() ? null : advice.render(false))
        .set(PLACE, finding.rule().place(finding))
        .set(TOWER, finding.rule().tower(plan.subject, finding))
        .set(PART, finding.rule().part(plan.subject, finding))
        .set(WORDS, words(plan, finding));
  }

  static Double shown(double value, Show show) {
    return show.metric().fromBase(value);
  }

  /** Verdict of a plan in a comparison. */
  static String unreadable() {
    return UNREADABLE;
  }
}
