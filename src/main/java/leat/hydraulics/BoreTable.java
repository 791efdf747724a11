package leat.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * One tower system, or one riser at a flow, with each of several bores in one place, all else the
 * same. K keeps its number: new fittings of the new size. A wider tube on the old barbs gains less,
 * as their K on the new bore grows with (D/d)^4.
 *
 * <p>Source: sheet hydraulics-bores.md, "The next bore"; checked in the tests against the plain
 * solution of each tower.
 */
public final class BoreTable {
  private BoreTable() {}

  /**
   * A pump's towers with one bore.
   *
   * @param bore in place of the present one
   * @param flows of all risers
   * @param flow of the first changed riser, m3/s
   * @param poorestFlow the same with the least bore such a tube may have, m3/s; empty when no least
   *     is known
   * @param speed in the changed section, m/s
   * @param gain flow over the present one, less 1, -; empty when nothing flows at present
   */
  public record Towers(
      Bore bore,
      ManifoldFlow flows,
      double flow,
      OptionalDouble poorestFlow,
      double speed,
      OptionalDouble gain) {
    /** Worth buying: water where there was none, or {@link Bores#LEAST_GAIN} more. */
    public boolean pays() {
      return gain.isEmpty() ? flow > 0 : gain.getAsDouble() >= Bores.LEAST_GAIN;
    }
  }

  /**
   * A riser at a flow with one bore.
   *
   * @param bore in place of the present one
   * @param loss at the flow; null when the tube is too narrow for it, see {@link TubeLimits}
   * @param poorestHead total head with the least bore such a tube may have, m; empty when no least
   *     is known, or that is too narrow
   */
  public record Head(Bore bore, HeadLoss loss, OptionalDouble poorestHead) {
    /** Whether the flow can pass at all. */
    public boolean passes() {
      return loss != null;
    }

    /** Water passes, not fast, and not over half of the climb is lost in all pipes. */
    public boolean suits() {
      return passes() && !loss.fastest().fast() && !loss.heavy();
    }
  }

  /** The first that suits, of bores from the narrowest; empty when none does. */
  public static Optional<Head> narrowestThatSuits(List<Head> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).suits()) {
        return Optional.of(rows.get(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The first tube wide enough, of bores from the narrowest.
   *
   * @param rows of {@link #towers}
   * @param wanted flow of the first changed riser, m3/s
   * @return the tube; empty when none gives that
   */
  public static Optional<Towers> narrowestFor(List<Towers> rows, double wanted) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).flow() >= wanted) {
        return Optional.of(rows.get(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The next tube wider than the present one that gives enough more to be worth buying.
   *
   * @param rows of {@link #towers}, from the narrowest
   * @param present bore, m
   * @return the tube; empty when none does
   */
  public static Optional<Towers> nextThatPays(List<Towers> rows, double present) {
    for (int i = 0; i < rows.size(); i++) {
      Towers row = rows.get(i);
      if (row.bore().bore() > present + Bores.TO_SPARE && row.pays()) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  /**
   * Flows over bores.
   *
   * @param curve the pump, derated
   * @param manifold the towers over a level
   * @param changed indices of the risers that get the bore: all of one kind
   * @param section which section of them, from the manifold
   * @param bores the tubes
   * @return one entry a tube
   * @throws Impossible if no riser is to change
   */
  public static List<Towers> towers(
      PumpCurve curve, Manifold manifold, int[] changed, int section, List<Bore> bores) {
    if (changed.length == 0) {
      throw new Impossible("towers", "name the tower whose bore changes");
    }
    int first = changed[0];
    double present = manifold.solve(curve).flow(first);
    List<Towers> rows = new ArrayList<>();
    for (int b = 0; b < bores.size(); b++) {
      Bore bore = bores.get(b);
      ManifoldFlow flows = with(manifold, changed, section, bore.bore()).solve(curve);
      double flow = flows.flow(first);
      rows.add(
          new Towers(
              bore,
              flows,
              flow,
              poorest(curve, manifold, changed, section, bore),
              flows.manifold().riser(first).line().velocity(section, flow),
              present > 0 ? OptionalDouble.of(flow / present - 1) : OptionalDouble.empty()));
    }
    return rows;
  }

  private static OptionalDouble poorest(
      PumpCurve curve, Manifold manifold, int[] changed, int section, Bore bore) {
    return bore.least().isPresent()
        ? OptionalDouble.of(
            with(manifold, changed, section, bore.poorest()).solve(curve).flow(changed[0]))
        : OptionalDouble.empty();
  }

  private static Manifold with(Manifold manifold, int[] changed, int section, double bore) {
    Manifold other = manifold;
    Line before = null;
    Line after = null;
    for (int i : changed) {
      Riser riser = manifold.riser(i);
      if (riser.line() != before) {
        before = riser.line();
        after = before.with(section, before.section(section).withBore(bore));
      }
      other = other.with(i, new Riser(after, riser.lift()));
    }
    return other;
  }

  /**
   * Heads over bores at a flow, behind a common pipe.
   *
   * @param common pipe from the pump to the manifold, or null for none
   * @param total flow in it, m3/s
   * @param riser the pipe and its lift
   * @param section which section of the riser gets the bore
   * @param flow m3/s, above 0
   * @param bores the tubes
   * @return one entry a tube
   * @throws Impossible unless the flow is above 0, or as {@link HeadLoss#behind}
   */
  public static List<Head> heads(
      Line common, double total, Riser riser, int section, double flow, List<Bore> bores) {
    Impossible.unlessPositive("flow", flow);
    List<Head> rows = new ArrayList<>();
    for (int b = 0; b < bores.size(); b++) {
      Bore bore = bores.get(b);
      Riser usual = with(riser, section, bore.bore());
      OptionalDouble poorest = OptionalDouble.empty();
      if (bore.least().isPresent()) {
        Riser narrow = with(riser, section, bore.poorest());
        if (TubeLimits.carries(narrow.line(), flow)) {
          poorest =
              OptionalDouble.of(narrow.head(flow) + (common == null ? 0 : common.loss(total)));
        }
      }
      boolean passes = TubeLimits.carries(usual.line(), flow);
      rows.add(
          new Head(bore, passes ? HeadLoss.behind(common, total, usual, flow) : null, poorest));
    }
    return rows;
  }

  private static Riser with(Riser riser, int section, double bore) {
    Line line = riser.line();
    return new Riser(line.with(section, line.section(section).withBore(bore)), riser.lift());
  }
}
