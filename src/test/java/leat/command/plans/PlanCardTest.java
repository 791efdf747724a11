package leat.command.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** {@code leat plan card}: its numbers are those of topup, tank and log; the file is whole. */
class PlanCardTest {
  /** Height of A4 less the margin under the strip, mm: where the floor of the tank is drawn. */
  private static final double FLOOR_A4 = 297 - 14;

  private static Document page(String... line) throws Exception {
    List<String> words = new ArrayList<>(List.of("plan", "card", "--date", "2027-04-02"));
    words.addAll(List.of(line));
    Cli ran = Cli.run(words.toArray(new String[0]));
    assertThat(ran.exit).as(ran.err).isZero();
    return parsed(ran.out);
  }

  /** Well-formed as XML, too; nothing of it asks for anything from elsewhere or runs. */
  private static Document parsed(String html) throws Exception {
    assertThat(html)
        .startsWith("<!DOCTYPE html>")
        .contains("Content-Security-Policy")
        .contains("default-src 'none'; script-src 'none'")
        .doesNotContain("<script")
        .doesNotContain("url(")
        .doesNotContain("@import");
    // as attributes: in the text of a name they are words
    assertThat(html).doesNotContainPattern("<[^>]* (href|src|on[a-z]+|style)=");
    assertThat(html.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:")
        .doesNotContain("https:");
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    byte[] bytes = html.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }

  @Test
  void everyExampleHasACardAndWhatItsPlanHasAStrip() throws Exception {
    try (var plans = Files.list(Path.of("examples"))) {
      for (Path plan :
          (Iterable<Path>) plans.filter(p -> p.toString().endsWith(".yaml"))::iterator) {
        String name = plan.getFileName().toString();
        Document card = page(name);
        assertThat(card.getElementsByTagName("h2").getLength()).as(name).isGreaterThan(4);
        Document strip = page(name, "--dipstick", "--paper", "letter");
        assertThat(strip.getElementsByTagName("svg").getLength()).as(name).isGreaterThan(0);
      }
    }
  }

  /**
   * Second route: the same volume and its drifted EC typed into `topup`. The EC is worked by hand:
   * full 46.07 L at 1.4, plants take 0.75 x 1.4 = 1.05 mS/cm with each litre.
   */
  @Test
  void amountsAreThoseOfTopup() {
    Cli card = Cli.run("plan", "card", "balcony.yaml", "-f", "csv");
    List<String> rows = card.out.lines().skip(1).toList();
    assertThat(rows).hasSizeBetween(6, 14);
    double full =
        Cli.run("tank", "-p", "balcony.yaml", "--level", "280 mm", "-f", "json").number("volume_L");
    for (String row : rows) {
      String[] cells = row.split(",");
      double volume = Double.parseDouble(cells[4]);
      double ec = (1.4 * full - 1.05 * (full - volume)) / volume;
      Cli topup =
          Cli.run(
              "topup",
              "-p",
              "balcony.yaml",
              "--volume",
              volume + " L",
              "--ec",
              ec + " mS/cm",
              "-f",
              "json");
      assertThat(Double.parseDouble(cells[7])).isCloseTo(topup.number("drain_L"), within(1e-6));
      assertThat(Double.parseDouble(cells[8])).isCloseTo(topup.number("water_L"), within(1e-6));
      assertThat(Double.parseDouble(cells[9]))
          .isCloseTo(topup.number("concentrate_mL"), within(1e-4));
      assertThat(Double.parseDouble(cells[10])).isCloseTo(topup.number("part_mL"), within(1e-4));
    }
  }

  @Test
  void wordsOfACard() throws Exception {
    String metric = page("balcony.yaml").getDocumentElement().getTextContent();
    assertThat(metric)
        .contains("refill mark")
        .contains("120 mm")
        .contains("18.3 L")
        .contains("90 s on, 12 min off")
        .contains("22:00 to 06:00")
        .contains("1.40 mS/cm, good from 1.00 to 2.20 mS/cm")
        .contains("no water at the cap")
        .contains("look at the pump now, roots dry out")
        .contains("Mains near water kills")
        .contains("Every 21 d: change the whole tank.")
        .contains("Left out, because the plan lacks it: EC meter (needs meters.ec.slope)")
        .contains("Made on 2027-04-02 by leat plan card from balcony.yaml");
    String us =
        page("balcony.yaml", "--units", "us").getElementsByTagName("main").item(0).getTextContent();
    assertThat(us).contains("4.72 in").contains("4.84 gal").contains("bottle 1, floz");
    assertThat(us).doesNotContain(" mm").doesNotContain(" L,").doesNotContain(" mL");
    String sender = page("sender-tub.yaml").getDocumentElement().getTextContent();
    assertThat(sender).contains("1020 - 1088").contains("feed (needs feed.parts)");
  }

  /** The first remedies of the card are those that `log --alarm` prints. */
  @Test
  void alarmsAreThoseOfTheLog() throws Exception {
    String card = page("logged-tub.yaml").getDocumentElement().getTextContent();
    String log =
        Cli.run(
                "log",
                "week-log.csv",
                "-p",
                "logged-tub.yaml",
                "--alarm",
                "--days-left",
                "30",
                "--now",
                "2030-01-01T00:00Z")
            .out;
    assertThat(log).contains("log-silent").contains(": look at the logger");
    assertThat(card).contains("look at the logger");
  }

  @Test
  void namesShowAsText() throws Exception {
    Path plan = folder.resolve("hostile.yaml");
    String evil = "</title><script>x</script><img src=x onerror=alert(1)>";
    Files.writeString(
        plan,
        Files.readString(Path.of("examples/balcony.yaml"))
            .replace(
                "weather-seattle.csv",
                Path.of("examples/weather-seattle.csv").toAbsolutePath().toString())
            .replace("name: a balcony tower", "name: '" + evil + "'")
            .replace("name: bottle 1", "name: '<b onclick=x>" + "w".repeat(100_000) + "'"));
    Document card = page(plan.toString());
    assertThat(card.getElementsByTagName("h1").item(0).getTextContent())
        .startsWith("</title><script>");
    assertThat(card.getElementsByTagName("b").getLength()).isZero();
    Document strip = page(plan.toString(), "--dipstick");
    assertThat(strip.getElementsByTagName("img").getLength()).isZero();
  }

  @TempDir Path folder;

  /** Each line of volume stands where `tank --volume` says, in mm over the floor. */
  @Test
  void theStripIsTrue() throws Exception {
    Document strip = page("first-tower.yaml", "--dipstick");
    NodeList sheets = strip.getElementsByTagName("svg");
    assertThat(sheets.getLength()).isEqualTo(2);
    Element first = (Element) sheets.item(0);
    assertThat(first.getAttribute("width")).isEqualTo("210.000mm");
    assertThat(first.getAttribute("viewBox")).isEqualTo("0 0 210.000 296.600");
    assertThat(first.getAttribute("height")).isEqualTo("296.600mm");
    int litres = 0;
    for (Element line : lines(first, "volume")) {
      litres++;
      double mm = FLOOR_A4 - Double.parseDouble(line.getAttribute("y1"));
      Cli tank = Cli.run("tank", "-p", "first-tower.yaml", "--volume", litres + " L", "-f", "json");
      assertThat(mm).as(litres + " L").isCloseTo(tank.number("level_mm"), within(0.001));
    }
    assertThat(litres).isGreaterThan(40);
    assertThat(lines(first, "level").get(1).getAttribute("y1")).isEqualTo("273.000");
    assertThat(lines(first, "across")).hasSize(1);
    assertThat(lines((Element) sheets.item(1), "across")).hasSize(3);
    // the sheets overlap by 10 mm: the second begins at 269 - 10 mm over the floor
    double full =
        Double.parseDouble(lines((Element) sheets.item(1), "across").get(0).getAttribute("y1"));
    assertThat(FLOOR_A4 - full + 259).isCloseTo(270, within(0.001));
    double joinLow = Double.parseDouble(lines(first, "join").get(0).getAttribute("y1"));
    double joinHigh =
        Double.parseDouble(lines((Element) sheets.item(1), "join").get(0).getAttribute("y1"));
    assertThat(FLOOR_A4 - joinLow).isCloseTo(FLOOR_A4 - joinHigh + 259, within(0.001));
    assertThat(((Element) first.getElementsByTagName("path").item(0)).getAttribute("d"))
        .contains("h100.000");
  }

  private static List<Element> lines(Element sheet, String kind) {
    List<Element> found = new ArrayList<>();
    NodeList all = sheet.getElementsByTagName("line");
    for (int i = 0; i < all.getLength(); i++) {
      if (((Element) all.item(i)).getAttribute("class").equals(kind)) {
        found.add((Element) all.item(i));
      }
    }
    return found;
  }

  @Test
  void aTankOfUnknownShapeIsToldByReading() throws Exception {
    Cli ran = Cli.run("plan", "card", "poured-tub.yaml", "--dipstick");
    assertThat(ran.err).contains("the tank's shape is not known");
    String words = parsed(ran.out).getDocumentElement().getTextContent();
    assertThat(words).contains("82.1 ohm").contains("No scale of heights");
    String csv = Cli.run("plan", "card", "poured-tub.yaml", "--dipstick", "-f", "csv").out;
    Cli level = Cli.run("level", "82.1", "-p", "poured-tub.yaml", "-f", "json");
    assertThat(csv)
        .contains(
            ","
                + text(level.number("volume_low_L"))
                + ","
                + text(level.number("volume_high_L"))
                + ",82.1");
  }

  private static String text(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  @Test
  void refusalsAndForms() {
    assertThat(Cli.run("plan", "card").exit).isEqualTo(2);
    Cli high =
        Cli.run(
            "plan",
            "card",
            "first-tower.yaml",
            "--dipstick",
            "--set",
            "tank={shape: cylinder, diameter: 1 m, height: 9 m}");
    assertThat(high.exit).isEqualTo(2);
    assertThat(high.err).contains("26 sheets");
    Cli json = Cli.run("plan", "card", "sender-tub.yaml", "-f", "json");
    assertThat(json.out).contains("\"amounts\": [").contains("\"needs\": \"feed.parts\"");
    assertThat(Cli.run("plan", "card", "sender-tub.yaml", "-f", "html").out)
        .isEqualTo(Cli.run("plan", "card", "sender-tub.yaml").out);
  }
}
