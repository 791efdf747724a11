package leat.command.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lamps, sills, meters, radiation and clear skies of season-light.csv through the command line. */
class SeasonLightSheetTest {
  /** Factors of the sheet, lux for 1 umol/m2 s, by the word that the flag takes. */
  private static final Map<String, String> LIGHTS =
      Map.of("54", "sun", "70", "white-led", "74", "fluorescent");

  @TempDir Path folder;

  private static Stream<Row> kind(String kind, int atLeast) {
    return Sheet.of("season-light.csv").where(r -> r.text("kind").equals(kind)).atLeast(atLeast);
  }

  static Stream<Row> lamps() {
    return kind("lamp", 8);
  }

  static Stream<Row> sills() {
    return kind("sill", 3);
  }

  static Stream<Row> meters() {
    return kind("meter", 3);
  }

  static Stream<Row> radiation() {
    return kind("radiation", 2);
  }

  static Stream<Row> clear() {
    return kind("month", 2).filter(r -> !r.has("tmax_C"));
  }

  private static Cli light(List<String> flags) {
    List<String> line = new ArrayList<>(List.of("season", "light", "--format", "json"));
    line.addAll(flags);
    Cli json = Cli.run(line.toArray(new String[0]));
    assertThat(json.exit).as(line + json.err).isZero();
    return json;
  }

  private static Cli light(String... flags) {
    return light(Arrays.asList(flags));
  }

  private static void close(Row r, Cli json, String key, String column) {
    if (r.has(column)) {
      double wanted = r.num(column);
      assertThat(json.number(key))
          .as(r.idAndProvenance() + " " + key)
          .isCloseTo(wanted, within(Math.max(1e-9, Math.abs(wanted) * r.num("tol_rel"))));
    }
  }

  private static void lampFlag(List<String> flags, Row r, String column, String flag, String unit) {
    if (r.has(column)) {
      flags.addAll(List.of(flag, r.text(column) + unit));
    }
  }

  @ParameterizedTest
  @MethodSource("lamps")
  void lamp(Row r) {
    List<String> flags = new ArrayList<>();
    lampFlag(flags, r, "natural_mol", "--light", "");
    lampFlag(flags, r, "need_mol", "--need", "");
    lampFlag(flags, r, "area_m2", "--lamp-area", " m2");
    lampFlag(flags, r, "efficacy_umol_J", "--lamp-efficacy", "");
    lampFlag(flags, r, "lumen_per_W", "--lamp-lumens", "");
    lampFlag(flags, r, "lamp_W", "--lamp-power", " W");
    lampFlag(flags, r, "max_hours", "--lamp-hours", " h");
    flags.addAll(List.of("--lamp-share", 100 * r.num("utilisation") + " %"));
    Cli json = light(flags);
    assertThat(json.word("lamp")).as(r.idAndProvenance()).isEqualTo(r.text("status"));
    close(r, json, "lamp_ppfd_umol_m2_s", "ppfd_umol");
    close(r, json, "missing_mol_m2", "missing_mol");
    close(r, json, "lamp_h", "hours");
    close(r, json, "lamp_day_kWh", "kWh_day");
    close(r, json, "lamp_needed_W", "W_needed");
    close(r, json, "dli_with_lamp_mol_m2", "dli_with_lamp_mol");
  }

  @ParameterizedTest
  @MethodSource("sills")
  void sill(Row r) {
    Cli json =
        light(
            "--light",
            r.text("natural_mol"),
            "--transmission",
            100 * r.num("glass") + " %",
            "--window",
            r.text("window_width_m") + " m x " + r.text("window_height_m") + " m",
            "--distance",
            r.text("distance_m") + " m");
    assertThat(json.number("sky_share_pct") / 100)
        .as(r.idAndProvenance())
        .isCloseTo(r.num("sky_share"), within(r.num("tol_rel") * r.num("sky_share")));
    close(r, json, "dli_mol_m2", "dli_inside_mol");
  }

