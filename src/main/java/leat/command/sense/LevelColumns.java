package leat.command.sense;

import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.cli.Call;
import leat.cli.Flag;
import leat.level.Motion;
import leat.level.Reading;
import leat.plan.Kind;

/** Columns and flags that the commands about the sender share. */
public final class LevelColumns {
  private LevelColumns() {}

  static final Show OHM = Show.OHM;
  static final Column READING = Column.of("reading_ohm", "reading", OHM);
  static final Column STATUS = Column.plain("status", "status");
  static final Column LEVEL_LOW = Column.of("level_low_mm", "level from", Show.MM);
  static final Column LEVEL_HIGH = Column.of("level_high_mm", "level to", Show.MM);
  static final Column VOLUME = Column.of("volume_L", "middle", Show.L);
  static final Column VOLUME_LOW = Column.of("volume_low_L", "volume from", Show.L);
  static final Column VOLUME_HIGH = Column.of("volume_high_L", "volume to", Show.L);
  static final Column FULL = Column.of("full_pct", "of full", Show.PERCENT);

  static final Column BELOW_LOW = Column.plain("below_low", "may be below the refill mark");

  static final Column[] ALL = {
    READING, STATUS, LEVEL_LOW, LEVEL_HIGH, VOLUME, VOLUME_LOW, VOLUME_HIGH, FULL, BELOW_LOW
  };

  /** What --motion asks of a reading. */
  public static final String MOTION_MEANING =
      "which way the level has moved since the reading last changed";

  /** What --counts says of a reading. */
  public static final String COUNTS_MEANING =
      "the reading is counts of the ADC, through sender.divider";

  static final Flag MOTION =
      Flag.of(
          "--motion",
          "WAY",
          Kind.choice("unknown", "rising", "falling"),
          "falling",
          MOTION_MEANING);

  public static Motion motion(Call call) {
    Object word = call.value("--motion");
    return "rising".equals(word)
        ? Motion.RISING
        : "falling".equals(word) ? Motion.FALLING : Motion.UNKNOWN;
  }

  /** {@code low} is the volume at the refill mark, null when the plan has none. */
  static void fill(Row row, Reading reading, Double low) {
    if (reading.hasOhm() && Math.abs(reading.ohm()) < Double.POSITIVE_INFINITY) {
      row.set(READING, reading.ohm());
    }
    fillBand(row, reading);
    if (low != null && reading.hasBand()) {
      row.set(BELOW_LOW, reading.mayBeBelow(low));
    }
  }

  /** All but the reading itself. */
  static void fillBand(Row row, Reading reading) {
    row.set(STATUS, reading.status().word());
    if (reading.hasBand()) {
      row.set(VOLUME, reading.volume());
      row.set(VOLUME_LOW, reading.volumeLow());
      row.set(VOLUME_HIGH, reading.volumeHigh());
      row.set(FULL, reading.fullShare());
    }
    if (reading.hasLevels()) {
      row.set(LEVEL_LOW, reading.levelLow());
      row.set(LEVEL_HIGH, reading.levelHigh());
    }
  }
}
