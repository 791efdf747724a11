package leat.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Lets a long run end with whole rows when a signal such as Ctrl-C comes. */
public final class Signals {
  /** A row in work is done by then, s; a pipe that nobody reads is left. */
  private static final long PATIENCE_S = 5;

  private final CountDownLatch ended = new CountDownLatch(1);
  private final Thread hook;

  /** {@code stop} is told when the signal comes; the program ends once {@link #end} was called. */
  public Signals(Runnable stop) {
    hook =
        new Thread() {
          @Override
          public void run() {
            stop.run();
            await();
          }
        };
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void await() {
    try {
      if (!ended.await(PATIENCE_S, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The run has ended by itself, or what is whole is written and the signal may have its way. */
  public void end() {
    ended.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // the signal is ending the program with its own exit code: nothing of ours may be first
      rest();
    }
  }

  private static void rest() {
    try {
      Thread.sleep(TimeUnit.SECONDS.toMillis(PATIENCE_S));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
