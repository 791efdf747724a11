package leat.level;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/**
 * A magnet moved past reeds, tenth of a millimetre by tenth, in whole numbers and without any of
 * the program's own bands: the true level must lie in the printed band, and every end of a band
 * must be a level at which that reading can be seen.
 */
class BruteForceTest {
  /** Lengths in tenths of a millimetre. */
  private static final class Rig {
    final int rim;
    final int[] reed;
    final int pullIn;
    final int dropOut;
    final int bottomStop;
    final int topStop;
    final boolean bottomReturn;
    final double[] resistor;
    boolean[] closed;
    int level;
    int reading;

    /** Turned upwards (or began at the floor) and nothing but up since the reading began. */
    boolean rising;

    boolean falling;

    Rig(Random r) {
      int n = 2 + r.nextInt(10);
      int pitch = 40 + r.nextInt(300);
      pullIn = 20 + r.nextInt(250);
      dropOut = pullIn + 1 + r.nextInt(80);
      reed = new int[n];
      reed[0] = 100 + r.nextInt(300);
      boolean even = r.nextBoolean();
      for (int i = 1; i < n; i++) {
        reed[i] = reed[i - 1] + (even ? pitch : 30 + r.nextInt(350));
      }
      bottomStop = Math.max(0, reed[0] - r.nextInt(dropOut + 30));
      topStop = reed[n - 1] + r.nextInt(dropOut + 30);
      rim = Math.max(reed[n - 1], topStop - 50 + r.nextInt(400));
      bottomReturn = r.nextBoolean();
      resistor = new double[n];
      for (int i = 0; i < n; i++) {
        resistor[i] = 5 + r.nextInt(40);
      }
      if (r.nextInt(3) == 0) {
        resistor[bottomReturn ? 0 : n - 1] = 0;
      }
      closed = new boolean[n];
      level = 0;
      settle();
      reading = read();
      rising = true;
    }

    Ladder ladder() {
      double[] levels = new double[reed.length];
      for (int i = 0; i < reed.length; i++) {
        levels[i] = reed[i] / 1e4;
      }
      return new Ladder(
          levels,
          resistor,
          bottomReturn ? Ladder.ReturnAt.BOTTOM : Ladder.ReturnAt.TOP,
          pullIn / 1e4,
          dropOut / 1e4,
          bottomStop / 1e4,
          topStop / 1e4);
    }

    /** The magnet acts on each reed where the float now is. */
    void settle() {
      int at = Math.min(Math.max(level, bottomStop), topStop);
      for (int i = 0; i < reed.length; i++) {
        int off = Math.abs(at - reed[i]);
        if (off <= pullIn) {
          closed[i] = true;
        } else if (off > dropOut) {
          closed[i] = false;
        }
      }
    }

    /** Which reed the meter sees, by walking the string from the return; -1 for none. */
    int read() {
      for (int k = 0; k < closed.length; k++) {
        int i = bottomReturn ? k : closed.length - 1 - k;
        if (closed[i]) {
          return i;
        }
      }
      return -1;
    }

    double ohm() {
      double sum = 0;
      for (int k = 0; k < closed.length; k++) {
        int i = bottomReturn ? k : closed.length - 1 - k;
        sum += resistor[i];
        if (closed[i]) {
          return sum;
        }
      }
      return Double.POSITIVE_INFINITY;
    }

    void move(int by) {
      level += by;
      settle();
      int now = read();
      boolean turned = now != reading;
      rising = by > 0 && (turned || rising) || level <= bottomStop;
      falling = by < 0 && (turned || falling) || level >= Math.min(topStop, rim);
      reading = now;
    }

    void moveTo(int target) {
      while (level != target) {
        move(target > level ? 1 : -1);
      }
    }
  }

