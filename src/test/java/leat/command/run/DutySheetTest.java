package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Command;
import org.junit.jupiter.api.Test;

/** The sheets' rows asked on the command line, so that units and flags are proved too. */
class DutySheetTest {
  private static void near(Cli cli, String key, double expected, double tolerance) {
    assertThat(cli.number(key))
        .as(key + " of " + cli.out + cli.err)
        .isCloseTo(expected, within(Math.max(1e-9, Math.abs(expected) * tolerance)));
  }

  private static Cli run(List<String> line) {
    line.add("--format");
    line.add("json");
    return Cli.run(line.toArray(new String[0]));
  }

  private static List<String> line(String... words) {
    return new ArrayList<>(List.of(words));
  }

  @Test
  void dutyRows() {
    Sheet.of("energy-duty.csv")
        .where(r -> r.num("pump_W") > 0)
        .atLeast(8)
        .forEach(
            r -> {
              List<String> line =
                  line(
                      "duty",
                      "--power",
                      r.text("pump_W") + " W",
                      "--run",
                      r.text("on_s") + " s",
                      "--rest",
                      r.text("off_s") + " s",
                      "--price",
                      r.text("price_per_kWh") + " EUR/kWh",
                      "--controller",
                      r.text("controller_W") + " W",
                      "--coil",
                      r.text("coil_W") + " W",
                      "--set",
                      "controller.relay.coil_when=\"" + r.text("coil_when") + "\"",
                      "--standing",
                      r.text("standing_per_day") + " EUR/d",
                      "--standing-share",
                      100 * r.num("standing_share") + " %",
                      "--days",
                      r.text("days"),
                      "--dry-limit",
                      "10 d");
              Cli cli = run(line);
              assertThat(cli.exit).as(cli.err).isZero();
              double tolerance = r.num("tol_rel");
              near(cli, "run_total_h", r.num("run_hours_total"), tolerance);
              near(cli, "run_share_pct", r.num("on_share_pct"), tolerance);
              near(cli, "starts_per_day", r.num("starts_per_day"), tolerance);
              near(cli, "kwh_day", r.num("kwh_day"), tolerance);
              near(cli, "cost_day", r.num("cost_day"), tolerance);
              near(cli, "kwh_total", r.num("kwh_total"), tolerance);
              near(cli, "cost_total", r.num("cost_total"), tolerance);
            });
  }

  @Test
  void backupRows() {
    Sheet.of("energy-backup.csv")
        .where(r -> r.num("peukert_k") == 1 && r.num("hours") >= 8)
        .atLeast(3)
        .forEach(
            r -> {
              Cli cli =
                  run(
                      line(
                          "duty",
                          "backup",
                          "--power",
                          r.text("pump_W") + " W",
                          "--run",
                          r.text("on_s") + " s",
                          "--rest",
                          r.text("off_s") + " s",
                          "--hours",
                          r.text("hours") + " h",
                          "--battery",
                          r.text("battery_V") + " V",
                          "--controller",
                          r.text("controller_W") + " W",
                          "--set",
                          "controller.relay={coil: "
                              + r.text("coil_W")
                              + " W, coil_when: \""
                              + r.text("coil_when")
                              + "\"}",
                          "--depth",
                          r.text("depth_of_discharge_pct") + " %",
                          "--inverter",
                          r.text("inverter_efficiency_pct") + " %",
                          "--idle",
                          r.text("inverter_idle_W") + " W",
                          "--reserve",
                          r.text("reserve_pct") + " %"));
              double tolerance = r.num("tol_rel");
              near(cli, "average_draw_W", r.num("battery_average_W"), tolerance);
              near(cli, "battery_Wh", r.num("battery_Wh"), tolerance);
              near(cli, "average_A", r.num("average_A"), tolerance);
              near(cli, "pump_on_A", r.num("pump_on_A"), tolerance);
              near(cli, "capacity_Ah", r.num("capacity_Ah"), tolerance);
            });
  }

  /** BK01: 20 Ah last 13.96 h behind an inverter that idles at 3 W. */
  @Test
  void howLongABatteryLasts() {
    List<String> asked =
        line(
            "duty",
            "backup",
            "--power",
            "22 W",
            "--run",
            "90 s",
            "--rest",
            "12 min",
            "--battery",
            "12 V",
            "--controller",
            "1 W",
            "--depth",
            "50 %",
            "--inverter",
            "85 %",
            "--idle",
            "3 W",
            "--capacity",
            "20 Ah");
    Cli cli = run(new ArrayList<>(asked));
    near(cli, "lasts_h", 13.9619772, 1e-6);
    assertThat(cli.exit).isZero();
    asked.add("--hours");
    asked.add("14 h");
    Cli more = run(asked);
    assertThat(more.exit).isEqualTo(1);
  }

