package leat.stability;

import java.util.ArrayList;
import java.util.List;

/** All outlines of a body from one side; one pressure acts on all. */
public final class Faces {
  private final List<Face> faces;

  private Faces(List<Face> faces) {
    this.faces = faces;
  }

  /** These faces. */
  public static Faces of(List<Face> faces) {
    return new Faces(new ArrayList<>(faces));
  }

  /** Force per pressure, m2. */
  public double drag() {
    double sum = 0;
    for (Face one : faces) {
      sum += one.drag();
    }
    return sum;
  }

  /** Moment per pressure about the plane heights count from, m3. */
  public double moment() {
    double sum = 0;
    for (Face one : faces) {
      sum += one.moment();
    }
    return sum;
  }

  /** The faces whose centre is over {@code height}, counted from there: those on a lid or joint. */
  public Faces over(double height) {
    List<Face> over = new ArrayList<>();
    for (Face one : faces) {
      if (one.height() > height) {
        over.add(new Face(one.area(), one.height() - height, one.coefficient()));
      }
    }
    return new Faces(over);
  }
}
