package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Loss coefficients of fittings and valves by the names a plan uses, on the velocity in the pipe's
 * own bore: h = K v2/2g. Good to 30 %; below 16 mm they lose more than these tables for 25 mm say.
 * The exit is a loss: K 1, the energy of the jet.
 *
 * <p>Source: Potter, Wiggert and Ramadan, Mechanics of Fluids, table 7.2 (screwed, 25 mm) and
 * Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, table 8.2, through the provenance
 * column of sheet hydraulics-fittings.csv; Crane TP-410 for re-entrant and rounded entrances and
 * lift checks; globe and angle valves and the return bend from memory of Munson's table.
 */
public final class Fitting {
  /** Munson's threaded elbow of 45 degrees, -; the list has Potter's 0.32. */
  public static final double OTHER_PRINTED_ELBOW_45 = 0.4;

  /** Munson's threaded tee into the branch, -; the list has Potter's 1.8. */
  public static final double OTHER_PRINTED_TEE_BRANCH = 2;

  /** Munson's swing check, -; the list has Potter's 2.9. */
  public static final double OTHER_PRINTED_SWING_CHECK = 2;

  private static final String[] NAME = {
    "entrance",
    "entrance-inward",
    "entrance-rounded",
    "exit",
    "elbow",
    "elbow-long",
    "elbow-smooth",
    "elbow-45",
    "bend-180",
    "tee-run",
    "tee-branch",
    "union",
    "coupling",
    "push-elbow",
    "barb",
    "swing-check",
    "lift-check"
  };
  private static final double[] K = {
    0.5, 0.78, 0.04, 1.0, 1.5, 0.72, 0.3, 0.32, 1.5, 0.9, 1.8, 0.08, 0.007, 1.0, 1.3, 2.9, 16.2
  };
  private static final String[] ABOUT = {
    "sharp entrance, flush",
    "tube that sticks into the tank, thin wall",
    "rounded entrance, radius 0.15 bores or more",
    "exit to a free jet or a tank: the energy of the jet",
    "elbow 90 degrees, screwed",
    "elbow 90 degrees, long sweep",
    "elbow 90 degrees, smooth (flanged)",
    "elbow 45 degrees, screwed",
    "return bend 180 degrees, threaded (memory)",
    "tee, straight through",
    "tee, into the branch",
    "union",
    "push-on coupling",
    "push-on elbow (turbulent)",
    "hose barb, 12 mm in a 16 mm hose; others by their bore",
    "swing check valve",
    "lift check valve, straight"
  };

  private static final String[] VALVE_NAME = {
    "ball", "ball-third-closed", "ball-two-thirds-closed", "gate", "globe", "angle", "none"
  };
  private static final double[] VALVE_K = {0.05, 5.5, 200, 0.24, 10, 2, 0};
  private static final String[] VALVE_ABOUT = {
    "ball valve, open",
    "ball valve, a third closed",
    "ball valve, two thirds closed",
    "gate valve, open",
    "globe valve, open (memory)",
    "angle valve, open (memory)",
    "no valve"
  };

  private Fitting() {}

  /** The fittings whose loss is known without a size, kebab-case. */
  public static String[] names() {
    return NAME.clone();
  }

  /** The fittings, kebab-case, those that need a size behind the others. */
  public static String[] allNames() {
    String[] sized = SizedFitting.names();
    int n = NAME.length;
    String[] all = java.util.Arrays.copyOf(NAME, n + sized.length);
    for (int i = 0; i < sized.length; i++) {
      if (!isKnown(sized[i])) {
        all[n++] = sized[i];
      }
    }
    return java.util.Arrays.copyOf(all, n);
  }

  /** The valves, kebab-case. */
  public static String[] valveNames() {
    return VALVE_NAME.clone();
  }

  /** Whether {@code fittings} of a plan may name it. */
  public static boolean isKnown(String name) {
    return index(NAME, name) >= 0;
  }

  /**
   * Loss coefficient of a fitting, -.
   *
   * @throws Impossible for an unknown name
   */
  public static double k(String name) {
    return K[known(NAME, name, "fittings")];
  }

  /**
   * Loss coefficient of a valve, -.
   *
   * @throws Impossible for an unknown name
   */
  public static double valveK(String name) {
    return VALVE_K[known(VALVE_NAME, name, "valve")];
  }

  /** What a fitting is, in words. */
  public static String about(String name) {
    return ABOUT[known(NAME, name, "fittings")];
  }

  /** What a valve is, in words. */
  public static String aboutValve(String name) {
    return VALVE_ABOUT[known(VALVE_NAME, name, "valve")];
  }

  private static int known(String[] names, String name, String quantity) {
    int i = index(names, name);
    if (i < 0) {
      throw new Impossible(quantity, "no such name is known");
    }
    return i;
  }

  private static int index(String[] names, String name) {
    for (int i = 0; i < names.length; i++) {
      if (names[i].equals(name)) {
        return i;
      }
    }
    return -1;
  }
}