  @Test
  void cableRows() {
    Sheet.of("energy-cable.csv")
        .where(
            r ->
                r.text("resistance_from").equals("class5")
                    && r.text("awg").isBlank()
                    && r.text("constant_power_possible").equals("true"))
        .atLeast(5)
        .forEach(
            r -> {
              Cli cli =
                  run(
                      line(
                          "duty",
                          "cable",
                          "--dc",
                          r.text("supply_V") + " V",
                          "--power",
                          r.text("pump_W") + " W",
                          "--length",
                          r.text("one_way_length_m") + " m",
                          "--section",
                          r.text("area_mm2") + " mm2",
                          "--temperature",
                          r.text("conductor_C") + " C",
                          "--inrush",
                          r.text("inrush_multiple"),
                          "--least-voltage",
                          r.text("least_pump_V") + " V"));
              double tolerance = r.num("tol_rel");
              near(cli, "loop_ohm", r.num("loop_ohm"), tolerance);
              near(cli, "drop_V", r.num("drop_V_constant_current"), tolerance);
              near(cli, "pump_V", r.num("pump_V"), tolerance);
              near(cli, "electronic_drop_pct", r.num("drop_pct"), tolerance);
              near(cli, "cable_loss_W", r.num("cable_loss_W"), tolerance);
              near(cli, "section_for_5pct_mm2", r.num("area_for_5pct_mm2"), tolerance);
              assertThat(cli.out).contains("\"starts\": " + r.text("starts"));
            });
  }

  @Test
  void theLeastSectionIsProposed() {
    Cli cli = run(line("duty", "cable", "--dc", "12 V", "--power", "18 W", "--length", "14 m"));
    assertThat(cli.exit).isZero();
    assertThat(cli.number("section_mm2")).isEqualTo(1.5);
    Cli thinner =
        run(
            line(
                "duty",
                "cable",
                "--dc",
                "12 V",
                "--power",
                "18 W",
                "--length",
                "14 m",
                "--section",
                "1 mm2"));
    assertThat(thinner.number("electronic_drop_pct")).isGreaterThan(5);
    assertThat(cli.number("electronic_drop_pct")).isLessThanOrEqualTo(5);
  }

  @Test
  void aCableThatFeedsNothingIsANo() {
    Cli none = Cli.run("duty", "cable", "--dc", "12 V", "--power", "60 W", "--length", "40 m");
    assertThat(none.exit).isEqualTo(1);
    assertThat(none.out).startsWith("No cord up to 6 mm2 feeds 60 W at 12 V over 40 m:");
    Cli thin =
        run(
            line(
                "duty",
                "cable",
                "--dc",
                "12 V",
                "--power",
                "180 W",
                "--length",
                "30 m",
                "--section",
                "0.5 mm2"));
    assertThat(thin.exit).isEqualTo(1);
    assertThat(thin.number("pump_V")).isNull();
    assertThat(thin.out).contains("\"fuse_protects_cord\": false");
  }

  @Test
  void answersAboutMainsBatteriesAndCablesCaution() {
    String mains = "Mind: mains near water kills: a supply with a residual-current device";
    String battery = "Mind: fuse the battery at its pole";
    assertThat(Cli.run("duty", "--plan", "first-tower.yaml").out).contains(mains);
    Cli backup = Cli.run("duty", "backup", "--plan", "night-rate.yaml");
    assertThat(backup.out).contains(mains).contains(battery);
    Cli cable = Cli.run("duty", "cable", "--dc", "12 V", "--power", "18 W", "--length", "5 m");
    // 12 V hurts nobody
    assertThat(cable.out).doesNotContain("mains").contains("Mind: the fuse sits");
    assertThat(
            Cli.run("duty", "--dc", "12 V", "--power", "18 W", "--run", "90 s", "--rest", "12 min")
                .out)
        .doesNotContain("mains");
  }

