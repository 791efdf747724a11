package leat.system;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leat.hydraulics.Cap;
import leat.hydraulics.Fill;
import leat.hydraulics.Film;
import leat.hydraulics.Gap;
import leat.hydraulics.Jet;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.Mend;
import leat.hydraulics.Power;
import leat.hydraulics.Riser;
import leat.hydraulics.WallFilms;

/**
 * One tower with the tank at one level: its flow, what fills and comes back, the film down its wall
 * and the push on its cap. What the plan does not tell is empty.
 */
public final class TowerAt {
  private final Waterway way;
  private final int tower;
  private final ManifoldFlow flows;
  private final int index;
  private final Tower parts;

  /** Tower {@code t} of a water's way under solved flows. */
  public TowerAt(Waterway way, int t, ManifoldFlow flows) {
    this.way = way;
    this.tower = t;
    this.flows = flows;
    this.index = way.riserOf(t);
    this.parts = way.tower(t);
  }

  /** The riser. */
  public Riser riser() {
    return flows.manifold().riser(index);
  }

  /** Flow of one such tower, m3/s, 0 when dry. */
  public double flow() {
    return flows.flow(index);
  }

  /** Whether water leaves the top. */
  public boolean reaches() {
    return !flows.dry(index);
  }

  /** Dry though the pump alone would reach it. */
  public boolean starved() {
    return flows.starved(index);
  }

  /** Shut-off head less the lift, m. */
  public double margin() {
    return flows.margin(index);
  }

  /** That over the lift, or empty. */
  public OptionalDouble marginShare() {
    return flows.marginShare(index);
  }

  /** Speed in the last section of the riser, m/s. */
  public double velocity() {
    return riser().line().velocity(riser().line().size() - 1, flow());
  }

  /** Flow once the tower's valve is closed to what is wanted, where that is told and less, m3/s. */
  public double throttledFlow() {
    OptionalDouble wanted = way.wanted(tower);
    return wanted.isPresent() ? Math.min(wanted.getAsDouble(), flow()) : flow();
  }

  /** Bore in which the throttled flow runs at a speed, m. */
  public double boreForVelocity(double velocity) {
    return Mend.boreForVelocity(throttledFlow(), velocity);
  }

  /** How high water stands over the tank's level when it does not reach, m. */
  public double standsAt() {
    return Math.max(0, flows.manifoldHead());
  }

  /** Volume of the riser above the tank's level, m3. */
  public double riserVolume() {
    return riser().volumeAboveLevel();
  }

  /** Time to fill the riser at a start, s: 0 with a check valve, empty when it does not reach. */
  public OptionalDouble fillTime() {
    if (!reaches()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(way.checkValve() ? 0 : Fill.simpleTime(riserVolume(), flow()));
  }

  /** Water that this tower's riser gives back at a stop, m3, without film. */
  public double riserDrainBack() {
    if (way.checkValve()) {
      return 0;
    }
    return reaches() ? riserVolume() : riser().volumeUpTo(Math.max(0, standsAt()));
  }

  /**
   * Film on the wall, m3: the plan's measured hold-up shared among the towers, else computed; 0
   * when unknown.
   */
  public double heldUp() {
    if (way.holdUp().isKnown()) {
      return reaches() && flows.totalFlow() > 0
          ? way.holdUp().need() * flow() / flows.totalFlow()
          : 0;
    }
    Film film = film();
    return film == null ? 0 : film.volume();
  }

  /** All that comes back to the tank from one such tower at a stop, m3. */
  public double drainBack() {
    return riserDrainBack() + heldUp();
  }

  /** Hydraulic power that goes into this tower's water, W. */
  public double hydraulicPower() {
    return Power.hydraulic(way.water().density(), flow(), flows.pumpHead());
  }

  /** Its modules on their base. */
  public Stack stack() {
    return parts.stack();
  }

  /** Height over which the film falls, m, or empty without modules. */
  public OptionalDouble filmHeight() {
    return parts.stack().filmHeight();
  }

  /** Inside diameter of the lowest module, m, or empty. */
  public OptionalDouble innerDiameter() {
    return parts.stack().innerDiameter();
  }

  /** The film down the wall, or null when it is dry or the modules are unknown. */
  public Film film() {
    if (!reaches() || filmHeight().isEmpty() || innerDiameter().isEmpty()) {
      return null;
    }
    return Film.of(
        flow(), innerDiameter().getAsDouble(), 1, filmHeight().getAsDouble(), way.water());
  }

  /**
   * The film on each kind of module, where they differ in width; null when they do not, when the
   * tower is dry or a measure is missing.
   */
  public WallFilms wallFilms() {
    List<WallFilms.Wall> walls = walls();
    return reaches() && walls != null && stack().widthsDiffer()
        ? WallFilms.of(flow(), way.water(), walls)
        : null;
  }

  /** Flows that its walls want together. */
  public WallFilms.Want wallsWant() {
    return WallFilms.want(way.water(), walls());
  }

  private List<WallFilms.Wall> walls() {
    List<WallFilms.Wall> walls = new ArrayList<>();
    for (int i = 0; i < stack().kinds(); i++) {
      WallFilms.Wall wall = stack().wall(i);
      if (wall == null) {
        return null;
      }
      walls.add(wall);
    }
    return walls;
  }

  /** The slot between spreader and wall, or null when it is dry or unknown. */
  public Gap gap() {
    TopPiece top = parts.top();
    if (!reaches() || !top.gap().isKnown() || !top.spreader().isKnown()) {
      return null;
    }
    return Gap.slot(
        flow(),
        top.gap().need(),
        top.spreader().need(),
        top.plate().orTaken(),
        Gap.SHARP,
        way.water());
  }

  /**
   * Least width of the slot, m, whose water stands no deeper than {@code depth} m at this flow, or
   * empty.
   */
  public OptionalDouble slotForDepth(double depth) {
    TopPiece top = parts.top();
    return Mend.slotForDepth(
        depth, flow(), top.spreader().need(), top.plate().orTaken(), Gap.SHARP, way.water());
  }

  /** The push of the jet on the cap, or null when it is dry or the cap's mass is unknown. */
  public Cap cap() {
    TopPiece top = parts.top();
    if (!reaches() || !top.mass().isKnown()) {
      return null;
    }
    double bore = riser().line().section(riser().line().size() - 1).bore();
    Jet jet = Jet.of(flow(), bore, top.clearance().orTaken(), Jet.FLAT, way.water());
    return Cap.of(jet, top.mass().need(), top.grip().orTaken());
  }

  /** Name of the tower. */
  public String name() {
    return way.name(tower);
  }

  /** Its number in the plan. */
  public int number() {
    return tower;
  }

  /** How many such towers there are. */
  public int count() {
    return way.count(tower);
  }
}
