package leat.paper;

/**
 * A mark of a strip.
 *
 * @param mm height over the tank's floor, mm
 * @param words what stands beside it
 * @param kind which side and how long it is drawn
 */
public record StripMark(double mm, String words, Kind kind) {
  /** Where a mark stands. */
  public enum Kind {
    /** Volume, on the left. */
    VOLUME("volume"),
    /** Height, on the right. */
    LEVEL("level"),
    /** A short tick without words, on the right. */
    TICK("tick"),
    /** Right across, such as full. */
    ACROSS("across");

    private final String word;

    Kind(String word) {
      this.word = word;
    }
  }
}
