package leat.command.build;

import leat.cli.Flag;
import leat.hydraulics.Bores;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** Flags of {@code leat pump}. */
final class PumpFlags {
  private static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  private static final Flag[] FLAGS = {
    Flag.of(
            "--shutoff-head",
            "HEAD",
            Kind.quantity(Dimension.HEAD),
            "2.4 m",
            "printed greatest head, at no flow")
        .sets("pump.shutoff_head"),
    Flag.of(
            "--max-flow",
            "FLOW",
            Kind.quantity(Dimension.FLOW),
            "1000 L/h",
            "printed greatest flow, at no head")
        .sets("pump.max_flow"),
    Flag.of(
            "--point",
            "POINT",
            Kind.POINT,
            "600 L/h @ 1.7 m",
            "a point of the printed curve, from no flow on")
        .sets("pump.curve")
        .repeatable(),
    Flag.of(
            "--derate",
            "SHARE",
            Kind.quantity(Dimension.SHARE),
            "80 %",
            "share of the printed head that is left")
        .sets("pump.derate"),
    Flag.of(
            "--speed",
            "SHARE",
            Kind.quantity(Dimension.SHARE),
            "83 %",
            "speed against the printed one")
        .sets("pump.speed"),
    Flag.of(
            "--power",
            "POWER",
            Kind.quantity(Dimension.POWER),
            "22 W",
            "electrical power of the pump while it runs")
        .sets("pump.power"),
    Flag.of(
        "--lift",
        "HEIGHT",
        LENGTH,
        "1.7 m",
        "height of the outlet over the water, at its lowest working level"),
    Flag.of("--level", "LENGTH", LENGTH, "200 mm", "one level of the tank instead of low and full"),
    Flag.of("--bore", "LENGTH", LENGTH, "12 mm", PipeWords.BORE).sets("towers[*].riser.bore"),
    Flag.of("--length", "LENGTH", LENGTH, "1.9 m", PipeWords.LENGTH).sets("towers[*].riser.length"),
    Flag.of("--roughness", "LENGTH", LENGTH, "0.0015 mm", PipeWords.ROUGHNESS)
        .sets("towers[*].riser.roughness"),
    Flag.of("--ridges", "LENGTH", LENGTH, "4 mm", PipeWords.RIDGES).sets("towers[*].riser.ridges"),
    Flag.of("--k", "K", Kind.NUMBER, "2.5", PipeWords.K).sets("towers[*].riser.k"),
    Flag.of(
        "--temperature",
        "TEMP",
        Kind.quantity(Dimension.TEMPERATURE),
        "20 C",
        "temperature of the water"),
    Flag.of(
            "--check-valve",
            "YES",
            Kind.YES_NO,
            "true",
            "whether a check valve keeps the riser full")
        .sets("pump.check_valve"),
    Flag.of(
        "--throttle-to",
        "FLOW",
        Kind.quantity(Dimension.FLOW),
        "4 L/min",
        "flow that a valve in the riser should leave"),
    Flag.of(
        "--measured",
        "FLOW",
        Kind.MEASURED,
        "10 L in 65 s",
        "flow caught in a bucket, all towers together, @ LEVEL for the tank's level then: finds the derate"),
    Flag.of(
        "--balance",
        "HOW",
        Kind.choice("wanted", "equal"),
        "wanted",
        "sets the towers' valves: each at its wanted flow, or all equal and as much as possible"),
    Flag.of(
            "--jug",
            "VOLUME",
            Kind.quantity(Dimension.VOLUME),
            "1 L",
            "with --balance: the jug that is held under an outlet")
        .belongsTo("--balance"),
    Flag.of(
            "--at",
            "MARK",
            Kind.choice("low", "full"),
            "low",
            "with --balance: how full the tank is while the valves are set")
        .belongsTo("--balance"),
    Flag.on("--needed", "the least head and flow on the box of a pump that would do"),
    Flag.on("--bores", PipeWords.BORES),
    Flag.of(
            "--family",
            "KIND",
            Kind.choice(Bores.families()),
            "hose",
            "with --bores: kind of tube; otherwise the kind of the present one")
        .belongsTo("--bores"),
    Flag.of(
            "--tower",
            "NAME",
            Kind.TEXT,
            "north",
            "with --bores: the tower whose riser changes; the first otherwise")
        .belongsTo("--bores"),
  };

  private PumpFlags() {}

  static Flag[] all() {
    return FLAGS;
  }
}
