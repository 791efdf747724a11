package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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

/** The season from a plan file: sheet season-balance.csv through files and the command line. */
class SeasonCommandTest {
  @TempDir Path folder;

  static Stream<Row> balances() {
    return Sheet.of("season-balance.csv").atLeast(6);
  }

  private static List<Row> daily(String id) {
    return Sheet.of("season-balance-daily.csv").where(r -> r.id().equals(id)).rows();
  }

  /** A tank of 1 m2: a millimetre is a litre. */
  private static String plan(Row r) {
    String refill =
        switch (r.text("refill")) {
          case "low" -> "at low";
          case "every" -> "every " + (int) r.num("refill_days") + " d";
          default -> "none";
        };
    StringBuilder plan = new StringBuilder();
    plan.append("tank: {shape: box, bottom: 1000 mm x 1000 mm, height: 1000 mm, full: ")
        .append(r.text("full_L"))
        .append(" mm, low: ")
        .append(r.text("low_L"))
        .append(" mm, intake: ")
        .append(r.text("intake_L"))
        .append(" mm, rim_overflow: ")
        .append(r.text("rim_L"))
        .append(" mm, heel: ")
        .append(r.text("heel_L"))
        .append(" L, rain_area: ")
        .append(r.text("rain_area_m2"))
        .append(" m2, rain_share: ")
        .append(100 * r.num("catch"))
        .append(" %}\nrain: {ec: ")
        .append(r.text("rain_ec_mS_cm"))
        .append(" mS/cm}\nwater: {ec: ")
        .append(r.text("water_ec_mS_cm"))
        .append(" mS/cm}\ntarget: {ec: ")
        .append(r.text("target_ec_mS_cm"))
        .append(" mS/cm}\nfeed: {parts: [{rate: ")
        .append(r.text("rate_mL_L"))
        .append(" mL/L}], rate_ec: ")
        .append(r.text("rate_ec_mS_cm"))
        .append(" mS/cm}\nseason:\n  from: ")
        .append(r.text("first_day"))
        .append("\n  to: ")
        .append(LocalDate.parse(r.text("first_day")).plusDays((long) r.num("days") - 1))
        .append("\n  refill: ")
        .append(refill)
        .append("\n  start: {volume: ")
        .append(r.text("volume_start_L"))
        .append(" L, ec: ")
        .append(r.text("ec_start_mS_cm"))
        .append(" mS/cm}\n  uptake: ")
        .append(r.text("uptake_ec_mS_cm"))
        .append(" mS/cm\n");
    when(plan, r, "dose_below_mS_cm", "  dose_below: ", " mS/cm\n");
    when(plan, r, "dilute_above_mS_cm", "  dilute_above: ", " mS/cm\n");
    if (r.has("change_days")) {
      plan.append("  change: {every: ").append(r.text("change_days")).append(" d}\n");
    } else if (r.has("change_added")) {
      plan.append("  change: {or_added: ").append(100 * r.num("change_added")).append(" %}\n");
    }
    return plan.toString();
  }

