package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Closing a valve until a riser takes the wanted flow. Never throttle the intake.
 *
 * <pre>valve head = H'(Q_w) - H_s(Q_w),   K = valve head 2 g/v^2 on the bore of the valve</pre>
 *
 * <p>Where one riser stays open because it has too little, the others are set beside it as it runs:
 * see {@link HeldFlow}.
 *
 * <p>Source: sheet hydraulics.md section 5; check values: hydraulics-operating-point.csv.
 *
 * @param reachable false when it has less than the wanted flow with its valve open
 * @param wantedFlow m3/s
 * @param flow what the riser gets: the wanted flow, or what comes, m3/s
 * @param pumpHead head of the pump with all valves so set, m
 * @param naturalFlow with the valve open, m3/s
 * @param valveHead held back by the valve, m
 * @param valveK loss coefficient of the valve on the bore it sits in, -
 */
public record Throttle(
    boolean reachable,
    double wantedFlow,
    double flow,
    double pumpHead,
    double naturalFlow,
    double valveHead,
    double valveK) {

  /**
   * Every riser of a manifold at its wanted flow at the same time, each with its own valve.
   *
   * @param curve the pump, derated
   * @param manifold the risers
   * @param wantedFlows m3/s, above 0, one a riser
   * @return one valve a riser
   * @throws Impossible unless all are above 0, or if one is too small for a valve
   */
  public static Throttle[] each(PumpCurve curve, Manifold manifold, double... wantedFlows) {
    for (double q : wantedFlows) {
      Impossible.unlessWithin("flow", q, 1e-12, 100, "a wanted flow is above 0");
    }
    ManifoldFlow natural = manifold.solve(curve);
    HeldFlow held = HeldFlow.of(curve, manifold, wantedFlows);
    Throttle[] valves = new Throttle[wantedFlows.length];
    for (int i = 0; i < valves.length; i++) {
      valves[i] =
          new Throttle(
              held.gives(i, wantedFlows[i]),
              wantedFlows[i],
              held.flows().flow(i),
              held.flows().pumpHead(),
              natural.flow(i),
              held.heads()[i],
              held.moreK()[i]);
    }
    return valves;
  }

  /**
   * Seconds in which a volume is caught: what to hold a jug and a watch against.
   *
   * @param volume m3, above 0
   * @param flow m3/s, above 0
   * @return s
   * @throws Impossible unless both are above 0
   */
  public static double secondsFor(double volume, double flow) {
    return Impossible.unlessPositive("volume", volume) / Impossible.unlessPositive("flow", flow);
  }
}
