package leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.List;
import leat.plan.Plan;
import leat.plan.PlanFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Designs with numbers laid over are judged as the same numbers typed with --set are. */
class DesignsTest {
  private static Plan plan(String file) {
    return PlanFile.read(file, new File("examples/" + file), null).read();
  }

  @ParameterizedTest
  @CsvSource({
    "first-tower.yaml, towers[*].riser.bore, 0.008, 8 mm",
    "first-tower.yaml, towers[0].outlet, 1.7, 1.7 m",
    "first-tower.yaml, pump.shutoff_head, 1.0, 1 m",
    "first-tower.yaml, pump.derate, 0.6, 60 %",
    "first-tower.yaml, tank.full, 0.31, 310 mm",
    "first-tower.yaml, timing[0].rest, 3600, 1 h",
    "terrace.yaml, towers[*].riser.bore, 0.009, 9 mm",
    "terrace.yaml, towers[1].wanted, 0.0002, 12 L/min",
    "terrace.yaml, pump.derate, 0.45, 45 %",
    "terrace.yaml, strainer.aperture, 0.0005, 0.5 mm",
  })
  void numbersAndTextAgree(String file, String path, double number, String typed) {
    Plan plan = plan(file);
    List<Finding> laid = Rules.judge(new Designs(plan, path).with(number), Rules.all());
    List<Finding> read = Rules.judge(new Subject(plan.with(path, typed)));
    List<Finding> before = Rules.judge(new Subject(plan));
    assertThat(laid).hasSameSizeAs(read);
    boolean changed = laid.size() != before.size();
    for (int i = 0; i < laid.size(); i++) {
      Finding a = laid.get(i);
      Finding b = read.get(i);
      assertThat(a.rule()).isSameAs(b.rule());
      assertThat(a.verdict()).as(a.rule().id()).isEqualTo(b.verdict());
      if (a.hasValue()) {
        double off = 1e-9 * (1 + Math.abs(b.value()));
        assertThat(a.value()).as(a.rule().id()).isCloseTo(b.value(), within(off));
        changed |= laid.size() == before.size() && a.value() != before.get(i).value();
      }
    }
    assertThat(changed).as("the number changes some finding").isTrue();
  }
}
