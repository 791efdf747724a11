package leat.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One unit of one dimension: how it is written and the exact factor to the base of its dimension.
 *
 * <pre>base = (number + offset) x numerator / denominator        (degrees of angle: x pi besides)
 * </pre>
 *
 * <p>The units are listed in {@link Units}; there are no others.
 */
public final class Unit {
  private final Dimension dimension;
  private final UnitSystem system;
  private final String symbol;
  private final String name;
  private final long numerator;
  private final long denominator;
  private final double offset;
  private final boolean timesPi;
  private final String aliases;

  Unit(
      Dimension dimension,
      UnitSystem system,
      String symbol,
      String name,
      long numerator,
      long denominator,
      double offset,
      boolean timesPi,
      String aliases) {
    this.dimension = dimension;
    this.system = system;
    this.symbol = symbol;
    this.name = name;
    this.numerator = numerator;
    this.denominator = denominator;
    this.offset = offset;
    this.timesPi = timesPi;
    this.aliases = aliases;
  }

  /** What the unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** As printed: "L/min", "mS/cm", "C", "/kWh" (after a currency). */
  public String symbol() {
    return symbol;
  }

  /** As it ends a CSV column or JSON key: "L_min", "mS_cm", "pct". */
  public String key() {
    if (symbol.equals("%")) {
      return "pct";
    }
    String plain = symbol.replace(" as ", "_").replace("L H", "L_H").replace(" ", "");
    return plain.startsWith("/") ? "per_" + plain.substring(1) : plain.replace('/', '_');
  }

  /** In words: "litre a minute". */
  public String name() {
    return name;
  }

  /**
   * Other ASCII spellings that are read; {@link Spelling} adds the signs such as the micro sign.
   */
  public List<String> aliases() {
    List<String> all = new ArrayList<>();
    for (int at = 0; at < aliases.length(); at = endOf(at) + 1) {
      all.add(aliases.substring(at, endOf(at)));
    }
    return Collections.unmodifiableList(all);
  }

  /** Numerator of the exact factor to the base. */
  public long numerator() {
    return numerator;
  }

  /** Denominator of the exact factor to the base. */
  public long denominator() {
    return denominator;
  }

  /** Added to the number before the factor is applied: -32 for degrees Fahrenheit, else 0. */
  public double offset() {
    return offset;
  }

  /** Whether the factor is also multiplied by pi (degrees of angle). */
  public boolean timesPi() {
    return timesPi;
  }

  /**
   * @param number a number of this unit
   * @return the same in the base of the dimension
   */
  public double toBase(double number) {
    double scaled = (number + offset) * numerator / denominator;
    return timesPi ? scaled * Math.PI : scaled;
  }

  /**
   * @param base a value in the base of the dimension
   * @return the same as a number of this unit
   */
  public double fromBase(double base) {
    double scaled = timesPi ? base / Math.PI : base;
    return scaled * denominator / numerator - offset;
  }

  private int endOf(int aliasStart) {
    int bar = aliases.indexOf('|', aliasStart);
    return bar < 0 ? aliases.length() : bar;
  }

  /** Whether {@code ascii} is the symbol or an alias, letter by letter. */
  boolean isWritten(String ascii) {
    return symbol.equals(ascii) || hasAlias(ascii, false);
  }

  /** Whether {@code ascii} is the symbol or an alias but for the case of its letters. */
  boolean isWrittenInOtherCase(String ascii) {
    return symbol.equalsIgnoreCase(ascii) || hasAlias(ascii, true);
  }

  private boolean hasAlias(String ascii, boolean ignoreCase) {
    int n = ascii.length();
    for (int at = 0; at < aliases.length(); at = endOf(at) + 1) {
      if (endOf(at) - at == n && aliases.regionMatches(ignoreCase, at, ascii, 0, n)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public String toString() {
    return symbol;
  }
}
