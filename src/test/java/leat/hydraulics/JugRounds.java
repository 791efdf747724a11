package leat.hydraulics;

/**
 * Setting the valves of a {@link Balance} by hand: one tower after the other, each until its jug
 * takes the right time with all others running; one that has too little stays open. Each later
 * valve lifts the head at the manifold, so those set before run over: go round twice.
 *
 * <p>Source: sheet hydraulics-balance.md section 4 (exact jugs); check values:
 * hydraulics-balance.csv, columns hand_ and wrong_order_.
 *
 * @param flows after each round, of each riser, m3/s; no round when the curve ends first or nothing
 *     flows, as a jug tells nothing about the head then
 * @param worst after each round, the greatest distance of a tower from its set flow, as share, -
 */
public record JugRounds(double[][] flows, double[] worst) {
  /**
   * The rounds.
   *
   * @param curve the pump, derated, as for the balance
   * @param manifold the risers, as for the balance
   * @param goal what is aimed at
   * @param order of the risers that are set; {@link Balance#order()} is the good one
   * @param rounds how many, 1 or more
   * @return the flows after each
   */
  public static JugRounds of(
      PumpCurve curve, Manifold manifold, Balance goal, int[] order, int rounds) {
    int told = curveEndsFirst(goal) || goal.active() == 0 ? 0 : rounds;
    double[][] flows = new double[told][];
    double[] worst = new double[told];
    double[] k = new double[manifold.size()];
    for (int r = 0; r < told; r++) {
      for (int i : order) {
        k[i] = setByJug(curve, valved(manifold, goal, k), manifold.riser(i), i, goal);
      }
      flows[r] = valved(manifold, goal, k).solve(curve).flows();
      worst[r] = worst(flows[r], goal);
    }
    return new JugRounds(flows, worst);
  }

  /** The end of the curve decides, not a tower: set by jug, the flows would drift. */
  static boolean curveEndsFirst(Balance b) {
    if (b.limiting() >= 0 || b.status() == Balance.Status.NO_FLOW) {
      return false;
    }
    return b.share().isEmpty() || b.share().getAsDouble() < 1;
  }

  private static Manifold valved(Manifold manifold, Balance goal, double[] k) {
    Manifold now = manifold;
    for (int i = 0; i < k.length; i++) {
      if (goal.valves()[i].flow() == 0) {
        now = now.closed(i);
      } else if (k[i] > 0) {
        now = SetValve.onRiser(now, i, k[i]);
      }
    }
    return now;
  }

  /** K with which one tower takes its set flow while the others take what they then take. */
  private static double setByJug(PumpCurve curve, Manifold now, Riser bare, int i, Balance goal) {
    double flow = goal.valves()[i].flow();
    PumpCurve left = new CurveLeft(curve, now, flow);
    double head = Pipes.alone(now.closed(i)).solve(left).manifoldHead();
    double held = head - bare.head(flow);
    Line line = bare.line();
    return held <= Accepted.SAME_HEAD ? 0 : held / line.velocityHead(line.size() - 1, flow);
  }

  private static double worst(double[] flows, Balance goal) {
    double worst = 0;
    for (int i = 0; i < flows.length; i++) {
      double set = goal.valves()[i].flow();
      if (set > 0) {
        worst = Math.max(worst, Math.abs(flows[i] / set - 1));
      }
    }
    return worst;
  }

  /** The pump and common pipe as the others see them while one tower takes its flow. */
  private record CurveLeft(PumpCurve curve, Manifold manifold, double taken) implements PumpCurve {
    @Override
    public double head(double flow) {
      double total = Math.min(flow + taken, curve.maxFlow());
      return curve.head(total) - manifold.commonLoss(total);
    }

    @Override
    public double slope(double flow) {
      double total = Math.min(flow + taken, curve.maxFlow());
      return curve.slope(total) - Pipes.commonSlope(manifold, total);
    }

    @Override
    public double maxFlow() {
      return curve.maxFlow() - taken;
    }
  }
}
