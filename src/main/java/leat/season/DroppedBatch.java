package leat.season;

import java.time.LocalDate;

/**
 * A sowing that the crop's own limits leave out.
 *
 * @param sow when it would be sown
 * @param transplant when it would be transplanted
 * @param harvest when it would be cut
 * @param reason which limit
 */
public record DroppedBatch(LocalDate sow, LocalDate transplant, LocalDate harvest, Reason reason) {
  /** Which limit. */
  public enum Reason {
    /** Transplanted before the earliest transplant. */
    TOO_EARLY,
    /** Cut after the latest harvest. */
    TOO_LATE
  }
}
