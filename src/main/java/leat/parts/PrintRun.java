package leat.parts;

import java.util.Arrays;
import leat.numeric.Impossible;

/**
 * Parts over printers, one part a job.
 *
 * <pre>
 * jobs on the busiest = ceil(parts/printers);   days = ceil(jobs/jobs a day)
 * energy = power x hours
 * </pre>
 *
 * <p>Source: arithmetic. Check values: build-print.csv.
 */
public final class PrintRun {
  private static final double J_PER_KWH = 3.6e6;
  private static final double DAY = 86400;
  private static final double HAIR = 1e-9;

  private final double[] times;
  private final Printer printer;

  private PrintRun(double[] times, Printer printer) {
    this.times = times;
    this.printer = printer;
  }

  /**
   * The run of some parts.
   *
   * @param times to print each piece, s, above 0
   * @param printer the printers
   * @return the run
   * @throws Impossible outside
   */
  public static PrintRun of(double[] times, Printer printer) {
    for (double one : times) {
      Impossible.unlessPositive("print time", one);
    }
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return new PrintRun(sorted, printer);
  }

  /** All printers together, s. */
  public double machineTime() {
    double sum = 0;
    for (double one : times) {
      sum += one;
    }
    return sum;
  }

  /** Jobs on the busiest printer. */
  public int jobsOnBusiest() {
    return (times.length + printer.count() - 1) / printer.count();
  }

  /** Days, when somebody sees to so many jobs a day. */
  public int days() {
    return (int) Math.ceil(jobsOnBusiest() / printer.jobs() - HAIR);
  }

  /** Whether the jobs of a day take longer than a day: the days are then too few. */
  public boolean daysTooFull() {
    double mean = times.length == 0 ? 0 : machineTime() / times.length;
    return printer.jobs() * (mean + printer.changeover()) > DAY;
  }

  /** Energy, J. */
  public double energy() {
    return printer.power() * machineTime();
  }

  /** What the energy costs at a price by kWh. */
  public double energyCost(double price) {
    return energy() / J_PER_KWH * Impossible.ifNegative("price of energy", price);
  }
}
