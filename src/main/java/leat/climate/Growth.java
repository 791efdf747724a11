package leat.climate;

/** How much of a full-grown plant's thirst a plant has on a day. */
public interface Growth {
  /**
   * Share of the full plant's thirst.
   *
   * @param day days since transplanting, 0 on that day
   * @return 0 before, then 0 to 1
   */
  double share(int day);
}
