package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leat.cli.Cli;
import org.junit.jupiter.api.Test;

class DutySuggestTest {
  /** Kinematic viscosity of water at 20 C, m2/s (sheet energy-min-on.csv, iapws 1.5.3). */
  private static final double NU = 1.00339686e-6;

  private static Cli json(String... more) {
    String[] line = {
      "duty", "--plan", "first-tower.yaml", "--suggest", "--days", "180", "--format", "json"
    };
    return Cli.run(DutyCommandTest.with(line, more));
  }

  /** Of the first row. */
  private static double first(Cli cli, String key) {
    return cli.number(key);
  }

  /**
   * The plan's tower by hand: fill from leat pump at the refill mark, Nusselt's film of sheet
   * energy.md section 3 with k = 3, 20 s of wetting.
   */
  @Test
  void theLeastRunIsFillFilmAndWetting() {
    Cli pump = Cli.run("pump", "--plan", "first-tower.yaml", "--level", "90 mm", "-f", "json");
    double flow = pump.number("flow_L_min") / 60000;
    double gamma = flow / (Math.PI * (0.110 - 2 * 0.0024));
    double thickness = Math.cbrt(3 * NU * gamma / 9.80665);
    double film = 3 * (6 * 0.140 + 0.020) / (gamma / thickness);
    Cli cli = json();
    assertThat(cli.exit).isZero();
    assertThat(first(cli, "fill_s")).isCloseTo(pump.number("fill_time_s"), within(1e-9));
    assertThat(first(cli, "film_s")).isCloseTo(film, within(1e-3));
    assertThat(first(cli, "wetting_s")).isEqualTo(20);
    double least = pump.number("fill_time_s") + film + 20;
    assertThat(first(cli, "least_run_s")).isCloseTo(least, within(1e-3));
    assertThat(first(cli, "run_s")).isEqualTo(Math.ceil(least));
  }

  @Test
  void restsAreTheDryLimits() {
    Cli cli = json("--dry-limit", "22 min", "--dry-limit-night", "50 min");
    assertThat(first(cli, "rest_s")).isEqualTo(22 * 60);
    assertThat(first(cli, "rest_night_s")).isEqualTo(50 * 60);
    assertThat(cli.out).contains("\"run_bound\": \"least-run\"").contains("\"dry-limit\"");
  }

  /** 20 mL at 0.12 L/d: 48 min; 6 mL: 14.4 min (sheet energy.md section 3). */
  @Test
  void waterInThePlugBindsWhereItIsLess() {
    Cli bare = json("--plug-water", "6 mL", "--plant-use", "0.12 L/d");
    assertThat(first(bare, "rest_s")).isEqualTo(864);
    assertThat(bare.out).contains("\"rest_bound\": \"plug-water\"");
    Cli plug = json("--plug-water", "20 mL", "--plant-use", "0.12 L/d");
    assertThat(first(plug, "rest_s")).isEqualTo(1800);
    assertThat(plug.out).contains("\"rest_bound\": \"dry-limit\"");
  }

  /**
   * The plan's thirstiest plant by its season: basil's usual canopy under the most ET0 of the file,
   * by season's own thirst of that day; the high factor 1.51 of a thirsty year (sheet season.md).
   */
  @Test
  void whatAPlantDrinksComesFromTheSeason() {
    String[] line = {"duty", "--plan", "balcony.yaml", "--suggest", "--format", "json"};
    Cli own = Cli.run(DutyCommandTest.with(line, "--plug-water", "20 mL"));
    assertThat(own.exit).as(own.err).isZero();
    double use = own.number("plant_use_L_d");
    Cli typed =
        Cli.run(DutyCommandTest.with(line, "--plug-water", "20 mL", "--plant-use", use + " L/d"));
    assertThat(first(own, "rest_s")).isEqualTo(first(typed, "rest_s"));
    assertThat(first(own, "longest_rest_day_s"))
        .isCloseTo(0.010 / (2.5 * use / 86400), within(1e-6));
    Cli text = Cli.run("duty", "--plan", "balcony.yaml", "--suggest", "--plug-water", "20 mL");
    assertThat(text.out)
        .contains("Mind: basil is judged full-grown")
        .contains("thirstiest plant")
        .contains("basil on 30 Jul, in a thirsty year");
    String crop = "crops=[{name: lettuce, pots: 8, water: 0.12 L/d}]";
    Cli without = json("--set", crop, "--plug-water", "20 mL");
    assertThat(without.number("plant_use_L_d")).isEqualTo(0.12);
  }

