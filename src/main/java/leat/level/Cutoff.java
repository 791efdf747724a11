package leat.level;

import java.util.List;

/**
 * Up to which reading a controller may run the pump: only while the sender says for sure that the
 * tank holds more than a mark. All other readings stop it, faults and readings between that step
 * and the next lower one included.
 *
 * <p>Source: the stretches of {@link LookupTable}; their bands are those of {@link Sender#decode}.
 *
 * @param ohm the last reading that is sure, as the meter shows it (lead included), ohm
 * @param counts its count; -1 without a divider, or when no count is sure
 * @param fromBelow whether sure readings lie above {@code ohm}; else below
 * @param countsFromBelow whether sure counts lie above {@code counts}; else below
 * @param sureVolume what the tank holds at least at any sure reading, m3
 */
public record Cutoff(
    double ohm, int counts, boolean fromBelow, boolean countsFromBelow, double sureVolume) {
  /**
   * The cut-off of a table.
   *
   * @param rows all its stretches, in order of ohms
   * @param falls whether the ohms fall as the tank fills
   * @param divider the divider of the table's counts, or null
   * @param mark volume at the mark, m3
   * @return the cut-off; null when no reading is sure of so much
   */
  public static Cutoff of(List<LookupTable.Row> rows, boolean falls, Divider divider, double mark) {
    int n = rows.size();
    int last = -1;
    double sure = Double.MAX_VALUE;
    int counts = -1;
    boolean up = divider != null && (divider.side() == Divider.Side.LOW) != falls;
    for (int k = n - 1; k >= 0; k--) {
      LookupTable.Row row = rows.get(falls ? n - 1 - k : k);
      Reading reading = row.reading();
      if (!reading.hasBand()) {
        if (last >= 0) {
          break;
        }
        continue;
      }
      if (reading.mayBeBelow(mark)) {
        break;
      }
      last = falls ? n - 1 - k : k;
      sure = Math.min(sure, reading.volumeLow());
      if (row.countsFrom() >= 0) {
        counts = up ? row.countsFrom() : row.countsTo();
      }
    }
    if (last < 0) {
      return null;
    }
    LookupTable.Row end = rows.get(last);
    Double ohm = falls ? end.ohmTo() : end.ohmFrom();
    return ohm == null ? null : new Cutoff(ohm, counts, !falls, up, sure);
  }
}
