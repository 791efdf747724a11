package leat.system;

import java.util.List;
import leat.hydraulics.Fitting;
import leat.hydraulics.Line;
import leat.hydraulics.Liquid;
import leat.hydraulics.Roughness;
import leat.plan.Named;

/** Pipes of a plan's {@code pipe} and {@code riser} sections. */
public final class PipeOf {
  private PipeOf() {}

  /** Sum of K of fittings as typed on a command line, each a name and how many. */
  public static double sumOfK(List<Object> fittings) {
    double sum = 0;
    for (int i = 0; i < fittings.size(); i++) {
      leat.quantity.NamedQuantity fitting = (leat.quantity.NamedQuantity) fittings.get(i);
      sum += Fitting.k(fitting.name()) * fitting.quantity().value();
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
      if (((leat.quantity.NamedQuantity) fittings.get(i)).name().startsWith(start)) {
        return true;
      }
    }
    return false;
  }

  /** One stretch of pipe; without K and fittings it gets {@code usualK}, noted as taken. */
  static leat.hydraulics.PipeSection of(leat.plan.Section pipe, double usualK, String taken) {
    double bore = pipe.need("bore");
    double length = pipe.need("length");
    return new leat.hydraulics.PipeSection(length, bore, roughness(pipe), k(pipe, usualK, taken));
  }

  /** Roughness that its material, or the default, gives it, m. */
  public static double roughness(leat.plan.Section pipe) {
    if (pipe.has("material") && !pipe.has("roughness")) {
      return Roughness.of(pipe.text("material"));
    }
    return pipe.get("roughness");
  }

  private static double k(leat.plan.Section pipe, double usualK, String taken) {
    double valve = pipe.has("valve") ? Fitting.valveK(pipe.text("valve")) : 0;
    if (!pipe.has("k") && pipe.named("fittings").size() == 0) {
      pipe.took(taken);
    }
    return fittingsK(pipe, usualK) + valve;
  }

  /** K of what is fitted to a pipe, its valve apart; {@code usualK} when it does not say. */
  static double fittingsK(leat.plan.Section pipe, double usualK) {
    Double named = pipe.maybe("k");
    Named fittings = pipe.named("fittings");
    if (named != null || fittings.size() == 0) {
      return named != null ? named : usualK;
    }
    double sum = 0;
    for (int i = 0; i < fittings.size(); i++) {
      sum += Fitting.k(fittings.name(i)) * (Double) fittings.value(i);
    }
    return sum;
  }

  /** The pipe as a line of one stretch. */
  static Line line(Liquid water, leat.hydraulics.PipeSection section) {
    return new Line(water, section);
  }
}
