package leat.log;

import java.util.ArrayList;
import java.util.List;

/**
 * One local date of a log.
 *
 * <p>Source: sheet log.md sections 3 to 5.
 */
public final class LogDay {
  private final long date;
  final long start;
  final long end;
  double used;
  double refill;
  double rain;
  double ecStart = Double.NaN;
  double ecEnd = Double.NaN;
  double byConcentration = Double.NaN;
  double byDilution = Double.NaN;
  double bySalt = Double.NaN;
  boolean sure = true;
  boolean beginsWhole;
  boolean endsWhole;
  boolean resolved;
  List<EcSpan> spans = new ArrayList<>(2);

  LogDay(long date, long start, long end) {
    this.date = date;
    this.start = start;
    this.end = end;
  }

  /** The local date, days since 1970-01-01. */
  public long date() {
    return date;
  }

  /** What the plants drew, m3. */
  public double used() {
    return used;
  }

  /** Poured in, m3. */
  public double refill() {
    return refill;
  }

  /** Rain caught, m3. */
  public double rain() {
    return rain;
  }

  /** EC at its begin, mS/cm, a median; NaN when unknown. */
  public double ecStart() {
    return ecStart;
  }

  /** EC at its end, mS/cm, a median; NaN when unknown. */
  public double ecEnd() {
    return ecEnd;
  }

  /** Change of EC by water that left, mS/cm; NaN when unknown. */
  public double byConcentration() {
    return byConcentration;
  }

  /** Change of EC by rain, mS/cm. */
  public double byDilution() {
    return byDilution;
  }

  /** Change of EC by salt taken, mS/cm. */
  public double bySalt() {
    return bySalt;
  }

  /** Whether its use is sure: a whole day without fault, gap, leak, stuck float or long failure. */
  public boolean isSure() {
    return sure && isWhole();
  }

  /** Whether it is sure and without rain, so that its use stands against a forecast. */
  public boolean isCounted() {
    return isSure() && !(rain > 0);
  }

  /** Whether the log holds it from its first moment to its last. */
  public boolean isWhole() {
    return beginsWhole && endsWhole;
  }

  /** Adds what one stretch without pouring says of the EC. */
  void settle() {
    resolved = true;
    for (int i = 0; i < spans.size(); i++) {
      EcSpan span = spans.get(i);
      double left = span.volume + span.rain - span.used;
      if (span.isWhole() && span.volume > 0 && left > 0) {
        EcSplit split = EcSplit.of(span.volume, span.start(), left, span.end(), span.rain);
        byConcentration = plus(byConcentration, split.byConcentration());
        byDilution = plus(byDilution, split.byDilution());
        bySalt = plus(bySalt, split.bySalt());
      }
    }
    spans = List.of();
  }

  private static double plus(double a, double b) {
    return a == a ? a + b : b;
  }
}
