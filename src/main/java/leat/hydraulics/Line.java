package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Sections of pipe in series, from the pump outwards, filled with one liquid: head lost at a flow
 * and its inverse. Built once, asked many times; no allocation in the sums.
 *
 * <pre>h = sum over sections of (f L/D + sum K) v^2/(2 g),   v = Q/A,   Re = v D/nu</pre>
 *
 * <p>Source: Darcy and Weisbach; friction factor by {@link FrictionFactor} or, as second model,
 * {@link Churchill}; ridges of a corrugated hose by {@link Bend}, where they rub more than the
 * wall. Check values: hydraulics-headloss.csv.
 */
public final class Line {
  /** The greatest flow a line is asked for, m3/s. */
  private static final double MOST_FLOW = 100;

  /** A relative step this small ends the search; past a kink it leaves an error under 1E-12. */
  private static final double LAST_STEP = 1e-11;

  /** Less head than this moves nothing, m. */
  private static final double NO_HEAD = 1e-200;

  private static final int MOST_STEPS = 100;

  private final PipeSection[] sections;
  private final Liquid liquid;
  private final FrictionModel model;
  private final double[] lengthOverBore;
  private final double[] relRoughness;
  private final double[] fittings;
  private final double[] reynoldsPerFlow;
  private final double[] headPerFlowSquared;
  private final double[] atTurbulent;
  private final double[] ridgeFactor;

  /**
   * @param liquid what flows
   * @param model which friction factor
   * @param sections from the pump outwards, at least one
   * @throws Impossible without a section
   */
  public Line(Liquid liquid, FrictionModel model, PipeSection... sections) {
    if (sections.length == 0) {
      throw new Impossible("riser", "a line of pipe needs at least one section");
    }
    this.liquid = liquid;
    this.model = model;
    this.sections = sections.clone();
    int n = sections.length;
    lengthOverBore = new double[n];
    relRoughness = new double[n];
    fittings = new double[n];
    reynoldsPerFlow = new double[n];
    headPerFlowSquared = new double[n];
    atTurbulent = new double[n];
    ridgeFactor = new double[n];
    for (int i = 0; i < n; i++) {
      prepare(i);
    }
  }

  /** A line with the usual friction factor. */
  public Line(Liquid liquid, PipeSection... sections) {
    this(liquid, FrictionModel.BLEND, sections);
  }

  private void prepare(int i) {
    PipeSection s = sections[i];
    double area = s.area();
    lengthOverBore[i] = s.length() / s.bore();
    relRoughness[i] = s.roughness() / s.bore();
    fittings[i] = s.fittingsK();
    reynoldsPerFlow[i] = s.bore() / (area * liquid.kinematicViscosity());
    headPerFlowSquared[i] = 1 / (2 * Liquid.GRAVITY * area * area);
    double x = Colebrook.inverseRoot(Regime.TURBULENT_FROM, relRoughness[i]);
    atTurbulent[i] = 1 / (x * x);
    ridgeFactor[i] = s.ridgeFactor();
  }

  /** What flows in it. */
  public Liquid liquid() {
    return liquid;
  }

  /** Number of sections. */
  public int size() {
    return sections.length;
  }

  /** PipeSection {@code i}, counted from the pump. */
  public PipeSection section(int i) {
    return sections[i];
  }

  /** Length of all sections, m. */
  public double length() {
    double sum = 0;
    for (PipeSection s : sections) {
      sum += s.length();
    }
    return sum;
  }

  /** The same pipe with the other friction factor, such as Churchill's for comparison. */
  public Line with(FrictionModel other) {
    return new Line(liquid, other, sections);
  }

  /** The same pipe with {@code more} K, -, on section {@code i}: a valve, a clogged elbow. */
  public Line withMoreK(int i, double more) {
    return with(i, sections[i].withMoreK(more));
  }

  /** The same pipe with section {@code i} replaced. */
  public Line with(int i, PipeSection other) {
    PipeSection[] changed = sections.clone();
    changed[i] = other;
    return new Line(liquid, model, changed);
  }

