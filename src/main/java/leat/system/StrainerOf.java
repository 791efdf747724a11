package leat.system;

import java.util.OptionalDouble;
import leat.hydraulics.Liquid;
import leat.hydraulics.Mend;
import leat.hydraulics.Strainer;
import leat.plan.Section;

/** The round strainer of a plan, one under each tower. */
public final class StrainerOf {
  private StrainerOf() {}

  /**
   * The strainer at a flow.
   *
   * @param flow of one tower, m3/s
   * @param clogged share of it, -
   */
  public static Strainer of(Section strainer, Liquid water, double flow, double clogged) {
    double d = strainer.need("diameter");
    return Strainer.of(
        strainer.need("aperture"),
        strainer.need("wire"),
        Math.PI / 4 * d * d,
        flow,
        clogged,
        Strainer.USUAL_HOLE_SPEED,
        water.viscosity() / water.density());
  }

  /** Least diameter, m, whose loss stays within {@code head} m when clogged, or empty. */
  public static OptionalDouble diameterFor(
      Section strainer, Liquid water, double flow, double clogged, double head) {
    OptionalDouble area =
        Mend.strainerArea(
            head,
            strainer.need("aperture"),
            strainer.need("wire"),
            flow,
            clogged,
            water.viscosity() / water.density());
    return area.isPresent()
        ? OptionalDouble.of(Math.sqrt(4 * area.getAsDouble() / Math.PI))
        : OptionalDouble.empty();
  }
}
