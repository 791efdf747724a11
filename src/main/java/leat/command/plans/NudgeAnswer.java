package leat.command.plans;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.plan.Plan;
import leat.sweep.Measure;
import leat.sweep.Nudge;
import leat.sweep.Swing;

/** Each guess of a plan moved to its ends: which answer moves most. */
final class NudgeAnswer {
  private static final Column KEY = Column.plain("key", "key");
  private static final Column LOW = Column.plain("low", "from");
  private static final Column HIGH = Column.plain("high", "to");
  private static final Column MEASURE = Column.plain("measure", "measure");
  private static final Column AT_LOW = Column.number("at_low", "at low", 3);
  private static final Column AT_HIGH = Column.number("at_high", "at high", 3);
  private static final Column AS_IS = Column.number("as_is", "as it is", 3);
  private static final Column SOURCE = Column.plain("source", "source");
  private static final Column BAR = Column.plain("bar", "swing");
  private static final Column STILL = Column.plain("still", "still");
  private static final int OF_CSV = 6;
  private static final int BAR_WIDTH = 24;

  private NudgeAnswer() {}

  static Answer of(Call call, String name, List<Measure> measures) {
    Plan plan = call.plan(name);
    List<Nudge> all = Nudge.of(plan, measures);
    Answer answer =
        new Answer(KEY, LOW, HIGH, MEASURE, AT_LOW, AT_HIGH, AS_IS, SOURCE)
            .asList()
            .csvColumns(OF_CSV);
    for (Nudge nudge : all) {
      fill(answer.row(), nudge);
    }
    text(answer, all, call.us());
    for (int i = 0; call.wantsChart() && i < measures.size(); i++) {
      answer.chart(SweepChart.of(all, measures.get(i)));
    }
    return answer.next(
        call.again("check " + ShellWord.quoted(name))
            + " --doubt 200   tells how sure each rule is");
  }

  private static void fill(Row row, Nudge nudge) {
    row.set(KEY, nudge.guess().path())
        .set(LOW, nudge.guess().typedLow())
        .set(HIGH, nudge.guess().typedHigh())
        .set(MEASURE, nudge.measure().name())
        .set(AT_LOW, nudge.measure().shown(nudge.atLow()))
        .set(AT_HIGH, nudge.measure().shown(nudge.atHigh()))
        .set(AS_IS, nudge.measure().shown(nudge.asIs()))
        .set(SOURCE, nudge.guess().range().source());
  }

  private static void text(Answer answer, List<Nudge> all, boolean us) {
    if (all.isEmpty()) {
      answer.sentence(Row.aside(), "The plan states no number that is a guess.");
      return;
    }
    int most = Nudge.mostMoved(all);
    answer.sentence(
        shown(answer, all, Math.max(0, most), us),
        most < 0
            ? "No guess of the plan moves {measure}."
            : "{key} matters most: {measure} goes from {at_low} to {at_high} when the guess goes from {low} to {high}.");
    each(answer, all, us);
  }

  /** The row in the words and units of text: csv has names that hold their unit. */
  private static Row shown(Answer answer, List<Nudge> all, int i, boolean us) {
    Nudge nudge = all.get(i);
    Column column = nudge.measure().column();
    if (!us || column.show() == null) {
      return answer.row(i);
    }
    Column low = Column.of("at_low", "at low", column.show());
    Column high = Column.of("at_high", "at high", column.show());
    return Row.aside(KEY, MEASURE, low, high, LOW, HIGH)
        .set(KEY, nudge.guess().path())
        .set(MEASURE, column.label())
        .set(low, known(nudge.atLow()))
        .set(high, known(nudge.atHigh()))
        .set(LOW, Phrase.said(nudge.guess().typedLow()).render(true))
        .set(HIGH, Phrase.said(nudge.guess().typedHigh()).render(true));
  }

  private static Double known(double value) {
    return Double.isNaN(value) ? null : Double.valueOf(value);
  }

  private static void each(Answer answer, List<Nudge> all, boolean us) {
    int still = 0;
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).isStill()) {
        still++;
        continue;
      }
      bar(answer, all, i, us);
    }
    if (still > 0) {
      answer.mind(
          "still",
          Row.aside(STILL).set(STILL, still),
          "{still} pairs of guess and measure do not move.");
    }
  }

  private static void bar(Answer answer, List<Nudge> all, int i, boolean us) {
    Row row = shown(answer, all, i, us).with(Row.aside(BAR).set(BAR, Swing.bar(all, i, BAR_WIDTH)));
    answer.figure(
        (String) row.get(KEY),
        row,
        "{measure}",
        "{at_low} to {at_high}",
        "{bar}",
        "{low} to {high}");
  }
}
