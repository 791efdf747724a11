package leat.log;

import java.time.ZoneId;
import java.time.ZoneOffset;
import leat.level.CapSensor;
import leat.level.Limits;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.TaperedBox;

/**
 * A box in which 0.05 m are 10 L, and nine steps 10 L apart: 10, 30, ... 170 ohm from 0.05 m on,
 * with a hysteresis of 2 L. Cap: 1000 counts wet, 2000 dry, 45 min of dryness allowed; 1 m2 catches
 * rain.
 */
final class LogFixtures {
  static final long MINUTE = 60_000;
  static final long HOUR = 60 * MINUTE;
  static final long DAY = 24 * HOUR;

  /** 2027-06-01T00:00:00Z. */
  static final long JUNE = 1_811_808_000_000L;

  private LogFixtures() {}

  static Sender sender(boolean falls, double tolerance) {
    return sender(falls, tolerance, 0.09);
  }

  static Sender sender(boolean falls, double tolerance, double full) {
    double[] levels = new double[9];
    double[] ohms = new double[9];
    for (int i = 0; i < 9; i++) {
      levels[i] = 0.05 * (i + 1);
      ohms[i] = 10 + 20 * (falls ? 8 - i : i);
    }
    Staircase stairs = Staircase.bySteps(TaperedBox.box(0.5, 0.4, 0.5, 0), levels, ohms, 0.01);
    return new Sender(stairs, new Limits(1.5, tolerance, 0.4, 1000, 2), full);
  }

  static LogSystem system() {
    return system(ZoneOffset.UTC, Double.NaN);
  }

  static LogSystem system(ZoneId zone, double holdUp) {
    return system(zone, holdUp, 90);
  }

  static LogSystem system(ZoneId zone, double holdUp, double longestRunS) {
    return system(zone, holdUp, longestRunS, 1, 0.09);
  }

  /** Under a roof: no rain can fall in. */
  static LogSystem roofed() {
    return system(ZoneOffset.UTC, Double.NaN, 90, 0, 0.09);
  }

  static LogSystem system(
      ZoneId zone, double holdUp, double longestRunS, double rainArea, double full) {
    return new LogSystem(
        sender(false, 0.02, full),
        null,
        zone,
        0.02,
        0.011,
        Double.NaN,
        rainArea,
        new CapSensor(1000, 2000),
        2700,
        longestRunS,
        90,
        0.1,
        holdUp,
        1.2,
        2,
        LogSystem.DEFAULT_KEEPER_S);
  }

  /** The same with other runs: longest and mean, s, and their share of the day. */
  static LogSystem timed(double longestRunS, double meanRunS, double runShare) {
    LogSystem s = system();
    return new LogSystem(
        s.sender(),
        null,
        s.zone(),
        s.low(),
        s.intake(),
        s.rim(),
        s.rainArea(),
        s.cap(),
        s.dryLimitS(),
        longestRunS,
        meanRunS,
        runShare,
        s.holdUp(),
        s.ecLow(),
        s.ecHigh(),
        s.keeperS());
  }

  static LogRow row(long time) {
    LogRow row = new LogRow();
    row.time = time;
    row.step = StepReader.BLANK;
    row.rest = StepReader.BLANK;
    return row;
  }

  static DayBook days(Interval interval) {
    LocalClock clock = new LocalClock(ZoneOffset.UTC);
    return new DayBook(LogLimits.DEFAULT, clock, new Rhythm(clock, LogLimits.DEFAULT), interval);
  }

  /** Rows ten minutes apart. */
  static Interval tenMinutes() {
    Interval interval = new Interval();
    interval.add(10 * MINUTE);
    return interval;
  }
}
