package leat.plan;

import java.util.List;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.Roughness;
import leat.hydraulics.SizedFitting;
import leat.numeric.Impossible;
import leat.quantity.CountAt;
import leat.quantity.MeasuredFlow;
import leat.quantity.PumpPoint;
import leat.quantity.Quantity;

/** Whether the pump's curve falls and the pipes can be. */
final class PipeSense {
  private PipeSense() {}

  static void pump(Section pump, Section tank, List<Problem> problems) {
    if (pump.isGiven()) {
      bucket(pump, tank, problems);
      Rivals.check(pump, problems);
      Rivals.check(pump.section("supply"), problems);
      curve(pump, problems);
    }
  }

  /** A bucket is caught at a level that the tank has. */
  static void bucket(Section pump, Section tank, List<Problem> problems) {
    MeasuredFlow flow = (MeasuredFlow) pump.raw("measured");
    Double rim = TankSense.rim(tank);
    if (flow != null && flow.level() != null && rim != null && flow.level().value() > rim) {
      problems.add(PlanErrors.overRim(pump, "measured", rim));
    }
  }

  private static void curve(Section pump, List<Problem> problems) {
    int before = problems.size();
    List<?> points = pump.list("curve");
    if (TankSense.isWhole(pump, "curve")) {
      for (int i = 0; i < points.size(); i++) {
        point(pump, points, i, problems);
      }
    }
    if (problems.size() > before) {
      return;
    }
    try {
      if (points.size() > 1 && TankSense.isWhole(pump, "curve")) {
        trial(points);
      } else if (pump.has("shutoff_head") && pump.has("max_flow")) {
        PumpCurve.parabola(pump.need("shutoff_head"), pump.need("max_flow"));
      }
    } catch (Impossible e) {
      problems.add(PlanErrors.refusedByTrade(pump, e.quantity(), e));
    }
  }

  private static void point(Section pump, List<?> points, int i, List<Problem> problems) {
    PumpPoint point = (PumpPoint) points.get(i);
    String path = pump.path("curve") + "[" + i + "]";
    if (i == 0) {
      if (point.flow().value() != 0) {
        Origin at = pump.itemOrigin("curve", 0, point.flow(), false);
        problems.add(PlanErrors.curveStart(at, path, point.flow()));
      }
      return;
    }
    PumpPoint before = (PumpPoint) points.get(i - 1);
    TankSense.rises(pump, "curve", i, "flows", point.flow(), before.flow(), false, problems);
    if (point.head().value() > before.head().value()) {
      Origin at = pump.itemOrigin("curve", i, point.head(), true);
      problems.add(PlanErrors.headRises(at, path, point.head(), before.head()));
    }
  }

  private static void trial(List<?> points) {
    double[] flows = new double[points.size()];
    double[] heads = new double[points.size()];
    for (int i = 0; i < flows.length; i++) {
      flows[i] = ((PumpPoint) points.get(i)).flow().value();
      heads[i] = ((PumpPoint) points.get(i)).head().value();
    }
    PumpCurve.points(flows, heads);
  }

  static void pipe(Section pipe, List<Problem> problems) {
    Rivals.check(pipe, problems);
    if (!pipe.has("bore")) {
      return;
    }
    double roughness = Roughness.SMOOTH_TUBE;
    if (pipe.has("roughness")) {
      roughness = pipe.need("roughness");
    } else if (pipe.has("material")) {
      roughness = Roughness.of(pipe.text("material"));
    }
    try {
      new leat.hydraulics.PipeSection(
          pipe.has("length") ? pipe.need("length") : 1,
          pipe.need("bore"),
          roughness,
          pipe.has("k") ? pipe.need("k") : 0,
          pipe.has("ridges") ? pipe.need("ridges") : 0);
      fittings(pipe, roughness, problems);
    } catch (Impossible e) {
      boolean typed = pipe.key.find(e.quantity()) != null && pipe.has(e.quantity());
      problems.add(PlanErrors.refusedByTrade(pipe, typed ? e.quantity() : "bore", e));
    }
  }

  private static void fittings(Section pipe, double roughness, List<Problem> problems) {
    Named fittings = pipe.named("fittings");
    for (int i = 0; i < fittings.size(); i++) {
      Fitted fitted = new Fitted(fittings.name(i), (CountAt) fittings.value(i));
      String misfit = fitted.misfit();
      Quantity size = fitted.howMany().size();
      if (misfit != null) {
        problems.add(PlanErrors.fitting(fittings.origin(i), path(pipe, fitted), misfit));
      } else if (size != null) {
        try {
          SizedFitting.k(fitted.name(), size.value(), pipe.need("bore"), roughness);
        } catch (Impossible e) {
          problems.add(
              PlanErrors.fitting(fittings.origin(i), path(pipe, fitted), fitted.name(), e));
        }
      }
    }
  }

  private static String path(Section pipe, Fitted fitted) {
    return pipe.path("fittings") + "." + fitted.name();
  }
}
