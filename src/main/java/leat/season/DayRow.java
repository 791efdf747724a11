package leat.season;

/**
 * A day of the season, as the evening after service shows it.
 *
 * @param day counted from 0
 * @param rainL rain that drained in, L
 * @param overflowL what ran over the rim, L
 * @param useL water that left by plants and open surface, L
 * @param shortL thirst that found no water, L
 * @param lowL the day's least volume, before service, L
 * @param drainedL drained in the evening, L
 * @param waterL water poured, L
 * @param concentrateMl concentrate poured, mL
 * @param volumeL the evening's volume, L
 * @param saltMsCmL the evening's salt, mS/cm L
 * @param overflowed whether it ran over
 * @param dry whether thirst found no water
 * @param awayDry whether that is because somebody was away
 * @param service what was done
 */
public record DayRow(
    int day,
    double rainL,
    double overflowL,
    double useL,
    double shortL,
    double lowL,
    double drainedL,
    double waterL,
    double concentrateMl,
    double volumeL,
    double saltMsCmL,
    boolean overflowed,
    boolean dry,
    boolean awayDry,
    Service service) {
  /** The evening's EC, mS/cm; NaN when the tank is empty. */
  public double ecMsCm() {
    return volumeL > 0 ? saltMsCmL / volumeL : Double.NaN;
  }

  /** What plants and open surface asked for, L. */
  public double thirstL() {
    return useL + shortL;
  }

  /** The day's events in a row of words: overflow, dry, then what was done; empty for none. */
  public String event() {
    StringBuilder words = new StringBuilder();
    add(words, overflowed ? "overflow" : "");
    add(words, dry ? "dry" : "");
    add(words, service.word());
    return words.toString();
  }

  private static void add(StringBuilder words, String word) {
    if (!word.isEmpty()) {
      words.append(words.length() == 0 ? "" : " ").append(word);
    }
  }
}
