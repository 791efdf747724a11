package leat.energy;

/**
 * Wear against energy: timings around the one of least energy. Within the bounds a shorter rest
 * costs both energy and starts; a longer run costs energy and spares starts.
 *
 * <p>Source: {@link Duty}, {@link RelayLife}; sheet energy.md sections 1, 3, 4.
 */
public final class TradeOff {
  private static final double MOST_STRETCH = 4;

  private TradeOff() {}

  /**
   * Candidates around the timing of least energy: it, two with runs twice and four times as long,
   * two with rests of a half and a quarter (rounded down, at least a second).
   */
  public static Timing[] candidates(Suggestion suggestion) {
    Timing best = suggestion.timing();
    if (best.withoutPause()) {
      return new Timing[] {best};
    }
    double run = best.runS();
    double rest = best.restS();
    return new Timing[] {
      best,
      new Timing(2 * run, rest),
      new Timing(MOST_STRETCH * run, rest),
      new Timing(run, Math.max(1, Math.floor(rest / 2))),
      new Timing(run, Math.max(1, Math.floor(rest / MOST_STRETCH)))
    };
  }
}
