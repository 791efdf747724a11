package leat.command.feed;

import leat.cli.Flag;
import leat.plan.Kind;
import leat.quantity.Dimension;

/** The flags of {@code leat dose salts}: what is asked, weighed or poured. */
final class DoseSaltsFlags {
  private static final Flag VOLUME =
      Flag.of(
          "--volume",
          "VOLUME",
          Kind.quantity(Dimension.VOLUME),
          "45 L",
          "finished solution; the plan's tank at full otherwise");
  private static final Flag ASK =
      Flag.of(
              "--ask",
              "ELEMENT=MG_L",
              Kind.TEXT,
              "N=150",
              "an element wanted, in mg/L, mmol/L or meq/L; N-NO3 and N-NH4 apart; oxides such as K2O in mg/L")
          .repeatable();
  private static final Flag SALT =
      Flag.of(
              "--salt",
              "NAME",
              Kind.TEXT,
              "potassium-nitrate",
              "a salt that may be weighed; feed.salts of the plan otherwise")
          .repeatable();
  private static final Flag WEIGHED =
      Flag.of(
              "--weighed",
              "SALT=GRAMS",
              Kind.TEXT,
              "potassium-nitrate=21 g",
              DoseSaltsCommand.WEIGHED_MEANING)
          .repeatable();
  private static final Flag WITHIN =
      Flag.of(
              "--within",
              "SHARE",
              Kind.quantity(Dimension.SHARE),
              "5 %",
              "exit code 1 when an asked element is missed by more")
          .belongsTo("--ask");
  private static final Flag SCALE_STEP =
      Flag.of(
          "--scale-step",
          "STEP",
          Kind.quantity(Dimension.MASS),
          "0.1 g",
          "smallest step of the scale: every salt to its nearest step");
  private static final Flag FEED =
      Flag.of(
              "--feed",
              "FIGURES",
              Kind.TEXT,
              "4-2-6",
              "a liquid feed by the figures of its label: N-P-K as printed (P2O5 and K2O), or MgO=1 for another figure; the labels of feed.parts of the plan otherwise")
          .repeatable();
  private static final Flag RATE =
      Flag.of(
              "--rate",
              "RATE",
              Kind.quantity(Dimension.VOLUME_RATIO),
              "5 mL/L",
              "dose of the liquid feed, with --feed")
          .belongsTo("--feed");
  private static final Flag DENSITY =
      Flag.of(
              "--density",
              "DENSITY",
              Kind.quantity(Dimension.MASS_CONCENTRATION),
              "1.18 g/mL",
              "its density, when the label's per cent are by weight; by volume otherwise")
          .belongsTo("--feed");
  private static final Flag LIST = Flag.on("--list", CropsCommand.LIST_MEANING);

  private DoseSaltsFlags() {}

  static Flag[] all() {
    return new Flag[] {
      VOLUME, ASK, SALT, WEIGHED,
      WITHIN, SCALE_STEP, FEED, RATE,
      DENSITY, LIST,
    };
  }
}
