package leat.solution.conductivity;

/** What a true meter with compensation shows in a potassium chloride standard: not its label. */
final class KclMeter {
  private KclMeter() {}

  /** EC in mS/cm brought to 25 C by the meter's function; celsius 0 to 40. */
  static double shows(KclStandard standard, double celsius, Compensation by) {
    return by.to25(standard.ecAt(celsius), celsius);
  }

  /** How far that is from the label, per cent. */
  static double errorPct(KclStandard standard, double celsius, Compensation by) {
    return 100 * (shows(standard, celsius, by) / standard.ec25() - 1);
  }
}
