package leat.system;

import java.util.List;
import leat.numeric.Impossible;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Nearest;
import leat.solution.acid.Acid;
import leat.solution.acid.Acids;

/** The acid of a plan's {@code feed.acid} section. */
public final class AcidOf {
  private AcidOf() {}

  /** The acid with the density of a handbook; refused when it is not named or not known. */
  public static Acid of(Section acid) {
    return of(acid, 0);
  }

  /**
   * The acid with the density of its label.
   *
   * @param acid the plan's section
   * @param densityKgL density, kg/L; 0 for the handbook's
   */
  public static Acid of(Section acid, double densityKgL) {
    String name = (String) acid.needRaw("name");
    Acid found;
    try {
      found = Acids.named(name, densityKgL);
    } catch (Impossible e) {
      if ("density".equals(e.quantity())) {
        throw e;
      }
      throw new Refused(acid.problem("name", "bad-acid", e.getMessage()));
    }
    if (found != null) {
      return found;
    }
    List<String> names = Acids.names();
    // citric is weighed: a strength behind it must not lead to a strong mineral acid
    String near = name.startsWith("citric") ? "citric" : Nearest.of(name, names);
    throw new Refused(
        acid.problem(
            "name",
            "unknown-acid",
            "no acid \""
                + name
                + "\""
                + (near == null
                    ? "; known: " + String.join(", ", names)
                    : "; did you mean \"" + near + "\"?")));
  }
}
