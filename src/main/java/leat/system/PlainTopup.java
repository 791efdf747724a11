package leat.system;

import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.Units;
import leat.season.TankPlan;
import leat.solution.tank.Drift;
import leat.solution.tank.FeedParts;
import leat.solution.tank.Topup;
import leat.solution.tank.TopupAsk;

/** The top-up of a plan's tank that has drifted as usual since it was full at its target. */
public final class PlainTopup {
  private final double fullL;
  private final double targetMsCm;
  private final double waterMsCm;
  private final double uptakeMsCm;
  private final FeedParts parts;

  private PlainTopup(Plan plan, Taken taken) {
    Section season = plan.section("season");
    this.parts = ConcentrateOf.of(plan.section("feed"));
    this.targetMsCm = plan.section("target").need("ec");
    this.waterMsCm = plan.section("water").need("ec");
    this.fullL = Units.L.fromBase(SenderOf.fullVolume(plan, taken));
    Double own = season.maybe("uptake");
    if (own == null) {
      taken.note("plants take up salt at 0.75 of the target EC");
    }
    this.uptakeMsCm = own == null ? TankPlan.UPTAKE_SHARE * targetMsCm : own;
  }

  /** Refused with the key that is missing. */
  public static PlainTopup of(Plan plan, Taken taken) {
    return new PlainTopup(plan, taken);
  }

  /** The bottles. */
  public FeedParts parts() {
    return parts;
  }

  /**
   * What to drain and pour.
   *
   * @param volume what is left, m3, below full
   */
  public Topup.Answer at(double volume) {
    double left = Units.L.fromBase(volume);
    double ec = left > 0 ? Drift.ecMsCm(left, fullL, targetMsCm, uptakeMsCm) : 0;
    return Topup.solve(TopupAsk.dry(left, ec, fullL, targetMsCm, waterMsCm, parts.together()));
  }
}
