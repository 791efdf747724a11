package leat.parts;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * The stack of one tower.
 *
 * <pre>
 * height = base + sum(count (module - overlap)) + cap;   total = stand + height
 * pot z = stand + base + rises below + z in its module
 * </pre>
 *
 * <p>Source: geometry; reach common practice, no source: 1.5 m for the top pot, 1.43 m for a small
 * adult; eye height of British women 1.405 to 1.610 m (5 to 95 %, after Pheasant, Bodyspace, as a
 * university's public page prints it). Check values: build-tower.csv.
 *
 * @param stand under the tank, m
 * @param base height of the tower's foot over the tank's floor, m
 * @param modules from the bottom, at least one kind
 * @param cap height, m
 */
public record Tower(double stand, double base, List<Module> modules, double cap) {
  /** Highest top pot without a ladder, m (practice). */
  public static final double REACH = 1.5;

  /** The same for a small adult, m (practice). */
  public static final double REACH_SMALL_ADULT = 1.43;

  private static final int MOST_MODULES = 1000;
  private static final double HAIR = 1e-9;

  /** Refuses what is no tower. */
  public Tower {
    Impossible.ifNegative("stand", stand);
    Impossible.ifNegative("base height", base);
    Impossible.ifNegative("cap height", cap);
    if (modules.isEmpty()) {
      throw new Impossible("modules", "a tower has a module at least");
    }
    modules = List.copyOf(modules);
  }

  /** Base to cap, m. */
  public double height() {
    double sum = base + cap;
    for (Module one : modules) {
      sum += one.risesBy();
    }
    return sum;
  }

  /** Modules alone, m: what the film falls down. */
  public double stackHeight() {
    return height() - base - cap;
  }

  /** With the stand, m. */
  public double totalHeight() {
    return stand + height();
  }

  /** Modules of all kinds. */
  public int count() {
    int sum = 0;
    for (Module one : modules) {
      sum += one.count();
    }
    return sum;
  }

  /** Pots of all modules. */
  public int pots() {
    int sum = 0;
    for (Module one : modules) {
      sum += one.count() * one.pots();
    }
    return sum;
  }

  /** Height of the top pot over the ground, m; null without pots. */
  public Double topPot() {
    double at = stand + base;
    Double top = null;
    for (Module one : modules) {
      if (one.pots() > 0) {
        top = at + (one.count() - 1) * one.rise() + one.potAt();
      }
      at += one.risesBy();
    }
    return top;
  }

  /** Whether the top pot is no higher than a reach in m; true without pots. */
  public boolean inReach(double reach) {
    Double top = topPot();
    return top == null || top <= Impossible.unlessPositive("reach", reach) + HAIR;
  }

  /**
   * Most modules whose pots are no higher than a reach in m, from the bottom; after the last kind
   * come more of it. 0 when even the lowest is over it.
   */
  public int modulesInReach(double reach) {
    double left = Impossible.unlessPositive("reach", reach) + HAIR - stand - base;
    int sum = 0;
    for (int i = 0; i < modules.size(); i++) {
      Module one = modules.get(i);
      double steps = Math.floor((left - one.potAt()) / one.rise()) + 1;
      boolean last = i == modules.size() - 1;
      int most = last ? MOST_MODULES - sum : one.count();
      int here = (int) Math.max(0, Math.min(most, steps));
      sum += here;
      if (here < most) {
        return sum;
      }
      left -= one.risesBy();
    }
    return sum;
  }

  /**
   * The same tower with another number of modules: fewer go from the top, more are of the last
   * kind.
   */
  public Tower withModules(int wanted) {
    Impossible.unlessWithin("modules", wanted, 1, MOST_MODULES, "a tower has 1 to 1000 modules");
    List<Module> kept = new ArrayList<>();
    int left = wanted;
    for (int i = 0; i < modules.size() && left > 0; i++) {
      Module one = modules.get(i);
      int here = i == modules.size() - 1 ? left : Math.min(left, one.count());
      kept.add(one.times(here));
      left -= here;
    }
    return new Tower(stand, base, kept, cap);
  }

  /**
   * Least height between two pots of one line, m; null when no two are in one line.
   *
   * <p>Kinds with different pots meet at any angle and are judged each for itself.
   */
  public Double sameColumnSpacing() {
    Double least = null;
    for (Module one : modules) {
      Integer repeat = one.ring().repeat();
      if (repeat != null && repeat < one.count()) {
        double spacing = repeat * one.rise();
        least = least == null ? spacing : Math.min(least, spacing);
      }
    }
    return least;
  }
}
