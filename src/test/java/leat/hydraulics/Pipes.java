package leat.hydraulics;

/** Pipes and risers as tests change them, made of what lines and manifolds tell. */
final class Pipes {
  private Pipes() {}

  /** All outlets further over the water by {@code higher} m. */
  static Manifold lifted(Manifold m, double higher) {
    Manifold moved = m;
    for (int i = 0; i < m.size(); i++) {
      moved = moved.with(i, new Riser(m.riser(i).line(), m.riser(i).lift() + higher));
    }
    return moved;
  }

  /** The risers without the common pipe, the closed ones closed. */
  static Manifold alone(Manifold m) {
    Riser[] risers = new Riser[m.size()];
    for (int i = 0; i < risers.length; i++) {
      risers[i] = m.riser(i);
    }
    Manifold alone = new Manifold(null, risers);
    for (int i = 0; i < risers.length; i++) {
      alone = m.isClosed(i) ? alone.closed(i) : alone;
    }
    return alone;
  }

  /** What a hair more flow costs in a line, m per m3/s. */
  static double slope(Line line, double flow) {
    double hair = 1e-5 * flow;
    return (line.loss(flow + hair) - line.loss(flow - hair)) / (2 * hair);
  }

  /** The same in the common pipe. */
  static double commonSlope(Manifold m, double flow) {
    double hair = 1e-5 * flow;
    return flow == 0 ? 0 : (m.commonLoss(flow + hair) - m.commonLoss(flow - hair)) / (2 * hair);
  }

  /** Number of the tube that lies {@code back} m back from the outlet; the first beyond that. */
  static int sectionBack(Line line, double back) {
    double left = back;
    for (int i = line.size() - 1; i > 0; i--) {
      left -= line.section(i).length();
      if (left < 0) {
        return i;
      }
    }
    return 0;
  }

  /** Head lost while the last {@code empty} m hold no water yet, m; all fittings count. */
  static double lossWhileFilling(Line line, double flow, double empty) {
    double sum = line.fittingLoss(flow);
    double left = empty;
    for (int i = line.size() - 1; i >= 0; i--) {
      double length = line.section(i).length();
      double wet = Math.max(0, length - left);
      left = Math.max(0, left - length);
      sum += length == 0 ? 0 : line.frictionLoss(i, flow) * wet / length;
    }
    return sum;
  }
}
