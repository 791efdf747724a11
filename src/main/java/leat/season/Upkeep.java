package leat.season;

import leat.numeric.Impossible;

/**
 * What is done to the tank in the evening, and when.
 *
 * @param refill when it is topped up
 * @param doseBelowMsCm concentrate alone is poured under this EC, mS/cm; 0 for never
 * @param diluteAboveMsCm a top-up that would end above this EC drains first, mS/cm; infinite for
 *     never
 * @param changeDays a change after so many days; 0 for never
 * @param changeAdded a change when the water added reaches this share of full; infinite for never
 */
public record Upkeep(
    Refill refill,
    double doseBelowMsCm,
    double diluteAboveMsCm,
    int changeDays,
    double changeAdded) {
  /** For what is never done. */
  public static final double NEVER = Double.POSITIVE_INFINITY;

  /**
   * @throws Impossible if a number is negative, or a change is asked at no water added
   */
  public Upkeep {
    Impossible.ifNegative("dose-below", doseBelowMsCm);
    if (!(diluteAboveMsCm > 0)) {
      throw new Impossible("dilute-above", "it must be above 0");
    }
    if (changeDays < 0) {
      throw new Impossible("change", "days between changes cannot be negative");
    }
    if (!(changeAdded > 0)) {
      throw new Impossible("change", "the share of water added must be above 0");
    }
  }

  /** Only top-ups. */
  public static Upkeep of(Refill refill) {
    return new Upkeep(refill, 0, NEVER, 0, NEVER);
  }

  /** Whether somebody may ever do anything. */
  boolean serves() {
    return refill.kind() != Refill.Kind.NONE
        || doseBelowMsCm > 0
        || changeDays > 0
        || changeAdded < NEVER;
  }

  Upkeep refill(Refill other) {
    return new Upkeep(other, doseBelowMsCm, diluteAboveMsCm, changeDays, changeAdded);
  }

  Upkeep doseBelow(double msCm) {
    return new Upkeep(refill, msCm, diluteAboveMsCm, changeDays, changeAdded);
  }

  Upkeep diluteAbove(double msCm) {
    return new Upkeep(refill, doseBelowMsCm, msCm, changeDays, changeAdded);
  }

  Upkeep changeDays(int days) {
    return new Upkeep(refill, doseBelowMsCm, diluteAboveMsCm, days, changeAdded);
  }
}
