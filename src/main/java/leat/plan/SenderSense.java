package leat.plan;

import java.util.List;
import leat.level.Ladder;
import leat.level.Limits;
import leat.numeric.Impossible;
import leat.quantity.SenderStep;
import leat.quantity.Span;

/** Whether the steps of a sender, its drawing and its limits can stand together. */
final class SenderSense {
  private SenderSense() {}

  /**
   * @param rim of the tank, m, or null
   */
  static void check(Section sender, Double rim, List<Problem> problems) {
    if (!sender.isGiven()) {
      return;
    }
    Rivals.check(sender, problems);
    steps(sender, "steps", "levels", rim, problems);
    steps(sender, "edges", "litres", null, problems);
    Section ladder = sender.section("ladder");
    if (ladder.has("pull_in") && ladder.has("drop_out") && ladder.has("stops")) {
      ladder(ladder, problems);
    }
    limits(sender, problems);
  }

  private static void steps(
      Section sender, String name, String what, Double rim, List<Problem> problems) {
    List<?> steps = sender.list(name);
    if (!TankSense.isWhole(sender, name)) {
      return;
    }
    double direction = 0;
    for (int i = 0; i < steps.size(); i++) {
      SenderStep step = (SenderStep) steps.get(i);
      String path = sender.path(name) + "[" + i + "]";
      if (rim != null && step.at().value() > rim) {
        problems.add(
            PlanErrors.stepOverRim(
                sender.itemOrigin(name, i, step.at(), false), path, step.at(), rim));
      }
      if (i == 0) {
        continue;
      }
      SenderStep before = (SenderStep) steps.get(i - 1);
      TankSense.rises(sender, name, i, what, step.at(), before.at(), false, problems);
      double change = Math.signum(step.reading().value() - before.reading().value());
      if (change == 0 || direction != 0 && change != direction) {
        Origin at = sender.itemOrigin(name, i, step.reading(), true);
        problems.add(PlanErrors.readingTurns(at, path, step.reading(), before.reading()));
      } else {
        direction = change;
      }
    }
  }

  private static void ladder(Section ladder, List<Problem> problems) {
    boolean equal = ladder.has("empty") && ladder.has("full");
    boolean drawn = ladder.has("reeds") && ladder.has("first") && ladder.has("pitch");
    if (!drawn || !equal && !TankSense.isWhole(ladder, "resistors")) {
      return;
    }
    try {
      int n = (int) ladder.need("reeds");
      double[] reeds = Ladder.evenReeds(n, ladder.need("first"), ladder.need("pitch"));
      Span stops = (Span) ladder.raw("stops");
      new Ladder(
          reeds,
          ladder.has("resistors")
              ? numbers(ladder.list("resistors"))
              : Ladder.evenResistors(n, ladder.need("empty"), ladder.need("full")),
          "top".equals(ladder.text("return_at")) ? Ladder.ReturnAt.TOP : Ladder.ReturnAt.BOTTOM,
          ladder.need("pull_in"),
          ladder.need("drop_out"),
          stops.low().value(),
          stops.high().value());
    } catch (Impossible e) {
      String name = ladder.key.find(e.quantity()) == null ? "reeds" : e.quantity();
      problems.add(PlanErrors.refusedByTrade(ladder, name, e));
    }
  }

  private static double[] numbers(List<?> values) {
    double[] numbers = new double[values.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = (Double) values.get(i);
    }
    return numbers;
  }

  private static void limits(Section sender, List<Problem> problems) {
    try {
      new Limits(
          or(sender, "reading", Limits.DEFAULT_READING),
          or(sender, "tolerance", Limits.DEFAULT_TOLERANCE),
          or(sender, "lead", 0),
          or(sender, "open_above", Limits.DEFAULT_OPEN_ABOVE),
          or(sender, "short_below", Limits.DEFAULT_SHORT_BELOW));
    } catch (Impossible e) {
      String name =
          "open_above".equals(e.quantity()) && !sender.has("open_above")
              ? "short_below"
              : e.quantity();
      problems.add(PlanErrors.refusedByTrade(sender, name, e));
    }
  }

  private static double or(Section section, String name, double otherwise) {
    Double value = section.maybe(name);
    return value == null ? otherwise : value;
  }
}
