package leat.stability;

import leat.numeric.Impossible;

/**
 * One piece of a tower's stack.
 *
 * @param rise what it adds to the height, m: its height less its overlap
 * @param diameter outside, m
 * @param wall thickness, m; 0 when not known
 * @param mass dry, without pots, kg
 * @param pots plants in it
 */
public record Ring(double rise, double diameter, double wall, double mass, int pots) {
  /** Refuses what is no module. */
  public Ring {
    Impossible.unlessPositive("module height", rise);
    Impossible.unlessPositive("module diameter", diameter);
    Impossible.unlessWithin(
        "module wall", wall, 0, diameter / 2, "a wall is thinner than half the diameter");
    Impossible.unlessPositive("module mass", mass);
    Impossible.unlessWithin("pots", pots, 0, 1000, "a module has 0 to 1000 pots");
  }
}
