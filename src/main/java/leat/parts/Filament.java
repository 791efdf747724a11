package leat.parts;

import leat.numeric.Impossible;

/**
 * Filament that modules take, by mass and by whole spools.
 *
 * <pre>
 * gross = net (1 + waste);   spools = ceil(gross/spool)
 * </pre>
 *
 * <p>Source: waste 5 to 15 % common practice, no source; sheet stability-build.md section 6. Check
 * values: build-filament.csv.
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

  private static final double HAIR = 1e-9;

  /** Refuses what cannot be bought. */
  public Filament {
    Impossible.ifNegative("filament", net);
    Impossible.unlessWithin("waste", waste, 0, 10, "waste is a share of the parts");
    Impossible.unlessPositive("spool", spool);
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
