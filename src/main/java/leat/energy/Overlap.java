package leat.energy;

/**
 * For how many seconds of a period each timing and each price are in force together. It depends on
 * the windows and dates alone: a sweep over pumps, runs or prices computes it once.
 *
 * <p>Source: sheet energy.md section 2, check values energy-tariff.csv.
 */
public final class Overlap {
  private final Dates dates;
  private final double[][] seconds;

  private Overlap(Dates dates, double[][] seconds) {
    this.dates = dates;
    this.seconds = seconds;
  }

  /** The overlap of two lists of windows (such as timings and bands) over a period. */
  public static Overlap of(Dates dates, Windows rows, Windows columns) {
    double[][] seconds = new double[rows.size()][columns.size()];
    Stretches stretches = new Stretches(dates, Windows.borders(rows, columns));
    while (stretches.next()) {
      seconds[stretches.inForce(rows)][stretches.inForce(columns)] += stretches.seconds();
    }
    return new Overlap(dates, seconds);
  }

  /** The period. */
  public Dates dates() {
    return dates;
  }

  /** Seconds in which row entry {@code row} and column entry {@code column} are in force, s. */
  public double seconds(int row, int column) {
    return seconds[row][column];
  }

  /** Seconds in which row entry {@code row} is in force, s; 0 when it never is in this period. */
  public double rowSeconds(int row) {
    double sum = 0;
    for (int k = 0; k < seconds[row].length; k++) {
      sum += seconds[row][k];
    }
    return sum;
  }

  /** Seconds in which column entry {@code column} is in force, s. */
  public double columnSeconds(int column) {
    double sum = 0;
    for (int i = 0; i < seconds.length; i++) {
      sum += seconds[i][column];
    }
    return sum;
  }

  int rows() {
    return seconds.length;
  }

  int columns() {
    return seconds[0].length;
  }
}
