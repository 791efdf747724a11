package leat.command.sense;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Working;
import leat.cli.Call;
import leat.cli.Command;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.level.Divider;
import leat.level.LookupTable;
import leat.level.Motion;
import leat.level.Sender;
import leat.plan.Kind;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.system.SenderOf;

/** {@code leat level table}: the lookup table for a controller. */
public final class LevelTableCommand extends Command {
  static final Column FROM = Column.of("from_ohm", "from", LevelColumns.OHM);
  static final Column TO = Column.of("below_ohm", "to below", LevelColumns.OHM);
  static final Column FROM_COUNTS = Column.plain("from_counts", "from counts");
  static final Column TO_COUNTS = Column.plain("to_counts", "to counts");
  static final Column AT = Column.of("measured_ohm", "reading", LevelColumns.OHM);
  static final Column COUNTS = Column.plain("counts", "counts");
  static final Column STRETCHES = Column.plain("stretches", "stretches");
  private static final Column[] STRETCHES_SHOWN = {
    FROM,
    TO,
    FROM_COUNTS,
    TO_COUNTS,
    LevelColumns.STATUS,
    LevelColumns.LEVEL_LOW,
    LevelColumns.LEVEL_HIGH,
    LevelColumns.VOLUME,
    LevelColumns.VOLUME_LOW,
    LevelColumns.VOLUME_HIGH,
    LevelColumns.FULL
  };

  private static final Flag[] FLAGS = {
    Flag.of(
        "--every",
        "OHM",
        Kind.quantity(Dimension.RESISTANCE),
        "5 ohm",
        "a row every so many ohms, interpolated: smooth for a display, no finer than the steps"),
    Flag.on("--c", "a C array for a microcontroller"),
    Flag.on(
        "--cutoff",
        "only the reading at which the controller stops the pump: sure of the refill mark before it"),
    Flag.of(
        "--at-least",
        "VOLUME",
        Kind.quantity(Dimension.VOLUME),
        "9 L",
        "water that must be there for sure at the cut-off, instead of the refill mark"),
    LevelColumns.MOTION,
  };

  @Override
  public String name() {
    return "level table";
  }

  @Override
  public Flag[] flags() {
    return FLAGS;
  }

  @Override
  public Answer answer(Call call) {
    oneMode(call);
    Section section = call.plan().section("sender");
    Divider divider = SenderOf.hasDivider(section) ? SenderOf.divider(section, call.taken()) : null;
    Sender sender = SenderOf.of(call.plan(), call.taken());
    sender = divider == null ? sender : sender.readBy(divider);
    Motion motion = LevelColumns.motion(call);
    if (call.has("--every")) {
      return interpolated(call, sender, divider, motion);
    }
    List<LookupTable.Row> rows = LookupTable.of(sender, divider, motion);
    if (call.has("--c")) {
      String name = call.hasPlan() ? call.planName() : "flags";
      return Answer.verbatim(new LevelArray(rows, divider, name).text());
    }
    LevelCutoff cutoff = LevelCutoff.of(call, sender, divider, rows);
    return call.has("--cutoff") ? cutoff.answer() : stretches(call, rows, divider, cutoff);
  }

  private void oneMode(Call call) {
    String[] modes = {"--every", "--c", "--cutoff"};
    String chosen = null;
    for (int i = 0; i < modes.length; i++) {
      if (call.has(modes[i]) && chosen != null) {
        throw new Refused(CommandErrors.notBoth(this, chosen, modes[i]));
      }
      chosen = call.has(modes[i]) ? modes[i] : chosen;
    }
  }

  private static Answer stretches(
      Call call, List<LookupTable.Row> rows, Divider divider, LevelCutoff cutoff) {
    Answer answer = new Answer(STRETCHES_SHOWN).asList();
    for (int i = 0; i < rows.size(); i++) {
      fill(answer.row(), rows.get(i));
    }
    answer.sentence(
        Row.aside(STRETCHES).set(STRETCHES, rows.size()),
        "{stretches} stretches of readings, each with what it says about the tank.");
    table(answer, divider);
    cutoff.figure(answer);
    working(answer, rows, divider);
    call.withTaken(answer);
    return next(call, answer, divider);
  }

  private static void fill(Row row, LookupTable.Row stretch) {
    row.set(FROM, stretch.ohmFrom()).set(TO, stretch.ohmTo());
    if (stretch.countsFrom() >= 0) {
      row.set(FROM_COUNTS, stretch.countsFrom()).set(TO_COUNTS, stretch.countsTo());
    }
    LevelColumns.fillBand(row, stretch.reading());
  }

  /** The counts of the first stretch that an ADC can tell. */
  private static void working(Answer answer, List<LookupTable.Row> rows, Divider divider) {
    for (int i = 0; divider != null && i < rows.size(); i++) {
      if (rows.get(i).ohmFrom() != null && rows.get(i).ohmFrom() > 0) {
        Row row = answer.row(i);
        answer.working(
            Working.number(
                "counts of a reading",
                "counts = 2^N (Vs/Vref) R/(R + Rf), R the sender's side to ground",
                Answer.filled(row, "R = {from_ohm}"),
                rows.get(i).countsFrom(),
                4,
                "a linear ADC, first transition at half a count",
                "Ohm's law"));
        return;
      }
    }
  }

  private static void table(Answer answer, Divider divider) {
    if (divider == null) {
      answer.table(
          FROM, TO, LevelColumns.STATUS, LevelColumns.VOLUME_LOW, LevelColumns.VOLUME_HIGH);
    } else {
      answer.table(
          FROM,
          TO,
          FROM_COUNTS,
          TO_COUNTS,
          LevelColumns.STATUS,
          LevelColumns.VOLUME_LOW,
          LevelColumns.VOLUME_HIGH);
    }
  }

  private static Answer next(Call call, Answer answer, Divider divider) {
    if (divider == null) {
      answer.mind(
          "no-counts", "in ohms only: sender.divider in the plan gives the counts of your ADC.");
    } else {
      answer.mind(
          "counts-doubt",
          "each step holds all that it can be taken for when resistors, supply, reference and ADC are off the worst way.");
    }
    return answer.next(
        call.again("level table", "--motion") + " --c -o level_table.h   the same as a C array");
  }

  private static Answer interpolated(Call call, Sender sender, Divider divider, Motion motion) {
    Answer answer =
        new Answer(
                AT, COUNTS, LevelColumns.VOLUME, LevelColumns.VOLUME_LOW, LevelColumns.VOLUME_HIGH)
            .asList();
    List<LookupTable.Point> points =
        LookupTable.interpolated(sender, divider, motion, call.above0("--every"));
    for (int i = 0; i < points.size(); i++) {
      fill(answer.row(), points.get(i));
    }
    answer.sentence(
        Row.aside(STRETCHES).set(STRETCHES, points.size()),
        "{stretches} rows, straight between the middles of the steps.");
    answer.table(
        AT, COUNTS, LevelColumns.VOLUME, LevelColumns.VOLUME_LOW, LevelColumns.VOLUME_HIGH);
    call.withTaken(answer);
    return answer.mind(
        "interpolated",
        "it looks finer than the sender is; the band beside each row is what is known.");
  }

  private static void fill(Row row, LookupTable.Point point) {
    row.set(AT, point.ohm());
    if (point.counts() >= 0) {
      row.set(COUNTS, point.counts());
    }
    row.set(LevelColumns.VOLUME, point.volume())
        .set(LevelColumns.VOLUME_LOW, point.volumeLow())
        .set(LevelColumns.VOLUME_HIGH, point.volumeHigh());
  }
}
