package leat.energy;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import leat.numeric.Impossible;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is typed, an answer is refused or made of finite numbers only. */
class FiniteTest {
  @Provide
  Arbitrary<Double> wild() {
    return Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(3, Arbitraries.doubles().between(0, 1)),
        net.jqwik.api.Tuple.of(4, Arbitraries.doubles().between(1, 1000)),
        net.jqwik.api.Tuple.of(1, Arbitraries.doubles().between(-1e3, 1e10)),
        net.jqwik.api.Tuple.of(
            1,
            Arbitraries.of(
                0.0,
                -0.0,
                1e-300,
                1e300,
                Double.MIN_VALUE,
                Double.MAX_VALUE,
                Double.NaN,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY)));
  }

  private static int answered;

  private static void finite(Supplier<Record> answer) {
    try {
      Record record = answer.get();
      for (RecordComponent c : record.getClass().getRecordComponents()) {
        Object value = c.getAccessor().invoke(record);
        if (value instanceof Double d) {
          assertThat(d).as(c.getName()).isFinite();
        } else if (value instanceof OptionalDouble o && o.isPresent()) {
          assertThat(o.getAsDouble()).as(c.getName()).isFinite();
        }
      }
      answered++;
    } catch (Impossible refused) {
      assertThat(refused.getMessage()).isNotBlank();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Property(tries = 3000)
  void everyAnswer(
      @ForAll("wild") double a,
      @ForAll("wild") double b,
      @ForAll("wild") double c,
      @ForAll("wild") double d,
      @ForAll("wild") double e,
      @ForAll("wild") double f) {
    finite(() -> new Timing(a, b));
    finite(
        () ->
            Duty.of(new Timing(a, b), new Draw(c, d, e, Coil.WHILE_RESTING), f * 1e-7, e, 0.5, d));
    finite(() -> Saving.of(a, b, c, d));
    finite(() -> LeastRun.of(a, b, c, d, e));
    finite(
        () -> {
          double held = LongestRest.plugWaterS(a * 1e-5, b, c * 1e-9, d);
          assertThat(held).isFinite();
          return LongestRest.of(e, held);
        });
    finite(() -> RelayLife.of(new Motor(a, b, 0.6, c), new Contact(d, e, f, 1.5), a, b));
    finite(
        () ->
            Backup.of(
                new Timing(a, b),
                Cells.pumpOnly(c),
                new Inverter(0.9, d),
                new Battery(12, 0.5, 0.2, 1.2, 72_000),
                e));
    finite(
        () -> {
          Battery battery = new Battery(a, b, c, 1.2, d);
          assertThat(battery.lastsS(e, f)).isFinite();
          return battery;
        });
    finite(() -> Cable.of(a, b, c, d * 1e-6, e * 1e-3, f, 4, b));
    finite(
        () -> {
          assertThat(Solar.panelW(a, b, c, d)).isFinite();
          return new Timing(1, 1);
        });
    finite(() -> Suggestion.of(new LeastRun(a, b, c), LongestRest.of(d), Cells.pumpOnly(e), f));
  }

  @net.jqwik.api.lifecycle.AfterContainer
  static void manyWereAnswered() {
    assertThat(answered).as("answers that were not refusals").isGreaterThan(3000);
  }
}
