package leat.command.feed;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat acid}: the water, the pH, the acid. */
final class AcidFlags {
  private static final Flag VOLUME =
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "the water; a full tank of the plan otherwise");
  private static final Flag ALKALINITY =
      Flag.of(
              "--alkalinity",
              "ALK",
              Kind.quantity(Dimension.ALKALINITY),
              "180 mg/L",
              "its alkalinity: mg/L as CaCO3, meq/L or dH of carbonate hardness")
          .sets("water.alkalinity");
  private static final Flag PH =
      Flag.of("--ph", "PH", Kind.NUMBER, "7.6", "its pH; water.ph of the plan otherwise");
  private static final Flag TO =
      Flag.of("--to", "PH", Kind.NUMBER, "5.8", "the pH wanted").sets("target.ph");
  private static final Flag ACID =
      Flag.of(
              "--acid",
              "NAME",
              Kind.TEXT,
              "nitric-60",
              "acid and strength in per cent by weight; citric is weighed")
          .sets("feed.acid.name");
  private static final Flag DENSITY =
      Flag.of(
          "--density",
          "DENSITY",
          Kind.quantity(Dimension.MASS_CONCENTRATION),
          "1.37 kg/L",
          "the acid's, from its label; a handbook's otherwise");
  private static final Flag TEMPERATURE =
      Flag.of(
              "--temperature",
              "TEMP",
              Kind.quantity(Dimension.TEMPERATURE),
              "20 C",
              "temperature of the water")
          .sets("water.temperature");

  private AcidFlags() {}

  static Flag[] all() {
    return new Flag[] {
      VOLUME, ALKALINITY, PH, TO, ACID, DENSITY, TEMPERATURE,
    };
  }
}
