package leat.command.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import leat.cli.Cli;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code leat plan header}: compiled, its answers are those of level and duty. */
class PlanHeaderTest {
  private static final String COUNTS =
      """
      int main(void) {
        uint32_t c;
        for (c = 0; c <= TOWER_ADC_TOP + 2; c++) {
          const tower_reading *r = tower_read(c);
          printf("%d %d %d %d %d %lu %lu %lu\\n", r->status, r->fault, tower_may_run(c),
                 r->step_low, r->step_high, (unsigned long)r->low_mL, (unsigned long)r->high_mL,
                 (unsigned long)tower_volume_mL(c));
        }
        return 0;
      }
      """;

  private static final List<String> STATUS =
      List.of(
          "ok",
          "between-steps",
          "ambiguous",
          "ok-or-short",
          "open",
          "short",
          "under-range",
          "over-range",
          "no-reading");

  @TempDir Path folder;

  private static String header(List<String> sets, String plan) {
    List<String> line = new ArrayList<>(List.of("plan", "header", plan));
    line.addAll(sets);
    Cli ran = Cli.run(line.toArray(new String[0]));
    assertThat(ran.exit).as(ran.err).isZero();
    return ran.out;
  }

  private static List<CSVRecord> levels(List<String> sets, String plan, int top) throws Exception {
    StringBuilder rows = new StringBuilder("counts\n");
    for (int c = 0; c <= top; c++) {
      rows.append(c).append('\n');
    }
    List<String> line =
        new ArrayList<>(List.of("level", "--counts", "--column", "counts", "-p", plan));
    line.addAll(sets);
    String csv = Cli.piped(rows.toString(), line.toArray(new String[0])).out;
    try (CSVParser parser =
        CSVParser.builder()
            .setReader(new StringReader(csv))
            .setFormat(CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())
            .get()) {
      return parser.getRecords();
    }
  }

