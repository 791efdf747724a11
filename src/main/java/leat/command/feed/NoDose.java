package leat.command.feed;

import leat.answer.Answer;
import leat.answer.Row;
import leat.cli.Call;
import leat.cli.ShellWord;
import leat.plan.Section;
import leat.solution.tank.Dose;
import leat.solution.tank.Thinning;
import leat.system.TankOf;

/** What {@code leat dose} says where no dose does it: thin the water, or doubt the label. */
final class NoDose {
  private final Call call;
  private final Answer answer;
  private final Row row;
  private final Dose.Answer dose;

  NoDose(Call call, Answer answer, Row row, Dose.Answer dose) {
    this.call = call;
    this.answer = answer;
    this.row = row;
    this.dose = dose;
  }

  /**
   * Tells why, and the way that is left.
   *
   * @param thin how the water is thinned, or null where that cannot do it
   */
  void tell(Thinning thin) {
    if (dose.status() == Dose.Status.CONCENTRATE_TOO_WEAK) {
      tooWeak();
      return;
    }
    if (thin == null) {
      answer.sentence(
          row,
          "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted, and water of {water_ec_mS_cm} cannot thin it to that.");
      return;
    }
    thinned(runsOver(thin));
    topup();
  }

  private void thinned(boolean runsOver) {
    answer.sentence(
        row,
        runsOver
            ? "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted. To thin it, take out {swap_L} and put in as much water."
            : "No dose does it: the water is at {from_ec_mS_cm} already, above the {target_ec_mS_cm} wanted. To thin it, add {thin_water_L} of water.");
    answer.figure(
        row,
        DoseCommand.THIN,
        "of {water_ec_mS_cm}",
        runsOver ? "{thin_volume_L} then: more than the tank takes" : "{thin_volume_L} then");
    answer.figure(row, DoseCommand.SWAP, "taken out, and as much water put in its place");
  }

  /** Whether water on top would pass the full mark of the plan's tank. */
  private boolean runsOver(Thinning thin) {
    Section tank = call.plan().section("tank");
    return TankOf.isKnown(tank)
        && tank.has("full")
        && thin.finalVolumeL() > Litres.of(TankOf.of(tank, call.taken()).volume(tank.need("full")));
  }

  private void tooWeak() {
    answer.sentence(
        row, "No dose does it: the feed itself is no stronger than the {target_ec_mS_cm} wanted.");
    answer.mind(
        "weak-concentrate",
        row,
        "a label rate of {label_rate_mL_L}: is that for one litre, or for ten?");
  }

  /** The top-up that drains and fills; complete where the plan has the mark. */
  private void topup() {
    boolean mark = call.plan().section("tank").has("full");
    String again =
        call.again(
            "topup", "--volume", "--water-ec", "--rate", "--rate-ec", "--parts", "--scale", "--at");
    answer.next(
        row,
        NextLine.of(again + typed("--target", "--to") + typed("--ec", "--from"))
            + (call.has("--volume") ? "" : " --volume \"{volume_L}\"")
            + (waterKnown() ? "" : " --water-ec ...")
            + (mark
                ? "   what to drain and fill"
                : " --full ...   when there is a full mark: what to drain and fill"));
  }

  /** A flag of this call under the name that it has there. */
  private String typed(String there, String here) {
    return call.has(here) ? " " + there + " " + ShellWord.quoted(call.text(here)) : "";
  }

  private boolean waterKnown() {
    return call.has("--water-ec") || call.plan().section("water").has("ec");
  }
}
