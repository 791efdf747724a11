package leat.level;

import java.util.ArrayList;
import java.util.List;

/**
 * What closes when as a float goes from one stop to the other; behind {@link Ladder#sequence}.
 *
 * <p>Source: the rule of a reed, pulled in within one width and dropped beyond another. Check
 * values: sheets level-sender-sequence.csv and level-sender-gap.csv.
 */
final class ReedSequence {
  private final Ladder ladder;
  private final boolean up;
  private final int reeds;
  private final double pullIn;
  private final double dropOut;
  private final double bottomStop;
  private final double topStop;

  ReedSequence(Ladder ladder, boolean up) {
    this.ladder = ladder;
    this.up = up;
    this.reeds = ladder.size();
    this.pullIn = ladder.pullIn();
    this.dropOut = ladder.dropOut();
    this.bottomStop = ladder.bottomStop();
    this.topStop = ladder.topStop();
  }

  List<Ladder.Stretch> stretches() {
    double[] edges = new double[2 * reeds + 1];
    int n = 0;
    for (int i = 0; i < reeds; i++) {
      double level = ladder.reed(i);
      n = insideStops(edges, n, level + (up ? -pullIn : pullIn));
      n = insideStops(edges, n, level + (up ? dropOut : -dropOut));
    }
    edges[n++] = up ? topStop : bottomStop;
    java.util.Arrays.sort(edges, 0, n);
    List<Ladder.Stretch> all = new ArrayList<>();
    double at = up ? bottomStop : topStop;
    for (int k = 0; k < n; k++) {
      double next = edges[up ? k : n - 1 - k];
      if (Math.abs(next - at) > Tank.ROUNDING) {
        append(all, stretch(at, next));
      }
      at = next;
    }
    return all;
  }

  private static void append(List<Ladder.Stretch> all, Ladder.Stretch next) {
    int last = all.size() - 1;
    if (last >= 0
        && all.get(last).lowest() == next.lowest()
        && all.get(last).highest() == next.highest()) {
      all.set(
          last,
          new Ladder.Stretch(
              all.get(last).from(), next.to(), next.lowest(), next.highest(), next.ohm()));
    } else {
      all.add(next);
    }
  }

  private int insideStops(double[] edges, int n, double level) {
    if (level > bottomStop && level < topStop) {
      edges[n] = level;
      return n + 1;
    }
    return n;
  }

  private Ladder.Stretch stretch(double from, double to) {
    double middle = (from + to) / 2;
    int lowest = -1;
    int highest = -1;
    for (int i = 0; i < reeds; i++) {
      double ahead = up ? ladder.reed(i) - middle : middle - ladder.reed(i);
      // behind the float a reed holds if the float came within pull-in of it; ahead, on the way
      // down, it still holds if the upper stop did not let the float leave it
      boolean held =
          up ? bottomStop - ladder.reed(i) <= pullIn : ladder.reed(i) - topStop <= pullIn;
      boolean neverLeft = !up && topStop - ladder.reed(i) <= dropOut;
      boolean closed =
          ahead >= 0 ? ahead <= pullIn || neverLeft && ahead <= dropOut : -ahead <= dropOut && held;
      if (closed) {
        lowest = lowest < 0 ? i : lowest;
        highest = i;
      }
    }
    Double ohm =
        lowest < 0
            ? null
            : ladder.node(ladder.returnAt() == Ladder.ReturnAt.BOTTOM ? lowest : highest);
    return new Ladder.Stretch(from, to, lowest, highest, ohm);
  }
}
