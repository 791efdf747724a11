package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Declared;
import leat.cli.Examples;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** wind as typed, against stability-overturn.csv and stability-wind-profile.csv. */
class WindCommandTest {
  private static final double PERCENT = 0.1;

  static Stream<Sheet.Row> overturns() {
    return Sheet.of("stability-overturn.csv").having("v_gust_m_s").atLeast(28);
  }

  private static String face(Sheet.Row r, String part) {
    return r.text(part + "_A_m2")
        + " m2 @ "
        + r.text(part + "_z_m")
        + " m x "
        + r.text(part + "_cf");
  }

  private static List<String> typed(Sheet.Row r) {
    double tower = r.num("tower_kg") + r.num("plants_kg");
    double mass = r.num("tank_empty_kg") + r.num("solution_L") * r.num("solution_kg_L") + tower;
    List<String> line =
        new ArrayList<>(
            List.of(
                "wind",
                "--mass=" + mass + " kg",
                "--foot=" + r.text("foot_along_wind_m") + " m",
                "--gust=" + r.text("v_gust_m_s") + " m/s",
                "--density=" + r.text("rho_kg_m3") + " kg/m3",
                "--friction=" + r.text("mu"),
                "--face=" + face(r, "tank"),
                "--face=" + face(r, "tower"),
                "--face=" + face(r, "plants"),
                "--lid=" + r.text("lid_z_m") + " m",
                "--tower=" + tower + " kg",
                "--foot-radius=" + r.text("tower_foot_radius_m") + " m",
                "--format=json"));
    if (!r.text("guy_anchor").equals("none")) {
      line.addAll(
          List.of(
              "--lines=" + r.text("guy_n"),
              "--ring=" + r.text("guy_ring_h_m") + " m",
              "--run=" + r.text("guy_run_m") + " m",
              "--anchor=" + r.text("guy_anchor")));
    }
    return line;
  }

  private static void same(Sheet.Row r, JsonNode a, String key, String column) {
    if (r.text(column).isEmpty()) {
      assertThat(a.get(key).isNull()).as("%s of %s", key, r.idAndProvenance()).isTrue();
    } else {
      assertThat(a.get(key).asDouble())
          .as("%s of %s", key, r.idAndProvenance())
          .isCloseTo(r.num(column), withinPercentage(PERCENT));
    }
  }

  @ParameterizedTest
  @MethodSource("overturns")
  void everyCaseOfTheSheet(Sheet.Row r) {
    Ran ran = Ran.run(typed(r).toArray(new String[0]));
    JsonNode a = ran.json();
    same(r, a, "overturning_Nm", "M_over_Nm");
    same(r, a, "righting_Nm", "M_right_Nm");
    same(r, a, "safety_factor", "SF_overturn");
    same(r, a, "utilisation", "EQU_util");
    same(r, a, "tips_at_m_s", "v_tip_m_s");
    same(r, a, "passes_to_m_s", "v_EQU_m_s");
    same(r, a, "slides_at_m_s", "v_slide_m_s");
    same(r, a, "lid_tips_at_m_s", "v_tip_lid_m_s");
    if (!r.text("guy_anchor").equals("none")) {
      same(r, a, "tension_N", "T_EQU_N");
      same(r, a, "peg_uplift_N", "anchor_uplift_EQU_N");
      same(r, a, "peg_horizontal_N", "anchor_horizontal_EQU_N");
      same(r, a, "angle_deg", "guy_alpha_deg");
    }
    assertThat(ran.exit()).isEqualTo(a.get("passes").asBoolean() ? 0 : 1);
    assertThat(a.get("states").get(0).get("tips_at_m_s")).isEqualTo(a.get("tips_at_m_s"));
  }

  static Stream<Sheet.Row> winds() {
    return Sheet.of("stability-wind-profile.csv").having("v_gust_m_s").atLeast(5);
  }

