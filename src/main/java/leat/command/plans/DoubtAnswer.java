package leat.command.plans;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.check.Rule;
import leat.cli.Call;
import leat.plan.Plan;
import leat.sweep.Doubt;
import leat.sweep.Guess;

/** How sure each rule's verdict is: all guesses of a plan drawn together, again and again. */
final class DoubtAnswer {
  private static final Column RULE = Column.plain("rule", "rule");
  private static final Column SHARE = Column.number("share_pass", "passes in", 3);
  private static final Column OF_DRAWS =
      Column.of("draws_pct", "share of the draws", Show.PERCENT.digits(3));
  private static final Column HANGS = Column.plain("hangs_on", "hangs on");
  private static final Column LOW = Column.plain("low", "from");
  private static final Column HIGH = Column.plain("high", "to");
  private static final Column SOURCE = Column.plain("source", "source");
  private static final Column SETTLED = Column.plain("settled_by", "settled by");
  private static final int OF_CSV = 3;

  private static final Column DRAWS = Column.plain("draws", "draws");
  private static final Column GUESSES = Column.plain("guesses", "guesses");
  private static final Column SURE = Column.plain("passing", "pass");
  private static final Column NEVER = Column.plain("never", "never pass");
  private static final Column UNSURE = Column.plain("unsure", "hang on a guess");
  private static final Column RULES = Column.plain("rules", "rules");

  private DoubtAnswer() {}

  static Answer of(Call call, String name, Rule[] rules) {
    int draws = SweepCommand.atLeast1(call, "--doubt");
    Plan plan = call.plan(name);
    List<Guess> guesses = Guess.of(plan);
    List<Doubt> all = Doubt.of(plan, guesses, rules, draws, DoubtFlags.seed(call));
    Answer answer =
        new Answer(RULE, SHARE, HANGS, LOW, HIGH, SOURCE, SETTLED).asList().csvColumns(OF_CSV);
    for (Doubt doubt : all) {
      fill(answer.row(), doubt);
    }
    Row counts = counts(all).set(DRAWS, draws).set(GUESSES, guesses.size());
    text(answer, counts, all, guesses.isEmpty());
    next(answer, all);
    return answer;
  }

  private static void next(Answer answer, List<Doubt> all) {
    for (Map.Entry<Guess, String> one : settling(all).entrySet()) {
      Row row = Row.aside(SETTLED, RULE);
      row.set(SETTLED, one.getKey().range().settledBy()).set(RULE, one.getValue());
      answer.next(row, "{settled_by}   tells most about {rule}");
    }
  }

  private static Row counts(List<Doubt> all) {
    int sure = 0;
    int never = 0;
    for (Doubt doubt : all) {
      sure += doubt.share() == 1 ? 1 : 0;
      never += doubt.share() == 0 ? 1 : 0;
    }
    Row counts = Row.aside(DRAWS, GUESSES, SURE, NEVER, UNSURE, RULES).set(RULES, all.size());
    return counts.set(SURE, sure).set(NEVER, never).set(UNSURE, all.size() - sure - never);
  }

  private static void fill(Row row, Doubt doubt) {
    row.set(RULE, doubt.rule().id()).set(SHARE, doubt.share());
    Guess guess = doubt.hangsOn();
    if (guess != null) {
      row.set(HANGS, guess.path())
          .set(LOW, guess.typedLow())
          .set(HIGH, guess.typedHigh())
          .set(SOURCE, guess.range().source())
          .set(SETTLED, guess.range().settledBy());
    }
  }

  private static void text(Answer answer, Row counts, List<Doubt> all, boolean noGuess) {
    if (noGuess) {
      answer.sentence(counts, "The plan states no number that is a guess: nothing is in doubt.");
      return;
    }
    answer.sentence(counts, sentence((Integer) counts.get(UNSURE)));
    each(answer, counts, all);
  }

  private static String sentence(int hang) {
    if (hang == 0) {
      return "No verdict hangs on a guess: in {draws} draws of {guesses} guesses {passing} rules always pass, {never} never.";
    }
    return hang == 1
        ? "One verdict of {rules} hangs on a guess: in {draws} draws of {guesses} guesses {passing} rules always pass, {never} never."
        : "{unsure} verdicts of {rules} hang on a guess: in {draws} draws of {guesses} guesses {passing} rules always pass, {never} never.";
  }

  private static void each(Answer answer, Row counts, List<Doubt> all) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).share() > 0 && all.get(i).share() < 1) {
        Row row = answer.row(i).with(Row.aside(OF_DRAWS).set(OF_DRAWS, all.get(i).share()));
        answer.figure(
            (String) row.get(RULE),
            row,
            "passes in {draws_pct} of the draws",
            "{hangs_on}, {low} to {high}");
      }
    }
    for (Doubt doubt : all) {
      if (doubt.share() == 0) {
        answer.figure(doubt.rule().id(), counts, "never passes", "");
      }
    }
  }

  /** The guesses that verdicts hang on, each with the rules that do. */
  private static Map<Guess, String> settling(List<Doubt> all) {
    Map<Guess, String> rules = new LinkedHashMap<>();
    for (Doubt doubt : all) {
      if (doubt.hangsOn() != null) {
        rules.merge(doubt.hangsOn(), doubt.rule().id(), (a, b) -> a + ", " + b);
      }
    }
    return rules;
  }
}
