package leat.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import leat.level.Divider;
import leat.level.Limits;
import leat.level.Motion;
import leat.level.Reading;
import leat.level.Sender;
import leat.level.Staircase;
import leat.level.Status;
import leat.level.TaperedBox;
import leat.numeric.Impossible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * The log and {@code leat level} read the same step wherever the reading can only be one. Second
 * route: the windows of {@link Sender}, with the worst cases of divider and ADC.
 */
class StepReaderTest {
  private final Reading one = new Reading();

  private static Sender sender(Random r) {
    int n = 3 + r.nextInt(10);
    double[] levels = new double[n];
    double[] ohms = new double[n];
    boolean falls = r.nextBoolean();
    double ohm = 5 + 40 * r.nextDouble();
    for (int i = 0; i < n; i++) {
      levels[i] = 0.03 + 0.02 * i;
      ohms[falls ? n - 1 - i : i] = ohm;
      ohm += 3 + ohm * 0.3 * r.nextDouble();
    }
    Limits limits =
        new Limits(2 * r.nextDouble(), 0.04 * r.nextDouble(), r.nextDouble(), ohm + 400, 1);
    return new Sender(
        Staircase.bySteps(TaperedBox.box(0.5, 0.4, 0.4, 0), levels, ohms, 0.004), limits, 0.06);
  }

  private static Divider divider(Random r, double most) {
    boolean ratiometric = r.nextBoolean();
    return new Divider(
        r.nextBoolean() ? Divider.Side.LOW : Divider.Side.HIGH,
        3.3,
        ratiometric ? 0 : 0.03 * r.nextDouble(),
        most * (0.2 + 2 * r.nextDouble()),
        0.02 * r.nextDouble(),
        8 + r.nextInt(5),
        ratiometric ? 3.3 : 1.5 + 1.8 * r.nextDouble(),
        ratiometric ? 0 : 0.02 * r.nextDouble(),
        ratiometric,
        4 * r.nextDouble());
  }

  @Property(tries = 2000)
  void countsAreReadAsLevelReadsThem(@ForAll long seed) {
    Random r = new Random(seed);
    Sender sender = sender(r);
    Divider divider = divider(r, sender.staircase().ohm(0));
    Sender read;
    StepReader log;
    try {
      read = sender.readBy(divider);
      log = new StepReader(sender, divider);
    } catch (Impossible stepsMeetOrReachOpen) {
      return;
    }
    for (int code = 0; code <= divider.topCode(); code++) {
      read.decodeCode(code, divider, Motion.UNKNOWN, one);
      same(seed + " code " + code, log.step(code));
    }
  }

  @Property(tries = 500)
  void ohmsAreReadAsLevelReadsThem(@ForAll long seed) {
    Random r = new Random(seed);
    Sender sender = sender(r);
    StepReader log;
    try {
      log = new StepReader(sender, null);
    } catch (Impossible stepsMeet) {
      return;
    }
    for (int i = 0; i < 300; i++) {
      double ohm = 500 * r.nextDouble();
      sender.decode(ohm, Motion.UNKNOWN, one);
      same(seed + " ohm " + ohm, log.step(ohm));
    }
  }

  private void same(String what, int step) {
    if (one.status() == Status.OK) {
      assertThat(step).as(what).isEqualTo(one.stepLow());
    } else if (one.status() == Status.AMBIGUOUS || one.status() == Status.BETWEEN_STEPS) {
      assertThat(step).as(what).isBetween(one.stepLow(), one.stepHigh());
    } else if (one.status() == Status.OPEN) {
      assertThat(step).as(what).isEqualTo(StepReader.OPEN);
    }
  }
}
