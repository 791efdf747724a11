package leat.hydraulics;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * Which pump would do: the least printed head and flow, for wanted flows and what is left of the
 * print.
 *
 * <pre>
 * duty: the printed curve must pass over (W, h/d), h = max(z_i + a_i(w_i)) + h_common(W)
 * smallest box: of all parabolas through it the one with the least H0 Qmax: H0 = 1.5 h/d, Qmax = sqrt(3) W
 * </pre>
 *
 * <p>H0 (1 - x^2) = h/d with x = W/Qmax gives H0 Qmax = (h/d) W/(x (1 - x^2)), least at x =
 * 1/sqrt(3); there the parabola's own power Q H is greatest, too. Where the margin over the highest
 * outlet asks for more head, that head is taken and Qmax follows. A parabola is a stand-in: with
 * printed points, read the duty off them.
 *
 * <p>Source: inverse of {@link Balance} and {@link ParabolaCurve} (sheet hydraulics.md section 5);
 * the choice of the smallest box is ours. Watts by {@link Power}, its efficiencies practice.
 *
 * @param flow W, of all towers together, m3/s
 * @param head h, that the pump must give at it, m
 * @param lift of the highest wanted outlet, m
 * @param derate share of the printed head left, -
 * @param shutoffHead least printed head at no flow, m, of the smallest box
 * @param maxFlow least printed flow at no head, m3/s, of the smallest box
 * @param hydraulicWatts power in the water at the duty, W
 */
public record PumpNeeded(
    double flow,
    double head,
    double lift,
    double derate,
    double shutoffHead,
    double maxFlow,
    double hydraulicWatts) {

  /** H0 of the smallest box over the duty's head: 1/(1 - 1/3). */
  private static final double BOX_HEAD = 1.5;

  /**
   * What is needed.
   *
   * @param manifold the towers over the lowest working level
   * @param derate share of the printed head that is left, -, above 0 to 1
   * @param marginShare over the highest wanted lift at no flow, -, 0 or more
   * @param density of the water, kg/m3
   * @param wanted m3/s, one a riser, 0 for a tower that is closed
   * @return the pump
   * @throws Impossible outside, or when the water runs there without a pump
   */
  public static PumpNeeded of(
      Manifold manifold, double derate, double marginShare, double density, double... wanted) {
    Impossible.unlessPositive("derate", derate);
    Impossible.unlessWithin("derate", derate, 0, 1, "a derate is the share of printed head left");
    Impossible.ifNegative("margin", marginShare);
    if (wanted.length != manifold.size()) {
      throw new Impossible("flow", "name one wanted flow for each tower");
    }
    double total = 0;
    double most = Double.NEGATIVE_INFINITY;
    double lift = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < wanted.length; i++) {
      if (Impossible.ifNegative("flow", wanted[i]) > 0) {
        TubeLimits.accept(manifold.riser(i).line(), wanted[i]);
        total += wanted[i];
        most = Math.max(most, manifold.riser(i).head(wanted[i]));
        lift = Math.max(lift, manifold.riser(i).lift());
      }
    }
    Impossible.unlessPositive("flow", total);
    double head = most + manifold.commonLoss(total);
    if (!(head > 0)) {
      throw new Impossible("lift", "the water runs there by itself: no pump is needed");
    }
    TubeLimits.acceptHead(head);
    return box(total, head, lift, derate, marginShare, density);
  }

  private static PumpNeeded box(
      double flow, double head, double lift, double derate, double marginShare, double density) {
    double forMargin = Math.max(0, lift) * (1 + marginShare) / derate;
    double shutoff = Math.max(BOX_HEAD * head / derate, forMargin);
    double most = flow / Math.sqrt(1 - head / (derate * shutoff));
    double watts = Power.hydraulic(density, flow, head);
    return new PumpNeeded(flow, head, lift, derate, shutoff, most, watts);
  }

  /** Head that the printed curve must reach at the wanted flow, m. */
  public double printedHead() {
    return head / derate;
  }

  /** The same for a pump of which another share of the printed head is left, -, above 0. */
  public PumpNeeded at(double otherDerate) {
    Impossible.unlessPositive("derate", otherDerate);
    double factor = derate / otherDerate;
    return new PumpNeeded(
        flow, head, lift, otherDerate, shutoffHead * factor, maxFlow, hydraulicWatts);
  }

  /** A printed curve does at this derate. */
  public boolean metBy(PumpCurve printed) {
    return flow <= printed.maxFlow() && derate * printed.head(flow) >= head;
  }

  /**
   * Least printed head at no flow of a pump with this pump's shape of curve, all heads larger or
   * smaller together, m; empty when its curve ends before the wanted flow.
   */
  public OptionalDouble shutoffHeadShapedAs(PumpCurve printed) {
    if (!(flow < printed.maxFlow()) || !(printed.head(flow) > Accepted.NO_HEAD)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(printedHead() / printed.head(flow) * printed.shutoffHead());
  }

  /** From the wire with a good small pump, W, at {@link Power#USUAL_MOST}. */
  public double goodWatts() {
    return hydraulicWatts / Power.USUAL_MOST;
  }

  /** From the wire with a poor small pump, W, at {@link Power#USUAL_LEAST}. */
  public double poorWatts() {
    return hydraulicWatts / Power.USUAL_LEAST;
  }
}
