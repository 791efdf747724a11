package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * One section of a {@link Line} with what does not hang on the flow: worked out once, asked many
 * times.
 *
 * <p>Source: as {@link Line}.
 */
final class Stretch {
  final PipeSection section;
  final double area;
  final double lengthOverBore;
  final double headPerFlowSquared;
  final double reynoldsPerFlow;
  private final FrictionModel model;
  private final double relRoughness;
  private final double ridgeFactor;

  /** Colebrook's factor at the lowest turbulent Re; 0 until it is wanted, which is seldom. */
  private double atTurbulent;

  Stretch(PipeSection section, Liquid liquid, FrictionModel model) {
    this.section = section;
    this.model = model;
    this.area = section.area();
    this.lengthOverBore = section.length() / section.bore();
    this.relRoughness = section.roughness() / section.bore();
    this.reynoldsPerFlow = section.bore() / (area * liquid.kinematicViscosity());
    this.headPerFlowSquared = 1 / (2 * Liquid.GRAVITY * area * area);
    this.ridgeFactor = section.ridgeFactor();
  }

  /** v2/2g, m; {@code flow} m3/s. */
  double kinetic(double flow) {
    return headPerFlowSquared * flow * flow;
  }

  /** Lost in fittings, m; {@code flow} m3/s. */
  double atFittings(double flow) {
    return section.fittingsK() * headPerFlowSquared * flow * flow;
  }

  /** Lost at the wall over {@code aspect} bores of length, m; {@code flow} m3/s, 0 or more. */
  double atWall(double flow, double aspect) {
    double re = reynoldsPerFlow * flow;
    boolean tiny = model == FrictionModel.BLEND || re < 100;
    if (re <= Regime.LAMINAR_TO && tiny && FrictionFactor.LAMINAR >= ridgeFactor * re) {
      return FrictionFactor.LAMINAR * aspect * headPerFlowSquared / reynoldsPerFlow * flow;
    }
    return factor(re) * aspect * headPerFlowSquared * flow * flow;
  }

  /** Darcy friction factor, -; {@code flow} m3/s, above 0. */
  double frictionFactor(double flow) {
    return factor(
        Impossible.unlessWithin(
            "flow", reynoldsPerFlow * flow, 1e-12, 1e30, "friction needs a flow above 0"));
  }

  private double factor(double re) {
    boolean turbulent = isTurbulent(re);
    double x = turbulent ? Colebrook.inverseRoot(re, relRoughness) : 0;
    return Math.max(ridgeFactor, turbulent ? 1 / (x * x) : beforeTurbulent(re));
  }

  private boolean isTurbulent(double re) {
    return model == FrictionModel.BLEND && re >= Regime.TURBULENT_FROM;
  }

  private double beforeTurbulent(double re) {
    if (model == FrictionModel.CHURCHILL) {
      return Churchill.factor(re, relRoughness);
    }
    return re <= Regime.LAMINAR_TO
        ? FrictionFactor.LAMINAR / re
        : FrictionFactor.blend(re, atTurbulent());
  }

  private double atTurbulent() {
    if (atTurbulent == 0) {
      double x = Colebrook.inverseRoot(Regime.TURBULENT_FROM, relRoughness);
      atTurbulent = 1 / (x * x);
    }
    return atTurbulent;
  }

  /**
   * Adds its loss, and the loss times its power of the flow, to {@code sum}.
   *
   * @param flow m3/s, above 0
   * @param near 1/sqrt(f) at a flow close by, -
   * @return 1/sqrt(f), or {@code near} where it was not needed
   */
  double addTo(LossAt sum, double flow, double near) {
    double re = reynoldsPerFlow * flow;
    double kinetic = headPerFlowSquared * flow * flow;
    boolean turbulent = isTurbulent(re);
    double x = turbulent ? Colebrook.inverseRoot(re, relRoughness, near) : near;
    double f = turbulent ? 1 / (x * x) : beforeTurbulent(re);
    double atFittings = section.fittingsK() * kinetic;
    double atWall = Math.max(ridgeFactor, f) * lengthOverBore * kinetic;
    double power = 2;
    if (f > ridgeFactor) {
      power += turbulent ? Colebrook.logSlope(re, relRoughness, x) : logSlope(re, f);
    }
    sum.add(atFittings + atWall, 2 * atFittings + power * atWall);
    return x;
  }

  /** d(ln f)/d(ln Re), -; with Churchill's factor the blend's. */
  private double logSlope(double re, double f) {
    if (re <= Regime.LAMINAR_TO) {
      return -1;
    }
    if (re < Regime.TURBULENT_FROM) {
      return re * FrictionFactor.blendSlope(atTurbulent()) / f;
    }
    return Colebrook.logSlope(re, relRoughness, 1 / Math.sqrt(f));
  }
}