  /** The mean of a weather service becomes a gust once; published q_p where the sheet has it. */
  @ParameterizedTest
  @MethodSource("winds")
  void meanBecomesGustOnce(Sheet.Row r) {
    String[] words = {"coast", "flat", "open", "suburb", "city"};
    String terrain = words[List.of("0", "I", "II", "III", "IV").indexOf(r.text("terrain"))];
    JsonNode a =
        Ran.run(
                "wind",
                "--mass=40 kg",
                "--foot=0.4 m",
                "--face=0.3 m2 @ 1 m x 1.2",
                "--mean=" + r.text("vb_m_s") + " m/s",
                "--terrain=" + terrain,
                "--height-above-ground=" + r.text("z_m") + " m",
                "--format=json")
            .json();
    assertThat(a.get("gust_m_s").asDouble())
        .as(r.idAndProvenance())
        .isCloseTo(r.num("v_gust_m_s"), withinPercentage(100 * r.num("tol_rel")));
    assertThat(a.get("mean_m_s").asDouble()).isEqualTo(r.num("vb_m_s"));
  }

  /** By hand: 0.9 kg/m3 does not matter to a balance; the tip speed is free of the wind chosen. */
  @ParameterizedTest
  @ValueSource(strings = {"3 m/s", "12 m/s", "40 m/s"})
  void tipSpeedDoesNotHangOnTheWind(String gust) {
    JsonNode a = Ran.run("wind", "--plan=stacked.yaml", "--gust=" + gust, "--format=json").json();
    JsonNode b = Ran.run("wind", "--plan=stacked.yaml", "--format=json").json();
    for (int i = 0; i < 2; i++) {
      assertThat(a.get("states").get(i).get("tips_at_m_s"))
          .isEqualTo(b.get("states").get(i).get("tips_at_m_s"));
    }
  }

  /**
   * Lines hold it upright, the foot the rest. By hand for roof.yaml on wet plastic, section 4 of
   * the sheet, wind on the long face: F from the gust that slides it, R from the peg's level pull,
   * (R + mu (0.9 W + R tan a))/(0.9 F). On the short face the lines take less, so it is no better.
   */
  @Test
  void footUnderLinesMaySlide() {
    JsonNode a = Ran.run("wind", "--plan=roof.yaml", "--friction=0.2", "--format=json").json();
    JsonNode refill = a.get("states").get(0);
    JsonNode line = a.get("lines").get(0);
    double weight = 9.80665 * refill.get("total_mass_kg").asDouble();
    double share = a.get("gust_m_s").asDouble() / refill.get("slides_at_m_s").asDouble();
    double force = 0.2 * weight * share * share;
    double pull = line.get("peg_horizontal_N").asDouble() / (2 / Math.sqrt(3));
    double steep = Math.tan(Math.toRadians(line.get("angle_deg").asDouble()));
    double longFace = (pull + 0.2 * (0.9 * weight + pull * steep)) / (0.9 * force);
    JsonNode found =
        Ran.run(
                "check",
                "roof.yaml",
                "--set=tank.friction=0.2",
                "--rule=wind-slide",
                "--format=json")
            .json()
            .get(0);
    assertThat(found.get("verdict").asText()).isEqualTo("warn");
    assertThat(found.get("value").asDouble()).isBetween(0.8 * longFace, longFace);
    assertThat(Ran.run("wind", "--plan=roof.yaml", "--friction=0.2").out())
        .contains("not its foot", String.format("%.3f times", found.get("value").asDouble()));
    assertThat(Ran.run("wind", "--plan=roof.yaml", "--friction=0.6").out())
        .doesNotContain("not its foot");
  }

