package leat.level;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Random;
import leat.numeric.Impossible;
import org.junit.jupiter.api.Test;

/** Whatever is handed in: a refusal with a reason, or finite numbers. */
class WildInputTest {
  private static final double[] WILD = {
    0,
    -0.0,
    -1,
    Double.MIN_VALUE,
    1e-300,
    1e-12,
    1e-6,
    0.001,
    0.02,
    0.3,
    0.5,
    1,
    3.3,
    10,
    47,
    190,
    1000,
    1e9,
    1e300,
    Double.MAX_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  /** Inputs of each kind of question; a mutant is judged by fewer. */
  private static final int CASES = Integer.getInteger("leat.wild.cases", 60_000);

  private final Random r = new Random(99);
  private int answers;
  private int refusals;

  private double wild(double low, double high) {
    return r.nextInt(6) == 0 ? WILD[r.nextInt(WILD.length)] : low + (high - low) * r.nextDouble();
  }

  private double[] list(double low, double high, boolean sorted) {
    double[] x = new double[r.nextInt(7)];
    for (int i = 0; i < x.length; i++) {
      x[i] =
          sorted && r.nextInt(8) > 0
              ? low + (high - low) * (i + r.nextDouble()) / x.length
              : wild(low, high);
    }
    return x;
  }

  private static void finite(Object o, String where) throws ReflectiveOperationException {
    if (o instanceof Double d) {
      assertThat(d).as(where).isFinite();
    } else if (o instanceof double[] a) {
      for (double d : a) {
        assertThat(d).as(where).isFinite();
      }
    } else if (o instanceof Object[] a) {
      for (Object e : a) {
        finite(e, where);
      }
    } else if (o instanceof List<?> l) {
      for (Object e : l) {
        finite(e, where);
      }
    } else if (o instanceof Record rec) {
      for (RecordComponent c : rec.getClass().getRecordComponents()) {
        c.getAccessor().setAccessible(true);
        finite(c.getAccessor().invoke(rec), where + "." + c.getName());
      }
    } else if (o instanceof Reading reading) {
      if (reading.hasBand()) {
        finite(reading.volume(), where);
        finite(reading.fullShare(), where);
        finite(reading.volumeLow(), where);
        finite(reading.volumeHigh(), where);
        assertThat(reading.volumeLow()).isLessThanOrEqualTo(reading.volumeHigh());
      }
      if (reading.hasLevels()) {
        finite(reading.levelLow(), where);
        finite(reading.levelHigh(), where);
      }
    }
  }

  private interface Try {
    Object run();
  }

  private void attempt(String where, Try what) throws ReflectiveOperationException {
    try {
      finite(what.run(), where);
      answers++;
    } catch (Impossible refused) {
      assertThat(refused.getMessage()).isNotBlank();
      assertThat(refused.quantity()).isNotBlank();
      refusals++;
    }
  }

  private Tank tank() {
    double h = wild(0.05, 1);
    Tank shell =
        switch (r.nextInt(7)) {
          case 0 -> TaperedBox.box(wild(0.1, 1), wild(0.1, 1), h, wild(0, 0.05));
          case 1 ->
              TaperedBox.of(
                  wild(0.1, 1),
                  wild(0.1, 1),
                  wild(0, 0.05),
                  wild(0.1, 1),
                  wild(0.1, 1),
                  wild(0, 0.05),
                  h);
          case 2 -> Cone.of(wild(0, 1), wild(0.1, 1), h);
          case 3 -> new LyingCylinder(wild(0.1, 1), h);
          case 4 -> new SlopingFloorBox(wild(0.3, 1), wild(0.1, 1), h, wild(0, 0.2), wild(0, 0.1));
          case 5 -> {
            double[] z = list(0, 1, true);
            if (z.length > 0 && r.nextInt(5) > 0) {
              z[0] = 0;
            }
            double[] a = new double[z.length];
            for (int i = 0; i < a.length; i++) {
              a[i] = wild(0.01, 1);
            }
            yield new Sections(z, a, Sections.Between.values()[r.nextInt(2)]);
          }
          default -> {
            double[] z = list(0, 1, true);
            double[] v = new double[z.length];
            for (int i = 0; i < v.length; i++) {
              v[i] = i * 0.01 + wild(0, 0.009);
            }
            yield new StrappingTable(z, v, StrappingTable.Between.values()[r.nextInt(2)]);
          }
        };
    return r.nextInt(3) > 0
        ? shell
        : new Displaced(shell, new Body(wild(0, 0.05), wild(0, 0.2), wild(0.1, 1)));
  }

  @Test
  void tanks() throws ReflectiveOperationException {
    for (int c = 0; c < CASES; c++) {
      attempt("volume", () -> tank().volume(wild(0, 0.5)));
      attempt("level", () -> tank().level(wild(0, 0.05)));
      attempt("area", () -> tank().area(wild(0, 0.5)));
      attempt(
          "mark", () -> Dipstick.at(tank(), wild(0, 0.3), r.nextBoolean() ? null : wild(0, 0.1)));
      attempt(
          "need",
          () -> Dipstick.need(tank(), wild(0, 0.1), wild(0.1, 0.4), wild(0, 1e-6), wild(0, 1e6)));
      attempt("capacity", () -> tank().capacity());
    }
    assertThat(answers).isGreaterThan(CASES);
    assertThat(refusals).isGreaterThan(CASES);
  }

  private Limits limits() {
    return new Limits(wild(0, 3), wild(0, 0.1), wild(0, 1), wild(900, 1100), wild(0, 3));
  }

  private Staircase stairs() {
    double[] ohm = list(0, 240, true);
    double[] at = new double[ohm.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = 0.02 + 0.04 * i + wild(0, 0.03);
    }
    switch (r.nextInt(4)) {
      case 0:
        return Staircase.bySteps(tank(), at, ohm, wild(0, 0.02));
      case 1:
        return Staircase.byEdges(tank(), SheetTanks.times(at, 0.1), ohm, wild(0, 0), wild(0, 0.01));
      case 2:
        return Staircase.byEdgesAlone(wild(0.1, 1), at, ohm, wild(0, 0), wild(0, 0.01));
      default:
        return Staircase.byLadder(
            tank(),
            new Ladder(
                at,
                ohm,
                Ladder.ReturnAt.values()[r.nextInt(2)],
                wild(0.01, 0.03),
                wild(0.02, 0.05),
                wild(0, 0.03),
                wild(0.2, 0.4)));
    }
  }

  private Divider divider() {
    double reference = wild(1, 5);
    return new Divider(
        Divider.Side.values()[r.nextInt(2)],
        r.nextBoolean() ? reference : wild(1, 5),
        wild(0, 0.1),
        wild(10, 1000),
        wild(0, 0.1),
        r.nextInt(27),
        reference,
        wild(0, 0.1),
        r.nextBoolean(),
        wild(0, 5));
  }

  @Test
  void senders() throws ReflectiveOperationException {
    for (int c = 0; c < CASES; c++) {
      Motion m = Motion.values()[r.nextInt(3)];
      attempt(
          "decode",
          () ->
              new Sender(stairs(), limits(), wild(0.01, 0.1))
                  .decode(wild(-5, 300), m, new Reading()));
      attempt(
          "code",
          () ->
              new Sender(stairs(), limits(), wild(0.01, 0.1))
                  .decodeCode(r.nextInt(5000) - 10, divider(), m, new Reading()));
      attempt(
          "divider", () -> divider().step(wild(0, 240), wild(0, 1), wild(0, 0.1), r.nextInt(9)));
      attempt("band", () -> divider().band(r.nextInt(5000) - 10, wild(0, 1)));
      attempt("power", () -> divider().senderPower(wild(0, 240), wild(0, 1)));
      attempt("current", () -> divider().current(wild(0, 240), wild(0, 1)));
      attempt(
          "fit",
          () ->
              SenderFit.of(
                  list(0, 0.06, true),
                  list(0, 240, true),
                  Motion.values()[r.nextInt(3)],
                  r.nextBoolean(),
                  wild(1, 10)));
    }
    assertThat(answers).isGreaterThan(CASES);
    assertThat(refusals).isGreaterThan(CASES);
  }

  @Test
  void designsTablesAndUse() throws ReflectiveOperationException {
    for (int c = 0; c < CASES / 15; c++) {
      attempt(
          "ladder",
          () ->
              LadderDesign.of(
                  ESeries.values()[r.nextInt(5)], list(wild(0, 30), wild(100, 300), true)));
      attempt(
          "best",
          () ->
              DividerDesign.best(
                  divider(),
                  list(0, 240, true),
                  wild(0, 1),
                  wild(0, 0.1),
                  r.nextBoolean() ? null : wild(0.001, 0.02),
                  r.nextBoolean() ? null : ESeries.E24,
                  r.nextInt(50)));
      attempt(
          "table",
          () ->
              LookupTable.of(
                  new Sender(stairs(), limits(), wild(0.01, 0.1)),
                  r.nextBoolean() ? null : divider(),
                  Motion.UNKNOWN));
      attempt(
          "points",
          () ->
              LookupTable.interpolated(
                  new Sender(stairs(), limits(), wild(0.01, 0.1)),
                  null,
                  Motion.RISING,
                  wild(1, 20)));
    }
    assertThat(answers).isGreaterThan(CASES / 30);
    assertThat(refusals).isGreaterThan(CASES / 30);
  }
}
