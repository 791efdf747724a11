package leat.quantity;

import java.util.List;
import java.util.Locale;

/** Finds out why a unit was not taken: other case, another dimension, a slip, or unknown. */
final class UnitRefusal {
  private final String text;
  private final int from;
  private final int unitFrom;
  private final int to;
  private final Dimension wanted;
  private final String unit;

  UnitRefusal(String text, int from, int unitFrom, int to, Dimension wanted) {
    this.text = text;
    this.from = from;
    this.unitFrom = unitFrom;
    this.to = to;
    this.wanted = wanted;
    this.unit = Spelling.ascii(text.substring(unitFrom, to));
  }

  private String got() {
    return text.substring(from, to);
  }

  private String mended(String otherUnit) {
    String number = Spelling.trim(text.substring(from, unitFrom));
    return number + " " + otherUnit;
  }

  Unreadable reason() {
    Unreadable minutes = minutes();
    if (minutes != null) {
      return minutes;
    }
    String sameLetters = Spelling.inOtherCase(wanted, unit);
    if (sameLetters != null) {
      return QuantityErrors.otherCase(unit, got(), mended(sameLetters), unitFrom, to);
    }
    String inches = inches();
    if (inches != null) {
      return QuantityErrors.unknownUnit(
          wanted, text.substring(unitFrom, to), mended(inches), unitFrom, to);
    }
    if (wanted == Dimension.AREA && unit.equalsIgnoreCase("AWG")) {
      return QuantityErrors.wireGauge(got(), unitFrom, to);
    }
    if (wanted == Dimension.MASS_CONCENTRATION
        && (unit.equalsIgnoreCase("mmol/L") || unit.equalsIgnoreCase("meq/L"))) {
      String letters = unit.substring(0, unit.length() - 1).concat("L");
      return QuantityErrors.ofWhichIon(wanted, letters, got(), unitFrom, to);
    }
    if (wanted == Dimension.ALKALINITY && unit.equalsIgnoreCase("mmol/L")) {
      return QuantityErrors.millimolesOfWhat(
          got(), mended("mmol/L HCO3"), mended("mmol/L as CaCO3"), unitFrom, to);
    }
    if (wanted == Dimension.ALKALINITY && isHardness()) {
      return QuantityErrors.hardness(text.substring(unitFrom, to), got(), unitFrom, to);
    }
    Dimension other = Spelling.elsewhere(unit);
    if (other == null && MoneyReader.looksLikeMoney(unit)) {
      other = MoneyReader.dimensionOf(unit);
    }
    if (wanted == Dimension.VOLUME && unit.equals("oz")) {
      return QuantityErrors.ouncesForFluidOunces(got(), mended("floz"), unitFrom, to);
    }
    if (wanted == Dimension.EC && unit.equalsIgnoreCase("ppm")) {
      return QuantityErrors.ppmForEc(got(), unitFrom, to);
    }
    if (other != null) {
      return QuantityErrors.wrongDimension(wanted, other, got(), unitFrom, to);
    }
    String near = near();
    String mended = near == null ? null : mended(near);
    String typed = text.substring(unitFrom, to);
    return QuantityErrors.unknownUnit(wanted, typed, mended, unitFrom, to);
  }

  /** Whether the unit is one of total hardness, which says nothing of alkalinity. */
  private boolean isHardness() {
    String[] total = {"dGH", "GH", "gpg", "grains/gal", "grains per gallon"};
    for (int i = 0; i < total.length; i++) {
      if (unit.equalsIgnoreCase(total[i])) {
        return true;
      }
    }
    return false;
  }

  /** "15 m" for a time, "9 L/m" for a flow: null when it is neither. */
  private Unreadable minutes() {
    String lower = unit.toLowerCase(Locale.ROOT);
    String meant = null;
    if (wanted == Dimension.TIME && lower.equals("m")) {
      meant = "min";
    } else if (wanted == Dimension.TIME_PER_DAY && (lower.equals("m/d") || lower.equals("m/day"))) {
      meant = "min/d";
    } else if (lower.endsWith("/m") && Spelling.exactly(wanted, unit + "in") != null) {
      meant = unit + "in";
    }
    if (meant == null) {
      return null;
    }
    return QuantityErrors.metresForMinutes(wanted, got(), mended(meant), unitFrom, to);
  }

  /** "5ft3" for a length is feet and inches, not cubic feet: null when it is neither. */
  private String inches() {
    boolean length = wanted == Dimension.LENGTH || wanted == Dimension.HEAD;
    String joined = unit.replace(" ", "");
    int digits = joined.startsWith("ft") ? 2 : joined.startsWith("'") ? 1 : 0;
    if (!length || digits == 0 || joined.length() == digits || joined.length() > digits + 2) {
      return null;
    }
    for (int i = digits; i < joined.length(); i++) {
      if (joined.charAt(i) < '0' || joined.charAt(i) > '9') {
        return null;
      }
    }
    return "ft " + joined.substring(digits) + " in";
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  /** The unit that was begun ("mS" of "mS/cm"), or the nearest spelling, or null. */
  private String near() {
    List<Unit> units = Units.of(wanted);
    if (wanted == Dimension.EC || wanted == Dimension.ALKALINITY) {
      for (int i = 0; i < units.size(); i++) {
        if (lower(units.get(i).symbol()).startsWith(lower(unit) + "/")) {
          return units.get(i).symbol();
        }
      }
    }
    String spelling = Nearest.of(unit, QuantityReader.spellings(wanted));
    return spelling == null ? null : Units.find(wanted, spelling).symbol();
  }
}
