package leat.season.ical;

import java.time.LocalDate;

/**
 * Something to do on a day, or on days in a row.
 *
 * @param uid the same for the same thing in every file, such as "sow-lettuce-2027-03-08@leat": a
 *     calendar that reads the file again moves the entry instead of doubling it
 * @param first its first day
 * @param days how many days, at least 1
 * @param summary one line
 * @param description more words, or empty
 */
public record Event(String uid, LocalDate first, int days, String summary, String description) {
  /**
   * @throws IllegalArgumentException without a uid, a summary or a day
   */
  public Event {
    if (uid.isEmpty() || summary.isEmpty() || days < 1) {
      throw new IllegalArgumentException("an event needs a uid, a summary and a day");
    }
  }

  /** On one day. */
  public static Event on(String uid, LocalDate day, String summary, String description) {
    return new Event(uid, day, 1, summary, description);
  }
}
