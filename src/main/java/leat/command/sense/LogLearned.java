package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.ShellWord;
import leat.log.LogLessons;
import leat.quantity.NumberText;

/** What the log teaches the plan, as lines to set. */
final class LogLearned {
  private final LogStory story;
  private final Row row;

  LogLearned(LogStory story, Row row) {
    this.story = story;
    this.row = row;
  }

  void tell(Answer answer) {
    List<String> lines = new ArrayList<>();
    thirst(lines);
    holdUp(answer, lines);
    cap(lines);
    if (!lines.isEmpty()) {
      set(answer, lines);
    }
    drift(answer);
    if (story.alarms.isEmpty() && lines.isEmpty()) {
      answer.next(
          story.call.again("log")
              + operands()
              + " --alarm   for a cron job: silent while all is well");
    }
  }

  /** One line that writes all of them; without a plan file what to write in one. */
  private void set(Answer answer, List<String> lines) {
    String plan = story.call.hasPlan() ? story.call.planName() : "-";
    if ("-".equals(plan)) {
      answer.next("in the plan write what the log has learned:   " + String.join("   ", lines));
      return;
    }
    StringBuilder line = new StringBuilder("leat plan set ").append(ShellWord.quoted(plan));
    for (String one : lines) {
      line.append(' ').append(ShellWord.quoted(one));
    }
    answer.next(line + "   what the log has learned");
  }

  private String operands() {
    StringBuilder all = new StringBuilder();
    for (String file : story.call.operands()) {
      all.append(' ').append(ShellWord.quoted(file));
    }
    return all.toString();
  }

  /** Only where what the plan says, its own thirst included, lies outside the interval. */
  private void thirst(List<String> lines) {
    Double own = story.plan.root().maybe("thirst");
    if (story.thirst().contradicts(own)) {
      Double factor = story.thirst().factor();
      lines.add("thirst=" + Phrase.of(factor, Show.PERCENT.digits(3)).render(false));
    }
  }

  private void holdUp(Answer answer, List<String> lines) {
    boolean known = story.plan.root().has("hold_up");
    boolean lasts = story.plan.section("sender").has("hysteresis");
    Object dip = row.get(LogSummary.HOLD_UP);
    Object hysteresis = row.get(LogSummary.HYSTERESIS);
    if (!known && lasts && dip != null) {
      lines.add("hold_up=" + words(dip, Show.L));
      answer.mind(
          "hold-up-band",
          row,
          "hold_up is seen through the pump's short runs: {hold_up_low_L!} to {hold_up_high_L}. Better: mark the level, let it run, mark it again (leat tank).");
    } else if (!known && row.get(LogSummary.HOLD_UP_LOW) != null) {
      holdUpUnknown(answer, lasts);
    }
    if (!lasts && hysteresis != null) {
      lines.add("sender.hysteresis=" + words(hysteresis, Show.MM));
    }
  }

  private void holdUpUnknown(Answer answer, boolean lasts) {
    answer.mind(
        "hold-up-unknown",
        row,
        lasts
            ? "a run keeps {hold_up_low_L} or more above the tank; how much is not known, because the logger reads always at the same moments of a run. Mark the level, let the pump run, mark it again (leat tank): the litres between are hold_up."
            : "a run keeps {hold_up_low_L} or more above the tank; how much is not known while the plan has no sender.hysteresis (leat level fit --drained).");
  }

  private static String words(Object value, Show show) {
    return Phrase.of((Double) value, show.digits(2)).render(false);
  }

  private void cap(List<String> lines) {
    LogLessons learned = story.report.lessons();
    if (learned.isCapOff(story.input.system())) {
      if (learned.capWet() == learned.capWet()) {
        lines.add("cap_sensor.wet=" + count(learned.capWet()));
      }
      if (learned.capDry() == learned.capDry()) {
        lines.add("cap_sensor.dry=" + count(learned.capDry()));
      }
    }
  }

  private static String count(double counts) {
    return NumberText.decimals(counts, 0).replace(" ", "");
  }

  private void drift(Answer answer) {
    if (story.report.lessons().isDrifting()) {
      answer.mind(
          "ec-drift",
          row,
          "the EC after pourings moves by {ec_drift_mS_cm} in 30 days: if you pour the same, check the meter (leat ec --standard).");
    }
  }
}
