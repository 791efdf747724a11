package leat.check.run;

import leat.energy.DryLimit;

/** Rests by day. */
final class RestDay extends RestRule {
  RestDay() {
    super(
        0,
        "day",
        DryLimit.USUAL_DAY_S,
        "rest-day",
        "Longest rest in force between 06:00 and 22:00, against dry_limit.day: a falling film leaves roots little water.");
  }
}
