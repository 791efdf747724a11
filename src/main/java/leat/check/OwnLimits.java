package leat.check;

import leat.numeric.Impossible;
import leat.plan.Named;
import leat.plan.Refused;
import leat.quantity.QuantityReader;
import leat.quantity.Unreadable;

/**
 * The plan's own limits, read once. A name that is no rule, a wrong dimension and what is no number
 * are refused at their place; a value that cannot be meant leaves its rule unknown.
 */
final class OwnLimits {
  private static final String NONE = "none";

  private final Named limits;
  private final Rule[] rules;
  private final double[] values;

  private OwnLimits(Named limits) {
    this.limits = limits;
    this.rules = new Rule[limits.size()];
    this.values = new double[limits.size()];
  }

  static OwnLimits of(Named limits) {
    OwnLimits own = new OwnLimits(limits);
    for (int i = 0; i < own.rules.length; i++) {
      own.rules[i] = Rules.find(limits.name(i));
      if (own.rules[i] == null) {
        throw new Refused(CheckErrors.unknownRule(limits, i));
      }
      own.values[i] = own.read(i, (String) limits.value(i));
    }
    return own;
  }

  private double read(int i, String text) {
    if (NONE.equals(text)) {
      return Double.NaN;
    }
    if (!rules[i].takesLimit()) {
      throw new Refused(CheckErrors.takesNoLimit(limits, i));
    }
    try {
      return QuantityReader.read(text, rules[i].show().metric().dimension()).value();
    } catch (Unreadable e) {
      throw new Refused(CheckErrors.badLimit(limits, i, e.message(), e.code()));
    }
  }

  private int index(Rule rule) {
    for (int i = 0; i < rules.length; i++) {
      if (rules[i].id().equals(rule.id())) {
        return i;
      }
    }
    return -1;
  }

  boolean isOff(Rule rule) {
    int i = index(rule);
    return i >= 0 && Double.isNaN(values[i]);
  }

  /** The limit in the base unit, or null. */
  Double of(Rule rule) {
    int i = index(rule);
    if (i < 0) {
      return null;
    }
    if (!rule.allows(values[i])) {
      throw new Impossible(
          "limits." + rule.id(),
          limits.value(i) + " cannot be kept: a limit " + rule.allowed() + " is needed");
    }
    return values[i];
  }
}
