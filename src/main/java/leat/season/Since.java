package leat.season;

/**
 * How the tank came to its start, when the season goes on from a tank in use: days count from day
 * 0, those before it are negative.
 *
 * <p>Source: none; inputs.
 *
 * @param filledDay day of the last fill
 * @param changedDay day of the last change, or of the first fill
 * @param addedL water topped up since that change, L
 */
public record Since(int filledDay, int changedDay, double addedL) {
  /** Filled for the first time on the evening before day 0. */
  public static final Since FIRST_FILL = new Since(-1, -1, 0);

  /** Whether it stands since an earlier evening. */
  public boolean isEarlier() {
    return changedDay < FIRST_FILL.changedDay;
  }
}
