package leat.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every row of a sweep over random designs is what check and the single commands say of that
 * design, asked with --set one by one. {@code -Dleat.oracle.designs} sets how many in all.
 */
class OracleTest {
  private static final int DESIGNS = Integer.getInteger("leat.oracle.designs", 500);
  private static final long SEED = Long.getLong("leat.oracle.seed", 14);
  private static final String[] MEASURES = {
    "flow_low_L_min",
    "flow_full_L_min",
    "margin_m",
    "margin_pct",
    "fill_time_s",
    "velocity_m_s",
    "drain_back_L",
    "usable_L",
    "height_mm",
    "pots",
    "filament_kg",
    "least_run_s",
    "kwh_day"
  };

  @TempDir Path folder;

  private final Random random = new Random(SEED);
  private int refused;
  private int fine;

  private String between(double low, double high, String unit) {
    double value = low + random.nextDouble() * (high - low);
    return String.format(Locale.ROOT, "%.3f %s", value, unit);
  }

  private Map<String, String> design(int tower) {
    Map<String, String> design = new LinkedHashMap<>();
    design.put("towers[*].riser.bore", between(7, 20, "mm"));
    design.put("towers[*].riser.material", random.nextBoolean() ? "silicone" : "rubber");
    design.put("towers[" + tower + "].outlet", between(0.9, 2.3, "m"));
    design.put("pump.power", between(5, 45, "W"));
    design.put("tank.low", between(30, 260, "mm"));
    design.put("timing[0].run", between(10, 200, "s"));
    design.put("timing[0].rest", between(3, 50, "min"));
    design.put("towers[*].modules[*].count", String.valueOf(1 + random.nextInt(12)));
    return design;
  }

  @Test
  void rowsAreWhatSingleCommandsSay() throws IOException {
    String[] plans = {"first-tower.yaml", "terrace.yaml", "proud-tower.yaml"};
    for (int p = 0; p < plans.length; p++) {
      List<Map<String, String>> designs = new ArrayList<>();
      int n = DESIGNS / plans.length + (p < DESIGNS % plans.length ? 1 : 0);
      for (int i = 0; i < n; i++) {
        designs.add(design(plans[p].equals("terrace.yaml") ? 1 : 0));
      }
      compare(plans[p], designs);
    }
    // the draws reach designs that pass, fail and cannot be
    assertThat(refused).isGreaterThan(DESIGNS / 100);
    assertThat(fine).isGreaterThan(DESIGNS / 100);
  }

  private void compare(String plan, List<Map<String, String>> designs) throws IOException {
    Path table = folder.resolve("designs.csv");
    StringBuilder csv = new StringBuilder(String.join(",", designs.get(0).keySet())).append('\n');
    designs.forEach(d -> csv.append(String.join(",", d.values())).append('\n'));
    Files.writeString(table, csv);
    List<String> line = new ArrayList<>(List.of("sweep", plan, "--rows", table.toString()));
    line.addAll(List.of("--all", "--format", "json"));
    for (String measure : MEASURES) {
      line.addAll(List.of("--measure", measure));
    }
    JsonNode rows = Ran.run(line.toArray(new String[0])).json();
    assertThat(rows).hasSameSizeAs(designs);
    for (int i = 0; i < designs.size(); i++) {
      compare(plan + " " + designs.get(i), rows.get(i), new SingleCommands(plan, designs.get(i)));
    }
  }

  private void compare(String what, JsonNode row, SingleCommands single) {
    int[] counts = single.verdicts();
    if (!row.get("refused").isNull()) {
      assertThat(counts).as(what + row).isNull();
      refused++;
      return;
    }
    assertThat(counts).as(what).isNotNull();
    String[] keys = {"passes", "fails", "warns", "unknowns"};
    for (int k = 0; k < keys.length; k++) {
      assertThat(row.get(keys[k]).asInt()).as("%s: %s", what, keys[k]).isEqualTo(counts[k]);
    }
    fine += counts[1] == 0 ? 1 : 0;
    if (single.worstRule() != null) {
      assertThat(row.get("worst_rule").asText()).as(what).isEqualTo(single.worstRule());
    }
    for (String name : MEASURES) {
      Double told = single.value(Measures.find(name));
      JsonNode swept = row.get(name);
      assertThat(swept.isNull())
          .as("%s: %s %s %s", what, name, swept, told)
          .isEqualTo(told == null);
      if (told != null) {
        double error = 1e-9 * (1 + Math.abs(told));
        assertThat(swept.asDouble()).as("%s: %s", what, name).isCloseTo(told, within(error));
      }
    }
  }
}
