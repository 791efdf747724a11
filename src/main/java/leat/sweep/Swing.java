package leat.sweep;

import java.util.List;

/** The swing of a nudge drawn as a bar: what all guesses do to the same measure on one scale. */
public final class Swing {
  private static final char MOVES = '=';
  private static final char AS_IS = '|';

  private Swing() {}

  /** A bar of so many characters: "=" from the one end to the other, "|" the plan as it is. */
  public static String bar(List<Nudge> all, int at, int width) {
    Nudge own = all.get(at);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Nudge one : all) {
      if (one.measure() == own.measure() && !one.isStill()) {
        least = Math.min(least, Math.min(one.asIs(), Math.min(one.atLow(), one.atHigh())));
        most = Math.max(most, Math.max(one.asIs(), Math.max(one.atLow(), one.atHigh())));
      }
    }
    if (!(most > least)) {
      return "";
    }
    double scale = (width - 1) / (most - least);
    int from = place(Math.min(own.atLow(), own.atHigh()), least, scale);
    int to = place(Math.max(own.atLow(), own.atHigh()), least, scale);
    int now = place(own.asIs(), least, scale);
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i < width; i++) {
      bar.append(i == now ? AS_IS : i >= from && i <= to ? MOVES : '.');
    }
    return bar.toString();
  }

  private static int place(double value, double least, double scale) {
    return (int) Math.round((value - least) * scale);
  }
}
