package leat.solution.acid;

import leat.numeric.Impossible;
import leat.numeric.MonotoneCubic;

/**
 * Acids by name and strength, with their densities at 20 C between handbook points by a monotone
 * cubic: "nitric-60", "phosphoric-75", "sulfuric-37", "citric".
 *
 * <p>Source: handbook tables of density against per cent by weight at 20 C (from memory; phosphoric
 * to 0.5 %); the rows of the sheet solution-acid.csv are among the points. Checked against the
 * usual strengths in mol/L of laboratory acids.
 */
public final class Acids {
  /** Water at 20 C, kg/L, the start of every curve. */
  private static final double WATER_KG_L = 0.9982;

  private static final double[] NITRIC_PCT = {0, 10, 20, 30, 38, 50, 60, 70};
  private static final double[] NITRIC_KG_L = {
    WATER_KG_L, 1.0543, 1.1150, 1.1800, 1.2335, 1.3100, 1.3667, 1.4134
  };
  private static final double[] PHOSPHORIC_PCT = {0, 10, 20, 30, 40, 50, 60, 70, 75, 80, 85};
  private static final double[] PHOSPHORIC_KG_L = {
    WATER_KG_L, 1.0532, 1.1134, 1.1805, 1.2540, 1.3350, 1.4260, 1.5260, 1.579, 1.633, 1.689
  };
  private static final double[] SULFURIC_PCT = {
    0, 10, 20, 30, 35, 37, 40, 50, 60, 70, 80, 90, 93, 96
  };
  private static final double[] SULFURIC_KG_L = {
    WATER_KG_L,
    1.0661,
    1.1394,
    1.2185,
    1.2599,
    1.2769,
    1.3028,
    1.3951,
    1.4983,
    1.6105,
    1.7272,
    1.8144,
    1.8279,
    1.8355
  };
  private static final double[] HYDROCHLORIC_PCT = {0, 10, 20, 31, 36, 38};
  private static final double[] HYDROCHLORIC_KG_L = {
    WATER_KG_L, 1.0474, 1.0980, 1.1543, 1.1789, 1.1885
  };

  /** Names of the table, as the sheet has them. */
  private static final String[] NAMES = {
    "nitric-38",
    "nitric-60",
    "phosphoric-75",
    "phosphoric-85",
    "sulfuric-35",
    "sulfuric-37",
    "hydrochloric-31",
    "citric",
    "citric-1h2o"
  };

  private Acids() {}

  /** The usual names, for help and for finding the nearest to a typo. */
  public static java.util.List<String> names() {
    return java.util.List.of(NAMES);
  }

  /**
   * The acid of a name; any strength may stand behind the hyphen: "nitric-53.5".
   *
   * @param name the acid and its per cent by weight
   * @return the acid with the table's density, or null when no acid has that name
   * @throws Impossible if the strength is not a number, missing, over 100 %, or over the table's
   *     end
   */
  public static Acid named(String name) {
    return named(name, 0);
  }

  /**
   * The acid of a name with the density of its label.
   *
   * @param typed the acid and its per cent by weight, "phosphoric 30 %" and "phosphoric30%" too
   * @param densityKgL density from the label, kg/L; 0 to take the table's; not looked at for a
   *     solid
   * @return the acid, or null when no acid has that name
   * @throws Impossible as for the name alone, or if the density is outside 0.9 to 2 kg/L
   */
  public static Acid named(String typed, double densityKgL) {
    String name = plain(typed);
    if (name.equals(Acid.Kind.CITRIC.word)) {
      return Acid.solid(Acid.Kind.CITRIC);
    }
    if (name.equals(Acid.Kind.CITRIC_HYDRATE.word)) {
      return Acid.solid(Acid.Kind.CITRIC_HYDRATE);
    }
    int hyphen = name.indexOf('-');
    Acid.Kind kind = liquid(hyphen < 0 ? name : name.substring(0, hyphen));
    if (kind == null) {
      return null;
    }
    if (hyphen < 0) {
      throw new Impossible("acid", "its strength belongs behind the name, such as nitric-38");
    }
    double percent = percent(name.substring(hyphen + 1));
    return Acid.liquid(kind, percent, densityKgL == 0 ? density(kind, percent) : densityKgL);
  }

  /** "phosphoric acid 30 %" as "phosphoric-30". */
  private static String plain(String typed) {
    String name = typed.strip().toLowerCase(java.util.Locale.ROOT).replace(" acid", "");
    if (name.endsWith("%")) {
      name = name.substring(0, name.length() - 1).strip();
    }
    int digits = 0;
    while (digits < name.length() && !Character.isDigit(name.charAt(digits))) {
      digits++;
    }
    boolean joined =
        digits > 0 && digits < name.length() && Character.isLetter(name.charAt(digits - 1));
    String parted =
        joined && liquid(name.substring(0, digits)) != null
            ? name.substring(0, digits) + "-" + name.substring(digits)
            : name;
    return parted.replace(' ', '-');
  }

  private static Acid.Kind liquid(String word) {
    return switch (word) {
      case "nitric" -> Acid.Kind.NITRIC;
      case "phosphoric" -> Acid.Kind.PHOSPHORIC;
      case "sulfuric", "sulphuric" -> Acid.Kind.SULFURIC;
      case "hydrochloric" -> Acid.Kind.HYDROCHLORIC;
      default -> null;
    };
  }

  private static double percent(String text) {
    boolean point = false;
    boolean digit = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean another = c == '.' && !point;
      if (!another && !(c >= '0' && c <= '9')) {
        throw new Impossible("acid", "behind the hyphen stands its per cent, such as nitric-38");
      }
      point |= another;
      digit |= !another;
    }
    if (!digit) {
      throw new Impossible("acid", "behind the hyphen stands its per cent, such as nitric-38");
    }
    return Double.parseDouble(text);
  }

  /**
   * Density of an acid at 20 C.
   *
   * @param kind which acid, a dissolved one
   * @param percent strength, % by weight
   * @return density, kg/L
   * @throws Impossible if the strength is outside 0 to 100 %, 0 excluded, over the table's end
   *     (nitric 70, phosphoric 85, sulfuric 96, hydrochloric 38 %), or the acid is a solid
   */
  public static double density(Acid.Kind kind, double percent) {
    Impossible.unlessPositive("strength", percent);
    Impossible.unlessWithin("strength", percent, 0, 100, "a strength cannot be over 100 %");
    return switch (kind) {
      case NITRIC -> between(NITRIC_PCT, NITRIC_KG_L, percent);
      case PHOSPHORIC -> between(PHOSPHORIC_PCT, PHOSPHORIC_KG_L, percent);
      case SULFURIC -> between(SULFURIC_PCT, SULFURIC_KG_L, percent);
      case HYDROCHLORIC -> between(HYDROCHLORIC_PCT, HYDROCHLORIC_KG_L, percent);
      case CITRIC, CITRIC_HYDRATE ->
          throw new Impossible("acid", "citric acid is taken as the solid: weigh it");
    };
  }

  private static double between(double[] percents, double[] densities, double percent) {
    if (percent > percents[percents.length - 1]) {
      throw new Impossible(
          "strength", "it is over the strongest that is sold of this acid: give its density");
    }
    return new MonotoneCubic(percents, densities).value(percent);
  }
}
