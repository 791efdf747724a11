package leat.command;

import leat.answer.Answer;
import leat.hydraulics.Derate;
import leat.hydraulics.MeasuredDerate;

/** What is said of a measured flow that its pump cannot explain, wherever it is used. */
public final class MeasuredWords {
  /** What to look for when the share comes out over 100 %. */
  public static final String OVER =
      "over 100 %: the lift, the bore, K or the bucket is wrong, or the print is humble. Measure again before you carry it on.";

  /** What to look for when the flow is past the end of the curve. */
  public static final String BEYOND =
      "look for litres an hour taken for litres a minute, a bucket with another mark, or another pump in the box.";

  private MeasuredWords() {}

  /**
   * Notes a plan's measured flow that no derate explains, and makes the answer no.
   *
   * @param believed null where no pump was asked for
   * @param plan the plan's name and a colon, where several are judged
   */
  public static void say(Answer answer, Derate believed, String plan) {
    if (believed == null) {
      return;
    }
    if (believed.kind() == Derate.Kind.NO_FLOW) {
      answer.no();
      answer.mind(
          "no-flow",
          plan
              + "pump.measured says that nothing came out: the figures are the most this pump can give. Look for a kink, a clogged intake, air in the pump.");
    } else if (believed.unexplained()) {
      boolean over = believed.measured().status() == MeasuredDerate.Status.OVER_100;
      answer.no();
      answer.mind(
          believed.measured().status().word(),
          plan
              + "the printed curve does not explain pump.measured; the figures are by 100 % of it. "
              + (over ? "Over" + OVER.substring(4) : "Look" + BEYOND.substring(4)));
    }
  }
}
