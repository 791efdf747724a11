package leat.level;

import leat.numeric.Impossible;

/**
 * The moisture sensor in a tower's cap, read by an ADC: which counts mean water, and how long after
 * the pump's start water must be there.
 *
 * <pre>dryness = (counts - wet)/(dry - wet)       either sense</pre>
 *
 * <p>Source: sheet log.md sections 1 and 3: dry over 0.80, no wetting response over 0.50; both, and
 * the reserve of the wait, are common practice without a published source.
 *
 * @param wet counts under running water
 * @param dry counts when dried out
 */
public record CapSensor(double wet, double dry) {
  /** Dryness under which water is there, a share. */
  public static final double WET_UNDER = 0.5;

  /** Dryness over which the cap is dry, a share. */
  public static final double DRY_OVER = 0.8;

  /** How often the time that water needs a controller waits before it judges. */
  public static final double RESERVE = 2;

  /** Counts so near each other tell nothing: an ADC's noise and a drop of water are as much. */
  public static final double LEAST_APART = 20;

  /**
   * @throws Impossible if one is negative, or they lie too near each other
   */
  public CapSensor {
    Impossible.unlessWithin("wet", wet, 0, 1 << 24, "counts lie from 0 to 16 million");
    Impossible.unlessWithin("dry", dry, 0, 1 << 24, "counts lie from 0 to 16 million");
    if (Math.abs(dry - wet) < LEAST_APART) {
      throw new Impossible("dry", "wet and dry must lie at least 20 counts apart to be told");
    }
  }

  /**
   * Dryness of a reading: 0 under running water, 1 dried out, beyond either where it goes on.
   *
   * @param counts what the ADC says, counts
   * @return a share
   */
  public double dryness(double counts) {
    return (counts - wet) / (dry - wet);
  }

  /** Counts half way between wet and dry, to the wet side: here or beyond it water runs. */
  public int wetAt() {
    return towardsWet(wet + WET_UNDER * (dry - wet));
  }

  /** Counts at which the cap counts as dry, to the dry side. */
  public int dryAt() {
    double at = wet + DRY_OVER * (dry - wet);
    return (int) (fewerIsWet() ? Math.ceil(at) : Math.floor(at));
  }

  private int towardsWet(double at) {
    return (int) (fewerIsWet() ? Math.floor(at) : Math.ceil(at));
  }

  /** Whether fewer counts mean more water, as with capacitive sensors. */
  public boolean fewerIsWet() {
    return wet < dry;
  }

  /**
   * When a controller may judge that no water came: twice what water needs, in whole seconds, and
   * at least the sampling of a slow sensor, 1 s.
   *
   * @param seconds what water needs to the cap, s
   * @return s after the pump's start
   */
  public static int judgeAfter(double seconds) {
    return (int) Math.max(1, Math.ceil(RESERVE * Impossible.ifNegative("fill", seconds)));
  }
}
