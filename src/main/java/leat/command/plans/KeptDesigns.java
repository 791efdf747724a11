package leat.command.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import leat.cli.Call;
import leat.sweep.Front;
import leat.sweep.Judged;

/** The designs of a sweep that are kept: all, the best by rank, or those that none beats. */
final class KeptDesigns {
  private final Call call;
  private final SweepRun run;
  private final List<Judged> kept = new ArrayList<>();

  KeptDesigns(SweepRun run) {
    this.call = run.call;
    this.run = run;
  }

  /** Runs the sweep; the designs in the order asked for. */
  List<Judged> inOrder() {
    int top = call.has("--top") ? SweepCommand.atLeast1(call, "--top") : Integer.MAX_VALUE;
    Comparator<Judged> order = order();
    if (call.has("--pareto")) {
      unbeaten();
    } else if (top < Integer.MAX_VALUE && call.has("--rank")) {
      best(order, top);
    } else {
      first(call.has("--rank") ? Integer.MAX_VALUE : top);
    }
    kept.sort(order);
    return kept.size() > top ? kept.subList(0, top) : kept;
  }

  private void unbeaten() {
    List<String> asked = run.pareto();
    int[] at = new int[asked.size()];
    boolean[] most = new boolean[at.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = run.measure(SweepRun.bare(asked.get(i)));
      most[i] = asked.get(i).strip().startsWith("-");
    }
    run.run(
        one -> {
          if (Front.isKnown(one, at)) {
            Front.add(kept, one, at, most);
          }
        });
  }

  private void best(Comparator<Judged> order, int top) {
    PriorityQueue<Judged> best = new PriorityQueue<>(order.reversed());
    run.run(
        one -> {
          best.add(one);
          if (best.size() > top) {
            best.remove();
          }
        });
    kept.addAll(best);
  }

  private void first(int most) {
    run.run(
        one -> {
          if (kept.size() < most) {
            kept.add(one);
          }
        });
  }

  private Comparator<Judged> order() {
    if (!call.has("--rank")) {
      return Comparator.comparingLong(one -> one.design().index());
    }
    String rank = call.text("--rank").strip();
    return Front.by(run.measure(SweepRun.bare(rank)), rank.startsWith("-"));
  }
}
