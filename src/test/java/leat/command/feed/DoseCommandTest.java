package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Examples;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseCommandTest {
  private static Offset<Double> rel(double value, double tolerance) {
    return within(Math.abs(value) * tolerance + 1e-9);
  }

  @Test
  void everyRowOfTheDoseSheet() {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-dose.csv").rows()) {
      List<String> args =
          new ArrayList<>(
              List.of(
                  "dose",
                  "--volume",
                  row.text("volume_L") + " L",
                  "--from",
                  row.text("from_mS_cm") + " mS/cm",
                  "--to",
                  row.text("to_mS_cm") + " mS/cm",
                  "--rate",
                  row.text("rate_mL_L") + " mL/L",
                  "--rate-ec",
                  row.text("rate_ec_mS_cm") + " mS/cm",
                  "--parts",
                  row.text("parts"),
                  "--format",
                  "json"));
      if (row.text("rate_is").equals("each-part")) {
        args.add("--each");
      }
      Cli cli = Cli.run(args.toArray(new String[0]));
      String id = row.text("case_id");
      assertThat(cli.word("status")).as(id).isEqualTo(row.text("status"));
      assertThat(cli.exit).as(id).isEqualTo(row.text("status").equals("reached") ? 0 : 1);
      String[] keys = {"concentrate_mL", "part_mL", "final_volume_L", "final_ec_mS_cm"};
      for (String key : keys) {
        if (row.text(key).isBlank()) {
          assertThat(cli.number(key)).as(id + " " + key).isNull();
        } else {
          double expected = row.num(key);
          assertThat(cli.number(key))
              .as(id + " " + key)
              .isCloseTo(expected, rel(expected, row.num("tol_rel")));
        }
      }
      assertThat(cli.number("full_label_ec_mS_cm"))
          .isCloseTo(row.num("full_label_ec_mS_cm"), rel(1, 1e-6));
      n++;
    }
    assertThat(n).isEqualTo(8);
  }

  @Test
  void byTheLabel() {
    Cli cli =
        Cli.run(
            "dose",
            "--volume",
            "45 L",
            "--from",
            "0.3 mS/cm",
            "--label",
            "50 %",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm",
            "--format",
            "json");
    assertThat(cli.number("concentrate_mL")).isCloseTo(112.5, within(1e-9));
    // (0.3 x 45 + 380 x 0.1125) / 45.1125, by hand
    assertThat(cli.number("final_ec_mS_cm")).isCloseTo(1.246883, within(1e-6));
  }

  @Test
  void aCupRounds() {
    Cli cli =
        Cli.run(
            "dose",
            "--volume",
            "45 L",
            "--from",
            "0.3 mS/cm",
            "--to",
            "1.6 mS/cm",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm",
            "--parts",
            "2",
            "--step",
            "5 mL",
            "--format",
            "json");
    assertThat(cli.number("rounded_part_mL")).isEqualTo(75);
    assertThat(cli.number("rounded_mL")).isEqualTo(150);
    assertThat(cli.number("rounded_ec_mS_cm")).isCloseTo((13.5 + 380 * 0.15) / 45.15, within(1e-9));
    Cli coarse =
        Cli.run(
            "dose",
            "--volume",
            "2 L",
            "--from",
            "0.3 mS/cm",
            "--to",
            "1.6 mS/cm",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm",
            "--step",
            "50 mL");
    assertThat(coarse.out).contains("a part rounds to nothing");
  }

  @Test
  void partsOfAPlanByTheirOwnRates() {
    Cli cli =
        Cli.run(
            "dose",
            "--volume",
            "45 L",
            "--from",
            "0.3 mS/cm",
            "--to",
            "1.6 mS/cm",
            "--rate-ec",
            "1.9 mS/cm",
            "--set",
            "feed.parts=[{name: leaf, rate: 3 mL/L}, {name: root, rate: 2 mL/L}]",
            "--format",
            "json");
    assertThat(cli.number("concentrate_mL")).isCloseTo(154.598309, within(1e-6));
    assertThat(cli.number("part_mL")).isNull();
    assertThat(cli.number("part_1_mL")).isCloseTo(154.598309 * 0.6, within(1e-6));
    assertThat(cli.number("part_2_mL")).isCloseTo(154.598309 * 0.4, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--from|-0.3 mS/cm|--from: it cannot be negative; got \"-0.3 mS/cm\"",
        "--volume|0 L|--volume: it must be above 0; got \"0 L\"",
        "--rate-ec|0 mS/cm|--rate-ec: it must be above 0, such as \"1.9 mS/cm\"; got \"0 mS/cm\"",
        "--from|900 ppm|--from: an EC is needed, such as \"1.6 mS/cm\"; ppm is the EC times 500, 640 or 700 by the meter's scale, and leat ec --scale turns it back; got \"900 ppm\"",
        "--parts|30|--parts \"30\": a feed has 1 to 20 parts",
      })
  void badInput(String flag, String value, String message) {
    List<String> args =
        new ArrayList<>(
            Arrays.asList(
                "dose",
                "--volume",
                "45 L",
                "--from",
                "0.3 mS/cm",
                "--to",
                "1.6 mS/cm",
                "--rate",
                "5 mL/L",
                "--rate-ec",
                "1.9 mS/cm",
                "--parts",
                "2"));
    args.set(args.indexOf(flag) + 1, value);
    Cli cli = Cli.run(args.toArray(new String[0]));
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.out).isEmpty();
    assertThat(cli.exit).isEqualTo(2);
  }

  @Test
  void examplesRun() {
    Examples.run(new DoseCommand());
  }
}
