package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.cli.Call;
import leat.sweep.Judged;

/** A sweep's designs as an answer: what passes, in what order, and what is left out. */
final class SweepText {
  private static final Column FINE = Column.plain("fine", "fine");
  private static final Column DESIGNS = Column.plain("designs", "designs");
  private static final Column RANKED = Column.plain("ranked", "ranked");
  private static final int SHOWN = 20;

  private final Call call;
  private final SweepRun run;

  SweepText(Call call, SweepRun run) {
    this.call = call;
    this.run = run;
  }

  /** The designs that are shown, in the order asked for. */
  Answer answer() {
    List<Judged> kept = run.kept();
    Answer answer = new Answer(run.columns).asList();
    boolean text = "text".equals(call.format().name);
    int shown = text && !call.has("--top") ? Math.min(SHOWN, kept.size()) : kept.size();
    for (int i = 0; i < shown; i++) {
      run.fill(answer.row(), kept.get(i));
    }
    Row counts =
        Row.aside(FINE, DESIGNS, SweepRun.PASSES, SweepRun.REFUSED)
            .set(SweepRun.REFUSED, String.valueOf(run.refused));
    counts
        .set(FINE, (int) run.fine)
        .set(DESIGNS, (int) run.seen)
        .set(SweepRun.PASSES, kept.size() - shown);
    if (run.refused > 0 && !call.has("--all")) {
      answer.mind(
          "no-designs", counts, "{refused} of {designs} cannot be built at all: --all tells why.");
    }
    if (kept.isEmpty()) {
      answer.sentence(
          counts,
          run.fine == 0
              ? "None of {designs} designs passes every rule; --all shows them with the rule that fails."
              : "{fine} of {designs} designs pass every rule, and none meets what --where asks.");
      return answer.no();
    }
    answer.sentence(counts, "{fine} of {designs} designs fail no rule.");
    answer.table(shownColumns(kept.subList(0, shown)));
    worstFirst(answer);
    if (kept.size() > shown) {
      answer.mind("more-designs", counts, "{passes} more are not shown: --top N, or --format csv.");
    }
    return answer.next(
        call.again("check " + Call.quoted(SweepCommand.planName(call, call.command)))
            + " --set KEY=VALUE   with the values of a row tells each rule of a design");
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
