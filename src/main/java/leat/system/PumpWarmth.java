package leat.system;

import leat.climate.TankWarmth;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;

/**
 * Bounds of the warmth that the pump brings into the full tank.
 *
 * @param mostK rise of a day when nothing is lost, K
 * @param steadyK rise over the air after a long time, K
 */
public record PumpWarmth(double mostK, double steadyK) {
  private static final double DAY_S = 86_400;

  /** Of a plan whose pump draws so much in the mean, W. */
  static PumpWarmth of(Plan plan, double meanW, Taken taken) {
    Section tank = plan.section("tank");
    Tank shape = TankOf.of(tank, taken);
    double full = tank.need("full");
    double outside = TankWarmth.outsideM2(shape.area(full), full);
    return new PumpWarmth(
        TankWarmth.riseMostK(meanW, DAY_S, shape.volume(full)),
        TankWarmth.riseSteadyK(meanW, TankWarmth.lossWPerK(outside)));
  }
}
