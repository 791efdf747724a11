package leat.parts;

import java.util.ArrayList;
import java.util.List;
import leat.numeric.Impossible;

/**
 * The whole list: printed parts, spools, energy, what is bought; it adds up to the cent.
 *
 * <p>Filament is bought by whole spools, each material for itself. A part bears its share of the
 * filament used with waste, and of the energy; what is left on the spools is a row of its own. Each
 * row is rounded to the cent and the total is their sum.
 *
 * <p>Source: arithmetic; sheet stability-build.md section 6.
 */
public final class BuildList {
  private final List<Part> parts;
  private final List<Stock> stocks;
  private final Printer printer;
  private final Double energyPrice;
  private final List<Purchase> purchases;

  /**
   * A material on the shelf.
   *
   * @param name to print
   * @param waste lost to failed prints over the net, -
   * @param spool filament on one, kg
   * @param price by kg; null when not known
   */
  public record Stock(String name, double waste, double spool, Double price) {
    /** Refuses a negative price. */
    public Stock {
      if (price != null) {
        Impossible.ifNegative("price of filament", price);
      }
    }
  }

  /**
   * @param parts printed
   * @param stocks the materials, at least one; {@link Part#material} counts in it
   * @param printer the printers
   * @param energyPrice by kWh; null when not known
   * @param purchases what is bought
   */
  public BuildList(
      List<Part> parts,
      List<Stock> stocks,
      Printer printer,
      Double energyPrice,
      List<Purchase> purchases) {
    if (parts.isEmpty()) {
      throw new Impossible("parts", "a list has a part at least");
    }
    for (Part one : parts) {
      Impossible.unlessWithin(
          "material", one.material(), 0, stocks.size() - 1, "each part has its material");
    }
    if (energyPrice != null) {
      Impossible.ifNegative("price of energy", energyPrice);
    }
    this.parts = List.copyOf(parts);
    this.stocks = List.copyOf(stocks);
    this.printer = printer;
    this.energyPrice = energyPrice;
    this.purchases = List.copyOf(purchases);
  }

  /** The printed parts. */
  public List<Part> parts() {
    return parts;
  }

  /** What is bought. */
  public List<Purchase> purchases() {
    return purchases;
  }

  /** How many materials there are. */
  public int stockCount() {
    return stocks.size();
  }

  /** A material. */
  public Stock stock(int i) {
    return stocks.get(i);
  }

  /** All pieces. */
  public int pieces() {
    int sum = 0;
    for (Part one : parts) {
      sum += one.pieces();
    }
    return sum;
  }

  /** Filament of one material. */
  public Filament filament(int material) {
    double net = 0;
    for (Part one : parts) {
      net += one.material() == material ? one.massOfAll() : 0;
    }
    Stock stock = stocks.get(material);
    return new Filament(net, stock.waste(), stock.spool());
  }

  /** Net filament of all materials: the mass of the parts, kg. */
  public double net() {
    double sum = 0;
    for (int i = 0; i < stocks.size(); i++) {
      sum += filament(i).net();
    }
    return sum;
  }

  /** Filament of all materials with waste, kg. */
  public double gross() {
    double sum = 0;
    for (int i = 0; i < stocks.size(); i++) {
      sum += filament(i).gross();
    }
    return sum;
  }

  /** Spools of all materials. */
  public long spools() {
    long sum = 0;
    for (int i = 0; i < stocks.size(); i++) {
      sum += filament(i).spools();
    }
    return sum;
  }

  /** The print run; null when a print time is not known. */
  public PrintRun run() {
    double[] times = new double[pieces()];
    int n = 0;
    for (Part one : parts) {
      if (one.printTime() == null) {
        return null;
      }
      for (int i = 0; i < one.pieces(); i++) {
        times[n++] = one.printTime();
      }
    }
    return PrintRun.of(times, printer);
  }

  /** Filament by whole spools, to the cent; null when a price is not known. */
  public Double filamentCost() {
    return filamentCost(true);
  }

  /** Filament used with waste, to the cent; null when a price is not known. */
  public Double filamentCostByMass() {
    return filamentCost(false);
  }

  private Double filamentCost(boolean bySpool) {
    long sum = 0;
    for (int i = 0; i < stocks.size(); i++) {
      Double price = stocks.get(i).price();
      Filament used = filament(i);
      if (price == null && used.net() > 0) {
        return null;
      }
      if (price != null) {
        sum += Cents.of(bySpool ? used.costBySpool(price) : used.costByMass(price));
      }
    }
    return Cents.money(sum);
  }

  /** Energy of the prints, to the cent; null when not known. */
  public Double energyCost() {
    PrintRun run = run();
    return run == null || energyPrice == null
        ? null
        : Double.valueOf(Cents.money(Cents.of(run.energyCost(energyPrice))));
  }

  /** What is bought, to the cent; what has no price counts as nought and is to be said. */
  public double purchasesCost() {
    long sum = 0;
    for (Purchase one : purchases) {
      sum += one.cost() == null ? 0 : Cents.of(one.cost());
    }
    return Cents.money(sum);
  }

  /** Spools, energy and what is bought, to the cent; null when filament has no price. */
  public Double total() {
    Double filament = filamentCost();
    if (filament == null) {
      return null;
    }
    Double energy = energyCost();
    long sum = Cents.of(filament) + Cents.of(purchasesCost());
    return Cents.money(sum + (energy == null ? 0 : Cents.of(energy)));
  }

  /**
   * What all pieces of each part cost in filament used and energy, in the order of {@link #parts};
   * they add up to {@link #filamentCostByMass} and {@link #energyCost}. Null when filament has no
   * price.
   */
  public List<Double> partCosts() {
    if (filamentCostByMass() == null) {
      return null;
    }
    long[] cents = new long[parts.size()];
    for (int material = 0; material < stocks.size(); material++) {
      Double price = stocks.get(material).price();
      double[] shares = new double[parts.size()];
      for (int i = 0; i < shares.length; i++) {
        Part one = parts.get(i);
        shares[i] = one.material() == material ? one.massOfAll() : 0;
      }
      Filament used = filament(material);
      if (price != null && used.net() > 0) {
        add(cents, Cents.split(Cents.of(used.costByMass(price)), shares));
      }
    }
    Double energy = energyCost();
    if (energy != null) {
      double[] shares = new double[parts.size()];
      for (int i = 0; i < shares.length; i++) {
        shares[i] = parts.get(i).timeOfAll();
      }
      add(cents, Cents.split(Cents.of(energy), shares));
    }
    List<Double> costs = new ArrayList<>();
    for (long one : cents) {
      costs.add(Cents.money(one));
    }
    return costs;
  }

  /** What is paid for filament left on the spools, to the cent; null when not known. */
  public Double leftOnSpools() {
    Double bySpool = filamentCost();
    Double byMass = filamentCostByMass();
    return bySpool == null
        ? null
        : Double.valueOf(Cents.money(Cents.of(bySpool) - Cents.of(byMass)));
  }

  private static void add(long[] to, long[] more) {
    for (int i = 0; i < to.length; i++) {
      to[i] += more[i];
    }
  }
}
