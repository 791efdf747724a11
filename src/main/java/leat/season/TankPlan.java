package leat.season;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * All that the tank's days follow, but the weather and the plants.
 *
 * <p>Source: mass balance. The uptake's usual value and range: common practice, from what plants
 * take up per litre.
 *
 * @param marks volumes of the tank's marks
 * @param feeding water, concentrate, target
 * @param rain what drains rain into the tank
 * @param upkeep what is done in the evening
 * @param band the EC wanted in the evening
 * @param uptakeMsCm salt that the plants take with a litre, as EC, mS/cm
 * @param startL volume on the evening before day 0, L
 * @param startMsCm its EC, mS/cm
 * @param since how it came to that
 */
public record TankPlan(
    Marks marks,
    Feeding feeding,
    RainCatch rain,
    Upkeep upkeep,
    EcBand band,
    double uptakeMsCm,
    double startL,
    double startMsCm,
    Since since) {
  /**
   * Uptake when nothing is known, mS/cm.
   *
   * @param targetMsCm EC aimed at, mS/cm
   */
  public static double usualUptake(double targetMsCm) {
    return UPTAKE_SHARE * targetMsCm;
  }

  /** Uptake when nothing is known, as a share of the target (common practice). */
  public static final double UPTAKE_SHARE = 0.75;

  /** The shares seen (common practice). */
  public static final Validity UPTAKE_SHARES = Validity.of("uptake/target", 0.4, 1.1);

  /**
   * @throws Impossible if a number is negative or absurd
   */
  public TankPlan {
    Accepted.ec("uptake", uptakeMsCm);
    Accepted.litres("start", startL);
    Accepted.ec("start", startMsCm);
  }

  /** A tank filled for the first time on the evening before day 0. */
  public TankPlan(
      Marks marks,
      Feeding feeding,
      RainCatch rain,
      Upkeep upkeep,
      EcBand band,
      double uptakeMsCm,
      double startL,
      double startMsCm) {
    this(marks, feeding, rain, upkeep, band, uptakeMsCm, startL, startMsCm, Since.FIRST_FILL);
  }

  /**
   * A tank first filled to the full mark at the target, or as near above it as its water allows.
   *
   * @param marks volumes of the tank's marks
   * @param feeding water, concentrate, target
   * @param rain what drains rain into the tank
   * @param upkeep what is done in the evening
   * @param band the EC wanted in the evening
   * @param uptakeMsCm salt that the plants take with a litre, as EC, mS/cm
   * @return the tank
   * @throws Impossible as the constructor
   */
  public static TankPlan filled(
      Marks marks, Feeding feeding, RainCatch rain, Upkeep upkeep, EcBand band, double uptakeMsCm) {
    double ec = Math.max(feeding.targetMsCm(), feeding.waterEcMsCm());
    return new TankPlan(marks, feeding, rain, upkeep, band, uptakeMsCm, marks.fullL(), ec);
  }

  /** Another full mark; a tank that started full starts at the new mark. */
  public TankPlan full(double litres) {
    return with(marks.full(litres), startL == marks.fullL() ? litres : startL);
  }

  /** A tank with so many litres at the full mark: the rim moves with it, the lower marks stay. */
  public TankPlan tank(double fullL) {
    Marks larger = marks.full(fullL).rim(marks.rimL() + fullL - marks.fullL());
    return with(larger, startL == marks.fullL() ? fullL : startL);
  }

  /** Another low mark. */
  public TankPlan low(double litres) {
    return with(marks.low(litres), startL);
  }

  private TankPlan with(Marks other, double start) {
    return new TankPlan(other, feeding, rain, upkeep, band, uptakeMsCm, start, startMsCm, since);
  }

  /**
   * Another target; a tank that started at the target starts at the new one. An uptake of the usual
   * share of the target follows it, another one stays.
   */
  public TankPlan target(double msCm) {
    boolean usual = uptakeMsCm == usualUptake(feeding.targetMsCm());
    double uptake = usual ? usualUptake(msCm) : uptakeMsCm;
    double first = Math.max(feeding.targetMsCm(), feeding.waterEcMsCm());
    double start = startMsCm == first ? Math.max(msCm, feeding.waterEcMsCm()) : startMsCm;
    return new TankPlan(
        marks, feeding.target(msCm), rain, upkeep, band, uptake, startL, start, since);
  }

  TankPlan upkeep(Upkeep other) {
    return new TankPlan(marks, feeding, rain, other, band, uptakeMsCm, startL, startMsCm, since);
  }
}
