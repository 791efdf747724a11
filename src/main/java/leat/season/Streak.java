package leat.season;

/**
 * The longest run of days in a row of one kind.
 *
 * @param days how many; 0 for none
 * @param first the first of them, counted from 0; -1 for none
 */
public record Streak(int days, int first) {
  /** Counts one as the days go by. */
  static final class Counter {
    private int now;
    private int most;
    private int first = -1;

    void take(boolean hit, int day) {
      now = hit ? now + 1 : 0;
      if (now > most) {
        most = now;
        first = day - now + 1;
      }
    }

    Streak longest() {
      return new Streak(most, first);
    }
  }
}
