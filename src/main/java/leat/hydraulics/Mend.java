package leat.hydraulics;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import leat.numeric.Impossible;
import leat.numeric.Roots;

/**
 * The inverse questions of a design check: the value that would just pass, by solving the model.
 *
 * <p>Source: inverses of {@link OperatingPoint}, {@link Manifold}, {@link Line}, {@link Gap} and
 * {@link Strainer}; checked in the tests by putting the answer back.
 */
public final class Mend {
  /** The widest bore that is searched, m. */
  private static final double WIDEST = 0.2;

  private Mend() {}

  /**
   * Least printed shut-off head for a margin over the lift.
   *
   * @param lift m, 0 or more
   * @param marginShare wanted, -, 0 or more
   * @param derate share of the printed head left, -, above 0
   * @return m
   * @throws Impossible outside
   */
  public static double shutoffHeadForMargin(double lift, double marginShare, double derate) {
    Impossible.ifNegative("lift", lift);
    Impossible.ifNegative("margin", marginShare);
    return lift * (1 + marginShare) / Impossible.unlessPositive("derate", derate);
  }

  /**
   * Greatest lift that leaves the margin.
   *
   * @param curve the pump, derated
   * @param marginShare wanted, -, 0 or more
   * @return m
   * @throws Impossible if negative
   */
  public static double liftForMargin(PumpCurve curve, double marginShare) {
    return curve.shutoffHead() / (1 + Impossible.ifNegative("margin", marginShare));
  }

  /**
   * Greatest lift of one riser at which it still gets a flow beside the others.
   *
   * @param curve the pump, derated
   * @param manifold all risers
   * @param i which riser
   * @param flow m3/s, above 0
   * @return m; empty if not even a lift of 0 lets it have the flow
   * @throws Impossible unless the flow is above 0
   */
  public static OptionalDouble liftForFlow(PumpCurve curve, Manifold manifold, int i, double flow) {
    Impossible.unlessPositive("flow", flow);
    Line line = manifold.riser(i).line();
    DoubleUnaryOperator surplus =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double lift) {
            return manifold.with(i, new Riser(line, lift)).solve(curve).flow(i) - flow;
          }
        };
    if (surplus.applyAsDouble(0) < 0) {
      return OptionalDouble.empty();
    }
    return fallingRoot(surplus, 0, curve.shutoffHead());
  }

  /**
   * Least bore for a velocity.
   *
   * @param flow m3/s, above 0
   * @param velocity greatest, m/s, above 0
   * @return m
   * @throws Impossible unless both are above 0
   */
  public static double boreForVelocity(double flow, double velocity) {
    Impossible.unlessPositive("flow", flow);
    return Math.sqrt(4 * flow / (Math.PI * Impossible.unlessPositive("velocity", velocity)));
  }

  /**
   * Least bore of a section of one riser with which it gets a flow beside the others.
   *
   * @param curve the pump, derated
   * @param manifold all risers
   * @param i which riser
   * @param section which section of it
   * @param flow m3/s, above 0
   * @return m; empty if none up to 200 mm does
   * @throws Impossible unless the flow is above 0
   */
  public static OptionalDouble boreForFlow(
      PumpCurve curve, Manifold manifold, int i, int section, double flow) {
    Impossible.unlessPositive("flow", flow);
    Riser riser = manifold.riser(i);
    DoubleUnaryOperator missing =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double bore) {
            PipeSection wider = riser.line().section(section).withBore(bore);
            Riser other = new Riser(riser.line().with(section, wider), riser.lift());
            return flow - manifold.with(i, other).solve(curve).flow(i);
          }
        };
    return fallingRoot(missing, narrowest(riser.line(), section), WIDEST);
  }

  /**
   * Least slot between spreader and wall, m, whose head stays within {@code depth} m; the rim's own
   * depth is not in it. Arguments as {@link Gap#slot}.
   *
   * @param depth greatest head, m, above 0
   * @param flow m3/s, above 0
   * @param spreader diameter, m
   * @param thickness of the plate, m
   * @param discharge coefficient, -
   * @param liquid what flows
   * @return m; empty if none up to 0.5 m does
   * @throws Impossible as {@link Gap#slot}
   */
  public static OptionalDouble slotForDepth(
      double depth,
      double flow,
      double spreader,
      double thickness,
      double discharge,
      Liquid liquid) {
    Impossible.unlessPositive("depth", depth);
    DoubleUnaryOperator over =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double width) {
            return Gap.slot(flow, width, spreader, thickness, discharge, liquid).totalHead()
                - depth;
          }
        };
    return fallingRoot(over, 1e-6, 0.5);
  }

  /**
   * Least area of a strainer whose loss stays within {@code head}.
   *
   * @param head greatest loss, m, above 0
   * @param aperture m
   * @param wire m
   * @param flow m3/s, above 0
   * @param clogged share, -
   * @param kinematicViscosity m2/s
   * @return m2; empty if none up to 10 m2 does
   * @throws Impossible as {@link Strainer#of}
   */
  public static OptionalDouble strainerArea(
      double head,
      double aperture,
      double wire,
      double flow,
      double clogged,
      double kinematicViscosity) {
    Impossible.unlessPositive("head", head);
    Impossible.unlessPositive("flow", flow);
    DoubleUnaryOperator over =
        new DoubleUnaryOperator() {
          @Override
          public double applyAsDouble(double area) {
            return Strainer.of(
                        aperture,
                        wire,
                        area,
                        flow,
                        clogged,
                        Strainer.USUAL_HOLE_SPEED,
                        kinematicViscosity)
                    .head()
                - head;
          }
        };
    return fallingRoot(over, 1e-8, 10);
  }

  /** A bore at which the wall's roughness is still a twentieth of it, m. */
  private static double narrowest(Line line, int section) {
    return Math.max(5e-4, 20.000001 * line.section(section).roughness());
  }

  /** Root of a falling function; {@code low} if it is met there, empty if not even at the top. */
  private static OptionalDouble fallingRoot(DoubleUnaryOperator f, double low, double high) {
    if (!(f.applyAsDouble(high) <= 0)) {
      return OptionalDouble.empty();
    }
    if (f.applyAsDouble(low) <= 0) {
      return OptionalDouble.of(low);
    }
    return OptionalDouble.of(Roots.bracketed(f, low, high));
  }
}
