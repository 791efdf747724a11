package leat.quantity;

/**
 * What kind of thing a quantity measures. A flag or plan key has one of these; its word and example
 * make the error messages, its base is the unit in which values go to the trade functions.
 */
public enum Dimension {
  LENGTH("a length", "13 mm", "m"),
  AREA("an area", "0.03 m2", "m2"),
  VOLUME("a volume", "45 L", "m3"),
  MASS("a mass", "260 g", "kg"),
  TIME("a time", "90 s", "s"),
  FLOW("a flow", "8 L/min", "m3/s"),
  /** Metres of water of 1000 kg/m3 under standard gravity (9806.65 Pa); a pressure may be typed. */
  HEAD("a head", "1.7 m", "m"),
  PRESSURE("a pressure", "0.2 bar", "Pa"),
  TEMPERATURE("a temperature", "20 C", "C"),
  TEMPERATURE_DIFFERENCE("a temperature difference", "5 K", "K"),
  SPEED("a speed", "18 m/s", "m/s"),
  POWER("a power", "22 W", "W"),
  ENERGY("an energy", "1.2 kWh", "J"),
  FORCE("a force", "2 N", "N"),
  MONEY("an amount of money", "16 EUR", ""),
  MONEY_PER_ENERGY("a price of energy", "0.31 EUR/kWh", "/kWh"),
  MONEY_PER_MASS("a price by mass", "22 EUR/kg", "/kg"),
  MONEY_PER_VOLUME("a price by volume", "13 EUR/L", "/m3"),
  MONEY_PER_TIME("a price by time", "0.40 EUR/d", "/d"),
  EC("an EC", "1.6 mS/cm", "mS/cm"),
  MASS_CONCENTRATION("a concentration", "120 mg/L", "mg/L"),
  /** Feed in water: what the label of a bottle says. */
  VOLUME_RATIO("a rate of feed", "2.5 mL/L", "mL/L"),
  ALKALINITY("an alkalinity", "180 mg/L as CaCO3", "meq/L"),
  RESISTANCE("a resistance", "240 ohm", "ohm"),
  VOLTAGE("a voltage", "12 V", "V"),
  CURRENT("a current", "10 A", "A"),
  CHARGE("a battery's charge", "7 Ah", "Ah"),
  ANGLE("an angle", "45 deg", "rad"),
  /** A fraction, typed in per cent and in nothing else. */
  SHARE("a share", "85 %", ""),
  RATE("a number of times", "2 /d", "/s"),
  TIME_PER_DAY("a time a day", "5 h/d", ""),
  /** Sun on the level ground in a day. */
  RADIATION("radiation of a day", "22 MJ/m2", "MJ/m2"),
  /** Pieces, raw counts of a converter, seasons: the unit is the word and may be left out. */
  COUNT("a count", "1350 counts", "counts"),
  /** Bare by nature: a pH, a loss factor. */
  NUMBER("a number", "2.5", "");

  private final String word;
  private final String example;
  private final String base;

  Dimension(String word, String example, String base) {
    this.word = word;
    this.example = example;
    this.base = base;
  }

  /** The trade word with its article, such as "a length". */
  public String word() {
    return word;
  }

  /** A quantity of this kind as one would type it, such as "13 mm". */
  public String example() {
    return example;
  }

  /** The symbol of the unit that values are held in; empty for plain numbers. */
  public String base() {
    return base;
  }

  /** Whether quantities of this kind carry a currency. */
  public boolean isMoney() {
    switch (this) {
      case MONEY:
      case MONEY_PER_ENERGY:
      case MONEY_PER_MASS:
      case MONEY_PER_VOLUME:
      case MONEY_PER_TIME:
        return true;
      default:
        return false;
    }
  }
}
