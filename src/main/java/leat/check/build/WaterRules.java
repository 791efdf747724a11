package leat.check.build;

import leat.check.Rule;
import leat.check.run.RunOut;

/** The rules of the water's way: pump, riser, cap, film, tank. */
public final class WaterRules {
  private WaterRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
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
