package leat.solution.conductivity;

import leat.numeric.Impossible;

/**
 * The three "ppm" scales of meters: nothing but EC at 25 C times 500, 640 or 700 per mS/cm, never a
 * weight of anything.
 *
 * <p>Source: common instrument practice (500 from sodium chloride, 640 from natural waters, 700
 * from potassium chloride). Check values: arithmetic.
 */
public enum PpmScale {
  /** 500 ppm per mS/cm. */
  PPM500(500),
  /** 640 ppm per mS/cm. */
  PPM640(640),
  /** 700 ppm per mS/cm. */
  PPM700(700);

  private static final double MOST_EC25 = 2000; // mS/cm; 1000 raw, brought up from 0 C

  private final int perMsCm;

  PpmScale(int perMsCm) {
    this.perMsCm = perMsCm;
  }

  /**
   * The scale of that factor.
   *
   * @param factor 500, 640 or 700, ppm per mS/cm
   * @throws Impossible for any other number
   */
  public static PpmScale of(double factor) {
    if (factor == 500) {
      return PPM500;
    }
    if (factor == 640) {
      return PPM640;
    }
    if (factor == 700) {
      return PPM700;
    }
    throw new Impossible(
        "scale",
        "meters show ppm as EC times 500, 640 or 700, and 1 mS/cm is 500, 640 or 700 ppm by them:"
            + " say which of the three");
  }

  /** The factor, ppm per mS/cm. */
  public int factor() {
    return perMsCm;
  }

  /**
   * What a meter of this scale shows.
   *
   * @param ec25 EC at 25 C, mS/cm
   * @return ppm of this scale
   * @throws Impossible if negative or over what water can have
   */
  public double ppm(double ec25) {
    return Impossible.unlessWithin("EC", ec25, 0, MOST_EC25, "no water conducts that much")
        * perMsCm;
  }

  /**
   * The EC behind a ppm reading.
   *
   * @param ppm reading on this scale, ppm
   * @return EC at 25 C (or raw, for a meter that does not compensate), mS/cm
   * @throws Impossible if negative or over what water can have
   */
  public double ec(double ppm) {
    Impossible.ifNegative("ppm", ppm);
    return EcReading.checked(ppm / perMsCm);
  }
}
