package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the season's commands say of the examples: sums, ranges, money, weeks, calendars, light. */
class SeasonAnswersTest {
  @TempDir Path folder;

  private static List<String[]> rows(Cli csv) {
    assertThat(csv.exit).as(csv.err).isZero();
    List<String[]> rows = new ArrayList<>();
    for (String line : csv.out.split("\n")) {
      rows.add(line.split(",", -1));
    }
    rows.remove(0);
    return rows;
  }

  private static double sum(List<String[]> rows, int column) {
    return rows.stream().mapToDouble(r -> Double.parseDouble(r[column])).sum();
  }

  /** The contract: rows add up to the keys; the season's cost is rows, first fill and seed. */
  @Test
  void rowsAddUpToTheSums() {
    List<String[]> rows = rows(Cli.run("season", "balcony.yaml", "--format", "csv"));
    Cli json = Cli.run("season", "balcony.yaml", "--format", "json");
    String[] keys = {
      "water_use_L",
      "short_L",
      "rain_L",
      "overflow_L",
      "topup_water_L",
      "topup_concentrate_mL",
      "drained_L"
    };
    for (int c = 0; c < keys.length; c++) {
      assertThat(json.number(keys[c])).as(keys[c]).isCloseTo(sum(rows, c + 4), within(1e-7));
    }
    assertThat(json.number("kwh")).isCloseTo(sum(rows, 12), within(1e-9));
    double parts =
        json.number("cost_water")
            + json.number("cost_feed")
            + json.number("cost_acid")
            + json.number("cost_energy");
    assertThat(parts).isCloseTo(sum(rows, 13), within(1e-8));
    assertThat(json.number("cost_season"))
        .isCloseTo(parts + json.number("cost_first_fill") + json.number("cost_seed"), within(1e-8));
    assertThat(json.number("payback_seasons"))
        .isCloseTo(109 / (json.number("harvest_value") - json.number("cost_season")), within(1e-8));
  }

  /**
   * What the towers hold is taken from the tank while they run: 1.1 L more than the 5.10 L that lie
   * under the intake at 35 mm (leat tank). Filled by the sender alone is filled to its top step.
   */
  @Test
  void towersHoldWaterAndTheSenderIsBlindOverItsTopStep() {
    Cli season = Cli.run("season", "hard-water.yaml", "--format", "json");
    assertThat(season.exit).as(season.err).isZero();
    assertThat(season.number("hold_up_L")).isEqualTo(1.1);
    double intake =
        Cli.run("tank", "--plan", "hard-water.yaml", "--level", "35 mm", "--format", "json")
            .number("volume_L");
    assertThat(season.number("air_L")).isCloseTo(intake + 1.1, within(1e-9));
    double top =
        Cli.run("tank", "--plan", "hard-water.yaml", "--level", "240 mm", "--format", "json")
            .number("volume_L");
    assertThat(season.number("sender_sees_L")).isCloseTo(top, within(1e-9));
    assertThat(season.out).contains("blind-top").doesNotContain("filled-by-sender");
  }

  /** Less fits between low mark and drawing air: topped up at low, it never is. */
  @Test
  void dryWhileTheTowersRun() {
    String[] call = {
      "season",
      "hard-water.yaml",
      "--set",
      "tank.low=60 mm",
      "--set",
      "season.refill=at low",
      "--set",
      "season.change=",
      "--set",
      "hold_up=4 L"
    };
    Cli dry = Cli.run(call);
    assertThat(dry.exit).isEqualTo(1);
    assertThat(dry.out).contains("the running towers hold 4.00 L");
    String[] over = java.util.Arrays.copyOf(call, call.length + 2);
    over[call.length] = "--set";
    over[call.length + 1] = "tank.low=36 mm";
    assertThat(Cli.run(over).out)
        .as("the same litres at each end are no range")
        .contains("it drinks 35.0 L, wants");
    call[9] = "hold_up=1 L";
    Cli reserve = Cli.run(call);
    assertThat(reserve.out).contains("until the running pump draws air");
    String[] none = {
      "season",
      "hard-water.yaml",
      "--set",
      "tank.low=60 mm",
      "--set",
      "season.refill=at low",
      "--set",
      "hold_up="
    };
    assertThat(Cli.run(none).out).doesNotContain("running").doesNotContain("in the towers");
  }