  /** Every count of the ADC, either side of the divider, a clipped reference, 10 bits, no shape. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "sender-tub.yaml",
        "sender-tub.yaml|sender.divider.sender_side=high",
        "sender-tub.yaml|sender.divider.reference=1.1 V",
        "sender-tub.yaml|sender.divider.reference=1.1 V|sender.divider.sender_side=high",
        "sender-tub.yaml|sender.divider.bits=10|tank.low=200 mm",
        "poured-tub.yaml|sender.divider={supply: 5 V, resistor: 220 ohm, bits: 10}",
      })
  void everyCountSaysWhatLevelSays(String asked) throws Exception {
    assumeTrue(CProgram.compiler() != null);
    String[] words = asked.split("\\|");
    List<String> sets = new ArrayList<>();
    for (int i = 1; i < words.length; i++) {
      sets.addAll(List.of("--set", words[i]));
    }
    List<String> said = CProgram.run(folder, header(sets, words[0]), COUNTS);
    int top = said.size() - 3;
    List<CSVRecord> levels = levels(sets, words[0], top);
    assertThat(levels).hasSize(top + 1);
    for (int c = 0; c <= top; c++) {
      agree(said.get(c).split(" "), levels.get(c));
    }
    assertThat(said.get(top + 1)).isEqualTo("8 0 0 -1 -1 0 0 0");
    assertThat(said.get(top + 2)).isEqualTo("8 0 0 -1 -1 0 0 0");
  }

  private static void agree(String[] said, CSVRecord level) {
    String status = level.get("status");
    assertThat(STATUS.get(Integer.parseInt(said[0]))).as(level.toString()).isEqualTo(status);
    boolean fault = List.of("open", "short", "under-range", "over-range").contains(status);
    assertThat(said[1]).as(level.toString()).isEqualTo(fault ? "1" : "0");
    assertThat(said[2]).isEqualTo(level.get("below_low").equals("false") ? "1" : "0");
    if (level.get("volume_L").isEmpty()) {
      assertThat(said[5] + said[6] + said[7]).isEqualTo("000");
      return;
    }
    // whole millilitres, rounded outwards so that the band still holds
    double low = 1000 * Double.parseDouble(level.get("volume_low_L"));
    double high = 1000 * Double.parseDouble(level.get("volume_high_L"));
    assertThat(Double.parseDouble(said[5])).isBetween(low - 1.000001, low + 1e-6);
    assertThat(Double.parseDouble(said[6])).isBetween(high - 1e-6, high + 1.000001);
    double middle = 1000 * Double.parseDouble(level.get("volume_L"));
    assertThat(Double.parseDouble(said[7])).isCloseTo(middle, within(1.5));
    assertThat(Integer.parseInt(said[3])).isBetween(0, Integer.parseInt(said[4]));
  }

  @Test
  void theCutoffIsThatOfTheTable() {
    Cli cutoff = Cli.run("level", "table", "--cutoff", "-p", "sender-tub.yaml", "-f", "json");
    assertThat(header(List.of(), "sender-tub.yaml"))
        .contains(
            "#define TOWER_CUTOFF_COUNTS "
                + Math.round(cutoff.number("cutoff_counts"))
                + "UL /* the pump may run at this count or more");
  }

  private static final String MINUTES =
      """
      int main(void) {
        unsigned month, weekday;
        uint32_t second;
        for (month = 1; month <= 12; month++)
          for (weekday = 1; weekday <= 7; weekday++)
            for (second = 0; second < 86400; second += 60) {
              const tower_timing *t = tower_timing_at(second, month, weekday);
              printf("%lu %lu %lu\\n", (unsigned long)t->run_ms, (unsigned long)t->rest_ms,
                     (unsigned long)tower_longest_rest_s(second));
            }
        return 0;
      }
      """;

  private static final String TIMINGS =
      "timing=[{run: 90 s, rest: 12 min}, {run: 2.5 min, rest: 8 min, months: [6, 7, 8]},"
          + " {run: 60 s, rest: 25 min, from: \"22:00\", to: \"06:00\"},"
          + " {run: 45.5 s, rest: 20 min, days: [sat, sun], from: \"13:30\", to: \"24:00\"}]";

  /**
   * Each local minute of a year in a zone with summer time (java.time's rules): the share of
   * running in force, summed, is the pump's hours that `duty` gives for the same year, and each
   * minute's run and rest are those that the plan's entries say, read by hand here.
   */
  @Test
  void eachLocalMinuteOfAYearIsTimedAsDutyDoes() throws Exception {
    assumeTrue(CProgram.compiler() != null);
    List<String> sets = List.of("--set", TIMINGS, "--set", "site.time_zone=Europe/Vienna");
    List<String> said = CProgram.run(folder, header(sets, "first-tower.yaml"), MINUTES);
    assertThat(said).hasSize(12 * 7 * 1440);
    ZonedDateTime at = ZonedDateTime.of(2027, 1, 1, 0, 0, 0, 0, ZoneId.of("Europe/Vienna"));
    double running = 0;
    while (at.getYear() == 2027) {
      int minute = at.getHour() * 60 + at.getMinute();
      int month = at.getMonthValue();
      int weekday = at.getDayOfWeek().getValue();
      String[] line = said.get(((month - 1) * 7 + weekday - 1) * 1440 + minute).split(" ");
      double run = Double.parseDouble(line[0]);
      double rest = Double.parseDouble(line[1]);
      assertThat(line[0] + " " + line[1]).isEqualTo(byHand(minute, month, weekday));
      assertThat(line[2]).isEqualTo(minute >= 22 * 60 || minute < 6 * 60 ? "3600" : "1800");
      running += 60 * run / (run + rest);
      at = at.plusMinutes(1);
    }
    List<String> duty =
        new ArrayList<>(
            List.of(
                "duty", "-p", "first-tower.yaml", "--from", "2027-01-01", "--to", "2027-12-31"));
    duty.addAll(List.of("-f", "json"));
    duty.addAll(sets);
    Cli ran = Cli.run(duty.toArray(new String[0]));
    assertThat(running / 3600).isCloseTo(ran.number("run_total_h"), within(1e-6));
  }

  private static String byHand(int minute, int month, int weekday) {
    if (weekday >= 6 && minute >= 13 * 60 + 30) {
      return "45500 1200000";
    }
    if (minute >= 22 * 60 || minute < 6 * 60) {
      return "60000 1500000";
    }
    return month >= 6 && month <= 8 ? "150000 480000" : "90000 720000";
  }

