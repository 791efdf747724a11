package leat.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two logs of the sheet, judged by its section 6. */
class ReferenceLogsTest {
  static String text(String name) {
    try (InputStream in = ReferenceLogsTest.class.getResourceAsStream("/reference/logs/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static LogSystem system(String name) {
    return LogSystems.of(text(name + ".plan.yaml"), text(name + ".csv").startsWith("time;counts"));
  }

  static LogText log(String name) {
    return LogText.of(text(name + ".csv"), system(name).zone());
  }

  static Truth truth(String name) {
    return Truth.of(text(name + ".truth.json"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"terrace", "yard"})
  void everythingIsFoundAndNothingElse(String name) {
    LogReport report = LogText.pass(system(name), log(name).lines);
    Score score = Score.of(name, report, truth(name));
    System.out.println(score.table(name));
    assertThat(score.wrong).isEmpty();
    assertThat(score.litres).isEmpty();
    assertThat(score.endInside).isEqualTo(1);
    assertThat(score.useRms()).isLessThan(0.3);
    assertThat(1000 * report.meanStep()).isCloseTo(truth(name).meanStep(), within(0.15));
  }
}