  @Test
  void fewerStartsMakeTheRunLonger() {
    Cli cli = json("--most-starts", "1 /h");
    assertThat(first(cli, "run_s") + first(cli, "rest_s")).isEqualTo(3600);
    assertThat(cli.out).contains("\"run_bound\": \"most-starts\"");
  }

  /** Every whole second and minute around: none within the bounds takes less. */
  @Test
  void noTimingWithinTheBoundsTakesLess() {
    Cli best = json("--dry-limit", "20 min", "--dry-limit-night", "20 min");
    double kwh = first(best, "kwh_total");
    int least = (int) first(best, "run_s");
    for (int run = least; run < least + 5; run++) {
      for (int rest = 15; rest <= 20; rest++) {
        Cli other =
            Cli.run(
                "duty",
                "--plan",
                "first-tower.yaml",
                "--run",
                run + " s",
                "--rest",
                rest + " min",
                "--days",
                "180",
                "--format",
                "json");
        assertThat(other.number("kwh_total")).isGreaterThanOrEqualTo(kwh * (1 - 1e-12));
      }
    }
  }

  @Test
  void whatItProposesPassesTheRules() {
    Cli text = Cli.run("duty", "--plan", "first-tower.yaml", "--suggest");
    int at = text.out.indexOf("timing: ") + "timing: ".length();
    String paste = text.out.substring(at, text.out.indexOf('\n', at));
    Cli check =
        Cli.run(
            "check",
            "first-tower.yaml",
            "--set",
            "timing=" + paste,
            "--rule",
            "run-covers",
            "--rule",
            "rest-day",
            "--rule",
            "rest-night",
            "--format",
            "csv");
    assertThat(check.exit).as(check.out + check.err).isZero();
    assertThat(check.out).contains(",pass,").doesNotContain("unknown");
  }

  @Test
  void aTowerThePumpDoesNotReachIsANo() {
    Cli cli =
        Cli.run(
            "duty",
            "--plan",
            "first-tower.yaml",
            "--suggest",
            "--set",
            "pump.measured=",
            "--set",
            "pump.derate=40 %");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .startsWith(
            "No timing waters balcony: no water reaches its top with the tank at the refill mark.");
  }

  @Test
  void aCoilThatDrawsInTheRests() {
    Cli cli = json("--set", "controller.relay={coil: 30 W, coil_when: \"off\"}");
    assertThat(first(cli, "rest_s")).isZero();
    assertThat(cli.out).contains("\"run_bound\": \"none\"");
  }

  /** A pump whose 80 % nobody measured counts with 70 % (second route: the plan with 70 %). */
  @Test
  void anUnmeasuredPumpIsTakenAt70Percent() {
    String[] line = {"duty", "--plan", "terrace.yaml", "--suggest", "--format", "json"};
    Cli guessed = Cli.run(line);
    Cli worn = Cli.run(DutyCommandTest.with(line, "--set", "pump.derate=70%"));
    assertThat(guessed.number("least_run_s")).isEqualTo(worn.number("least_run_s"));
    assertThat(guessed.out).contains("pump-guess").contains("70 %");
    Cli strong = Cli.run(DutyCommandTest.with(line, "--set", "pump.derate=68%"));
    assertThat(strong.number("least_run_s")).isGreaterThan(worn.number("least_run_s"));
  }

  /** Shut-off head left 1.92 m at 80 %, 1.68 m at 70 %; the outlet 1.76 m over the refill mark. */
  @Test
  void whereThatLeavesATowerDryTheNamedShareCounts() {
    Cli said =
        Cli.run(
            "duty",
            "--plan",
            "first-tower.yaml",
            "--suggest",
            "--set",
            "pump.measured=",
            "--set",
            "pump.derate=80%",
            "--set",
            "towers[0].outlet=1.85 m");
    assertThat(said.exit).as(said.out + said.err).isZero();
    assertThat(said.out).contains("not every tower gets water; the flow here is that of 80 %");
  }
}