  /**
   * The same of the bare sum. By hand: q 250 Pa, F 300 N, M 300 N m against 78.5, so the ring at 2
   * m pulls R = (450 - 70.6)/2 = 190 N and presses 379 N: (190 + 0.3 (353 + 379))/270 = 1.52. At 1
   * m it pulls 379 N, and holds.
   */
  @Test
  void footUnderLinesMaySlideInTheBareSum() {
    String[] sum = {
      "wind", "--mass=40 kg", "--foot=0.4 m", "--gust=20 m/s", "--face=1 m2 @ 1 m x 1.2"
    };
    assertThat(Ran.run(with(sum, "--lines=3", "--ring=2 m", "--run=1 m")).out())
        .startsWith("Its lines hold it")
        .contains("not its foot", "1.52 times");
    assertThat(Ran.run(with(sum, "--lines=3", "--ring=1 m", "--run=1 m")).out())
        .startsWith("Its lines hold it")
        .doesNotContain("not its foot");
    // 60 N push, 14.7 N of friction hold; 49 N m of weight against 12 of wind
    assertThat(
            Ran.run(
                    "wind",
                    "--mass=5 kg",
                    "--foot=2 m",
                    "--gust=20 m/s",
                    "--face=0.2 m2 @ 0.2 m x 1.2")
                .out())
        .startsWith("It does not tip")
        .contains("shifts it");
  }

  private static String[] with(String[] line, String... more) {
    List<String> all = new ArrayList<>(List.of(line));
    all.addAll(List.of(more));
    return all.toArray(new String[0]);
  }

  /** What rolls its modules off is a no, in wind as in check; what only opens a joint warns. */
  @ParameterizedTest
  @CsvSource({"8 m/s, fail, 1", "6 m/s, warn, 0"})
  void modulesThatRollOffAreANo(String gust, String verdict, int exit) {
    String[] firm = {"--set=site.wind.speed=" + gust, "--set=tank.mass=400 kg"};
    Ran wind = Ran.run("wind", "--plan=kitchen.yaml", firm[0], firm[1], "--format=json");
    assertThat(wind.exit()).isEqualTo(exit);
    assertThat(wind.json().get("passes").asBoolean()).isEqualTo(exit == 0);
    Ran check =
        Ran.run("check", "kitchen.yaml", firm[0], firm[1], "--rule=wind-joint", "--format=json");
    assertThat(check.exit()).isEqualTo(exit);
    assertThat(check.json().get(0).get("verdict").asText()).isEqualTo(verdict);
  }

