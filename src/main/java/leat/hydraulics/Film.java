package leat.hydraulics;

import leat.numeric.Impossible;
import leat.numeric.Validity;

/**
 * The film that falls down the inside of a tower, smooth and laminar after Nusselt.
 *
 * <pre>
 * G = rho Q/P,  P = pi d share;   delta = (3 mu G/(rho^2 g))^(1/3);   mean u = G/(rho delta), surface 1.5 u
 * Re = 4 G/mu;   transit = height/u;   held volume = P height delta
 * </pre>
 *
 * <p>A tower's film is always wavy, so the figures are means, good to 10 to 20 %; above Re 1500
 * they are an indication only. The front of a new film runs at the mean speed. Not modelled: ribs,
 * pot sockets, steps between modules, roots, tilt.
 *
 * <p>Source: W. Nusselt 1916; regimes: Bird, Stewart and Lightfoot, Transport Phenomena, 2nd ed.,
 * section 2.2; closing of a dry spot: D. E. Hartley and W. Murgatroyd 1964 (force balance), from
 * sheet hydraulics.md section 8. Check values: hydraulics-film.csv.
 *
 * @param flow m3/s
 * @param perimeter wetted, m
 * @param height the film falls, m
 * @param loading flow over perimeter, m2/s (1 L/min per m = 1/60000)
 * @param massLoading G, kg/(m s)
 * @param reynolds 4 G/mu, -
 * @param thickness m
 * @param meanSpeed m/s
 * @param surfaceSpeed m/s
 * @param transitTime down the wall at the mean speed, s
 * @param surfaceTransitTime of a spot of dye on the surface, s
 * @param volume hanging on the wall, m3
 * @param breaksBelow loading under which a dry spot on clean plastic does not close, m2/s
 */
