package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command on the two logs of sheet log.md, judged from its JSON by the sheet's section 6. */
class LogReferenceTest {
  /** Minutes by which a found and a true interval may lie apart: sheet log.md section 6. */
  private static final Map<String, Integer> WIDER =
      Map.of(
          "refill",
          45,
          "rain",
          60,
          "solution_change",
          60,
          "leak",
          240,
          "pump_failure",
          90,
          "stuck_float",
          120,
          "sensor_open",
          30,
          "sensor_short",
          30,
          "gap",
          30);

  @TempDir Path folder;

  private static long minutes(JsonNode text) {
    return OffsetDateTime.parse(text.asText()).toEpochSecond() / 60;
  }

  private static boolean match(JsonNode found, JsonNode happened) {
    String kind = happened.get("kind").asText();
    long wider = WIDER.get(kind);
    return found.get("kind").asText().equals(kind)
        && minutes(found.get("start")) <= minutes(happened.get("end")) + wider
        && minutes(found.get("end")) + wider >= minutes(happened.get("start"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"terrace", "yard"})
  void everythingThatHappenedIsToldAndNothingElse(String name) {
    JsonNode told = new LogFiles(folder).told(name, LogFiles.text(name + ".csv"));
    JsonNode truth = LogFiles.json(LogFiles.text(name + ".truth.json"));
    double step = truth.get("mean_step_L").asDouble();
    List<JsonNode> left = new ArrayList<>();
    told.get("events").forEach(left::add);
    for (JsonNode happened : truth.get("events")) {
      JsonNode found = null;
      for (JsonNode one : left) {
        found = found == null && match(one, happened) ? one : found;
      }
      assertThat(found).as(happened.toString()).isNotNull();
      left.remove(found);
      if (happened.get("kind").asText().equals("refill")) {
        assertThat(found.get("litres").asDouble())
            .isCloseTo(happened.get("litres").asDouble(), within(1.5 * step));
      }
    }
    assertThat(left).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"terrace", "yard"})
  void litresUseAndCountsAreThoseOfTheTruth(String name) {
    JsonNode told = new LogFiles(folder).told(name, LogFiles.text(name + ".csv"));
    JsonNode truth = LogFiles.json(LogFiles.text(name + ".truth.json"));
    double litres = truth.get("at_end").get("litres").asDouble();
    assertThat(told.get("volume_low_L").asDouble()).isLessThan(litres);
    assertThat(told.get("volume_high_L").asDouble()).isGreaterThan(litres);
    JsonNode file = truth.get("file");
    assertThat(told.get("rows").asInt()).isEqualTo(file.get("rows").asInt());
    assertThat(told.get("bad_cells").asInt()).isEqualTo(file.get("bad_cells").asInt());
    assertThat(told.get("duplicates").asInt()).isEqualTo(file.get("duplicates").asInt());
    assertThat(told.get("clock_not_set").asInt()).isEqualTo(file.get("odd_times").asInt());
    assertThat(told.get("headers_again").asInt()).isEqualTo(file.get("repeated_headers").asInt());
    double used = 0;
    double found = 0;
    for (JsonNode day : told.get("days")) {
      for (JsonNode true_ : truth.get("days")) {
        if (day.get("sure").asBoolean() && true_.get("date").equals(day.get("date"))) {
          used += true_.get("used_L").asDouble();
          found += day.get("use_L").asDouble();
        }
      }
    }
    assertThat(found).isCloseTo(used, within(0.1 * used));
    assertThat(used).isGreaterThan(30);
  }
}
