package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leat.cli.Cli;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The season from a log on. Second route: what {@code leat log} says, typed into the plan by hand,
 * with the thirst divided here from the days of the log and of the season.
 */
class SeasonLogTest {
  private static final int[] TMIN = {-2, -1, 3, 7, 12, 15, 17, 17, 12, 7, 3, -1};
  private static final int[] TMAX = {3, 6, 11, 17, 22, 25, 28, 27, 21, 15, 8, 4};
  private static final String SEASON =
      """
      water: {ec: 0.3 mS/cm, price: 3 EUR/m3}
      feed:
        parts: [{name: leaf, rate: 5 mL/L, price: 12 EUR/L}]
        rate_ec: 1.9 mS/cm
      crops:
        - {name: lettuce, pots: 24, sow: 2027-04-01, nursery: 21 d, growing: 100 d, germination: 90 %, water: 0.2 L/d, seed_price: 0.03 EUR}
      season:
        from: 2027-04-20
        to: 2027-07-20
        change: {every: 21 d}
      prices: {pump: 24 EUR}
      """;

  @TempDir Path folder;
  private String plan;

  @BeforeEach
  void plan() throws IOException {
    StringBuilder months = new StringBuilder();
    for (int m = 0; m < 12; m++) {
      months.append("    - {tmin: ").append(TMIN[m]).append(" C, tmax: ").append(TMAX[m]);
      months.append(" C, rain: 50 mm, rain_days: 8}\n");
    }
    String tub = Files.readString(Path.of("examples/logged-tub.yaml"));
    plan =
        write(
            "summer.yaml",
            tub.replace(
                        "site: {time_zone: Europe/Vienna}",
                        "site:\n  time_zone: Europe/Vienna\n  latitude: 48.2 deg\n  altitude: 170 m\n"
                            + "  months:\n"
                            + months)
                    .replace("drinks: 4.5 L/d", "#")
                + SEASON);
  }

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file.toString();
  }

  private Cli season(String... more) {
    return run("season", more);
  }

  private Cli run(String command, String... more) {
    List<String> args = new ArrayList<>(List.of(command));
    args.addAll(List.of(more));
    args.addAll(List.of("--plan", plan));
    return Cli.run(args.toArray(new String[0]));
  }

  private static Map<String, String[]> byDate(String csv) {
    Map<String, String[]> rows = new HashMap<>();
    csv.lines().skip(1).forEach(l -> rows.put(l.substring(0, 10), l.split(",")));
    return rows;
  }

  private Cli log() {
    return run("log", "week-log.csv", "--format", "json");
  }

  /** Litres of the log over litres of the season on its sure days. */
  private double thirst() {
    Map<String, String[]> season = byDate(season("--format", "csv").out);
    double measured = 0;
    double modelled = 0;
    for (var day : byDate(run("log", "week-log.csv", "--days", "--format", "csv").out).entrySet()) {
      if (day.getValue()[9].equals("true")) {
        measured += Double.parseDouble(day.getValue()[1]);
        String[] row = season.get(day.getKey());
        modelled += Double.parseDouble(row[4]) + Double.parseDouble(row[5]);
      }
    }
    return measured / modelled;
  }

  @Test
  void isTheSeasonThatWouldBeTyped() {
    Cli by = season("--log", "week-log.csv", "--format", "csv");
    assertThat(by.exit).as(by.err).isLessThan(2);
    Cli log = log();
    // Poured in the log, by its events; its first day stands for the change that it does not hold.
    double added = 0;
    for (String event : run("log", "week-log.csv", "--format", "csv").out.split("\n")) {
      added += event.startsWith("refill") ? Double.parseDouble(event.split(",")[3]) : 0;
    }
    String start =
        "season.start={volume: "
            + log.number("volume_L")
            + " L, ec: "
            + log.number("ec_mS_cm")
            + " mS/cm, changed: 2027-06-05, filled: 2027-06-12, added: "
            + added
            + " L}";
    Cli typed =
        season(
            "--format",
            "csv",
            "--set",
            "season.from=2027-06-15",
            "--set",
            start,
            "--set",
            "thirst=" + 100 * thirst() + " %");
    Map<String, String[]> one = byDate(by.out);
    Map<String, String[]> other = byDate(typed.out);
    assertThat(one.keySet()).isEqualTo(other.keySet()).contains("2027-06-15").hasSize(36);
    one.forEach(
        (date, row) -> {
          for (int c = 1; c < 11; c++) {
            assertThat(Double.parseDouble(row[c]))
                .as(date)
                .isCloseTo(Double.parseDouble(other.get(date)[c]), within(1e-6));
          }
        });
  }

  @Test
  void tellsWhatItGoesOnFrom() {
    Cli by = season("--log", "week-log.csv", "--format", "json");
    assertThat(by.number("volume_start_L")).isCloseTo(log().number("volume_L"), within(1e-9));
    assertThat(by.number("ec_start_mS_cm")).isEqualTo(log().number("ec_mS_cm"));
    assertThat(by.number("thirst_pct")).isCloseTo(100 * thirst(), within(1e-6));
    assertThat(by.number("thirst_days")).isEqualTo(8);
    assertThat(by.number("thirst_factor_low")).isCloseTo(0.86 * thirst(), within(1e-6));
    assertThat(by.number("first_fill_water_L")).isZero();
    assertThat(by.number("payback_seasons")).isNull();
    assertThat(season("--log", "week-log.csv").out)
        .contains("leat plan set " + plan + " \"thirst=");
  }

  /** The change comes 21 days after the log's first day, 26 June; with the change typed, later. */
  @Test
  void changesAreCountedFromTheLastOne() {
    Cli by = season("--log", "week-log.csv", "--format", "csv");
    assertThat(by.out).contains("2027-06-26,").containsPattern("2027-06-26,.*change\n");
  }

  @Test
  void fromNoonOnTheNextDayIsTheFirst() throws IOException {
    StringBuilder noon = new StringBuilder();
    for (String line : Files.readAllLines(Path.of("examples/week-log.csv"))) {
      if (line.startsWith("time") || line.compareTo("2027-06-14T12:10") < 0) {
        noon.append(line).append('\n');
      }
    }
    String file = write("noon.csv", noon.toString());
    assertThat(season("--log", file, "--format", "csv").out.lines().toList().get(1))
        .startsWith("2027-06-15");
    String before = noon.substring(0, noon.indexOf("2027-06-14T12:00"));
    assertThat(
            season("--log", write("b.csv", before), "--format", "csv").out.lines().toList().get(1))
        .startsWith("2027-06-14");
  }

  @Test
  void theLogHoldsItsThirstAgainstTheForecastOfTheSameDays() {
    assertThat(log().word("thirst_by")).isEqualTo("season");
    assertThat(log().number("thirst_pct")).isCloseTo(100 * thirst(), within(1e-6));
    assertThat(run("log", "week-log.csv").out).contains("season says").contains("thirst=");
    long pct = Math.round(100 * thirst());
    assertThat(run("log", "week-log.csv", "--set", "thirst=" + pct + " %").out)
        .doesNotContain("thirst=");
  }

  /** A tenth of the crop's water in the plan: the log's thirst is ten times as much, beyond 3. */
  @Test
  void aThirstFarFromTheForecastIsHeld() throws IOException {
    assertThat(thirst()).as("of the season as it is").isBetween(0.4, 2.9);
    plan = write("dry.yaml", Files.readString(Path.of(plan)).replace("0.2 L/d", "0.02 L/d"));
    assertThat(thirst()).isGreaterThan(3);
    assertThat(log().number("thirst_pct")).isEqualTo(300);
    assertThat(run("log", "week-log.csv").out)
        .contains("on the same days; the log is far from it, held at 300 %")
        .contains("log and forecast are far apart: look at the crops' dates and pots")
        .doesNotContain("thirst=");
    assertThat(season("--log", "week-log.csv").out)
        .contains("log and forecast are far apart: the thirst is held at 300 %")
        .doesNotContain("thirst=");
  }

  @Test
  void aSeasonThatCannotBeWorkedOutKeepsNoLogFromAnswering() {
    Cli log = run("log", "week-log.csv", "--set", "site.weather=none.csv", "--set", "site.months=");
    assertThat(log.exit).isZero();
    assertThat(log.out)
        .contains("the season of the plan cannot be worked out")
        .contains("no such weather file");
  }

  /** Two thousand pots would drink far more than the log shows: held at the low end, 30 %. */
  @Test
  void aThirstHeldIsToldByBoth() {
    String many = "crops[0].pots=2000";
    assertThat(season("--log", "week-log.csv", "--set", many).out)
        .contains(
            "Mind: log and forecast are far apart: the thirst is held at 30.0 %. Look at the crops' dates and pots, and at the sender.\n");
    assertThat(run("log", "week-log.csv", "--set", many).out)
        .containsPattern(
            "season says +[0-9]+ L/d +on the same days; the log is far from it, held at 30.0 %\n");
  }

  @Test
  void aShortLogWithoutEcLeavesBothToThePlan() throws IOException {
    StringBuilder four = new StringBuilder();
    for (String line : Files.readAllLines(Path.of("examples/week-log.csv"))) {
      if (line.startsWith("time") || line.compareTo("2027-06-09") < 0) {
        String[] cells = line.split(",", -1);
        four.append(cells[0]).append(',').append(cells[1]).append('\n');
      }
    }
    assertThat(season("--log", write("four.csv", four.toString())).out)
        .contains("Mind: the log has no EC: the season goes on at the plan's 1.50 mS/cm.\n")
        .contains(
            "Mind: the log has fewer than 7 whole, sure days without rain in the season: too few to measure the thirst, which goes on as the plan says.\n");
  }

  @Test
  void refusals() {
    Cli early = season("--log", "week-log.csv", "--set", "season.from=2027-06-20");
    assertThat(early.exit).isEqualTo(2);
    assertThat(early.err).contains("there is no day of the season to go on with");
    Cli silent = season("--log", "week-log.csv", "--now", "2027-06-20T08:00:00+02:00");
    assertThat(silent.exit).isEqualTo(2);
    assertThat(silent.err).contains("log-silent");
  }
}
