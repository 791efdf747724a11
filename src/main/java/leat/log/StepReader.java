package leat.log;

import leat.level.Divider;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Staircase;
import leat.numeric.Impossible;

/**
 * A reading to its step: what the sender's windows say, those of its divider and ADC included, as
 * {@code leat level} reads it. Where they leave two steps open, or none, it is the nearest nominal
 * resistance, taken within half the distance to its neighbour. All answers of an ADC of up to 16
 * bits are worked out once.
 *
 * <p>Source: sheet log.md; sizes of tables are our own decision.
 */
final class StepReader {
  static final int BLANK = -1;
  static final int BAD = -2;
  static final int OPEN = -3;
  static final int SHORT = -4;
  private static final int TABLE_BITS = 16;

  /** ohm. */
  static final double OHM_IN_KILO_OHM = 1000;

  private final Sender sender;
  private final Divider divider;
  private final double[] ohm;
  private final boolean falls;
  private final byte[] table;
  private final Reading scratch = new Reading();

  StepReader(Sender sender, Divider divider) {
    Staircase s = sender.staircase();
    this.sender = divider == null ? sender : sender.readBy(divider);
    this.divider = divider;
    this.falls = s.falls();
    this.ohm = new double[s.size()];
    for (int k = 0; k < ohm.length; k++) {
      ohm[k] = s.ohm(step(k));
      if (k > 0) {
        apart(k);
      }
    }
    this.table =
        divider != null && divider.bits() <= TABLE_BITS && ohm.length < 128 ? table() : null;
  }

  private void apart(int k) {
    double half = (ohm[k] - ohm[k - 1]) / 2;
    if (sender.limits().tolerance() * ohm[k] > half) {
      throw new Impossible(
          "tolerance",
          "the steps of "
              + Math.round(ohm[k - 1])
              + " and "
              + Math.round(ohm[k])
              + " ohm cannot be told apart: the tolerance is more than half a step");
    }
  }

  private byte[] table() {
    byte[] all = new byte[divider.topCode() + 1];
    for (int code = 0; code < all.length; code++) {
      all[code] = (byte) ofCode(code);
    }
    return all;
  }

  /** Step of a reading, or one of the words below 0. */
  int step(double reading) {
    if (reading != reading) {
      return BLANK;
    }
    if (divider == null) {
      return of(sender.decode(reading, Motion.UNKNOWN, scratch));
    }
    if (reading < 0 || reading > divider.topCode()) {
      return BAD;
    }
    int code = (int) Math.round(reading);
    return table == null ? ofCode(code) : table[code];
  }

  /** Whether a reading belongs to a step once it is taken as kilo-ohm. */
  boolean isKiloOhm(double reading) {
    return divider == null && step(OHM_IN_KILO_OHM * reading) >= 0;
  }

  private int ofCode(int code) {
    if (code == divider.topCode() && divider.side() == Divider.Side.LOW) {
      return OPEN;
    }
    return of(sender.decodeCode(code, divider, Motion.UNKNOWN, scratch));
  }

  /** One window alone is its step; of two that meet it is the nearer one. */
  private int of(Reading r) {
    switch (r.status()) {
      case OPEN:
        return OPEN;
      case OK:
        return r.stepLow();
      case AMBIGUOUS:
      case BETWEEN_STEPS:
        return Math.min(Math.max(step(nearest(r.ohm())), r.stepLow()), r.stepHigh());
      default:
        return ofOhm(r.ohm());
    }
  }

  private int step(int k) {
    return falls ? ohm.length - 1 - k : k;
  }

  private int ofOhm(double x) {
    if (x >= sender.limits().openAbove()) {
      return OPEN;
    }
    int k = nearest(x);
    if (x < sender.limits().shortBelow() && !fits(0, x)) {
      return SHORT;
    }
    return fits(k, x) ? step(k) : BAD;
  }

  private int nearest(double x) {
    int low = 0;
    int high = ohm.length - 1;
    while (high > low) {
      int middle = (low + high) >>> 1;
      if (x > (ohm[middle] + ohm[middle + 1]) / 2) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean fits(int k, double x) {
    double below = k == 0 ? ohm[1] - ohm[0] : ohm[k] - ohm[k - 1];
    double above = k == ohm.length - 1 ? below : ohm[k + 1] - ohm[k];
    // A lowest step near 0 ohm leaves room for a short below it.
    double least =
        k == 0 ? Math.max(ohm[0] - below / 2, Math.min(ohm[0], limit())) : ohm[k] - below / 2;
    return x >= least && x <= ohm[k] + above / 2;
  }

  private double limit() {
    return sender.limits().shortBelow();
  }
}
