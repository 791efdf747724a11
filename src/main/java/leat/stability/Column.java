package leat.stability;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * One tower as wind and gravity see it.
 *
 * @param foot height of its foot over the tank's floor, m
 * @param rings from the bottom up, at least one
 * @param capHeight m
 * @param capMass kg
 * @param plantMass a full-size plant with its wet pot, kg
 * @param grownWidth across the plants, outline, m; 0 when not known
 * @param footRadius on the lid, m; null when not known
 * @param tie preload of a rod or cord through the stack, N, 0 for none
 * @param lines null for none; ring over the tower's foot
 */
public record Column(
    double foot,
    List<Ring> rings,
    double capHeight,
    double capMass,
    double plantMass,
    double grownWidth,
    Double footRadius,
    double tie,
    GuyLines lines) {
  /** Refuses what is no tower. */
  public Column {
    Impossible.ifNegative("base height", foot);
    Impossible.ifNegative("cap height", capHeight);
    Impossible.ifNegative("cap mass", capMass);
    Impossible.ifNegative("plant mass", plantMass);
    Impossible.ifNegative("plant width", grownWidth);
    Impossible.ifNegative("tie", tie);
    if (rings.isEmpty()) {
      throw new Impossible("modules", "a tower has a module at least");
    }
    rings = List.copyOf(rings);
    if (lines != null && lines.ring() > rise(rings) + capHeight + 1e-9) {
      throw new Impossible("ring", "the ring of the lines is over the tower's top");
    }
  }

  /** Height from its foot to its top, m. */
  public double height() {
    return rise(rings) + capHeight;
  }

  /** Mass with plants of a growth 0 to 1, kg: pump off. */
  public double mass(double growth) {
    return massFrom(0, growth);
  }

  /** The lower {@code count} rings with the same cap; lines only when their ring is still there. */
  public Column lowest(int count) {
    List<Ring> kept = rings.subList(0, count);
    GuyLines still = lines != null && lines.ring() <= rise(kept) + capHeight ? lines : null;
    return new Column(
        foot, kept, capHeight, capMass, plantMass, grownWidth, footRadius, tie, still);
  }

  /** Faces of what is over {@code over}, both heights from the tank's floor, m. */
  List<Face> faces(double over, double growth) {
    List<Face> faces = new ArrayList<>();
    double at = foot;
    tube(faces, 0, foot, over, rings.get(0).diameter());
    for (Ring ring : rings) {
      double top = at + ring.rise();
      tube(faces, at, top, over, ring.diameter());
      double leaves = Math.max(0, grownWidth - ring.diameter()) * growth;
      strip(faces, at, top, over, leaves, Drag.PLANTS);
      at = top;
    }
    tube(faces, at, at + capHeight, over, rings.get(rings.size() - 1).diameter());
    return faces;
  }

  private static void tube(List<Face> faces, double from, double to, double over, double wide) {
    strip(faces, from, to, over, wide, Drag.PLANTED);
  }

  private static void strip(
      List<Face> faces, double from, double to, double over, double wide, double coefficient) {
    double low = Math.max(from, over);
    if (to > low && wide > 0) {
      faces.add(new Face(wide * (to - low), (low + to) / 2, coefficient));
    }
  }

  /** The joints from the bottom up, the lowest under the first ring; stand as in {@link Tub}. */
  List<Joint> joints(double stand, double growth) {
    List<Joint> joints = new ArrayList<>();
    double at = foot;
    for (int i = 0; i < rings.size(); i++) {
      Ring ring = rings.get(i);
      joints.add(
          new Joint(
              stand + at,
              ring.diameter(),
              ring.diameter() - 2 * ring.wall(),
              massFrom(i, growth),
              Faces.of(faces(at, growth)).over(at),
              tie));
      at += ring.rise();
    }
    return joints;
  }

  private double massFrom(int first, double growth) {
    double sum = capMass;
    for (int i = first; i < rings.size(); i++) {
      sum += rings.get(i).mass() + rings.get(i).pots() * plantMass * growth;
    }
    return sum;
  }

  private static double rise(List<Ring> rings) {
    double sum = 0;
    for (Ring ring : rings) {
      sum += ring.rise();
    }
    return sum;
  }
}