  @Test
  void theTrueLevelLiesInThePrintedBand() {
    Random r = new Random(20260101);
    int[] seen = new int[Status.values().length];
    int[] motions = new int[3];
    int cases = 0;
    int refused = 0;
    while (cases < 10_000) {
      Rig rig = new Rig(r);
      Tank tank = TaperedBox.of(0.4, 0.3, 0.02, 0.5, 0.35, 0.03, rig.rim / 1e4);
      double tolerance = new double[] {0, 0.01, 0.02, 0.05}[r.nextInt(4)];
      double reading = r.nextInt(3);
      double lead = r.nextDouble();
      Sender sender;
      try {
        sender =
            new Sender(
                Staircase.byLadder(tank, rig.ladder()),
                new Limits(reading, tolerance, lead, 1000, 1),
                tank.volume(0.9 * tank.height()));
      } catch (Impossible stopped) {
        assertThat(stopped.quantity()).isIn("stops", "reeds");
        refused++;
        continue;
      }
      cases++;
      int turns = r.nextInt(5);
      for (int t = 0; t <= turns; t++) {
        rig.moveTo(r.nextInt(rig.rim + 1));
      }
      Motion motion =
          r.nextInt(4) == 0
              ? Motion.UNKNOWN
              : rig.rising ? Motion.RISING : rig.falling ? Motion.FALLING : Motion.UNKNOWN;
      double truth = rig.level / 1e4;
      // every part off the same way, and the meter off within its tolerance
      double measured =
          rig.ohm() * (1 + tolerance * (2 * r.nextDouble() - 1))
              + reading * (2 * r.nextDouble() - 1)
              + lead;
      Reading out = sender.decode(measured, motion, new Reading());
      seen[out.status().ordinal()]++;
      motions[motion.ordinal()]++;
      if (rig.reading < 0) {
        assertThat(out.status()).isEqualTo(Status.OPEN);
        continue;
      }
      assertThat(out.hasBand()).as("case " + cases + " " + out.status()).isTrue();
      assertThat(rig.reading).isBetween(out.stepLow(), out.stepHigh());
      assertThat(truth)
          .as("case %d %s step %d", cases, motion, rig.reading)
          .isBetween(out.levelLow() - 1e-9, out.levelHigh() + 1e-9);
      assertThat(tank.volume(truth)).isBetween(out.volumeLow() - 1e-12, out.volumeHigh() + 1e-12);
    }
    assertThat(refused).isLessThan(10_000);
    assertThat(seen[Status.OK.ordinal()]).isGreaterThan(3000);
    assertThat(seen[Status.AMBIGUOUS.ordinal()]).isGreaterThan(100);
    assertThat(seen[Status.OPEN.ordinal()]).isGreaterThan(100);
    assertThat(seen[Status.OK_OR_SHORT.ordinal()]).isGreaterThan(100);
    for (int m : motions) {
      assertThat(m).isGreaterThan(1000);
    }
  }

  /** Everything that can be: level, reeds closed, and whether the motion counts as known. */
  private record State(int level, int closed, boolean rising, boolean falling) {}

  private static State stateOf(Rig rig) {
    int mask = 0;
    for (int i = 0; i < rig.closed.length; i++) {
      mask |= rig.closed[i] ? 1 << i : 0;
    }
    return new State(rig.level, mask, rig.rising, rig.falling);
  }

  private static void set(Rig rig, State s) {
    rig.level = s.level();
    for (int i = 0; i < rig.closed.length; i++) {
      rig.closed[i] = (s.closed() & 1 << i) != 0;
    }
    rig.rising = s.rising();
    rig.falling = s.falling();
    rig.reading = rig.read();
  }

  @Test
  void everyBandIsNoWiderThanTheReadingAllows() {
    Random r = new Random(7);
    int done = 0;
    int bands = 0;
    while (done < 60) {
      Rig rig = new Rig(r);
      Tank tank = TaperedBox.box(0.4, 0.3, rig.rim / 1e4, 0);
      Staircase stairs;
      try {
        stairs = Staircase.byLadder(tank, rig.ladder());
      } catch (Impossible stopped) {
        continue;
      }
      done++;
      int n = rig.reed.length;
      int[][] low = new int[3][n];
      int[][] high = new int[3][n];
      for (int m = 0; m < 3; m++) {
        Arrays.fill(low[m], Integer.MAX_VALUE);
        Arrays.fill(high[m], -1);
      }
      Set<State> known = new HashSet<>();
      ArrayDeque<State> todo = new ArrayDeque<>();
      todo.add(stateOf(rig));
      known.add(todo.peek());
      while (!todo.isEmpty()) {
        State s = todo.poll();
        set(rig, s);
        if (rig.reading >= 0) {
          note(low, high, 0, rig);
          if (s.rising()) {
            note(low, high, Motion.RISING.ordinal(), rig);
          }
          if (s.falling()) {
            note(low, high, Motion.FALLING.ordinal(), rig);
          }
        }
        for (int by = -1; by <= 1; by += 2) {
          set(rig, s);
          if (rig.level + by >= 0 && rig.level + by <= rig.rim) {
            rig.move(by);
            State next = stateOf(rig);
            if (known.add(next)) {
              todo.add(next);
            }
          }
        }
      }
      for (Motion motion : Motion.values()) {
        for (int i = 0; i < n; i++) {
          int m = motion.ordinal();
          String why = "rig " + done + " " + motion + " step " + i + " of " + n;
          assertThat(high[m][i]).as(why + " is seen").isNotNegative();
          // an open end is one tenth further in
          assertThat(low[m][i] / 1e4 - stairs.levelLow(i, motion))
              .as(why)
              .isBetween(-1e-9, 1.001e-4);
          assertThat(stairs.levelHigh(i, motion) - high[m][i] / 1e4)
              .as(why)
              .isBetween(-1e-9, 1.001e-4);
          bands++;
        }
      }
    }
    assertThat(bands).isGreaterThan(600);
  }

  private static void note(int[][] low, int[][] high, int m, Rig rig) {
    low[m][rig.reading] = Math.min(low[m][rig.reading], rig.level);
    high[m][rig.reading] = Math.max(high[m][rig.reading], rig.level);
  }
}
