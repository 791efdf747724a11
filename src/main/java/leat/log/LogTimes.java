package leat.log;

import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;

/**
 * Times of a log, read in the order of the file: with an offset or Z, local without one, Unix
 * seconds or milliseconds. No object a row.
 *
 * <p>A local time that occurs twice is the first until a row steps back, then the second until the
 * overlap is left. One that does not occur takes the offset before the change. 23:59:60 is the
 * second that follows.
 *
 * <p>Source: sheet log.md section 1; check values log-times.csv.
 */
public final class LogTimes {
  /** What became of a text. */
  public enum Status {
    /** A moment. */
    OK(true),
    /** A local time read as the second of two. */
    SECOND(true),
    /** A local time that does not exist, read with the offset before the change. */
    MISSING_HOUR(true),
    /** Before 2000: the logger's clock was not set. */
    CLOCK_NOT_SET(false),
    /** The header again: the logger restarted. */
    HEADER_AGAIN(false),
    /** A date of another order or with other signs, such as 04/06/2027: refuse it. */
    OTHER_FORMAT(false),
    /** No time at all. */
    BAD(false);

    private final boolean time;

    Status(boolean time) {
      this.time = time;
    }

    /** Whether {@link LogTimes#millis()} holds a moment. */
    public boolean isTime() {
      return time;
    }
  }

  /** 2000-01-01T00:00:00Z, s: an earlier time is a clock that was not set. Common practice. */
  static final long YEAR_2000 = 946_684_800L;

  /** A bare number from here on is milliseconds, below it seconds (of the year 5138). */
  private static final double LEAST_MILLIS = 1e11;

  private static final double MOST_MILLIS = 1e14;
  private static final long NO_OFFSET = Long.MIN_VALUE;

  private final LocalClock clock;
  private final String header;
  private byte[] text;
  private int at;
  private int end;
  private long millis;
  private boolean local;
  private long offset;

  private ZoneOffsetTransition overlap;
  private long lastLocal;
  private boolean second;
  private byte[] own = new byte[64];

  /**
   * @param zone where local times without an offset belong
   * @param header name of the time column, to know a header that comes again
   */
  public LogTimes(ZoneId zone, String header) {
    this.clock = new LocalClock(zone);
    this.header = header;
  }

  /** The moment last read, ms of Unix time. */
  public long millis() {
    return millis;
  }

  /** Whether it had neither offset nor Z. */
  public boolean isLocal() {
    return local;
  }

  /** Whether it had an offset other than that of the zone then; Z says nothing of the place. */
  public boolean isOfOtherZone() {
    return !local
        && offset != 0
        && clock.local(Math.floorDiv(millis, 1000L)) != millis / 1000 + offset;
  }

  /** Reads a text; for tests and short lists, bytes are faster. */
  public Status read(String s) {
    if (s.length() > own.length) {
      return Status.BAD;
    }
    for (int i = 0; i < s.length(); i++) {
      own[i] = (byte) Math.min(s.charAt(i), 127);
    }
    return read(own, 0, s.length());
  }

  /**
   * Reads a time.
   *
   * @param bytes text in ASCII or UTF-8
   * @param from first byte
   * @param to after the last byte
   */
  public Status read(byte[] bytes, int from, int to) {
    text = bytes;
    at = from;
    end = to;
    local = false;
    offset = 0;
    while (at < end && blank(text[at])) {
      at++;
    }
    while (end > at && blank(text[end - 1])) {
      end--;
    }
    if (at == end) {
      return Status.BAD;
    }
    if (end - at >= 16 && text[at + 4] == '-') {
      return iso();
    }
    return isNumber() ? number() : other();
  }

  private static boolean blank(byte b) {
    return b == ' ' || b == '\t' || b == '"' || b == '\r';
  }

  private Status other() {
    int digits = 0;
    int signs = 0;
    boolean same = end - at == header.length();
    for (int i = at; i < end; i++) {
      int c = text[i];
      digits += c >= '0' && c <= '9' ? 1 : 0;
      signs += c == '/' || c == '.' || c == '-' ? 1 : 0;
      same = same && Character.toLowerCase(c) == Character.toLowerCase(header.charAt(i - at));
    }
    if (same) {
      return Status.HEADER_AGAIN;
    }
    boolean yearFirst = end - at > 4 && text[at + 4] == '-';
    return digits >= 4 && signs >= 2 && !yearFirst ? Status.OTHER_FORMAT : Status.BAD;
  }

  private boolean isNumber() {
    int points = 0;
    int i = text[at] == '-' ? at + 1 : at;
    for (int k = i; k < end; k++) {
      if (text[k] == '.') {
        points++;
      } else if (text[k] < '0' || text[k] > '9') {
        return false;
      }
    }
    return points <= 1 && end - i > points && end - i <= 24;
  }

  private Status number() {
    boolean minus = text[at] == '-';
    double value = 0;
    double scale = 0;
    for (int i = minus ? at + 1 : at; i < end; i++) {
      if (text[i] == '.') {
        scale = 1;
      } else {
        value = value * 10 + (text[i] - '0');
        scale *= 10;
      }
    }
    value = scale > 1 ? value / scale : value;
    double ms = value >= LEAST_MILLIS ? value : value * 1000;
    if (ms > MOST_MILLIS) {
      return Status.BAD;
    }
    return set(Math.round(minus ? -ms : ms), Status.OK);
  }

