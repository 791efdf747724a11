package leat.check;

/** Keys that several rules read together, for {@link Rule#reads}. */
public final class ReadKeys {
  /** What the water's way is made of, with the valves as they are set at the refill mark. */
  public static final String WATER_WAY =
      "pump.curve pump.shutoff_head pump.max_flow pump.speed pump.derate pump.measured pipe"
          + " towers[].count towers[].outlet towers[].riser towers[].wanted tank.low";

  /** The same, judged with the tank full. */
  public static final String WATER_WAY_FULL = WATER_WAY + " tank.full";

  /** The film down the modules. */
  public static final String FILM = " towers[].modules[].diameter towers[].modules[].wall";

  /** The heights of the modules. */
  public static final String STACK =
      " towers[].modules[].count towers[].modules[].height towers[].modules[].overlap";

  /** The tank's litres. */
  public static final String TANK =
      " tank.shape tank.top tank.bottom tank.corner tank.height tank.diameter tank.length"
          + " tank.table tank.between tank.bodies";

  /** What the running towers hold. */
  public static final String HELD = " hold_up" + STACK + FILM;

  /** The sender's steps in the tank. */
  public static final String SENDER =
      " sender.steps sender.edges sender.below sender.ladder tank.full tank.holds" + TANK;

  /** What plants drink. */
  public static final String DRINKS = " drinks crops[].pots crops[].water thirst";

  /** When each timing is in force. */
  public static final String TIMING = " timing season.from season.to site.time_zone";

  private ReadKeys() {}
}
