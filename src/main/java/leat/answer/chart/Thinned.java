package leat.answer.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A long series for a picture: of each stretch its least and its greatest value remain, so that no
 * peak is lost; a gap remains a gap.
 */
public final class Thinned {
  private Thinned() {}

  /** The series itself when it is short enough, else about {@code most} values of it. */
  public static Series of(Series series, int most) {
    int n = series.size();
    boolean joined = series.kind() == Series.Kind.LINE || series.kind() == Series.Kind.STEPS;
    if (n <= most || !joined && series.kind() != Series.Kind.BAND) {
      return series;
    }
    int stretches = Math.max(1, most / 2);
    List<Integer> kept = new ArrayList<>();
    for (int s = 0; s < stretches; s++) {
      int from = (int) ((long) n * s / stretches);
      int to = (int) ((long) n * (s + 1) / stretches);
      ends(series, from, to, kept);
    }
    return picked(series, kept);
  }

  private static void ends(Series series, int from, int to, List<Integer> kept) {
    int least = -1;
    int greatest = -1;
    int gap = -1;
    double[] low = series.hasLow() ? series.low() : series.y();
    for (int i = from; i < to; i++) {
      if (Double.isNaN(series.y()[i])) {
        gap = i;
        continue;
      }
      least = least < 0 || low[i] < low[least] ? i : least;
      greatest = greatest < 0 || series.y()[i] > series.y()[greatest] ? i : greatest;
    }
    int[] found = {least, greatest, gap};
    java.util.Arrays.sort(found);
    for (int i = 0; i < found.length; i++) {
      if (found[i] >= 0 && (i == 0 || found[i] != found[i - 1])) {
        kept.add(found[i]);
      }
    }
  }

  private static Series picked(Series series, List<Integer> kept) {
    double[] x = new double[kept.size()];
    double[] y = new double[x.length];
    double[] low = series.hasLow() ? new double[x.length] : null;
    for (int i = 0; i < x.length; i++) {
      int at = kept.get(i);
      x[i] = series.x()[at];
      y[i] = series.y()[at];
      if (low != null) {
        low[i] = series.low()[at];
      }
    }
    return new Series(series.kind(), series.label(), x, low, y, null, series.tone());
  }
}
