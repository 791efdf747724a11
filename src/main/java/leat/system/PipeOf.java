package leat.system;

import java.util.List;
import leat.hydraulics.Fitting;
import leat.hydraulics.PipeSection;
import leat.hydraulics.Roughness;
import leat.hydraulics.SizedFitting;
import leat.plan.Fitted;
import leat.plan.Named;
import leat.plan.Taken;
import leat.quantity.CountAt;
import leat.quantity.Quantity;

/** Pipes of a plan's {@code pipe} and {@code riser} sections. */
public final class PipeOf {
  private PipeOf() {}

  /**
   * Sum of K of fittings as typed on a command line.
   *
   * @param fittings each a {@link Fitted}
   * @param pipe that they stand in
   * @param friction factor of that pipe at the flow, -
   */
  public static double sumOfK(List<Object> fittings, PipeSection pipe, double friction) {
    double sum = 0;
    for (int i = 0; i < fittings.size(); i++) {
      Fitted fitted = (Fitted) fittings.get(i);
      Quantity size = fitted.howMany().size();
      double k =
          size == null
              ? Fitting.k(fitted.name())
              : SizedFitting.atFriction(fitted.name(), size.value(), pipe.bore(), friction);
      sum += k * fitted.howMany().count().value();
    }
    return sum;
  }

  /** Whether typed fittings name an entrance of any kind. */
  public static boolean namesEntrance(List<Object> fittings) {
    return anyStarts(fittings, "entrance");
  }

  /** Whether typed fittings name the exit. */
  public static boolean namesExit(List<Object> fittings) {
    return anyStarts(fittings, "exit");
  }

  private static boolean anyStarts(List<Object> fittings, String start) {
    for (int i = 0; i < fittings.size(); i++) {
      if (((Fitted) fittings.get(i)).name().startsWith(start)) {
        return true;
      }
    }
    return false;
  }

  /** One stretch of pipe; without K and fittings it gets {@code usualK}, noted as taken. */
  static PipeSection of(leat.plan.Section pipe, double usualK, String as, Taken taken) {
    double bore = pipe.need("bore");
    double length = pipe.need("length");
    double roughness = roughness(pipe, taken);
    Double ridges = pipe.maybe("ridges");
    double k = k(pipe, bore, roughness, usualK, as, taken);
    return new PipeSection(length, bore, roughness, k, ridges == null ? 0 : ridges);
  }

  /** Roughness that its material, or the default, gives it, m. */
  public static double roughness(leat.plan.Section pipe, Taken taken) {
    if (pipe.has("material") && !pipe.has("roughness")) {
      return Roughness.of(pipe.text("material"));
    }
    // between ridges it is the ridges that rub, and no wall is taken for smooth
    boolean ridged = pipe.has("ridges") && !pipe.has("roughness");
    return ridged ? Roughness.SMOOTH_TUBE : pipe.get("roughness", taken);
  }

  private static double k(
      leat.plan.Section pipe,
      double bore,
      double roughness,
      double usualK,
      String as,
      Taken taken) {
    double valve = pipe.has("valve") ? Fitting.valveK(pipe.text("valve")) : 0;
    if (!pipe.has("k") && pipe.named("fittings").size() == 0) {
      taken.note(as);
    }
    return fittingsK(pipe, bore, roughness, usualK) + valve;
  }

  /** K of what is fitted to a pipe, its valve apart; {@code usualK} when it does not say. */
  static double fittingsK(leat.plan.Section pipe, double usualK, Taken taken) {
    return fittingsK(pipe, pipe.need("bore"), roughness(pipe, taken), usualK);
  }

  private static double fittingsK(
      leat.plan.Section pipe, double bore, double roughness, double usualK) {
    Double named = pipe.maybe("k");
    Named fittings = pipe.named("fittings");
    if (named != null || fittings.size() == 0) {
      return named != null ? named : usualK;
    }
    double sum = 0;
    for (int i = 0; i < fittings.size(); i++) {
      CountAt howMany = (CountAt) fittings.value(i);
      sum += k(fittings.name(i), howMany.size(), bore, roughness) * howMany.count().value();
    }
    return sum;
  }

  private static double k(String name, Quantity size, double bore, double roughness) {
    return size == null ? Fitting.k(name) : SizedFitting.k(name, size.value(), bore, roughness);
  }
}
