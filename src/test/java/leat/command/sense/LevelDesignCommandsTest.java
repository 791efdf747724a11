package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LevelDesignCommandsTest {
  private static final String P = "sender-tub.yaml";
  private static final String T1 =
      "tank={shape: tapered-box, bottom: 500 mm x 320 mm, top: 580 mm x 400 mm, height: 320 mm, corner: 40 mm, corner_top: 60 mm}";
  private static final String T3 =
      "tank={shape: cone, bottom: 300 mm, top: 380 mm, height: 400 mm}";

  // ladder

  /** 0.1 ohm is the least resistor of IEC 60063 that is searched; 200 reeds are a metre of 5 mm. */
  @Test
  void aLadderIsBoundedByWhatASenderCanBe() {
    Ran thousand =
        Ran.run("level", "ladder", "--empty", "0.2 ohm", "--full", "5 ohm", "--steps", "1000");
    assertThat(thousand.exit()).isEqualTo(2);
    assertThat(thousand.err()).isEqualTo("--steps \"1000\": a ladder has from 2 to 200 steps\n");
    Ran fine = Ran.run("level", "ladder", "--empty", "0.2 ohm", "--full", "5 ohm", "--steps", "50");
    assertThat(fine.exit()).isEqualTo(2);
    assertThat(fine.err()).contains("a step is at least 0.1 ohm");
    Ran most =
        Ran.run("level", "ladder", "--empty", "0 ohm", "--full", "10 kohm", "--steps", "200");
    assertThat(most.exit()).isZero();
  }

  /** Twelve steps over 220 mm: 20 mm each, 190/11 ohm each, by hand. */
  @Test
  void aSenderBoughtReadyIsLengthAndSteps(@TempDir Path folder) throws IOException {
    Ran cli =
        Ran.run(
            "level",
            "ladder",
            "--bought",
            "--range",
            "0-190",
            "--steps",
            "12",
            "--length",
            "220 mm",
            "--plan",
            P);
    assertThat(cli.lines()[0])
        .isEqualTo(
            "12 even steps from 45.00 mm to 265.0 mm, one every 20.0 mm, as the label says.");
    String text = cli.out();
    String steps = text.substring(text.indexOf("steps: [") + 7).replaceAll("\\s+", " ").strip();
    JsonNode json =
        Ran.run("level", "86", "--plan", P, "--set", "sender.steps=" + steps, "-f", "json").json();
    assertThat(json.get("status").asText()).isEqualTo("ok");
    assertThat(json.get("level_high_mm").asDouble()).isEqualTo(45 + 6 * 20);
    assertThat(Ran.run("level", "ladder", "--bought", "--range", "0-190", "--steps", "12").err())
        .contains("levels of the lowest and the highest reed are needed");
    assertThat(
            Ran.run(
                    "level",
                    "ladder",
                    "--bought",
                    "--range",
                    "0-190",
                    "--steps",
                    "12",
                    "--series",
                    "E12",
                    "--plan",
                    P)
                .exit())
        .isEqualTo(2);
  }

  /** By hand: 235 mm and 207 ohm between ten steps, nine times. */
  @Test
  void aBoughtSenderExplainsItsEvenSteps() {
    String[] line = {
      "level",
      "ladder",
      "--bought",
      "--range",
      "240-33",
      "--steps",
      "10",
      "--first",
      "45 mm",
      "--last",
      "280 mm",
      "--explain",
      "-f",
      "json"
    };
    JsonNode workings = Ran.run(line).json().get(0).get("workings");
    assertThat(workings).hasSize(2);
    assertThat(workings.get(0).get("result").asDouble()).isCloseTo(235.0 / 9, within(1e-9));
    assertThat(workings.get(1).get("result").asDouble()).isCloseTo(207.0 / 9, within(1e-9));
  }

  static Stream<Sheet.Row> ladders() {
    return Sheet.of("level-ladder-design.csv").having("series").atLeast(8);
  }

  @ParameterizedTest
  @MethodSource("ladders")
  void laddersOfTheSheet(Sheet.Row row) {
    List<String> line = new ArrayList<>();
    Collections.addAll(line, "level", "ladder", "--format", "json");
    Collections.addAll(line, "--empty", row.text("ohm_first") + " ohm");
    Collections.addAll(line, "--full", row.text("ohm_last") + " ohm");
    Collections.addAll(line, "--steps", row.text("steps"), "--series", row.text("series"));
    if (row.text("objective").equals("ohm_linear_in_litres")) {
      double[] reeds = row.list("reed_levels_mm", ";");
      Collections.addAll(line, "--equal", "needle", "--first", reeds[0] + " mm");
      Collections.addAll(line, "--last", reeds[reeds.length - 1] + " mm");
      Collections.addAll(line, "--set", row.text("tank_id").equals("T1") ? T1 : T3);
    }
    JsonNode json = Ran.run(line.toArray(String[]::new)).json();
    double[] target = row.list("target_ohm", ";");
    double worst = 0;
    double node = 0;
    boolean rises = target[1] > target[0];
    for (int k = 0; k < target.length; k++) {
      JsonNode step = json.get(rises ? k : target.length - 1 - k);
      node += step.get("resistor_ohm").asDouble();
      // the sheet lists from the return wire, so rising, whichever way the sender goes
      assertThat(step.get("node_ohm").asDouble()).isCloseTo(node, within(1e-6));
      worst = Math.max(worst, Math.abs(node - step.get("wanted_ohm").asDouble()));
    }
    double tolerance = row.num("tol_max_error_ohm");
    assertThat(worst).isCloseTo(row.num("best_max_error_ohm"), within(tolerance));
    assertThat(json.get(0).get("worst_error_ohm").asDouble()).isCloseTo(worst, within(1e-6));
  }

  @Test
  void reedsOfEqualLitres() {
    // LD09: T1, 8 reeds from 40 to 285 mm
    JsonNode json =
        Ran.run(
                "level",
                "ladder",
                "--range",
                "0-190",
                "--steps",
                "8",
                "--equal",
                "litres",
                "--first",
                "40 mm",
                "--last",
                "285 mm",
                "--set",
                T1,
                "--format",
                "json")
            .json();
    double[] levels = {40, 79.5594, 117.3236, 153.4857, 188.207, 221.6245, 253.8551, 285};
    for (int i = 0; i < levels.length; i++) {
      assertThat(json.get(i).get("level_mm").asDouble()).isCloseTo(levels[i], within(1e-3));
    }
    double first = json.get(1).get("volume_L").asDouble() - json.get(0).get("volume_L").asDouble();
    double last = json.get(7).get("volume_L").asDouble() - json.get(6).get("volume_L").asDouble();
    assertThat(last).isCloseTo(first, within(1e-6));
  }

  @Test
  void thePastedLadderIsASender(@TempDir Path folder) throws IOException {
    Ran cli =
        Ran.run(
            "level",
            "ladder",
            "--range",
            "240-33",
            "--steps",
            "10",
            "--equal",
            "litres",
            "--first",
            "40 mm",
            "--last",
            "250 mm",
            "--pull-in",
            "14 mm",
            "--drop-out",
            "16 mm",
            "--plan",
            P);
    assertThat(cli.exit()).isZero();
    Path plan = folder.resolve("p.yaml");
    Files.writeString(
        plan,
        "tank: {shape: box, bottom: 500 mm x 300 mm, height: 300 mm, full: 250 mm}\n"
            + "sender: {ladder: "
            + cli.out().substring(cli.out().lastIndexOf("ladder: ") + 8).strip()
            + "}\n");
    Ran level = Ran.run("level", "79", "--plan", plan.toString(), "--format", "json");
    assertThat(level.err()).isEmpty();
    assertThat(level.json().get("status").asText()).isEqualTo("ok");
  }

  @Test
  void ladderRefusals() {
    assertThat(Ran.run("level", "ladder", "--range", "0-200", "--steps", "8").err())
        .isEqualTo(
            "--range: known are 0-190, 10-180, 240-33 and 240-30, empty to full in ohm; else --empty and --full; got \"0-200\"\n");
    assertThat(Ran.run("level", "ladder", "--steps", "8").err())
        .startsWith("leat level ladder: the wanted ohms are needed: --range 240-33");
    assertThat(Ran.run("level", "ladder", "--range", "0-190", "--steps", "1").err())
        .isEqualTo("--steps \"1\": a ladder has from 2 to 200 steps\n");
    assertThat(
            Ran.run("level", "ladder", "--range", "0-190", "--steps", "8", "--equal", "litres")
                .err())
        .startsWith("tank.shape: needed");
  }

  // divider

  static Stream<Sheet.Row> dividers() {
    return Sheet.of("level-divider-design.csv").having("best_fixed_ohm").atLeast(10);
  }

  @ParameterizedTest
  @MethodSource("dividers")
  void dividersOfTheSheet(Sheet.Row row) {
    List<String> line = new ArrayList<>();
    Collections.addAll(line, "level", "divider", "--format", "json");
    for (String ohm : row.text("sender_ohm_list").split(";")) {
      Collections.addAll(line, "--ohm", ohm + " ohm");
    }
    Collections.addAll(line, "--sender-side", row.text("sender_side"));
    Collections.addAll(line, "--lead", row.text("lead_ohm") + " ohm");
    Collections.addAll(line, "--tolerance", row.text("ladder_tol_pct") + " %");
    Collections.addAll(line, "--supply", row.text("supply_V") + " V");
    Collections.addAll(line, "--supply-tolerance", row.text("supply_tol_pct") + " %");
    Collections.addAll(line, "--reference", row.text("reference_V") + " V");
    Collections.addAll(line, "--reference-tolerance", row.text("reference_tol_pct") + " %");
    Collections.addAll(line, "--bits", row.text("adc_bits"));
    Collections.addAll(line, "--adc-error", row.text("adc_error_lsb"));
    Collections.addAll(line, "--resistor-tolerance", row.text("fixed_tol_pct") + " %");
    Collections.addAll(line, "--series", row.text("series").replace("continuous", "any"));
    if (row.has("max_sender_mA")) {
      Collections.addAll(line, "--max-current", row.text("max_sender_mA") + " mA");
    }
    Ran cli = Ran.run(line.toArray(String[]::new));
    JsonNode json = cli.json();
    double tolerance = row.num("tol_rel");
    close(row, json.get(0), "resistor_ohm", "best_fixed_ohm", tolerance);
    close(row, json.get(0), "smallest_gap_counts", "smallest_gap_counts", tolerance);
    String[] counts = row.text("counts_list").split(";");
    double current = 0;
    double power = 0;
    double misread = 0;
    boolean apart = true;
    for (int i = 0; i < counts.length; i++) {
      JsonNode step = json.get(i);
      assertThat(step.get("counts").asText()).isEqualTo(counts[i]);
      current = Math.max(current, step.get("current_mA").asDouble());
      power = Math.max(power, step.get("power_mW").asDouble());
      misread = Math.max(misread, step.get("misread_ohm").asDouble());
      apart &= i == counts.length - 1 || step.get("apart").asBoolean();
    }
    assertThat(current).isCloseTo(row.num("greatest_sender_mA"), within(tolerance * current));
    assertThat(power).isCloseTo(row.num("greatest_sender_mW"), within(tolerance * power));
    assertThat(misread).isCloseTo(row.num("worst_misread_ohm"), within(tolerance * misread));
    assertThat(apart).isEqualTo(row.text("neighbours_stay_apart").equals("true"));
    assertThat(cli.out()).contains("\"shared-earth\"").contains("\"power-while-reading\"");
    assertThat(cli.out().contains("\"not-apart\"")).isEqualTo(!apart);
  }

  private static void close(
      Sheet.Row row, JsonNode json, String key, String column, double tolerance) {
    assertThat(json.get(key).asDouble())
        .as(row.idAndProvenance())
        .isCloseTo(row.num(column), within(tolerance * row.num(column)));
  }

  /** 3.3 V over 180 ohm and a step of 10 ohm drive 17.4 mA: too much where 5 mA are asked. */
  @Test
  void thePlansResistorThatFeedsTooMuch() {
    String[] line = {
      "level",
      "divider",
      "--plan",
      "sender-tub.yaml",
      "--set",
      "sender.divider.resistor=180 ohm",
      "--set",
      "sender.divider.supply=3.3 V",
      "--max-current",
      "5 mA"
    };
    assertThat(Ran.run(line).out())
        .containsPattern("the plan's resistor +180 ohm .* more than asked")
        .contains("sender.divider.resistor=");
  }

  /** A reading of its own under the steps goes with the steps that it lay under. */
  @Test
  void aBoughtSenderTakesTheOldReadingBelowAway(@TempDir Path folder) throws IOException {
    String plan = folder.resolve("tub.yaml").toString();
    Files.writeString(
        Path.of(plan),
        "tank: {shape: box, bottom: 500 mm x 400 mm, height: 300 mm, full: 250 mm, intake: 40 mm}\n"
            + "sender: {steps: [100 mm = 180 ohm, 140 mm = 150 ohm], below: 210 ohm}\n");
    Ran told =
        Ran.run(
            "level",
            "ladder",
            "--bought",
            "--range",
            "0-190",
            "--steps",
            "6",
            "--length",
            "200 mm",
            "--plan",
            plan);
    assertThat(told.out()).contains("sender.below= ").contains("sender.steps=[");
  }

  @Test
  void aBlindZoneNearZeroIsSaid() {
    Ran cli = Ran.run("level", "divider", "--plan", P, "--blind", "250");
    assertThat(cli.out()).contains("a step falls under the 250 counts that the ADC cannot read");
  }

  // table

  @ParameterizedTest
  @ValueSource(strings = {"low", "high"})
  void everyCountOfTheArrayMeansWhatLevelSays(String side) {
    String set = "sender.divider.sender_side=" + side;
    String c = Ran.run("level", "table", "--plan", P, "--set", set, "--c").out();
    List<String[]> array = new ArrayList<>();
    Matcher rows = Pattern.compile("\\{(\\d+)UL, LEVEL_(\\w+), (\\d+)UL, (\\d+)UL\\}").matcher(c);
    while (rows.find()) {
      array.add(new String[] {rows.group(1), rows.group(2), rows.group(3), rows.group(4)});
    }
    assertThat(c).contains("enum { LEVEL_ROWS = " + array.size() + " };");
    StringBuilder in = new StringBuilder("c\n");
    for (int i = 0; i < 4096; i++) {
      in.append(i).append('\n');
    }
    String[] level =
        Ran.withInput(
                in.toString(), "level", "--plan", P, "--set", set, "--counts", "--column", "c")
            .lines();
    int at = 0;
    for (int i = 0; i < 4096; i++) {
      while (i > Integer.parseInt(array.get(at)[0])) {
        at++;
      }
      String[] cells = level[i + 1].split(",", -1);
      assertThat(array.get(at)[1].toLowerCase(java.util.Locale.ROOT).replace('_', '-'))
          .as(side + " " + i)
          .isEqualTo(cells[2]);
      double low = cells[6].isEmpty() ? 0 : Double.parseDouble(cells[6]) * 1000;
      double high = cells[7].isEmpty() ? 0 : Double.parseDouble(cells[7]) * 1000;
      assertThat(Double.parseDouble(array.get(at)[2])).isBetween(low - 1, low);
      assertThat(Double.parseDouble(array.get(at)[3])).isBetween(high, high + 1);
    }
  }

  /**
   * The cut-off against `level` itself, count by count and way by way: at and beyond it every count
   * that is no fault is sure of the mark, and the next count before it is not.
   */
  @ParameterizedTest
  @ValueSource(strings = {"low", "high"})
  void theCutoffPartsWhatIsSure(String side) {
    for (boolean falls : new boolean[] {false, true}) {
      String steps =
          falls
              ? "sender.steps=[40 mm = 190 ohm, 60 mm = 156 ohm, 80 mm = 118 ohm, 100 mm = 82 ohm, 120 mm = 43 ohm, 140 mm = 10 ohm]"
              : "sender.tolerance=2 %";
      String[] set = {"--set", "sender.divider.sender_side=" + side, "--set", steps};
      JsonNode json =
          Ran.run(with(set, "level", "table", "--plan", P, "--cutoff", "--format", "json")).json();
      int at = json.get("cutoff_counts").asInt();
      int inward = json.get("run_side_counts").asText().equals("at-or-over") ? 1 : -1;
      assertThat(inward).isEqualTo(side.equals("low") != falls ? 1 : -1);
      // 80 mm of T2 hold 11.97 L; `tank --level "80 mm"` says so
      double mark =
          Ran.run("tank", "--plan", P, "--level", "80 mm", "--format", "json")
              .json()
              .get("volume_L")
              .asDouble();
      assertThat(json.get("mark_L").asDouble()).isCloseTo(mark, within(1e-9));
      for (int c = at - inward; c >= 0 && c < 4096 && Math.abs(c - at) < 40; c += inward) {
        JsonNode level =
            Ran.run(with(set, "level", "" + c, "--counts", "--plan", P, "--format", "json")).json();
        boolean sure =
            !level.get("volume_low_L").isNull() && level.get("volume_low_L").asDouble() >= mark;
        assertThat(sure).as(side + falls + c).isEqualTo(c != at - inward);
      }
    }
  }

  private static String[] with(String[] last, String... first) {
    return Stream.concat(Stream.of(first), Stream.of(last)).toArray(String[]::new);
  }

  @Test
  void theCutoffInOhmsAndWhenNothingIsSure() {
    // the step of 62 ohm is the first that begins over the mark: 62 - 2 % - 1.5 ohm + 0.4 of lead
    JsonNode json =
        Ran.run("level", "table", "--plan", P, "--cutoff", "--set", "sender.divider=", "-f", "json")
            .json();
    assertThat(json.get("cutoff_ohm").asDouble()).isCloseTo(62 * 0.98 - 1.5 + 0.4, within(1e-6));
    assertThat(json.get("cutoff_counts").isNull()).isTrue();
    Ran none = Ran.run("level", "table", "--plan", P, "--cutoff", "--at-least", "50 L");
    assertThat(none.exit()).isEqualTo(1);
    assertThat(none.out()).startsWith("No reading of this sender is sure of 50.0 L");
    assertThat(Ran.run("level", "table", "--plan", P, "--cutoff", "--set", "tank.low=").err())
        .contains("tank.low: needed");
    assertThat(Ran.run("level", "table", "--plan", P).out())
        .contains("from 59.7 ohm up, 1020 counts or more");
  }

  @Test
  void stretchesHaveNoGapsAndNoOverlaps() {
    JsonNode json = Ran.run("level", "table", "--plan", P, "--format", "json").json();
    assertThat(json.get(0).get("from_ohm").isNull()).isTrue();
    int counts = 0;
    for (int i = 0; i < json.size(); i++) {
      if (i > 0) {
        assertThat(json.get(i).get("from_ohm")).isEqualTo(json.get(i - 1).get("below_ohm"));
      }
      if (!json.get(i).get("from_counts").isNull()) {
        assertThat(json.get(i).get("from_counts").asInt()).isEqualTo(counts);
        counts = json.get(i).get("to_counts").asInt() + 1;
      }
    }
    assertThat(counts).isEqualTo(4096);
    assertThat(json.get(json.size() - 1).get("below_ohm").isNull()).isTrue();
  }

  @Test
  void anInterpolatedTableStaysInItsBands() {
    JsonNode json =
        Ran.run("level", "table", "--plan", P, "--every", "2.5 ohm", "--format", "json").json();
    assertThat(json).hasSize(73);
    for (JsonNode row : json) {
      assertThat(row.get("volume_L").asDouble())
          .isBetween(row.get("volume_low_L").asDouble(), row.get("volume_high_L").asDouble());
    }
    assertThat(Ran.run("level", "table", "--plan", P, "--every", "0.0001 ohm").err())
        .isEqualTo("--every \"0.0001 ohm\": that makes over 100,000 rows\n");
  }

  // fit

  static Stream<Sheet.Row> fits() {
    return Sheet.of("level-fit.csv")
        .where(r -> r.text("expect").equals("value") && r.num("steps_found") > 1)
        .atLeast(7);
  }

  @ParameterizedTest
  @MethodSource("fits")
  void fitsOfTheSheetInAnyOrder(Sheet.Row row, @TempDir Path folder) throws IOException {
    String[] litres = row.text("litres_list").split(";");
    String[] ohms = row.text("ohm_list").split(";");
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < litres.length; i++) {
      rows.add(litres[i] + "," + ohms[i]);
    }
    if (distinct(litres)) {
      Collections.shuffle(rows, new Random(5));
    }
    Path file = folder.resolve("pairs.csv");
    Files.writeString(file, "litres,ohm\n" + String.join("\n", rows) + "\n");
    Ran cli =
        Ran.run(
            "level",
            "fit",
            file.toString(),
            "--motion",
            row.text("motion"),
            "--same-within",
            row.text("same_within_ohm") + " ohm",
            "--format",
            "json");
    JsonNode json = cli.json();
    double[] steps = row.list("step_ohm_list", ";");
    double[] edges = row.list("edge_mid_L_list", ";");
    assertThat(json).hasSize(steps.length);
    for (int i = 0; i < steps.length; i++) {
      assertThat(json.get(i).get("ohm").asDouble()).isCloseTo(steps[i], within(1e-6));
      if (i > 0) {
        assertThat(json.get(i).get("edge_L").asDouble()).isCloseTo(edges[i - 1], within(1e-9));
      }
    }
    assertThat(cli.out().contains("\"suspect\", \"text\"")).isEqualTo(row.has("suspect_step_list"));
  }

  private static boolean distinct(String[] litres) {
    return Stream.of(litres).distinct().count() == litres.length;
  }

  /**
   * A second route from end to end: an invented sender, poured by the litre, fitted, pasted into a
   * plan of a tank of unknown shape; whatever it then reads, the true litres lie in the band.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void whatWasPouredComesBack(int seed, @TempDir Path folder) throws IOException {
    Random random = new Random(seed);
    boolean falls = seed % 2 == 0;
    double[] edge = new double[8];
    double at = 2;
    for (int i = 0; i < edge.length; i++) {
      at += 2.5 + 3 * random.nextDouble();
      edge[i] = at;
    }
    StringBuilder pairs = new StringBuilder("litres;ohm\n");
    double step = 0.9;
    for (double v = 0; v < at + 3; v += step) {
      double noise = random.nextDouble() - 0.5;
      String row =
          String.format(
              java.util.Locale.ROOT, "%.2f;%.2f\n", v == 0 ? 0 : step, ohm(edge, v, falls) + noise);
      pairs.append(row.replace('.', ','));
    }
    Path file = folder.resolve("pairs.csv");
    Files.writeString(file, pairs.toString());
    Ran fit = Ran.run("level", "fit", file.toString(), "--cumulative", "--paste");
    assertThat(fit.err()).isEmpty();
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(plan, "tank: {holds: 80 L}\n" + fit.out());
    StringBuilder in = new StringBuilder("true,ohm\n");
    for (int i = 0; i < 500; i++) {
      double v = 80 * random.nextDouble();
      in.append(v).append(',').append(ohm(edge, v, falls) + random.nextDouble() - 0.5).append('\n');
    }
    String[] lines =
        Ran.withInput(in.toString(), "level", "--plan", plan.toString(), "--column", "ohm").lines();
    for (int i = 1; i <= 500; i++) {
      String[] cells = lines[i].split(",", -1);
      assertThat(cells[3]).as(lines[i]).isEqualTo("ok");
      assertThat(Double.parseDouble(cells[0]))
          .isBetween(Double.parseDouble(cells[7]) - 0.011, Double.parseDouble(cells[8]) + 0.011);
    }
  }

  private static double ohm(double[] edge, double litres, boolean falls) {
    int step = 0;
    while (step < edge.length && litres >= edge[step]) {
      step++;
    }
    return falls ? 230 - 24 * step : 12 + 22 * step;
  }

  @Test
  void aSlipIsNamedAndCanBeLeftOut() {
    Ran cli = Ran.run("level", "fit", "pours.csv");
    assertThat(cli.out())
        .contains("row 24, 132 ohm at 23.0 L, lies furthest")
        .contains("Next: leat level fit pours.csv --leave-out 24");
    Ran without = Ran.run("level", "fit", "pours.csv", "--leave-out", "24");
    assertThat(without.lines()[0])
        .isEqualTo(
            "The sender has 11 steps and rises as the tank fills, from 10.5 to 190 ohm; each edge is known to 0.50 L or better. The column was taken as what the tank holds.");
    assertThat(Ran.run("level", "fit", "pours.csv", "--leave-out", "99").err())
        .isEqualTo("pours.csv: there is no row 99 to leave out; it has 45\n");
  }

  /** A US gallon is 231 in3 = 3.785411784 L, a quart its fourth part. */
  @Test
  void theColumnsNameSaysTheUnit(@TempDir Path folder) throws IOException {
    String rows = "0,10\n1,10\n2,10\n3,30\n4,30\n5,50\n6,50\n";
    assertThat(edge(folder, "gal,ohm\n" + rows)).isCloseTo(2.5 * 3.785411784, within(1e-9));
    assertThat(edge(folder, "poured_qt,ohm\n" + rows, "--litres-column", "poured_qt"))
        .isCloseTo(2.5 * 3.785411784 / 4, within(1e-9));
    assertThat(edge(folder, "mL,ohm\n" + rows)).isCloseTo(0.0025, within(1e-12));
    assertThat(edge(folder, "litres,ohm\n" + rows)).isEqualTo(2.5);
    assertThat(edge(folder, "water,ohm\n" + rows, "--litres-column", "water")).isEqualTo(2.5);
  }

  private static double edge(Path folder, String text, String... more) throws IOException {
    Path file = folder.resolve("e.csv");
    Files.writeString(file, text);
    String[] line = {"level", "fit", file.toString(), "--format", "json"};
    return Ran.run(with(more, line)).json().get(1).get("edge_L").asDouble();
  }

  @Test
  void additionsAreAskedAboutAndTheAnswerSaysWhatWasTaken(@TempDir Path folder) throws IOException {
    String even = "litres,ohm\n1,10\n1,10\n1,10\n1,30\n1,30\n1,50\n1,50\n";
    String uneven = "litres,ohm\n2,10\n1,10\n1.5,10\n1,30\n2,30\n1.5,50\n1,50\n3,70\n";
    assertThat(fit(folder, even)).startsWith("the ohms follow the rows, not the litres");
    assertThat(fit(folder, uneven)).startsWith("the ohms follow the rows, not the litres");
    Path file = folder.resolve("f.csv");
    Files.writeString(file, even);
    assertThat(Ran.run("level", "fit", file.toString(), "--cumulative").lines()[0])
        .endsWith("The column was summed up: what was poured in each time.");
    assertThat(edge(folder, even, "--cumulative")).isEqualTo(3.5);
    // repeated readings of one volume are no additions
    assertThat(edge(folder, "litres,ohm\n1,10\n1,10.4\n1,9.8\n2,10\n3,30\n3,30.2\n3,29.9\n"))
        .isEqualTo(2.5);
  }

  @Test
  void largeOhmsArePastedAsTheyAre(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("pairs.csv");
    Files.writeString(file, "litres,ohm\n1,10000\n2,10001\n3,12345.6\n4,12345.7\n");
    assertThat(Ran.run("level", "fit", file.toString(), "--paste").out())
        .startsWith("sender:\n  edges: [2.5 L = 12345.7 ohm]\n  below: 10000.5 ohm\n");
  }

  @Test
  void drainedPairsGiveTheHysteresis(@TempDir Path folder) throws IOException {
    Path drained = folder.resolve("drained.csv");
    String text = Files.readString(Path.of("examples/pours.csv"));
    StringBuilder shifted = new StringBuilder("litres,ohm\n");
    for (String line : text.split("\n")) {
      String[] cells = line.split(",");
      if (!cells[0].equals("litres") && !cells[0].equals("23")) {
        shifted.append(
            Double.parseDouble(cells[0]) - 0.7 < 0 ? 0 : Double.parseDouble(cells[0]) - 0.7);
        shifted.append(',').append(cells[1]).append('\n');
      }
    }
    Files.writeString(drained, shifted.toString());
    Ran cli =
        Ran.run(
            "level",
            "fit",
            "pours.csv",
            "--leave-out",
            "24",
            "--drained",
            drained.toString(),
            "--paste");
    assertThat(cli.out()).contains("  hysteresis_volume: 0.7 L\n");
  }

  @Test
  void fitRefusals(@TempDir Path folder) throws IOException {
    assertThat(Ran.run("level", "fit").err())
        .startsWith("leat level fit: a file of pours is needed, such as leat level fit pours.csv");
    assertThat(Ran.run("level", "fit", "none.csv").exit()).isEqualTo(3);
    assertThat(fit(folder, "litres,ohm\n1,10\n2,ten\n"))
        .isEqualTo(
            "row 2, column ohm: expected a reading in ohm, such as 83, or open; got \"ten\"\n");
    assertThat(fit(folder, "litres,ohm\n1,10\n-2,10\n"))
        .isEqualTo("row 2, column litres: litres in the tank cannot be negative\n");
    assertThat(fit(folder, "litres,ohm\n1,10\n"))
        .isEqualTo("pairs: at least two pairs of litres and ohms are needed\n");
    assertThat(fit(folder, "litres,ohm\n1,10\n2,10.4\n3,10.1\n4,10.6\n"))
        .startsWith("the readings never change by a step");
    assertThat(fit(folder, "litres,ohm\n1,10\n2,10\n"))
        .startsWith("the readings say neither that the ohms rise nor that they fall");
    assertThat(fit(folder, "poured,ohm\n1,10\n"))
        .isEqualTo("no column \"litres\"; it has poured, ohm\n");
    assertThat(fit(folder, "")).startsWith("there are no rows");
    assertThat(fit(folder, "litres,ohm\n1,\"10\n")).startsWith("a quoted cell is not closed");
  }

  private static String fit(Path folder, String text) throws IOException {
    Path file = folder.resolve("f.csv");
    Files.writeString(file, text);
    Ran cli = Ran.run("level", "fit", file.toString());
    assertThat(cli.exit()).isEqualTo(2);
    assertThat(cli.err()).startsWith(file + ": ");
    return cli.err().substring((file + ": ").length());
  }

  // dipstick

  @Test
  void aDipstickIsReadBack() {
    String csv = Ran.run("tank", "--plan", P, "--every", "10 mm", "--format", "csv").out();
    for (String level : new String[] {"0 mm", "120 mm", "330 mm"}) {
      String[] direct =
          Ran.run("tank", "--plan", P, "--level", level, "--format", "csv").lines()[1].split(",");
      String[] back =
          Ran.withInput(csv, "tank", "--dipstick", "-", "--level", level, "--format", "csv")
              .lines()[1]
              .split(",");
      assertThat(Double.parseDouble(back[1]))
          .isCloseTo(Double.parseDouble(direct[1]), within(1e-9));
    }
    assertThat(
            Ran.withInput(
                    csv.replace(',', ';').replace('.', ','),
                    "tank",
                    "--dipstick",
                    "-",
                    "--volume",
                    "20 L",
                    "--format",
                    "json")
                .json()
                .get("level_mm")
                .asDouble())
        .isCloseTo(130.87, within(0.2));
    assertThat(
            Ran.withInput(
                    "level_mm,volume_L\n0,0\n10,5\n20,4\n",
                    "tank",
                    "--dipstick",
                    "-",
                    "--level",
                    "5 mm")
                .err())
        .isEqualTo("standard input: table: its volumes must rise from point to point\n");
  }

  /** Reeds from 2 to 8 in, seven ways of 6/7 in: told in inches, pasted, and read as the same. */
  @Test
  void aLadderForAPlanInInchesIsWrittenInInches(@TempDir Path folder) throws IOException {
    Path plan = folder.resolve("us.yaml");
    Files.writeString(
        plan,
        "units: us\ntank: {shape: box, bottom: 20 in x 12 in, height: 12 in, full: 10 in, low: 3 in}\n");
    String out =
        Ran.run(
                "level",
                "ladder",
                "--range=240-33",
                "--steps=8",
                "--first=2in",
                "--last=8in",
                "--plan=" + plan)
            .out();
    assertThat(out).contains("first: 2 in, pitch: 0.857 in");
    Matcher typed = Pattern.compile("plan set \\S+ \"(sender\\.ladder=[^\"]*)\"").matcher(out);
    assertThat(typed.find()).isTrue();
    assertThat(Ran.run("plan", "set", plan.toString(), typed.group(1)).exit()).isZero();
    assertThat(Files.readString(plan)).doesNotContain(" mm");
    String table = Ran.run("level", "table", "--plan=" + plan, "--format=csv").out();
    String top = table.lines().filter(l -> l.contains(",ok,")).findFirst().orElseThrow();
    assertThat(Double.parseDouble(top.split(",", -1)[5]))
        .as("the reed at 8 in lets go 0.374 in lower")
        .isCloseTo((8 - 0.374) * 25.4, within(0.05));
  }
}