  /** Nothing can be drunk is not nothing drinks. */
  @Test
  void noWaterIsToldAsThirst() {
    Cli dry = Cli.run("season", "hard-water.yaml", "--set", "hold_up=80 L");
    assertThat(dry.exit).isEqualTo(1);
    assertThat(dry.out).startsWith("From 20 Apr to 1 Oct the plants find no water: 660 L short.");
  }

  /** The words follow from two runs: the same answer as with tank.full at the top step. */
  @Test
  void filledByTheSenderAlone() {
    String[] call = {
      "season",
      "hard-water.yaml",
      "--set",
      "season.refill=at low",
      "--set",
      "season.change=",
      "--format",
      "json"
    };
    Cli full = Cli.run(call);
    String[] less = java.util.Arrays.copyOf(call, call.length + 2);
    less[call.length] = "--set";
    less[call.length + 1] = "tank.full=240 mm";
    Cli seen = Cli.run(less);
    int now = services(full);
    int then = services(seen);
    assertThat(then).isGreaterThan(now);
    assertThat(full.out)
        .contains("filled-by-sender")
        .contains("on " + then + " evenings, not " + now);
    assertThat(seen.out).doesNotContain("blind-top");
  }

  private static int services(Cli json) {
    return (int)
        (json.number("topups")
            + json.number("doses")
            + json.number("dilutions")
            + json.number("changes"));
  }

  /** What lasts costs what {@code leat parts} says, cent by cent: whole spools, prints, bought. */
  @Test
  void printedPartsArePaidBackToo() {
    String[] more = {
      "--set",
      "prices.filament=22 EUR/kg",
      "--set",
      "towers[0].base.height=350 mm",
      "--format",
      "json"
    };
    Cli parts = with(more, "parts", "balcony.yaml");
    Cli season = with(more, "season", "balcony.yaml");
    assertThat(parts.number("cost_filament")).isGreaterThan(parts.number("cost_filament_by_mass"));
    assertThat(season.number("cost_bought")).isCloseTo(parts.number("cost_total"), within(1e-9));
    double gain = season.number("harvest_value") - season.number("cost_season");
    assertThat(season.number("payback_seasons"))
        .isCloseTo(parts.number("cost_total") / gain, within(1e-8));
    double kept = parts.number("cost_filament") - parts.number("cost_filament_by_mass");
    double most = season.number("harvest_value") - season.number("cost_season_low");
    assertThat(season.number("payback_seasons_low"))
        .isCloseTo((parts.number("cost_total") - kept) / most, within(1e-8));
    double least = season.number("harvest_value") - season.number("cost_season_high");
    assertThat(season.number("payback_seasons_high"))
        .isCloseTo(parts.number("cost_total") / least, within(1e-8));
  }

  private static Cli with(String[] more, String... line) {
    Cli run = Cli.run(Stream.concat(Stream.of(line), Stream.of(more)).toArray(String[]::new));
    assertThat(run.exit).as(run.err).isZero();
    return run;
  }

  /** The range is that of reruns: a plan with the thirst at its ends, year by year. */
  @Test
  void rangeIsOfRerunsNotScaled() throws IOException {
    Cli json = Cli.run("season", "balcony.yaml", "--format", "json");
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    List<String> lines = Files.readAllLines(Path.of("examples/weather-seattle.csv"));
    String plan = Files.readString(Path.of("examples/balcony.yaml"));
    for (String year : List.of("2012", "2013", "2014", "2015")) {
      StringBuilder own = new StringBuilder(lines.get(0)).append('\n');
      lines.stream().filter(l -> l.startsWith(year)).forEach(l -> own.append(l).append('\n'));
      Files.writeString(folder.resolve("weather-seattle.csv"), own);
      Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
      for (String factor : List.of("66 %", "151 %")) {
        Cli one =
            Cli.run("season", file.toString(), "--set", "thirst=" + factor, "--format", "json");
        least = Math.min(least, one.number("topup_water_L"));
        most = Math.max(most, one.number("topup_water_L"));
      }
    }
    assertThat(json.number("topup_water_low_L")).isLessThanOrEqualTo(least + 1e-6);
    assertThat(json.number("topup_water_high_L")).isGreaterThanOrEqualTo(most - 1e-6);
    assertThat(json.number("water_use_low_L") / json.number("water_use_L"))
        .isNotCloseTo(0.66, within(1e-3));
  }

