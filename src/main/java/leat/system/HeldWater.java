package leat.system;

import leat.hydraulics.ManifoldFlow;
import leat.level.Tank;

/**
 * Water that the running towers keep out of the tank, and the levels that follow: after a stop it
 * comes back, at a start it is taken out.
 */
public final class HeldWater {
  /** Rain of a downpour on the lid, m (50 mm; common practice, no source). */
  public static final double DOWNPOUR = 0.050;

  private final double back;
  private final double held;

  private HeldWater(double back, double held) {
    this.back = back;
    this.held = held;
  }

  /** Of all towers of a water's way under solved flows. */
  public static HeldWater of(Waterway way, ManifoldFlow flows) {
    double back = 0;
    double held = 0;
    for (int t = 0; t < way.towers(); t++) {
      TowerAt tower = new TowerAt(way, t, flows);
      back += tower.count() * tower.drainBack();
      held +=
          tower.count()
              * ((tower.reaches()
                      ? tower.riserVolume()
                      : tower.riser().volumeUpTo(tower.standsAt()))
                  + tower.heldUp());
    }
    return new HeldWater(back, held);
  }

  /** What a downpour brings onto an area of m2, m3. */
  public static double downpour(double area) {
    return area * DOWNPOUR;
  }

  /** What comes back at a stop, m3. */
  public double back() {
    return back;
  }

  /** What is out of the tank while the pump runs, m3. */
  public double held() {
    return held;
  }

  /**
   * Room under a brim once so much more has come in.
   *
   * @param level before, m
   * @param brim level at which it spills, m
   * @param more volume that comes in, m3
   * @return height left, m; negative when it spills
   */
  public static double room(Tank tank, double level, double brim, double more) {
    double after = tank.volume(level) + more;
    double atBrim = tank.volume(brim);
    return after <= atBrim ? brim - tank.level(after) : -(after - atBrim) / tank.area(brim);
  }

  /**
   * Level that leaves {@code room} under the brim when so much more comes in, m; the lowest level
   * when none does.
   */
  public static double levelFor(Tank tank, double brim, double room, double more) {
    double wanted = tank.volume(Math.max(tank.lowestLevel(), brim - room)) - more;
    return wanted <= tank.lowestVolume() ? tank.lowestLevel() : tank.level(wanted);
  }

  /** Level once so much is taken out, m; the lowest level when it is more than there is. */
  public static double levelWithout(Tank tank, double level, double less) {
    double left = tank.volume(level) - less;
    return left <= tank.lowestVolume() ? tank.lowestLevel() : tank.level(left);
  }

  /**
   * Level from which, once so much is taken out, {@code wanted} is left, m; the rim when the tank
   * is too small.
   */
  public static double levelBefore(Tank tank, double wanted, double less) {
    double before = tank.volume(wanted) + less;
    return before >= tank.capacity() ? tank.height() : tank.level(before);
  }
}
