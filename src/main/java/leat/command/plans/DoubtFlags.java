package leat.command.plans;

import leat.cli.Call;
import leat.cli.Flag;
import leat.plan.Kind;

/** Flags of what is drawn by chance. */
final class DoubtFlags {
  private static final long SEED = 20_270_301L;

  private DoubtFlags() {}

  static Flag doubt() {
    return Flag.of(
        "--doubt", "N", Kind.COUNT, "200", "draws all guesses N times: how sure each rule is");
  }

  static Flag seed() {
    return Flag.of(
        "--seed", "N", Kind.COUNT, "7", "draws with another seed: other numbers as good");
  }

  /** The seed that is typed, else always the same. */
  static long seed(Call call) {
    Object seed = call.value("--seed");
    return seed == null ? SEED : ((Number) seed).longValue();
  }
}
