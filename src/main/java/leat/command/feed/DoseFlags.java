package leat.command.feed;

import static leat.command.feed.EcTyped.AT;
import static leat.command.feed.EcTyped.SCALE;
import static leat.command.feed.LabelRate.PARTS;
import static leat.command.feed.LabelRate.RATE_EC;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat dose}: the water, the EC or the label, the feed. */
final class DoseFlags {
  private static final Flag VOLUME =
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "water there; the plan's tank at full otherwise");
  private static final Flag FROM =
      Flag.of(
          "--from",
          "EC",
          Kind.TEXT,
          "0.3 mS/cm",
          "what the meter reads in it: EC, or ppm; the plan's water.ec otherwise");
  private static final Flag TO =
      Flag.of(
          "--to",
          "EC",
          Kind.TEXT,
          "1.6 mS/cm",
          "EC wanted, or ppm; target.ec of the plan otherwise");
  private static final Flag WATER_EC =
      Flag.of("--water-ec", "EC", Kind.TEXT, "0.3 mS/cm", EcTyped.WATER_EC_MEANING);
  private static final Flag LABEL =
      Flag.of(
          "--label",
          "SHARE",
          Kind.quantity(Dimension.SHARE),
          "50 %",
          "dose by the label instead: this share of its rate; tells the EC it makes");
  private static final Flag RATE =
      Flag.of(
          "--rate",
          "RATE",
          Kind.quantity(Dimension.VOLUME_RATIO),
          "5 mL/L",
          "label rate, all bottles together; with --each the rate of each bottle");
  private static final Flag EACH =
      Flag.on("--each", "the rate is that of each bottle: \"5 mL of each\"");
  private static final Flag STEP =
      Flag.of(
          "--step",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "5 mL",
          "mark of the measuring cup or syringe: each bottle to its nearest mark");

  private DoseFlags() {}

  static Flag[] all() {
    return new Flag[] {
      VOLUME, FROM, AT, SCALE,
      TO, WATER_EC, LABEL, RATE,
      RATE_EC, PARTS, EACH, STEP,
    };
  }
}
