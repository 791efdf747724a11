package leat.season;

/**
 * Adds up a season as the {@link Machine} goes through it, and closes its two balances.
 *
 * <p>Source: conservation of water and salt.
 *
 * <p>Source: arithmetic of litres and grams; the bound is our own.
 */
final class Ledger {
  /** How far a balance may be off by rounding, L and mS/cm L. */
  static final double CLOSED = 1e-9;

  /** Beyond so much moved in all, rounding grows with it, L. */
  private static final double MUCH = 1e4;

  private final TankPlan plan;
  private final double startL;
  private final double startSalt;
  private double use;
  private double shortfall;
  private double rain;
  private double over;
  private double water;
  private double concentrate;
  private double drained;
  private double drunkSalt;
  private double saltIn;
  private double saltOut;
  private int days;
  private int topups;
  private int doses;
  private int dilutions;
  private int changes;
  private int overflowDays;
  private int dryDays;
  private int awayDryDays;
  private int firstDry = -1;
  private int firstAwayDry = -1;
  private double ecMin = Double.POSITIVE_INFINITY;
  private double ecMax = Double.NEGATIVE_INFINITY;
  private double lowest = Double.POSITIVE_INFINITY;
  private double addedMost;
  private int addedMostDay = -1;
  private final Streak.Counter above = new Streak.Counter();
  private final Streak.Counter below = new Streak.Counter();
  private final Streak.Counter outside = new Streak.Counter();

  Ledger(TankPlan plan, TankState start) {
    this.plan = plan;
    startL = start.volumeL();
    startSalt = start.saltMsCmL();
  }

  /** Takes the day that the machine has just gone through. */
  void take(Machine m) {
    days++;
    use += m.use;
    shortfall += m.shortfall;
    rain += m.rain;
    over += m.over;
    water += m.water;
    concentrate += m.concentrate;
    drained += m.drained;
    drunkSalt += m.drunkSalt;
    saltIn += m.saltIn();
    saltOut += m.overSalt + m.drunkSalt + m.drainedSalt;
    lowest = Math.min(lowest, m.least);
    count(m);
    evening(m);
    if (m.added > addedMost) {
      addedMost = m.added;
      addedMostDay = m.day - 1;
    }
  }

  private void count(Machine m) {
    if (m.over > Machine.SPARE) {
      overflowDays++;
    }
    if (m.dry) {
      dryDays++;
      if (m.awayDry) {
        awayDryDays++;
        firstAwayDry = firstAwayDry < 0 ? m.day - 1 : firstAwayDry;
      } else {
        firstDry = firstDry < 0 ? m.day - 1 : firstDry;
      }
    }
    if (m.service == Service.TOP_UP) {
      topups++;
    } else if (m.service == Service.DILUTE) {
      dilutions++;
    } else if (m.service == Service.DOSE) {
      doses++;
    } else if (m.service == Service.CHANGE) {
      changes++;
    }
  }

  private void evening(Machine m) {
    boolean high = false;
    boolean low = false;
    if (m.volume > 0) {
      double ec = m.salt / m.volume;
      ecMin = Math.min(ecMin, ec);
      ecMax = Math.max(ecMax, ec);
      high = ec > plan.band().highMsCm() + Machine.SPARE;
      low = ec < plan.band().lowMsCm() - Machine.SPARE;
    }
    above.take(high, m.day - 1);
    below.take(low, m.day - 1);
    outside.take(high || low, m.day - 1);
  }

  /**
   * The sums.
   *
   * @throws IllegalStateException if water or salt has been lost or made: a bug
   */
  Totals close(Machine m) {
    double in = rain + water + Feeding.LITRES * concentrate;
    double out = over + use + drained;
    closed("water", startL, in, out, m.volume);
    closed("salt", startSalt, saltIn, saltOut, m.salt);
    double tap =
        plan.feeding().waterEcMsCm() / (plan.marks().fullL() * plan.feeding().targetMsCm());
    boolean ever = ecMax >= ecMin;
    return new Totals(
        days,
        new Totals.Flows(use, shortfall, rain, over, water, concentrate, drained, drunkSalt),
        new Totals.Counts(topups, doses, dilutions, changes, overflowDays, dryDays, awayDryDays),
        new Totals.Evenings(
            ever ? ecMin : Double.NaN,
            ever ? ecMax : Double.NaN,
            lowest,
            m.volume,
            m.salt,
            above.longest(),
            below.longest(),
            outside.longest()),
        new Totals.TapSalt(tap * addedMost, addedMostDay, tap * m.added),
        firstDry,
        firstAwayDry);
  }

  private static void closed(String what, double start, double in, double out, double end) {
    double off = Math.abs(start + in - out - end);
    if (!(off <= CLOSED * Math.max(1, (start + in + out) / MUCH))) {
      throw new IllegalStateException(
          "the season's "
              + what
              + " does not close: "
              + start
              + " + "
              + in
              + " - "
              + out
              + " is not "
              + end);
    }
  }
}
