package leat.command.sense;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.level.Cutoff;
import leat.level.Divider;
import leat.level.LookupTable;
import leat.level.Sender;
import leat.system.SenderOf;

/** {@code leat level table --cutoff}: up to which reading a controller may run the pump. */
final class LevelCutoff {
  static final Column OHM = Column.of("cutoff_ohm", "run the pump to", LevelColumns.OHM);
  static final Column SIDE = Column.plain("run_side", "sure readings lie");
  static final Column COUNTS = Column.plain("cutoff_counts", "in counts");
  static final Column COUNTS_SIDE = Column.plain("run_side_counts", "sure counts lie");
  static final Column MARK = Column.of("mark_L", "mark", Show.L);
  static final Column SURE = Column.of("sure_L", "then there are at least", Show.L);

  private static final Column[] COLUMNS = {OHM, SIDE, COUNTS, COUNTS_SIDE, MARK, SURE};

  private final Call call;
  private final Double mark;
  private final Cutoff cutoff;
  private final Answer answer = new Answer(COLUMNS);
  private final Row row = answer.row();

  private LevelCutoff(Call call, Double mark, Cutoff cutoff) {
    this.call = call;
    this.mark = mark;
    this.cutoff = cutoff;
    row.set(MARK, mark);
    if (cutoff != null) {
      row.set(OHM, cutoff.ohm())
          .set(SURE, cutoff.sureVolume())
          .set(SIDE, cutoff.fromBelow() ? "at-or-over" : "under");
      if (cutoff.counts() >= 0) {
        row.set(COUNTS, cutoff.counts())
            .set(COUNTS_SIDE, cutoff.countsFromBelow() ? "at-or-over" : "at-or-under");
      }
    }
  }

  static LevelCutoff of(Call call, Sender sender, Divider divider, List<LookupTable.Row> rows) {
    Double asked = call.above0("--at-least");
    Double mark = asked == null ? SenderOf.lowVolume(call.plan(), call.taken()) : asked;
    Cutoff cutoff =
        mark == null ? null : Cutoff.of(rows, sender.staircase().falls(), divider, mark);
    return new LevelCutoff(call, mark, cutoff);
  }

  /** A line among the figures of the whole table. */
  void figure(Answer table) {
    if (cutoff != null) {
      table.figure("run the pump", row, ohms() + counts(), "sure of {sure_L} or more");
    }
  }

  private String ohms() {
    return cutoff.fromBelow() ? "from {cutoff_ohm} up" : "under {cutoff_ohm}";
  }

  private String counts() {
    if (cutoff.counts() < 0) {
      return "";
    }
    return cutoff.countsFromBelow()
        ? ", {cutoff_counts} counts or more"
        : ", {cutoff_counts} counts or fewer";
  }

  Answer answer() {
    if (mark == null) {
      throw call.plan().section("tank").missing("low");
    }
    call.withTaken(answer);
    if (cutoff == null) {
      return answer
          .sentence(
              row,
              "No reading of this sender is sure of {mark_L}: its steps are too wide, or lie too low.")
          .no();
    }
    return sure(answer);
  }

  private Answer sure(Answer answer) {
    answer.sentence(
        row,
        "Run the pump only with a reading "
            + ohms()
            + counts()
            + ": then the tank holds {sure_L} or more, and the mark is {mark_L}.");
    answer.mind(
        "stop-on-fault",
        "every other reading stops the pump: open, short and readings between two steps too. Take the median of some readings, with the pump at rest.");
    if (cutoff.counts() < 0) {
      answer.mind(
          "no-counts", "in ohms only: sender.divider in the plan gives the counts of your ADC.");
    }
    return answer.next(
        call.again("level table", "--motion")
            + " --c -o level_table.h   all readings as a C array");
  }
}
