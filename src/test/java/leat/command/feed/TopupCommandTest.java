package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TopupCommandTest {
  private static final String[] CONTRACT = {
    "topup",
    "--volume",
    "31 L",
    "--ec",
    "2.1 mS/cm",
    "--full",
    "45 L",
    "--target",
    "1.6 mS/cm",
    "--water-ec",
    "0.3 mS/cm",
    "--rate",
    "5 mL/L",
    "--rate-ec",
    "1.9 mS/cm",
    "--format",
    "json"
  };

  static Stream<Row> rows() {
    return Sheet.of("solution-topup.csv").atLeast(14);
  }

  static Stream<Row> bands() {
    return Sheet.of("solution-topup.csv").having("drain_L_at_low_volume").atLeast(1);
  }

  private static List<String> line(Row r, String volume) {
    List<String> line = new ArrayList<>(List.of("topup", "--volume", volume, "--format", "json"));
    line.addAll(List.of("--ec", r.text("ec_mS_cm") + " mS/cm"));
    line.addAll(List.of("--full", r.text("full_L") + " L"));
    line.addAll(List.of("--target", r.text("target_mS_cm") + " mS/cm"));
    line.addAll(List.of("--water-ec", r.text("water_ec_mS_cm") + " mS/cm"));
    line.addAll(List.of("--rate", r.text("rate_mL_L") + " mL/L"));
    line.addAll(List.of("--rate-ec", r.text("rate_ec_mS_cm") + " mS/cm"));
    line.addAll(List.of("--rain", r.text("rain_L") + " L"));
    if (r.has("rain_ec_mS_cm")) {
      line.addAll(List.of("--rain-ec", r.text("rain_ec_mS_cm") + " mS/cm"));
    }
    return line;
  }

  private static void close(Row r, String column, Double got) {
    String what = r.idAndProvenance() + " " + column;
    if (!r.has(column)) {
      assertThat(got).as(what).isNull();
      return;
    }
    double want = r.num(column);
    assertThat(got)
        .as(what)
        .isCloseTo(want, offset(r.num("tol_abs") + r.num("tol_rel") * Math.abs(want)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatTheSheetSays(Row r) {
    Cli cli = Cli.run(line(r, r.text("volume_L") + " L").toArray(new String[0]));
    assertThat(cli.err).isEmpty();
    assertThat(cli.word("status")).isEqualTo(r.text("status"));
    assertThat(cli.exit).isEqualTo("reached".equals(r.text("status")) ? 0 : 1);
    for (String key :
        List.of("drain_L", "water_L", "concentrate_mL", "final_volume_L", "final_ec_mS_cm")) {
      close(r, key, cli.number(key));
    }
    close(r, "rain_overflow_L", cli.number("rain_overflow_L"));
    close(r, "after_rain_volume_L", cli.number("after_rain_L"));
  }

  @ParameterizedTest
  @MethodSource("bands")
  void carriesTheBandOfTheVolume(Row r) {
    String band = r.text("volume_low_L") + ".." + r.text("volume_high_L") + " L";
    Cli cli = Cli.run(line(r, band).toArray(new String[0]));
    close(r, "water_L", cli.number("water_L"));
    close(r, "concentrate_mL", cli.number("concentrate_mL"));
    close(r, "drain_L_at_low_volume", cli.number("drain_low_L"));
    close(r, "drain_L_at_high_volume", cli.number("drain_high_L"));
    close(r, "water_L_at_high_volume", cli.number("water_low_L"));
    close(r, "water_L_at_low_volume", cli.number("water_high_L"));
    close(r, "concentrate_mL_at_high_volume", cli.number("concentrate_low_mL"));
    close(r, "concentrate_mL_at_low_volume", cli.number("concentrate_high_mL"));
    close(r, "mid_recipe_volume_if_high_L", cli.number("mid_recipe_volume_if_high_L"));
    close(r, "mid_recipe_ec_if_low_mS_cm", cli.number("mid_recipe_ec_if_low_mS_cm"));
  }

  @Test
  void theContractsLine() {
    Cli cli = Cli.run(CONTRACT);
    assertThat(cli.exit).isZero();
    assertThat(cli.number("drain_L")).isZero();
    assertThat(cli.number("water_L")).isCloseTo(13.9928891, within(1e-6));
    assertThat(cli.number("concentrate_mL")).isCloseTo(7.11087701, within(1e-6));
    assertThat(cli.number("final_volume_L")).isEqualTo(45);
    assertThat(cli.number("final_ec_mS_cm")).isEqualTo(1.6);
  }

  @Test
  void csvHasTheSameNumbersAndTextTheSameRounded() {
    String[] csv = CONTRACT.clone();
    csv[csv.length - 1] = "csv";
    String[] lines = Cli.run(csv).out.split("\n");
    assertThat(lines[0])
        .startsWith("drain_L,water_L,concentrate_mL,final_volume_L,final_ec_mS_cm,");
    Cli json = Cli.run(CONTRACT);
    String[] cells = lines[1].split(",");
    assertThat(Double.parseDouble(cells[1])).isEqualTo(json.number("water_L"));
    assertThat(Double.parseDouble(cells[2])).isEqualTo(json.number("concentrate_mL"));
    String[] text = CONTRACT.clone();
    text[text.length - 1] = "text";
    assertThat(Cli.run(text).out)
        .startsWith(
            "Add 14.0 L of water and 7.11 mL of feed: 45.0 L at 1.60 mS/cm. Drain nothing.\n")
        .contains("plain water alone     1.54 mS/cm  close enough for most leaves");
  }

  /** Volume and salt close, and no amount leaves what the tank can hold. */
  @Test
  void nothingIsLostAndNothingOverflows() {
    Random random = new Random(5);
    int reached = 0;
    for (int i = 0; i < 400; i++) {
      double full = 5 + 95 * random.nextDouble();
      double volume = full * 1.1 * random.nextDouble();
      double ec = 3 * random.nextDouble();
      double target = 0.5 + 2 * random.nextDouble();
      double water = 0.9 * random.nextDouble();
      double rate = 1 + 20 * random.nextDouble();
      double gain = 0.5 + 2 * random.nextDouble();
      Cli cli =
          Cli.run(
              "topup",
              "--volume",
              typed(volume, "L"),
              "--ec",
              typed(ec, "mS/cm"),
              "--full",
              typed(full, "L"),
              "--target",
              typed(target, "mS/cm"),
              "--water-ec",
              typed(water, "mS/cm"),
              "--rate",
              typed(rate, "mL/L"),
              "--rate-ec",
              typed(gain, "mS/cm"),
              "--format",
              "json");
      if (cli.exit == 1) {
        assertThat(cli.number("water_L")).isNull();
        continue;
      }
      assertThat(cli.exit).as(cli.err).isZero();
      reached++;
      double kept = volume - cli.number("drain_L");
      double poured = cli.number("water_L");
      double feed = cli.number("concentrate_mL") / 1000;
      assertThat(kept).isBetween(-1e-9, full + 1e-9);
      assertThat(poured).isBetween(0.0, full);
      assertThat(feed).isBetween(0.0, full);
      assertThat(kept + poured + feed).isCloseTo(full, within(1e-9 * full));
      double salt = kept * ec + poured * water + feed * 1000 * gain / rate;
      assertThat(salt / full).isCloseTo(target, within(1e-9));
    }
    assertThat(reached).isGreaterThan(300);
  }

  private static String typed(double value, String unit) {
    return String.format(Locale.ROOT, "%.17g", value).replaceFirst("e.*", "") + " " + unit;
  }

  @Test
  void aReadingOfThePlansSenderGivesTheSameAsItsBand() {
    Cli level = Cli.run("level", "119", "--plan", "hard-water.yaml", "--format", "json");
    double low = level.number("volume_low_L");
    double high = level.number("volume_high_L");
    Cli byReading =
        Cli.run(
            "topup",
            "--plan",
            "hard-water.yaml",
            "--reading",
            "119",
            "--ec",
            "1.9 mS/cm",
            "--format",
            "json");
    Cli byVolume =
        Cli.run(
            "topup",
            "--plan",
            "hard-water.yaml",
            "--volume",
            low + ".." + high + " L",
            "--ec",
            "1.9 mS/cm",
            "--format",
            "json");
    assertThat(byReading.word("sender_status")).isEqualTo("ok");
    assertThat(byReading.number("volume_low_L")).isEqualTo(low);
    assertThat(byReading.number("volume_high_L")).isEqualTo(high);
    for (String key :
        List.of(
            "water_L",
            "water_low_L",
            "water_high_L",
            "concentrate_low_mL",
            "concentrate_high_mL")) {
      assertThat(byReading.number(key)).isCloseTo(byVolume.number(key), within(1e-7));
    }
    assertThat(high - low).isGreaterThan(1);
  }

  @Test
  void aBrokenSenderIsNo() {
    Cli cli =
        Cli.run("topup", "--plan", "hard-water.yaml", "--reading", "open", "--ec", "1.9 mS/cm");
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .startsWith(
            "The sender reads open: what is in the tank is not known, and nothing is to be poured.\n");
  }

  @Test
  void theAdviceForABandIsToFillToTheMark() {
    Cli cli =
        Cli.run("topup", "--plan", "hard-water.yaml", "--reading", "119", "--ec", "1.9 mS/cm");
    assertThat(cli.exit).isZero();
    assertThat(cli.out).startsWith("Fill to the mark, stir, measure, dose: ");
    assertThat(cli.out).contains("read with the pump off: running towers hold 1.10 L");
  }

  @Test
  void rainByTheGaugeIsRainByVolume() {
    List<String> gauge =
        List.of("topup", "-p", "hard-water.yaml", "--volume", "24 L", "--ec", "1.9 mS/cm", "-f");
    List<String> one = new ArrayList<>(gauge);
    one.addAll(List.of("json", "--rainfall", "12 mm", "--set", "tank.rain_share=100 %"));
    List<String> other = new ArrayList<>(gauge);
    other.addAll(List.of("json", "--rain", "0.36 L"));
    assertThat(Cli.run(one.toArray(new String[0])).out)
        .isEqualTo(Cli.run(other.toArray(new String[0])).out)
        .contains("\"after_rain_L\": 24.36,");
    List<String> usual = new ArrayList<>(gauge);
    usual.addAll(List.of("json", "--rainfall", "12 mm"));
    assertThat(Cli.run(usual.toArray(new String[0])).out)
        .as("0.8 of 0.36 L, as season counts it")
        .contains("\"after_rain_L\": 24.288,", "80 % of the rain on the lid arrives");
  }

  @Test
  void cansAndPartsOfThePlan() {
    Cli cli = Cli.run("topup", "-p", "hard-water.yaml", "--volume", "24 L", "--ec", "1.9 mS/cm");
    assertThat(cli.out)
        .contains("  leaf A              16.4 mL\n")
        .contains("  leaf B              16.4 mL\n")
        .contains("carry")
        .contains("2 full cans and a splash, 24.7 mL");
    Cli unequal =
        Cli.run(
            "topup",
            "-p",
            "hard-water.yaml",
            "--set",
            "feed.parts=[{rate: 1 mL/L}, {rate: 3 mL/L}]",
            "--volume",
            "24 L",
            "--ec",
            "1.9 mS/cm",
            "--format",
            "json");
    assertThat(unequal.number("part_mL")).isNull();
    assertThat(unequal.number("part_1_mL"))
        .isCloseTo(unequal.number("concentrate_mL") / 4, within(1e-9));
    assertThat(unequal.number("part_2_mL"))
        .isCloseTo(unequal.number("concentrate_mL") * 3 / 4, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --volume | 31 | --volume: a volume needs its unit, such as "45 L"; got "31"
          --volume | 34..28 L | --volume: a range goes from low to high, such as "28..34 L"; got "34..28 L"
          --volume | -3 L | --volume: it cannot be negative; got "-3 L"
          --ec | -1 mS/cm | --ec: it cannot be negative; got "-1 mS/cm"
          --full | 0 L | --full: it must be above 0; got "0 L"
          --rate | 0 mL/L | --rate: it must be above 0; got "0 mL/L"
          --rain | -1 L | --rain: it cannot be negative; got "-1 L"
          --parts | 21 | --parts "21": a feed has 1 to 20 parts
          --water-ec | 190 mS/cm | --water-ec: an EC of 190 mS/cm is more than any tank of plants has, with 1.60 mS/cm aimed at; did you mean "19.0 mS/cm"?
          --ec | 21 mS/cm | --ec: an EC of 21.0 mS/cm is more than any tank of plants has, with 1.60 mS/cm aimed at; did you mean "2.10 mS/cm"?
          --target | 16 mS/cm | --target: an EC of 16.0 mS/cm is more than any crop here likes (4.00 mS/cm at most); did you mean "1.60 mS/cm"?
          --full | 270 mm | --full: a level needs a plan whose tank has its shape and sizes; give litres, such as "45 L"; got "270 mm"
          --full | 45 | --full: a volume needs its unit, such as "45 L"; got "45"
          """)
  void refuses(String flag, String value, String message) {
    List<String> line = new ArrayList<>(List.of(CONTRACT));
    int at = line.indexOf(flag);
    if (at > 0) {
      line.set(at + 1, value);
    } else {
      line.addAll(List.of(flag, value));
    }
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err.split("\n")[0]).isEqualTo(message);
    assertThat(cli.out).isEmpty();
  }

  @Test
  void anEmptyTankNeedsNoEc() {
    Cli cli = Cli.run("topup", "-p", "hard-water.yaml", "--volume", "0 L", "-f", "json");
    assertThat(cli.exit).as(cli.err).isZero();
    assertThat(cli.number("water_L") + cli.number("concentrate_mL") / 1000)
        .isCloseTo(44.0575723041, within(1e-9));
  }

  @Test
  void overTheRimOfThePlansTankIsRefused() {
    Cli cli = Cli.run("topup", "-p", "hard-water.yaml", "--volume", "84 L", "--ec", "1.9 mS/cm");
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err).isEqualTo("--volume: the tank holds 55.4 L to the rim; got \"84 L\"\n");
  }

  @Test
  void whatIsMissingIsNamed() {
    assertThat(Cli.run("topup").err)
        .startsWith(
            "leat topup: --rate is needed (label rate, all bottles together), such as --rate \"5 mL/L\"\n");
    assertThat(
            Cli.run(
                    "topup",
                    "--volume",
                    "3 L",
                    "--reading",
                    "83",
                    "--rate",
                    "5 mL/L",
                    "--rate-ec",
                    "1.9 mS/cm")
                .err)
        .startsWith("leat topup: --volume and --reading ask for different things");
  }

  @Test
  void aTargetUnderTheWatersOwnEcIsNo() {
    List<String> line = new ArrayList<>(List.of(CONTRACT));
    line.set(line.indexOf("--water-ec") + 1, "1.8 mS/cm");
    line.set(line.size() - 1, "text");
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out)
        .startsWith(
            "1.60 mS/cm cannot be reached: the water itself is 1.80 mS/cm. The nearest is 1.80 mS/cm.\n");
  }

  private static Cli band(String volume, String ec, String... more) {
    List<String> line = new ArrayList<>(List.of(CONTRACT));
    line.set(line.indexOf("--volume") + 1, volume);
    line.set(line.indexOf("--ec") + 1, ec);
    line.set(line.size() - 1, "text");
    line.addAll(List.of(more));
    return Cli.run(line.toArray(new String[0]));
  }

  /** What must be kept is 45 x 1.3 / 2.9 = 20.17 L by hand, whatever the sender reads. */
  @Test
  void aBandThatIsTooStrongIsDrainedFirst() {
    Cli cli = band("28..34 L", "3.2 mS/cm");
    assertThat(cli.exit).isZero();
    assertThat(cli.out)
        .startsWith(
            "Drain 7.83 to 13.8 L, fill to the mark with 24.8 L of water, stir and measure: it needs no feed.\n")
        .contains("left after draining   20.2 L          whatever the sender reads\n");
    assertThat(band("28..34 L", "2.1 mS/cm").out)
        .startsWith(
            "Drain up to 1.50 L, fill to the mark with 12.5 to 17.0 L of water, stir and measure; then pour 0 to 21.3 mL of feed.\n");
  }

  /** Amounts under a billionth of the tank are the noise of the sum: never printed. */
  @Test
  void noNoiseOfTheSumIsPrinted() {
    Random random = new Random(3);
    for (int i = 0; i < 300; i++) {
      String ec = String.format(Locale.ROOT, "%.2f mS/cm", 1.7 + 2 * random.nextDouble());
      String low = String.format(Locale.ROOT, "%.1f", 20 + 10 * random.nextDouble());
      String high = String.format(Locale.ROOT, "%.1f", 32 + 12 * random.nextDouble());
      List<String> line = new ArrayList<>(List.of(CONTRACT));
      line.set(line.indexOf("--volume") + 1, low + ".." + high + " L");
      line.set(line.indexOf("--ec") + 1, ec);
      Cli cli = Cli.run(line.toArray(new String[0]));
      for (String key :
          List.of(
              "drain_L",
              "drain_low_L",
              "drain_high_L",
              "water_low_L",
              "concentrate_mL",
              "concentrate_low_mL",
              "concentrate_high_mL")) {
        Double amount = cli.number(key);
        assertThat(amount == 0 || amount > 1e-6).as(ec + " " + key + " " + amount).isTrue();
      }
    }
  }

  @Test
  void theMarkAsALevelIsTheMarkInLitres() {
    List<String> line =
        List.of("topup", "-p", "hard-water.yaml", "--volume", "24 L", "--ec", "1.9 mS/cm");
    List<String> level = new ArrayList<>(line);
    level.addAll(List.of("--full", "270 mm", "-f", "json"));
    List<String> plan = new ArrayList<>(line);
    plan.addAll(List.of("-f", "json"));
    assertThat(Cli.run(level.toArray(new String[0])).number("full_L"))
        .isEqualTo(Cli.run(plan.toArray(new String[0])).number("full_L"));
  }

  /** 45 L less 31 L of 1.4, by hand: 24.4 EC litres over what the recipe of 200 L adds. */
  @Test
  void byTheGram() {
    List<String> line = new ArrayList<>(List.of(CONTRACT));
    line.set(line.indexOf("--ec") + 1, "1.4 mS/cm");
    line.subList(line.indexOf("--rate"), line.indexOf("--format")).clear();
    line.addAll(
        List.of(
            "--weigh",
            "calcium-nitrate-4h2o=180",
            "--weigh",
            "potassium-nitrate=80",
            "--makes",
            "200 L"));
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.exit).as(cli.err).isZero();
    assertThat(cli.number("drain_L")).isZero();
    assertThat(cli.number("water_L")).isCloseTo(14, within(1e-9));
    double gain = cli.number("recipe_ec_mS_cm");
    assertThat(cli.number("salts_g")).isCloseTo(260 / 200.0 * 24.4 / gain, within(1e-6));
    // second route: the EC that the ec command predicts for the recipe
    Cli ec =
        Cli.run(
            "ec",
            "--weighed",
            "calcium-nitrate-4h2o=180",
            "--weighed",
            "potassium-nitrate=80",
            "--volume",
            "200 L",
            "-f",
            "json");
    assertThat(gain).isCloseTo(ec.number("ec25_mS_cm"), within(1e-9));
    line.set(line.indexOf("--water-ec") + 1, "2.5 mS/cm");
    line.set(line.indexOf("json"), "text");
    assertThat(Cli.run(line.toArray(new String[0])).exit).isEqualTo(1);
    line.set(line.indexOf("200 L"), "1 L");
    assertThat(Cli.run(line.toArray(new String[0])).err).contains("this is a stock bottle");
  }

  @Test
  void weighedSaltsOfAPlanStayGramsInUsUnits() {
    Cli cli =
        Cli.run(
            "topup",
            "-p",
            "weighed-salts.yaml",
            "--set",
            "feed.stock={makes: 200 L, grams: {leaf-mix: 110 g, calcium-nitrate-4h2o: 90 g}}",
            "--volume",
            "20..24 L",
            "--ec",
            "650 ppm",
            "--units",
            "us");
    assertThat(cli.exit).as(cli.err).isZero();
    assertThat(cli.out)
        .startsWith(
            "Fill to the mark with 5.49 to 6.55 gal of water, stir and measure; then dissolve ")
        .contains(" g of salts.")
        .doesNotContain(" oz");
  }

  /** Each row is the answer to its own call. */
  @Test
  void manyReadings() {
    String[] calls = {"24 L", "30.5 L", "47 L"};
    Cli rows =
        Cli.piped(
            "day,volume_L\n1,24\n2,30.5\n3,47\n4,\n",
            "topup",
            "-p",
            "hard-water.yaml",
            "--ec",
            "1.9 mS/cm",
            "--column",
            "volume_L");
    String[] lines = rows.out.split("\n");
    assertThat(lines).hasSize(5);
    String[] names = lines[0].split(",");
    for (int i = 0; i < calls.length; i++) {
      Cli one =
          Cli.run(
              "topup",
              "-p",
              "hard-water.yaml",
              "--volume",
              calls[i],
              "--ec",
              "1.9 mS/cm",
              "-f",
              "json");
      String[] cells = lines[i + 1].split(",");
      for (int c = 2; c < 7; c++) {
        assertThat(Double.parseDouble(cells[c])).as(names[c]).isEqualTo(one.number(names[c]));
      }
    }
    assertThat(lines[4]).endsWith(",bad-row");
    assertThat(rows.err).contains("1 of 4 rows could not be read");
    Cli ec =
        Cli.piped(
            "meter_ppm\n950\n",
            "topup",
            "-p",
            "hard-water.yaml",
            "--volume",
            "24 L",
            "--scale",
            "500",
            "--column",
            "meter_ppm");
    assertThat(ec.out.split("\n")[1]).isEqualTo("950" + lines[1].substring("1,24".length()));
    Cli ohm =
        Cli.piped(
            "ohm\n119\nopen\n",
            "topup",
            "-p",
            "hard-water.yaml",
            "--ec",
            "1.9 mS/cm",
            "--column",
            "ohm");
    assertThat(ohm.out.split("\n")[2]).isEqualTo("open,,,,,,,,,,,,open");
    assertThat(ohm.out.split("\n")[1]).endsWith(",reached");
  }

  /** 24 L are 6.34 US gal (231 cubic inches each, exactly): a column of them is no sender. */
  @Test
  void aColumnIsWhatItsNameSays() {
    String[] call = {"topup", "-p", "hard-water.yaml", "--ec", "1.9 mS/cm", "--column", ""};
    for (String name : List.of("tank_L", "litres", "volume_gal", "gal")) {
      call[6] = name;
      String volume = name.endsWith("gal") ? String.valueOf(24 / 3.785411784) : "24";
      String[] cells = Cli.piped(name + "\n" + volume + "\n", call).out.split("\n")[1].split(",");
      String[] litres =
          Cli.piped("tank_L\n24\n", with(call, "tank_L")).out.split("\n")[1].split(",");
      for (int c = 1; c < 6; c++) {
        assertThat(Double.parseDouble(cells[c]))
            .as(name)
            .isCloseTo(Double.parseDouble(litres[c]), org.assertj.core.api.Assertions.within(1e-6));
      }
    }
    Cli both = Cli.piped("ec\n1.9\n", with(call, "ec"));
    assertThat(both.exit).isEqualTo(2);
    assertThat(both.err).contains("--ec and --column ask for different things");
  }

  private static String[] with(String[] call, String column) {
    String[] other = call.clone();
    other[6] = column;
    return other;
  }

  /** The mix of 24 L at pH 5.8 and 20 L of the plan's water, by the trade; words by the limits. */
  @Test
  void thePhOfTheMix() {
    Cli cli =
        Cli.run(
            "topup",
            "-p",
            "hard-water.yaml",
            "--volume",
            "24 L",
            "--ec",
            "1.9 mS/cm",
            "-f",
            "json");
    double wanted =
        leat.solution.acid.MixedWater.of(
                24, 5.8, cli.number("water_L"), 14 * 1000 / 2804.0, 7.5, 14)
            .ph();
    assertThat(cli.number("ph_mixed")).isCloseTo(wanted, within(2e-3));
    assertThat(cli.number("ph_open_air_420ppm")).isGreaterThan(cli.number("ph_open_air_2000ppm"));
  }

  /** Second route: each reading asked by itself. */
  @Test
  void saltsByTheGramForManyReadings() {
    String[] recipe = {
      "--plan",
      "weighed-salts.yaml",
      "--ec",
      "650 ppm",
      "--weigh",
      "leaf-mix=110",
      "--weigh",
      "calcium-nitrate-4h2o=90",
      "--makes",
      "200 L",
      "--format"
    };
    String[] rows = {"topup", "--column", "tank_L"};
    leat.cli.Cli many = leat.cli.Cli.piped("t,tank_L\n1,30\n2,20\n", join(rows, recipe, "csv"));
    assertThat(many.exit).as(many.err).isZero();
    String[] lines = many.out.split("\n");
    int at = java.util.List.of(lines[0].split(",")).indexOf("leaf-mix_g");
    for (int i = 1; i <= 2; i++) {
      String[] one = {"topup", "--volume", i == 1 ? "30 L" : "20 L"};
      String said = leat.cli.Cli.run(join(one, recipe, "csv")).out;
      assertThat(said).contains("leaf-mix," + lines[i].split(",")[at]);
    }
  }

  private static String[] join(String[] first, String[] then, String last) {
    java.util.List<String> all = new java.util.ArrayList<>(java.util.List.of(first));
    all.addAll(java.util.List.of(then));
    all.add(last);
    return all.toArray(new String[0]);
  }

  @Test
  void rainThatOnlyTheTankShows() {
    leat.cli.Cli said =
        leat.cli.Cli.run(
            "topup",
            "--plan",
            "hard-water.yaml",
            "--volume",
            "43 L",
            "--ec",
            "1.4 mS/cm",
            "--was",
            "44 L",
            "--was-ec",
            "1.6 mS/cm",
            "--format",
            "json");
    assertThat(said.exit).as(said.err).isZero();
    double rain = said.number("rain_since_L");
    double drunk = said.number("drunk_since_L");
    assertThat(44 - drunk + rain).isCloseTo(43, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(44 * 1.6 - drunk * 0.75 * 1.6 + rain * leat.solution.tank.Topup.RAIN_EC_MS_CM)
        .isCloseTo(43 * 1.4, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(said.out).contains("rain-seen");
  }
}
