package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import leat.Sheet;
import leat.cli.Command;
import leat.cli.Ran;
import leat.command.Commands;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LevelCommandTest {
  private static final String P = "sender-tub.yaml";

  static Stream<Sheet.Row> planRows() {
    return Sheet.of("level-plan-decode.csv").having("status").atLeast(18);
  }

  /** A plan as the sheet's row says it. */
  private static String plan(Sheet.Row row) {
    return "tank: {shape: "
        + row.text("tank_shape")
        + ", bottom: "
        + row.text("tank_bottom_mm").replace(" x ", " mm x ")
        + " mm, top: "
        + row.text("tank_top_mm").replace(" x ", " mm x ")
        + " mm, height: "
        + row.text("tank_height_mm")
        + " mm, corner: "
        + row.text("tank_corner_mm")
        + " mm, full: "
        + row.text("tank_full_mm")
        + " mm}\nsender: {steps: ["
        + row.text("steps_mm_ohm").replace("=", " mm = ").replace(";", " ohm, ")
        + " ohm], hysteresis: "
        + row.text("hysteresis_mm")
        + " mm, tolerance: "
        + row.text("tolerance_pct")
        + " %, reading: "
        + row.text("reading_tolerance_ohm")
        + " ohm, lead: "
        + row.text("lead_ohm")
        + " ohm, open_above: "
        + row.text("open_above_ohm")
        + " ohm, short_below: "
        + row.text("short_below_ohm")
        + " ohm}\n";
  }

  @ParameterizedTest
  @MethodSource("planRows")
  void sheetRowByRow(Sheet.Row row, @TempDir Path folder) throws IOException {
    Path file = folder.resolve("p.yaml");
    Files.writeString(file, plan(row));
    String reading = row.text("measured_ohm").replace("Infinity", "open");
    Ran cli =
        Ran.withInput(
            "x,ohm\n1," + reading + "\n",
            "level",
            "--plan",
            file.toString(),
            "--motion",
            row.text("motion"),
            "--column",
            "ohm",
            "--format",
            "json");
    check(row, cli.json().get(0));
    if (!reading.isEmpty()) {
      Ran one =
          Ran.run(
              "level",
              reading,
              "-p",
              file.toString(),
              "--motion",
              row.text("motion"),
              "-f",
              "json");
      check(row, one.json());
      boolean fault =
          Stream.of("open", "short", "under-range", "over-range")
              .anyMatch(row.text("status")::equals);
      assertThat(one.exit()).isEqualTo(fault ? 1 : 0);
    }
  }

  private static void check(Sheet.Row row, JsonNode json) {
    assertThat(json.get("status").asText()).isEqualTo(row.text("status"));
    close(row, json, "reading_ohm", 1e-9);
    close(row, json, "level_low_mm", row.num("tol_mm"));
    close(row, json, "level_high_mm", row.num("tol_mm"));
    close(row, json, "volume_L", row.num("tol_L"));
    close(row, json, "volume_low_L", row.num("tol_L"));
    close(row, json, "volume_high_L", row.num("tol_L"));
    close(row, json, "full_pct", row.num("tol_pct"));
  }

  private static void close(Sheet.Row row, JsonNode json, String key, double tolerance) {
    if (row.has(key) && !row.text(key).equals("Infinity")) {
      assertThat(json.get(key).asDouble())
          .as(key + " " + row.idAndProvenance())
          .isCloseTo(row.num(key), within(tolerance));
    } else {
      assertThat(json.get(key).isNull()).as(key + " " + row.idAndProvenance()).isTrue();
    }
  }

  @Test
  void textCsvAndJsonHoldTheSame() {
    Ran csv = Ran.run("level", "83", "--plan", P, "--format", "csv");
    assertThat(csv.lines()[0])
        .isEqualTo(
            "reading_ohm,status,level_low_mm,level_high_mm,volume_L,volume_low_L,volume_high_L,full_pct,below_low");
    String[] cells = csv.lines()[1].split(",");
    JsonNode json = Ran.run("level", "83", "--plan", P, "--format", "json").json();
    String[] keys = csv.lines()[0].split(",");
    for (int i = 0; i < keys.length; i++) {
      assertThat(json.get(keys[i]).asText()).as(keys[i]).isEqualTo(cells[i]);
    }
    Ran text = Ran.run("level", "83", "--plan", P);
    assertThat(text.lines()[0])
        .isEqualTo(
            "Between 17.6 and 21.5 L in the tank, about 19.5 L (43 % of full). The refill mark is about 7.6 L away.");
    assertThat(text.out()).contains("116 to 140 mm").contains("the step of 82.0 ohm");
  }

  @ParameterizedTest
  @CsvSource({
    "open, 1, 'Open: a broken wire, a loose plug, or no reed closed. It says nothing about the water.'",
    "OL, 1, 'Open: a broken wire, a loose plug, or no reed closed. It says nothing about the water.'",
    "0.5, 1, 'Short: the two wires touch, or water stands in the plug. It says nothing about the water.'",
    "-5, 1, 'Short: the two wires touch, or water stands in the plug. It says nothing about the water.'",
    "5, 1, 'Under the range: fewer ohms than the lowest step of this sender, 10.0 ohm. A wet plug, or another sender than the plan says.'",
    "500, 1, 'Over the range: more ohms than the highest step of this sender, 190 ohm. A corroded plug, or another sender than the plan says.'",
    "0.083 kohm, 0, 'Between 17.6 and 21.5 L in the tank, about 19.5 L (43 % of full). The refill mark is about 7.6 L away.'",
    "10, 0, 'At most 8.85 L in the tank, perhaps none: below that the sender sees nothing. That is below the refill mark.'",
    "190, 0, 'At least 37.9 L in the tank: from there to the rim the sender reads the same.'",
    "90, 0, 'Between 17.6 and 24.8 L in the tank, about 21.2 L (46 % of full). The refill mark is about 9.3 L away.'",
  })
  void sentences(String reading, int exit, String sentence) {
    Ran cli = Ran.run("level", reading, "--plan", P);
    assertThat(cli.lines()[0]).isEqualTo(sentence);
    assertThat(cli.exit()).isEqualTo(exit);
  }

  @Test
  void emptyOrShortCannotBeTold() {
    Ran cli =
        Ran.run(
            "level",
            "0.3",
            "--plan",
            P,
            "--set",
            "sender.steps=[40 mm = 0 ohm, 60 mm = 27 ohm, 80 mm = 43 ohm]");
    assertThat(cli.exit()).isZero();
    assertThat(cli.lines()[0])
        .startsWith("Empty or shorted, this sender cannot tell: at most 8.85");
    assertThat(cli.out()).contains("look into the tank before you trust it");
  }

  @Test
  void countsGoThroughTheDivider() {
    JsonNode json = Ran.run("level", "1286", "--counts", "--plan", P, "--format", "json").json();
    // 180 ohm * v/(1 - v), v = 1286/4096, less 0.4 ohm of lead
    assertThat(json.get("reading_ohm").asDouble())
        .isCloseTo(180 * 1286.0 / (4096 - 1286) - 0.4, within(1e-9));
    assertThat(json.get("level_low_mm").asDouble()).isEqualTo(116);
    assertThat(Ran.run("level", "4095", "--counts", "--plan", P).exit()).isEqualTo(1);
    assertThat(Ran.run("level", "4096", "--counts", "--plan", P).err())
        .isEqualTo("reading: the ADC has not so many counts; got \"4096\"\n");
    assertThat(Ran.run("level", "12.5", "--counts", "--plan", P).err())
        .isEqualTo(
            "reading: expected counts of the ADC, a whole number such as 1286; got \"12.5\"\n");
  }

  @Test
  void severalReadingsAreRows() {
    Ran cli = Ran.run("level", "10", "83", "open", "--plan", P, "--format", "csv");
    assertThat(cli.lines()).hasSize(5);
    assertThat(cli.lines()[3]).isEqualTo(",open,,,,,,,");
    assertThat(cli.exit()).isEqualTo(1);
    assertThat(Ran.run("level", "10", "83", "open", "--plan", P).lines()[0])
        .isEqualTo("3 readings: 2 plainly one step, 1 a fault of the sender.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "abc|reading: expected a reading in ohm, such as 83, or open; got \"abc\"",
        "-83|reading: a resistance cannot be negative; a meter's zero is off by an ohm or so, not by \"-83\"",
        "' '|reading: expected a reading in ohm, such as 83, or open; got \" \"",
      })
  void refusedReadings(String reading, String message) {
    Ran cli = Ran.run("level", reading, "--plan", P);
    assertThat(cli.err()).isEqualTo(message + "\n");
    assertThat(cli.exit()).isEqualTo(2);
    assertThat(cli.out()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sender.steps=[40 mm = 10 ohm, 60 mm = 27 ohm, 80 mm = 20 ohm]|sender.steps|a sender's readings only rise or only fall from step to step",
        "sender.steps=[40 mm = 10 ohm, 60 mm = 10 ohm, 80 mm = 20 ohm]|sender.steps|a sender's readings only rise or only fall from step to step",
        "sender.steps=[40 mm = 10 ohm, 60 mm = 27 ohm, 380 mm = 40 ohm]|sender.steps|lies above the rim of the tank, 330 mm",
        "sender.steps=[40 mm = 10 ohm]|sender.steps|at least 2 are needed",
        "sender.steps=|sender.steps|needed (levels and the reading that begins there)",
        "sender.open_above=150 ohm|sender.open_above|it must lie above the window of the highest step",
        "sender.edges=[5 L = 10 ohm]|sender.below|needed (reading under the first edge, or",
      })
  void refusedSenders(String set, String key, String why) {
    Ran cli = Ran.run("level", "83", "--plan", P, "--set", set);
    assertThat(cli.exit()).isEqualTo(2);
    assertThat(cli.err()).contains(key).contains(why).doesNotContain("Exception");
  }

  @Test
  void aPlanIsNeeded() {
    assertThat(Ran.run("level", "83").err())
        .startsWith("leat level: a plan is needed: name a file, or set LEAT_PLAN");
    assertThat(Ran.run("level", "--plan", P).err())
        .startsWith("leat level: a reading in ohm is needed, such as leat level 83");
    assertThat(Ran.run("level", "83", "--plan", P, "--column", "ohm").err())
        .isEqualTo(
            "leat level: \"83\" is a reading, and --column takes them from rows; give one of the two\n");
  }

  /**
   * A reading under the first step by itself: a box of 500 mm x 400 mm holds 2 L in 10 mm, so 210
   * ohm is 0 to 20 L and 180 ohm, from 100 to 140 mm, 20 to 28 L.
   */
  @Test
  void aReadingUnderTheFirstStep() {
    String[] plan = {
      "--set",
      "tank={shape: box, bottom: 500 mm x 400 mm, height: 300 mm, full: 250 mm}",
      "--set",
      "sender={steps: [100 mm = 180 ohm, 140 mm = 150 ohm, 180 mm = 120 ohm], below: 210 ohm}",
      "--format",
      "csv"
    };
    String told = Ran.run(with(plan, "level", "210", "180")).out();
    assertThat(told).contains("210,ok,0,100,10,0,20,").contains("180,ok,100,140,24,20,28,");
    plan[3] = "sender={steps: [100 mm = 180 ohm, 140 mm = 150 ohm], below: 183 ohm}";
    assertThat(Ran.run(with(plan, "level", "180")).out())
        .as("within the meter's window: the first step's own reading goes down to the floor")
        .contains("180,ok,0,140,14,0,28,");
  }

  /** What lies over the band is not there; what lies in it is not sure. */
  @Test
  void moreThanTheBandIsNotThere() {
    double most =
        Ran.run("level", "83", "--plan", P, "--format", "json")
            .json()
            .get("volume_high_L")
            .asDouble();
    assertThat(Ran.run("level", "83", "--plan", P, "--at-least", most + 5 + " L").out())
        .contains(" is not there, ");
    assertThat(Ran.run("level", "83", "--plan", P, "--at-least", most - 0.5 + " L").out())
        .contains(" is not sure, it may be only ");
  }

  @Test
  void aTankOfUnknownShapeHasLitresOnly() {
    JsonNode json = Ran.run("level", "83", "--plan", "poured-tub.yaml", "--format", "json").json();
    assertThat(json.get("level_low_mm").isNull()).isTrue();
    assertThat(json.get("volume_low_L").asDouble()).isEqualTo(15.5 - 0.5);
    assertThat(json.get("volume_high_L").asDouble()).isEqualTo(18.5 + 0.5);
    assertThat(json.get("full_pct").asDouble()).isCloseTo(100 * 17 / 45.0, within(1e-9));
    Ran cli =
        Ran.run("level", "83", "--plan", "poured-tub.yaml", "--set", "sender.hysteresis=4 mm");
    assertThat(cli.err()).contains("in a tank of unknown shape write hysteresis_volume");
  }

  @Test
  void aLadderByDrawingWorks() {
    // sender SA of level-senders.csv in tank T1 of level-tanks.csv, decoded in DC03 and DC04
    String[] plan = {
      "--set",
      "tank={shape: tapered-box, bottom: 500 mm x 320 mm, top: 580 mm x 400 mm, height: 320 mm, corner: 40 mm, corner_top: 60 mm, full: 320 mm}",
      "--set",
      "sender={ladder: {reeds: 20, first: 32 mm, pitch: 12 mm, empty: 0 ohm, full: 190 ohm, pull_in: 8 mm, drop_out: 9.5 mm, stops: 26 mm to 268 mm}, tolerance: 1 %, reading: 1.5 ohm}",
      "--format",
      "json"
    };
    JsonNode unknown = Ran.run(with(plan, "level", "50.4")).json();
    assertThat(unknown.get("level_low_mm").asDouble()).isCloseTo(88, within(1e-3));
    assertThat(unknown.get("volume_low_L").asDouble()).isCloseTo(14.749713, within(1e-5));
    JsonNode rising = Ran.run(with(plan, "level", "50.4", "--motion", "rising")).json();
    assertThat(rising.get("level_low_mm").asDouble()).isCloseTo(89.5, within(1e-3));
    assertThat(rising.get("volume_high_L").asDouble()).isCloseTo(17.155083, within(1e-5));
  }

  /**
   * Corners of the tolerances by Ohm's law and the ADC's first transition at half a count: ladder 2
   * %, fixed resistor 1 %, converter 3 counts off, all one way and all the other (sheet level.md
   * section 5). Each such count is a healthy sender, and its band holds the step.
   */
  @ParameterizedTest
  @CsvSource({"low", "high"})
  void aCountInsideAStepsWorstCaseIsThatStep(String side) {
    double[] ohms = {10, 27, 43, 62, 82, 100, 118, 138, 156, 175, 190};
    double[] begins = {0, 56, 76, 96, 116, 136, 156, 176, 196, 216, 236};
    for (int i = 0; i < ohms.length; i++) {
      for (int way = -1; way <= 1; way += 2) {
        double sender = ohms[i] * (1 + way * 0.02) + 0.4;
        double fixed = 180 * (1 - way * 0.01);
        double share = side.equals("low") ? sender / (sender + fixed) : fixed / (sender + fixed);
        long counts = Math.round(4096 * share) + (side.equals("low") ? way : -way) * 3;
        JsonNode json =
            Ran.run(
                    "level",
                    String.valueOf(counts),
                    "--counts",
                    "--plan",
                    P,
                    "--set",
                    "sender.divider.sender_side=" + side,
                    "--format",
                    "json")
                .json();
        assertThat(json.get("status").asText()).as(side + counts).isIn("ok", "ambiguous");
        assertThat(json.get("level_low_mm").asDouble()).isLessThanOrEqualTo(begins[i] + 1e-9);
        assertThat(json.get("level_high_mm").asDouble()).isGreaterThan(begins[i]);
      }
    }
  }

  /** The step of 82 ohm begins at 116 mm falling: 17.6 L (row of level-plan-decode.csv by T2). */
  @Test
  void atLeastComparesTheLowEndOfTheBand() {
    Ran yes = Ran.run("level", "83", "--plan", P, "--at-least", "17 L");
    assertThat(yes.exit()).isZero();
    assertThat(yes.lines()[0]).startsWith("Yes: at least 17.0 L. Between 17.6 and 21.5 L");
    // the middle, 19.5 L, would pass
    Ran no = Ran.run("level", "83", "--plan", P, "--at-least", "18 L");
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.lines()[0]).startsWith("No: 18.0 L is not sure, it may be only 17.6 L. Between");
    assertThat(Ran.run("level", "83", "--plan", P, "--at-least", "17.6 L").lines()[0])
        .startsWith("No: 17.6 L is not sure, it may be a little less.");
    Ran rows =
        Ran.withInput(
            "ohm\n83\n62\n", "level", "--plan", P, "--column", "ohm", "--at-least", "17 L");
    assertThat(rows.exit()).isEqualTo(1);
    assertThat(rows.lines()).hasSize(4);
  }

  @Test
  void belowLowIsAKey() {
    // the refill mark lies at 80 mm, where the step of 43 ohm begins; falling it lasts 4 mm longer
    assertThat(below("83")).isEqualTo("false");
    assertThat(below("43")).isEqualTo("true");
    assertThat(below("43", "--motion", "rising")).isEqualTo("false");
    assertThat(below("open")).isEqualTo("null");
    assertThat(below("83", "--set", "tank.low=")).isEqualTo("null");
  }

  private static String below(String reading, String... more) {
    String[] line = {"level", reading, "--plan", P, "--format", "json"};
    return Ran.run(Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new))
        .json()
        .get("below_low")
        .asText();
  }

  /**
   * Where the float's stops let it leave the reeds, the end steps end there: the magnet of reed 20
   * at 260 mm holds to 269.5 mm (sheet level.md section 2), not to the rim.
   */
  @Test
  void endStepsEndWhereTheirReedLetsGo() {
    String ladder =
        "sender={ladder: {reeds: 20, first: 32 mm, pitch: 12 mm, empty: 0 ohm, full: 190 ohm, pull_in: 8 mm, drop_out: 9.5 mm, stops: 10 mm to 300 mm}}";
    Ran top = Ran.run("level", "190", "--plan", P, "--set", ladder);
    assertThat(top.lines()[0]).startsWith("Between 41.5 and 44.0 L").doesNotContain("rim");
    assertThat(top.out()).contains("256 to 270 mm");
    assertThat(Ran.run("level", "0", "--plan", P, "--set", ladder).lines()[0])
        .startsWith("Shorted, or between 3.26 and 6.07 L")
        .doesNotContain("perhaps none");
  }

  private static String[] with(String[] plan, String... line) {
    return Stream.concat(Stream.of(line), Stream.of(plan)).toArray(String[]::new);
  }

  @ParameterizedTest
  @CsvSource({"level", "level table", "level ladder", "level divider", "level fit"})
  void everyExampleRuns(String name) {
    String[] words = name.split(" ");
    Command command = new Commands().of(String.join(" ", words));
    assertThat(command.examples()).isNotEmpty();
    for (String example : command.examples()) {
      Ran cli = Ran.run(split(example));
      assertThat(cli.exit()).as(example + cli.err()).isIn(0, 1);
    }
  }

  /** Words of a line, quotes kept together. */
  static String[] split(String line) {
    return java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)")
        .matcher(line)
        .results()
        .map(m -> m.group(1) != null ? m.group(1) : m.group(2))
        .toArray(String[]::new);
  }
}
