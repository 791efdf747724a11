package leat.log;

import java.time.ZoneId;
import java.util.List;
import leat.level.Tank;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Source;
import leat.system.SenderOf;
import leat.system.TankOf;

/** What a log is read against, from the text of a plan. */
final class LogSystems {
  private LogSystems() {}

  static LogSystem of(String yaml, boolean counts) {
    Plan plan = Plan.Draft.of(Source.file("log.plan.yaml", yaml)).read();
    Section tank = plan.section("tank");
    Section sender = plan.section("sender");
    Section cap = plan.section("cap_sensor");
    Tank shape = TankOf.of(tank);
    Section root = plan.root();
    double run = 0;
    List<Section> timing = root.sections("timing");
    for (Section one : timing) {
      run = Math.max(run, one.need("run"));
    }
    return new LogSystem(
        SenderOf.of(plan),
        counts ? SenderOf.divider(sender) : null,
        ZoneId.of(plan.section("site").text("time_zone")),
        shape.volume(tank.need("low")),
        shape.volume(tank.need("intake")),
        shape.volume(tank.need("rim_overflow")),
        tank.need("rain_area"),
        cap.count("wet"),
        cap.count("dry"),
        plan.section("dry_limit").need("alarm"),
        run,
        root.need("hold_up"),
        Double.NaN,
        Double.NaN,
        LogSystem.DEFAULT_KEEPER_S);
  }
}
