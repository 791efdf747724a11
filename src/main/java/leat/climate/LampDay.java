package leat.climate;

/**
 * What a lamp does on a day.
 *
 * @param status whether it is enough
 * @param missingMolM2 light that is missing, mol/m2 a day
 * @param hours hours it burns, h; the longest day when it is too small or not there
 * @param kwhDay energy, kWh a day
 * @param wattsNeeded lamp that would do in the longest day, W
 * @param reachedMolM2 light with the lamp, mol/m2 a day
 */
public record LampDay(
    Status status,
    double missingMolM2,
    double hours,
    double kwhDay,
    double wattsNeeded,
    double reachedMolM2) {
  /** Whether the lamp is enough. */
  public enum Status {
    NONE_NEEDED("none_needed"),
    OK("ok"),
    LAMP_TOO_SMALL("lamp_too_small"),
    /** No lamp yet: its size is told. */
    SIZE("size");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    /** The word of the answer. */
    public String word() {
      return word;
    }
  }
}
