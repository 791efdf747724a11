package leat.check;

/** The rules of the water's way: pump, riser, cap, film, tank. */
final class WaterRules {
  private WaterRules() {}

  /** In the order they are shown. */
  static Rule[] all() {
    return new Rule[] {
      new ReachesTop(),
      new PumpMargin(),
      new TowerStarved(),
      new FlowWanted(),
      new RunOut(),
      new OutletOverTop(),
      new Reach(),
      new SiphonsBack(),
      new Freeboard(),
      new IntakeCovered(),
      new CapLift(),
      new FilmClosed(),
      new FilmFlood(),
      new GapCarries(),
      new GapClogs(),
      new RiserFast(),
      new RiserSlow(),
      new StrainerHead(),
      new StrainerHolds(),
      new PumpGuess()
    };
  }
}
