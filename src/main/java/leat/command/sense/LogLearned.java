package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.level.Tank;
import leat.log.LogLessons;
import leat.log.UseMean;
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
    holdUp(lines);
    cap(lines);
    if (!lines.isEmpty()) {
      answer.next("set in the plan what the log has learned:   " + String.join("   ", lines));
    }
    drift(answer);
    if (story.alarms.isEmpty() && lines.isEmpty()) {
      answer.next(
          story.call.again("log")
              + operands()
              + " --alarm   for a cron job: silent while all is well");
    }
  }

  private String operands() {
    StringBuilder all = new StringBuilder();
    for (String file : story.call.operands()) {
      all.append(' ').append(leat.cli.Call.quoted(file));
    }
    return all.toString();
  }

  /** Only where what the plan says, its own thirst included, lies outside the interval. */
  private void thirst(List<String> lines) {
    UseMean use = story.report.use();
    if (use == null || story.planned == null || !(story.planned > 0)) {
      return;
    }
    Double own = story.plan.root().maybe("thirst");
    if (own == null ? use.contradicts(story.planned) : use.contradicts(story.planned, own)) {
      lines.add(
          "thirst: " + Phrase.of(use.thirst(story.planned), Show.PERCENT.digits(3)).render(false));
    }
  }

  private void holdUp(List<String> lines) {
    LogLessons learned = story.report.lessons();
    if (!story.plan.root().has("hold_up") && learned.dip() == learned.dip()) {
      lines.add("hold_up: " + Phrase.of(learned.dip(), Show.L.digits(2)).render(false));
    }
    if (!story.plan.section("sender").has("hysteresis") && hysteresis() != null) {
      lines.add("sender.hysteresis: " + Phrase.of(hysteresis(), Show.MM.digits(2)).render(false));
    }
  }

  private Double hysteresis() {
    Tank tank = story.tank();
    return tank == null ? null : LogSummary.known(story.report.hysteresisLevel(tank));
  }

  private void cap(List<String> lines) {
    LogLessons learned = story.report.lessons();
    if (learned.isCapOff(story.input.system())) {
      String dry = learned.capDry() == learned.capDry() ? count(learned.capDry()) : null;
      lines.add(
          "cap_sensor: {wet: "
              + count(learned.capWet())
              + (dry == null ? "}" : ", dry: " + dry + "}"));
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
