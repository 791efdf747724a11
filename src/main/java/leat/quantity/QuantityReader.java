package leat.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a number and its unit: "13 mm", "1 1/2 in", "5 ft 3 in", "400 L/h", "0.31 EUR/kWh". Nothing
 * is guessed: what could be read two ways, lacks its unit or has a unit of another dimension is
 * refused with an example and, where it is sure, the mend. The same in every locale.
 */
public final class QuantityReader {
  private static final int LONGEST = 200;

  private final String text;
  private final int from;
  private final int to;
  private final Dimension wanted;

  private QuantityReader(String text, int from, int to, Dimension wanted) {
    int begin = from;
    int end = to;
    while (begin < end && Spelling.isSpace(text.charAt(begin))) {
      begin++;
    }
    while (end > begin && Spelling.isSpace(text.charAt(end - 1))) {
      end--;
    }
    this.text = text;
    this.from = begin;
    this.to = end;
    this.wanted = wanted;
  }

  /**
   * A quantity with its unit.
   *
   * @param typed what was typed
   * @param wanted what is needed
   * @throws Unreadable if it is anything else
   */
  public static Quantity read(String typed, Dimension wanted) {
    return read(typed, 0, typed.length(), wanted, bare(wanted));
  }

  /**
   * A quantity whose unit may be left out because one is meant by nature, such as days or ohms.
   *
   * @param bare the unit of a bare number; its dimension is the one that is needed
   * @throws Unreadable if it is anything else
   */
  public static Quantity read(String typed, Unit bare) {
    return read(typed, 0, typed.length(), bare.dimension(), bare);
  }

  /**
   * A plain number such as a pH or a loss factor: the same rules for digits, and no unit.
   *
   * @throws Unreadable if it is anything else
   */
  public static double number(String typed) {
    return read(typed, Units.NUMBER_UNIT).value();
  }

  /** The unit that a bare number has in a dimension, or null where one must be typed. */
  static Unit bare(Dimension wanted) {
    if (wanted == Dimension.NUMBER) {
      return Units.NUMBER_UNIT;
    }
    return wanted == Dimension.COUNT ? Units.COUNTS : null;
  }

  /** A part of a longer text; the offsets of errors count in the whole, suggestions are whole. */
  static Quantity read(String whole, int from, int to, Dimension wanted, Unit bare) {
    return read(whole, from, to, wanted, bare, null);
  }

  /** As above, {@code currency} being that of a bare number of money. */
  static Quantity read(
      String whole, int from, int to, Dimension wanted, Unit bare, String currency) {
    QuantityReader reader = new QuantityReader(whole, from, to, wanted);
    try {
      return reader.read(bare, currency);
    } catch (Unreadable e) {
      boolean partOnly = reader.from > 0 || reader.to < whole.length();
      if (e.suggestion() == null || !partOnly) {
        throw e;
      }
      String mended = whole.substring(0, reader.from) + e.suggestion() + whole.substring(reader.to);
      throw new Unreadable(e.code(), e.message(), e.start(), e.end(), mended);
    }
  }

  private Quantity read(Unit bare, String currency) {
    if (from == to) {
      throw QuantityErrors.nothing(wanted, from);
    }
    if (to - from > LONGEST) {
      throw QuantityErrors.tooLong(wanted, from, to);
    }
    if (wanted.isMoney() && bare == null) {
      return new MoneyReader(text, from, to, wanted).read();
    }
    NumberScanner scanner = new NumberScanner(text, from, to, wanted);
    double number = scanner.scan();
    int unitFrom = skipSpaces(scanner.at());
    if (unitFrom == to) {
      if (bare == null) {
        throw QuantityErrors.noUnit(wanted, got(), from, to);
      }
      return new Quantity(number, bare, got(), currency);
    }
    if (wanted.isMoney()) {
      return new MoneyReader(text, from, to, wanted).read();
    }
    Unit unit = Spelling.exactly(wanted, Spelling.ascii(text.substring(unitFrom, to)));
    if (unit != null) {
      return new Quantity(number, unit, got(), null);
    }
    Quantity parts = takesParts() ? parts(number, unitFrom) : null;
    if (parts != null) {
      return parts;
    }
    throw new UnitRefusal(text, from, unitFrom, to, wanted).reason();
  }

  private int skipSpaces(int index) {
    int i = index;
    while (i < to && Spelling.isSpace(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private String got() {
    return text.substring(from, to);
  }

  private boolean takesParts() {
    switch (wanted) {
      case LENGTH:
      case HEAD:
      case MASS:
      case TIME:
        return true;
      default:
        return false;
    }
  }

  /** "5 ft 3 in", "1 h 30 min": null when the text is not of that shape. */
  private Quantity parts(double number, int unitFrom) {
    int second = secondNumber(unitFrom);
    if (second == to) {
      return null;
    }
    Unit large = Spelling.exactly(wanted, Spelling.ascii(text.substring(unitFrom, second)));
    if (large == null) {
      return null;
    }
    QuantityReader rest = new QuantityReader(text, second, to, wanted);
    NumberScanner scanner = new NumberScanner(text, rest.from, rest.to, wanted);
    double more = scanner.scan();
    Unit small = Spelling.exactly(wanted, Spelling.ascii(text.substring(scanner.at(), to)));
    if (small == null) {
      return null;
    }
    double unitOfLarge = large.toBase(1);
    double sum = small.toBase(more);
    if (number < 0 || small.toBase(1) >= unitOfLarge || sum >= unitOfLarge) {
      throw QuantityErrors.badParts(wanted, got(), from, to);
    }
    return new Quantity(small.fromBase(large.toBase(number) + sum), small, got(), null);
  }

  private int secondNumber(int unitFrom) {
    int i = unitFrom;
    while (i < to && !(text.charAt(i) >= '0' && text.charAt(i) <= '9')) {
      i++;
    }
    return i;
  }

  /** Names of the units of a dimension, for suggestions. */
  static List<String> spellings(Dimension dimension) {
    List<String> all = new ArrayList<>();
    List<Unit> units = Units.of(dimension);
    for (int i = 0; i < units.size(); i++) {
      all.add(units.get(i).symbol());
      all.addAll(units.get(i).aliases());
    }
    return all;
  }
}