  /** This line and then {@code next}, as one. */
  public Line then(Line next) {
    PipeSection[] all = java.util.Arrays.copyOf(sections, sections.length + next.sections.length);
    System.arraycopy(next.sections, 0, all, sections.length, next.sections.length);
    return new Line(liquid, model, all);
  }

  /**
   * Head lost to friction and fittings, m.
   *
   * @param flow m3/s, 0 or more
   * @throws Impossible if negative or over 100 m3/s
   */
  public double loss(double flow) {
    accept(flow);
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      double kinetic = headPerFlowSquared[i] * flow * flow;
      sum += friction(i, flow, lengthOverBore[i]) + fittings[i] * kinetic;
    }
    return sum;
  }

  /** Head lost to friction alone, m; {@code flow} m3/s. */
  public double frictionLoss(double flow) {
    accept(flow);
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += friction(i, flow, lengthOverBore[i]);
    }
    return sum;
  }

  /** Head lost in fittings alone, m; {@code flow} m3/s. */
  public double fittingLoss(double flow) {
    accept(flow);
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += fittings[i] * headPerFlowSquared[i] * flow * flow;
    }
    return sum;
  }

  /** Velocity in section {@code i}, m/s; {@code flow} m3/s. */
  public double velocity(int i, double flow) {
    return flow / sections[i].area();
  }

  /** Velocity head v2/2g in section {@code i}, m; {@code flow} m3/s. */
  public double velocityHead(int i, double flow) {
    return headPerFlowSquared[i] * flow * flow;
  }

  /** Reynolds number in section {@code i}, -; {@code flow} m3/s. */
  public double reynolds(int i, double flow) {
    return reynoldsPerFlow[i] * flow;
  }

  /** Darcy friction factor in section {@code i}, -; {@code flow} m3/s, above 0. */
  public double frictionFactor(int i, double flow) {
    accept(flow);
    double re = reynolds(i, flow);
    return factor(
        i, Impossible.unlessWithin("flow", re, 1e-12, 1e30, "friction needs a flow above 0"));
  }

  /** Friction loss of section {@code i} alone, m; {@code flow} m3/s. */
  public double frictionLoss(int i, double flow) {
    return friction(i, accept(flow), lengthOverBore[i]);
  }

  /** Head lost while the last {@code empty} m of the pipe hold no water yet, m; all K count. */
  double lossWhileFilling(double flow, double empty) {
    double sum = 0;
    double left = empty;
    for (int i = sections.length - 1; i >= 0; i--) {
      double wet = Math.max(0, sections[i].length() - left);
      left = Math.max(0, left - sections[i].length());
      double kinetic = headPerFlowSquared[i] * flow * flow;
      sum += friction(i, flow, wet / sections[i].bore()) + fittings[i] * kinetic;
    }
    return sum;
  }

  /** Index of the section that lies {@code back} m back from the outlet; the first beyond that. */
  int sectionBack(double back) {
    double left = back;
    for (int i = sections.length - 1; i > 0; i--) {
      left -= sections[i].length();
      if (left < 0) {
        return i;
      }
    }
    return 0;
  }

  /** Volume of the last {@code back} m, m3; beyond the start of the pipe its first bore goes on. */
  double volumeBack(double back) {
    double sum = 0;
    double left = back;
    for (int i = sections.length - 1; i >= 0 && left > 0; i--) {
      double here = i == 0 ? left : Math.min(left, sections[i].length());
      sum += sections[i].area() * here;
      left -= here;
    }
    return sum;
  }

  private double friction(int i, double flow, double aspect) {
    double re = reynoldsPerFlow[i] * flow;
    boolean tiny = model == FrictionModel.BLEND || re < 100;
    if (re <= Regime.LAMINAR_TO && tiny && FrictionFactor.LAMINAR >= ridgeFactor[i] * re) {
      return FrictionFactor.LAMINAR * aspect * headPerFlowSquared[i] / reynoldsPerFlow[i] * flow;
    }
    return factor(i, re) * aspect * headPerFlowSquared[i] * flow * flow;
  }

  private double factor(int i, double re) {
    return Math.max(ridgeFactor[i], wallFactor(i, re));
  }

  private double wallFactor(int i, double re) {
    if (model == FrictionModel.CHURCHILL) {
      return Churchill.factor(re, relRoughness[i]);
    }
    if (re <= Regime.LAMINAR_TO) {
      return FrictionFactor.LAMINAR / re;
    }
    if (re < Regime.TURBULENT_FROM) {
      return FrictionFactor.blend(re, atTurbulent[i]);
    }
    double x = Colebrook.inverseRoot(re, relRoughness[i]);
    return 1 / (x * x);
  }

  /**
   * The flow at which {@code head} m is lost, m3/s; 0 for a head of 0 or less.
   *
   * @throws Impossible if the line has neither length nor K
   */
  public double flowAt(double head) {
    return flowAt(head, 0, MOST_FLOW);
  }

  /** The flow at which {@code head} is lost, at most {@code cap}; {@code near} is a guess or 0. */
  double flowAt(double head, double near, double cap) {
    if (!(head > NO_HEAD)) {
      return 0;
    }
    double low = 0;
    double high = cap;
    double q = near > 0 ? near : roughFlow(head);
    boolean capKnown = false;
    double[] power = new double[1];
    for (int step = 0; step < MOST_STEPS; step++) {
      if (q >= high && !capKnown) {
        capKnown = true;
        if (loss(cap) <= head) {
          return cap;
        }
      }
      if (!(q > low && q < high)) {
        q = 0.5 * (low + high);
      }
      double h = lossAndPower(q, power);
      if (h > head) {
        high = q;
      } else {
        low = q;
      }
      double next = q * Math.exp(Math.log(head / h) / power[0]);
      if (Math.abs(next - q) <= LAST_STEP * q) {
        return Math.min(next, cap);
      }
      q = next;
    }
    return Math.min(q, cap);
  }

  /** Loss, m, and into {@code power} d(ln loss)/d(ln Q): 1 laminar, 2 fittings, 1.8 smooth. */
  private double lossAndPower(double flow, double[] power) {
    double loss = 0;
    double weighted = 0;
    for (int i = 0; i < sections.length; i++) {
      double kinetic = headPerFlowSquared[i] * flow * flow;
      double re = reynoldsPerFlow[i] * flow;
      double atFittings = fittings[i] * kinetic;
      double f = factor(i, re);
      double atWall = f * lengthOverBore[i] * kinetic;
      loss += atFittings + atWall;
      weighted += 2 * atFittings + (2 + logSlope(i, re, f)) * atWall;
    }
    power[0] = weighted / loss;
    return loss;
  }

  /** Slope of the loss, m per m3/s (with Churchill's factor the slope of the blend's). */
  public double slope(double flow) {
    double[] power = new double[1];
    double h = lossAndPower(Impossible.unlessPositive("flow", accept(flow)), power);
    return h == 0 ? 0 : power[0] * h / flow;
  }

  private double logSlope(int i, double re, double f) {
    if (f <= ridgeFactor[i]) {
      return 0;
    }
    if (re <= Regime.LAMINAR_TO) {
      return -1;
    }
    if (re < Regime.TURBULENT_FROM) {
      return re * FrictionFactor.blendSlope(atTurbulent[i]) / f;
    }
    return Colebrook.logSlope(re, relRoughness[i], 1 / Math.sqrt(f));
  }

  private double roughFlow(double head) {
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += (0.03 * lengthOverBore[i] + fittings[i]) * headPerFlowSquared[i];
    }
    if (!(sum > 0)) {
      throw new Impossible("length", "a line without length and without K loses no head");
    }
    return Math.sqrt(head / sum);
  }

  private static double accept(double flow) {
    return Impossible.unlessWithin(
        "flow", flow, 0, MOST_FLOW, "a flow is 0 or more, 100 m3/s at most");
  }
}
