package leat.command.sense;

import leat.answer.Answer;
import leat.answer.Phrase;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.cli.Output;
import leat.log.LogReport;
import leat.plan.Kind;
import leat.plan.Refused;

/** {@code leat log}: what a logger's rows say of the tank, its plants and its faults. */
public final class LogCommand extends Command {
  static final Flag EVENTS = Flag.on("--events", "one row an event; csv is this without it, too");
  static final Flag DAYS = Flag.on("--days", "one row a day");
  static final Flag ROWS = Flag.on("--rows", "every row with its step, litres, band and flags");
  static final Flag ALARM =
      Flag.on("--alarm", "one line for each open alarm, and nothing at all when there is none");
  static final Flag NAME_COLUMN =
      Flag.of(
              "--name-column",
              "NAME",
              Kind.TEXT,
              "entity_id",
              "column of the sensor's name, in a file of time, name, value")
          .sets("log.name");
  static final Flag VALUE_COLUMN =
      Flag.of(
              "--value-column",
              "NAME",
              Kind.TEXT,
              "state",
              "column of the value, in a file of time, name, value")
          .sets("log.value");

  @Override
  public String name() {
    return "log";
  }

  @Override
  public String operands() {
    return "FILE...";
  }

  @Override
  public Flag[] flags() {
    return new Flag[] {
      ALARM,
      LogStory.SINCE,
      LogStory.NOW,
      LogStory.DAYS_LEFT,
      EVENTS,
      DAYS,
      ROWS,
      NAME_COLUMN,
      VALUE_COLUMN
    };
  }

  @Override
  public int stream(Call call, Output output) {
    checked(call);
    if (!call.has("--rows")) {
      return -1;
    }
    new LogRowsOut(call, output).run(call);
    return 0;
  }

  private void checked(Call call) {
    if (call.operands().isEmpty()) {
      throw new Refused(LogErrors.noFile(this));
    }
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
    String[] views = {"--alarm", "--events", "--days", "--rows"};
    String before = null;
    for (String view : views) {
      if (call.has(view) && before != null) {
        throw new Refused(CommandErrors.notBoth(this, before, view));
      }
      before = call.has(view) ? view : before;
    }
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    checked(call);
    LogChart chart = call.wantsChart() ? new LogChart() : null;
    LogInput input = new LogInput(call, chart);
    LogReport report = input.read(call.operands(), null);
    LogStory story = new LogStory(call, input, report);
    Answer answer = told(call, story);
    if (chart != null) {
      chart.draw(answer, report, input.system().zone());
    }
    return story.alarms.isEmpty() ? answer : answer.no();
  }

  private static Answer told(Call call, LogStory story) {
    if (call.has("--alarm")) {
      return alarm(story);
    }
    if (call.has("--days")) {
      Answer days = LogRowsTold.days(story);
      days.table(LogRowsTold.DAYS);
      return call.withTaken(days);
    }
    Answer events = LogRowsTold.events(story);
    if (call.has("--events")) {
      events.table(LogRowsTold.EVENTS);
      return call.withTaken(events);
    }
    return whole(call, story, events);
  }

  private static Answer whole(Call call, LogStory story, Answer events) {
    Answer head = new Answer(LogSummary.ALL);
    Row figures = head.row();
    LogSummary.fill(figures, story);
    events.jsonObject(head);
    events.array("events", events);
    events.array("days", LogRowsTold.days(story));
    events.array("alarms", LogRowsTold.alarms(story));
    LogText text = new LogText(story, figures);
    text.tell(events);
    call.withTaken(events);
    return events;
  }

  /** Nothing in text when all is well: cron mails what is printed. */
  private static Answer alarm(LogStory story) {
    Answer alarms = LogRowsTold.alarms(story);
    LogAlarmWords words = new LogAlarmWords(story);
    Phrase lines = Phrase.of();
    for (int i = 0; i < story.alarms.size(); i++) {
      lines.add(i == 0 ? "" : "\n").add(words.line(story.alarms.get(i)));
    }
    return alarms.sentence(lines);
  }
}