  @Test
  void guyedRoofPassesByItsLines() {
    Ran ran = Ran.run("wind", "--plan=roof.yaml");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).startsWith("It stands by its lines").contains("a third at best");
    JsonNode a = Ran.run("wind", "--plan=roof.yaml", "--format=json").json();
    assertThat(a.get("states").get(0).get("utilisation").asDouble()).isGreaterThan(1);
    assertThat(a.get("lines").get(0).get("bears").asBoolean()).isTrue();
    Ran weak = Ran.run("wind", "--plan=roof.yaml", "--set=towers[0].guys.breaking=200 N");
    assertThat(weak.exit()).isEqualTo(1);
    assertThat(weak.out()).startsWith("It fails: the worst line");
  }

  /** Lines to the tank change neither tip speed nor safety factor: the forces are internal. */
  @Test
  void linesToTheTankAddNothing() {
    JsonNode tank =
        Ran.run("wind", "--plan=roof.yaml", "--set=towers[0].guys.anchor=tank", "--format=json")
            .json();
    JsonNode none =
        Ran.run("wind", "--plan=roof.yaml", "--set=towers[0].guys=", "--format=json").json();
    assertThat(tank.get("states").get(0).get("tips_at_m_s"))
        .isEqualTo(none.get("states").get(0).get("tips_at_m_s"));
    assertThat(tank.get("passes").asBoolean()).isFalse();
    assertThat(tank.get("notes").toString()).contains("tied-to-tank");
  }

  @Test
  void stackedTowerOpensAtABreeze() {
    Ran ran = Ran.run("wind", "--plan=stacked.yaml", "--format=json");
    assertThat(ran.exit()).isEqualTo(1);
    JsonNode joint = ran.json().get("joints").get(0);
    assertThat(joint.get("opens_at_m_s").asDouble()).isBetween(3.0, 6.0);
    Ran text = Ran.run("wind", "--plan=stacked.yaml");
    assertThat(text.out()).contains("off its lid").contains("keeps it shut");
  }

  /** A tower that stands, and sheds its modules at the site's gust, is not said to stand. */
  @Test
  void modulesThatRollOffAreSaidFirstAndTheRuleReadsTheSameJoint() {
    String[] firm = {
      "--plan=kitchen.yaml", "--set=site.wind.speed=8 m/s", "--set=tank.mass=400 kg"
    };
    Ran text = Ran.run("wind", firm[0], firm[1], firm[2]);
    assertThat(text.out())
        .startsWith("It fails: its foot stands, but a gust of 7.13 m/s rolls the modules of herbs");
    double opens =
        Ran.run("wind", firm[0], firm[1], firm[2], "--format=json")
            .json()
            .get("joints")
            .get(0)
            .get("opens_at_m_s")
            .asDouble();
    JsonNode finding =
        Ran.run("check", firm[0], firm[1], firm[2], "--rule=wind-joint", "--format=json")
            .json()
            .get(0);
    assertThat(finding.get("value").asDouble()).isEqualTo(opens);
    assertThat(finding.get("verdict").asText()).isEqualTo("fail");
  }

  @Test
  void kitchenNeedsNothing() {
    Ran ran = Ran.run("wind", "--plan=kitchen.yaml");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).startsWith("It stands: the site's gust is 3.00 m/s");
  }

  /** More solution never tips earlier, at one growth. */
  @Test
  void moreSolutionNeverTipsEarlier() {
    JsonNode states =
        Ran.run(
                "wind",
                "--plan=stacked.yaml",
                "--state=5 L @ 100 %",
                "--state=25 L @ 100 %",
                "--state=60 L @ 100 %",
                "--format=json")
            .json()
            .get("states");
    assertThat(states).hasSize(3);
    for (int i = 1; i < 3; i++) {
      assertThat(states.get(i).get("tips_at_m_s").asDouble())
          .isGreaterThan(states.get(i - 1).get("tips_at_m_s").asDouble());
    }
    assertThat(states.get(1).get("solution_L").asDouble()).isEqualTo(25);
  }

  @Test
  void csvIsTheStates() {
    String[] lines = Ran.run("wind", "--plan=roof.yaml", "--format=csv").lines();
    assertThat(lines[0])
        .startsWith(
            "state,solution_L,total_mass_kg,overturning_Nm,righting_Nm,safety_factor,utilisation,"
                + "tips_at_m_s,slides_at_m_s,lid_tips_at_m_s,mean_wind_m_s,beaufort,passes");
    assertThat(lines[1]).startsWith("refill mark,");
    assertThat(lines[2]).startsWith("full,");
  }

  @Test
  void examplesRun() {
    Examples.run(Declared.listed("wind"));
    Examples.run(Declared.listed("parts"));
  }

  /** By hand: q = 1.25 x 15^2/2 = 140.6 Pa; 140.6 (0.21 x 0.175 x 1.3 + 0.255 x 1.2 x 1.2) N m. */
  @Test
  void explainShowsTheMoments() {
    JsonNode workings =
        Ran.run(
                "wind",
                "--mass=75 kg",
                "--foot=0.40 m",
                "--gust=15 m/s",
                "--face=0.21 m2 @ 0.175 m x 1.3",
                "--face=0.255 m2 @ 1.2 m x 1.2",
                "--explain",
                "--format=json")
            .json()
            .get("workings");
    assertThat(workings).hasSize(4);
    assertThat(workings.get(0).get("result").asDouble())
        .isCloseTo(140.625 * (0.21 * 0.175 * 1.3 + 0.255 * 1.2 * 1.2), within(1e-6));
    assertThat(workings.get(1).get("result").asDouble())
        .isCloseTo(75 * 9.80665 * 0.2, within(1e-3));
  }
}