  /** Litres for a kg of lettuce: 20 +/- 3.8 outdoors (Barbosa et al. 2015), 19 and 36 indoors. */
  @Test
  void litresForAKilogramOfLettuce() {
    Cli json = Cli.run("season", "balcony.yaml", "--set", "site.exposure=open", "--format", "json");
    assertThat(json.number("water_use_L") / json.number("harvest_kg")).isBetween(14.0, 36.0);
  }

  /**
   * Litres of a tomato plant over its season under cover: 41.7 in deep water to 103 in soil
   * (PMC7885021 table 2, quoted in sheet season.md); the example's two plants, under glass.
   */
  @Test
  void litresForATomatoPlant() {
    String crop =
        "crops=[{name: tomato, tower: sun, pots: 2, sow: 2027-03-20, nursery: 50 d, growing: 120 d, late: 30 d, end_share: 70 %}]";
    Cli json =
        Cli.run(
            "season",
            "roof-months.yaml",
            "--set",
            crop,
            "--set",
            "site.exposure=glass",
            "--format",
            "json");
    assertThat(json.number("water_use_L") / 2).isBetween(41.7, 103.0);
  }

  /** Hours of the pump, second by second over the clock-change days, in the zone's own clock. */
  @Test
  void hoursOfThePumpOverTheClocksChange() throws IOException {
    String plan =
        Files.readString(Path.of("examples/balcony.yaml"))
            .replace(
                "weather-seattle.csv ",
                Path.of("examples/weather-seattle.csv").toAbsolutePath() + " ")
            .replace("America/Los_Angeles", "Europe/Vienna")
            .replace("from: 2027-04-12", "from: 2027-03-27")
            .replace("to: 2027-10-10", "to: 2027-03-29");
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    List<String[]> rows = rows(Cli.run("season", file.toString(), "--format", "csv"));
    ZoneId zone = ZoneId.of("Europe/Vienna");
    for (String[] row : rows) {
      ZonedDateTime at = LocalDate.parse(row[0]).atStartOfDay(zone);
      ZonedDateTime end = LocalDate.parse(row[0]).plusDays(1).atStartOfDay(zone);
      double joule = 0;
      for (; at.isBefore(end); at = at.plusSeconds(1)) {
        boolean night = at.getHour() >= 22 || at.getHour() < 6;
        joule += 18 * (night ? 60.0 / 1560 : 90.0 / 810) + 1.2;
      }
      assertThat(Double.parseDouble(row[12])).as(row[0]).isCloseTo(joule / 3.6e6, within(1e-9));
    }
    assertThat(rows.get(1)[12]).isNotEqualTo(rows.get(0)[12]);
  }

  @Test
  void weeksAndMonthsSumTheDays() {
    List<String[]> days = rows(Cli.run("season", "balcony.yaml", "--format", "csv"));
    for (String by : List.of("week", "month")) {
      List<String[]> sums = rows(Cli.run("season", "balcony.yaml", "--by", by, "--format", "csv"));
      assertThat(sum(sums, 4)).isCloseTo(sum(days, 4), within(1e-8));
      assertThat(sum(sums, 13)).isCloseTo(sum(days, 13), within(1e-8));
      assertThat(sums.get(sums.size() - 1)[1]).isEqualTo(days.get(days.size() - 1)[1]);
    }
    List<String[]> months =
        rows(Cli.run("season", "balcony.yaml", "--by", "month", "--format", "csv"));
    assertThat(months).extracting(r -> r[0]).startsWith("2027-04-12", "2027-05-01");
    assertThat(rows(Cli.run("season", "balcony.yaml", "--by", "week", "--format", "csv")).get(1)[0])
        .isEqualTo("2027-04-19");
  }

  /** Read back by a calendar library. */
  @Test
  void calendars() {
    Cli season = Cli.run("season", "away.yaml", "--format", "ics");
    ICalendar read = Biweekly.parse(season.out).first();
    List<String> names = read.getEvents().stream().map(e -> e.getSummary().getValue()).toList();
    assertThat(names).contains("Change the solution", "Check the EC and pH meters");
    VEvent neighbour =
        read.getEvents().stream()
            .filter(e -> e.getSummary().getValue().startsWith("Neighbour"))
            .findFirst()
            .orElseThrow();
    assertThat(neighbour.getDateStart().getValue().getRawComponents().toString())
        .startsWith("20270807");
    Cli sow = Cli.run("sow", "balcony.yaml", "--format", "ics");
    int batches = Cli.run("sow", "balcony.yaml", "--format", "csv").out.split("\n").length - 1;
    assertThat(Biweekly.parse(sow.out).first().getEvents()).hasSize(3 * batches);
    assertThat(sow.out).isEqualTo(Cli.run("sow", "balcony.yaml", "--format", "ics").out);
    assertThat(sow.out).contains("DTSTAMP:20270412T000000Z").contains("\r\n");
  }

