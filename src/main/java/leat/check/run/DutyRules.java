package leat.check.run;

import leat.check.Rule;

/** The rules of running: timing, relay, money, battery and cable. */
public final class DutyRules {
  private DutyRules() {}

  /** In the order they are shown. */
  public static Rule[] all() {
    return new Rule[] {
      new RunCovers(),
      new RestDay(),
      new RestNight(),
      new StartsPerHour(),
      new RelayLasts(),
      new CostSeason(),
      new BackupHours(),
      new CableDrop()
    };
  }
}
