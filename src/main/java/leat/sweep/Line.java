package leat.sweep;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Judges designs on several threads and hands them on in their order; memory stays flat. */
public final class Line {
  private static final int BLOCK = 256;

  private final Grid grid;
  private final List<Judge> judges;
  private volatile boolean stopped;

  /** One judge a thread. */
  public Line(Grid grid, List<Judge> judges) {
    this.grid = grid;
    this.judges = judges;
  }

  /** Ends the run behind the design in work; for another thread. */
  public void stop() {
    stopped = true;
  }

  /** Whether it was stopped. */
  public boolean isStopped() {
    return stopped;
  }

  /** Designs from the first up to, not including, the last. */
  public void run(long from, long to, Consumer<Judged> next) {
    if (judges.size() == 1) {
      for (long i = from; i < to && !stopped; i++) {
        next.accept(judges.get(0).judge(grid.design(i)));
      }
      return;
    }
    BlockingQueue<Judge> free = new ArrayBlockingQueue<>(judges.size(), false, judges);
    ExecutorService threads = Executors.newFixedThreadPool(judges.size());
    Deque<Future<List<Judged>>> ahead = new ArrayDeque<>();
    try {
      for (long i = from; !stopped && (i < to || !ahead.isEmpty()); ) {
        while (i < to && ahead.size() < 4 * judges.size()) {
          long start = i;
          long end = Math.min(to, i + BLOCK);
          ahead.add(threads.submit(() -> block(free, start, end)));
          i = end;
        }
        ahead.remove().get().forEach(next);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof RuntimeException cause
          ? cause
          : new IllegalStateException(e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  private List<Judged> block(BlockingQueue<Judge> free, long from, long to)
      throws InterruptedException {
    Judge judge = free.take();
    try {
      List<Judged> block = new ArrayList<>((int) (to - from));
      for (long i = from; i < to; i++) {
        block.add(judge.judge(grid.design(i)));
      }
      return block;
    } finally {
      free.add(judge);
    }
  }
}
