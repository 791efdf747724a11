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
          8 | 1.6 | --to: no tank of plants is brought to pH 1.6, 4 is the least: is that an EC? A pH is wanted here, such as 5.8
          4 | -15 mg/L | --alkalinity: it cannot be negative, such as "180 mg/L as CaCO3"; got "-15 mg/L"
          6 | 15 | --ph "15": a pH lies between 0 and 14
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

  @Test
  void underTheTargetNoAcidIsNeeded() {
    String[] line = contract("json");
    line[6] = "5.6";
    Cli cli = Cli.run(line);
    assertThat(cli.exit).isZero();
    assertThat(cli.word("status")).isEqualTo("no-acid-needed");
    assertThat(cli.number("acid_mL")).isZero();
    assertThat(cli.number("first_pour_mL")).isZero();
    line[line.length - 1] = "text";
    assertThat(Cli.run(line).out)
        .startsWith("No acid is needed: the water is at pH 5.60, under the 5.80 wanted.\n");
  }

  /** The sheet's alkalinity left after nitric-60 to 5.8 is what a tank at 6.4 has now. */
  @Test
  void aTankCorrectedBeforeHasLessBuffer() {
    Row r = Sheet.of("solution-acid.csv").rows().get(0);
    String[] line = {
      "acid",
      "--set",
      "water={alkalinity: 180 mg/L as CaCO3, ph: 7.6, temperature: 20 C}",
      "--set",
      "target.ph=5.8",
      "--volume",
      "45 L",
      "--ph",
      "6.4",
      "--acid",
      "nitric-60",
      "-f",
      "json"
    };
    Cli cli = Cli.run(line);
    assertThat(cli.exit).as(cli.err).isZero();
    double left = r.num("alkalinity_left_meq_L");
    assertThat(cli.number("alkalinity_meq_L")).isCloseTo(left, within(1e-4));
    assertThat(cli.number("water_alkalinity_meq_L"))
        .isCloseTo(r.num("alkalinity_meq_L"), within(1e-6));
    // second route: the same question with that alkalinity typed
    Cli typed =
        Cli.run(
            "acid",
            "--volume",
            "45 L",
            "--alkalinity",
            left + " meq/L",
            "--ph",
            "6.4",
            "--to",
            "5.8",
            "--acid",
            "nitric-60",
            "-f",
            "json");
    assertThat(cli.number("acid_mL")).isCloseTo(typed.number("acid_mL"), within(1e-3));
    line[line.length - 1] = "text";
    assertThat(Cli.run(line).out)
        .contains(", as earlier acid left 0.79 meq/L of the water's 3.6 meq/L; pour ");
  }

  /** Half a litre of soft water: 0.0077 mL of acid, by the sheet's row of 45 L divided by 90. */
  @Test
  void soLittleAcidIsThinnedIntoWater() {
    Cli cli =
        Cli.run(
            "acid",
            "--volume",
            "0.5 L",
            "--alkalinity",
            "15 mg/L",
            "--ph",
            "6.8",
            "--to",
            "5.8",
            "--acid",
            "hydrochloric-31");
    assertThat(cli.out.replaceAll("\\s+", " "))
        .contains("a drop or less: put 1 part of the acid into water, fill up to 100 parts in all")
        .contains("and pour 0.768 mL of that first");
    Cli citric =
        Cli.run(
            "acid",
            "--volume",
            "5 L",
            "--alkalinity",
            "30 mg/L",
            "--ph",
            "7",
            "--to",
            "5.8",
            "--acid",
            "citric");
    assertThat(citric.out.replaceAll("\\s+", " "))
        .contains("dissolve 10 g in water, fill up to 100 mL")
        .contains("phosphoric, nitric and sulfuric acid last");
    Cli us =
        Cli.run(
            "acid",
            "--volume",
            "1.3 gal",
            "--alkalinity",
            "30 mg/L",
            "--ph",
            "7",
            "--to",
            "5.8",
            "--acid",
            "citric",
            "--units",
            "us");
    assertThat(us.out.replaceAll("\\s+", " "))
        .as("100 mL are 3.38 floz (NIST SP 811: 29.57353 mL)")
        .contains("dissolve 10 g in water, fill up to 3.38 floz")
        .doesNotContain(" mL");
  }

  @Test
  void quietKeepsTheSafetyWords() {
    List<String> line = new ArrayList<>(List.of(contract("text")));
    line.add("-q");
    String[] lines = Cli.run(line.toArray(new String[0])).out.split("\n");
    assertThat(lines[lines.length - 1]).startsWith("Mind: acid into water, never water into acid.");
  }

  /** A millimole of CaCO3 takes two of acid: 2.9 mmol/L are 5.8 meq/L. */
  @Test
  void alkalinityByNumber() {
    String[] line = {
      "acid",
      "--volume",
      "12 L",
      "--alkalinity",
      "5.8 meq/L",
      "--ph",
      "7.4",
      "--to",
      "6",
      "--acid",
      "citric",
      "-f",
      "json"
    };
    double grams = Cli.run(line).number("acid_g");
    line[4] = "2.9 mmol/L as CaCO3";
    assertThat(Cli.run(line).number("acid_g")).isCloseTo(grams, within(1e-9));
    line[4] = "5.8 mmol/L HCO3";
    assertThat(Cli.run(line).number("acid_g")).isCloseTo(grams, within(1e-9));
  }

  @Test
  void whatComesNextForSaltsByTheGram() {
    Cli cli =
        Cli.run(
            "acid",
            "--plan",
            "hard-water.yaml",
            "--set",
            "feed={stock: {makes: 200 L, grams: {potassium-nitrate: 80 g}}}",
            "--acid",
            "citric");
    assertThat(cli.out)
        .contains("Next: leat topup --plan hard-water.yaml")
        .contains(" --volume ... --ec READING   acid comes first, then the salts; the pH last");
  }
}
