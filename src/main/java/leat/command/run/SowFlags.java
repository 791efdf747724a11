package leat.command.run;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat sow}: the crop, its days, its place. */
final class SowFlags {
  private static final Kind SHARE = Kind.quantity(Dimension.SHARE);
  private static final Flag POTS = Flag.of("--pots", "N", Kind.COUNT, "24", "pots of the crop");
  private static final Flag FIRST =
      Flag.of("--first", "DATE", Kind.DATE, "2027-03-01", "first sowing");
  private static final Flag NURSERY =
      Flag.of("--nursery", "DAYS", Kind.DAYS, "21 d", "sowing to planting, whole days");
  private static final Flag GROWING =
      Flag.of("--growing", "DAYS", Kind.DAYS, "35 d", "planting to harvest, whole days");
  private static final Flag EVERY =
      Flag.of("--every", "DAYS", Kind.DAYS, "7 d", "days between sowings; one sowing without it");
  private static final Flag UNTIL =
      Flag.of("--until", "DATE", Kind.DATE, "2027-09-20", "last day on which is sown");
  private static final Flag GERMINATION =
      Flag.of("--germination", "SHARE", SHARE, "85 %", "seeds that come up");
  private static final Flag LOSS = Flag.of("--loss", "SHARE", SHARE, "10 %", "plants lost after");
  private static final Flag TURNAROUND =
      Flag.of(
          "--turnaround", "DAYS", Kind.DAYS, "1 d", "days from harvest until the pot is planted");
  private static final Flag SIZES =
      Flag.of(
          "--sizes",
          "HOW",
          Kind.choice("spread", "equal"),
          "spread",
          "how pots are shared between batches: spread over all, or equal batches");
  private static final Flag EARLIEST_TRANSPLANT =
      Flag.of(
          "--earliest-transplant",
          "DATE",
          Kind.DATE,
          "2027-04-10",
          "no batch is planted before this day");
  private static final Flag LATEST_HARVEST =
      Flag.of(
          "--latest-harvest",
          "DATE",
          Kind.DATE,
          "2027-10-15",
          "no batch is harvested after this day");

  private SowFlags() {}

  static Flag[] all() {
    return new Flag[] {
      POTS, FIRST, NURSERY, GROWING,
      EVERY, UNTIL, GERMINATION, LOSS,
      TURNAROUND, SIZES, EARLIEST_TRANSPLANT, LATEST_HARVEST,
    };
  }
}
