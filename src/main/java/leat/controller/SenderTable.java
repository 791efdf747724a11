package leat.controller;

import java.util.ArrayList;
import java.util.List;
import leat.level.Cutoff;
import leat.level.Divider;
import leat.level.LookupTable;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Status;
import leat.numeric.Impossible;

/**
 * The sender's table in counts of the ADC, and a search in it: what {@link Sender#decodeCode} says
 * of each count.
 *
 * <p>Source: {@link LookupTable}, {@link Cutoff}.
 */
public final class SenderTable {
  private final List<LookupTable.Row> rows = new ArrayList<>();
  private final Divider divider;
  private final Double mark;
  private final Cutoff cutoff;

  /**
   * @param sender the sender, as this divider reads it
   * @param divider divider and ADC
   * @param mark volume at the refill mark, m3; null when there is none
   */
  public SenderTable(Sender sender, Divider divider, Double mark) {
    List<LookupTable.Row> all = LookupTable.of(sender, divider, Motion.UNKNOWN);
    this.divider = divider;
    this.mark = mark;
    this.cutoff = mark == null ? null : Cutoff.of(all, sender.staircase().falls(), divider, mark);
    for (LookupTable.Row row : all) {
      if (row.countsFrom() >= 0) {
        rows.add(row);
      }
    }
    rows.sort((a, b) -> Integer.compare(a.countsFrom(), b.countsFrom()));
  }

  /** Whether some count is sure of the refill mark. */
  public boolean hasCutoff() {
    return cutoff != null && cutoff.counts() >= 0;
  }

  /**
   * The last count at which the pump may run.
   *
   * @throws Impossible if no count is sure of the refill mark
   */
  public int cutoffCounts() {
    if (!hasCutoff()) {
      throw new Impossible("cut-off", "no count of this sender is sure of the refill mark");
    }
    return cutoff.counts();
  }

  private boolean sure(Reading reading) {
    return mark != null && reading.hasBand() && !reading.mayBeBelow(mark);
  }

  void write(StringBuilder out) {
    out.append("\n/* The sender: counts of the ADC to a step and its litres. */\n");
    CText.define(out, "TOWER_HAS_SENDER", 1);
    CText.define(out, "TOWER_ADC_TOP", CText.u32(divider.topCode()), "highest count");
    if (hasCutoff()) {
      CText.define(
          out,
          "TOWER_CUTOFF_COUNTS",
          CText.u32(cutoff.counts()),
          cutoff.countsFromBelow()
              ? "the pump may run at this count or more, faults left out"
              : "the pump may run at this count or fewer, faults left out");
    }
    out.append("\nenum tower_status {\n");
    for (Status status : Status.values()) {
      out.append("  TOWER_").append(CText.constant(status.word())).append(",\n");
    }
    out.append("};\n\n").append(STRUCT);
    out.append("static const tower_reading tower_readings[] = {\n");
    for (LookupTable.Row row : rows) {
      line(out, row.countsTo(), row.reading());
    }
    line(out, 0xFFFFFFFFL, new Reading());
    out.append("};\n\n").append(SEARCH);
  }

  private void line(StringBuilder out, long last, Reading reading) {
    boolean band = reading.hasBand();
    out.append("  {").append(CText.u32(last));
    out.append(", TOWER_").append(CText.constant(reading.status().word()));
    out.append(reading.status().isFault() ? ", 1, " : ", 0, ");
    out.append(sure(reading) ? "1, " : "0, ");
    out.append(reading.stepLow()).append(", ").append(reading.stepHigh()).append(", ");
    out.append(CText.u32(band ? LookupTable.millilitresLow(reading) : 0)).append(", ");
    out.append(CText.u32(band ? LookupTable.millilitresHigh(reading) : 0)).append("},\n");
  }

  private static final String STRUCT =
      """
      typedef struct {
        uint32_t last;    /* the row holds up to this count */
        uint8_t status;   /* enum tower_status */
        uint8_t fault;    /* 1: a fault of the sender or its wires */
        uint8_t sure;     /* 1: the refill mark or more for sure, the pump may run */
        int16_t step_low; /* lowest step it may be, 0 is the bottom one; -1 without litres */
        int16_t step_high;
        uint32_t low_mL;  /* the tank holds at least this; 0 without litres */
        uint32_t high_mL; /* and at most this */
      } tower_reading;

      """;

  private static final String SEARCH =
      """
      /* What a count says. Take the median of some readings, the pump at rest. */
      static inline const tower_reading *tower_read(uint32_t counts) {
        const tower_reading *row = tower_readings;
        if (counts > TOWER_ADC_TOP) {
          counts = 0xFFFFFFFFUL;
        }
        while (counts > row->last) {
          row++;
        }
        return row;
      }

      /* The middle of what it may be, mL; 0 without litres. */
      static inline uint32_t tower_volume_mL(uint32_t counts) {
        const tower_reading *row = tower_read(counts);
        return row->low_mL + (row->high_mL - row->low_mL) / 2;
      }

      /* Whether the pump may run; every doubt and every fault says no. */
      static inline int tower_may_run(uint32_t counts) {
        return tower_read(counts)->sure;
      }
      """;
}
