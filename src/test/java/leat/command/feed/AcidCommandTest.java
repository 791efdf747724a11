package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AcidCommandTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-acid.csv").where(r -> r.num("to_ph") < r.num("ph")).atLeast(9);
  }

  private static void close(Row r, String column, Double got) {
    String what = r.idAndProvenance() + " " + column;
    if (!r.has(column)) {
      assertThat(got).as(what).isNull();
      return;
    }
    double want = r.num(column);
    double tolerance = column.startsWith("ph_") ? r.num("tol_ph") : r.num("tol_rel") * want;
    assertThat(got).as(what).isCloseTo(want, within(tolerance + 1e-9));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatTheSheetSays(Row r) {
    Cli cli =
        Cli.run(
            "acid",
            "--volume",
            r.text("volume_L") + " L",
            "--alkalinity",
            r.text("alkalinity") + " " + r.text("alkalinity_unit").replace(" CaCO3", " as CaCO3"),
            "--ph",
            r.text("ph"),
            "--to",
            r.text("to_ph"),
            "--acid",
            r.text("acid"),
            "--temperature",
            r.text("temperature_C") + " C",
            "--format",
            "json");
    assertThat(cli.err).isEmpty();
    assertThat(cli.exit).isZero();
    for (String key :
        List.of(
            "acid_mL",
            "acid_meq_L",
            "first_pour_mL",
            "acid_g",
            "first_pour_g",
            "alkalinity_meq_L",
            "alkalinity_left_meq_L",
            "acid_if_open_mL",
            "acid_if_open_g",
            "N_mg_L",
            "P_mg_L",
            "S_mg_L",
            "ph_open_air_420ppm",
            "ph_open_air_2000ppm")) {
      close(r, key, cli.number(key));
    }
    Double overshoot = cli.number("first_pour_ph_if_strip_high");
    assertThat(overshoot).as("the first pour cannot overshoot").isGreaterThan(r.num("to_ph"));
    assertThat(cli.number("first_pour_ph")).isGreaterThan(overshoot);
  }

  private static String[] contract(String format) {
    return new String[] {
      "acid",
      "--volume",
      "45 L",
      "--alkalinity",
      "180 mg/L",
      "--ph",
      "7.6",
      "--to",
      "5.8",
      "--acid",
      "nitric-60",
      "--format",
      format
    };
  }

  @Test
  void theContractsLine() {
    Cli cli = Cli.run(contract("json"));
    assertThat(cli.exit).isZero();
    assertThat(cli.number("acid_mL")).isCloseTo(9.71124783, within(1e-3));
    assertThat(cli.number("acid_meq_L")).isCloseTo(2.80838608, within(1e-4));
    assertThat(cli.number("first_pour_mL")).isCloseTo(6.79787348, within(1e-3));
    assertThat(cli.out).contains("\"alkalinity as CaCO3\"");
  }

  @Test
  void csvHasTheSameNumbersAndTextTheSameRounded() {
    Cli json = Cli.run(contract("json"));
    String[] lines = Cli.run(contract("csv")).out.split("\n");
    assertThat(lines[0]).startsWith("acid_mL,acid_meq_L,first_pour_mL,");
    assertThat(Double.parseDouble(lines[1].split(",")[0])).isEqualTo(json.number("acid_mL"));
    assertThat(Cli.run(contract("text")).out)
        .startsWith(
            "About 9.71 mL of 60 % nitric acid; pour 6.80 mL, stir, wait an hour, measure, then the rest in halves.\n")
        .contains("2.8 meq/L   of 3.6: 0.79 meq/L stays as buffer")
        .contains("climbs to pH 7.4 to 8.1")
        .contains("nitrogen added          39 mg/L")
        .contains("acid into water, never water into acid")
        .contains("no household good");
  }

  @ParameterizedTest
  @CsvSource({
    "180 mg/L as CaCO3, 10.0840336134 dH",
    "180 mg/L as CaCO3, 3.59712230216 meq/L",
    "3.6 meq/L, 219.6576 mg/L as HCO3"
  })
  void alkalinityMayBeTypedInThreeWays(String one, String other) {
    String[] line = contract("json");
    line[4] = one;
    double first = Cli.run(line).number("acid_mL");
    line[4] = other;
    assertThat(Cli.run(line).number("acid_mL")).isCloseTo(first, within(1e-6 * first));
  }

  @Test
  void aPlanGivesWaterTargetAndAcid() {
    Cli cli = Cli.run("acid", "--plan", "hard-water.yaml", "--format", "json");
    assertThat(cli.exit).isZero();
    assertThat(cli.number("volume_L")).isCloseTo(44.0575723041, within(1e-6));
    assertThat(cli.number("acid_mL")).isNull();
    assertThat(cli.number("acid_g")).isPositive();
    assertThat(cli.out).contains("a full tank, 44.1 L").contains("microbes eat citric acid");
  }

  @Test
  void theLabelsDensityCounts() {
    List<String> line = new ArrayList<>(List.of(contract("json")));
    line.addAll(List.of("--density", "1.5 kg/L"));
    double heavy = Cli.run(line.toArray(new String[0])).number("acid_mL");
    double usual = Cli.run(contract("json")).number("acid_mL");
    assertThat(heavy).isCloseTo(usual * 1.3667 / 1.5, within(1e-6));
  }

  @Test
  void atTheTargetNoAcidIsNeeded() {
    String[] line = contract("text");
    line[8] = "7.6";
    Cli cli = Cli.run(line);
    assertThat(cli.exit).isZero();
    assertThat(cli.out).startsWith("No acid is needed: the water is at pH 7.60 already.\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          8 | 7.7 | --to "7.7": acid lowers the pH and the water is under that already: no acid is needed
          4 | -15 mg/L | --alkalinity: it cannot be negative, such as "180 mg/L as CaCO3"; got "-15 mg/L"
          6 | 15 | --ph: it can be 14 at most, such as "7.6"; got "15"
          8 | -1 | --to: it cannot be negative, such as "5.8"; got "-1"
          10 | nitric-131 | --acid: a strength cannot be over 100 %
          10 | nitric | --acid: its strength belongs behind the name, such as nitric-38
          10 | nitrc-60 | --acid: no acid "nitrc-60"; did you mean "nitric-60"?
          2 | 0 L | --volume: it must be above 0; got "0 L"
          4 | 180 | --alkalinity: an alkalinity needs its unit, such as "180 mg/L as CaCO3"; got "180"
          """)
  void refuses(int at, String value, String message) {
    String[] line = contract("text");
    line[at] = value;
    Cli cli = Cli.run(line);
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err.split("\n")[0]).isEqualTo(message);
    assertThat(cli.out).isEmpty();
  }

  @Test
  void theTemperaturesRange() {
    List<String> line = new ArrayList<>(List.of(contract("text")));
    line.addAll(List.of("--temperature", "99 C"));
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err)
        .isEqualTo("--temperature: it can be 60 C at most, such as \"16 C\"; got \"99 C\"\n");
  }
}
