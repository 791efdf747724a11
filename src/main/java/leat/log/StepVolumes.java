package leat.log;

import leat.level.Motion;
import leat.level.Staircase;

/** Volumes of a sender's steps: rising edges, falling edges at rest, bands; m3. */
final class StepVolumes {
  /** Two volumes that differ by a smaller share are one. Common practice, no source. */
  private static final double ROUNDING = 1e-9;

  private final double[] rising;
  private final double[] falling;
  private final double full;
  private final double rim;
  private final double capacity;

  /** Share of the hysteresis that the pump's dip shakes out, 0 to 1. */
  private double shaken;

  private final double holdUp;

  StepVolumes(LogSystem system) {
    Staircase s = system.sender().staircase();
    int n = s.size();
    rising = new double[n];
    falling = new double[n];
    for (int k = 0; k < n; k++) {
      rising[k] = s.volumeLow(k, Motion.RISING);
      falling[k] = s.volumeLow(k, Motion.FALLING);
    }
    full = system.sender().fullVolume();
    capacity = s.capacity();
    rim = system.rim() > 0 ? system.rim() : capacity;
    holdUp = system.holdUp();
    shaken = 1;
  }

  int top() {
    return rising.length - 1;
  }

  double full() {
    return full;
  }

  double rim() {
    return Math.max(rim, full);
  }

  /** Whether the top step's reading begins over the full mark: then more than full is in it. */
  boolean topIsOverfull() {
    return rising[top()] > full * (1 + ROUNDING);
  }

  /** Mean volume of a step, m3. */
  double meanStep() {
    int n = rising.length;
    return n > 2 ? (rising[n - 1] - rising[1]) / (n - 2) : capacity / 2;
  }

  /** Volume at which a step's reading begins while it fills. */
  double rising(int k) {
    return k > top() ? rim() : rising[k];
  }

  /** Share of the hysteresis that a dip of a learned size shakes out, when the plan has none. */
  void learned(double dipShare) {
    if (holdUp != holdUp) {
      shaken = dipShare;
    }
  }

  /** Volume at which its reading at rest ends while it is drunk from. */
  double falling(int k, boolean pumpRuns) {
    if (k <= 0) {
      return 0;
    }
    double width = rising[k] - falling[k];
    double dip = holdUp == holdUp ? holdUp : shaken * width;
    return FallingEdge.atRest(rising[k], Math.max(0, width), pumpRuns ? dip : 0);
  }

  /** Lower end of what a step may hold, however it came. */
  double least(int k) {
    return k <= 0 ? 0 : falling[k];
  }

  /** Steps by which a dip may lower the reading, rounded up. */
  int dipSteps() {
    return holdUp > 0 ? (int) Math.ceil(holdUp / meanStep()) : 1;
  }

  /** Mean volume between a step's rising and falling edge, m3. */
  double meanHysteresis() {
    double sum = 0;
    for (int k = 1; k < rising.length; k++) {
      sum += rising[k] - falling[k];
    }
    return sum / (rising.length - 1);
  }

  /** Highest step that begins at or below a volume. */
  int stepOf(double volume) {
    int k = 0;
    while (k < top() && rising[k + 1] <= volume) {
      k++;
    }
    return k;
  }
}
