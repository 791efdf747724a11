package leat.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Orders designs: by one measure, or those that no other beats in several. */
public final class Front {
  private Front() {}

  /**
   * The order of a ranking: least first, or most first; unknown last; equals as they came.
   *
   * @param measure index of the measure
   * @param most whether most comes first
   */
  public static Comparator<Judged> by(int measure, boolean most) {
    return (a, b) -> {
      double x = a.measures()[measure];
      double y = b.measures()[measure];
      if (Double.isNaN(x) || Double.isNaN(y)) {
        return Double.isNaN(x) == Double.isNaN(y)
            ? Long.compare(a.design().index(), b.design().index())
            : Double.isNaN(x) ? 1 : -1;
      }
      int order = most ? Double.compare(y, x) : Double.compare(x, y);
      return order != 0 ? order : Long.compare(a.design().index(), b.design().index());
    };
  }

  /** Designs that no other beats in one measure without losing in another, as they came. */
  public static List<Judged> of(List<Judged> all, int[] measures, boolean[] most) {
    List<Judged> front = new ArrayList<>();
    for (Judged one : all) {
      if (isKnown(one, measures)) {
        add(front, one, measures, most);
      }
    }
    return front;
  }

  /** Takes a design into a front, dropping those that it beats; false when it is beaten. */
  public static boolean add(List<Judged> front, Judged one, int[] measures, boolean[] most) {
    for (Judged other : front) {
      if (beats(other, one, measures, most)) {
        return false;
      }
    }
    front.removeIf(other -> beats(one, other, measures, most));
    return front.add(one);
  }

  /** Whether a design has all measures. */
  public static boolean isKnown(Judged one, int[] measures) {
    for (int m : measures) {
      if (Double.isNaN(one.measures()[m])) {
        return false;
      }
    }
    return true;
  }

  private static boolean beats(Judged a, Judged b, int[] measures, boolean[] most) {
    boolean better = false;
    for (int i = 0; i < measures.length; i++) {
      double x = a.measures()[measures[i]];
      double y = b.measures()[measures[i]];
      if (most[i] ? x < y : x > y) {
        return false;
      }
      better |= x != y;
    }
    return better;
  }
}
