package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OxygenCommandTest {
  @Test
  void everyRowOfTheSheet() {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-oxygen.csv").rows()) {
      boolean given = row.text("pressure_given").equals("true");
      Cli cli =
          Cli.run(
              "oxygen",
              "--at",
              row.text("temperature_C") + " C",
              given ? "--pressure" : "--altitude",
              given ? row.text("pressure_kPa") + " kPa" : row.text("altitude_m") + " m",
              "--format",
              "json");
      double saturation = row.num("saturation_mg_L");
      assertThat(cli.number("saturation_mg_L"))
          .as(row.text("case_id"))
          .isCloseTo(saturation, within(saturation * row.num("tol_rel")));
      assertThat(cli.number("pressure_kPa")).isCloseTo(row.num("pressure_kPa"), within(1e-4));
      assertThat(cli.number("share_of_18_C_pct"))
          .isCloseTo(row.num("share_of_18C_pct"), within(0.05));
      assertThat(cli.number("four_mg_L_pct")).isCloseTo(row.num("four_mg_L_is_pct"), within(0.02));
      n++;
    }
    assertThat(n).isEqualTo(10);
  }

  @Test
  void theWarmTubUpHere() {
    Cli cli = Cli.run("oxygen", "--at", "29 C", "--altitude", "310 m");
    assertThat(cli.out)
        .startsWith("At 29.0 C water can hold 7.40 mg/L of oxygen, 19 % less than at 18 C.\n")
        .contains("at sea level 7.69 mg/L", "that is 54 % of saturation", "over 26 C");
    assertThat(cli.exit).isZero();
    String us =
        Cli.run("oxygen", "84.2 F", "--altitude", "1017 ft", "--units", "us").out.split("Mind")[0];
    assertThat(us)
        .startsWith("At 84.2 F water can hold 7.40 mg/L of oxygen, 19 % less than at 64 F.\n")
        .contains("14.16 psi")
        .doesNotContain(" C");
  }

  /** 4 x 2^0.6 at 26 C; a mountain does not forbid a tank, warm water there does. */
  @Test
  void whatRootsNeed() {
    Cli mild = Cli.run("oxygen", "--at", "20 C", "--altitude", "1500 m");
    assertThat(mild.out).contains("roots need            4.0 mg/L").doesNotContain("less fits in");
    Cli warm = Cli.run("oxygen", "--at", "26 C", "--format", "json");
    assertThat(warm.number("roots_need_mg_L")).isCloseTo(6.0628653, within(1e-6));
    // OX05: 7.5588 mg/L at 30 C, roots 8
    assertThat(Cli.run("oxygen", "30 C").out).contains("less fits in than roots need");
    assertThat(Cli.run("oxygen", "28").err).contains("a temperature needs its unit");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "50 C|0 m|--at \"50 C\": the oxygen tables end at 0 and 40 C",
        "-1 C|0 m|--at \"-1 C\": the oxygen tables end at 0 and 40 C",
        "20 C|20 km|--altitude: it must lie between -430 m and 9000 m, such as \"310 m\"; got \"20 km\"",
      })
  void badInput(String at, String altitude, String message) {
    Cli cli = Cli.run("oxygen", "--at", at, "--altitude", altitude);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.exit).isEqualTo(2);
  }

  @Test
  void examplesRun() {
    Examples.run(new OxygenCommand());
  }
}
