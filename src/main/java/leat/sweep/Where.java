package leat.sweep;

import leat.plan.Refused;

/**
 * A condition on a measure, in the unit of its name: {@code margin_pct>20}. Unknown never passes.
 */
public final class Where {
  private static final String[] SIGNS = {">=", "<=", ">", "<", "="};

  private final Measure measure;
  private final String sign;
  private final double limit;

  private Where(Measure measure, String sign, double limit) {
    this.measure = measure;
    this.sign = sign;
    this.limit = limit;
  }

  /**
   * A typed condition.
   *
   * @throws Refused when it is none
   */
  public static Where of(String typed) {
    for (String sign : SIGNS) {
      int at = typed.indexOf(sign);
      if (at > 0) {
        Measure measure = Measures.find(typed.substring(0, at).strip());
        try {
          double number = Double.parseDouble(typed.substring(at + sign.length()).strip());
          if (Double.isFinite(number)) {
            return new Where(measure, sign, number);
          }
        } catch (NumberFormatException e) {
          throw new Refused(SweepErrors.badWhere(typed));
        }
      }
    }
    throw new Refused(SweepErrors.badWhere(typed));
  }

  /** The measure. */
  public Measure measure() {
    return measure;
  }

  /** Whether a value in the measure's base unit passes. */
  public boolean holds(double base) {
    if (Double.isNaN(base)) {
      return false;
    }
    double value =
        measure.column().show() == null ? base : measure.column().show().metric().fromBase(base);
    switch (sign) {
      case ">=":
        return value >= limit;
      case "<=":
        return value <= limit;
      case ">":
        return value > limit;
      case "<":
        return value < limit;
      default:
        return value == limit;
    }
  }
}
