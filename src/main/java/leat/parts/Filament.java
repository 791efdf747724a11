package leat.parts;

import leat.numeric.Impossible;

/**
 * Filament that modules take, by mass and by whole spools.
 *
 * <pre>
 * wall = pi (D - t) t h, exact;   module = (wall + sockets, floors, spigots) density
 * gross = net (1 + waste);   spools = ceil(gross/spool);   length = mass/(density pi d^2/4)
 * </pre>
 *
 * <p>Source: geometry; waste 5 to 15 % common practice, no source; sheet stability-build.md section
 * 6. Check values: build-filament.csv.
 *
 * @param net in the parts, kg
 * @param waste lost to failed prints over the net, -
 * @param spool filament on one, kg
 */
public record Filament(double net, double waste, double spool) {
  /** Waste unless the plan says otherwise, - (practice). */
  public static final double WASTE = 0.10;

  /** Filament on a spool unless the plan says otherwise, kg. */
  public static final double SPOOL = 1;

  /** Usual filament, m. */
  public static final double DIAMETER = 0.00175;

  private static final double HAIR = 1e-9;

  /** Refuses what cannot be bought. */
  public Filament {
    Impossible.ifNegative("filament", net);
    Impossible.unlessWithin("waste", waste, 0, 10, "waste is a share of the parts");
    Impossible.unlessPositive("spool", spool);
  }

  /**
   * Volume of a tube's wall.
   *
   * @param diameter outside, m, above 0
   * @param wall thickness, m, above 0 to half the diameter
   * @param height m, above 0
   * @return m3
   * @throws Impossible outside
   */
  public static double wallVolume(double diameter, double wall, double height) {
    Impossible.unlessPositive("module diameter", diameter);
    Impossible.unlessPositive("module wall", wall);
    Impossible.unlessWithin(
        "module wall", wall, 0, diameter / 2, "a wall is thinner than half the diameter");
    Impossible.unlessPositive("module height", height);
    return Math.PI * (diameter - wall) * wall * height;
  }

  /**
   * Length of filament.
   *
   * @param mass kg, 0 or more
   * @param density kg/m3, above 0
   * @param diameter of the filament, m, above 0; see {@link #DIAMETER}
   * @return m
   * @throws Impossible outside
   */
  public static double length(double mass, double density, double diameter) {
    Impossible.ifNegative("filament", mass);
    Impossible.unlessPositive("density", density);
    Impossible.unlessPositive("filament diameter", diameter);
    return mass / (density * Math.PI / 4 * diameter * diameter);
  }

  /** With the waste, kg. */
  public double gross() {
    return net * (1 + waste);
  }

  /** Whole spools to buy. */
  public long spools() {
    return (long) Math.ceil(gross() / spool - HAIR);
  }

  /** What the filament used costs at a price by kg. */
  public double costByMass(double price) {
    return gross() * Impossible.ifNegative("price of filament", price);
  }

  /** What the spools cost at a price by kg. */
  public double costBySpool(double price) {
    return spools() * spool * Impossible.ifNegative("price of filament", price);
  }
}
