package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.answer.Working;
import leat.log.DaysLeft;
import leat.log.LogReport;
import leat.log.UseMean;

/** The sums behind use and days left, for {@code --explain}. */
final class LogWorkings {
  private static final String SOURCE = "common practice, no source";

  private LogWorkings() {}

  static void tell(Answer answer, LogStory story) {
    LogReport report = story.report;
    UseMean use = report.use();
    if (use == null) {
      return;
    }
    answer.working(
        Working.of(
            "use per day",
            "m = mean of the last whole and sure days, -/+ 1.2816 s/sqrt(n)",
            Phrase.of("n = ").count(use.n()).add(", s = ").add(use.sd(), Show.L),
            use.mean(),
            Show.L,
            "counted between falling steps; days of faults, gaps, leaks left out",
            SOURCE));
    if (report.daysLeft() != null) {
      daysLeft(answer, story);
    }
  }

  private static void daysLeft(Answer answer, LogStory story) {
    LogReport report = story.report;
    DaysLeft left = report.daysLeft();
    answer.working(
        Working.number(
            "days left",
            "D = (V - V_low)/m, ends where m D +- 1.2816 sqrt(sv^2 + s^2 D + s^2 D^2/n) = V - V_low",
            Phrase.of("V = ")
                .add(report.volume(), Show.L)
                .add(", V_low = ")
                .add(story.input.system().low(), Show.L)
                .add(", m = ")
                .add(report.use().mean(), Show.L),
            left.days(),
            2,
            "while thirst stays; sv is the band's width over sqrt(12)",
            SOURCE));
  }
}
