package leat.command.run;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags that the commands of the pump's timing share. */
final class DutyFlags {
  static final Flag POWER =
      Flag.of(
              "--power",
              "POWER",
              Kind.quantity(Dimension.POWER),
              "22 W",
              "electrical power of the pump while it runs")
          .sets("pump.power");
  static final Flag RUN =
      Flag.of(
              "--run",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "90 s",
              "how long the pump runs; also --on")
          .alias("--on");
  static final Flag REST =
      Flag.of(
              "--rest",
              "TIME",
              Kind.quantity(Dimension.TIME),
              "12 min",
              "how long it rests; also --off")
          .alias("--off");
  static final Flag CONTROLLER =
      Flag.of(
              "--controller",
              "POWER",
              Kind.quantity(Dimension.POWER),
              "1.2 W",
              "draw of the controller, all the time")
          .sets("controller.power");
  static final Flag MAINS =
      Flag.of(
              "--mains",
              "VOLTAGE",
              Kind.quantity(Dimension.VOLTAGE),
              "230 V",
              "mains voltage the pump runs on")
          .sets("pump.supply.mains");
  static final Flag DC =
      Flag.of(
              "--dc",
              "VOLTAGE",
              Kind.quantity(Dimension.VOLTAGE),
              "12 V",
              "direct voltage the pump runs on")
          .sets("pump.supply.dc");
  static final Flag INRUSH =
      Flag.of(
              "--inrush",
              "N",
              Kind.NUMBER,
              "6",
              "current at the moment of starting, times the running current")
          .sets("controller.relay.inrush");

  private DutyFlags() {}
}
