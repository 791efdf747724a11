package leat.log;

import leat.plan.Plan;
import leat.plan.Source;
import leat.plan.Taken;
import leat.system.LogOf;

/** What a log is read against, from the text of a plan. */
final class LogSystems {
  private LogSystems() {}

  static LogSystem of(String yaml, boolean counts) {
    return LogOf.of(Plan.Draft.of(Source.file("log.plan.yaml", yaml)).read(), counts, new Taken());
  }
}
