package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leat.Sheet;
import leat.cli.Cli;
import leat.cli.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseSaltsCommandTest {
  private static final String[] CONTRACT = {
    "dose",
    "salts",
    "--volume",
    "45 L",
    "--ask",
    "N=150",
    "--ask",
    "K=180",
    "--ask",
    "Ca=120",
    "--salt",
    "calcium-nitrate-4h2o",
    "--salt",
    "potassium-nitrate"
  };

  private static Cli run(String[] line, String... more) {
    String[] args = Arrays.copyOf(line, line.length + more.length);
    System.arraycopy(more, 0, args, line.length, more.length);
    return Cli.run(args);
  }

  private static JsonNode json(Cli cli) throws Exception {
    return new ObjectMapper().readTree(cli.out);
  }

  @Test
  void everySolvedRowOfTheInverseSheet() throws Exception {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-recipe-inverse.csv").having("grams").rows()) {
      List<String> args = new ArrayList<>(List.of("dose", "salts", "--format", "json"));
      args.add("--volume");
      args.add(row.text("volume_L") + " L");
      for (String ask : row.text("ask_mg_L").split(";")) {
        args.add("--ask");
        args.add(ask);
      }
      for (String salt : row.text("salts").split(";")) {
        args.add("--salt");
        args.add(salt);
      }
      JsonNode whole = json(Cli.run(args.toArray(new String[0])));
      String[] grams = row.text("grams").split(";");
      for (int i = 0; i < grams.length; i++) {
        String[] pair = grams[i].split("=");
        JsonNode salt = whole.get("salts").get(i);
        assertThat(salt.get("salt").asText()).isEqualTo(pair[0]);
        assertThat(salt.get("grams").asDouble())
            .as(row.text("case_id") + " " + pair[0])
            .isCloseTo(
                Double.parseDouble(pair[1]), within(2e-4 + 1e-4 * Double.parseDouble(pair[1])));
      }
      String[] got = row.text("got_mg_L").split(";");
      for (int i = 0; i < got.length; i++) {
        String[] pair = got[i].split("=");
        JsonNode element = whole.get("elements").get(i);
        assertThat(element.get("element").asText()).isEqualTo(pair[0]);
        double mg = element.get("got_mg_L").asDouble();
        assertThat(mg).isCloseTo(Double.parseDouble(pair[1]), within(2e-3 + 1e-4 * mg));
        assertThat(element.get("missed_mg_L").asDouble())
            .isCloseTo(mg - element.get("asked_mg_L").asDouble(), within(1e-9));
      }
      assertThat(whole.get("ec_mS_cm").asDouble())
          .as(row.text("case_id"))
          .isCloseTo(row.num("ec_mS_cm"), within(1e-4 + 1e-4 * row.num("ec_mS_cm")));
      assertThat(whole.get("cations_meq_L").asDouble())
          .isCloseTo(row.num("cations_meq_L"), within(2e-3));
      assertThat(whole.get("charge_balance_meq_L").asDouble()).isCloseTo(0, within(1e-3));
      n++;
    }
    assertThat(n).isGreaterThan(8);
  }

  /** IV01: the contract's line. */
  @Test
  void theContractsLine() {
    Cli csv = run(CONTRACT, "--format", "csv");
    // grams, EC and got as in the sheet, to its digits
    assertThat(csv.out)
        .startsWith(
            "salt,grams,ec_mS_cm,N_asked_mg_L,N_got_mg_L,N_missed_mg_L,K_asked_mg_L,K_got_mg_L,K_missed_mg_L,Ca_asked_mg_L,Ca_got_mg_L,Ca_missed_mg_L\n"
                + "calcium-nitrate-4h2o,31.9472814129,1.3166")
        .contains("\npotassium-nitrate,21.0109744327,1.3166", ",150,148.907", ",120,120.488");
    assertThat(csv.out.lines()).hasSize(3);
    assertThat(csv.exit).isZero();
    Cli text = run(CONTRACT);
    assertThat(text.out)
        .startsWith(
            "Weigh 31.9 g of calcium-nitrate-4h2o and 21.0 g of potassium-nitrate into 45.0 L: all that was asked within 0.73 %.\n")
        .contains("0.73 % too little", "0.31 % too much", "1.32 mS/cm");
  }

  @Test
  void withinDecidesTheExitCode() {
    assertThat(run(CONTRACT, "--within", "0.72 %").exit).isEqualTo(1);
    assertThat(run(CONTRACT, "--within", "0.73 %").exit).isZero();
    assertThat(run(CONTRACT, "--within", "0.72 %").out)
        .contains(
            "no weighing comes nearer, and it misses by up to 0.73 %, over the 0.72 % allowed");
  }

  @Test
  void aScaleRounds() {
    Cli csv = run(CONTRACT, "--format", "csv", "--scale-step", "0.5 g");
    assertThat(csv.out).contains("\ncalcium-nitrate-4h2o,32,", "\npotassium-nitrate,21,");
  }

  /** The forward sum meets what the inverse asked. */
  @Test
  void weighedGramsBringWhatWasAsked() throws Exception {
    JsonNode whole =
        json(
            Cli.run(
                "dose",
                "salts",
                "--volume",
                "45 L",
                "--weighed",
                "calcium-nitrate-4h2o=31.947281",
                "--weighed",
                "potassium-nitrate=21.010974 g",
                "--ask",
                "N=150",
                "--format",
                "json"));
    JsonNode n = whole.get("elements").get(0);
    assertThat(n.get("got_mg_L").asDouble()).isCloseTo(148.9072, within(1e-3));
    assertThat(n.get("missed_mg_L").asDouble()).isCloseTo(-1.0928, within(1e-3));
    JsonNode ca = whole.get("elements").get(3);
    assertThat(ca.get("element").asText()).isEqualTo("Ca");
    assertThat(ca.get("asked_mg_L").isNull()).isTrue();
    assertThat(ca.get("got_mg_L").asDouble()).isCloseTo(120.4888, within(1e-3));
  }

  @Test
  void theWaterAndTheSaltsOfThePlanCount() throws Exception {
    JsonNode whole =
        json(
            Cli.run(
                "dose",
                "salts",
                "--plan",
                "weighed-salts.yaml",
                "--ask",
                "Ca=110",
                "--ask",
                "Mg=35",
                "--salt",
                "calcium-nitrate-4h2o",
                "--salt",
                "magnesium-sulfate-7h2o",
                "--volume",
                "45 L",
                "--format",
                "json"));
    double grams = whole.get("salts").get(0).get("grams").asDouble();
    // 89 mg/L of calcium are missing; Ca is 40.078/236.146 of the tetrahydrate
    assertThat(grams).isCloseTo(89 * 45 / 1000.0 / (40.078 / 236.146), within(1e-2));
    double bitter = whole.get("salts").get(1).get("grams").asDouble();
    assertThat(whole.get("cost").asDouble())
        .isCloseTo(grams / 1000 * 3.40 + bitter / 1000 * 1.60, within(1e-9));
    assertThat(whole.get("currency").asText()).isEqualTo("EUR");
    assertThat(whole.get("elements").get(0).get("from_water_mg_L").asDouble())
        .isCloseTo(21, within(1e-9));
    JsonNode own =
        json(
            Cli.run(
                "dose",
                "salts",
                "--plan",
                "weighed-salts.yaml",
                "--weighed",
                "leaf-mix=45",
                "--volume",
                "45 L",
                "--format",
                "json"));
    // 12 % P2O5 of 1 g/L
    assertThat(own.get("elements").get(3).get("element").asText()).isEqualTo("P");
    assertThat(own.get("elements").get(3).get("got_mg_L").asDouble())
        .isCloseTo(120 * 0.43642, within(1e-2));
  }

  @Test
  void theListHoldsBothCalciumNitrates() {
    Cli csv = Cli.run("dose", "salts", "--list", "--format", "csv");
    assertThat(csv.out)
        .startsWith("salt,formula,elements,molar_mass_g_mol,solubility_0_C_g_kg,")
        .contains(
            "\ncalcium-nitrate-4h2o,Ca(NO3)2.4H2O,", "\ncalcium-nitrate-greenhouse,5Ca(NO3)2");
    assertThat(Cli.run("dose", "salts", "--list", "--plan", "weighed-salts.yaml").out)
        .contains("  leaf-mix ");
  }

  @Test
  void severalAnswersAreTold() {
    Cli cli =
        Cli.run(
            "dose",
            "salts",
            "--volume",
            "31 L",
            "--ask",
            "N=120",
            "--ask",
            "K=150",
            "--salt",
            "potassium-nitrate",
            "--salt",
            "calcium-nitrate-4h2o",
            "--salt",
            "ammonium-nitrate");
    assertThat(cli.out).contains("other weighings do as well");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Q=3|potassium-nitrate|--ask: \"Q\": an element or oxide is needed, such as N, N-NO3, K, P2O5",
        "Cl2=3|potassium-nitrate|--ask: \"Cl2\": an element or oxide is needed, such as N, N-NO3, K, P2O5; did you mean \"Cl\"?",
        "NO3=3|potassium-nitrate|--ask: \"NO3\": NO3 is the ion, 4.43 times its nitrogen: say N-NO3",
        "N=-3|potassium-nitrate|leat dose salts: N: it cannot be negative",
        "N|potassium-nitrate|--ask: expected a name, '=' and a concentration; got \"N\"",
        "N=3|potasium-nitrate|--salt: no salt \"potasium-nitrate\"; did you mean \"potassium-nitrate\"?",
      })
  void badInput(String ask, String salt, String message) {
    Cli cli = Cli.run("dose", "salts", "--volume", "45 L", "--ask", ask, "--salt", salt);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.exit).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[{name: m, elements: {N: 60 %, K2O: 50 %}}]|--set feed.salts: m: its figures add to over 100 %",
        "[{name: m, elements: {K20: 5 %}}]|--set feed.salts: an element or oxide is needed, such as N, N-NO3, K, P2O5; did you mean \"K2O\"?",
      })
  void badLabels(String salts, String message) {
    Cli cli =
        Cli.run(
            "dose",
            "salts",
            "--volume",
            "45 L",
            "--ask",
            "N=3",
            "--salt",
            "m",
            "--set",
            "feed.salts=" + salts);
    assertThat(cli.err).isEqualTo(message + "\n");
    assertThat(cli.exit).isEqualTo(2);
  }

  /** An element that no salt brings is no answer, and what is met is listed. */
  @Test
  void anElementThatIsMissing() {
    Cli cli = run(CONTRACT, "--ask", "Mg=30");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .contains("nothing here brings Mg; the rest is met within 0.73 %.")
        .contains("no salt here brings Mg");
    Cli met =
        Cli.run(
            "dose", "salts", "--volume", "45 L", "--ask", "K=100", "--salt", "potassium-nitrate");
    assertThat(met.exit).isZero();
    assertThat(met.out).contains("all that was asked is met.", "asked 100  met");
  }

  /**
   * Rows LB03, LB04 and LB10 of solution-labels.csv through the command: a liquid feed by weight
   * and by volume.
   */
  @Test
  void aLiquidFeedByItsLabel() throws Exception {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-labels.csv").rows()) {
      if (!row.text("dose_unit").equals("mL/L")) {
        continue;
      }
      List<String> args = new ArrayList<>(List.of("dose", "salts", "--volume", "45 L"));
      for (String figure : row.text("label_pct").split(";")) {
        args.addAll(List.of("--feed", figure));
      }
      args.addAll(List.of("--rate", row.text("dose") + " mL/L", "--format", "json"));
      if (row.text("label_basis").equals("% w/w")) {
        args.addAll(List.of("--density", row.text("density_g_mL") + " g/mL"));
      }
      JsonNode whole = json(Cli.run(args.toArray(new String[0])));
      assertThat(whole.get("salts").get(0).get("poured_mL").asDouble())
          .isCloseTo(45 * row.num("dose"), within(1e-9));
      for (String key : new String[] {"label", "elements"}) {
        for (JsonNode one : whole.get(key)) {
          String name = one.get("element").asText().toLowerCase(java.util.Locale.ROOT);
          double mg = one.get(key.equals("label") ? "from_feed_mg_L" : "got_mg_L").asDouble();
          double want = row.num(name + "_mg_L");
          assertThat(mg).as(row.text("case_id") + name).isCloseTo(want, within(2e-4 * want));
          n++;
        }
      }
    }
    assertThat(n).isGreaterThan(20);
    Cli short3 =
        Cli.run("dose", "salts", "--volume", "45 L", "--feed", "4-2-6", "--rate", "5 mL/L");
    assertThat(short3.out)
        .startsWith("225 mL of this feed in 45.0 L make an EC of about ")
        .contains("200 mg/L", "43.6 mg/L", "249 mg/L", "g in 100 mL");
    assertThat(Cli.run("dose", "salts", "--volume", "45 L", "--feed", "4-2-6").err)
        .startsWith("leat dose salts: --rate is needed");
  }

  /** The same rows with the label written once in the plan, through each command that reads it. */
  @Test
  void aLabelInThePlan() throws Exception {
    int n = 0;
    for (Sheet.Row row : Sheet.of("solution-labels.csv").rows()) {
      if (!row.text("dose_unit").equals("mL/L")) {
        continue;
      }
      String plan =
          "feed.parts=[{rate: "
              + row.text("dose")
              + " mL/L, label: {"
              + row.text("label_pct").replace("=", ": ").replace(";", " %, ")
              + " %}"
              + (row.text("label_basis").equals("% w/w")
                  ? ", density: " + row.text("density_g_mL") + " g/mL}]"
                  : "}]");
      JsonNode salts =
          json(Cli.run("dose", "salts", "--volume", "45 L", "--set", plan, "-f", "json"));
      assertThat(salts.get("salts").get(0).get("poured_mL").asDouble())
          .isCloseTo(45 * row.num("dose"), within(1e-9));
      n += agrees(salts.get("label"), row, 1);
      JsonNode dose = json(run(DOSE, "--set", plan));
      double poured = dose.get("concentrate_mL").asDouble() / dose.get("final_volume_L").asDouble();
      n += agrees(dose.get("label"), row, poured / row.num("dose"));
      assertThat(Cli.run("dose", "salts", "--volume", "45 L", "--set", plan).out)
          .contains(row.text("label_basis").equals("% w/v") ? "g in 100 mL" : "bottle 1");
    }
    assertThat(n).isGreaterThan(20);
  }

  private static final String[] DOSE = {
    "dose",
    "--volume",
    "45 L",
    "--from",
    "0.3 mS/cm",
    "--to",
    "1.6 mS/cm",
    "--set",
    "feed.rate_ec=1.9 mS/cm",
    "-f",
    "json"
  };

  /** Each element of a label as printed in the sheet, times the share of its rate. */
  private static int agrees(JsonNode label, Sheet.Row row, double share) {
    for (JsonNode one : label) {
      String name = one.get("element").asText().toLowerCase(java.util.Locale.ROOT);
      double want = share * row.num(name + "_mg_L");
      assertThat(one.get("from_feed_mg_L").asDouble())
          .as(row.text("case_id") + name)
          .isCloseTo(want, within(2e-4 * want));
    }
    return label.size();
  }

  /**
   * Two bottles together, by hand: N 2.5 x (1.16 x 44 + 1.18 x 20) = 186.6 mg/L; K2O brings 0.83015
   * of its weight as K (weights of IUPAC 2021): 2.5 x (1.16 x 22 + 1.18 x 90) x 0.83015 = 273.4.
   */
  @Test
  void theLabelsOfTwoBottles() throws Exception {
    Cli both = Cli.run("dose", "salts", "--plan", "hard-water.yaml", "--volume", "10 L");
    assertThat(both.out.replaceAll(" +", " "))
        .startsWith("50.0 mL of feed from 2 bottles in 10.0 L make an EC of about ")
        .contains("leaf A 25.0 mL", "N 187 mg/L", "K 273 mg/L")
        .contains("never mix the bottles undiluted")
        .doesNotContain("calcium salt");
    JsonNode stock = json(Cli.run("stock", "--plan", "hard-water.yaml", "-f", "json"));
    for (JsonNode bottle : stock) {
      assertThat(bottle.get("K_from_feed_mg_L").asDouble()).isCloseTo(273.4, within(0.05));
      assertThat(bottle.get("N_from_feed_mg_L").asDouble()).isCloseTo(186.6, within(1e-9));
    }
    assertThat(Cli.run("stock", "--plan", "hard-water.yaml").out)
        .contains("187 mg/L    from the feed, by its labels");
    assertThat(Cli.run("stock", "-p", "hard-water.yaml", "--set", "feed.parts[0].label=").out)
        .contains("leaf A has no label in the plan: what it brings is not counted.");
  }

  /** Flags win over the plan's labels, and salts that can be weighed win over bottles. */
  @Test
  void flagsWinOverThePlansLabels() throws Exception {
    String[] plan = {
      "dose", "salts", "--plan", "hard-water.yaml", "--volume", "10 L", "-f", "json"
    };
    JsonNode typed = json(run(plan, "--feed", "4-2-6", "--rate", "5 mL/L"));
    assertThat(typed.get("label").get(0).get("from_feed_mg_L").asDouble())
        .isCloseTo(200, within(1e-9));
    assertThat(json(run(plan, "--ask", "K=80", "--salt", "potassium-nitrate")).has("label"))
        .isFalse();
    JsonNode judged = json(run(plan, "--ask", "N=186.6"));
    assertThat(judged.get("elements").get(0).get("missed_mg_L").asDouble())
        .isCloseTo(0, within(1e-9));
    Cli dose =
        Cli.run(
            "dose", "-p", "hard-water.yaml", "--rate", "5 mL/L", "--volume", "10 L", "-f", "json");
    assertThat(json(dose).has("label")).isFalse();
  }

  /**
   * What the salts make in pure water stands over the measured EC of the water (a sum by hand);
   * bicarbonate closes an analysis without alkalinity.
   */
  @Test
  void theMeasuredWaterCounts() throws Exception {
    String[] line = {
      "dose", "salts", "--volume", "45 L", "--weighed", "potassium-nitrate=1", "--format", "json"
    };
    double pure = json(Cli.run(line)).get("ec_mS_cm").asDouble();
    JsonNode over = json(run(line, "--set", "water.ec=0.120 mS/cm"));
    assertThat(over.get("ec_mS_cm").asDouble()).isCloseTo(pure + 0.120, within(1e-9));
    assertThat(over.get("water_ec_mS_cm").asDouble()).isEqualTo(0.120);
    JsonNode closed =
        json(run(line, "--set", "water={calcium: 40.078 mg/L, chloride: 35.45 mg/L}"));
    assertThat(closed.get("charge_balance_meq_L").asDouble()).isCloseTo(0, within(1e-6));
    // 2 meq/L of calcium, 1 of chloride: 1 meq/L of bicarbonate is 61.0 mg/L
    double bicarbonate = 0;
    for (JsonNode ion : closed.get("ions")) {
      bicarbonate += ion.get("ion").asText().equals("HCO3") ? ion.get("mg_L").asDouble() : 0;
    }
    assertThat(bicarbonate).isCloseTo(61.016, within(0.01));
  }

  @Test
  void gramsStayGramsInUsText() {
    assertThat(run(CONTRACT, "--units", "us").out)
        .startsWith(
            "Weigh 31.9 g of calcium-nitrate-4h2o and 21.0 g of potassium-nitrate into 11.9 gal")
        .doesNotContain(" oz");
  }

  @Test
  void examplesRun() {
    Examples.run(new DoseSaltsCommand());
  }

  /** What no salt brings may still be in the water: that is not missing altogether. */
  @Test
  void whatNoSaltBrings() {
    Cli cli =
        Cli.run(
            "dose",
            "salts",
            "--plan",
            "hard-water.yaml",
            "--volume",
            "45 L",
            "--salt",
            "potassium-sulfate",
            "--ask",
            "K=200",
            "--ask",
            "Ca=150",
            "--ask",
            "Mg=40");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .contains("nothing here brings Ca and Mg; the rest is met.")
        .contains("no salt here brings Ca and Mg: leat dose salts --list shows which do.")
        .contains("Next: leat dose salts --plan hard-water.yaml --list   which salt brings")
        .doesNotContain("--scale-step");
  }

  /** By hand: 150 mg/L of nitrogen over 14.007; Ca 120.234 mg/L is 3 mmol/L and 6 meq/L. */
  @Test
  void askedByNumberAndByCharge() {
    String[] salts = {
      "--volume", "45 L", "--salt", "calcium-nitrate-4h2o", "--salt", "potassium-nitrate"
    };
    Cli weight = ask(salts, "N=154.077", "Ca=120.234");
    for (String[] asked :
        new String[][] {
          {"N=11 mmol/L", "Ca=3 mmol/L"},
          {"N=11 meq/L", "Ca=6 meq/l"},
          {" N = 11mmol/L", "CaO=168.226 mg/L"}
        }) {
      Cli cli = ask(salts, asked);
      assertThat(cli.exit).as(cli.err).isZero();
      assertThat(grams(cli)).isCloseTo(grams(weight), within(2e-3));
    }
    assertThat(ask(salts, "N=11,5 mmol/L", "Ca=3 mmol/L").err).contains("type \"11.5 mmol/L\"");
    assertThat(ask(salts, "B=2 meq/L", "Ca=3 mmol/L").exit).isEqualTo(2);
    assertThat(ask(salts, "NO3=2 mmol/L", "Ca=3 mmol/L").err).contains("say N-NO3");
  }

  private static Cli ask(String[] salts, String... asked) {
    List<String> line = new ArrayList<>(List.of("dose", "salts"));
    line.addAll(List.of(salts));
    for (String one : asked) {
      line.addAll(List.of("--ask", one));
    }
    line.addAll(List.of("-f", "json"));
    return Cli.run(line.toArray(new String[0]));
  }

  private static double grams(Cli cli) {
    return cli.number("total_g");
  }

  /** 0.05 mg/L of molybdenum in 30 L are 4 mg of its salt: no step of 0.1 g. */
  @Test
  void whatTheScaleRoundsAway() {
    Cli cli =
        Cli.run(
            "dose",
            "salts",
            "--volume",
            "30 L",
            "--ask",
            "K=200",
            "--ask",
            "Mo=0.05",
            "--salt",
            "potassium-nitrate",
            "--salt",
            "sodium-molybdate-2h2o",
            "--scale-step",
            "0.1 g");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .contains("it has no Mo at all; the rest is met")
        .contains("dissolve a hundred times as much in a hundred times the water")
        .doesNotContain("nothing here brings")
        .doesNotContain("--list");
  }

  /** 9.6 lb/gal is 1.15 g/mL: 9.6 x 453.59237 g in 3785.411784 mL. */
  @Test
  void aDensityIsToldAsOneReadsIt() {
    Cli cli =
        Cli.run(
            "dose",
            "salts",
            "--volume",
            "30 L",
            "--feed",
            "4-2-6",
            "--rate",
            "5 mL/L",
            "--density",
            "9.6 lb/gal");
    assertThat(cli.out).contains("the label's per cent are by weight, 1.15 g/mL");
  }

  /** The plan's water has 96 mg/L of calcium and 18 of magnesium. */
  @Test
  void whereTheWaterBringsItAll() {
    assertThat(water("Ca=60").out)
        .startsWith("Nothing is to be weighed: the water alone brings more than was asked.\n")
        .doesNotContain("Next: ");
    assertThat(water("Ca=96").out)
        .startsWith("Nothing is to be weighed: the water alone brings all that was asked.\n");
    assertThat(water("Ca=60", "Mg=18.5").out)
        .startsWith(
            "Nothing is to be weighed: no weighing comes nearer than the water alone, which misses by up to 60 %.\n");
  }

  private static Cli water(String... asked) {
    List<String> line =
        new ArrayList<>(
            List.of("dose", "salts", "--plan", "hard-water.yaml", "--volume", "45 L", "--salt"));
    line.add("calcium-nitrate-4h2o");
    for (String one : asked) {
      line.addAll(List.of("--ask", one));
    }
    if (asked.length > 1) {
      line.addAll(
          List.of("--set", "feed.salts=[{name: dolomite, elements: {Ca: 21 %, Mg: 12 %}}]"));
      line.addAll(List.of("--salt", "dolomite"));
    }
    return Cli.run(line.toArray(new String[0]));
  }

  @Test
  void anElementByItsWord() {
    assertThat(water("Potassium=200").err).contains("did you mean \"K\"?");
    assertThat(water("phosphor=200").exit).isEqualTo(2);
  }
}
