package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.sweep.Judged;

/** A sweep's designs as an answer: what passes, in what order, and what is left out. */
final class SweepText {
  private static final Column FINE = Column.plain("fine", "fine");
  private static final Column DESIGNS = Column.plain("designs", "designs");
  private static final Column WHY = Column.plain("why", "why");
  private static final Column RANKED = Column.plain("ranked", "ranked");
  private static final int SHOWN = 20;

  /** So many rules are told that no design passes. */
  private static final int FAILING = 3;

  private final Call call;
  private final SweepRun run;

  SweepText(Call call, SweepRun run) {
    this.call = call;
    this.run = run;
  }

  /** The designs that are shown, in the order asked for. */
  Answer answer() {
    List<Judged> kept = new KeptDesigns(run).inOrder();
    Answer answer = new Answer(run.columns).asList();
    boolean text = "text".equals(call.format().name);
    int shown = text && !call.has("--top") ? Math.min(SHOWN, kept.size()) : kept.size();
    for (int i = 0; i < shown; i++) {
      run.fill(answer.row(), kept.get(i));
    }
    Row counts = counts(kept.size() - shown);
    if (run.refused > 0 && !call.has("--all")) {
      answer.mind(
          "no-designs", counts, "{refused} of {designs} cannot be built at all: --all tells why.");
    }
    if (kept.isEmpty()) {
      return none(answer, counts);
    }
    return some(answer, counts, kept, shown);
  }

  private Answer some(Answer answer, Row counts, List<Judged> kept, int shown) {
    answer.sentence(counts, passing());
    if (run.fine == 0) {
      answer.no();
    }
    answer.table(shownColumns(kept.subList(0, shown)));
    unknown(answer, kept);
    worstFirst(answer);
    if (call.wantsChart() && run.shownMeasures > 1) {
      answer.chart(SweepChart.of(kept, run.measures.get(0), run.measures.get(1), run::named));
    }
    if (kept.size() > shown) {
      answer.mind("more-designs", counts, "{passes} more are not shown: --top N, or --format csv.");
    }
    return answer.next(
        call.again("check " + ShellWord.quoted(SweepCommand.planName(call, call.command)))
            + " --set KEY=VALUE   with the values of a row tells each rule of a design");
  }

  private String passing() {
    if (run.fine > 0) {
      return run.rules.length == 0
          ? "{fine} of {designs} designs can be built; no rule is asked."
          : "{fine} of {designs} designs fail no rule.";
    }
    if (run.refused == run.seen) {
      return "None of {designs} designs can be built.";
    }
    return run.refused > 0
        ? "None of {designs} designs is good: {refused} cannot be built, and the others fail a rule."
        : "None of {designs} designs is good: each fails a rule.";
  }

  private Row counts(int more) {
    return Row.aside(FINE, DESIGNS, SweepRun.PASSES, SweepRun.REFUSED)
        .set(SweepRun.REFUSED, String.valueOf(run.refused))
        .set(FINE, (int) run.fine)
        .set(DESIGNS, (int) run.seen)
        .set(SweepRun.PASSES, more);
  }

  private Answer none(Answer answer, Row counts) {
    answer.sentence(
        counts,
        run.fine == 0
            ? "None of {designs} designs passes every rule; --all shows them with the rule that fails."
            : "{fine} of {designs} designs pass every rule, and none meets what --where asks.");
    firstToFail(answer);
    return answer.no();
  }

  /** The rules that designs fail by, the commonest first. */
  private void firstToFail(Answer answer) {
    List<Map.Entry<String, Integer>> rules = new ArrayList<>(run.failing.entrySet());
    rules.sort((a, b) -> Integer.compare(b.getValue(), a.getValue()));
    for (int i = 0; i < Math.min(FAILING, rules.size()); i++) {
      Row row = Row.aside(SweepRun.WORST, DESIGNS);
      row.set(SweepRun.WORST, rules.get(i).getKey());
      row.set(DESIGNS, rules.get(i).getValue());
      answer.mind("designs-fail", row, "{worst_rule} is the first to fail in {designs} of them.");
    }
  }

  /** A measure that is empty in the first of the designs, and why. */
  private void unknown(Answer answer, List<Judged> kept) {
    Judged first = kept.get(0);
    List<String> told = new ArrayList<>();
    for (int m = 0; m < run.shownMeasures && first.refused() == null; m++) {
      String why = Double.isNaN(first.measures()[m]) ? run.why(first, m) : null;
      if (why != null && !told.contains(why)) {
        told.add(why);
        Row row = Row.aside(RANKED, WHY).set(RANKED, run.measures.get(m).name()).set(WHY, why);
        answer.mind("measure-unknown", row, "{ranked} is not known: {why}");
      }
    }
  }

  /** Ranked against what is better. */
  private void worstFirst(Answer answer) {
    String rank = call.has("--rank") ? call.text("--rank").strip() : null;
    if (rank == null
        || run.measures.get(run.measure(SweepRun.bare(rank))).upIsBetter()
            == rank.startsWith("-")) {
      return;
    }
    boolean most = rank.startsWith("-");
    Row row = Row.aside(RANKED).set(RANKED, SweepRun.bare(rank));
    answer.mind(
        "worst-first",
        row,
        most
            ? "the most {ranked} comes first, and less of it is better: --rank {ranked} turns it round."
            : "the least {ranked} comes first, and more of it is better: --rank=-{ranked} turns it round.");
  }

  /** Columns of the text: those that say something. */
  private Column[] shownColumns(List<Judged> shown) {
    List<Column> all = new ArrayList<>(List.of(run.keys));
    for (int m = 0; m < run.shownMeasures; m++) {
      all.add(run.measures.get(m).column());
    }
    if (run.rules.length > 0) {
      all.add(SweepRun.FAILS);
      all.add(SweepRun.WARNS);
      all.add(SweepRun.WORST);
    }
    if (shown.stream().anyMatch(one -> one.refused() != null)) {
      all.add(SweepRun.REFUSED);
    }
    return all.toArray(new Column[0]);
  }
}
