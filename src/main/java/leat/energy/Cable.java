package leat.energy;

import java.util.OptionalDouble;
import leat.numeric.Impossible;

/**
 * The cable to a low-voltage pump, out and back.
 *
 * <pre>R = 2 L r (1 + 0.00393 (T - 20))
 * constant current: drop = I R, I = P/U
 * constant power:   U_p = (U + sqrt(U^2 - 4 P R))/2; no real root: the cable cannot feed it</pre>
 *
 * <p>An electronic pump takes constant power, a brushed one lies between; both are reported when
 * they {@link #differ}.
 *
 * <p>Source: Ohm's law; limits 5 and 10 per cent are common practice; sheet energy.md section 6,
 * check values energy-cable.csv.
 *
 * @param ohmPerM resistance of one conductor at 20 C, ohm/m
 * @param loopOhm resistance out and back at temperature, ohm
 * @param currentA constant current P/U, A
 * @param dropV drop at constant current, V
 * @param dropShare that drop over the supply, 0 to 1 and beyond
 * @param feeds whether a constant-power pump can be fed at all
 * @param pumpV its voltage; empty when it cannot be fed
 * @param pumpA its current; empty likewise
 * @param pumpDropShare its drop over the supply; empty likewise
 * @param lossW power lost in the cable; empty likewise
 * @param pumpVAtInrush voltage left at the pump at inrush of the constant current, V, may be
 *     negative
 * @param starts whether that is at least what the pump needs
 * @param areaFor5Pct cross-section for a drop of 5 per cent at constant current, by resistivity, m2
 * @param fuseA fuse for the larger of the two currents; empty above 30 A
 * @param cordLimitA what the cord carries; empty when its size is not listed
 * @param cord whether the fuse protects the cord
 */
