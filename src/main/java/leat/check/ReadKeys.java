package leat.check;

/** Keys that several rules read together, for {@link Rule#reads}. */
public final class ReadKeys {
  /** The pump's head against the outlets; a measured flow was measured with the tank full. */
  public static final String HEAD =
      "pump.curve pump.shutoff_head pump.max_flow pump.speed pump.derate pump.measured pipe"
          + " towers[].outlet towers[].riser tank.full";

  /** The water's way, with the valves as they are set at the refill mark. */
  public static final String WATER_WAY = HEAD + " towers[].count towers[].wanted tank.low";

  /** The film down the modules. */
  public static final String FILM = " towers[].modules[].diameter towers[].modules[].wall";

  /** The heights of the modules. */
  public static final String STACK =
      " towers[].modules[].count towers[].modules[].height towers[].modules[].overlap";

  /** The tank's levels. */
  public static final String LEVELS =
      " tank.shape tank.top tank.bottom tank.height tank.diameter tank.length tank.table"
          + " tank.bodies";

  /** The tank's litres. */
  public static final String TANK = LEVELS + " tank.corner tank.between";

  /** What the running towers hold. */
  public static final String HELD = " hold_up" + STACK + FILM;

  /** The sender's steps by level. */
  public static final String SENDER =
      " sender.steps sender.edges sender.below sender.ladder tank.full" + LEVELS;

  /** What plants drink. */
  public static final String DRINKS = " drinks crops[].pots crops[].water thirst";

  /** When each timing is in force. */
  public static final String TIMING = " timing season.from season.to site.time_zone";

  private ReadKeys() {}
}
