package leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import leat.Sheet.Row;

/** Reads pumps, pipes and tanks out of the rows of the sheets, in SI. */
final class Cases {
  static final double L_MIN = 1 / 60000.0;

  private Cases() {}

  static PumpCurve printed(Row r) {
    String[] points = r.text("points_flow_L_min_head_m").split(";");
    double[] q = new double[points.length];
    double[] h = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      String[] pair = points[i].split(":");
      q[i] = Double.parseDouble(pair[0]) * L_MIN;
      h[i] = Double.parseDouble(pair[1]);
    }
    String kind = r.text(r.cells().containsKey("curve") ? "curve" : "pump_curve");
    return kind.equals("parabola") ? PumpCurve.parabola(h[0], q[1]) : PumpCurve.points(q, h);
  }

  static PumpCurve running(Row r) {
    return printed(r).atSpeed(r.num("speed_ratio")).derated(r.num("head_derate"));
  }

  static PipeSection section(Row r, String suffix) {
    String k = suffix.isEmpty() ? "K_sum" : "K" + suffix + "_sum";
    return new PipeSection(
        r.num("length" + suffix + "_m"),
        r.num("bore" + suffix + "_mm") / 1000,
        r.num("rough" + suffix + "_mm") / 1000,
        r.num(k));
  }

  static Line line(Row r, Liquid liquid) {
    return r.has("length2_m")
        ? new Line(liquid, section(r, "1"), section(r, "2"))
        : new Line(liquid, section(r, "1"));
  }

  static Line plain(Row r, Liquid liquid) {
    return new Line(liquid, section(r, ""));
  }

  static Liquid water(Row r) {
    return Liquid.water(r.num("temperature_C"));
  }

  /** Plan area over the level of the tanks in hydraulics-drain.csv, m2 of m. */
  static DoubleUnaryOperator area(Row r) {
    double height = r.num("height_mm");
    return switch (r.text("shape")) {
      case "box", "tapered-box" ->
          h -> {
            double l = between(r, "length", h * 1000 / height);
            double w = between(r, "width", h * 1000 / height);
            double c = between(r, "corner", h * 1000 / height);
            return (l * w - (4 - Math.PI) * c * c) / 1e6;
          };
      case "cylinder", "cone" ->
          h -> {
            double d = between(r, "diameter", h * 1000 / height);
            return Math.PI / 4 * d * d / 1e6;
          };
      case "lying-cylinder" ->
          h -> {
            double d = r.num("diameter_bottom_mm") / 1000;
            return 2 * Math.sqrt(h * (d - h)) * r.num("axial_length_mm") / 1000;
          };
      default -> throw new IllegalStateException(r.text("shape"));
    };
  }

  private static double between(Row r, String what, double share) {
    double bottom = r.num(what + "_bottom_mm");
    return bottom + share * (r.num(what + "_top_mm") - bottom);
  }
}