  private Status set(long ms, Status status) {
    millis = ms;
    return ms < YEAR_2000 * 1000 ? Status.CLOCK_NOT_SET : status;
  }

  /** A number of so many digits; -1 when it is not one. */
  private int digits(int from, int count) {
    int value = 0;
    if (from + count > end) {
      return -1;
    }
    for (int i = from; i < from + count; i++) {
      int d = text[i] - '0';
      if (d < 0 || d > 9) {
        return -1;
      }
      value = value * 10 + d;
    }
    return value;
  }

  private Status iso() {
    int year = digits(at, 4);
    int month = digits(at + 5, 2);
    int day = digits(at + 8, 2);
    int hour = digits(at + 11, 2);
    int minute = digits(at + 14, 2);
    byte t = text[at + 10];
    if (year < 0 || text[at + 7] != '-' || t != 'T' && t != 't' && t != ' ') {
      return Status.BAD;
    }
    if (text[at + 13] != ':' || !date(year, month, day) || hour < 0 || hour > 23) {
      return Status.BAD;
    }
    int next = at + 16;
    int seconds = 0;
    if (next < end && text[next] == ':') {
      seconds = digits(next + 1, 2);
      next += 3;
    }
    if (minute < 0 || minute > 59 || seconds < 0 || seconds > 60) {
      return Status.BAD;
    }
    long wall = daysFrom1970(year, month, day) * LocalClock.DAY_S + hour * 3600L + minute * 60L;
    return zoned(wall + seconds, next);
  }

  private Status zoned(long wall, int from) {
    int next = from;
    int fraction = 0;
    if (next < end && (text[next] == '.' || text[next] == ',')) {
      int weight = 100;
      next++;
      int first = next;
      while (next < end && text[next] >= '0' && text[next] <= '9') {
        fraction += weight * (text[next++] - '0');
        weight /= 10;
      }
      if (next == first) {
        return Status.BAD;
      }
    }
    while (next < end && text[next] == ' ') {
      next++;
    }
    if (next == end) {
      local = true;
      return wall(wall, fraction);
    }
    offset = offset(next);
    return offset == NO_OFFSET ? Status.BAD : set((wall - offset) * 1000 + fraction, Status.OK);
  }

  /** Z, UTC, +hh, +hhmm, +hh:mm: in s; {@link #NO_OFFSET} for anything else. */
  private long offset(int from) {
    int left = end - from;
    byte sign = text[from];
    if (left == 1 && (sign == 'Z' || sign == 'z')) {
      return 0;
    }
    if (left == 3 && sign == 'U' && text[from + 1] == 'T' && text[from + 2] == 'C') {
      return 0;
    }
    if (sign != '+' && sign != '-' || left != 3 && left != 5 && left != 6) {
      return NO_OFFSET;
    }
    int hours = digits(from + 1, 2);
    int minutes = left == 3 ? 0 : digits(end - 2, 2);
    if (hours < 0 || hours > 18 || minutes < 0 || minutes > 59) {
      return NO_OFFSET;
    }
    if (left == 6 && text[from + 3] != ':') {
      return NO_OFFSET;
    }
    long seconds = hours * 3600L + minutes * 60L;
    return sign == '-' ? -seconds : seconds;
  }

  private Status wall(long seconds, int fraction) {
    if (clock.isPlain(seconds)) {
      overlap = null;
      second = false;
      return set((seconds - clock.offset()) * 1000 + fraction, Status.OK);
    }
    ZoneOffsetTransition change = clock.transition(seconds);
    if (change == null) {
      overlap = null;
      second = false;
      return set((seconds - clock.before(seconds)) * 1000 + fraction, Status.OK);
    }
    long before = change.getOffsetBefore().getTotalSeconds();
    if (change.isGap()) {
      return set((seconds - before) * 1000 + fraction, Status.MISSING_HOUR);
    }
    boolean known = overlap != null && overlap.toEpochSecond() == change.toEpochSecond();
    second = known && (second || seconds < lastLocal);
    overlap = change;
    lastLocal = seconds;
    long offset = second ? change.getOffsetAfter().getTotalSeconds() : before;
    return set((seconds - offset) * 1000 + fraction, second ? Status.SECOND : Status.OK);
  }

  private static boolean date(int year, int month, int day) {
    if (month < 1 || month > 12 || day < 1 || day > 31) {
      return false;
    }
    boolean shorter = month == 4 || month == 6 || month == 9 || month == 11;
    boolean leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    return day <= (month == 2 ? leap ? 29 : 28 : shorter ? 30 : 31);
  }

  /** Days since 1970-01-01 of the Gregorian calendar, counted from March. */
  static long daysFrom1970(int year, int month, int day) {
    long y = month <= 2 ? year - 1L : year;
    long era = Math.floorDiv(y, 400L);
    long ofEra = y - era * 400;
    long ofYear = (153L * (month > 2 ? month - 3 : month + 9) + 2) / 5 + day - 1;
    return era * 146_097 + ofEra * 365 + ofEra / 4 - ofEra / 100 + ofYear - 719_468;
  }
}