  /** Sheet row CB08: the formula's -17.25 V at the start is no voltage that a pump can see. */
  @Test
  void noVoltageIsNegative() {
    String[] line = {
      "duty",
      "cable",
      "--dc",
      "12 V",
      "--power",
      "60 W",
      "--length",
      "25 m",
      "--section",
      "0.5 mm2",
      "--inrush",
      "3",
      "--least-voltage",
      "9 V",
      "--format"
    };
    Cli json = Cli.run(DutyCommandTest.with(line, "json"));
    assertThat(json.exit).isEqualTo(1);
    assertThat(json.number("start_pump_V")).isZero();
    assertThat(json.out).contains("\"verdict\": \"cannot-feed\"");
    assertThat(Cli.run(DutyCommandTest.with(line, "csv")).out).doesNotContain(",-");
    assertThat(Cli.run(DutyCommandTest.with(line, "text")).out).doesNotContain(" -");
  }

  /**
   * Sheet rows CB09 and CB10 by gauge. Least gauge by hand: 5 % of 12 V leaves 11.4 V, 1.579 A, so
   * 0.38 ohm over 28 m, 1.27 mm2 of copper: 16 AWG has 1.31 mm2, 18 AWG 0.823 mm2.
   */
  @Test
  void wireGaugesInAndOut() {
    Sheet.of("energy-cable.csv")
        .where(r -> !r.text("awg").isBlank())
        .atLeast(2)
        .forEach(
            r -> {
              List<String> line =
                  line(
                      "duty",
                      "cable",
                      "--dc",
                      r.text("supply_V") + " V",
                      "--power",
                      r.text("pump_W") + " W",
                      "--length",
                      r.text("one_way_length_m") + " m",
                      "--inrush",
                      r.text("inrush_multiple"),
                      "--gauge",
                      r.text("awg") + " AWG");
              Cli cli = run(line);
              near(cli, "section_mm2", r.num("area_mm2"), 1e-6);
              near(cli, "drop_V", r.num("drop_V_constant_current"), r.num("tol_rel"));
              near(cli, "gauge_awg", r.num("awg"), 0);
            });
    String[] thin = {
      "duty", "cable", "--dc", "12 V", "--power", "18 W", "--length", "14 m", "--gauge", "AWG 18"
    };
    Cli text = Cli.run(thin);
    assertThat(text.out)
        .startsWith("18 AWG over 14 m loses 8.0 % of 12 V: much, the pump gives less.")
        .contains("--gauge \"16 AWG\"   the least that will do");
    assertThat(Cli.run(DutyCommandTest.with(thin, "-f", "json")).number("least_gauge_awg"))
        .isEqualTo(16);
    assertThat(
            Cli.run(
                    "duty",
                    "cable",
                    "--dc",
                    "12 V",
                    "--power",
                    "18 W",
                    "--length",
                    "5 m",
                    "--gauge",
                    "thick")
                .exit)
        .isEqualTo(2);
  }

  /** Drop, start and fuse give one verdict: 0.5 mm2 over half a metre drops little at 40 W. */
  @Test
  void oneVerdict() {
    Cli cord =
        Cli.run(
            "duty",
            "cable",
            "--dc",
            "12 V",
            "--power",
            "40 W",
            "--length",
            "0.5 m",
            "--section",
            "0.5 mm2");
    assertThat(cord.exit).isEqualTo(1);
    assertThat(cord.out)
        .startsWith(
            "0.50 mm2 over 0.5 m loses 1.1 % of 12 V, and is too thin for the fuse of 5.0 A");
    Cli start =
        Cli.run(
            "duty",
            "cable",
            "--dc",
            "12 V",
            "--power",
            "18 W",
            "--length",
            "15 m",
            "--section",
            "0.75 mm2",
            "--inrush",
            "4",
            "--least-voltage",
            "9 V");
    assertThat(start.exit).isEqualTo(1);
    assertThat(start.out)
        .startsWith(
            "0.75 mm2 over 15 m leaves 7.32 V at the start, and the pump wants 9.00 V: it does not start.");
  }

