package leat.plan;

import leat.hydraulics.Fitting;
import leat.hydraulics.SizedFitting;
import leat.quantity.CountAt;
import leat.quantity.Dimension;

/**
 * Fittings of one name: "elbow=2", "bend=1 @ 60 mm".
 *
 * @param name as {@link Fitting} and {@link SizedFitting} know it
 * @param howMany and of which size
 */
public record Fitted(String name, CountAt howMany) {
  /** What is wrong with the size, or null. */
  String misfit() {
    if (!SizedFitting.isKnown(name)) {
      return howMany.size() == null ? null : takesNoSize(name, howMany);
    }
    boolean suits =
        howMany.size() == null
            ? Fitting.isKnown(name)
            : howMany.size().unit().dimension() == dimension(name);
    return suits ? null : needsSize(name, howMany);
  }

  /** A fitting whose size is missing or of another kind: "screen: 1", "bend: 1 @ 40 %". */
  private static String needsSize(String name, CountAt got) {
    return "\""
        + name
        + "\" needs its size behind '@' ("
        + SizedFitting.about(name)
        + "), such as \"1 @ "
        + exampleSize(name)
        + "\"; got \""
        + typed(got)
        + "\"";
  }

  /** A fitting that has no size: "elbow: 1 @ 60 mm". */
  private static String takesNoSize(String name, CountAt got) {
    return "\"" + name + "\" takes no size; got \"" + typed(got) + "\"";
  }

  private static Dimension dimension(String name) {
    switch (SizedFitting.by(name)) {
      case SHARE:
        return Dimension.SHARE;
      case ANGLE:
        return Dimension.ANGLE;
      default:
        return Dimension.LENGTH;
    }
  }

  private static String exampleSize(String name) {
    switch (SizedFitting.by(name)) {
      case SHARE:
        return "40 %";
      case ANGLE:
        return "20 deg";
      default:
        return "60 mm";
    }
  }

  static String typed(CountAt value) {
    String count = value.count().typed();
    return value.size() == null ? count : count + " @ " + value.size().typed();
  }
}
