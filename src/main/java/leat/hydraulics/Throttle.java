package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Closing a valve until a riser takes the wanted flow. Never throttle the intake.
 *
 * <pre>valve head = H'(Q_w) - H_s(Q_w),   K = valve head 2 g/v^2 on the bore of the valve</pre>
 *
 * <p>Source: sheet hydraulics.md section 5; check values: hydraulics-operating-point.csv.
 *
 * @param reachable false when the wanted flow is above the natural one: then nothing is held back
 * @param wantedFlow m3/s
 * @param flow what the riser gets: the wanted flow, or the natural one, m3/s
 * @param pumpHead head of the pump at that flow, m
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
   * One riser, the valve in its last section.
   *
   * @param curve the pump, derated
   * @param riser from the pump
   * @param wantedFlow m3/s, above 0
   * @return the valve
   * @throws Impossible unless the wanted flow is above 0
   */
  public static Throttle to(PumpCurve curve, Riser riser, double wantedFlow) {
    return each(curve, new Manifold(null, riser), wantedFlow)[0];
  }

  /**
   * Every riser of a manifold at its wanted flow at the same time, each with its own valve.
   *
   * @param curve the pump, derated
   * @param manifold the risers
   * @param wantedFlows m3/s, above 0, one a riser
   * @return one valve a riser; if the pump cannot give the sum, none is reachable
   * @throws Impossible unless all are above 0
   */
  public static Throttle[] each(PumpCurve curve, Manifold manifold, double... wantedFlows) {
    if (wantedFlows.length != manifold.size()) {
      throw new Impossible("flow", "name one wanted flow for each tower");
    }
    double total = 0;
    for (double q : wantedFlows) {
      total += Impossible.unlessWithin("flow", q, 1e-12, 100, "a wanted flow is above 0");
    }
    ManifoldFlow natural = manifold.solve(curve);
    boolean onCurve = total <= curve.maxFlow();
    double head = onCurve ? curve.head(total) : natural.pumpHead();
    double atManifold = onCurve ? head - manifold.commonLoss(total) : 0;
    Throttle[] valves = new Throttle[wantedFlows.length];
    for (int i = 0; i < valves.length; i++) {
      double q = wantedFlows[i];
      double held = onCurve ? atManifold - manifold.riser(i).head(q) : -1;
      valves[i] = held < 0 ? open(natural, i, q) : closed(natural, i, q, head, held);
    }
    return valves;
  }

  private static Throttle open(ManifoldFlow natural, int i, double wanted) {
    return new Throttle(false, wanted, natural.flow(i), natural.pumpHead(), natural.flow(i), 0, 0);
  }

  private static Throttle closed(
      ManifoldFlow natural, int i, double wanted, double head, double held) {
    Line line = natural.manifold().riser(i).line();
    double kinetic = line.velocityHead(line.size() - 1, wanted);
    return new Throttle(true, wanted, wanted, head, natural.flow(i), held, held / kinetic);
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