  /** Thresholds and waits are those of `duty cap`; slopes as the plan has them. */
  @Test
  void capAndMeters() throws Exception {
    List<String> sets =
        List.of(
            "--set",
            "cap_sensor={wet: 1350, dry: 2750}",
            "--set",
            "meters={ec: {slope: 1.037}, ph: {offset: -0.1}}");
    String header = header(sets, "first-tower.yaml");
    Cli cap =
        Cli.run(
            "duty",
            "cap",
            "-p",
            "first-tower.yaml",
            "--wet",
            "1350",
            "--dry",
            "2750",
            "-f",
            "json");
    assertThat(header)
        .contains("#define TOWER_CAP_WET_COUNTS " + Math.round(cap.number("wet_counts")) + "UL")
        .contains("#define TOWER_CAP_DRY_COUNTS " + Math.round(cap.number("dry_counts")) + "UL")
        .contains(
            "{"
                + (long) Math.ceil(1000 * cap.number("wet_after_low_s"))
                + "UL, "
                + Math.round(cap.number("judge_after_s"))
                + "}, /* balcony */");
    assumeTrue(CProgram.compiler() != null);
    String program =
        """
        int main(void) {
          printf("%d%d%d%d %.3f %.2f\\n", tower_cap_is_wet(2050), tower_cap_is_wet(2051),
                 tower_cap_is_dry(2470), tower_cap_is_dry(2469), tower_true_ec(2.0f),
                 tower_true_ph(6.0f));
          return 0;
        }
        """;
    assertThat(CProgram.run(folder, header, program)).containsExactly("1010 2.074 5.90");
  }

  /** A name can neither end a comment nor begin a line of code. */
  @Test
  void hostileNamesStayNames() throws Exception {
    Path plan = folder.resolve("hostile.yaml");
    Files.writeString(
        plan,
        Files.readString(Path.of("examples/first-tower.yaml"))
            .replace("name: first tower", "name: \"x */ #error out /* **// ??/ \\n#error y\"")
            .replace("- name: balcony", "- name: \"*/ int main(void) {return 3;} /* \u202e\\\"\""));
    String header = header(List.of(), plan.toString());
    assertThat(header).contains("x * / #error out / * ** // ??/").doesNotContain("\u202e");
    assumeTrue(CProgram.compiler() != null);
    String program = "int main(void) {\n  printf(\"%d\\n\", TOWER_TOWERS);\n  return 0;\n}\n";
    assertThat(CProgram.run(folder, header, program)).containsExactly("1");
  }

  @Test
  void whatThePlanLacksIsNamed() throws Exception {
    Cli ran = Cli.run("plan", "header", "sender-tub.yaml");
    assertThat(ran.out)
        .contains("Left out: timing (needs timing).")
        .contains("Left out: cap sensor (needs cap_sensor.wet).")
        .doesNotContain("TOWER_HAS_TIMING");
    assertThat(ran.err)
        .startsWith("A header for the controller of sender tub: full mark,")
        .contains("Mind: left out: timing; it needs timing in the plan.");
    assertThat(Cli.run("plan", "header", "sender-tub.yaml", "-q").err).isEmpty();
    assertThat(Cli.run("plan", "header", "sender-tub.yaml", "-f", "csv").out)
        .startsWith("part,given,needs\nfull mark,true,\n")
        .contains("timing,false,timing\n");
    byte[] file = Files.readAllBytes(Path.of("examples/sender-tub.yaml"));
    String sum = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    assertThat(ran.out).contains("#define TOWER_PLAN_SHA256 \"" + sum + "\"");
  }

  /** An empty plan makes a header, too. */
  @Test
  void everyExampleCompiles() throws Exception {
    assumeTrue(CProgram.compiler() != null);
    try (var plans = Files.list(Path.of("examples"))) {
      for (Path plan :
          (Iterable<Path>) plans.filter(p -> p.toString().endsWith(".yaml"))::iterator) {
        String header = header(List.of(), plan.getFileName().toString());
        String program = "int main(void) {\n  return puts(TOWER_PLAN_SHA256) < 0;\n}\n";
        assertThat(CProgram.run(folder, header, program).get(0)).as(plan.toString()).hasSize(64);
      }
    }
  }
}
