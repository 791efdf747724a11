package leat.log;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/**
 * Local time of a zone without an object a row: the offset in force is kept until the next
 * transition, the rules are asked only near one.
 */
final class LocalClock {
  static final long DAY_S = 86_400;

  private final ZoneRules rules;

  /** Unix seconds between which {@link #offset} holds. */
  private long from = 1;

  private long to;

  /** Local seconds between which it is the only one. */
  private long plainFrom;

  private long plainTo;
  private int offset;

  LocalClock(ZoneId zone) {
    this.rules = zone.getRules();
  }

  /** Local seconds (Unix seconds plus the offset) of Unix seconds. */
  long local(long utc) {
    if (utc < from || utc >= to) {
      move(utc);
    }
    return utc + offset;
  }

  /** Local date of a moment, days since 1970. */
  long day(long millis) {
    return Math.floorDiv(local(Math.floorDiv(millis, 1000L)), DAY_S);
  }

  /** First moment of a local date, ms of Unix time. */
  long startOf(long day) {
    long midnight = day * DAY_S;
    return 1000 * (midnight - before(midnight));
  }

  /** Whether a local time occurs once and its offset is the one kept. */
  boolean isPlain(long localSecond) {
    if (localSecond >= plainFrom && localSecond < plainTo) {
      return true;
    }
    move(localSecond - offset);
    return localSecond >= plainFrom && localSecond < plainTo;
  }

  /** The offset kept, s. */
  int offset() {
    return offset;
  }

  /** Transition whose overlap or gap holds a local time; null elsewhere. */
  ZoneOffsetTransition transition(long localSecond) {
    return rules.getTransition(LocalDateTime.ofEpochSecond(localSecond, 0, ZoneOffset.UTC));
  }

  /** Offset of a local time: the first of two, or the one before a missing hour. */
  int before(long localSecond) {
    if (isPlain(localSecond)) {
      return offset;
    }
    ZoneOffsetTransition change = transition(localSecond);
    return change == null
        ? rules
            .getOffset(LocalDateTime.ofEpochSecond(localSecond, 0, ZoneOffset.UTC))
            .getTotalSeconds()
        : change.getOffsetBefore().getTotalSeconds();
  }

  private void move(long utc) {
    Instant at = Instant.ofEpochSecond(utc);
    offset = rules.getOffset(at).getTotalSeconds();
    ZoneOffsetTransition last = rules.previousTransition(at.plusSeconds(1));
    ZoneOffsetTransition next = rules.nextTransition(at);
    from = last == null ? Long.MIN_VALUE / 2 : last.toEpochSecond();
    to = next == null ? Long.MAX_VALUE / 2 : next.toEpochSecond();
    int earlier = last == null ? offset : last.getOffsetBefore().getTotalSeconds();
    int later = next == null ? offset : next.getOffsetAfter().getTotalSeconds();
    plainFrom = from + Math.max(offset, earlier);
    plainTo = to + Math.min(offset, later);
  }
}
