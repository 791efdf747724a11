package leat.command.feed;

import leat.cli.Flag;
import leat.plan.ConcentrationKind;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat clean}: the sanitiser, its strength, the volume. */
final class CleanFlags {
  private static final String HYPOCHLORITE = "hypochlorite";
  private static final Flag VOLUME =
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "25 L",
          "water and sanitiser together; the plan's tank at its full mark otherwise");
  private static final Flag WITH =
      Flag.of(
          "--with",
          "AGENT",
          Kind.choice(HYPOCHLORITE, "peroxide", "bleach"),
          HYPOCHLORITE,
          "sanitiser: hypochlorite (bleach is the same) or peroxide; clean.with of the plan otherwise");
  private static final Flag STRENGTH =
      Flag.of(
              "--strength",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "2.5 %",
              "strength on the bottle's label")
          .sets("clean.strength");
  private static final Flag BASIS =
      Flag.of(
          "--basis",
          "COUNTS",
          Kind.choice("volume", "weight", "hypochlorite-volume", "hypochlorite-weight"),
          "weight",
          "what the label's per cent counts: volume, grams of chlorine or peroxide in 100 mL; weight, in 100 g;"
              + " hypochlorite-volume and hypochlorite-weight, grams of sodium hypochlorite");
  private static final Flag DENSITY =
      Flag.of(
          "--density",
          "DENSITY",
          Kind.quantity(Dimension.MASS_CONCENTRATION),
          "1.08 kg/L",
          "the bottle's density, for labels by weight");
  private static final Flag AIM =
      Flag.of(
              "--aim",
              "STRENGTH",
              ConcentrationKind.STRENGTH,
              "200 mg/L",
              "strength wanted in the loop, or per cent: 0.3 % is 3 g/L")
          .sets("clean.aim");
  private static final Flag CONTACT =
      Flag.of("--contact", "TIME", Kind.quantity(Dimension.TIME), "30 min", "how long it runs")
          .sets("clean.contact");

  private CleanFlags() {}

  static Flag[] all() {
    return new Flag[] {
      VOLUME, WITH, STRENGTH, BASIS, DENSITY, AIM, CONTACT,
    };
  }
}
