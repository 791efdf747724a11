package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** parts as typed, against build-tower.csv, build-print.csv, and sums by hand. */
class PartsCommandTest {
  private static JsonNode json(String... more) {
    List<String> line = new ArrayList<>(List.of("parts", "--format=json"));
    line.addAll(List.of(more));
    return Ran.run(line.toArray(new String[0])).json();
  }

  static Stream<Sheet.Row> towers() {
    return Sheet.of("build-tower.csv").atLeast(8);
  }

  @ParameterizedTest
  @MethodSource("towers")
  void heightsAndPotsOfTheSheet(Sheet.Row r) {
    JsonNode a =
        json(
            "--plan=kitchen.yaml",
            "--set=tank.stand=" + r.text("stand_h_mm") + " mm",
            "--set=crops=",
            "--set=towers=[{base: {height: "
                + r.text("base_h_mm")
                + " mm}, cap: {height: "
                + r.text("cap_h_mm")
                + " mm}, modules: [{count: "
                + r.text("n_modules")
                + ", height: "
                + r.text("module_h_mm")
                + " mm, overlap: "
                + r.text("overlap_mm")
                + " mm, diameter: "
                + r.text("tube_OD_mm")
                + " mm, pots: "
                + r.text("pots_per_module")
                + ", pot: "
                + r.text("net_pot_mm")
                + " mm, pot_at: "
                + r.text("pot_z_in_module_mm")
                + " mm, turn: "
                + r.text("offset_deg")
                + " deg, mass: 300 g}]}]",
            "--reach=" + r.text("reach_limit_mm") + " mm");
    JsonNode tower = a.get("towers").get(0);
    assertThat(a.get("height_mm").asDouble()).isEqualTo(r.num("tower_h_mm"));
    assertThat(a.get("total_height_mm").asDouble()).isEqualTo(r.num("total_h_mm"));
    assertThat(a.get("pots").asDouble()).isEqualTo(r.num("pots"));
    assertThat(a.get("top_pot_mm").asDouble())
        .isCloseTo(r.num("top_pot_z_mm"), withinPercentage(0.1));
    assertThat(tower.get("in_reach").asText())
        .as(r.idAndProvenance())
        .isEqualTo(r.text("reach_ok"));
    assertThat(tower.get("modules_in_reach").asDouble()).isEqualTo(r.num("max_modules_in_reach"));
    assertThat(tower.get("pot_room_mm").asDouble())
        .isCloseTo(r.num("pot_clearance_mm"), withinPercentage(0.1));
    assertThat(tower.get("pots_fit").asText()).isEqualTo(r.text("pots_fit"));
  }

  /** Mass is pieces times each, and the shopping list adds up to the total to the cent. */
  @Test
  void massesAndCostsAddUp() {
    JsonNode a = json("--plan=roof.yaml");
    double mass = 0;
    for (JsonNode part : a.get("parts")) {
      double each = part.get("pieces").asInt() * part.get("each_g").asDouble() / 1000;
      assertThat(part.get("mass_kg").asDouble()).isCloseTo(each, withinPercentage(1e-9));
      mass += each;
    }
    assertThat(a.get("filament_net_kg").asDouble()).isCloseTo(mass, withinPercentage(1e-9));
    BigDecimal sum = BigDecimal.ZERO;
    String[] lines = Ran.run("parts", "--plan=roof.yaml", "--format=csv").lines();
    assertThat(lines[0]).isEqualTo("part,pieces,each_g,print_h_each,print_h,mass_kg,cost");
    for (int i = 1; i < lines.length - 1; i++) {
      sum = sum.add(new BigDecimal(lines[i].substring(lines[i].lastIndexOf(',') + 1)));
    }
    assertThat(sum).isEqualByComparingTo(a.get("cost_total").decimalValue());
  }

  /**
   * By hand: 7 x 260 g + 200 g = 2.02 kg; x 1.08 = 2.1816 kg; 3 spools at 27 = 81; 47 h x 130 W =
   * 6.11 kWh x 0.31 = 1.89; 4 days of 2 prints for 8 parts; 7 x 140 + 400 + 40 = 1420 mm.
   */
  @Test
  void roofByHand() {
    JsonNode a = json("--plan=roof.yaml");
    assertThat(a.get("filament_gross_kg").asDouble()).isEqualTo(2.1816);
    assertThat(a.get("spools").asInt()).isEqualTo(3);
    assertThat(a.get("cost_filament").asDouble()).isEqualTo(81);
    assertThat(a.get("energy_kwh").asDouble()).isEqualTo(6.11);
    assertThat(a.get("cost_energy").asDouble()).isEqualTo(1.89);
    assertThat(a.get("print_days").asInt()).isEqualTo(4);
    assertThat(a.get("height_mm").asDouble()).isEqualTo(1420);
    assertThat(a.get("cost_total").asDouble()).isEqualTo(162.89);
    assertThat(a.get("mass_wet_off_kg").asDouble()).isEqualTo(8.18);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 12})
  void otherNumbersOfModules(int n) {
    JsonNode a = json("--plan=roof.yaml", "--modules=" + n);
    assertThat(a.get("pots").asInt()).isEqualTo(4 * n);
    assertThat(a.get("parts").get(0).get("pieces").asInt()).isEqualTo(n);
    assertThat(a.get("height_mm").asDouble()).isCloseTo(440 + 140 * n, withinPercentage(1e-9));
  }

  @Test
  void potsThatCannotFitAndPricesThatAreNotKnownAreSaid() {
    Ran ran =
        Ran.run(
            "parts",
            "--plan=stacked.yaml",
            "--set=towers[0].modules[0].pots=5",
            "--set=towers[0].modules[0].pot=75 mm");
    assertThat(ran.out()).contains("5 pots of 75.0 mm do not fit").contains("no money");
    assertThat(json("--plan=stacked.yaml").get("cost_total").isNull()).isTrue();
  }

  /** PLA softens from 60 C, 140 F (its makers' pages, see Material). */
  @Test
  void theSunOnPlaIsToldInTheReadersUnits() {
    String[] line = {"parts", "--plan", "stacked.yaml", "--set", "towers[0].material=PLA"};
    assertThat(Cli.run(line).out).contains("PLA softens from 60 C and sags");
    String[] us = Arrays.copyOf(line, line.length + 2);
    us[line.length] = "--units";
    us[line.length + 1] = "us";
    assertThat(Cli.run(us).out).contains("PLA softens from 140 F and sags");
  }
}
