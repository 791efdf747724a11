package leat.sweep;

import static leat.sweep.Measure.Better.LESS;
import static leat.sweep.Measure.Better.MORE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import leat.answer.Show;
import leat.check.Subject;
import leat.hydraulics.Derate;
import leat.system.TowerAt;

/** What {@code leat pump} answers, of the worst tower with all valves open. */
final class WaterMeasures {
  private static final String PUMP = "pump";

  private WaterMeasures() {}

  static List<Measure> all() {
    return List.of(
        flow("flow_low_L_min", "flow at low", true),
        flow("flow_full_L_min", "flow when full", false),
        low("margin_m", "margin_m", MORE, "margin", Show.M, TowerAt::margin),
        low(
            "margin_pct",
            "margin_pct",
            MORE,
            "margin",
            Show.PERCENT,
            t -> t.marginShare().orElse(Double.NaN)),
        low(
            "fill_time_s",
            "fill_time_s",
            LESS,
            "fill time",
            Show.S,
            t -> t.fillTime().orElse(Double.NaN)),
        low("velocity_m_s", "velocity_m_s", LESS, "speed", Show.M_S, TowerAt::velocity),
        Measure.of(
            "drain_back_L",
            PUMP,
            "drain_back_L",
            LESS,
            "drains back",
            Show.L,
            WaterMeasures::drainBack),
        Measure.of(
            "derate_pct",
            PUMP,
            "derate_pct",
            MORE,
            "derate",
            Show.PERCENT,
            s -> s.believed().kind() == Derate.Kind.NO_FLOW ? Double.NaN : s.waterway().derate()));
  }

  private static Measure flow(String name, String label, boolean low) {
    return Measure.of(
        name, PUMP, "flow_L_min", MORE, label, Show.L_MIN, s -> worst(s, low, true, TowerAt::flow));
  }

  private static Measure low(
      String name,
      String reads,
      Measure.Better better,
      String label,
      Show show,
      ToDoubleFunction<TowerAt> value) {
    return Measure.of(
        name, PUMP, reads, better, label, show, s -> worst(s, true, better == MORE, value));
  }

  /** Least or most of a value over the towers, at the refill mark or full; NaN when one is. */
  private static double worst(
      Subject subject, boolean low, boolean least, ToDoubleFunction<TowerAt> value) {
    double worst = Double.NaN;
    for (int t = 0; t < subject.waterway().towers(); t++) {
      double own = value.applyAsDouble(low ? subject.openLow(t) : subject.openFull(t));
      if (Double.isNaN(own)) {
        return own;
      }
      worst = Double.isNaN(worst) ? own : least ? Math.min(worst, own) : Math.max(worst, own);
    }
    return worst;
  }

  private static double drainBack(Subject subject) {
    double sum = 0;
    for (int t = 0; t < subject.waterway().towers(); t++) {
      sum += subject.openLow(t).drainBack() * subject.openLow(t).count();
    }
    return sum;
  }
}
