package leat.check.build;

import leat.check.Rule;

/** The rules of the water's way: pump, riser, cap, film, tank. */
public final class WaterRules {
  private WaterRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new ReachesTop(),
      new PumpMargin(),
      new TowerFed(),
      new FlowWanted(),
      new ValveNeeded(),
      new PumpOnCurve(),
      new OutletOverTop(),
      new Reach(),
      new NoSiphon(),
      new Freeboard(),
      new IntakeCovered(),
      new CapLift(),
      new FilmClosed(),
      new FilmNotFlooding(),
      new GapCarries(),
      new GapClear(),
      new RiserNotFast(),
      new RiserNotSlow(),
      new StrainerHead(),
      new StrainerHolds(),
      new PumpMeasured()
    };
  }
}
