package leat.energy;

/**
 * What draws power: the pump while it runs, the controller always, the relay's coil part of the
 * time.
 *
 * <pre>mean W = P s + controller + coil x (s, 1 - s or 0)</pre>
 *
 * <p>The label's power is rated: a throttled centrifugal pump draws less, a synchronous pump's draw
 * hardly varies with flow; a plug meter knows (common practice).
 *
 * <p>Source: energy balance; sheet energy.md section 1, check values energy-duty.csv.
 *
 * @param pumpW power of the pump while it runs, W
 * @param controllerW power of the controller with its supply, W
 * @param coilW power of the relay's coil, W
 * @param coil when the coil draws
 */
public record Draw(double pumpW, double controllerW, double coilW, Coil coil) {
  /** Usual coil of a 5 V relay of 70 ohm, W: 5 V squared over 70 ohm. */
  public static final double USUAL_COIL_W = 0.36;

  /** Low and high end of a microcontroller with radio, at the plug, W (common practice). */
  public static final double USUAL_CONTROLLER_LOW_W = 0.4;

  /** See {@link #USUAL_CONTROLLER_LOW_W}. */
  public static final double USUAL_CONTROLLER_HIGH_W = 1.5;

  /** Controller taken for the hint when none is counted, W: the middle of the usual draws. */
  public static final double USUAL_CONTROLLER_W =
      (USUAL_CONTROLLER_LOW_W + USUAL_CONTROLLER_HIGH_W) / 2;

  /**
   * What a usual controller would add to what is counted.
   *
   * @param watts its draw, W
   * @param joules its energy, J
   * @param share that over the pump's energy, no unit
   */
  public record Hint(double watts, double joules, double share) {}

  /**
   * What a usual controller would add.
   *
   * @param days length of the period, days
   * @param pumpJ energy of the pump in it, J, above 0
   */
  public static Hint controllerHint(double days, double pumpJ) {
    double joules = Duty.steadyJ(USUAL_CONTROLLER_W, days);
    return new Hint(USUAL_CONTROLLER_W, joules, joules / pumpJ);
  }

  /**
   * @throws leat.numeric.Impossible if a power is negative
   */
  public Draw {
    Accepted.power("power", pumpW);
    Accepted.power("controller power", controllerW);
    Accepted.power("coil power", coilW);
  }

  /**
   * Mean power of controller and coil.
   *
   * @param share share of the time the pump runs, 0 to 1
   * @return W
   * @throws leat.numeric.Impossible if the share is outside 0 to 1
   */
  public double othersW(double share) {
    Accepted.share("share", share);
    return controllerW + coilW * coil.share(share);
  }

  /**
   * Mean power of everything.
   *
   * @param share share of the time the pump runs, 0 to 1
   * @return W
   * @throws leat.numeric.Impossible if the share is outside 0 to 1
   */
  public double meanW(double share) {
    return pumpW * share + othersW(share);
  }
}
