package leat.system;

import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.Throttle;

/**
 * A valve in each riser, closed until each tower gets the flow it should; none when a wanted flow
 * is not told.
 */
public final class Valves {
  private static final double LITRE = 0.001;

  private final Throttle[] valves;
  private final Waterway way;

  private Valves(Throttle[] valves, Waterway way) {
    this.valves = valves;
    this.way = way;
  }

  /**
   * Valves for a solved water's way.
   *
   * @param wanted flow of every tower, m3/s, or null for each tower's own {@code wanted}
   */
  public static Valves of(Waterway way, ManifoldFlow natural, Double wanted) {
    double[] flows = new double[natural.manifold().size()];
    for (int t = 0; t < way.towers(); t++) {
      if (wanted == null && way.wanted(t).isEmpty()) {
        return new Valves(null, way);
      }
      for (int k = 0; k < way.count(t); k++) {
        flows[way.riserOf(t) + k] = wanted != null ? wanted : way.wanted(t).getAsDouble();
      }
    }
    return new Valves(Throttle.each(way.curve(), natural.manifold(), flows), way);
  }

  /** Whether flows are wanted at all. */
  public boolean areWanted() {
    return valves != null;
  }

  /** The valve of a tower. */
  public Throttle of(int t) {
    return valves[way.riserOf(t)];
  }

  /** Whether every tower can have its flow. */
  public boolean allReachable() {
    for (int i = 0; valves != null && i < valves.length; i++) {
      if (!valves[i].reachable()) {
        return false;
      }
    }
    return true;
  }

  /** Seconds in which a litre comes out of a tower's riser at its wanted flow, s. */
  public double litreIn(int t) {
    return Throttle.secondsFor(LITRE, of(t).wantedFlow());
  }
}
