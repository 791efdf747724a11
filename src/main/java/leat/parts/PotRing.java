package leat.parts;

import leat.numeric.Impossible;

/**
 * Pots evenly round a module, and how a turn between modules spreads them.
 *
 * <pre>
 * pitch = 2 pi/p;   room = D sin(pi/p) - pot, of two neighbours;   one pot: D - pot
 * back in line after the least m with m turn divisible by the pitch
 * </pre>
 *
 * <p>Room is necessary, not sufficient: sloped sockets need more. Nominal 50 and 75 mm pots vary by
 * some mm: measure.
 *
 * <p>Source: geometry; least room, same-column spacing common practice, no source; sheet
 * stability-build.md section 6. Check values: build-tower.csv.
 *
 * @param diameter outside of the module, m
 * @param pots 0 or more
 * @param turn of each module against the one below, rad
 */
public record PotRing(double diameter, int pots, double turn) {
  /** Least room between two pots, m (practice). */
  public static final double LEAST_ROOM = 0.005;

  /** Least height between two pots of one line for leaf crops, m (practice). */
  public static final double LEAST_SPACING = 0.25;

  private static final int MOST_REPEAT = 720;

  /** Share of a pitch that counts as nought: a thousandth of a degree at 4 pots. */
  private static final double NOUGHT = 1e-5;

  /** Angle between neighbours, rad; null without pots. */
  public Double pitch() {
    return pots == 0 ? null : Double.valueOf(2 * Math.PI / pots);
  }

  /** Straight from centre to centre of two neighbours, m; the diameter for one pot. */
  public Double chord() {
    if (pots == 0) {
      return null;
    }
    return pots == 1 ? diameter : diameter * Math.sin(Math.PI / pots);
  }

  /** Room between two pots of a diameter in m, m; null without pots. */
  public Double room(double pot) {
    Impossible.unlessPositive("pot", pot);
    Double chord = chord();
    return chord == null ? null : Double.valueOf(chord - pot);
  }

  /** Whether pots of a diameter in m fit round; true without pots. */
  public boolean fits(double pot) {
    Double room = room(pot);
    return room == null || enough(room);
  }

  /**
   * Whether a room between two pots is enough.
   *
   * @param room between their rims, m
   * @return whether it is
   */
  public static boolean enough(double room) {
    return room >= LEAST_ROOM - 1e-9;
  }

  /** Least module diameter round which pots of a diameter in m fit, m. */
  public double diameterFor(double pot) {
    Impossible.unlessPositive("pot", pot);
    double chord = pot + LEAST_ROOM;
    return pots < 2 ? chord : chord / Math.sin(Math.PI / pots);
  }

  /** Most pots of a diameter in m that fit round, 0 when not even one does. */
  public int mostPots(double pot) {
    int most = 0;
    while (most < MOST_REPEAT && new PotRing(diameter, most + 1, turn).fits(pot)) {
      most++;
    }
    return most;
  }

  /** Modules after which pots are in one line again; null when never within 720, or no pots. */
  public Integer repeat() {
    if (pots == 0) {
      return null;
    }
    double share = turn / pitch();
    for (int m = 1; m <= MOST_REPEAT; m++) {
      if (Math.abs(m * share - Math.rint(m * share)) < NOUGHT) {
        return m;
      }
    }
    return null;
  }

  /** The turn that spreads pots best over two modules, rad: half a pitch; null without pots. */
  public Double bestTurn() {
    return pots == 0 ? null : Double.valueOf(Math.PI / pots);
  }
}
