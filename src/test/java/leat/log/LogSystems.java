package leat.log;

import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Source;
import leat.plan.Taken;
import leat.system.LogOf;
import leat.system.TankOf;

/** What a log is read against, from the text of a plan. */
final class LogSystems {
  private LogSystems() {}

  static LogSystem of(String yaml, boolean counts) {
    return LogOf.of(plan(yaml), counts, new Taken());
  }

  static Tank tank(String yaml) {
    return TankOf.of(plan(yaml).section("tank"), new Taken());
  }

  private static Plan plan(String yaml) {
    return Plan.Draft.of(Source.file("log.plan.yaml", yaml)).read();
  }
}