public record Cable(
    double ohmPerM,
    double loopOhm,
    double currentA,
    double dropV,
    double dropShare,
    boolean feeds,
    OptionalDouble pumpV,
    OptionalDouble pumpA,
    OptionalDouble pumpDropShare,
    OptionalDouble lossW,
    double pumpVAtInrush,
    boolean starts,
    double areaFor5Pct,
    OptionalDouble fuseA,
    OptionalDouble cordLimitA,
    Cord cord) {
  /** A drop up to this share is good (common practice). */
  public static final double GOOD_DROP = 0.05;

  /** A drop up to this share is the most (common practice). */
  public static final double MOST_DROP = 0.10;

  private static final double WORTH_REPORTING = 0.1;

  /** Whether the fuse protects the cord. */
  public enum Cord {
    PROTECTED,
    /** Take a thicker cord. */
    UNPROTECTED,
    /** The cord's size is not listed, or no fuse is that large. */
    UNKNOWN
  }

  /** A verdict on the drop. */
  public enum Drop {
    GOOD,
    MUCH,
    TOO_MUCH
  }

  /**
   * The drop, the start and the fuse of one cable.
   *
   * @param supplyV supply voltage, V
   * @param pumpW power of the pump, W
   * @param lengthM length one way, m
   * @param area cross-section of a conductor, m2
   * @param ohmPerM its resistance at 20 C, ohm/m, see {@link Copper}
   * @param celsius temperature of the conductor, C
   * @param inrushMultiple inrush over running current, 1 or more
   * @param leastPumpV voltage the pump needs to start, V
   * @return drop, loss, start and fuse
   * @throws Impossible if one is outside its range
   */
  public static Cable of(
      double supplyV,
      double pumpW,
      double lengthM,
      double area,
      double ohmPerM,
      double celsius,
      double inrushMultiple,
      double leastPumpV) {
    Motor motor = new Motor(pumpW, supplyV, Motor.DIRECT_CURRENT_POWER_FACTOR, inrushMultiple);
    Impossible.ifNegative("length", lengthM);
    Impossible.unlessWithin("length", lengthM, 0, 1e5, "it cannot be over 100 km");
    Impossible.unlessPositive("resistance", ohmPerM);
    Impossible.unlessWithin("resistance", ohmPerM, 0, 1e3, "no wire resists that much");
    Impossible.unlessWithin("least voltage", leastPumpV, 0, 1000, "it lies between 0 and 1000 V");
    Copper.area(area);
    double factor = Copper.temperatureFactor(celsius);
    double loop = 2 * lengthM * ohmPerM * factor;
    double amperes = motor.runA();
    double atInrush = supplyV - motor.inrushA() * loop;
    double for5 = Copper.RESISTIVITY * factor * 2 * lengthM * amperes / (GOOD_DROP * supplyV);
    double square = supplyV * supplyV - 4 * pumpW * loop;
    boolean feeds = square >= 0;
    double pumpV = feeds ? (supplyV + Math.sqrt(square)) / 2 : 0;
    double worstA = feeds ? pumpW / pumpV : amperes;
    OptionalDouble fuse = Fuse.sizeA(worstA);
    OptionalDouble limit = Fuse.cordLimitA(area);
    return new Cable(
        ohmPerM,
        loop,
        amperes,
        amperes * loop,
        amperes * loop / supplyV,
        feeds,
        when(feeds, pumpV),
        when(feeds, worstA),
        when(feeds, 1 - pumpV / supplyV),
        when(feeds, worstA * worstA * loop),
        atInrush,
        atInrush >= leastPumpV,
        for5,
        fuse,
        limit,
        cord(fuse, limit));
  }

  private static OptionalDouble when(boolean feeds, double value) {
    return feeds ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private static Cord cord(OptionalDouble fuse, OptionalDouble limit) {
    if (fuse.isEmpty() || limit.isEmpty()) {
      return Cord.UNKNOWN;
    }
    return fuse.getAsDouble() <= limit.getAsDouble() ? Cord.PROTECTED : Cord.UNPROTECTED;
  }

  /** The one verdict on a cable, worst first. */
  public enum Verdict {
    CANNOT_FEED("cannot-feed"),
    DOES_NOT_START("does-not-start"),
    CORD_TOO_THIN("cord-too-thin"),
    TOO_MUCH("too-much"),
    MUCH("much"),
    GOOD("good");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** The word printed, in kebab case. */
    public String word() {
      return word;
    }

    /** Whether such a cable will do. */
    public boolean passes() {
      return this == GOOD || this == MUCH;
    }
  }

  /** The verdict on drop, start and fuse together: the worst of them. */
  public Verdict verdict() {
    if (!feeds) {
      return Verdict.CANNOT_FEED;
    }
    if (!starts) {
      return Verdict.DOES_NOT_START;
    }
    if (cord == Cord.UNPROTECTED) {
      return Verdict.CORD_TOO_THIN;
    }
    switch (drop()) {
      case GOOD:
        return Verdict.GOOD;
      case MUCH:
        return Verdict.MUCH;
      default:
        return Verdict.TOO_MUCH;
    }
  }

  /** Voltage left at the pump while it starts, V, never under 0. */
  public double startV() {
    return Math.max(0, pumpVAtInrush);
  }

  /** Drop at constant current, V, at most the supply's whole voltage. */
  public double lostV() {
    return dropShare > 1 ? dropV / dropShare : dropV;
  }

  /** The same over the supply, at most 1. */
  public double lostShare() {
    return Math.min(1, dropShare);
  }

  /** Whether the two drops differ by over a tenth, or the pump cannot be fed: report both. */
  public boolean differ() {
    return !feeds || pumpDropShare.getAsDouble() - dropShare > WORTH_REPORTING * dropShare;
  }

  /** The larger of the two drops over the supply; of the constant current when it cannot be fed. */
  public double worstDropShare() {
    return feeds ? Math.max(dropShare, pumpDropShare.getAsDouble()) : dropShare;
  }

  /** Verdict on the larger drop: good to 5 per cent, much to 10, else too much. */
  public Drop drop() {
    if (!feeds || worstDropShare() > MOST_DROP) {
      return Drop.TOO_MUCH;
    }
    return worstDropShare() > GOOD_DROP ? Drop.MUCH : Drop.GOOD;
  }

  /**
   * The thinnest usual wire gauge with which the larger drop stays within a share, the pump starts,
   * and the fuse protects the cord.
   *
   * @param supplyV supply voltage, V
   * @param pumpW power of the pump, W
   * @param lengthM length one way, m
   * @param celsius temperature of the conductor, C
   * @param inrushMultiple inrush over running current, 1 or more
   * @param leastPumpV voltage the pump needs to start, V
   * @param mostDropShare drop over the supply, above 0 to 1
   * @return American wire gauge; empty when none of them is enough
   * @throws Impossible if one is outside its range
   */
  public static OptionalDouble leastGauge(
      double supplyV,
      double pumpW,
      double lengthM,
      double celsius,
      double inrushMultiple,
      double leastPumpV,
      double mostDropShare) {
    Accepted.someShare("drop", mostDropShare);
    double[] gauges = Copper.usualGauges();
    for (int i = 0; i < gauges.length; i++) {
      double area = Copper.gaugeArea(gauges[i]);
      double ohm = Copper.byResistivity(area);
      Cable cable = of(supplyV, pumpW, lengthM, area, ohm, celsius, inrushMultiple, leastPumpV);
      if (cable.fits(area, mostDropShare)) {
        return OptionalDouble.of(gauges[i]);
      }
    }
    return OptionalDouble.empty();
  }

  private boolean fits(double area, double mostDropShare) {
    return feeds
        && starts
        && worstDropShare() <= mostDropShare
        && fuseA.isPresent()
        && fuseA.getAsDouble() <= Fuse.cordCarriesAtLeastA(area);
  }

  /**
   * The least size of the tables with which the larger drop stays within a share, the pump starts,
   * and the fuse protects the cord.
   *
   * @param strands how the conductor is built
   * @param supplyV supply voltage, V
   * @param pumpW power of the pump, W
   * @param lengthM length one way, m
   * @param celsius temperature of the conductor, C
   * @param inrushMultiple inrush over running current, 1 or more
   * @param leastPumpV voltage the pump needs to start, V
   * @param mostDropShare drop over the supply, above 0 to 1, such as {@link #GOOD_DROP}
   * @return cross-section, m2; empty when 6 mm2 is not enough
   * @throws Impossible if one is outside its range
   */
  public static OptionalDouble leastSize(
      Copper.Strands strands,
      double supplyV,
      double pumpW,
      double lengthM,
      double celsius,
      double inrushMultiple,
      double leastPumpV,
      double mostDropShare) {
    Accepted.someShare("drop", mostDropShare);
    double[] sizes = Copper.tableSizes();
    for (int i = 0; i < sizes.length; i++) {
      double ohm = Copper.ohmPerM(strands, sizes[i]);
      Cable cable = of(supplyV, pumpW, lengthM, sizes[i], ohm, celsius, inrushMultiple, leastPumpV);
      if (cable.fits(sizes[i], mostDropShare)) {
        return OptionalDouble.of(sizes[i]);
      }
    }
    return OptionalDouble.empty();
  }
}