public record Film(
    double flow,
    double perimeter,
    double height,
    double loading,
    double massLoading,
    double reynolds,
    double thickness,
    double meanSpeed,
    double surfaceSpeed,
    double transitTime,
    double surfaceTransitTime,
    double volume,
    double breaksBelow) {

  /** Where Nusselt's film is more than an indication. */
  public static final Validity VALID = Validity.of("film Re", 0, 1500);

  /** Lowest loading to aim at, m2/s (5 L/min per m; practice). */
  public static final double LOADING_LOW = 5.0 / 60000;

  /** Usual loading, m2/s (10 L/min per m; practice). */
  public static final double LOADING_USUAL = 10.0 / 60000;

  /** Highest loading to aim at, m2/s (20 L/min per m; practice). */
  public static final double LOADING_HIGH = 20.0 / 60000;

  /** Contact angle of water on clean plastic, degrees (our choice). */
  public static final double CLEAN_PLASTIC = 75;

  /** Contact angle on a slimed or sanded wall, degrees (our choice). */
  public static final double SLIMED_WALL = 30;

  private static final double SURFACE_OVER_MEAN = 1.5;

  /** 15^0.6/3, of the force balance at a dry spot, -. */
  private static final double DRY_SPOT = Math.pow(15, 0.6) / 3;

  /**
   * The film of a tower.
   *
   * @param flow m3/s, above 0
   * @param innerDiameter of the wall, m, above 0
   * @param wettedShare of the perimeter, -, above 0 to 1
   * @param height from cap to tank, m, above 0
   * @param liquid what falls
   * @return the film
   * @throws Impossible outside
   */
  public static Film of(
      double flow, double innerDiameter, double wettedShare, double height, Liquid liquid) {
    Impossible.unlessWithin("flow", flow, 1e-15, 100, "a film needs a flow above 0");
    Impossible.unlessWithin(
        "height", height, 1e-6, 1000, "a film falls over a height above 0, a kilometre at most");
    double perimeter = perimeter(innerDiameter, wettedShare);
    double mass = liquid.density() * flow / perimeter;
    double thickness = thickness(mass, liquid.density(), liquid.viscosity());
    double speed = mass / (liquid.density() * thickness);
    return new Film(
        flow,
        perimeter,
        height,
        flow / perimeter,
        mass,
        reynolds(mass, liquid.viscosity()),
        thickness,
        speed,
        SURFACE_OVER_MEAN * speed,
        height / speed,
        height / (SURFACE_OVER_MEAN * speed),
        perimeter * height * thickness,
        breaksBelow(CLEAN_PLASTIC, liquid));
  }

  /**
   * Wetted perimeter.
   *
   * @param innerDiameter of the wall, m, above 0
   * @param wettedShare of it, -, above 0 to 1
   * @return m
   * @throws Impossible outside
   */
  public static double perimeter(double innerDiameter, double wettedShare) {
    Impossible.unlessWithin(
        "diameter", innerDiameter, 1e-4, 100, "a tower's inside is wider than 0.1 mm");
    Impossible.unlessWithin(
        "wetted share", wettedShare, 1e-6, 1, "the wetted share is above 0 and at most 100 %");
    return Math.PI * innerDiameter * wettedShare;
  }

  /**
   * Thickness.
   *
   * @param massLoading G, kg/(m s), above 0
   * @param density kg/m3
   * @param viscosity Pa s
   * @return m
   * @throws Impossible unless all are above 0
   */
  public static double thickness(double massLoading, double density, double viscosity) {
    Impossible.unlessPositive("flow", massLoading);
    Impossible.unlessPositive("density", density);
    Impossible.unlessPositive("viscosity", viscosity);
    return Math.cbrt(3 * viscosity * massLoading / (density * density * Liquid.GRAVITY));
  }

  /**
   * Reynolds number 4 G/mu (definitions without the 4 give a quarter).
   *
   * @param massLoading G, kg/(m s), above 0
   * @param viscosity Pa s
   * @return -
   * @throws Impossible unless both are above 0
   */
  public static double reynolds(double massLoading, double viscosity) {
    Impossible.unlessPositive("flow", massLoading);
    return 4 * massLoading / Impossible.unlessPositive("viscosity", viscosity);
  }

  /**
   * Loading under which a dry spot stays open: rivulets are likely.
   *
   * @param contactDegrees contact angle of water on the wall, degrees, above 0 to 180
   * @param liquid what falls
   * @return m2/s
   * @throws Impossible outside
   */
  public static double breaksBelow(double contactDegrees, Liquid liquid) {
    Impossible.unlessWithin(
        "contact angle", contactDegrees, 0, 180, "a contact angle is between 0 and 180 degrees");
    double pull = liquid.surfaceTension() * (1 - Math.cos(Math.toRadians(contactDegrees)));
    double mass =
        DRY_SPOT
            * Math.pow(liquid.viscosity() * liquid.density() / Liquid.GRAVITY, 0.2)
            * Math.pow(pull, 0.6);
    return mass / liquid.density();
  }

  /**
   * The flow that loads a wall as wanted: the inverse a check needs.
   *
   * @param loading m2/s, above 0; see {@link #LOADING_LOW}
   * @param innerDiameter of the wall, m
   * @param wettedShare of it, -
   * @return m3/s
   * @throws Impossible outside
   */
  public static double flowForLoading(double loading, double innerDiameter, double wettedShare) {
    return Impossible.unlessPositive("loading", loading) * perimeter(innerDiameter, wettedShare);
  }

  /** Flow on this wall from which a dry spot on clean plastic closes, m3/s. */
  public double flowForClosedFilm() {
    return breaksBelow * perimeter;
  }

  /** Rivulets are likely on clean plastic; say so, never "dry". */
  public boolean rivuletsLikely() {
    return loading < breaksBelow;
  }

  /** Nusselt's film is an indication only: too thin and too fast. */
  public boolean indicationOnly() {
    return !VALID.holds(reynolds);
  }
}
