package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;

/** {@code leat topup} where the feed is weighed: rain, cans, and what to do next. */
class TopupBySaltsTest {
  private static final String STOCK =
      "feed.stock={makes: 200 L, grams: {leaf-mix: 110 g, calcium-nitrate-4h2o: 90 g}}";

  private static Cli topup(String... more) {
    List<String> line =
        new ArrayList<>(List.of("topup", "-p", "weighed-salts.yaml", "--set", STOCK));
    line.addAll(List.of(more));
    return Cli.run(line.toArray(new String[0]));
  }

  /** By hand: the rain takes the room of as much water, and its EC counts. */
  @Test
  void rainCounts() {
    Cli dry = topup("--volume", "30 L", "--ec", "1.4 mS/cm", "-f", "json");
    Cli wet =
        topup(
            "--volume",
            "30 L",
            "--ec",
            "1.4 mS/cm",
            "--rain",
            "3 L",
            "--rain-ec",
            "0.05 mS/cm",
            "-f",
            "json");
    assertThat(wet.exit).as(wet.err).isZero();
    assertThat(wet.number("water_L")).isCloseTo(dry.number("water_L") - 3, within(1e-9));
    double grams = 200.0 / 200 * 3 * (0.21 - 0.05) / dry.number("recipe_ec_mS_cm");
    assertThat(dry.number("water_ec_mS_cm")).isEqualTo(0.21);
    assertThat(wet.number("salts_g") - dry.number("salts_g")).isCloseTo(grams, within(1e-6));
    assertThat(wet.number("after_rain_L")).isCloseTo(33, within(1e-9));
    Cli text = topup("--volume", "43 L", "--ec", "1.4 mS/cm", "--rain", "5 L");
    assertThat(text.out).contains("after the rain").contains("ran over: 3.20 L");
  }

  @Test
  void rowsKnowTheRainToo() {
    Cli rows =
        Cli.piped(
            "tank_L\n30\n",
            "topup",
            "-p",
            "weighed-salts.yaml",
            "--set",
            STOCK,
            "--ec",
            "1.4 mS/cm",
            "--rain",
            "3 L",
            "--column",
            "tank_L");
    Cli one = topup("--volume", "30 L", "--ec", "1.4 mS/cm", "--rain", "3 L", "-f", "json");
    String[] names = rows.out.split("\n")[0].split(",");
    String[] cells = rows.out.split("\n")[1].split(",", -1);
    assertThat(Double.parseDouble(cells[List.of(names).indexOf("salts_g")]))
        .isCloseTo(one.number("salts_g"), within(1e-9));
  }

  @Test
  void waterIsCarriedInCans() {
    String[] line = {"--volume", "30 L", "--ec", "1.4 mS/cm", "--can", "4 L"};
    Cli text = topup(line);
    // 44.8 L full less 30 is 14.8: three cans of 4 L and 2.8 L
    assertThat(text.out).contains("4 cans, the last with 2.80 L");
    Cli json = topup("--volume", "30 L", "--ec", "1.4 mS/cm", "--can", "4 L", "-f", "json");
    assertThat(json.number("cans")).isEqualTo(4);
    assertThat(json.number("ph_mixed")).isNotNull();
  }

  /** Each Next line is typed: it answers, and the filled tank wants neither water nor a drain. */
  @Test
  void whatIsProposedHelps() {
    Cli band = topup("--volume", "28..33 L", "--ec", "1.4 mS/cm");
    String[] next = band.out.substring(band.out.indexOf("Next: ")).split("Next: ");
    assertThat(next[1]).contains(" --ec READING");
    Cli filled = type(next[1].replace("READING", "\"1.2 mS/cm\""));
    assertThat(filled.exit).as(filled.err).isZero();
    assertThat(filled.out).startsWith("Dissolve ").contains("Drain nothing").doesNotContain("over");
    Cli elements = type(next[2]);
    assertThat(elements.exit).as(elements.err).isZero();
    assertThat(elements.out).startsWith("These 200 g of 2 salts in 200 L make an EC of about");
    Cli one = topup("--volume", "30 L", "--ec", "1.4 mS/cm");
    String[] then = one.out.substring(one.out.indexOf("Next: ")).split("Next: ");
    assertThat(then[1]).contains(" --acid ... ");
    Cli acid = type(then[1].replace("...", "citric"));
    assertThat(acid.exit).as(acid.err).isZero();
  }

