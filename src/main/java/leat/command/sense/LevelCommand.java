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
import leat.cli.ShellWord;
import leat.level.Divider;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Status;
import leat.plan.Kind;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.quantity.Dimension;
import leat.system.SenderOf;

/** {@code leat level}: ohms or counts of the sender to litres, with their band. */
public final class LevelCommand extends Command {
  static final Flag COUNTS = Flag.on("--counts", LevelColumns.COUNTS_MEANING);

  private static final Column READINGS = Column.plain("readings", "readings");
  private static final Column ONE_STEP = Column.plain("one_step", "plainly one step");
  private static final Column FAULTS = Column.plain("faults", "faults of the sender");

  private static final Column[] SEVERAL = {
    LevelColumns.READING, LevelColumns.STATUS, LevelColumns.VOLUME_LOW,
    LevelColumns.VOLUME_HIGH, LevelColumns.LEVEL_LOW, LevelColumns.LEVEL_HIGH,
    LevelColumns.FULL
  };

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
      Flag.of(
          "--at-least",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "17 L",
          "ends with exit code 1 unless the low end of the band is at least this"),
      RowStream.COLUMN,
      RowStream.ROWS,
      RowStream.PREFIX,
      RowStream.STRICT
    };
  }

  /** Fills the rows of a stream, and remembers whether one was not sure of --at-least. */
  private static final class Rows extends RowStream.Function {
    private final SenderReading readings;
    private final Double low;
    private final Double atLeast;
    private boolean under;

    Rows(Call call) {
      this.readings = readings(call);
      this.low = SenderOf.lowVolume(call.plan(), call.taken());
      this.atLeast = call.from0("--at-least");
    }

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
      Reading reading = readings.of(cell);
      LevelColumns.fill(into, reading, low);
      under |= atLeast != null && reading.hasBand() && reading.mayBeBelow(atLeast);
    }
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
    Rows rows = new Rows(call);
    int code = new RowStream(call, rows).run(output);
    return code == 0 && rows.under ? 1 : code;
  }

  private void needPlan(Call call) {
    if (!call.hasPlan() && !call.has("--set")) {
      throw new Refused(CommandErrors.neededPlan(this));
    }
  }

  private static SenderReading readings(Call call) {
    Plan plan = call.plan();
    Divider divider =
        call.has("--counts") ? SenderOf.divider(plan.section("sender"), call.taken()) : null;
    return new SenderReading(SenderOf.of(plan, call.taken()), divider, LevelColumns.motion(call));
  }

  @Override
  public boolean draws() {
    return true;
  }

  @Override
  public Answer answer(Call call) {
    if (call.operands().isEmpty()) {
      throw new Refused(LevelErrors.noReading(this));
    }
    needPlan(call);
    SenderReading readings = readings(call);
    Answer answer = new Answer(LevelColumns.ALL);
    boolean no = read(call, answer, readings, SenderOf.lowVolume(call.plan(), call.taken()));
    call.withTaken(answer);
    return no ? answer.no() : answer;
  }

  /** Reads all that was typed; whether one of them is a no. */
  private static boolean read(Call call, Answer answer, SenderReading readings, Double low) {
    Double atLeast = call.from0("--at-least");
    Reading last = null;
    Status[] all = new Status[call.operands().size()];
    boolean no = false;
    for (int i = 0; i < all.length; i++) {
      last = readings.ofOperand(call.operands().get(i));
      LevelColumns.fill(answer.row(), last, low);
      all[i] = last.status();
      no |= all[i].isFault();
      no |= atLeast != null && last.hasBand() && last.mayBeBelow(atLeast);
    }
    if (all.length > 1) {
      several(answer, all);
    } else {
      one(call, answer, readings.sender(), last);
    }
    chart(call, answer, readings.sender(), all.length == 1 ? last : null);
    return no;
  }

  private static void chart(Call call, Answer answer, Sender sender, Reading drawn) {
    if (call.wantsChart()) {
      answer.chart(LevelChart.of(sender.staircase(), drawn));
    }
  }

  private static void several(Answer answer, Status[] all) {
    int good = 0;
    int faults = 0;
    for (int i = 0; i < all.length; i++) {
      good += all[i] == Status.OK ? 1 : 0;
      faults += all[i].isFault() ? 1 : 0;
    }
    Row counted =
        Row.aside(READINGS, ONE_STEP, FAULTS)
            .set(READINGS, answer.size())
            .set(ONE_STEP, good)
            .set(FAULTS, faults);
    answer.sentence(
        counted,
        faults == 1
            ? "{readings} readings: {one_step} plainly one step, 1 a fault of the sender."
            : "{readings} readings: {one_step} plainly one step, {faults} faults of the sender.");
    answer.table(SEVERAL);
  }

  private static void one(Call call, Answer answer, Sender sender, Reading reading) {
    new LevelWords(call, answer.row(0), sender, reading).say(answer);
    workings(answer, reading, sender);
    next(call, answer, reading);
  }

  private static void next(Call call, Answer answer, Reading reading) {
    if (reading.status().isFault()) {
      answer.next(
          call.again("level")
              + " READING   after reading the two wires with a meter, sender unplugged: it tells whether the sender or the way to it is at fault");
    } else if (LevelColumns.motion(call) == Motion.UNKNOWN && hasHysteresis(reading)) {
      answer.next(
          call.again("level", "--counts", "--at-least")
              + " "
              + ShellWord.quoted(call.operands().get(0))
              + " --motion falling   when the level has only fallen since: a narrower band");
    } else if (!call.plan().section("sender").has("edges")) {
      answer.next(
          "leat level fit pours.csv   finds what the sender really does, from known amounts poured in");
    } else {
      answer.next(call.again("level table") + " --format csv   the same for a controller");
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
    volume(answer, reading, sender);
  }

  private static void volume(Answer answer, Reading reading, Sender sender) {
    answer.working(
        Working.of(
            "volume",
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
}
