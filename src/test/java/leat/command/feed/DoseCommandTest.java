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
    assertThat(coarse.out).contains("one bottle rounds to nothing");
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
        "--from|900 ppm|--from: ppm is not one unit: meters show the EC times 500, 640 or 700, so \"900 ppm\" is 1.80, 1.41 or 1.29 mS/cm; the meter's manual says which: --scale 500, --scale 640 or --scale 700",
        "--from|16 mS/cm|--from: an EC of 16.0 mS/cm is more than any tank of plants has, with 1.60 mS/cm aimed at; did you mean \"1.60 mS/cm\"?",
        "--to|16 mS/cm|--to: an EC of 16.0 mS/cm is more than any crop here likes (4.00 mS/cm at most); did you mean \"1.60 mS/cm\"?",
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

  private static Cli dose(String... more) {
    List<String> line =
        new ArrayList<>(
            List.of("dose", "--volume", "45 L", "--rate", "5 mL/L", "--rate-ec", "1.9 mS/cm"));
    line.addAll(List.of(more));
    return Cli.run(line.toArray(new String[0]));
  }

  /** 45 x 0.8 / 1.3 and 45 x 0.8 / 2.1, by hand. */
  @Test
  void tooStrongIsThinned() {
    String[] asked = {"--from", "2.4 mS/cm", "--to", "1.6 mS/cm", "--water-ec", "0.3 mS/cm"};
    Cli text = dose(asked);
    assertThat(text.exit).isEqualTo(1);
    assertThat(text.out)
        .startsWith(
            "No dose does it: the water is at 2.40 mS/cm already, above the 1.60 mS/cm wanted. To thin it, add 27.7 L of water.\n")
        .contains("or swap               17.1 L");
    String[] json = Arrays.copyOf(asked, asked.length + 2);
    json[asked.length] = "-f";
    json[asked.length + 1] = "json";
    assertThat(dose(json).number("thin_water_L")).isCloseTo(27.6923077, within(1e-6));
    assertThat(dose(json).number("swap_L")).isCloseTo(17.1428571, within(1e-6));
    assertThat(dose("--from", "2.4 mS/cm", "--to", "1.6 mS/cm").out)
        .contains("add 22.5 L of water")
        .contains("rain or filtered water without salt");
    assertThat(dose("--from", "2.4 mS/cm", "--to", "1.6 mS/cm", "--water-ec", "1.7 mS/cm").out)
        .contains("water of 1.70 mS/cm cannot thin it to that");
  }

  /** 150 and 800 ppm by 500 are 0.3 and 1.6 mS/cm: the contract's own line. */
  @Test
  void ppmOfAScale() {
    Cli ppm = dose("--from", "150 ppm", "--to", "800 ppm", "--scale", "500", "-f", "json");
    assertThat(ppm.number("concentrate_mL")).isCloseTo(154.598309, within(1e-6));
    Cli plan =
        dose("--set", "meters.ec.scale=500", "--from", "150 ppm", "--to", "800 ppm", "-f", "json");
    assertThat(plan.number("concentrate_mL")).isCloseTo(154.598309, within(1e-6));
    assertThat(plan.out).contains("ppm on the meter's scale of 500");
  }

  /** A raw reading is brought to 25 C by 1.91 % per K: 1.0 / (1 - 0.0191 x 7), by hand. */
  @Test
  void theMetersTemperatureAndItsCheck() {
    Cli cold = dose("--from", "1 mS/cm", "--at", "18 C", "--to", "1.6 mS/cm", "-f", "json");
    assertThat(cold.number("from_ec_mS_cm")).isCloseTo(1 / (1 - 0.0191 * 7), within(1e-9));
    Cli checked =
        dose(
            "--set",
            "meters.ec.slope=1.05",
            "--from",
            "1 mS/cm",
            "--to",
            "1.6 mS/cm",
            "-f",
            "json");
    assertThat(checked.number("from_ec_mS_cm")).isCloseTo(1.05, within(1e-12));
    assertThat(checked.out).contains("the meter's reading times 1.05");
    assertThat(
            dose("--set", "meters.ec.compensates=false", "--from", "1 mS/cm", "--to", "1.6 mS/cm")
                .out)
        .contains("say the solution's with --at");
  }

  /** 0.5 L from 0.3 to 0.4 mS/cm wants 0.132 mL: 3 drops of 0.05 mL. */
  @Test
  void soLittleIsCountedInDrops() {
    Cli cli =
        Cli.run(
            "dose",
            "--volume",
            "0.5 L",
            "--from",
            "0.3 mS/cm",
            "--to",
            "0.4 mS/cm",
            "--rate",
            "5 mL/L",
            "--rate-ec",
            "1.9 mS/cm");
    assertThat(cli.out)
        .startsWith("Pour 0.132 mL of feed")
        .contains("so little is about 3 drops, or fill 1 part of the bottle up to 10 parts");
  }

  @Test
  void acidComesFirstAndUsTextKeepsItsUnits() {
    Cli cli = dose("--from", "0.3 mS/cm", "--to", "1.6 mS/cm", "--parts", "2", "--units", "us");
    assertThat(cli.out)
        .contains("acid, where the water needs it, comes first")
        .contains("--units us")
        .contains(" tsp/gal; the label says ")
        .doesNotContain("mL of")
        .doesNotContain("a litre");
  }

  /** A US teaspoon is a sixth of a US fluid ounce; one of 5 mL is not. */
  @Test
  void teaspoonsOfUsKitchens() {
    String[] asked = {"--from", "0.3 mS/cm", "--to", "1.6 mS/cm", "--parts", "2", "--units", "us"};
    Cli cli = dose(asked);
    double floz = Double.parseDouble(cli.out.replaceAll("(?s)^Pour ([0-9.]+) floz.*", "$1"));
    // 45 L, 77.299 mL of each, as the sheet's row DO02 has it
    assertThat(floz).isCloseTo(77.2991543 / 29.5735295625, within(5e-3));
    assertThat(cli.out).containsPattern("2\\.61 floz +15\\.7 level teaspoons");
    asked[6] = "--step";
    asked[7] = "5 mL";
    assertThat(dose(asked).out).contains("75.00 mL of each");
    List<String> us = new ArrayList<>(List.of(asked));
    us.set(7, "1/2 tsp");
    us.addAll(List.of("--units", "us"));
    // 15.68 teaspoons, to the nearest half
    assertThat(dose(us.toArray(new String[0])).out).contains("15.50 tsp of each");
  }

  /** The tub of the plan is full at 44 L: 40 L thinned by 35 would run over, a swap does not. */
  @Test
  void waterThatTheTubDoesNotTake() {
    String[] line = {
      "dose", "--plan", "hard-water.yaml", "--volume", "40 L", "--from", "2.4 mS/cm"
    };
    Cli cli = Cli.run(line);
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        // 40 x 0.8 / (2.4 - 0.62) by hand
        .contains("To thin it, take out 18.0 L and put in as much water.")
        .contains("more than the tank takes")
        .contains(
            "Next: leat topup --plan hard-water.yaml --volume \"40 L\" --ec \"2.4 mS/cm\"   what to drain and fill");
    assertThat(
            Cli.run("topup", "--plan", "hard-water.yaml", "--volume", "40 L", "--ec", "2.4 mS/cm")
                .exit)
        .isZero();
    line[4] = "5 L";
    assertThat(Cli.run(line).out).contains("To thin it, add 4.08 L of water.");
  }

  /** The plan's rate_ec belongs to the plan's rates: at another rate it is asked for. */
  @Test
  void aRateWithoutWhatItAdds() {
    String[] line = {"dose", "--plan", "hard-water.yaml", "--volume", "10 L", "--rate", "2 mL/L"};
    Cli other = Cli.run(line);
    assertThat(other.exit).isEqualTo(2);
    assertThat(other.err).startsWith("leat dose: --rate-ec is needed");
    line[6] = "5 mL/L";
    assertThat(Cli.run(line).exit).isZero();
  }

  /** "5 mL of each", of how many bottles? */
  @Test
  void eachOfHowMany() {
    Cli cli = dose("--from", "0.3 mS/cm", "--to", "1.6 mS/cm", "--each");
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err).startsWith("leat dose: --parts is needed");
  }

  @Test
  void nothingToPourIsAllThereIsToSay() {
    Cli cli = dose("--from", "1.6 mS/cm", "--to", "1.6 mS/cm", "--parts", "2");
    assertThat(cli.out).isEqualTo("Nothing to pour: the water is at 1.60 mS/cm already.\n");
  }

  /** The top-up proposed leaves a gap for the water where nobody named it. */
  @Test
  void theTopupProposedWithoutAWater() {
    assertThat(dose("--from", "2.4 mS/cm", "--to", "1.6 mS/cm").out)
        .contains("--target \"1.6 mS/cm\" --ec \"2.4 mS/cm\" --water-ec ... --full ...");
  }
}
