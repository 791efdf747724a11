package leat.command.sense;

import leat.level.Divider;
import leat.level.Limits;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.numeric.Impossible;
import leat.plan.Origin;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.quantity.NumberText;
import leat.quantity.PlainDecimal;
import leat.quantity.QuantityReader;
import leat.quantity.Units;
import leat.quantity.Unreadable;

/** Turns what was typed, or a cell of rows, into a reading of the sender. */
public final class SenderReading {
  private final Sender sender;
  private final Divider divider;
  private final Motion motion;
  private final Reading reading = new Reading();

  /**
   * {@code divider} is null for ohms, else the cells are counts, and what divider and ADC may be
   * off by belongs to the steps.
   */
  public SenderReading(Sender sender, Divider divider, Motion motion) {
    this.sender = divider == null ? sender : sender.readBy(divider);
    this.divider = divider;
    this.motion = motion;
  }

  /** The sender as it is read. */
  Sender sender() {
    return sender;
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
    double counts = PlainDecimal.read(text);
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
    double ohms = PlainDecimal.read(text);
    if (ohms != ohms) {
      if (isOpen(text)) {
        return Double.POSITIVE_INFINITY;
      }
      ohms = spelled(text);
    }
    if (ohms < Limits.MOST_NEGATIVE) {
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
}
