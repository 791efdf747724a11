package leat.hydraulics;

/**
 * Space between two flat discs, fed through the riser in the middle: a cap that no plan can name,
 * kept for the sheet's rows beside those of the slot.
 *
 * <pre>
 * A = 2 pi R w;   viscous 6 mu Q ln(R/r1)/(pi w^3 rho g);   inner edge (Q/(2 pi r1 w))^2/2g
 * </pre>
 *
 * <p>Source: sheet hydraulics-tower.md section 4.
 *
 * @param slot area, speed and heads as a slot has them
 * @param innerEdgeHead velocity head at the inner edge, m
 * @param pressureForce with which the pressure between the discs lifts, N, upper bound
 */
record DiscGap(Gap slot, double innerEdgeHead, double pressureForce) {
  static DiscGap of(double flow, double width, double spreader, double bore, double cd, Liquid l) {
    double radius = spreader / 2;
    double inner = bore / 2;
    double area = 2 * Math.PI * radius * width;
    double ln = Math.log(radius / inner);
    double g = Liquid.GRAVITY;
    double viscous = 6 * l.kinematicViscosity() * flow * ln / (Math.PI * width * width * width * g);
    double orifice = Math.pow(flow / (cd * area), 2) / (2 * g);
    double squares = Math.PI * (radius * radius - inner * inner);
    double force = viscous * squares / (2 * ln) + orifice * Math.PI * radius * radius;
    double re = 2 * width * flow / (area * l.kinematicViscosity());
    return new DiscGap(
        new Gap(width, area, flow / area, re, orifice, viscous, orifice + viscous, 0),
        Math.pow(flow / (2 * Math.PI * inner * width), 2) / (2 * g),
        l.density() * g * force);
  }
}
