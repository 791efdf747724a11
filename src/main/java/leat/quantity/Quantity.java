package leat.quantity;

/** A number of a unit, as typed and in the base of its dimension. Never NaN or infinite. */
public final class Quantity {
  private final double number;
  private final double value;
  private final Unit unit;
  private final String typed;
  private final String currency;

  /** {@code number} is of {@code unit}. */
  Quantity(double number, Unit unit, String typed, String currency) {
    this.number = number + 0.0;
    this.value = unit.toBase(number) + 0.0;
    this.unit = unit;
    this.typed = typed;
    this.currency = currency;
  }

  /** A quantity made by the program; its typed text is what one would type for it. */
  public static Quantity of(double number, Unit unit) {
    return new Quantity(number, unit, print(number, unit.symbol()), null);
  }

  /** An amount or price; {@code currency} is an ISO 4217 code such as "EUR". */
  public static Quantity money(double number, String currency, Unit unit) {
    String text = print(number, currency + unit.symbol());
    return new Quantity(number, unit, text, currency);
  }

  private static String print(double number, String symbol) {
    return NumberText.shortest(number) + " " + symbol;
  }

  /** In the base of the dimension. */
  public double value() {
    return value;
  }

  /** What it measures. */
  public Dimension dimension() {
    return unit.dimension();
  }

  /** The unit that was typed. */
  public Unit unit() {
    return unit;
  }

  /** As a number of another unit of the same dimension. */
  public double in(Unit other) {
    if (other.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(other.symbol() + " is not " + unit.dimension().word());
    }
    return other == unit ? number : other.fromBase(value);
  }

  /** The text it was read from, without spaces around it. */
  public String typed() {
    return typed;
  }

  /** The ISO 4217 code of money and prices; null for everything else. */
  public String currency() {
    return currency;
  }

  /** Number and unit in the canonical spelling, such as "8 L/min"; reads back as the same. */
  public String text() {
    String symbol = currency == null ? unit.symbol() : currency + unit.symbol();
    return print(number, symbol);
  }

  @Override
  public String toString() {
    return typed;
  }
}
