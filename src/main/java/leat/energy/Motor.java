package leat.energy;

import leat.numeric.Impossible;

/**
 * The pump as a load of a contact.
 *
 * <pre>I = P/(U pf),  inrush = multiple x I</pre>
 *
 * <p>Source: power of an alternating current; multiple 6 from makers' relay guides, which compare
 * six times the running current with the resistive rating (IEC AC-3: make locked-rotor current),
 * others 5 to 10; power factor of small induction and synchronous pumps 0.4 to 0.7 is common
 * practice; sheet energy.md section 4, check values energy-relay.csv.
 *
 * @param powerW power while running, W
 * @param supplyV supply voltage, V
 * @param powerFactor power factor, above 0 to 1; 1 for direct current
 * @param inrushMultiple inrush over running current, 1 or more
 */
public record Motor(double powerW, double supplyV, double powerFactor, double inrushMultiple) {
  /** Power factor of a small mains pump, no unit (common practice, 0.4 to 0.7). */
  public static final double USUAL_POWER_FACTOR = 0.6;

  /** Power factor of direct current. */
  public static final double DIRECT_CURRENT_POWER_FACTOR = 1;

  /** Inrush over running current of a small motor, no unit (makers' relay guides). */
  public static final double USUAL_INRUSH_MULTIPLE = 6;

  /** Mains voltage taken where only power counts, V: the European nominal value. */
  public static final double USUAL_MAINS_V = 230;

  /**
   * @throws Impossible if the power is negative, the voltage or power factor not above 0, the power
   *     factor over 1 or the multiple under 1
   */
  public Motor {
    Accepted.power("power", powerW);
    Accepted.volts("supply", supplyV);
    Impossible.unlessWithin(
        "power factor", powerFactor, 0.05, 1, "a power factor lies between 0.05 and 1");
    Impossible.unlessWithin(
        "inrush", inrushMultiple, 1, 100, "the inrush is 1 to 100 times the running current");
  }

  /** Running current, A. */
  public double runA() {
    return powerW / (supplyV * powerFactor);
  }

  /** Inrush current, A. */
  public double inrushA() {
    return inrushMultiple * runA();
  }
}
