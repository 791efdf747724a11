package leat.command.run;

import leat.answer.Answer;
import leat.plan.Plan;

/** A plan's {@code drinks} beside crops and weather, which say what is drunk each day. */
final class UnusedDrinks {
  private UnusedDrinks() {}

  /** Whether the plan says both. */
  static boolean isIn(Plan plan) {
    return plan.root().has("drinks") && !plan.root().sections("crops").isEmpty();
  }

  static void tell(Answer answer) {
    answer.mind(
        "drinks-unused",
        "drinks of the plan is not used here: crops and weather say what is drunk. A log finds the thirst that corrects them.");
  }
}