  private static void when(StringBuilder plan, Row r, String column, String before, String after) {
    if (r.has(column)) {
      plan.append(before).append(r.text(column)).append(after);
    }
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static void compare(Row r, List<Row> daily, Cli csv, double tolerance) {
    compare(r, daily, csv, tolerance, tolerance, tolerance);
  }

  /** Tolerances of litres, of EC in mS/cm and of concentrate in mL. */
  private static void compare(
      Row r, List<Row> daily, Cli csv, double litres, double mSCm, double millilitres) {
    String[] lines = csv.out.split("\n");
    assertThat(lines[0])
        .isEqualTo(
            "date,volume_L,ec_mS_cm,low_L,water_use_L,short_L,rain_L,overflow_L,topup_water_L,"
                + "topup_concentrate_mL,drained_L,tank_C,kwh,cost,event");
    assertThat(lines).hasSize(daily.size() + 1);
    String[] columns = {
      "volume_L",
      "ec_mS_cm",
      "low_L",
      "et_L",
      "short_L",
      "rain_L",
      "overflow_L",
      "topup_water_L",
      "topup_concentrate_mL",
      "drained_L"
    };
    for (int t = 0; t < daily.size(); t++) {
      String[] cells = lines[t + 1].split(",", -1);
      Row day = daily.get(t);
      String where = r.idAndProvenance() + " day " + t + " ";
      assertThat(cells[0]).as(where).isEqualTo(day.text("date"));
      for (int c = 0; c < columns.length; c++) {
        double tolerance = columns[c].endsWith("mL") ? millilitres : litres;
        assertThat(Double.parseDouble(cells[c + 1]))
            .as(where + columns[c])
            .isCloseTo(
                day.num(columns[c]), within(columns[c].endsWith("mS_cm") ? mSCm : tolerance));
      }
      assertThat(cells.length > 14 ? cells[14] : "").as(where).isEqualTo(day.text("event"));
    }
  }

  @ParameterizedTest
  @MethodSource("balances")
  void litresOfAFileThroughTheWholeSheet(Row r) throws IOException {
    List<Row> daily = daily(r.id());
    StringBuilder weather = new StringBuilder("date,rain_mm,plants_L,open_L\n");
    for (Row day : daily) {
      weather
          .append(day.text("date"))
          .append(',')
          .append(day.text("in_rain_mm"))
          .append(',')
          .append(day.text("in_plants_L"))
          .append(',')
          .append(day.text("in_open_L"))
          .append('\n');
    }
    write("litres.csv", weather.toString());
    Path plan = write("plan.yaml", plan(r) + "site: {weather: litres.csv}\n");
    Cli csv = Cli.run("season", plan.toString(), "--format", "csv");
    assertThat(csv.exit).as(csv.err).isLessThan(2);
    compare(r, daily, csv, r.num("tol_abs"));
    Cli json = Cli.run("season", plan.toString(), "--format", "json");
    assertThat(json.word("method")).isEqualTo("litres-file");
    double tolerance = r.num("tol_abs");
    assertThat(json.number("water_use_L")).isCloseTo(r.num("sum_et_L"), within(tolerance));
    assertThat(json.number("overflow_L")).isCloseTo(r.num("sum_overflow_L"), within(tolerance));
    assertThat(json.number("topups")).isEqualTo(r.num("n_topup"));
    assertThat(json.number("dilutions")).isEqualTo(r.num("n_dilute"));
    assertThat(json.number("dry_days")).isEqualTo(r.num("n_dry"));
    assertThat(json.number("ec_max_mS_cm")).isCloseTo(r.num("ec_max_mS_cm"), within(tolerance));
    assertThat(json.exit).isEqualTo(r.num("n_dry") > 0 ? 1 : 0);
  }

  /**
   * SB08 from the weather file on. Sheet season.md section 4: starting from the weather instead of
   * the inputs rounded to 1E-6 L gives the same events, volumes within 2E-5 L, EC within 1E-6,
   * concentrate within 1E-3 mL. Sums bear the rounding of two inputs on each of 164 days.
   */
  @Test
  void seattleFromWeatherToMillilitres() throws IOException {
    Row r =
        Sheet.of("season-balance.csv")
            .where(one -> one.id().equals("SB08"))
            .atLeast(1)
            .findFirst()
            .orElseThrow();
    List<String> crops = new ArrayList<>();
    String latitude = "";
    String open = "";
    for (Row crop : Sheet.of("season-balance-crops.csv").rows()) {
      if (!crop.text("balance_case").equals("SB08")) {
        continue;
      }
      LocalDate transplant = LocalDate.parse(crop.text("transplant"));
      long growing = ChronoUnit.DAYS.between(transplant, LocalDate.parse(crop.text("harvest")));
      crops.add(
          "  - {name: "
              + crop.text("crop")
              + ", pots: "
              + crop.text("plants")
              + ", sow: "
              + transplant
              + ", growing: "
              + growing
              + " d, water: "
              + 4 * crop.num("demand_area_m2")
              + " L/d, initial: "
              + crop.text("days_initial")
              + " d, development: "
              + crop.text("days_development")
              + " d, start_share: "
              + 100 * crop.num("g_start")
              + " %}\n");
      latitude = crop.text("latitude_deg");
      open = crop.text("wet_area_m2");
    }
    Path weather = Path.of("examples", "weather-seattle.csv").toAbsolutePath();
    Path plan =
        write(
            "plan.yaml",
            plan(r).replace("tank: {", "tank: {open_area: " + open + " m2, ")
                + "site: {latitude: "
                + latitude
                + " deg, exposure: open, weather: "
                + weather
                + "}\ncrops:\n"
                + String.join("", crops));
    Cli all = Cli.run("season", plan.toString(), "--format", "json");
    assertThat(all.number("years_used")).as(all.err).isEqualTo(4);
    assertThat(all.word("method")).isEqualTo("hargreaves-samani");
    // Only the year 2014, which the sheet has: the season's dates are its own.
    write("2014.csv", only(weather, "2014"));
    String alone = Files.readString(plan).replace(weather.toString(), "2014.csv");
    write("plan.yaml", alone);
    Cli csv = Cli.run("season", plan.toString(), "--format", "csv");
    compare(r, daily("SB08"), csv, 2e-5, 1e-6, 1e-3);
    Cli json = Cli.run("season", plan.toString(), "--format", "json");
    assertThat(json.number("year")).isEqualTo(2014);
    assertThat(json.number("water_use_L")).isCloseTo(r.num("sum_et_L"), within(1.64e-4));
    assertThat(json.number("topup_concentrate_mL"))
        .isCloseTo(r.num("sum_concentrate_mL"), within(1e-3));
    assertThat(json.number("topup_water_L")).isCloseTo(r.num("sum_topup_water_L"), within(1.64e-4));
    assertThat(json.number("drained_L")).isCloseTo(r.num("sum_drained_L"), within(2e-5));
    assertThat(json.number("ec_max_mS_cm")).isCloseTo(r.num("ec_max_mS_cm"), within(1e-6));
    assertThat(json.number("ec_end_mS_cm")).isCloseTo(r.num("ec_end_mS_cm"), within(1e-6));
    assertThat(json.number("lowest_L")).isCloseTo(r.num("lowest_L"), within(2e-5));
    assertThat(json.number("dry_days")).isEqualTo(r.num("n_dry"));
    assertThat(json.number("topups")).isEqualTo(r.num("n_topup"));
    assertThat(json.number("changes")).isEqualTo(7);
    assertThat(json.exit).isEqualTo(1);
  }

  private static String only(Path weather, String year) throws IOException {
    List<String> lines = Files.readAllLines(weather);
    StringBuilder kept = new StringBuilder(lines.get(0)).append('\n');
    for (String line : lines) {
      if (line.startsWith(year)) {
        kept.append(line).append('\n');
      }
    }
    return kept.toString();
  }

  /** A season shorter than a can lasts wants none; one day has one date and no fortnight. */
  @Test
  void aShortSeasonWantsNoCan() {
    Cli day = Cli.run("season", "balcony.yaml", "--set", "season.to=2027-04-12");
    assertThat(day.out).startsWith("On 12 Apr it drinks").contains("less than a can of 10.0 L");
    assertThat(day.out).doesNotContain("fortnight").contains("  1.40 mS/cm  in the evening");
    Cli week =
        Cli.run(
            "season",
            "balcony.yaml",
            "--set",
            "season.from=2027-07-01",
            "--set",
            "season.to=2027-07-08");
    assertThat(week.out).contains("wants a can of 10.0 L every 3.1 d, and costs");
  }

  /**
   * What the running towers hold comes back at a stop: 30 L, less the tapered box between full mark
   * and overflow, 533.6 mm x 353.6 mm x 30 mm by its middle: 5.66 L.
   */
  @Test
  void fillUpWithThePumpOff() {
    String[] line = {"season", "balcony.yaml", "--set", "hold_up=30 L"};
    Cli held = Cli.run(line);
    assertThat(held.out)
        .contains("fill up with the pump off")
        .contains("spills 24.3 L at the next stop, when 30.0 L come back");
    Cli little = Cli.run("season", "balcony.yaml", "--set", "hold_up=0.5 L");
    assertThat(little.out).doesNotContain("fill up with the pump off");
  }

  /**
   * The timing's rests against the dry limit, as leat duty judges them; a season is none the less.
   */
  @Test
  void restsThatRootsDoNotBearAreTold() {
    String[] twice = {
      "season", "balcony.yaml", "--set", "dry_limit.day=5 min", "--set", "dry_limit.night=6 min"
    };
    Cli dry = Cli.run(twice);
    assertThat(dry.exit).isZero();
    assertThat(dry.out)
        .contains("timing[0]: a rest of 12 min is over the dry limit of 5.0 min")
        .doesNotContain("The rest is too long");
    assertThat(Cli.run("season", "balcony.yaml").out).doesNotContain("dry limit");
  }

  @Test
  void aSeasonWithoutAPlantIsTold() {
    Cli winter =
        Cli.run(
            "season",
            "balcony.yaml",
            "--set",
            "season.from=2027-11-20",
            "--set",
            "season.to=2027-12-20");
    assertThat(winter.out).contains("Mind: no plant stands in the tower in these days");
    assertThat(Cli.run("season", "balcony.yaml").out).doesNotContain("no plant stands");
  }
}
