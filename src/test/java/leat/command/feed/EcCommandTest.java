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

class EcCommandTest {
  private static Offset<Double> rel(double value, double tolerance) {
    return within(Math.abs(value) * tolerance + 1e-11);
  }

  @Test
  void everyRowOfTheTemperatureSheet() {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-ec-temperature.csv").having("ec25_mS_cm").rows()) {
      List<String> args = new ArrayList<>();
      args.add("ec");
      args.add(row.text("ec_raw_mS_cm") + " mS/cm");
      args.add("--at");
      args.add(row.text("temperature_C") + " C");
      if (row.text("method").equals("natural-water")) {
        args.add("--natural-water");
      } else {
        args.add("--coefficient");
        args.add(row.text("coefficient_pct_per_K") + " %");
      }
      args.add("--format");
      args.add("json");
      Cli cli = Cli.run(args.toArray(new String[0]));
      double ec25 = row.num("ec25_mS_cm");
      // the sheet prints eight digits
      Offset<Double> off = rel(ec25, Math.max(5e-8, row.num("tol_rel")));
      assertThat(cli.number("ec25_mS_cm")).as(row.text("case_id")).isCloseTo(ec25, off);
      assertThat(cli.number("ec_mS_cm")).isEqualTo(row.num("ec_raw_mS_cm"));
      assertThat(cli.exit).isZero();
      n++;
    }
    assertThat(n).isGreaterThan(15);
  }

  /** The contract's line; 1.85 / (1 - 7 x 0.0191) by hand. */
  @Test
  void theContractsLineInAllFormats() {
    String[] line = {"ec", "1.85 mS/cm", "--at", "18 C", "--format", "json"};
    Cli json = Cli.run(line);
    assertThat(json.number("ec25_mS_cm")).isCloseTo(2.1355189, within(1e-7));
    assertThat(json.number("ppm500")).isCloseTo(1067.75945, within(1e-4));
    assertThat(json.number("ppm640")).isCloseTo(1366.7321, within(1e-4));
    assertThat(json.number("ppm700")).isCloseTo(1494.8632, within(1e-4));
    line[5] = "csv";
    Cli csv = Cli.run(line);
    assertThat(csv.out)
        .isEqualTo(
            "ec_mS_cm,ec25_mS_cm,ppm500,ppm640,ppm700\n1.85,2.13551887337,1067.75943668,1366.73207896,1494.86321136\n");
    line[5] = "text";
    Cli text = Cli.run(line);
    assertThat(text.out)
        .startsWith(
            "At 25 C this solution reads 2.14 mS/cm: a meter without compensation shows 1.85 at 18.0 C.\n")
        .contains("1070 (x500)", "1370 (x640)", "1490 (x700)", "Taken: 1.91 % per degree Celsius");
  }

  @ParameterizedTest
  @CsvSource({
    "900 ppm,500,1.8",
    "900 ppm,640,1.40625",
    "910 ppm,700,1.3",
    "900PPM,500,1.8",
  })
  void ppmOfAScale(String typed, String scale, double ec) {
    Cli cli = Cli.run("ec", typed, "--scale", scale, "--format", "json");
    assertThat(cli.number("ec_mS_cm")).isCloseTo(ec, within(1e-12));
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(ec, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"1850 uS/cm", "1.85 dS/m", "185 mS/m", "1.85 mS/cm", "18.5 CF"})
  void everyUnit(String typed) {
    Cli cli = Cli.run("ec", typed, "--format", "json");
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(1.85, within(1e-12));
  }

  @Test
  void severalReadingsAreAnArray() {
    Cli cli = Cli.run("ec", "1.2 mS/cm", "1640 uS/cm", "--format", "csv");
    assertThat(cli.out)
        .isEqualTo(
            "ec_mS_cm,ec25_mS_cm,ppm500,ppm640,ppm700\n1.2,1.2,600,768,840\n1.64,1.64,820,1049.6,1148\n");
  }

  /** KS34: 1413 uS/cm bottle at 18 C is 1.225; KS30's bottle at 5 C compensated shows 1.4498. */
  @Test
  void aMeterInAStandard() {
    Cli raw =
        Cli.run(
            "ec",
            "1.2 mS/cm",
            "--standard",
            "1.413 mS/cm",
            "--at",
            "18 C",
            "--compensates",
            "false",
            "--format",
            "json");
    assertThat(raw.number("expected_mS_cm")).isCloseTo(1.225, within(1e-4));
    assertThat(raw.number("slope")).isCloseTo(1.225 / 1.2, within(1e-4));
    Cli atc =
        Cli.run(
            "ec",
            "1.4 mS/cm",
            "--standard",
            "1.413 mS/cm",
            "--at",
            "5 C",
            "--compensates",
            "true",
            "--format",
            "json");
    assertThat(atc.number("expected_mS_cm")).isCloseTo(1.4498382, within(2e-4));
    assertThat(atc.word("plan")).startsWith("meters: {ec: {slope: 1.036, checked: ");
    assertThat(atc.word("plan")).endsWith(", compensates: true}}");
  }

  @Test
  void aWornProbeGivesNoLinesToPaste() {
    Cli cli = Cli.run("ec", "1.9 mS/cm", "--standard", "1.413 mS/cm", "--at", "25 C");
    assertThat(cli.exit).isZero();
    assertThat(cli.out).contains("too much to correct").doesNotContain("paste");
  }

  @Test
  void theFactorOfThePlanIsApplied() {
    Cli cli = Cli.run("ec", "1 mS/cm", "--set", "meters={ec: {slope: 1.037}}", "--format", "json");
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(1.037, within(1e-12));
    assertThat(cli.out).contains("the meter's factor 1.037");
  }

  /** IS26 of solution-ec-ions.csv: calcium chloride 10 mmol/L; weights of IUPAC 2021. */
  @Test
  void ionsPredictTheEc() {
    Cli cli = Cli.run("ec", "--ion", "Ca=400.78", "--ion", "Cl=709", "--format", "json");
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(2.2876573, within(1e-3));
    assertThat(cli.number("cations_meq_L")).isCloseTo(20, within(1e-3));
    assertThat(cli.number("ec25_low_mS_cm")).isCloseTo(0.95 * 2.2876573, within(1e-3));
  }

  /**
   * The same calcium chloride, 10 mmol/L, by number and by charge; Ca 40.078, Cl 35.45 of IUPAC.
   */
  @Test
  void ionsByNumberAndByCharge() throws Exception {
    Cli cli = Cli.run("ec", "--ion", "Ca=10 mmol/L", "--ion", "Cl=20 meq/l", "--format", "json");
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(2.2876573, within(1e-3));
    com.fasterxml.jackson.databind.JsonNode ions =
        new com.fasterxml.jackson.databind.ObjectMapper().readTree(cli.out).get("ions");
    assertThat(ions.get(0).get("ion").asText()).isEqualTo("Ca");
    assertThat(ions.get(0).get("mg_L").asDouble()).isCloseTo(400.78, within(1e-2));
    assertThat(ions.get(0).get("mmol_L").asDouble()).isCloseTo(10, within(1e-9));
    assertThat(ions.get(0).get("meq_L").asDouble()).isCloseTo(20, within(1e-9));
    assertThat(ions.get(1).get("mg_L").asDouble()).isCloseTo(709, within(1e-2));
    // sulfate carries two charges: 4 meq/L are 2 mmol/L
    assertThat(Cli.run("ec", "--ion", "SO4=4 meq/L", "--ion", "K=4 mmol/L").out)
        .contains("192 mg/L", "2.00 mmol/L", "4.00 meq/L");
    assertThat(Cli.run("ec", "--ion", "Ca=x mmol/L").err)
        .isEqualTo("--ion: a concentration is needed, such as \"120 mg/L\"; got \"x mmol/L\"\n");
  }

  /** An EC typed without its decimal point gets an answer, and is asked back. */
  @Test
  void aSlipIsAnsweredWithAMind() {
    Cli cli = Cli.run("ec", "16 mS/cm");
    assertThat(cli.exit).isZero();
    assertThat(cli.out).contains("over 10 mS/cm no plant lives");
  }

  @Test
  void usTextHasNoCelsius() {
    for (String[] line :
        new String[][] {
          {"ec", "1.85 mS/cm", "--at", "64 F", "--units", "us"},
          {"ec", "1.85 mS/cm", "--units", "us"},
          {"ec", "1.2 mS/cm", "--standard", "1.413 mS/cm", "--at", "64 F", "--units", "us"},
          {"ec", "--ion", "Ca=100", "--ion", "Cl=177", "--at", "64 F", "--units", "us"},
        }) {
      Cli cli = Cli.run(line);
      assertThat(cli.exit).isZero();
      assertThat(cli.out).contains("77 F").doesNotContainPattern("[0-9] C\\b");
    }
  }

  /** IV01 of solution-recipe-inverse.csv. */
  @Test
  void weighedSaltsPredictTheEc() {
    Cli cli =
        Cli.run(
            "ec",
            "--weighed",
            "calcium-nitrate-4h2o=31.947281",
            "--weighed",
            "potassium-nitrate=21.010974 g",
            "--volume",
            "45 L",
            "--format",
            "json");
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(1.316613, within(2e-4));
    assertThat(cli.number("balance_pct")).isCloseTo(0, within(1e-6));
  }

  @Test
  void rowsKeepTheirColumnsAndBadOnesTheirPlace() {
    Cli cli =
        Cli.piped(
            "time,ec_mS_cm\n1,1.85\n2,x\n3,900 ppm\n",
            "ec",
            "--column",
            "ec_mS_cm",
            "--at",
            "18 C");
    assertThat(cli.out)
        .isEqualTo(
            "time,ec_mS_cm,ec25_mS_cm,ppm500,ppm640,ppm700,status\n"
                + "1,1.85,2.13551887337,1067.75943668,1366.73207896,1494.86321136,ok\n"
                + "2,x,,,,,bad-row\n"
                + "3,900 ppm,,,,,bad-row\n");
    assertThat(cli.err).startsWith("Mind: 2 of 3 rows could not be read");
    assertThat(cli.exit).isZero();
    Cli ppm = Cli.piped("t;ppm\r\n1;900,5\r\n", "ec", "--column", "ppm", "--scale", "500");
    assertThat(ppm.out)
        .isEqualTo(
            "t;ppm;ec_mS_cm;ec25_mS_cm;ppm500;ppm640;ppm700;status\n1;900,5;1,801;1,801;900,5;1152,64;1260,7;ok\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "900 ppm|leat ec: ppm is not one unit: meters show the EC times 500, 640 or 700, so \"900 ppm\" is 1.80, 1.41 or 1.29 mS/cm; the meter's manual says which: --scale 500, --scale 640 or --scale 700",
        "1.85|leat ec: an EC needs its unit, such as \"1.6 mS/cm\"; got \"1.85\"",
        "-1 mS/cm|leat ec: EC: it cannot be negative",
        "1850 mS/cm|leat ec: EC: no water conducts over 1000 mS/cm; 1.4 mS/cm is 1400 uS/cm",
      })
  void badReadings(String typed, String message) {
    Cli cli = Cli.run("ec", typed);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.out).isEmpty();
    assertThat(cli.exit).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "80 C,--coefficient,2 %,'--at \"80 C\": a solution between 0 and 60 C is needed'",
    "20 C,--coefficient,9 %,'--coefficient \"9 %\": it must lie between 0 and 3.5 % a degree'",
    "20 C,--scale,600,'--scale \"600\": meters show ppm as EC times 500, 640 or 700, and 1 mS/cm is 500, 640 or 700 ppm by them: say which of the three'",
  })
  void badFlags(String at, String flag, String value, String message) {
    Cli cli = Cli.run("ec", "1 mS/cm", "--at", at, flag, value);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.exit).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "--ion,N=5,'--ion: \"N\": nitrogen may be nitrate or ammonium: say N-NO3 or N-NH4'",
    "--weighed,calcium-nitrate=5,'--weighed: no salt \"calcium-nitrate\"; did you mean \"calcium-nitrate-4h2o\" or \"calcium-nitrate-greenhouse\"?'",
    "--weighed,potasium-nitrate=5,'--weighed: no salt \"potasium-nitrate\"; did you mean \"potassium-nitrate\"?'",
    "--ion,Ca=-5,leat ec: Ca: it cannot be negative",
  })
  void badIonsAndSalts(String flag, String value, String message) {
    boolean weighed = "--weighed".equals(flag);
    Cli cli = weighed ? Cli.run("ec", flag, value, "--volume", "3 L") : Cli.run("ec", flag, value);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.exit).isEqualTo(2);
  }

  @Test
  void bareNumbersInRowsAskForTheirUnitOnce() {
    Cli cli = Cli.piped("t,ec\n1,1.2\n", "ec", "--column", "ec", "--strict");
    assertThat(cli.err)
        .isEqualTo(
            "standard input: row 1, column ec: an EC needs its unit, such as \"1.6 mS/cm\"; got \"1.2\"; for a whole column say --unit and mS/cm, uS/cm, dS/m, mS/m or ppm\n");
    assertThat(cli.exit).isEqualTo(2);
    Cli told = Cli.piped("t,ec\n1,1200\n", "ec", "--column", "ec", "--unit", "uS/cm");
    assertThat(told.out).endsWith("1,1200,1.2,1.2,600,768,840,ok\n");
  }

  @Test
  void examplesRun() {
    Examples.run(new EcCommand());
  }

  /** A coefficient per degree Fahrenheit is 5/9 of that per degree Celsius: 1.91 % is 1.06 %. */
  @Test
  void degreesOfTheReadersThermometer() {
    String[] line = {"ec", "1.85 mS/cm", "--at", "64 F", "--units", "us"};
    assertThat(Cli.run(line).out)
        .contains("1.06 % per degree Fahrenheit")
        .doesNotContain("Celsius");
    String[] odd = Arrays.copyOf(line, 8);
    odd[6] = "--coefficient";
    odd[7] = "3 %";
    assertThat(Cli.run(odd).out)
        .contains("1.67 % per degree Fahrenheit")
        .contains("1.0 to 1.2 % per degree Fahrenheit; --coefficient takes 1.8 times that.")
        .doesNotContain("Celsius");
    String[] standard = {"ec", "1.36 mS/cm", "--standard", "1.413 mS/cm", "--units", "us"};
    assertThat(Cli.run(standard).out)
        .contains("is off 1 % per degree Fahrenheit")
        .doesNotContain("Celsius");
    assertThat(Cli.run("ec", "1.36 mS/cm", "--standard", "1.413 mS/cm").out)
        .contains("is off 2 % per degree Celsius");
  }

  /** By hand: 1.62 x 0.95 = 1.539, and / (1 - 0.0191 x 11) at 14 C. */
  @Test
  void asReadIsWhatTheMeterShows() {
    String[] line = {"ec", "1.62 mS/cm", "--set", "meters.ec.slope=0.95", "--at", "14 C"};
    assertThat(Cli.run(line).out)
        .startsWith(
            "At 25 C this solution has 1.95 mS/cm: by its last check the meter's 1.62 at 14.0 C is 1.54.\n")
        .containsPattern("as read +1\\.62 mS/cm +at 14\\.0 C")
        .containsPattern("by the last check +1\\.54 mS/cm +at 14\\.0 C");
    String[] json = java.util.Arrays.copyOf(line, 8);
    json[6] = "-f";
    json[7] = "json";
    assertThat(Cli.run(json).number("shown_mS_cm")).isEqualTo(1.62);
    assertThat(Cli.run(json).number("ec_mS_cm")).isCloseTo(1.539, within(1e-9));
    String[] now = java.util.Arrays.copyOf(line, 4);
    assertThat(Cli.run(now).out)
        .startsWith("By its last check the meter's 1.62 mS/cm is an EC of 1.54 mS/cm at 25 C: ");
    now[1] = "810 ppm";
    String[] ppm = {now[0], now[1], now[2], now[3], "--scale", "500"};
    assertThat(Cli.run(ppm).out)
        .startsWith(
            "810 ppm of this meter, on the scale of 500, is an EC of 1.54 mS/cm by its last check.");
  }

  @Test
  void aHeadingWithItsUnit() {
    String[] headings = {"EC (uS/cm)", "EC \u00b5S/cm", "Leitwert [\u03bcS/cm]", "ec_uS_cm"};
    for (String heading : headings) {
      Cli cli = Cli.piped("t," + heading + "\n1,1900\n", "ec", "--column", heading, "-q");
      assertThat(cli.exit).as(heading + cli.err).isZero();
      assertThat(cli.out).as(heading).contains(",1.9,1.9,950,");
    }
    Cli none = Cli.piped("t,EC\n1,1900\n", "ec", "--column", "EC");
    assertThat(none.err)
        .contains("for a whole column say --unit and mS/cm, uS/cm, dS/m, mS/m or ppm");
  }

  @Test
  void aUnitInOtherCaseIsRefusedAsSuch() {
    Cli cli = Cli.run("ec", "2100", "--unit", "us/cm");
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err).startsWith("--unit: ").contains("did you mean \"uS/cm\"?");
  }

  @Test
  void whatComesNextForSaltsByTheGram() {
    Cli cli = Cli.run("ec", "850 ppm", "--plan", "weighed-salts.yaml", "--set", STOCK);
    assertThat(cli.out)
        .contains("Next: leat topup --plan weighed-salts.yaml")
        .contains(" --volume ... --ec READING");
    Cli poured = Cli.run("ec", "850 ppm", "--plan", "weighed-salts.yaml");
    assertThat(poured.out).contains("Next: leat dose --plan weighed-salts.yaml");
  }

  private static final String STOCK = "feed.stock={makes: 200 L, grams: {potassium-nitrate: 80 g}}";

  /** A water report in mmol/L and meq/L is the same water as in mg/L; weights of IUPAC 2021. */
  @Test
  void aWaterReportByNumber() {
    String weights =
        "water={calcium: 80.156 mg/L, magnesium: 24.305 mg/L, nitrate: 31.002 mg/L, sulfate: 96.06 mg/L, "
            + "phosphorus: 0.30974 mg/L, potassium: 3.90983 mg/L, sodium: 22.98977 mg/L, chloride: 35.45 mg/L}";
    String numbers =
        "water={calcium: 2 mmol/L, magnesium: 2 meq/L, nitrate: 0.5 meq/l, sulfate: 1 mmol/l, "
            + "phosphorus: 0.01 mmol/L, potassium: 0.1 meq/L, sodium: 1 mmol/L, chloride: 1 meq/L}";
    String[] line = {
      "ec", "--weighed", "potassium-nitrate=20", "--volume", "45 L", "-f", "json", "--set", weights
    };
    double byWeight = Cli.run(line).number("ec25_mS_cm");
    line[8] = numbers;
    Cli cli = Cli.run(line);
    assertThat(cli.exit).as(cli.err).isZero();
    assertThat(cli.number("ec25_mS_cm")).isCloseTo(byWeight, within(1e-5));
    line[8] = "water.calcium=2,5 mmol/L";
    assertThat(Cli.run(line).err).contains("type \"2.5 mmol/L\"");
  }
}
