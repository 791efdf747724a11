package leat.check;

/** The rules of the water's way: pump, riser, cap, film, tank. */
final class WaterRules {
  private WaterRules() {}

  /** In the order they are shown. */
  static Rule[] all() {
    return new Rule[] {new PumpMargin()};
  }
}