  @ParameterizedTest
  @MethodSource("meters")
  void meter(Row r) {
    Cli json =
        light(
            "--lux",
            r.text("lux"),
            "--lux-of",
            LIGHTS.get(r.text("lux_per_umol")),
            "--lux-hours",
            r.text("hours_light") + " h");
    close(r, json, "ppfd_umol_m2_s", "ppfd_umol");
    close(r, json, "dli_mol_m2", "dli_mol");
  }

  /** The sun measured, under a cover: of {@code season day}. */
  @ParameterizedTest
  @MethodSource("radiation")
  void radiation(Row r) throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            "site: {latitude: 48 deg, light: {transmission: "
                + 100 * r.num("transmission")
                + " %}}\ndrinks: 8 L/d\n");
    String[] line = {
      "season",
      "day",
      "--plan",
      plan.toString(),
      "--date",
      "2027-06-01",
      "--tmin",
      "10 C",
      "--tmax",
      "20 C",
      "--radiation",
      r.text("rs_MJ_m2_d") + " MJ/m2",
      "--format",
      "json"
    };
    Cli json = Cli.run(line);
    assertThat(json.exit).as(json.err).isZero();
    close(r, json, "dli_mol_m2", "dli_inside_mol");
  }

  /** Without temperatures only the clear sky is known, at the equator and in polar night. */
  @ParameterizedTest
  @MethodSource("clear")
  void clearSky(Row r) {
    Cli json = light("--latitude", r.text("latitude_deg") + " deg", "--month", r.text("month"));
    close(r, json, "ra_MJ_m2", "ra_MJ_m2_d");
    close(r, json, "daylight_h", "day_length_h");
    close(r, json, "dli_clear_mol_m2", "dli_clear_mol");
    assertThat(json.number("dli_mol_m2")).isNull();
  }

  /** A plan's own lamp stands beside the flags: its lumens give way to an efficacy typed. */
  @Test
  void lampOfAPlan() throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            "lamp: {power: 40 W, lumens: 100, share: 50 %, hours: 16 h, area: 0.2 m2}\n");
    Cli own = light("--plan", plan.toString(), "--light", "4", "--need", "10");
    assertThat(own.number("lamp_ppfd_umol_m2_s")).isCloseTo(142.8571429, within(1e-7));
    String[] typed = {"--plan", plan.toString(), "--light", "4", "--lamp-efficacy", "2.8"};
    Cli other = light(Stream.concat(Stream.of(typed), Stream.of("--need", "10")).toList());
    assertThat(other.number("lamp_ppfd_umol_m2_s")).isCloseTo(280, within(1e-9));
  }

  @Test
  void inWords() {
    Cli own = Cli.run("season", "light", "--light", "3", "--need", "13");
    assertThat(own.out)
        .startsWith("The plants get 3.0 mol/m2 of light per day.")
        .contains("need", "13 mol/m2")
        .contains("10 mol/m2 per day under what is wanted");
    Cli lux =
        Cli.run(
            "season",
            "light",
            "--lux",
            "4000",
            "--lux-hours",
            "10 h",
            "--crop",
            "basil",
            "--lux-of",
            "white-led");
    assertThat(lux.out).contains("basil gets 2.1 mol/m2 per day, under its low mark of 9");
  }

  @Test
  void oneSourceOfLight() {
    assertThat(Cli.run("season", "light", "--light", "3", "--month", "4").exit).isEqualTo(2);
    assertThat(Cli.run("season", "light", "--light", "3", "--lux", "4").exit).isEqualTo(2);
    String[] sky = {"season", "light", "--lux", "3", "--lux-hours", "3 h", "--shade", "30 %"};
    assertThat(Cli.run(sky).err).contains("--lux").contains("--shade");
    assertThat(Cli.run("season", "light", "--lux", "3").err).contains("--lux-hours");
    String[] both = {"season", "light", "--light", "3", "--need", "4", "--crop", "basil"};
    assertThat(Cli.run(both).exit).isEqualTo(2);
  }

  @Test
  void aMonthByItsName() {
    String[] line = {"season", "light", "--latitude", "47.9 deg", "-f", "json", "--month"};
    Cli number = Cli.run(DutyCommandTest.with(line, "7"));
    assertThat(number.exit).isZero();
    for (String name : new String[] {"July", "jul", "JULY", "07"}) {
      assertThat(Cli.run(DutyCommandTest.with(line, name)).out).as(name).isEqualTo(number.out);
    }
    for (String no : new String[] {"Ju", "J", "", "13", "0", "7.5", "Julyx", "mai"}) {
      assertThat(Cli.run(DutyCommandTest.with(line, no)).exit).as(no).isEqualTo(2);
    }
  }

  /**
   * Without light 65 W of 2.5 umol/J on 0.4 m2 by half in 16 h are 11.7 mol/m2: over 9, under 13.
   */
  @Test
  void aLampThatLiftsItOverTheLowMark() {
    String[] lamp = {
      "season",
      "light",
      "--light",
      "0",
      "--crop",
      "basil",
      "--lamp-area",
      "0.4 m2",
      "--lamp-share",
      "50 %",
      "--lamp-hours",
      "16 h",
      "--lamp-power",
      "65 W"
    };
    assertThat(Cli.run(lamp).out)
        .contains(
            "Mind: basil gets 0 mol/m2 per day without the lamp, under its low mark of 9.0; with it 12.")
        .doesNotContain("thin and pale");
    lamp[lamp.length - 1] = "40 W";
    assertThat(Cli.run(lamp).out).contains("thin and pale").doesNotContain("without the lamp");
  }

  /** A word that is none is refused, also where nothing would come of it. */
  @Test
  void wordsThatAreNone() {
    String[] light = {
      "season", "light", "--latitude", "52 deg", "--month", "7", "--tmin", "8 C", "--tmax", "16 C"
    };
    Cli cover = Cli.run(DutyCommandTest.with(light, "--cover", "doubleglass"));
    assertThat(cover.exit).isEqualTo(2);
    assertThat(cover.err)
        .startsWith("--cover: one of none, glass, double-glass,")
        .contains("did you mean \"double-glass\"?");
    String[] lux = {
      "season", "light", "--lux", "9000", "--lux-hours", "9 h", "--lux-of", "whiteled"
    };
    assertThat(Cli.run(lux).err).contains("did you mean \"white-led\"?");
    light[5] = "Jly";
    assertThat(Cli.run(light).err)
        .contains("such as 7 or July; got \"Jly\"; did you mean \"July\"?");
    light[5] = "7";
    assertThat(
            Cli.run(DutyCommandTest.with(light, "--lamp-efficacy", "2", "--lamp-lumens", "90")).err)
        .contains("--lamp-efficacy and --lamp-lumens ask for different things");
    assertThat(Cli.run(DutyCommandTest.with(light, "--lamp-hours", "30 h")).err)
        .contains("--lamp-hours: it can be 24 h at most");
  }

  /** On 16 January at 52 degrees the sun is up for 8.07 h (FAO-56 equation 34, by hand). */
  @Test
  void moreSunThanDay() {
    String[] day = {
      "season",
      "day",
      "--latitude",
      "52 deg",
      "--date",
      "2027-01-16",
      "--tmin",
      "1 C",
      "--tmax",
      "6 C",
      "--sun"
    };
    assertThat(Cli.run(DutyCommandTest.with(day, "8.2 h")).out)
        .contains("Mind: the day has 8.07 h of light: more sun than that is not counted.");
    assertThat(Cli.run(DutyCommandTest.with(day, "8.06 h")).out).doesNotContain("more sun than");
  }
}