  /** Without weather the plan's drinks alone, times the thirst that a log found. */
  @Test
  void drinksAlone() throws IOException {
    String plan =
        "tank: {shape: box, bottom: 500 mm x 400 mm, height: 330 mm, full: 300 mm, low: 100 mm}\n"
            + "water: {ec: 0.3 mS/cm}\ntarget: {ec: 1.6 mS/cm}\n"
            + "feed: {parts: [{rate: 5 mL/L}], rate_ec: 1.9 mS/cm}\n"
            + "drinks: 5 L/d\nthirst: 120 %\nseason: {from: 2027-12-20, to: 2028-01-18}\n";
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    Cli json = Cli.run("season", file.toString(), "--format", "json");
    assertThat(json.exit).as(json.err).isZero();
    assertThat(json.word("method")).isEqualTo("drinks");
    assertThat(json.number("water_use_L")).isCloseTo(5 * 1.2 * 30, within(1e-9));
    assertThat(json.number("year")).isNull();
    assertThat(json.number("cost_season")).isNull();
    assertThat(Cli.run("season", file.toString()).out)
        .as("every day is alike, so is every fortnight")
        .contains(" it drinks 180 L (150 to 210): a can of 10.0 L every 1.7 d.")
        .doesNotContain("lamp");
    Cli lamp = Cli.run("season", file.toString(), "--set", "lamp={power: 60 W, area: 0.5 m2}");
    assertThat(lamp.out).contains("Mind: the lamp is counted neither in the energy nor");
  }

  /** A tank that runs dry although somebody is there says so first, with or without its minds. */
  @Test
  void runningDryIsSaidFirst() {
    String[] low = {"season", "balcony.yaml", "--set", "tank.low=42 mm", "--quiet"};
    Cli dry = Cli.run(low);
    assertThat(dry.exit).isEqualTo(1);
    assertThat(dry.out)
        .matches(
            "(?s)The tank runs dry on [0-9]+ (days, first on [0-9]+ )?[A-Z][a-z]+, [0-9.]+ L short. From 12 Apr to .*");
    assertThat(Cli.run("season", "balcony.yaml").out).startsWith("From 12 Apr to ");
  }

  /** Crops and weather go before drinks, and it is said. */
  @Test
  void drinksBesideCropsAndWeather() {
    String unused = "Mind: drinks of the plan is not used here";
    String[] day = {"season", "day", "--plan", "balcony.yaml", "--date", "2027-07-10"};
    String[] warm = DutyCommandTest.with(day, "--tmin", "14 C", "--tmax", "31 C");
    assertThat(Cli.run(warm).out).doesNotContain(unused);
    assertThat(Cli.run(DutyCommandTest.with(warm, "--set", "drinks=5 L/d")).out).contains(unused);
    assertThat(Cli.run("season", "balcony.yaml").out).doesNotContain(unused);
    assertThat(Cli.run("season", "balcony.yaml", "--set", "drinks=5 L/d").out).contains(unused);
  }

  private static final String HILL =
      "tank: {shape: box, bottom: 500 mm x 400 mm, height: 330 mm, full: 300 mm, low: 40 mm, intake: 10 mm}\n"
          + "water: {ec: 0.55 mS/cm}\n"
          + "feed: {parts: [{rate: 6 mL/L}], rate_ec: 2 mS/cm}\n"
          + "target: {ec: 1.8 mS/cm, ec_low: 1.2 mS/cm, ec_high: 2.3 mS/cm}\n"
          + "drinks: 2 L/d\n"
          + "season: {from: 2026-12-20, to: 2027-02-20}\n";

