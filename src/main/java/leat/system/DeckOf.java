package leat.system;

import leat.parts.DeckLoad;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.stability.Situation;

/**
 * What stands on the deck, full and running.
 *
 * @param wholeMass of tank, solution and towers, kg; null when the tank is not known
 * @param pressure of it under the foot, Pa; null when mass or foot are not known
 */
public record DeckOf(Double wholeMass, Double pressure) {
  /**
   * The deck under a plan's tank and towers.
   *
   * @param plan the plan
   * @param parts its towers
   * @param taken notes the defaults that are taken
   */
  public static DeckOf of(Plan plan, PartsOf parts, Taken taken) {
    Section tank = plan.section("tank");
    boolean foot = tank.has("foot") || tank.has("bottom") || tank.has("diameter");
    if (!tank.has("mass") || !tank.has("full") || !TankOf.isKnown(tank)) {
      return new DeckOf(null, null);
    }
    double solution = Situation.massOf(TankOf.of(tank, taken).volume(tank.need("full")));
    double mass = tank.need("mass") + solution + parts.mass().on();
    return new DeckOf(mass, foot ? DeckLoad.pressure(mass, TubOf.footArea(tank, taken)) : null);
  }
}
