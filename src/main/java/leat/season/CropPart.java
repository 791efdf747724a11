package leat.season;

import java.util.List;
import leat.numeric.Impossible;

/**
 * One crop's part in the thirst.
 *
 * @param name its name
 * @param plants how many plants of it stand at once at most
 * @param partL what they would drink, L a day, a share of the season's plants
 */
public record CropPart(String name, int plants, double[] partL) {
  /**
   * @throws Impossible if there is no plant
   */
  public CropPart {
    if (plants < 1) {
      throw new Impossible("pots", "a crop needs a plant at least");
    }
  }

  /** Its sum over the season, L. */
  public double sumL() {
    double sum = 0;
    for (double litres : partL) {
      sum += litres;
    }
    return sum;
  }

  /** The one that drinks most over the season; null when there is none. */
  public static CropPart thirstiest(List<CropPart> crops) {
    CropPart most = null;
    for (CropPart one : crops) {
      most = most == null || one.sumL() > most.sumL() ? one : most;
    }
    return most;
  }
}
