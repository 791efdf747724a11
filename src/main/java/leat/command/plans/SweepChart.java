package leat.command.plans;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Column;
import leat.answer.Phrase;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import leat.sweep.Front;
import leat.sweep.Judged;
import leat.sweep.Measure;
import leat.sweep.Nudge;

/** Designs as points over two measures, those that no other beats apart; and guesses as bars. */
final class SweepChart {
  private static final int[] BOTH = {0, 1};

  /** Designs that no picture needs more of, besides those that none beats. */
  private static final int MOST = 2000;

  private SweepChart() {}

  /** A name for a design: the values of its axes. */
  interface Naming {
    String of(Judged one);
  }

  static Chart of(List<Judged> kept, Measure along, Measure up, Naming naming) {
    boolean[] most = {along.upIsBetter(), up.upIsBetter()};
    List<Judged> front = Front.of(kept, BOTH, most);
    List<Judged> rest =
        kept.stream().filter(one -> !front.contains(one) && Front.isKnown(one, BOTH)).toList();
    Chart chart =
        Chart.of(
            "Designs by " + along.column().label() + " and " + up.column().label(),
            Axis.of(along.column()),
            Axis.of(up.column()));
    if (!front.isEmpty()) {
      points(chart, "no other beats it in both", front, naming);
    }
    if (!rest.isEmpty()) {
      beaten(chart, rest, naming);
    }
    return chart;
  }

  private static void beaten(Chart chart, List<Judged> rest, Naming naming) {
    List<Judged> drawn = some(rest);
    boolean all = drawn.size() == rest.size();
    String label = all ? "beaten" : "beaten, " + drawn.size() + " of " + rest.size();
    points(chart, label, drawn, naming);
  }

  /** As many as a picture can show, from all over the list. */
  private static List<Judged> some(List<Judged> designs) {
    int every = (designs.size() + MOST - 1) / MOST;
    if (every <= 1) {
      return designs;
    }
    List<Judged> some = new ArrayList<>();
    for (int i = 0; i < designs.size(); i += every) {
      some.add(designs.get(i));
    }
    return some;
  }

  private static void points(Chart chart, String label, List<Judged> designs, Naming naming) {
    List<Judged> sorted = designs.stream().sorted(Front.by(0, false)).toList();
    double[] x = new double[sorted.size()];
    double[] y = new double[x.length];
    Phrase[] words = new Phrase[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = sorted.get(i).measures()[0];
      y[i] = sorted.get(i).measures()[1];
      words[i] = Phrase.of(naming.of(sorted.get(i)));
    }
    chart.points(label, x, y, words);
  }

  /** One measure from one end of each guess to the other. */
  static Chart of(List<Nudge> all, Measure measure) {
    List<Nudge> moved =
        all.stream()
            .filter(n -> n.measure().name().equals(measure.name()) && !n.isStill())
            .toList();
    Chart chart = bars(moved, measure.column());
    return moved.isEmpty() || Double.isNaN(moved.get(0).asIs())
        ? chart
        : chart.limit("as it is", moved.get(0).asIs());
  }

  private static Chart bars(List<Nudge> moved, Column column) {
    String[] names = new String[moved.size()];
    double[] from = new double[names.length];
    double[] to = new double[names.length];
    Phrase[] words = new Phrase[names.length];
    for (int i = 0; i < names.length; i++) {
      Nudge nudge = moved.get(i);
      names[i] = nudge.guess().path();
      from[i] = Math.min(nudge.atLow(), nudge.atHigh());
      to[i] = Math.max(nudge.atLow(), nudge.atHigh());
      words[i] = words(column, from[i], to[i]);
    }
    return Chart.of(
            "How far each guess moves " + column.label(),
            Axis.names("guess", names),
            Axis.of(column))
        .bars("from end to end of the guess", from, to, words);
  }

  private static Phrase words(Column column, double from, double to) {
    return column.show() == null
        ? Phrase.of().number(from, 3).add(" to ").number(to, 3)
        : Phrase.of().range(from, to, column.show());
  }
}