  private static Cli type(String next) {
    String line = next.replace("\\\n", " ").split(" {3}")[0].strip();
    List<String> words = new ArrayList<>();
    java.util.regex.Matcher m =
        java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line);
    while (m.find()) {
      words.add(m.group(1) != null ? m.group(1) : m.group(2));
    }
    return Cli.run(words.subList(1, words.size()).toArray(new String[0]));
  }

  @Test
  void moreThanTheMarkIsSaid() {
    Cli over = topup("--volume", "47 L", "--ec", "2.6 mS/cm");
    assertThat(over.out)
        .contains("it stands over the full mark already")
        .contains("give it to the beds, not to a pond");
  }

  /** A heading says litres by its end, also in brackets; what no sender reads is refused. */
  @Test
  void headingsOfRows() {
    for (String heading : List.of("tub (L)", "tank_L", "in the tub [litres]")) {
      Cli cli = rows(heading, "30");
      assertThat(cli.exit).as(heading + cli.err).isZero();
      assertThat(cli.out).as(heading).contains(",reached,");
    }
    for (String heading : List.of("level_mm", "in it")) {
      Cli cli = rows(heading, "190");
      assertThat(cli.exit).isEqualTo(2);
      assertThat(cli.err)
          .startsWith("--column \"" + heading + "\": its name should end in what it holds");
    }
  }

  private static Cli rows(String heading, String cell) {
    return Cli.piped(
        "t," + heading + "\n1," + cell + "\n",
        "topup",
        "-p",
        "weighed-salts.yaml",
        "--set",
        STOCK,
        "--ec",
        "1.4 mS/cm",
        "--column",
        heading);
  }

  @Test
  void aSaltUnderTwoNames() {
    Cli cli =
        Cli.run(
            "topup",
            "-p",
            "weighed-salts.yaml",
            "--volume",
            "30 L",
            "--ec",
            "1.4 mS/cm",
            "--weigh",
            "saltpetre=30",
            "--weigh",
            "potassium-nitrate=10",
            "--makes",
            "100 L");
    assertThat(cli.exit).isEqualTo(2);
    assertThat(cli.err).contains("\"potassium-nitrate\" is named twice");
  }

  /** What would be left out is refused: a label's flags beside salts, a recipe's without any. */
  @Test
  void flagsOfTheOtherFeed() {
    String[] volume = {"--volume", "30 L", "--ec", "1.4 mS/cm"};
    for (String flag : List.of("--rate-ec=2 mS/cm", "--parts=2")) {
      String[] line = {volume[0], volume[1], volume[2], volume[3], flag};
      assertThat(topup(line).err).as(flag).startsWith("leat topup: --rate is needed");
    }
    Cli both =
        topup(
            "--volume",
            "30 L",
            "--ec",
            "1.4 mS/cm",
            "--weigh",
            "saltpetre=30",
            "--makes",
            "100 L",
            "--rate",
            "5 mL/L");
    assertThat(both.err).contains("--rate and --weigh ask for different things");
    Cli bought =
        Cli.run(
            "topup",
            "-p",
            "hard-water.yaml",
            "--volume",
            "30 L",
            "--ec",
            "1.4 mS/cm",
            "--makes",
            "100 L");
    assertThat(bought.err).startsWith("leat topup: --weigh is needed");
  }

  /** A row over the rim is bad, as the same volume typed is refused: the tub holds 52.8 L. */
  @Test
  void aRowOverTheRim() {
    Cli cli = rows("tank_L", "30\n2,90");
    assertThat(cli.exit).as(cli.err).isZero();
    assertThat(cli.out.split("\n")[2]).contains("bad-row");
    assertThat(cli.err).contains("the tank holds 52.8 L to the rim; got \"90\"");
  }

  @Test
  void aFullMarkOverTheRim() {
    assertThat(topup("--volume", "30 L", "--ec", "1.4 mS/cm", "--full", "100 L").err)
        .startsWith("--full: the tank holds 52.8 L to the rim; got \"100 L\"");
    assertThat(topup("--volume", "30 L", "--ec", "1.4 mS/cm", "--full", "400 mm").err)
        .startsWith("--full \"400 mm\": it lies above the rim of the tank");
  }

  @Test
  void theClockBelongsToALog() {
    assertThat(topup("--volume", "30 L", "--ec", "1.4 mS/cm", "--now", "2027-06-01").err)
        .contains("--now belongs to --log");
  }
}
