package leat.climate;

import java.util.List;

/**
 * The years of a weather file that cover a season, and those left out.
 *
 * @param years the years that cover it, in order
 * @param leftOut the others, in order
 */
public record SeasonYears(List<SeasonWeather> years, List<LeftOutYear> leftOut) {
  /** The first year whose gap is an error, not a note: it lies inside the season; else null. */
  public LeftOutYear broken() {
    for (int i = 0; i < leftOut.size(); i++) {
      if (leftOut.get(i).inside()) {
        return leftOut.get(i);
      }
    }
    return null;
  }
}