  /**
   * BK01 needs 11.46 Ah: the next size sold is 12 Ah. Its pump of 22 W takes 36.7 VA at a power
   * factor of 0.6; six times that for a moment, of which an inverter gives twice its rating, is 110
   * W: the next size is 150 W.
   */
  @Test
  void batteriesAndInvertersAreWhatIsSold() {
    String[] line = {
      "duty",
      "backup",
      "--power",
      "22 W",
      "--run",
      "90 s",
      "--rest",
      "12 min",
      "--battery",
      "12 V",
      "--controller",
      "1 W",
      "--depth",
      "50 %",
      "--inverter",
      "85 %",
      "--idle",
      "3 W",
      "--hours"
    };
    Cli cli = Cli.run(DutyCommandTest.with(line, "8 h", "-f", "json"));
    assertThat(cli.number("buy_Ah")).isEqualTo(12);
    assertThat(cli.number("inverter_W")).isEqualTo(150);
    assertThat(Cli.run(DutyCommandTest.with(line, "8 h")).out)
        .startsWith("8 h without mains need 55.0 Wh: buy a 12 V battery of 12 Ah.");
    // 400 h need 573 Ah: three of 200 Ah
    assertThat(Cli.run(DutyCommandTest.with(line, "400 h")).out)
        .contains("buy 3 12 V batteries of 200 Ah, side by side.");
    assertThat(
            Cli.run(DutyCommandTest.with(line, "8 h", "--dc", "12 V", "-f", "json"))
                .number("inverter_W"))
        .isNull();
  }

  @Test
  void textCsvAndJsonHoldTheSameNumbers() {
    String[] line = {"duty", "backup", "--plan", "night-rate.yaml", "--format"};
    Cli json = Cli.run(DutyCommandTest.with(line, "json"));
    String[] csv = Cli.run(DutyCommandTest.with(line, "csv")).out.split("\n");
    String[] keys = csv[0].split(",");
    String[] values = csv[1].split(",", -1);
    assertThat(keys).hasSize(values.length);
    for (int i = 0; i < keys.length; i++) {
      Double number = json.number(keys[i]);
      assertThat(values[i].isEmpty() ? null : Double.valueOf(values[i])).isEqualTo(number);
    }
    assertThat(Cli.run(DutyCommandTest.with(line, "text")).out)
        .startsWith("Your battery of 12 Ah lasts 9.9 h: enough for 6 h.");
    assertThat(json.number("lasts_h")).isBetween(9.85, 9.95);
  }

  @Test
  void everyExampleRuns() {
    Command[] commands = {
      new DutyCommand(), new DutyBackupCommand(), new DutyCableCommand(), new DutyCapCommand()
    };
    for (Command command : commands) {
      for (String example : command.examples()) {
        List<String> words = new ArrayList<>();
        java.util.regex.Matcher m =
            java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(example);
        while (m.find()) {
          words.add(m.group(1) != null ? m.group(1) : m.group(2));
        }
        Cli cli = Cli.run(words.toArray(new String[0]));
        assertThat(cli.exit).as(example + cli.err).isBetween(0, 1);
      }
    }
  }

  /**
   * In US units the wire is told by its gauge alone. By hand: 16 AWG has 1.31 mm2 (ASTM B258), at
   * 0.017241 ohm mm2/m 0.241 ohm over 18.3 m; 1.5 A lose 0.361 V, 3.0 % of 12 V.
   */
  @Test
  void gaugesForReadersOfUsUnits() {
    String[] line = {"duty", "cable", "--dc", "12 V", "--power", "18 W", "--length", "30 ft"};
    Cli us = Cli.run(DutyCommandTest.with(line, "--units", "us", "--explain"));
    assertThat(us.out)
        .startsWith("Take 16 AWG: over 30.0 ft it loses 3.1 % of 12 V: good.")
        .contains("0.361 V", "least gauge")
        .doesNotContain("mm2");
    assertThat(Cli.run(DutyCommandTest.with(line, "--units", "us", "-f", "csv")).out)
        .as("a script reads the same in all units")
        .isEqualTo(Cli.run(DutyCommandTest.with(line, "-f", "csv")).out);
    assertThat(Cli.run(DutyCommandTest.with(line, "--section", "0.82 mm2", "--units", "us")).out)
        .startsWith("18 AWG over 30.0 ft loses 5.1 % of 12 V")
        .contains("--gauge \"16 AWG\"   the least that will do")
        .doesNotContain("--section \"1.0 mm2\"");
    String[] far = {"duty", "cable", "--dc", "12 V", "--power", "180 W", "--length", "90 ft"};
    assertThat(Cli.run(DutyCommandTest.with(far, "--units", "us")).out)
        .startsWith("No cord up to 10 AWG feeds");
    assertThat(Cli.run(far).out).startsWith("No cord up to 6 mm2 feeds");
  }
}
