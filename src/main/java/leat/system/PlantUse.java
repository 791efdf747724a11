package leat.system;

import java.time.LocalDate;
import java.util.List;
import leat.plan.Plan;
import leat.plan.Section;
import leat.quantity.Units;

/**
 * What one plant of a plan drinks when it is thirstiest: its mean use over that day.
 *
 * @param crop its name
 * @param day the thirstiest day of the season; null when the plan's own figure is taken
 * @param perSecond mean use over the day, m3/s
 */
public record PlantUse(String crop, LocalDate day, double perSecond) {

  /**
   * The thirstiest plant on the thirstiest day of all years of a season, in a thirsty year: a rest
   * too long costs the plant, one too short a few starts.
   *
   * @return null when nobody says what grows, or nothing stands in the pots
   */
  public static PlantUse of(SeasonOf season) {
    double most = 0;
    PlantUse found = null;
    for (int y = 0; y < season.years().size(); y++) {
      for (Grown crop : season.crops()) {
        double[] litres = crop.litresOfOne(season.from(), season.et0(y).mm(), season.exposure());
        for (int t = 0; t < litres.length; t++) {
          if (litres[t] > most) {
            most = litres[t];
            double use = Units.L_D.toBase(most * season.thirst().high());
            found = new PlantUse(crop.name(), season.from().plusDays(t), use);
          }
        }
      }
    }
    return found;
  }

  /**
   * The largest {@code water} that the plan gives to a plant of a crop; null when it gives none.
   */
  public static PlantUse ofWater(Plan plan) {
    List<Section> crops = plan.root().sections("crops");
    PlantUse most = null;
    for (int i = 0; i < crops.size(); i++) {
      Double water = crops.get(i).maybe("water");
      if (water != null && (most == null || water > most.perSecond())) {
        most = new PlantUse((String) crops.get(i).needRaw("name"), null, water);
      }
    }
    return most;
  }
}
