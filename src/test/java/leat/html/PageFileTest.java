package leat.html;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.TreeSet;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The page as a file, without a browser. */
class PageFileTest {
  @Test
  void isWellFormedAndAsksForNothing() throws Exception {
    for (String[] line : Drawn.lines()) {
      isWellFormed(Pages.of(line));
    }
  }

  private static void isWellFormed(String page) throws Exception {
    Element root = Pages.parsed(page).getDocumentElement();
    assertThat(root.getElementsByTagName("h1").getLength()).isEqualTo(1);
    assertThat(root.getElementsByTagName("h1").item(0).getTextContent()).isNotBlank();
    assertThat(page)
        .doesNotContain("http:", "https:", "@import", "url(", " href=", " src=", " style=");
    Set<String> ids = new TreeSet<>();
    NodeList all = root.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      Element one = (Element) all.item(i);
      if (one.hasAttribute("id")) {
        assertThat(ids.add(one.getAttribute("id"))).as(one.getAttribute("id")).isTrue();
      }
    }
    boolean drawn = page.contains("id=\"charts\"");
    assertThat(page.contains("Permission is hereby granted")).isEqualTo(drawn);
  }

  @Test
  void seasonsPointsAreThoseOfTheCsv() {
    String csv = Ran.run("season", "balcony.yaml", "--format", "csv").out();
    String page = Pages.of("season", "balcony.yaml");
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(200_000);
    JsonNode charts = Pages.charts(page);
    assertThat(charts).hasSize(3);
    JsonNode litres = charts.get(0).get("data");
    assertThat(Pages.numbers(litres.get(1))).isEqualTo(Pages.column(csv, "volume_L"));
    assertThat(Pages.numbers(litres.get(2))).isEqualTo(Pages.column(csv, "low_L"));
    assertThat(Pages.numbers(charts.get(1).get("data").get(Pages.column(charts.get(1), "line"))))
        .isEqualTo(Pages.column(csv, "ec_mS_cm"));
    String[] rows = csv.split("\n");
    double[] days = Pages.numbers(litres.get(0));
    for (int i = 0; i < days.length; i++) {
      LocalDate day = LocalDate.parse(rows[i + 1].split(",")[0]);
      assertThat(days[i]).isEqualTo((double) day.atStartOfDay().toEpochSecond(ZoneOffset.UTC));
    }
    double[] spent = Pages.numbers(charts.get(2).get("data").get(1));
    double cost =
        Ran.run("season", "balcony.yaml", "--format", "json").json().get("cost_season").asDouble();
    assertThat(spent[spent.length - 1])
        .isCloseTo(cost, org.assertj.core.data.Offset.offset(1e-9 * cost));
  }

  @Test
  void pumpAndRisersMeetWhereTheCsvSays() {
    String csv = Ran.run("pump", "--plan", "first-tower.yaml", "--format", "csv").out();
    JsonNode chart = Pages.charts(Pages.of("pump", "--plan", "first-tower.yaml")).get(0);
    int at = Pages.column(chart, "points");
    double[] flows = Pages.column(csv, "flow_L_min");
    double[] heads = Pages.column(csv, "head_m");
    double[] xs = Pages.numbers(chart.get("data").get(0));
    double[] ys = Pages.numbers(chart.get("data").get(at));
    int found = 0;
    for (int i = 0; i < xs.length; i++) {
      for (int k = 0; k < flows.length; k++) {
        found += xs[i] == flows[k] && ys[i] == heads[k] ? 1 : 0;
      }
    }
    assertThat(found).isEqualTo(2);
  }

  @Test
  void checkDrawsEveryRuleThatHasALimit() {
    JsonNode rows = Ran.run("check", "terrace.yaml", "--format", "json").json();
    int wanted = 0;
    for (JsonNode row : rows) {
      boolean judged = Set.of("pass", "warn", "fail").contains(row.get("verdict").asText());
      boolean held = row.get("value").isNumber() && row.get("limit").asDouble() != 0;
      wanted += judged && held ? 1 : 0;
    }
    JsonNode chart = Pages.charts(Pages.of("check", "terrace.yaml")).get(0);
    assertThat(chart.get("x").get("names")).hasSize(wanted);
    assertThat(wanted).isGreaterThan(20);
  }

  @Test
  void unitsOfTheReader() {
    String page = Pages.of("season", "balcony.yaml", "--units", "us");
    assertThat(Pages.charts(page).get(0).get("y").get("unit").asText()).isEqualTo("gal");
    assertThat(page).contains(", gal</th>");
  }

  /** A plan from elsewhere shows as text, whatever its names are. */
  @Test
  void hostileNamesAreText(@TempDir Path folder) throws Exception {
    String page = Pages.of("check", Hostile.plan(folder).toString());
    Element root = Pages.parsed(page).getDocumentElement();
    assertThat(root.getElementsByTagName("img").getLength()).isZero();
    assertThat(root.getElementsByTagName("script").getLength()).isEqualTo(2);
    assertThat(root.getTextContent()).contains(Hostile.NAME);
    assertThat(page).doesNotContain("<img", "</script><", "javascript:alert(1)\"");
  }

  @Test
  void namesNoFolderOfTheMachine(@TempDir Path folder) throws Exception {
    Path plan = folder.resolve("with space/far");
    Files.createDirectories(plan);
    plan = Files.copy(Path.of("examples/first-tower.yaml"), plan.resolve("near.yaml"));
    String page = Pages.of("pump", "--plan", plan.toString());
    assertThat(page).contains("near.yaml").doesNotContain(folder.toString(), "with space", "/tmp");
  }

  @Test
  void quietLeavesOutWhatTextLeavesOut() {
    assertThat(Pages.of("pump", "--plan", "first-tower.yaml", "-q"))
        .doesNotContain("<h2>Taken", "<h2>Next", "drains back is riser");
    assertThat(Pages.of("ec", "1.85 mS/cm", "--at", "18 C", "--explain")).contains("<h2>Working");
  }
}
