package leat.command.sense;

import leat.level.Divider;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.numeric.Impossible;
import leat.plan.Origin;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.quantity.Unreadable;

/** Turns what was typed, or a cell of rows, into a reading of the sender. */
public final class SenderReading {
  /** A meter's zero is never further off, ohm. */
  private static final double MOST_NEGATIVE = -10;

  private static final int MOST_DIGITS = 15;
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };

  private final Sender sender;
  private final Divider divider;
  private final Motion motion;
  private final Reading reading = new Reading();

  /** {@code divider} is null for ohms, else the cells are counts. */
  public SenderReading(Sender sender, Divider divider, Motion motion) {
    this.sender = sender;
    this.divider = divider;
    this.motion = motion;
  }

  /**
   * What a text says; the same object each time.
   *
   * @throws Unreadable if it is no reading
   */
  public Reading of(String text) {
    if (divider == null) {
      return sender.decode(ohms(text), motion, reading);
    }
    if (text.isEmpty()) {
      return sender.decode(Double.NaN, motion, reading);
    }
    double counts = number(text);
    if (counts != counts) {
      counts = asCounts(text);
    }
    if (!NumberText.isWhole(counts)) {
      throw LevelErrors.notCounts(text);
    }
    return sender.decodeCode((int) counts, divider, motion, reading);
  }

  /** The same of an operand; refused with its text. */
  public Reading ofOperand(String text) {
    try {
      if (text.isBlank()) {
        throw divider == null ? LevelErrors.notOhms(text) : LevelErrors.notCounts(text);
      }
      return of(text.strip());
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag("reading", text), "", e));
    } catch (Impossible e) {
      throw new Refused(LevelErrors.impossibleReading(text, e.getMessage()));
    }
  }

  private static double asCounts(String text) {
    try {
      return QuantityReader.read(text, Units.COUNTS).value();
    } catch (Unreadable e) {
      throw LevelErrors.notCounts(text);
    }
  }

  /** Ohms; NaN for nothing, Infinity for open. */
  static double ohms(String text) {
    if (text.isEmpty()) {
      return Double.NaN;
    }
    double ohms = number(text);
    if (ohms != ohms) {
      if (isOpen(text)) {
        return Double.POSITIVE_INFINITY;
      }
      ohms = spelled(text);
    }
    if (ohms < MOST_NEGATIVE) {
      throw LevelErrors.negativeOhms(text);
    }
    return ohms;
  }

  private static double spelled(String text) {
    try {
      return QuantityReader.read(text, Units.OHM).value();
    } catch (Unreadable e) {
      char c = text.charAt(0);
      boolean numeric = c >= '0' && c <= '9' || c == '-' || c == '+' || c == '.';
      throw numeric ? e : LevelErrors.notOhms(text);
    }
  }

  /** What a meter shows at a broken wire. */
  private static boolean isOpen(String text) {
    return "open".equalsIgnoreCase(text)
        || "OL".equalsIgnoreCase(text)
        || "O.L".equalsIgnoreCase(text)
        || "inf".equalsIgnoreCase(text)
        || "infinity".equalsIgnoreCase(text);
  }

  /** A plain decimal, exactly; NaN for every other text, which the slower reader takes. */
  static double number(String text) {
    long digits = 0;
    int count = 0;
    int places = -1;
    int n = text.length();
    int i = n > 0 && text.charAt(0) == '-' ? 1 : 0;
    for (int k = i; k < n; k++) {
      char c = text.charAt(k);
      if (c == '.' && places < 0) {
        places = 0;
      } else if (c >= '0' && c <= '9' && count < MOST_DIGITS) {
        digits = digits * 10 + (c - '0');
        count++;
        places += places >= 0 ? 1 : 0;
      } else {
        return Double.NaN;
      }
    }
    if (count == 0 || places == 0) {
      return Double.NaN;
    }
    double value = places > 0 ? digits / TENS[places] : digits;
    return i == 1 ? -value : value;
  }
}
