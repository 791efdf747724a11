package leat.system;

import java.time.LocalDate;
import java.util.List;
import leat.climate.OpenWater;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.plan.Value;
import leat.quantity.Units;
import leat.season.DayThirst;
import leat.season.Thirst;

/** The thirst of a plan: its factor, its open water, and one day of it. */
public final class ThirstOf {
  private ThirstOf() {}

  /** The doubt about the thirst: less of it once a log has measured it. */
  public static Thirst doubt(Plan plan) {
    return doubt(plan.root().value("thirst"));
  }

  static Thirst doubt(Value measured) {
    return measured.isKnown() ? Thirst.measured(measured.need()) : Thirst.GUESSED;
  }

  /** Uncovered wet surface of tank and towers together, m2. */
  public static double openM2(Plan plan, Taken taken) {
    Double own = plan.section("tank").maybe("open_area");
    if (own != null) {
      return own;
    }
    List<Section> towers = plan.root().sections("towers");
    int count = towers.isEmpty() ? 1 : 0;
    for (int i = 0; i < towers.size(); i++) {
      count += towers.get(i).countOr("count", 1);
    }
    taken.note("0.005 m2 of open water for each tower");
    return OpenWater.closedTowersM2(count);
  }

  /**
   * The thirst of a day.
   *
   * @param plan the plan
   * @param date the day
   * @param et0Mm its reference evapotranspiration, mm
   * @param taken notes the defaults that are taken
   */
  public static DayThirst day(Plan plan, LocalDate date, double et0Mm, Taken taken) {
    Thirst doubt = doubt(plan);
    List<Grown> crops = Grown.of(plan, taken);
    double exposure = SiteOf.exposure(plan, taken);
    double plants = 0;
    for (int i = 0; i < crops.size(); i++) {
      plants += crops.get(i).litres(date, new double[] {et0Mm}, exposure)[0];
    }
    if (crops.isEmpty()) {
      plants = Units.L_D.fromBase(plan.root().need("drinks"));
    }
    double open = OpenWater.litresDay(et0Mm, openM2(plan, taken), exposure);
    return new DayThirst(doubt.middle() * plants, doubt.middle() * open, doubt);
  }
}
