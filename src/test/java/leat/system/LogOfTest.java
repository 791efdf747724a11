package leat.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import leat.log.LogLimits;
import leat.log.LogSystem;
import leat.plan.Key;
import leat.plan.Keys;
import leat.plan.Plan;
import leat.plan.Source;
import leat.plan.Taken;
import org.junit.jupiter.api.Test;

/** Each threshold is a key; its example is what sheet log.md gives (LogLimits, from the sheet). */
class LogOfTest {
  private static Key section(Key in, String name) {
    for (Key key : in.keys()) {
      if (key.name().equals(name)) {
        return key;
      }
    }
    throw new AssertionError(name);
  }

  private static LogLimits limits(String yaml) {
    return LogOf.limits(Plan.Draft.of(Source.file("p.yaml", "name: x\n" + yaml)).read());
  }

  private static LogSystem system(String more) {
    String yaml =
        "tank: {shape: box, bottom: 500 mm x 400 mm, height: 300 mm, full: 250 mm"
            + more
            + "\nsender: {steps: [100 mm = 180 ohm, 140 mm = 150 ohm]}\n";
    return LogOf.of(Plan.Draft.of(Source.file("p.yaml", yaml)).read(), false, new Taken());
  }

  private static double rainArea(String more) {
    return system(more).rainArea();
  }

  /** A cap may be dry as long as the longest rest of a night, of the limit or of the timing. */
  @Test
  void theCapMayBeDryInARest() {
    String cap = "}\ncap_sensor: {wet: 1350, dry: 2750}\ntiming: [{run: 60 s, rest: ";
    assertThat(system(cap + "20 min}]").dryLimitS()).isEqualTo(3600);
    assertThat(system(cap + "90 min}]").dryLimitS()).isEqualTo(5400);
    assertThat(system(cap + "90 min}]\ndry_limit: {alarm: 45 min}").dryLimitS()).isEqualTo(2700);
  }

  /** As season: the share that the plan names, and nothing under a roof. */
  @Test
  void rainByTheShareThatArrives() {
    assertThat(rainArea("}")).isNaN();
    assertThat(rainArea(", rain_area: 0.05 m2}")).isEqualTo(0.05);
    assertThat(rainArea(", rain_area: 0.05 m2, rain_share: 80 %}")).isEqualTo(0.8 * 0.05);
    assertThat(rainArea(", rain_area: 0.05 m2}\nsite: {exposure: glass}")).isZero();
    assertThat(rainArea("}\nsite: {exposure: window}")).isZero();
  }

  @Test
  void examplesAreTheUsualValues() {
    assertThat(limits("")).isEqualTo(LogLimits.DEFAULT);
    StringBuilder yaml = new StringBuilder("log:\n  thresholds:\n");
    for (Key key : section(section(Keys.PLAN, "log"), "thresholds").keys()) {
      yaml.append("    ").append(key.name()).append(": ").append(key.example()).append('\n');
    }
    assertThat(limits(yaml.toString())).isEqualTo(LogLimits.DEFAULT);
  }

  @Test
  void eachKeyMovesOneThreshold() throws ReflectiveOperationException {
    Key[] keys = section(section(Keys.PLAN, "log"), "thresholds").keys();
    RecordComponent[] all = LogLimits.class.getRecordComponents();
    assertThat(keys).hasSameSizeAs(all);
    for (int i = 0; i < keys.length; i++) {
      String example = keys[i].example();
      String unit = example.substring(Math.max(0, example.indexOf(' ')));
      String other = (example.startsWith("1") ? "3" : "1") + unit;
      other = example.indexOf(' ') < 0 ? "11" : other;
      other = example.startsWith("\"") ? "\"05:00\"" : other;
      LogLimits moved = limits("log: {thresholds: {" + keys[i].name() + ": " + other + "}}");
      for (int k = 0; k < all.length; k++) {
        boolean same =
            all[k]
                .getAccessor()
                .invoke(moved)
                .equals(all[k].getAccessor().invoke(LogLimits.DEFAULT));
        assertThat(same).as(keys[i].name() + " " + all[k].getName()).isEqualTo(i != k);
      }
    }
  }
}
