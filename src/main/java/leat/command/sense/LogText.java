package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.log.DaysLeft;
import leat.log.LogAlarm;
import leat.log.LogDay;
import leat.log.LogReport;
import leat.log.UseMean;

/** A log in words: now, a day, the next can; then this week; then what to mind and to set. */
final class LogText {
  private static final Column MARK = Column.plain("mark_on", "refill mark");
  private static final Column EARLIEST = Column.plain("earliest", "at the earliest");
  private static final Column BY = Column.plain("by", "by");
  private static final Column FROM_TO = Column.plain("from_to", "from and to");
  private static final Column UNSURE = Column.plain("days_out", "days left out");
  private static final Column SURE_DAYS = Column.plain("sure_days", "sure days");
  private static final Column LEAST_DAYS = Column.plain("least_days", "days needed");
  private static final Column FULL = Column.of("blind_from_L", "blind from", Show.L);

  private static final Column LOCAL = Column.plain("local_times", "local times");
  private static final Column WHY = Column.plain("why", "why");

  private static final int WEEK = 7;

  private final LogStory story;
  private final LogReport report;
  private final Row row;

  LogText(LogStory story, Row figures) {
    this.story = story;
    this.report = story.report;
    Row words = Row.aside(MARK, EARLIEST, BY, FROM_TO, UNSURE, SURE_DAYS, LEAST_DAYS, FULL);
    words.set(FROM_TO, story.dates.span(report.first(), report.last()));
    words.set(LEAST_DAYS, story.limits().useLeastDays());
    words.set(SURE_DAYS, sureDays());
    DaysLeft left = report.daysLeft();
    if (left != null) {
      words.set(MARK, story.dates.weekday(report.dateAfter(left.days()), report.last()));
      words.set(EARLIEST, story.dates.weekday(report.dateAfter(left.low()), report.last()));
      words.set(BY, story.dates.weekday(report.topupBy(), report.last()));
    }
    this.row = figures.with(words);
  }

  private int sureDays() {
    int n = 0;
    for (LogDay day : report.days()) {
      n += day.isSure() ? 1 : 0;
    }
    return n;
  }

  void tell(Answer answer) {
    answer.sentence(row, sentence());
    alarms(answer);
    figures(answer);
    weekdays(answer);
    new LogEventWords(story.dates).week(answer, report);
    minds(answer);
    LogWorkings.tell(answer, story);
    new LogLearned(story, row).tell(answer);
  }

  private String sentence() {
    if (!report.hasVolume()) {
      return "No level can be read from this log: no reading belongs to a step of the sender.";
    }
    String now = isNarrow() ? "About {volume_L} now; " : "{volume_low_L!} to {volume_high_L} now; ";
    if (report.use() == null) {
      return now
          + "the log is too short to say what the plants drink: {sure_days} of {least_days} whole, sure days.";
    }
    return now + drink();
  }

  private String drink() {
    String drink =
        printAlike(report.use().low(), report.use().high(), Show.L)
            ? "the plants drink {use_L_day} per day"
            : "the plants drink {use_L_day} per day ({use_low_L_day!} to {use_high_L_day!})";
    DaysLeft left = report.daysLeft();
    if (left == null) {
      return drink + ".";
    }
    if (left.days() <= 0) {
      return drink + "; it is at or below the refill mark: fill up today.";
    }
    boolean sameDay = report.dateAfter(left.days()) == report.dateAfter(left.low());
    return drink
        + (sameDay
            ? "; the refill mark comes {mark_on}."
            : "; the refill mark comes {mark_on}, {earliest} at the earliest.");
  }

  /** Whether both ends of the band print alike. */
  private boolean isNarrow() {
    return printAlike(report.volumeLow(), report.volumeHigh(), Show.L);
  }

  private boolean printAlike(double low, double high, Show show) {
    return Phrase.readAlike(low, high, show, story.call.format().us);
  }

  private void alarms(Answer answer) {
    if (story.alarms.isEmpty()) {
      return;
    }
    answer.block(Phrase.of("Alarm:"));
    LogAlarmWords words = new LogAlarmWords(story);
    for (LogAlarm alarm : story.alarms) {
      answer.figure(alarm.kind().word(), words.words(alarm));
    }
    answer.block();
  }

