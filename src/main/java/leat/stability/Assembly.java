package leat.stability;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * A tank with its towers: each state and side as a {@link Standing}, the towers on the lid, their
 * lines and joints, and what would cure each.
 *
 * <p>Towers share the gust and do not shelter each other. Lines of several towers share what the
 * whole leaves to them as their towers share the wind's moment.
 *
 * <p>Source: {@link Standing}, {@link GuyLines}, {@link Joint}.
 *
 * @param tub the tank
 * @param columns its towers
 * @param friction of the foot on the ground, -
 */
public record Assembly(Tub tub, List<Column> columns, double friction) {
  private static final Foot.Side[] SIDES = {Foot.Side.LONG_FACE, Foot.Side.SHORT_FACE};

  /** Refuses a tank without a tower. */
  public Assembly {
    if (columns.isEmpty()) {
      throw new Impossible("towers", "at least one tower stands on the tank");
    }
    Impossible.unlessPositive("friction", friction);
    columns = List.copyOf(columns);
  }

  /** Whole mass in a state, kg. */
  public double mass(Situation state) {
    double sum = tub.mass() + state.solution();
    for (Column one : columns) {
      sum += one.mass(state.growth());
    }
    return sum;
  }

  /** Whether the foot is wider than the whole is tall: tipping is then the smaller worry. */
  public boolean squat() {
    double top = 0;
    for (Column one : columns) {
      top = Math.max(top, tub.stand() + one.foot() + one.height());
    }
    return tub.foot().width() > top;
  }

  /** The whole in a state, wind square to one side. */
  public Standing standing(Situation state, Foot.Side wind) {
    List<Face> faces = new ArrayList<>();
    faces.add(tub.face(wind));
    for (Column one : columns) {
      for (Face face : one.faces(tub.height(), state.growth())) {
        faces.add(new Face(face.area(), face.height() + tub.stand(), face.coefficient()));
      }
    }
    return new Standing(mass(state), tub.foot().lever(wind), Faces.of(faces), friction);
  }

  /** The whole in a state, wind from the side that tips it first. */
  public Standing worst(Situation state) {
    Standing along = standing(state, Foot.Side.LONG_FACE);
    Standing across = standing(state, Foot.Side.SHORT_FACE);
    return along.utilisation(1) >= across.utilisation(1) ? along : across;
  }

  /** Gust that shifts the whole in a state, from the worse side, m/s; null when no wind can. */
  public Double slidesAt(Situation state, double density) {
    // The long face meets more wind, and friction knows no side.
    return standing(state, Foot.Side.LONG_FACE).slidesAt(density);
  }

  /**
   * What keeps the foot in its place over the wind's force in a state, from the worse side, -, with
   * the factors, at a pressure in Pa: friction, and the lines to the ground by what the simple rule
   * has them pull; null when nothing pushes.
   */
  public Double slideSafety(Situation state, double pressure) {
    Double least = null;
    for (Foot.Side side : SIDES) {
      double[] lines = linesOnFoot(state, side, pressure);
      Double safety = standing(state, side).slideSafety(pressure, lines[0], lines[1]);
      least = safety == null || least != null && least <= safety ? least : safety;
    }
    return least;
  }

  /** Friction with which a state does not slide at a pressure in Pa, with the factors, -. */
  public double frictionNotToSlide(Situation state, double pressure) {
    double most = 0;
    for (Foot.Side side : SIDES) {
      double[] lines = linesOnFoot(state, side, pressure);
      Standing whole = standing(state, side);
      most = Math.max(most, whole.frictionNotToSlide(pressure, lines[0], lines[1]));
    }
    return most;
  }

  /** Level pull of all lines to the ground, N, and what they press on the foot, N. */
  private double[] linesOnFoot(Situation state, Foot.Side side, double pressure) {
    Standing whole = standing(state, side);
    double left = Equilibrium.residual(whole.overturning(pressure), whole.righting());
    double[] sum = new double[2];
    for (int c = 0; c < columns.size(); c++) {
      GuyLines lines = lines(c);
      if (lines != null && lines.toGround()) {
        double pull = left * share(c, state) / lines.ring();
        sum[0] += pull;
        sum[1] += lines.pressed(pull);
      }
    }
    return sum;
  }

  /**
   * A tower merely standing on the lid; null when its foot's radius is not known or it reaches into
   * the tank.
   */
  public Standing onLid(int column, Situation state) {
    Column tower = columns.get(column);
    if (tower.footRadius() == null || tower.foot() < tub.height()) {
      return null;
    }
    Faces over = Faces.of(tower.faces(tower.foot(), state.growth())).over(tower.foot());
    return new Standing(tower.mass(state.growth()), tower.footRadius(), over, friction);
  }

