package leat.command.run;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags that the commands of the pump's timing share. */
final class DutyFlags {
  private DutyFlags() {}

  static final Kind POWER = Kind.quantity(Dimension.POWER);
  static final Kind TIME = Kind.quantity(Dimension.TIME);
  static final Kind VOLTAGE = Kind.quantity(Dimension.VOLTAGE);
  static final Kind SHARE = Kind.quantity(Dimension.SHARE);

  static Flag power() {
    return Flag.of("--power", "POWER", POWER, "22 W", "electrical power of the pump while it runs")
        .sets("pump.power");
  }

  static Flag run() {
    return Flag.of("--run", "TIME", TIME, "90 s", "how long the pump runs; also --on")
        .alias("--on");
  }

  static Flag rest() {
    return Flag.of("--rest", "TIME", TIME, "12 min", "how long it rests; also --off")
        .alias("--off");
  }

  static Flag controller() {
    return Flag.of("--controller", "POWER", POWER, "1.2 W", "draw of the controller, all the time")
        .sets("controller.power");
  }

  static Flag mains() {
    return Flag.of("--mains", "VOLTAGE", VOLTAGE, "230 V", "mains voltage the pump runs on")
        .sets("pump.supply.mains");
  }

  static Flag dc() {
    return Flag.of("--dc", "VOLTAGE", VOLTAGE, "12 V", "direct voltage the pump runs on")
        .sets("pump.supply.dc");
  }

  static Flag inrush() {
    return Flag.of(
            "--inrush",
            "N",
            Kind.NUMBER,
            "6",
            "current at the moment of starting, times the running current")
        .sets("controller.relay.inrush");
  }
}
