package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.answer.Show;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.Output;
import leat.cli.RowStream;
import leat.level.Divider;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Status;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Section;
import leat.system.SenderOf;

/** {@code leat level}: ohms or counts of the sender to litres, with their band. */
public final class LevelCommand extends Command {
  static final Flag COUNTS =
      Flag.on("--counts", "the readings are counts of the ADC, through sender.divider");

  @Override
  public String name() {
    return "level";
  }

  @Override
  public String operands() {
    return "[READING...]";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      COUNTS,
      LevelColumns.MOTION,
      RowStream.COLUMN,
      RowStream.ROWS,
      RowStream.PREFIX,
      RowStream.STRICT
    };
  }

  @Override
  public int stream(Call call, Output output) {
    if (!call.has("--column")) {
      return -1;
    }
    if (!call.operands().isEmpty()) {
      throw new Refused(LevelErrors.readingsAndColumn(this, call.operands().get(0)));
    }
    needPlan(call);
    final SenderReading readings = readings(call);
    return new RowStream(
            call,
            new RowStream.Function() {
              @Override
              public Column[] columns() {
                return LevelColumns.ALL;
              }

              @Override
              public Column status() {
                return LevelColumns.STATUS;
              }

              @Override
              public void answer(String cell, Row into) {
                LevelColumns.fill(into, readings.of(cell));
              }
            })
        .run(output);
  }

  private void needPlan(Call call) {
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
  }

  private static SenderReading readings(Call call) {
    Plan plan = call.plan();
    Divider divider = call.has("--counts") ? SenderOf.divider(plan.section("sender")) : null;
    return new SenderReading(SenderOf.of(plan), divider, LevelColumns.motion(call));
  }

  @Override
  public Answer answer(Call call) {
    if (call.operands().isEmpty()) {
      throw new Refused(LevelErrors.noReading(this));
    }
    needPlan(call);
    SenderReading readings = readings(call);
    Answer answer = new Answer(LevelColumns.ALL);
    Reading last = null;
    int good = 0;
    int faults = 0;
    for (int i = 0; i < call.operands().size(); i++) {
      last = readings.ofOperand(call.operands().get(i));
      LevelColumns.fill(answer.row(), last);
      good += last.status() == Status.OK ? 1 : 0;
      faults += last.status().isFault() ? 1 : 0;
    }
    if (answer.size() == 1) {
      one(call, answer, last);
    } else {
      answer.sentence(
          Phrase.of()
              .count(answer.size())
              .add(" readings: ")
              .count(good)
              .add(good == 1 ? " is plainly one step, " : " are plainly one step, ")
              .count(faults)
              .add(faults == 1 ? " is a fault of the sender." : " are faults of the sender."));
      answer.table(
          LevelColumns.READING,
          LevelColumns.STATUS,
          LevelColumns.VOLUME_LOW,
          LevelColumns.VOLUME_HIGH,
          LevelColumns.LEVEL_LOW,
          LevelColumns.LEVEL_HIGH,
          LevelColumns.FULL);
    }
    call.withTaken(answer);
    return faults > 0 ? answer.no() : answer;
  }

  private static void one(Call call, Answer answer, Reading reading) {
    Plan plan = call.plan();
    LevelWords words = new LevelWords(plan, SenderOf.of(plan), LevelColumns.motion(call), reading);
    answer.sentence(words.sentence());
    words.figures(answer);
    words.minds(answer);
    workings(answer, reading, SenderOf.of(plan));
    next(call, answer, reading);
  }

  private static void next(Call call, Answer answer, Reading reading) {
    String plan = call.hasPlan() ? " --plan " + call.planName() : "";
    Section sender = call.plan().section("sender");
    if (reading.status().isFault()) {
      answer.next(
          "unplug the sender and read its two wires with a meter: leat level READING"
              + plan
              + " tells whether it is the sender or the way to it");
    } else if (LevelColumns.motion(call) == Motion.UNKNOWN && hasHysteresis(reading)) {
      answer.next(
          "leat level "
              + quoted(call.operands().get(0))
              + (call.has("--counts") ? " --counts" : "")
              + plan
              + " --motion falling   when it has only been drunk from: a narrower band");
    } else if (!sender.has("edges")) {
      answer.next(
          "leat level fit pours.csv   finds from poured litres what the sender really does");
    } else {
      answer.next("leat level table" + plan + " --format csv   the same for a controller");
    }
  }

  private static boolean hasHysteresis(Reading reading) {
    Staircase s = reading.staircase();
    int low = reading.stepLow();
    int high = reading.stepHigh();
    return low >= 0
        && (s.volumeLow(low, Motion.UNKNOWN) < s.volumeLow(low, Motion.RISING)
            || s.volumeHigh(high, Motion.UNKNOWN) > s.volumeHigh(high, Motion.FALLING));
  }

  private static void workings(Answer answer, Reading reading, Sender sender) {
    if (!reading.hasBand()) {
      return;
    }
    double ohm = reading.stepLowOhm();
    answer.working(
        Working.of(
            "half window of the step",
            "w = reading + tolerance R",
            Phrase.of("reading ")
                .add(sender.limits().reading(), Show.OHM)
                .add(", tolerance ")
                .add(sender.limits().tolerance(), Show.PERCENT)
                .add(", R = ")
                .add(ohm, LevelColumns.OHM),
            sender.limits().halfWindow(ohm),
            LevelColumns.OHM,
            "all resistors off the same way, the worst case",
            "common practice, no source"));
    answer.working(
        Working.of(
            "litres",
            "V = (V_low + V_high)/2",
            Phrase.of("V_low = ")
                .add(reading.volumeLow(), Show.L)
                .add(", V_high = ")
                .add(reading.volumeHigh(), Show.L),
            reading.volume(),
            Show.L,
            "the sender reads so anywhere between the two",
            "the middle has the least greatest error"));
    answer.working(
        Working.of(
            "share of full",
            "V/V_full",
            Phrase.of("V_full = ").add(sender.fullVolume(), Show.L),
            reading.fullShare(),
            Show.PERCENT,
            "any; may pass 100 %",
            "definition"));
  }

  private static String quoted(String operand) {
    return operand.indexOf(' ') < 0 ? operand : '"' + operand + '"';
  }
}
