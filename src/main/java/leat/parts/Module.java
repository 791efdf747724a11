package leat.parts;

import leat.numeric.Impossible;

/**
 * Equal pot modules that follow each other in a stack.
 *
 * <p>Source: geometry; sheet stability-build.md section 6. Check values: build-tower.csv.
 *
 * @param count how many, 1 or more
 * @param height of one, m
 * @param overlap how far it sits in the next, m, under the height
 * @param diameter outside, m
 * @param pots round one, 0 or more
 * @param potAt height of the pots in their module, m
 * @param turn of each against the one below, rad, 0 or more
 */
public record Module(
    int count,
    double height,
    double overlap,
    double diameter,
    int pots,
    double potAt,
    double turn) {
  private static final int MOST = 1000;

  /** Refuses what is no module. */
  public Module {
    Impossible.unlessWithin("modules", count, 1, MOST, "a tower has 1 to 1000 of a module");
    Impossible.unlessPositive("module height", height);
    if (!(overlap >= 0 && overlap < height)) {
      throw new Impossible("overlap", "a module sits in the next by less than its height");
    }
    Impossible.unlessPositive("module diameter", diameter);
    Impossible.unlessWithin("pots", pots, 0, MOST, "a module has 0 to 1000 pots");
    Impossible.unlessWithin("pot height", potAt, 0, height, "a pot sits within its module");
    Impossible.ifNegative("turn", turn);
  }

  /**
   * With the pots at half the height.
   *
   * @param count how many, 1 or more
   * @param height of one, m
   * @param overlap how far it sits in the next, m, under the height
   * @param diameter outside, m
   * @param pots round one, 0 or more
   * @param turn of each against the one below, rad, 0 or more
   * @return the modules
   * @throws Impossible outside
   */
  public static Module of(
      int count, double height, double overlap, double diameter, int pots, double turn) {
    return new Module(count, height, overlap, diameter, pots, height / 2, turn);
  }

  /** The same modules, another number. */
  public Module times(int other) {
    return new Module(other, height, overlap, diameter, pots, potAt, turn);
  }

  /** What one adds to the tower's height, m. */
  public double rise() {
    return height - overlap;
  }

  /** What all add to the tower's height, m. */
  public double risesBy() {
    return count * rise();
  }

  /** The ring of its pots. */
  public PotRing ring() {
    return new PotRing(diameter, pots, turn);
  }

  /** Height between two pots of one line, m; null when they never return to a line. */
  public Double sameColumnSpacing() {
    Integer repeat = ring().repeat();
    return repeat == null ? null : Double.valueOf(repeat * rise());
  }
}
