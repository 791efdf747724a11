package leat.system;

import java.util.List;
import leat.plan.Section;
import leat.solution.tank.FeedParts;

/** The bottles of concentrate of a plan's {@code feed} section. */
public final class ConcentrateOf {
  private ConcentrateOf() {}

  /** Whether the label's rates and what they add are known. */
  public static boolean isKnown(Section feed) {
    return !feed.sections("parts").isEmpty() && feed.has("rate_ec");
  }

  /** Whether that is known with the rate of each bottle. */
  public static boolean isRated(Section feed) {
    List<Section> parts = feed.sections("parts");
    boolean rated = isKnown(feed);
    for (int i = 0; i < parts.size(); i++) {
      rated &= parts.get(i).has("rate");
    }
    return rated;
  }

  /** The parts by their own rates; refused with the key that is missing. */
  public static FeedParts of(Section feed) {
    List<Section> parts = feed.sections("parts");
    if (parts.isEmpty()) {
      throw feed.missing("parts");
    }
    double[] rates = new double[parts.size()];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = parts.get(i).need("rate");
    }
    return new FeedParts(rates, feed.need("rate_ec"));
  }

  /** Name of a part: the plan's, else its number. */
  public static String name(Section feed, int i) {
    List<Section> parts = feed.sections("parts");
    String own = i < parts.size() ? parts.get(i).text("name") : null;
    return own == null ? "bottle " + (i + 1) : own;
  }
}
