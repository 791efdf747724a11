package leat.climate;

/** How the thirst of a day was found, best first. */
public enum Method {
  /** The weather file gives litres of the plants. */
  LITRES_FILE("litres-file"),
  /** The weather file gives ET0. */
  ET0_FILE("et0-file"),
  /** Radiation or sun hours, humidity and wind are known. */
  PENMAN_MONTEITH("penman-monteith"),
  /** The two temperatures are known. */
  HARGREAVES_SAMANI("hargreaves-samani"),
  /** No weather: the plan's own use of a full plant. */
  DRINKS("drinks");

  private final String word;

  Method(String word) {
    this.word = word;
  }

  /** The word of the answer. */
  public String word() {
    return word;
  }
}