  /** The target that is named as a cure is typed, and cures: the usual uptake follows it. */
  @Test
  void theTargetThatWouldMendDoes() throws IOException {
    String plan = Files.writeString(folder.resolve("hill.yaml"), HILL).toString();
    String told = Cli.run("season", plan).out;
    assertThat(told).contains("evenings in a row lie over target.ec_high");
    java.util.regex.Matcher cure =
        java.util.regex.Pattern.compile("target.ec: ([0-9.]+) mS/cm").matcher(told);
    assertThat(cure.find()).as(told).isTrue();
    String value = "target.ec=" + cure.group(1) + " mS/cm";
    assertThat(Cli.run("season", plan, "--set", value).out).doesNotContain("over target.ec_high");
  }

  static Stream<Row> months() {
    return Sheet.of("season-light.csv")
        .where(r -> r.text("kind").equals("month"))
        .having("transmission", "tmax_C")
        .atLeast(20);
  }

  /** Sheet season-light.csv, the sites that the command's own coast flag does not change. */
  @ParameterizedTest
  @MethodSource("months")
  void lightOfAMonth(Row r) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("plan.yaml"),
            "site: {latitude: "
                + r.text("latitude_deg")
                + " deg, altitude: "
                + r.text("altitude_m")
                + " m, coast: "
                + (r.num("krs") > 0.17)
                + ", light: {transmission: "
                + 100 * r.num("transmission")
                + " %}}\n");
    Cli json =
        Cli.run(
            "season",
            "light",
            "--plan",
            file.toString(),
            "--month",
            r.text("month"),
            "--tmin=" + r.text("tmin_C") + " C",
            "--tmax=" + r.text("tmax_C") + " C",
            "--format",
            "json");
    assertThat(json.exit).as(json.err).isZero();
    close(r, json, "ra_MJ_m2", "ra_MJ_m2_d");
    close(r, json, "daylight_h", "day_length_h");
    close(r, json, "dli_clear_mol_m2", "dli_clear_mol");
    close(r, json, "dli_open_mol_m2", "dli_mol");
    close(r, json, "dli_mol_m2", "dli_inside_mol");
  }

  private static void close(Row r, Cli json, String key, String column) {
    double wanted = r.num(column);
    assertThat(json.number(key))
        .as(r.idAndProvenance() + " " + key)
        .isCloseTo(wanted, within(Math.max(1e-9, Math.abs(wanted) * r.num("tol_rel"))));
  }

  /** FAO-56 example 18: 3.88 mm by Penman-Monteith (published 3.9). */
  @Test
  void dayOfTheBook() {
    Cli json =
        Cli.run(
            "season",
            "day",
            "--latitude",
            "50.8 deg",
            "--altitude",
            "100 m",
            "--date",
            "2027-07-06",
            "--tmin",
            "12.3 C",
            "--tmax",
            "21.5 C",
            "--rh-min",
            "63 %",
            "--rh-max",
            "84 %",
            "--wind",
            "10 km/h",
            "--wind-height",
            "10 m",
            "--sun",
            "9.25 h",
            "--format",
            "json");
    assertThat(json.exit).as(json.err).isZero();
    assertThat(json.word("method")).isEqualTo("penman-monteith");
    assertThat(json.number("et0_mm")).isCloseTo(3.88, within(0.05));
    assertThat(json.number("ra_MJ_m2")).isCloseTo(41.09, within(0.05));
    assertThat(json.number("daylight_h")).isCloseTo(16.1, within(0.05));
    assertThat(json.number("plants_L")).isNull();
  }

  /** A day of the season by its weather is the season's own row. */
  @Test
  void dayOfAPlanIsTheSeasonsRow() {
    Cli json = Cli.run("season", "balcony.yaml", "--format", "json");
    String year = String.valueOf(json.number("year").intValue());
    String weather =
        read(Path.of("examples/weather-seattle.csv")).stream()
            .filter(l -> l.startsWith(year + "-07-10"))
            .findFirst()
            .orElseThrow();
    String[] cells = weather.split(",");
    Cli day =
        Cli.run(
            "season",
            "day",
            "--plan",
            "balcony.yaml",
            "--date",
            "2027-07-10",
            "--tmin",
            cells[1] + " C",
            "--tmax",
            cells[2] + " C",
            "--format",
            "json");
    String row =
        Cli.run("season", "balcony.yaml", "--format", "csv")
            .out
            .lines()
            .filter(l -> l.startsWith("2027-07-10"))
            .findFirst()
            .orElseThrow();
    assertThat(day.number("water_use_L"))
        .isCloseTo(Double.parseDouble(row.split(",")[4]), within(1e-9));
  }

  private static List<String> read(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
