package leat.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * EC and pH bands of crops, each with its source, and the band that several share in one tank.
 *
 * <p>A shared band runs from the highest low to the lowest high, for EC and pH apart; bands that
 * touch in one point share it. A set shares exactly when every pair does, so the pairs that clash
 * are named. A single pH in the source is a point, not a band; {@link #widened} makes it one, and
 * the caller says so. Books differ by a third.
 *
 * <p>Source: 17 rows, Oklahoma State University Extension HLA-6722, Table 2 (from memory); four
 * more of common practice without a source; a second opinion for lettuce from a
 * controlled-environment handbook of Cornell University (from memory). Check values:
 * solution-crops.csv, solution-crops-sets.csv.
 */
public final class Crops {
  /** How far a pH given as a single point may be widened, each side, pH (common practice). */
  public static final double POINT_WIDENING_PH = 0.3;

  private static final String OKLAHOMA = "Oklahoma State University Extension HLA-6722 Table 2";
  private static final String CORNELL = "Cornell controlled-environment lettuce handbook";
  private static final String PRACTICE = "common practice, no source";

  private static final Crop[] TABLE = {
    new Crop("basil", 1, 1.6, 5.5, 6, OKLAHOMA, "M"),
    new Crop("bean", 2, 4, 6, 6, OKLAHOMA, "M"),
    new Crop("broccoli", 2.8, 3.5, 6, 6.8, OKLAHOMA, "M"),
    new Crop("cabbage", 2.5, 3, 6.5, 7, OKLAHOMA, "M"),
    new Crop("celery", 1.8, 2.4, 6.5, 6.5, OKLAHOMA, "M"),
    new Crop("courgette", 1.8, 2.4, 6, 6, OKLAHOMA, "M"),
    new Crop("cucumber", 1.7, 2, 5, 5.5, OKLAHOMA, "M"),
    new Crop("aubergine", 2.5, 3.5, 6, 6, OKLAHOMA, "M"),
    new Crop("leek", 1.4, 1.8, 6.5, 7, OKLAHOMA, "M"),
    new Crop("lettuce", 1.2, 1.8, 6, 7, OKLAHOMA, "M"),
    new Crop("pak-choi", 1.5, 2, 7, 7, OKLAHOMA, "M"),
    new Crop("parsley", 1.8, 2.2, 6, 6.5, OKLAHOMA, "M"),
    new Crop("pepper", 0.8, 1.8, 5.5, 6, OKLAHOMA, "M"),
    new Crop("sage", 1, 1.6, 5.5, 6.5, OKLAHOMA, "M"),
    new Crop("spinach", 1.8, 2.3, 6, 7, OKLAHOMA, "M"),
    new Crop("strawberry", 1.8, 2.2, 6, 6, OKLAHOMA, "M"),
    new Crop("tomato", 2, 4, 6, 6.5, OKLAHOMA, "M"),
    new Crop("chard", 1.8, 2.3, 6, 7, PRACTICE, "P"),
    new Crop("kale", 1.2, 2, 5.5, 6.5, PRACTICE, "P"),
    new Crop("mint", 1.6, 2.4, 5.5, 6.5, PRACTICE, "P"),
    new Crop("rocket", 0.8, 1.8, 6, 7, PRACTICE, "P"),
  };

  private static final Crop[] SECOND_OPINIONS = {
    new Crop("lettuce", 1.15, 1.25, 5.6, 6, CORNELL, "M"),
  };

  /** Other words for a crop of the table: word, name in the table. */
  private static final String[][] ALSO = {
    {"zucchini", "courgette"},
    {"eggplant", "aubergine"},
    {"bok-choy", "pak-choi"},
    {"pak-choy", "pak-choi"},
    {"arugula", "rocket"},
    {"swiss-chard", "chard"},
    {"beans", "bean"},
    {"tomatoes", "tomato"},
  };

  private Crops() {}

  /** How many of some crops have a band of that kind. */
  public record Kinds(int fromMemory, int commonPractice) {}

  /** Counts how the bands are known. */
  public static Kinds kinds(List<Crop> crops) {
    int memory = 0;
    int practice = 0;
    for (int i = 0; i < crops.size(); i++) {
      memory += crops.get(i).isFromMemory() ? 1 : 0;
      practice += crops.get(i).isCommonPractice() ? 1 : 0;
    }
    return new Kinds(memory, practice);
  }

  /** All crops in the order of the table. */
  public static List<Crop> all() {
    return List.of(TABLE);
  }

  /** The names that can be asked for, for finding the nearest to a typo. */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    for (Crop crop : TABLE) {
      names.add(crop.name());
    }
    for (String[] also : ALSO) {
      names.add(also[0]);
    }
    return names;
  }

  /**
   * The crop of a name.
   *
   * @param name words joined by a hyphen or a blank, in any case
   * @return the crop, or null when the table lacks it
   */
  public static Crop find(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    String wanted = plain;
    for (String[] also : ALSO) {
      if (also[0].equals(plain)) {
        wanted = also[1];
      }
    }
    for (Crop crop : TABLE) {
      if (crop.name().equals(wanted)) {
        return crop;
      }
    }
    return null;
  }

  /** What another source says of a crop of the table; empty when none is at hand. */
  public static List<Crop> secondOpinions(String name) {
    List<Crop> others = new ArrayList<>();
    for (Crop crop : SECOND_OPINIONS) {
      if (crop.name().equals(name)) {
        others.add(crop);
      }
    }
    return others;
  }

  /** A crop whose pH is a single point, with the point widened by 0.3 each side; else itself. */
  public static Crop widened(Crop crop) {
    if (!crop.phIsPoint()) {
      return crop;
    }
    return new Crop(
        crop.name(),
        crop.ecLowMsCm(),
        crop.ecHighMsCm(),
        crop.phLow() - POINT_WIDENING_PH,
        crop.phHigh() + POINT_WIDENING_PH,
        crop.source(),
        crop.known());
  }

  /**
   * Two crops that cannot share a tank.
   *
   * @param one the first
   * @param other the second
   * @param ecGapMsCm what lies between their EC bands, mS/cm; 0 when they meet
   * @param phGap what lies between their pH bands; 0 when they meet
   */
  public record Clash(Crop one, Crop other, double ecGapMsCm, double phGap) {}

  /**
   * What several crops share. An end is null when there is no shared band in that quantity.
   *
   * @param canShare whether one tank suits all
   * @param ecLowMsCm lower end of the shared EC, mS/cm
   * @param ecHighMsCm upper end, mS/cm
   * @param ecGapMsCm what is missing to a shared EC, mS/cm; 0 when shared
   * @param ecOnePoint whether only one EC suits all
   * @param phLow lower end of the shared pH
   * @param phHigh upper end
   * @param phGap what is missing to a shared pH; 0 when shared
   * @param phOnePoint whether only one pH suits all
   * @param ecMiddleMsCm the middle of the shared EC, mS/cm
   * @param phMiddle the middle of the shared pH
   * @param clashes the pairs that cannot share
   * @param leaveOut the crops of which one left out alone lets the rest share; empty when all share
   */
  public record Shared(
      boolean canShare,
      Double ecLowMsCm,
      Double ecHighMsCm,
      double ecGapMsCm,
      boolean ecOnePoint,
      Double phLow,
      Double phHigh,
      double phGap,
      boolean phOnePoint,
      Double ecMiddleMsCm,
      Double phMiddle,
      List<Clash> clashes,
      List<Crop> leaveOut) {}

  /**
   * The band that crops share.
   *
   * @param crops at least one
   * @return the shared band, or what stands in its way
   * @throws leat.numeric.Impossible if no crop is named
   */
  public static Shared share(List<Crop> crops) {
    if (crops.isEmpty()) {
      throw new leat.numeric.Impossible("crops", "at least one crop is needed");
    }
    double[] band = band(crops, null);
    boolean ec = band[0] <= band[1];
    boolean ph = band[2] <= band[3];
    return new Shared(
        ec && ph,
        ec ? (Double) band[0] : null,
        ec ? (Double) band[1] : null,
        gap(band[0], band[1]),
        band[0] == band[1],
        ph ? (Double) band[2] : null,
        ph ? (Double) band[3] : null,
        gap(band[2], band[3]),
        band[2] == band[3],
        ec ? (Double) (0.5 * (band[0] + band[1])) : null,
        ph ? (Double) (0.5 * (band[2] + band[3])) : null,
        clashes(crops),
        ec && ph ? List.of() : leaveOut(crops));
  }

  private static double gap(double low, double high) {
    return Math.max(0, low - high);
  }

  /** Highest low and lowest high of EC, then of pH, of all but one. */
  private static double[] band(List<Crop> crops, Crop without) {
    double[] b = {0, Double.MAX_VALUE, 0, Double.MAX_VALUE};
    for (Crop crop : crops) {
      if (crop != without) {
        b[0] = Math.max(b[0], crop.ecLowMsCm());
        b[1] = Math.min(b[1], crop.ecHighMsCm());
        b[2] = Math.max(b[2], crop.phLow());
        b[3] = Math.min(b[3], crop.phHigh());
      }
    }
    return b;
  }

  private static List<Clash> clashes(List<Crop> crops) {
    List<Clash> clashes = new ArrayList<>();
    for (int i = 0; i < crops.size(); i++) {
      for (int j = i + 1; j < crops.size(); j++) {
        Crop a = crops.get(i);
        Crop b = crops.get(j);
        double[] band = band(List.of(a, b), null);
        double ec = gap(band[0], band[1]);
        double ph = gap(band[2], band[3]);
        if (ec > 0 || ph > 0) {
          clashes.add(new Clash(a, b, ec, ph));
        }
      }
    }
    return clashes;
  }

  private static List<Crop> leaveOut(List<Crop> crops) {
    List<Crop> one = new ArrayList<>();
    for (Crop crop : crops) {
      double[] band = band(crops, crop);
      if (band[0] <= band[1] && band[2] <= band[3]) {
        one.add(crop);
      }
    }
    return one;
  }
}
