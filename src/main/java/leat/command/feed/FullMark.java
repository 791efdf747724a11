package leat.command.feed;

import leat.cli.Call;
import leat.cli.CommandErrors;
import leat.cli.Flag;
import leat.numeric.Impossible;
import leat.plan.Kind;
import leat.plan.Origin;
import leat.plan.PlanErrors;
import leat.plan.Refused;
import leat.plan.Section;
import leat.quantity.Dimension;
import leat.quantity.QuantityReader;
import leat.quantity.Unreadable;
import leat.system.SenderOf;
import leat.system.TankOf;

/** The full mark of the tank, typed as litres or as a level of the plan's tank. */
final class FullMark {
  static final Flag FULL =
      Flag.of(
          "--full",
          "MARK",
          Kind.TEXT,
          "45 L",
          "the full mark: litres, or a level of the plan's tank; the plan's otherwise");

  private FullMark() {}

  /** Volume at the mark, m3. */
  static double of(Call call) {
    String typed = call.text("--full");
    if (typed == null) {
      if (!call.hasPlan()) {
        throw call.needs("--full");
      }
      return SenderOf.fullVolume(call.plan(), call.taken());
    }
    double volume;
    try {
      volume = above0(typed, QuantityReader.read(typed, Dimension.VOLUME).value());
    } catch (Unreadable noVolume) {
      return ofLevel(call, typed, noVolume);
    }
    Double capacity = Held.capacity(call);
    if (capacity != null && volume > capacity) {
      throw new Refused(MixErrors.overTheRim("--full", typed, capacity, call.us()));
    }
    return volume;
  }

  private static double ofLevel(Call call, String typed, Unreadable noVolume) {
    double level;
    try {
      level = above0(typed, QuantityReader.read(typed, Dimension.LENGTH).value());
    } catch (Unreadable e) {
      throw new Refused(PlanErrors.unreadable(Origin.flag("--full", typed), "", noVolume));
    }
    Section tank = call.plan().section("tank");
    if (!TankOf.isKnown(tank)) {
      throw new Refused(MixErrors.levelOfNoTank("--full", typed));
    }
    try {
      return TankOf.of(tank, call.taken()).volume(level);
    } catch (Impossible e) {
      throw new Refused(CommandErrors.impossible("--full \"" + typed + "\"", e.getMessage()));
    }
  }

  private static double above0(String typed, double value) {
    if (!(value > 0)) {
      throw new Refused(CommandErrors.mustBeAbove0("--full", typed));
    }
    return value;
  }
}
