package leat.hydraulics;

import leat.numeric.Impossible;

/**
 * Fittings whose loss follows from a size of their own: the radius of a bend, the other bore of a
 * reducer, the share of the flow that a tee turns off, the open share of a screen, the angle of a
 * cock. K on the velocity in the pipe that the fitting stands in.
 *
 * <p>Some of them stand in {@link Fitting} too, for the usual size. A tee's K is printed for the
 * velocity before it; the pipe that the fitting stands in carries only a part of that flow, so it
 * is moved to that part. A cone is taken at 45 degrees, the steepest that the formulas hold for.
 *
 * <p>Source: {@link Bend}, {@link BoreChange}, {@link DividingTee}, {@link Screen}, {@link
 * FittingTable}. Check values: hydraulics-fittings.csv.
 */
public final class SizedFitting {
  /** What the size of a fitting is. */
  public enum By {
    /** A length, m. */
    LENGTH,
    /** A share, -. */
    SHARE,
    /** An angle, rad. */
    ANGLE
  }

  /** Whole angle of a cone, degrees: the steepest that the formulas hold for. */
  private static final double CONE = 45;

  /**
   * Velocity for which a bend's own friction is taken when the flow is not known, m/s (practice).
   */
  private static final double USUAL_SPEED = 1;

  private static final String[] NAME = {
    "bend",
    "bend-45",
    "bend-180",
    "tee-run",
    "tee-branch",
    "barb",
    "entrance-rounded",
    "narrowing",
    "widening",
    "reducer",
    "diffuser",
    "screen",
    "screen-punched",
    "plug-cock"
  };

  private static final String[] ABOUT = {
    "smooth bend 90 degrees, radius of its centre line",
    "smooth bend 45 degrees, radius of its centre line",
    "smooth bend 180 degrees, radius of its centre line",
    "tee of equal bores, straight through, share of the flow that branches off",
    "tee of equal bores, into the branch, share of the flow that branches off",
    "hose barb, its bore",
    "rounded entrance, radius of the rounding",
    "sudden narrowing, bore before it",
    "sudden widening, bore after it",
    "cone to a narrower bore, bore before it",
    "cone to a wider bore, bore after it",
    "woven screen, open share",
    "punched plate with sharp edges, open share",
    "plug cock, angle by which it is closed"
  };

  private SizedFitting() {}

  /** The fittings that may have a size, kebab-case. */
  public static String[] names() {
    return NAME.clone();
  }

  /** What a fitting and its size are, in words. */
  public static String about(String name) {
    return ABOUT[index(name)];
  }

  /** Whether a fitting may have a size. */
  public static boolean isKnown(String name) {
    return index(name) >= 0;
  }

  /** What the size of a fitting is. */
  public static By by(String name) {
    switch (name) {
      case "tee-run":
      case "tee-branch":
      case "screen":
      case "screen-punched":
        return By.SHARE;
      case "plug-cock":
        return By.ANGLE;
      default:
        return By.LENGTH;
    }
  }

  /**
   * Loss coefficient by size; a bend's own friction at 1 m/s in water of 20 C.
   *
   * @param name of a fitting with a size
   * @param size m, - or rad, as {@link #by} says
   * @param bore of the pipe it stands in, m, above 0
   * @param roughness of that pipe's wall, m, 0 to a twentieth of the bore
   * @return K, -; below 0 where a tee gives head back
   * @throws Impossible for a size that the fitting cannot have
   */
  public static double k(String name, double size, double bore, double roughness) {
    Impossible.unlessPositive("bore", bore);
    double re = USUAL_SPEED * bore / Liquid.usualWater().kinematicViscosity();
    return atFriction(name, size, bore, FrictionFactor.of(re, roughness / bore));
  }

  /**
   * Loss coefficient by size where the friction factor is known.
   *
   * @param name of a fitting with a size
   * @param size m, - or rad, as {@link #by} says
   * @param bore of the pipe it stands in, m, above 0
   * @param frictionFactor Darcy, -, above 0; only a bend asks for it
   * @return K, -; below 0 where a tee gives head back
   * @throws Impossible for a size that the fitting cannot have
   */
  public static double atFriction(String name, double size, double bore, double frictionFactor) {
    switch (name) {
      case "bend":
        return Bend.smooth(90, size / bore, frictionFactor);
      case "bend-45":
        return Bend.smooth(45, size / bore, frictionFactor);
      case "bend-180":
        return Bend.smooth(180, size / bore, frictionFactor);
      case "tee-run":
      case "tee-branch":
        return tee(name, size);
      case "screen":
        return Screen.woven(size);
      case "screen-punched":
        return Screen.sharp(size);
      case "plug-cock":
        return FittingTable.plugCock(Math.toDegrees(size));
      case "entrance-rounded":
        return FittingTable.entranceRounded(size / bore);
      default:
        return change(name, size, bore);
    }
  }

  private static double tee(String name, double branchShare) {
    boolean branch = name.equals("tee-branch");
    double own = branch ? branchShare : 1 - branchShare;
    Impossible.unlessWithin("share", own, 0.01, 1, "the pipe carries 1 % of the flow at least");
    double k = branch ? DividingTee.branch(branchShare) : DividingTee.run(branchShare);
    return k / (own * own);
  }

  private static double change(String name, double other, double bore) {
    switch (name) {
      case "barb":
        return BoreChange.barb(bore, other);
      case "narrowing":
        return BoreChange.contraction(other, bore);
      case "widening":
        return BoreChange.expansion(bore, other);
      case "reducer":
        return BoreChange.reducer(other, bore, CONE);
      case "diffuser":
        return BoreChange.diffuser(bore, other, CONE);
      default:
        throw new Impossible("fittings", "no such fitting has a size");
    }
  }

  private static int index(String name) {
    for (int i = 0; i < NAME.length; i++) {
      if (NAME[i].equals(name)) {
        return i;
      }
    }
    return -1;
  }
}
