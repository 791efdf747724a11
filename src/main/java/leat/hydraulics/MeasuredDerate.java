package leat.hydraulics;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * The share of the printed head that explains a measured flow. The system is that of the trial,
 * with the water level of the trial.
 *
 * <pre>d = H_s(Q)/H(Q);   dd/d = E dQ/Q,   E = Q H_s'/H_s - Q H'/H</pre>
 *
 * <p>Source: sheet hydraulics-tower.md, "A bucket and a watch"; check values:
 * hydraulics-derate.csv, hydraulics-measured.csv.
 *
 * @param status what the trial says
 * @param flow measured, m3/s
 * @param systemHead head the pipes take at that flow, m
 * @param printedHead of the printed curve at that flow, m; empty past its end
 * @param derate share of the printed head, -; empty past the end and at no flow
 * @param low lower end of the derate from the watch, -; empty if there is none
 * @param high upper end, -; at no flow the ceiling lift/H0; empty if there is none
 * @param sensitivity E, change of the derate for a change of the flow, both relative, -; empty as
 *     the derate
 * @param printedFlow what the printed curve would give in this trial, m3/s
 */
public record MeasuredDerate(
    Status status,
    double flow,
    double systemHead,
    OptionalDouble printedHead,
    OptionalDouble derate,
    OptionalDouble low,
    OptionalDouble high,
    OptionalDouble sensitivity,
    double printedFlow) {

  /** Seconds a hand and a watch are off, both ends together, s (practice). */
  public static final double WATCH = 1;

  /** Shortest catch that is worth it, s. */
  public static final double LEAST_CATCH = 25;

  /** What the trial says. */
  public enum Status {
    /** A derate of 100 % or less. */
    VALUE("value"),
    /** Over 100 %: the lift, the bore, K or the bucket is wrong, or the print is humble. */
    OVER_100("over-100"),
    /** More than the printed greatest flow: no derate can explain it. */
    BEYOND_CURVE("beyond-curve"),
    /** Nothing came out: only a ceiling is known. */
    NO_FLOW("no-flow");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    /** The word to print. */
    public String word() {
      return word;
    }
  }

  /**
   * From a bucket and a watch.
   *
   * @param printed curve, not derated
   * @param system of the trial
   * @param volume caught, m3, above 0
   * @param seconds it took, s, above 0
   * @param watch uncertainty of the time, s, 0 or more; {@link #WATCH} usually
   * @return what it says
   * @throws Impossible unless volume and time are above 0
   */
  public static MeasuredDerate of(
      PumpCurve printed, WaterSystem system, double volume, double seconds, double watch) {
    Impossible.unlessPositive("volume", volume);
    Impossible.unlessPositive("time", seconds);
    Impossible.ifNegative("watch", watch);
    OptionalDouble low = share(printed, system, volume / (seconds + watch));
    OptionalDouble high = OptionalDouble.empty();
    if (seconds > watch) {
      high = share(printed, system, volume / (seconds - watch));
    }
    return of(printed, system, volume / seconds, low, high);
  }

  /**
   * From a flow alone, without a range.
   *
   * @param printed curve, not derated
   * @param system of the trial
   * @param flow m3/s, 0 or more
   * @return what it says
   * @throws Impossible if negative
   */
  public static MeasuredDerate of(PumpCurve printed, WaterSystem system, double flow) {
    return of(printed, system, flow, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static MeasuredDerate of(
      PumpCurve printed, WaterSystem system, double flow, OptionalDouble low, OptionalDouble high) {
    if (flow != 0) {
      Impossible.unlessWithin("flow", flow, 1e-15, 100, "a measured flow is 0 or above");
    }
    double natural = OperatingPoint.of(printed, system).flow();
    double systemHead = system.head(flow);
    TubeLimits.acceptHead(Math.max(0, systemHead));
    OptionalDouble none = OptionalDouble.empty();
    if (flow == 0) {
      double shutoff = printed.shutoffHead();
      OptionalDouble ceiling = OptionalDouble.of(Math.max(0, system.leastLift()) / shutoff);
      OptionalDouble head = OptionalDouble.of(shutoff);
      return new MeasuredDerate(
          Status.NO_FLOW, 0, systemHead, head, none, none, ceiling, none, natural);
    }
    OptionalDouble derate = share(printed, system, flow);
    if (derate.isEmpty()) {
      return new MeasuredDerate(
          Status.BEYOND_CURVE, flow, systemHead, none, none, none, none, none, natural);
    }
    return new MeasuredDerate(
        derate.getAsDouble() > 1 ? Status.OVER_100 : Status.VALUE,
        flow,
        systemHead,
        OptionalDouble.of(printed.head(flow)),
        derate,
        low,
        high,
        OptionalDouble.of(sensitivity(printed, system, flow)),
        natural);
  }

  private static OptionalDouble share(PumpCurve printed, WaterSystem system, double flow) {
    if (!(flow < printed.maxFlow())) {
      return OptionalDouble.empty();
    }
    double head = printed.head(flow);
    return head > Accepted.NO_HEAD
        ? OptionalDouble.of(system.head(flow) / head)
        : OptionalDouble.empty();
  }

  private static double sensitivity(PumpCurve printed, WaterSystem system, double flow) {
    double step = 1e-5 * flow;
    double slope = (system.head(flow + step) - system.head(flow - step)) / (2 * step);
    double head = system.head(flow);
    double ofSystem = head > 0 ? flow * slope / head : 0;
    return ofSystem - flow * printed.slope(flow) / printed.head(flow);
  }

  /** The derate can be carried into the plan: {@code pump.measured}. */
  public boolean usable() {
    return status == Status.VALUE;
  }
}