  private void figures(Answer answer) {
    answer.figure("rows", row, "{rows}", "{from_to}", "bad cells: {bad_cells}", "gaps: {gaps}");
    if (report.hasVolume()) {
      answer.figure("by the edges", row, "{volume_L}");
    }
    if (report.daysLeft() != null && report.daysLeft().days() > 0) {
      answer.figure(
          "days left",
          row,
          report.daysLeft().high() < Double.POSITIVE_INFINITY
              ? "{days_left_low..days_left_high}"
              : "{days_left_low} or more",
          "if thirst stays; pour {by}");
    }
    if (report.ec() == report.ec()) {
      answer.figure("EC", row, "{ec_mS_cm}");
    }
    if (story.thirst().isKnown()) {
      forecast(answer);
    }
  }

  private void forecast(Answer answer) {
    answer.figure(
        story.thirst().isBySeason() ? "season says" : "plan says",
        row,
        "{plan_L_d}",
        story.thirst().isBySeason()
            ? story.thirst().isHeld()
                ? "on the same days; the log is far from it, held at {thirst_pct}"
                : "on the same days; the log is {thirst_pct} of it"
            : "the log is {thirst_pct} of it");
  }

  private void weekdays(Answer answer) {
    UseMean[] days = report.weekdays();
    for (int w = 0; w < days.length; w++) {
      if (report.differs(w)) {
        answer.figure(
            LogDates.weekday(w + 1),
            Phrase.of(days[w].mean(), Show.L),
            Phrase.of("differs from the other days"));
      }
    }
  }

  private void minds(Answer answer) {
    reading(answer);
    LogColumnWords.tell(answer, story);
    unsure(answer);
    if (story.thirst().isHeld()) {
      answer.mind(
          "thirst-held",
          "log and forecast are far apart: look at the crops' dates and pots, and at the sender, before you believe either.");
    }
    if (story.input.localTimes > 0 && story.input.otherTimes > 0) {
      mixed(answer);
    }
    if (story.thirst().unread() != null) {
      Row why = Row.aside(WHY).set(WHY, story.thirst().unread());
      answer.mind(
          "season-unread",
          why,
          "the season of the plan cannot be worked out, so thirst is not held against it: {why}.");
    }
    times(answer);
  }

  private void reading(Answer answer) {
    if (!story.input.hasReading) {
      answer.mind(
          "no-reading-column",
          "there is no column of the sender's reading; name it in the plan: log: {reading: NAME}");
    } else if (report.isOtherSender() && report.isKiloOhm()) {
      answer.mind(
          "kilo-ohm",
          LogAlarmWords.kiloOhm(story),
          "{column} reads like kilo-ohm, not ohm: let the logger write ohm, {in_ohm!} where it writes {as_read}.");
    } else if (report.isOtherSender()) {
      answer.mind(
          "odd-readings",
          row,
          "{odd_readings} of {rows} readings belong to no step of the plan's sender. Are they counts where the plan says ohm, or of another sender? log.reading_in says which.");
    }
    if (report.isBlind()) {
      answer.mind(
          "blind",
          "the top step is read: above it the sender sees nothing, so the band reaches to full.");
    }
  }

  private void mixed(Answer answer) {
    Row words = Row.aside(LOCAL);
    words.set(LOCAL, (int) story.input.localTimes);
    answer.mind(
        "times-mixed",
        words,
        "{local_times} rows have a time without an offset and are taken as local; the others carry an offset, or count seconds. Is it one clock?");
  }

  private void times(Answer answer) {
    if (story.input.otherZone) {
      answer.mind(
          "other-zone",
          "the times carry an offset that site.time_zone does not have at that date; days are those of the plan's zone.");
    }
    if (story.input.clockNotSet > 0) {
      answer.mind(
          "clock-not-set",
          row,
          "{clock_not_set} rows have a time before 2000: the logger's clock was not set. They are left out.");
    }
  }

  private void unsure(Answer answer) {
    List<String> out = new ArrayList<>();
    List<LogDay> days = report.days();
    for (int i = Math.max(0, days.size() - WEEK); i < days.size(); i++) {
      if (!days.get(i).isSure() && days.get(i).isWhole()) {
        out.add(LogDates.day(days.get(i).date()));
      }
    }
    if (!out.isEmpty()) {
      Row words = Row.aside(UNSURE);
      words.set(UNSURE, String.join(", ", out));
      answer.mind(
          "days-left-out",
          words,
          "left out of what the plants drink, because of what happened then: {days_out}.");
    }
  }
}
