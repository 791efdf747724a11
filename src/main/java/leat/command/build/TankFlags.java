package leat.command.build;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** Flags of {@code leat tank}. */
final class TankFlags {
  private static final Kind LENGTH = Kind.quantity(Dimension.LENGTH);

  private static final Flag[] FLAGS = {
    Flag.of("--level", "LENGTH", LENGTH, "200 mm", "level over the inside of the floor")
        .repeatable(),
    Flag.of(
            "--volume",
            "VOLUME",
            Kind.quantity(Dimension.VOLUME),
            "20 L",
            "litres whose level is asked")
        .repeatable(),
    Flag.of("--every", "STEP", LENGTH, "10 mm", "dipstick table, a row every so many millimetres"),
    Flag.of(
        "--thirst",
        "FLOW",
        Kind.quantity(Dimension.FLOW),
        "8 L/d",
        "what the plants drink: the size that is needed; drinks or the crops of the plan otherwise"),
    Flag.of("--days", "N", Kind.DAYS, "7", "days it must last from full to the refill mark"),
    Flag.of(
            "--shape",
            "SHAPE",
            Kind.choice(
                "box",
                "tapered-box",
                "cylinder",
                "cone",
                "lying-cylinder",
                "sloping-floor",
                "sections",
                "table"),
            "tapered-box",
            "shape of the inside")
        .sets("tank.shape"),
    Flag.of("--top", "SIZE", Kind.SIZE, "540 mm x 360 mm", "inside at the rim").sets("tank.top"),
    Flag.of("--bottom", "SIZE", Kind.SIZE, "480 mm x 300 mm", "inside at the floor")
        .sets("tank.bottom"),
    Flag.of("--diameter", "LENGTH", LENGTH, "450 mm", "inside diameter of a cylinder")
        .sets("tank.diameter"),
    Flag.of("--length", "LENGTH", LENGTH, "800 mm", "inside length of a lying cylinder")
        .sets("tank.length"),
    Flag.of("--height", "LENGTH", LENGTH, "330 mm", "inside height").sets("tank.height"),
    Flag.of("--corner", "LENGTH", LENGTH, "40 mm", "radius of the upright corners")
        .sets("tank.corner"),
    Flag.of("--corner-top", "LENGTH", LENGTH, "60 mm", "radius of the corners at the rim")
        .sets("tank.corner_top"),
    Flag.of(
            "--floor-rise",
            "LENGTH",
            LENGTH,
            "40 mm",
            "how far a sloping floor rises to its far end")
        .sets("tank.floor_rise"),
    Flag.of("--floor-flat", "LENGTH", LENGTH, "150 mm", "flat stretch at the deep end of it")
        .sets("tank.floor_flat"),
    Flag.of("--surface", "ROW", Kind.AREA_AT, "0 mm = 1440 cm2", "surface of the water at a level")
        .sets("tank.sections")
        .repeatable(),
    Flag.of("--table", "ROW", Kind.STRAP, "100 mm = 12.4 L", "a row of a strapping table")
        .sets("tank.table")
        .repeatable(),
    Flag.of(
        "--dipstick",
        "FILE",
        Kind.TEXT,
        "dipstick.csv",
        "levels and litres as --every prints them, instead of the shape; - is standard input"),
    Flag.of(
            "--drain-bore",
            "LENGTH",
            LENGTH,
            "19 mm",
            "inside diameter of the drain: how long it takes to empty")
        .sets("tank.drain.bore"),
    Flag.of("--drain-height", "LENGTH", LENGTH, "12 mm", "level of the drain's centre")
        .sets("tank.drain.height"),
    Flag.of("--full", "LENGTH", LENGTH, "280 mm", "level when full").sets("tank.full"),
    Flag.of("--low", "LENGTH", LENGTH, "80 mm", "refill mark").sets("tank.low"),
  };

  private TankFlags() {}

  static Flag[] all() {
    return FLAGS;
  }
}
