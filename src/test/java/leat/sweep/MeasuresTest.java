package leat.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;

/** Every measure is the number that its command tells of the same design. */
class MeasuresTest {
  /** Plans and a variation of each that its measures feel. */
  private static final String[][] CASES = {
    {"terrace.yaml", "tank.low", "123 mm"},
    {"first-tower.yaml", "towers[*].modules[*].count", "7"},
    {"roof.yaml", "tank.mass", "6 kg"},
    {"balcony.yaml", "tank.low", "117 mm"},
    {"sender-tub.yaml", "sender.hysteresis", "5 mm"},
    {"logged-tub.yaml", "sender.hysteresis", "3 mm"},
    {"night-rate.yaml", "pump.power", "31 W"},
    {"stacked.yaml", "towers[*].base.height", "360 mm"},
  };

  @Test
  void equalsItsCommand() {
    Set<String> compared = new TreeSet<>();
    for (String[] one : CASES) {
      List<String> line = new ArrayList<>(List.of("sweep", one[0], "--rule", "none", "--all"));
      line.addAll(List.of("--vary", one[1] + "=" + one[2], "--format", "json"));
      for (Measure measure : Measures.all()) {
        line.addAll(List.of("--measure", measure.name()));
      }
      JsonNode row = Ran.run(line.toArray(new String[0])).json().get(0);
      SingleCommands single = new SingleCommands(one[0], Map.of(one[1], one[2]));
      for (Measure measure : Measures.all()) {
        Double told = single.value(measure);
        JsonNode swept = row.get(measure.name());
        String what = one[0] + " " + measure.name();
        assertThat(swept.isNull()).as("%s: %s, %s", what, swept, told).isEqualTo(told == null);
        if (told != null) {
          assertThat(swept.asDouble())
              .as(what)
              .isCloseTo(told, within(1e-9 * (1 + Math.abs(told))));
          compared.add(measure.name());
        }
      }
    }
    assertThat(compared).containsExactlyInAnyOrderElementsOf(Measures.names());
  }

  /** One list: names are used once, end in their unit, and say which command answers them. */
  @Test
  void oneList() {
    JsonNode rows = Ran.run("sweep", "--measures", "--format", "json").json();
    Set<String> names = new TreeSet<>();
    for (JsonNode row : rows) {
      assertThat(names.add(row.get("measure").asText())).as(row.toString()).isTrue();
      assertThat(row.get("better").asText()).isIn("up", "down");
      assertThat(row.get("reads").asText()).isNotEmpty();
    }
    assertThat(names).contains("litres_per_step", "pots", "height_mm", "tips_at_m_s", "kwh_season");
  }

  /** A season is run only when one of its measures, or a rule about it, is asked for. */
  @Test
  void onlyWhatIsAskedFor() {
    String[] wrong = {"--set", "site.weather=nowhere.csv", "--all", "--format", "json"};
    String[] line = {"sweep", "balcony.yaml", "--vary", "tank.low=117 mm", "--rule", "none"};
    List<String> pump = new ArrayList<>(List.of(line));
    pump.addAll(List.of(wrong));
    JsonNode row = Ran.run(pump.toArray(new String[0])).json().get(0);
    assertThat(row.get("flow_low_L_min").isNumber()).isTrue();
    pump.addAll(List.of("--measure", "cost_season"));
    assertThat(Ran.run(pump.toArray(new String[0])).json().get(0).get("cost_season").isNull())
        .isTrue();
  }
}
