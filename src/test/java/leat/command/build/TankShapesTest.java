package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tanks of sections and with a sloping floor as typed, against level-tank-shapes.csv (closed
 * formulas and numerical integration, see its provenance column).
 */
class TankShapesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  static Stream<Sheet.Row> shapes() {
    return Sheet.of("level-tank-shapes.csv")
        .where(
            r ->
                r.text("expect").equals("value")
                    && (r.text("shape").equals("sloping_floor_box")
                        || r.text("shape").equals("sections")))
        .atLeast(12);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void everyRowOfTheSheet(Sheet.Row r) throws Exception {
    List<String> args = new ArrayList<>(List.of("tank", "--format", "json"));
    if (r.text("shape").equals("sections")) {
      args.addAll(List.of("--shape", "sections"));
      String[] levels = r.text("section_height_mm_list").split(";");
      String[] areas = r.text("section_area_cm2_list").split(";");
      for (int i = 0; i < levels.length; i++) {
        args.addAll(List.of("--surface", levels[i] + " mm = " + areas[i] + " cm2"));
      }
      if (!r.text("between_sections").equals("straight_area")) {
        args.addAll(List.of("--set", "tank.between=smooth"));
      }
    } else {
      args.addAll(List.of("--shape", "sloping-floor"));
      args.addAll(List.of("--top", r.text("length_mm") + " mm x " + r.text("width_mm") + " mm"));
      args.addAll(List.of("--height", r.text("height_mm") + " mm"));
      args.addAll(List.of("--floor-rise", r.text("floor_rise_mm") + " mm"));
      args.addAll(List.of("--floor-flat", r.text("floor_flat_mm") + " mm"));
    }
    boolean level = r.text("given").equals("level");
    args.addAll(
        level
            ? List.of("--level", r.text("level_mm") + " mm")
            : List.of("--volume", r.text("volume_L") + " L"));
    Cli cli = Cli.run(args.toArray(new String[0]));
    assertThat(cli.exit).as(r.id() + cli.err).isZero();
    JsonNode a = JSON.readTree(cli.out);
    assertThat(a.get("level_mm").asDouble())
        .as(r.idAndProvenance())
        .isCloseTo(r.num("level_mm"), within(r.num("tol_level_mm")));
    assertThat(a.get("volume_L").asDouble())
        .as(r.idAndProvenance())
        .isCloseTo(r.num("volume_L"), within(r.num("tol_L")));
  }

  @Test
  void overTheMarksIsSaid() {
    Cli full = Cli.run("tank", "--plan", "terrace.yaml", "--volume", "80 L");
    assertThat(full.exit).isZero();
    assertThat(full.out).contains("over the full mark at 330 mm");
    Cli spills = Cli.run("tank", "--plan", "terrace.yaml", "--volume", "94 L");
    assertThat(spills.out).contains("over the overflow at 385 mm: it spills before");
    Cli over = Cli.run("tank", "--plan", "terrace.yaml", "--volume", "120 L");
    assertThat(over.exit).isEqualTo(2);
    assertThat(over.err).contains("the tank holds 96.3 L to the rim");
  }

  /** The level of the trial typed either way is the same trial. */
  @Test
  void measuredRespectsTheLevel() {
    Cli at = Cli.run("pump", "--plan", "terrace.yaml", "--measured", "9.2 L/min @ 200 mm");
    Cli level =
        Cli.run("pump", "--plan", "terrace.yaml", "--measured", "9.2 L/min", "--level", "200 mm");
    assertThat(level.out).isEqualTo(at.out).contains("write  measured: 9.200 L/min @ 200 mm");
    Cli full = Cli.run("pump", "--plan", "terrace.yaml", "--measured", "9.2 L/min");
    assertThat(full.out).isNotEqualTo(at.out);
    Cli both =
        Cli.run(
            "pump",
            "--plan",
            "terrace.yaml",
            "--measured",
            "9.2 L/min @ 200 mm",
            "--level",
            "100 mm");
    assertThat(both.exit).isEqualTo(2);
  }

  /**
   * A tower that is dry at open valves: BA13's kind. The pump's share is low, the tall tower
   * starves, and closing the low one waters both.
   */
  @Test
  void throttlingWatersAStarvedTower() {
    String[] line = {
      "pump",
      "--plan",
      "terrace.yaml",
      "--set",
      "towers[0].outlet=1.95 m",
      "--set",
      "pipe.bore=12 mm"
    };
    Cli open = Cli.run(line);
    assertThat(open.exit).isEqualTo(1);
    assertThat(open.out).contains("the others pull it down").contains("--balance equal");
    String[] set = java.util.Arrays.copyOf(line, line.length + 2);
    set[line.length] = "--throttle-to";
    set[line.length + 1] = "2 L/min";
    Cli throttled = Cli.run(set);
    assertThat(throttled.exit).as(throttled.out).isZero();
    assertThat(throttled.out).startsWith("With the valves set every tower gets 2.00 L/min.");
  }

  /** Loadings of 5 to 20 L/min per metre of wall (practice) on inside diameters 105.2 and 80 mm. */
  @Test
  void eachPotsWallHasItsFlow() {
    Cli cli =
        Cli.run("pump", "--plan", "terrace.yaml", "--set", "towers[0].modules[1].diameter=84.8 mm");
    double low = 5 * Math.PI * 0.080;
    double high = 20 * Math.PI * 0.080;
    assertThat(cli.out)
        .contains("north, herb")
        .contains(
            String.format(
                java.util.Locale.ROOT, "%.1f L/min to %.1f L/min suit its wall", low, high));
  }
}
