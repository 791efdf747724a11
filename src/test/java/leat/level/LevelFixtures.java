package leat.level;

/**
 * A box of 0.5 x 0.4 x 0.5 m, so that 0.1 m are 20 L, and a sender of four steps in it: 0, 0.1,
 * 0.2, 0.3 m at 10, 60, 110, 160 ohm with a hysteresis of 0.01 m. Bands with the motion unknown: 0
 * to 20, 18 to 40, 38 to 60, 58 to 100 L.
 */
public final class LevelFixtures {
  static final Tank BOX = TaperedBox.box(0.5, 0.4, 0.5, 0);
  private static final double[] LEVELS = {0, 0.1, 0.2, 0.3};

  private LevelFixtures() {}

  static Staircase stairs(boolean falls) {
    double[] rising = {10, 60, 110, 160};
    double[] falling = {160, 110, 60, 10};
    return Staircase.bySteps(BOX, LEVELS, falls ? falling : rising, 0.01);
  }

  static Sender sender(boolean falls) {
    return new Sender(stairs(falls), Limits.DEFAULT, 0.08);
  }

  static Reading read(double ohm) {
    return sender(false).decode(ohm, Motion.UNKNOWN, new Reading());
  }

  /** Ratiometric when the reference is the supply, else both exact; with the usual tolerances. */
  public static Divider divider(
      Divider.Side side, double supply, double fixed, int bits, double reference) {
    return new Divider(
        side,
        supply,
        0,
        fixed,
        Divider.DEFAULT_FIXED_TOLERANCE,
        bits,
        reference,
        0,
        supply == reference,
        Divider.DEFAULT_ADC_ERROR);
  }
}