  /** Joints of a tower in a state, from the bottom up. */
  public List<Joint> joints(int column, Situation state) {
    return columns.get(column).joints(tub.stand(), state.growth());
  }

  /** A tower's lines with the ring over the anchors' plane; null without lines. */
  public GuyLines lines(int column) {
    Column tower = columns.get(column);
    GuyLines lines = tower.lines();
    return lines == null || !lines.toGround() ? lines : lines.raised(tower.foot());
  }

  /**
   * What a tower's lines see in the worst of some states, with the factors, at a pressure in Pa;
   * null without lines.
   *
   * @throws Impossible for lines to the tank when the foot's radius on the lid is not known
   */
  public LineLoad lineLoad(int column, List<Situation> states, double pressure) {
    GuyLines lines = lines(column);
    if (lines == null) {
      return null;
    }
    double most = 0;
    for (Situation state : states) {
      for (Foot.Side side : SIDES) {
        Standing held = heldBy(column, state, side);
        double left = Equilibrium.residual(held.overturning(pressure), held.righting());
        most = Math.max(most, left * share(column, state));
      }
    }
    return lines.under(most);
  }

  /**
   * What lines to the ground see in the worst of some states when they also hold a tower that
   * merely stands on its lid, with the factors, at a pressure in Pa: the pull that keeps the tower
   * on the lid. Null without such lines, or when the tower does not stand on the lid.
   */
  public LineLoad lineLoadOnLid(int column, List<Situation> states, double pressure) {
    GuyLines lines = lines(column);
    double most = 0;
    for (Situation state : states) {
      Standing tower = onLid(column, state);
      if (lines == null || !lines.toGround() || tower == null) {
        return null;
      }
      most = Math.max(most, Equilibrium.residual(tower.overturning(pressure), tower.righting()));
    }
    return lines.pulled(most / columns.get(column).lines().ring());
  }

  /**
   * Least ring over the tower's foot at which its worst line, holding {@code load}, sees a tension
   * in N, m; null without lines, or when no ring up to the tower's top does.
   */
  public Double ringToPass(int column, LineLoad load, double tension) {
    GuyLines lines = lines(column);
    Double ring = lines == null ? null : lines.leastRing(load.moment(), tension);
    if (ring == null) {
      return null;
    }
    Column tower = columns.get(column);
    double overFoot = lines.toGround() ? Math.max(0, ring - tower.foot()) : ring;
    return overFoot <= tower.height() ? Double.valueOf(overFoot) : null;
  }

  /** What a tower's lines hold: the whole to the ground, or the tower to the tank. */
  private Standing heldBy(int column, Situation state, Foot.Side side) {
    if (columns.get(column).lines().toGround()) {
      return standing(state, side);
    }
    Standing tower = onLid(column, state);
    if (tower == null) {
      throw new Impossible("foot radius", "lines to the tank hold a tower on its lid, by its foot");
    }
    return tower;
  }

  private double share(int column, Situation state) {
    if (!columns.get(column).lines().toGround()) {
      return 1;
    }
    double all = 0;
    for (Column one : columns) {
      if (one.lines() != null && one.lines().toGround()) {
        all += ownMoment(one, state);
      }
    }
    return all > 0 ? ownMoment(columns.get(column), state) / all : 1;
  }

  private double ownMoment(Column tower, Situation state) {
    return Faces.of(tower.faces(tub.height(), state.growth())).moment();
  }

  /** Solution to keep in the tank so that a state passes at a pressure in Pa, kg. */
  public double solutionToKeep(Situation state, double pressure) {
    return Math.max(0, massToPass(state, pressure) - (mass(state) - state.solution()));
  }

  /** Mass to add in the foot so that a state passes at a pressure in Pa, kg. */
  public double massInFoot(Situation state, double pressure) {
    return Math.max(0, massToPass(state, pressure) - mass(state));
  }

  /** Mass to add so that a state does not slide at a pressure in Pa, kg. */
  public double massNotToSlide(Situation state, double pressure) {
    Standing broad = standing(state, Foot.Side.LONG_FACE);
    return Math.max(0, broad.massNotToSlide(pressure) - mass(state));
  }

  /** Most modules of a tower with which a state passes at a pressure in Pa; null when none do. */
  public Integer modulesToPass(int column, Situation state, double pressure) {
    Column tower = columns.get(column);
    for (int count = tower.rings().size(); count > 0; count--) {
      List<Column> fewer = new ArrayList<>(columns);
      fewer.set(column, tower.lowest(count));
      if (new Assembly(tub, fewer, friction).worst(state).passes(pressure)) {
        return count;
      }
    }
    return null;
  }

  private double massToPass(Situation state, double pressure) {
    double most = 0;
    for (Foot.Side side : SIDES) {
      most = Math.max(most, standing(state, side).massToPass(pressure));
    }
    return most;
  }
}
