package leat.log;

import java.util.List;

/** Causes that only two events together show. */
final class Causes {
  /** A cap that fell dry so near a leak tells of a hose that came off, ms. Common practice. */
  private static final long NEAR = 2 * 3_600_000;

  private Causes() {}

  static void name(List<LogEvent> events) {
    for (int i = 0; i < events.size(); i++) {
      LogEvent leak = events.get(i);
      if (leak.kind() != EventKind.LEAK) {
        continue;
      }
      for (int k = Math.max(0, i - 8); k < events.size() && k < i + 8; k++) {
        LogEvent dry = events.get(k);
        if (dry.kind() == EventKind.PUMP_FAILURE
            && dry.start() >= leak.start() - NEAR
            && dry.start() <= leak.end() + NEAR
            && leak.cause().isEmpty()) {
          leak.cause = LogEvent.HOSE_OFF;
          dry.cause = dry.cause.equals(LogEvent.PUMP_DREW_AIR) ? dry.cause : LogEvent.HOSE_OFF;
        }
      }
    }
  }
}
