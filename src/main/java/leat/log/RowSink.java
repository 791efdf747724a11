package leat.log;

/**
 * Takes every row in order of time, once its step at rest is known.
 *
 * <p>Source: sheet log.md section 2.
 */
public interface RowSink {
  /**
   * One row.
   *
   * @param row the row; filled anew for the next one
   * @param volume volume now, m3; NaN before the first step read
   * @param low low end of its band, m3
   * @param high high end, m3
   */
  void row(LogRow row, double volume, double low, double high);
}
