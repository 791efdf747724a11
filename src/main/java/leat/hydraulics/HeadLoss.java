package leat.hydraulics;

import java.util.List;
import leat.numeric.Impossible;

/**
 * The head that a riser takes at a flow, told section by section. Good to about 10 %, mostly
 * because of fittings.
 *
 * <p>Source: {@link Line}; check values: hydraulics-headloss.csv.
 *
 * @param flow m3/s
 * @param staticHead the lift, m
 * @param frictionHead rubbed away on the walls, m
 * @param fittingHead lost in bends and ends, m
 * @param totalHead sum of the three, m
 * @param totalHeadChurchill the same sum by Churchill's friction factor, m
 * @param sections one entry a section, from the pump
 */
public record HeadLoss(
    double flow,
    double staticHead,
    double frictionHead,
    double fittingHead,
    double totalHead,
    double totalHeadChurchill,
    List<OfSection> sections) {

  /**
   * One section.
   *
   * @param pipe the section
   * @param velocity m/s
   * @param reynolds -
   * @param regime of the flow
   * @param frictionFactor Darcy, -
   * @param frictionHead m
   * @param fittingHead m
   */
  public record OfSection(
      PipeSection pipe,
      double velocity,
      double reynolds,
      Regime regime,
      double frictionFactor,
      double frictionHead,
      double fittingHead) {
    /** Below this air and grit stay in the tube, m/s (practice). */
    public static final double SLOW = 0.3;

    /** Above this it is noisy and friction eats the head, m/s (practice). */
    public static final double FAST = 1.5;

    /** Above this the units are probably wrong, m/s (practice). */
    public static final double ABSURD = 2.5;

    /** Inside diameter, m. */
    public double bore() {
      return pipe.bore();
    }

    /** The ridges of a corrugated hose rub more than its wall, so theirs is the factor. */
    public boolean ridged() {
      return pipe.ridgeFactor() >= frictionFactor;
    }

    /** Air and grit stay in the tube. */
    public boolean slow() {
      return velocity < SLOW;
    }

    /** Noise, friction; the next bore up is better. */
    public boolean fast() {
      return velocity > FAST;
    }

    /** Check whether L/min was meant for L/h. */
    public boolean absurd() {
      return velocity > ABSURD;
    }

    /** The flow may flicker; friction is uncertain by a fifth. */
    public boolean flickers() {
      return regime == Regime.TRANSITIONAL;
    }

    /** The bore lies in the range that was checked. */
    public boolean usualBore() {
      return PipeSection.USUAL.holds(bore());
    }
  }

  /**
   * The head behind a common pipe: that carries the flow of all towers, the riser its own.
   *
   * @param common pipe from the pump to the manifold, or null for none
   * @param total flow in it, m3/s, at least that of the riser
   * @param riser of one tower, its lift over the tank's level
   * @param flow of it, m3/s, above 0
   * @return the head and its parts; the common pipe's sections come first
   * @throws Impossible unless the flow is above 0, if the total is under it, if water would run
   *     over 30 m/s or the pipes take over 1 km of head
   */
  public static HeadLoss behind(Line common, double total, Riser riser, double flow) {
    accept(flow);
    if (common != null && !(total >= flow)) {
      throw new Impossible("flow", "the common pipe carries the flow of all towers");
    }
    return of(common, total, riser, flow);
  }

  private static void accept(double flow) {
    Impossible.unlessWithin(
        "flow", flow, 1e-15, Double.MAX_VALUE, "head is lost only where water flows: above 0");
  }

  private static HeadLoss of(Line common, double total, Riser riser, double flow) {
    Line line = riser.line();
    int shared = common == null ? 0 : common.size();
    if (common != null) {
      TubeLimits.accept(common, total);
    }
    TubeLimits.accept(line, flow);
    double commonLoss = common == null ? 0 : common.loss(total);
    TubeLimits.acceptHead(commonLoss + line.loss(flow));
    OfSection[] parts = new OfSection[shared + line.size()];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = i < shared ? part(common, i, total) : part(line, i - shared, flow);
    }
    Line churchill = line.with(FrictionModel.CHURCHILL);
    double byChurchill = common == null ? 0 : common.with(FrictionModel.CHURCHILL).loss(total);
    return new HeadLoss(
        flow,
        riser.lift(),
        (common == null ? 0 : common.frictionLoss(total)) + line.frictionLoss(flow),
        (common == null ? 0 : common.fittingLoss(total)) + line.fittingLoss(flow),
        commonLoss + riser.head(flow),
        riser.lift() + byChurchill + churchill.loss(flow),
        List.of(parts));
  }

  private static OfSection part(Line line, int i, double flow) {
    double re = line.reynolds(i, flow);
    return new OfSection(
        line.section(i),
        line.velocity(i, flow),
        re,
        Regime.of(re),
        line.frictionFactor(i, flow),
        line.frictionLoss(i, flow),
        line.section(i).fittingsK() * line.velocityHead(i, flow));
  }

  /** The section with the greatest velocity: the one a one-line answer names. */
  public OfSection fastest() {
    OfSection most = sections.get(0);
    for (int i = 1; i < sections.size(); i++) {
      if (sections.get(i).velocity() > most.velocity()) {
        most = sections.get(i);
      }
    }
    return most;
  }

  /** Friction and fittings together, m. */
  public double lostHead() {
    return frictionHead + fittingHead;
  }

  /** The loss is more than half of the lift: a wider bore pays. */
  public boolean heavy() {
    return lostHead() > 0.5 * Math.max(0, staticHead);
  }

  /** A part of the total, such as {@code frictionHead}, as a share, -; 0 when the total is 0. */
  public double share(double part) {
    return totalHead > 0 ? part / totalHead : 0;
  }
}
