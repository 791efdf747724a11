package leat.command.sense;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.cli.Call;
import leat.level.SenderFit;
import leat.level.Tank;
import leat.quantity.NumberText;
import leat.quantity.Units;

/** A sender as poured litres tell it, in the keys of a plan. */
final class FittedSender {
  private final Call call;
  private final SenderFit fit;
  private final Tank tank;
  private final Double hysteresis;

  FittedSender(Call call, SenderFit fit, Tank tank, Double hysteresis) {
    this.call = call;
    this.fit = fit;
    this.tank = tank;
    this.hysteresis = hysteresis;
  }

  private String edges(String lineEnd) {
    StringBuilder out = new StringBuilder("[");
    double[] at = fit.edgeVolumes();
    double[] ohms = fit.edgeOhms();
    for (int i = 0; i < at.length; i++) {
      out.append(i == 0 ? "" : i % 5 == 0 ? lineEnd : ", ");
      out.append(litres(at[i])).append(" = ").append(ohms(ohms[i]));
    }
    return out.append(']').toString();
  }

  private String litres(double volume) {
    if (call.us()) {
      return NumberText.atMost(Units.GALLON.fromBase(volume), 3) + " gal";
    }
    return NumberText.atMost(Units.L.fromBase(volume), 2) + " L";
  }

  private static String ohms(double ohm) {
    return NumberText.atMost(ohm, 1) + " ohm";
  }

  private String hysteresisKey() {
    return tank != null ? "hysteresis" : "hysteresis_volume";
  }

  private String hysteresisText() {
    return tank != null ? millimetres(hysteresis) : litres(hysteresis);
  }

  private String millimetres(double length) {
    return call.us()
        ? NumberText.atMost(Units.INCH.fromBase(length), 2) + " in"
        : NumberText.atMost(Units.MM.fromBase(length), 1) + " mm";
  }

  /** Into the plan's own sender. */
  Answer intoPlan(Answer answer) {
    List<String> keys = new ArrayList<>();
    put(keys, "edges", edges(", "));
    put(keys, "below", ohms(fit.below()));
    if (hysteresis != null) {
      put(keys, hysteresisKey(), hysteresisText());
    }
    put(keys, "edge_error", litres(fit.edgeUncertainty()));
    put(keys, "tolerance", "0 %");
    put(keys, "reading", ohms(fit.readingTolerance()));
    put(keys, "lead", "0 ohm");
    return call.intoPlan(answer, keys.toArray(new String[0]));
  }

  private static void put(List<String> keys, String key, String value) {
    keys.add("sender." + key);
    keys.add(value);
  }

  /** The section to paste. */
  String paste() {
    StringBuilder out = new StringBuilder("sender:\n  edges: ").append(edges(",\n          "));
    out.append("\n  below: ").append(ohms(fit.below())).append('\n');
    if (hysteresis != null) {
      out.append("  ").append(hysteresisKey()).append(": ").append(hysteresisText()).append('\n');
    }
    out.append("  edge_error: ").append(litres(fit.edgeUncertainty()));
    out.append("                 # half a pour\n");
    out.append("  tolerance: 0 %                     # fitted: each step as it is\n");
    out.append("  reading: ").append(ohms(fit.readingTolerance())).append('\n');
    out.append("  lead: 0 ohm                        # it is in the fitted readings\n");
    return out.toString();
  }
}
