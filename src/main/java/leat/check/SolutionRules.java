package leat.check;

/** The rules of water, acid and stock bottles. */
final class SolutionRules {
  private SolutionRules() {}

  /** In the order they are shown. */
  static Rule[] all() {
    return new Rule[] {
      new WaterAlkalinity(), new ChangeInterval(), new PartsCompatible(), new AcidHousehold()
    };
  }
}
