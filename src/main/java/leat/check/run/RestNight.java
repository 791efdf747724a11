package leat.check.run;

import leat.energy.DryLimit;

/** Rests at night. */
final class RestNight extends RestRule {
  RestNight() {
    super(
        1,
        "night",
        DryLimit.USUAL_NIGHT_S,
        "rest-night",
        "Longest rest in force between 22:00 and 06:00, against dry_limit.night: plants need less water then, never none.");
  }
}
