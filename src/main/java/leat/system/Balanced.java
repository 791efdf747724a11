package leat.system;

import java.util.OptionalDouble;
import leat.hydraulics.Balance;
import leat.hydraulics.Film;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.PumpCurve;
import leat.hydraulics.SetValve;

/**
 * The valves of a plan's towers, set at one mark of the tank so that each tower gets what it
 * should, and what the towers get later with them.
 */
public final class Balanced {
  private final Waterway way;
  private final Balance balance;
  private final ManifoldFlow set;
  private final ManifoldFlow low;
  private final ManifoldFlow full;
  private final ManifoldFlow worn;

  private Balanced(Waterway way, double level, Balance balance) {
    this.way = way;
    this.balance = balance;
    this.set = balance.flows(way.manifold(level), way.curve());
    this.low = balance.flows(way.manifold(way.low()), way.curve());
    this.full = balance.flows(way.manifold(way.full()), way.curve());
    this.worn =
        balance.flows(way.manifold(way.low()), way.printed().derated(PumpCurve.USUAL_DERATE_WORN));
  }

  /**
   * Each tower at what is wanted.
   *
   * @param level of the tank while they are set, m
   * @param every flow wanted of every tower, m3/s, or null for each tower's own {@code wanted}
   */
  public static Balanced wanted(Waterway way, double level, Double every) {
    return new Balanced(
        way, level, Balance.wanted(way.curve(), way.manifold(level), way.wants(every)));
  }

  /** All towers at the same flow, as great as possible; level in m. */
  public static Balanced equal(Waterway way, double level) {
    return new Balanced(way, level, Balance.equal(way.curve(), way.manifold(level)));
  }

  /** What the trade found, over all risers. */
  public Balance balance() {
    return balance;
  }

  /** The valve of a tower. */
  public SetValve valve(int t) {
    return balance.valves()[way.riserOf(t)];
  }

  /** Name of the tower that decides, or null. */
  public String limiting() {
    for (int t = 0; t < way.towers() && balance.limiting() >= 0; t++) {
      int past = balance.limiting() - way.riserOf(t);
      if (past >= 0 && past < way.count(t)) {
        return way.name(t);
      }
    }
    return null;
  }

  /** Kinds of tower in the order of setting, those without water left out. */
  public int[] order() {
    int[] risers = balance.order();
    int[] order = new int[risers.length];
    int n = 0;
    for (int i = 0; i < risers.length; i++) {
      for (int t = 0; t < way.towers(); t++) {
        if (way.riserOf(t) == risers[i]) {
          order[n++] = t;
        }
      }
    }
    return java.util.Arrays.copyOf(order, n);
  }

  /** When a tower's valve is set: 1 for the first; null when it gets no water. */
  public Integer place(int t) {
    int[] order = order();
    for (int i = 0; i < order.length; i++) {
      if (order[i] == t) {
        return i + 1;
      }
    }
    return null;
  }

  /** Seconds in which a jug, m3, fills at a tower's set flow; empty when nothing comes. */
  public OptionalDouble jugTime(int t, double jug) {
    return Balance.secondsFor(jug, valve(t).flow());
  }

  /** Flow of a tower at the refill mark, m3/s. */
  public double atLow(int t) {
    return low.flow(way.riserOf(t));
  }

  /** Flow of a tower with the tank full, m3/s. */
  public double atFull(int t) {
    return full.flow(way.riserOf(t));
  }

  /** Flow of a tower at the refill mark with 70 % of the printed head left, m3/s. */
  public double atWorn(int t) {
    return worn.flow(way.riserOf(t));
  }

  /** Some tower stays dry when 70 % of the printed head is left. */
  public boolean driesWhenWorn() {
    for (int t = 0; t < way.towers(); t++) {
      if (valve(t).flow() > 0 && !(atWorn(t) > 0)) {
        return true;
      }
    }
    return false;
  }

  /** The film of a tower as set, or null when it is dry or its modules are unknown. */
  public Film film(int t) {
    return new TowerAt(way, t, set).film();
  }

  /** A valve must be set where the plan has none. */
  public boolean lacksValve(int t) {
    return valve(t).state() == SetValve.State.PART && !way.tower(t).valved();
  }
}
