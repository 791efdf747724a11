package leat.hydraulics;

import java.util.OptionalDouble;

/**
 * One tower's valve in a {@link Balance}.
 *
 * <p>Source: sheet hydraulics-balance.md sections 1 and 4; check values: hydraulics-balance.csv.
 *
 * @param wanted m3/s; for equal flows the equal flow
 * @param openFlow with all valves open, m3/s
 * @param flow to which it is set, m3/s
 * @param state open, part or closed
 * @param head held back by the valve, m; empty when closed
 * @param k loss coefficient on the bore of the riser's last section, -; empty when closed
 */
public record SetValve(
    double wanted,
    double openFlow,
    double flow,
    State state,
    OptionalDouble head,
    OptionalDouble k) {

  /** Above this K a ball valve cannot be set finely: a screw clamp or a smaller pump (practice). */
  public static final double FINE_K = 1000;

  /** A jug that fills faster than this wants a larger one: a watch is good to 1 s, s (practice). */
  public static final double LEAST_JUG_TIME = 15;

  /** How far it is closed. */
  public enum State {
    /** Fully open. */
    OPEN("open"),
    /** In between. */
    PART("part"),
    /** Shut. */
    CLOSED("closed");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word to print. */
    public String word() {
      return word;
    }
  }

  static SetValve closed(double wanted, double openFlow) {
    OptionalDouble none = OptionalDouble.empty();
    return new SetValve(wanted, openFlow, 0, State.CLOSED, none, none);
  }

  static SetValve open(double wanted, double openFlow, double flow) {
    OptionalDouble zero = OptionalDouble.of(0);
    return new SetValve(wanted, openFlow, flow, State.OPEN, zero, zero);
  }

  static SetValve part(double wanted, double openFlow, double flow, double head, double k) {
    return new SetValve(
        wanted, openFlow, flow, State.PART, OptionalDouble.of(head), OptionalDouble.of(k));
  }

  /** Flow with all valves open over the set flow, -. */
  public double opensTo() {
    return openFlow / flow;
  }

  /** A ball valve is too coarse for it. */
  public boolean wantsClamp() {
    return k.isPresent() && k.getAsDouble() > FINE_K;
  }

  /**
   * A jug is too small for a watch.
   *
   * @param seconds in which it fills, s
   * @return yes or no
   */
  public static boolean tooQuick(double seconds) {
    return seconds < LEAST_JUG_TIME;
  }

  /** This valve on riser {@code i} of a manifold. */
  Manifold on(Manifold manifold, int i) {
    if (state == State.CLOSED) {
      return manifold.closed(i);
    }
    return k.getAsDouble() > 0 ? onRiser(manifold, i, k.getAsDouble()) : manifold;
  }

  /** K of a valve on the last section of riser {@code i}. */
  static Manifold onRiser(Manifold manifold, int i, double k) {
    Riser riser = manifold.riser(i);
    Line line = riser.line();
    return manifold.with(i, new Riser(line.withMoreK(line.size() - 1, k), riser.lift()));
  }
}
