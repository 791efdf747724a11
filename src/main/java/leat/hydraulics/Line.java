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

  /** Ratios closer to 1 than this need no logarithm for their root. */
  private static final double NEAR_ONE = 1e-2;

  /** Less head than this moves nothing, m. */
  private static final double NO_HEAD = 1e-200;

  private static final int MOST_STEPS = 100;

  /** Friction factor of a tube of a tower, -; only where a search starts (computed: Re 10 000). */
  private static final double USUAL_FACTOR = 0.03;

  private final PipeSection[] sections;
  private final Liquid liquid;
  private final FrictionModel model;
  private final Stretch[] stretches;

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
    this.stretches = new Stretch[sections.length];
    for (int i = 0; i < stretches.length; i++) {
      stretches[i] = new Stretch(this.sections[i], liquid, model);
    }
  }

  /** A line with the usual friction factor. */
  public Line(Liquid liquid, PipeSection... sections) {
    this(liquid, FrictionModel.BLEND, sections);
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
      Stretch s = stretches[i];
      sum += s.atWall(flow, s.lengthOverBore) + s.atFittings(flow);
    }
    return sum;
  }

  /** Head lost to friction alone, m; {@code flow} m3/s. */
  public double frictionLoss(double flow) {
    accept(flow);
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += stretches[i].atWall(flow, stretches[i].lengthOverBore);
    }
    return sum;
  }

  /** Head lost in fittings alone, m; {@code flow} m3/s. */
  public double fittingLoss(double flow) {
    accept(flow);
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += stretches[i].atFittings(flow);
    }
    return sum;
  }

  /** Velocity in section {@code i}, m/s; {@code flow} m3/s. */
  public double velocity(int i, double flow) {
    return flow / stretches[i].area;
  }

  /** Velocity head v2/2g in section {@code i}, m; {@code flow} m3/s. */
  public double velocityHead(int i, double flow) {
    return stretches[i].kinetic(flow);
  }

  /** Reynolds number in section {@code i}, -; {@code flow} m3/s. */
  public double reynolds(int i, double flow) {
    return stretches[i].reynoldsPerFlow * flow;
  }

  /** Darcy friction factor in section {@code i}, -; {@code flow} m3/s, above 0. */
  public double frictionFactor(int i, double flow) {
    return stretches[i].frictionFactor(accept(flow));
  }

  /** Friction loss of section {@code i} alone, m; {@code flow} m3/s. */
  public double frictionLoss(int i, double flow) {
    return stretches[i].atWall(accept(flow), stretches[i].lengthOverBore);
  }

  /** Volume of the last {@code back} m, m3; beyond the start of the pipe its first bore goes on. */
  double volumeBack(double back) {
    double sum = 0;
    double left = back;
    for (int i = sections.length - 1; i >= 0 && left > 0; i--) {
      double here = i == 0 ? left : Math.min(left, sections[i].length());
      sum += stretches[i].area * here;
      left -= here;
    }
    return sum;
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
    LossAt asked = asked();
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
      double h = asked.ask(q);
      if (h > head) {
        high = q;
      } else {
        low = q;
      }
      double next = q * root(head / h, asked.power());
      if (Math.abs(next - q) <= LAST_STEP * q) {
        return Math.min(next, cap);
      }
      q = next;
    }
    return Math.min(q, cap);
  }

  /** The root of a ratio; near 1 by its series, whose error the next step of a search mends. */
  private static double root(double ratio, double power) {
    double off = ratio - 1;
    if (Math.abs(off) < NEAR_ONE) {
      double share = 1 / power;
      return 1 + share * off * (1 + 0.5 * (share - 1) * off);
    }
    return Math.exp(Math.log(ratio) / power);
  }

  /** To be asked at one flow after the other. */
  LossAt asked() {
    return new LossAt(stretches);
  }

  private double roughFlow(double head) {
    return Math.sqrt(head / roughLoss());
  }

  /**
   * Loss over flow squared, m per (m3/s)2, by a usual friction factor: where a search may start.
   *
   * @throws Impossible if the line has neither length nor K
   */
  double roughLoss() {
    double sum = 0;
    for (int i = 0; i < stretches.length; i++) {
      Stretch s = stretches[i];
      sum += (USUAL_FACTOR * s.lengthOverBore + s.section.fittingsK()) * s.headPerFlowSquared;
    }
    if (!(sum > 0)) {
      throw new Impossible("length", "a line without length and without K loses no head");
    }
    return sum;
  }

  private static double accept(double flow) {
    return Impossible.unlessWithin(
        "flow", flow, 0, MOST_FLOW, "a flow is 0 or more, 100 m3/s at most");
  }
}
