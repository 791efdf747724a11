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
        .startsWith(
            "Water at 29.0 C up here holds 7.40 mg/L of oxygen at most, 19 % less than at 18 C.\n")
        .contains("that is 54 % of saturation", "over 26 C");
    assertThat(cli.exit).isZero();
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
