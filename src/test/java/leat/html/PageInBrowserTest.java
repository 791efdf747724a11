package leat.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages in a real browser; skipped where none is installed. */
class PageInBrowserTest {
  private static final int WIDE = 1000;
  private static final int PHONE = 360;

  /** A4 less margins of 15 mm at 96 px an inch, px: 180 mm. */
  private static final int PAPER = 680;

  @TempDir Path folder;
  private Browser browser;

  @BeforeEach
  void open() {
    browser = Browser.orNull();
    assumeTrue(browser != null, "no browser");
  }

  private Browser.Tab tab(int width, boolean dark, String... line) {
    String page = Pages.of(line);
    return browser.open(Pages.file(folder, "page.html", page), width, dark);
  }

  /** Points drawn and ends of the axes are those of the answer, and nothing is complained of. */
  @Test
  void everyChartIsDrawn() throws IOException {
    for (String[] line : Drawn.lines()) {
      String page = Pages.of(line);
      JsonNode charts = Pages.charts(page);
      try (Browser.Tab tab = browser.open(Pages.file(folder, "p.html", page), WIDE, false)) {
        assertThat(tab.eval("document.querySelectorAll('.uplot canvas').length").asInt())
            .as(String.join(" ", line))
            .isEqualTo(charts.size());
        for (int i = 0; i < charts.size(); i++) {
          JsonNode chart = charts.get(i);
          String plot = "document.querySelectorAll('.chart')[" + i + "].plot";
          assertThat(tab.eval(plot + ".data.map(c => c.length)").toString())
              .isEqualTo(lengths(chart));
          assertThat(tab.eval(plot + ".scales.y.min").asDouble())
              .isEqualTo(chart.get("y").get("min").asDouble());
          assertThat(tab.eval(plot + ".scales.y.max").asDouble())
              .isEqualTo(chart.get("y").get("max").asDouble());
          if (!chart.get("x").has("names")) {
            assertThat(tab.eval(plot + ".scales.x.min").asDouble())
                .isEqualTo(chart.get("x").get("min").asDouble());
            assertThat(tab.eval(plot + ".scales.x.max").asDouble())
                .isEqualTo(chart.get("x").get("max").asDouble());
          }
          assertThat(tab.eval(inked(i)).asInt()).as("pixels of the series").isGreaterThan(30);
        }
        assertThat(tab.complaints()).as(String.join(" ", line)).isEmpty();
      }
    }
  }

  private static String lengths(JsonNode chart) {
    List<Integer> lengths = new ArrayList<>();
    chart.get("data").forEach(column -> lengths.add(column.size()));
    return lengths.toString().replace(" ", "");
  }

  /** Pixels of a canvas in the colour of its first series. */
  private static String inked(int i) {
    return """
        (function () {
          var u = document.querySelectorAll('.chart')[%d].plot;
          var shown = u.series.slice(1).find(s => s.show && s._stroke && /^#/.test(s._stroke));
          var c = (shown || {_stroke: '#000000'})._stroke;
          var want = [1, 3, 5].map(k => parseInt(c.slice(k, k + 2), 16));
          var d = u.ctx.getImageData(0, 0, u.ctx.canvas.width, u.ctx.canvas.height).data;
          var n = 0;
          for (var k = 0; k < d.length; k += 4)
            if (Math.abs(d[k] - want[0]) + Math.abs(d[k + 1] - want[1]) + Math.abs(d[k + 2] - want[2]) < 12) n++;
          return n;
        })()"""
        .formatted(i);
  }

  @Test
  void sortsFiltersHidesZoomsAndTells() {
    try (Browser.Tab tab = tab(WIDE, false, "season", "balcony.yaml")) {
      sorts(tab);
      filters(tab);
      hides(tab);
      zooms(tab);
      keys(tab);
      assertThat(tab.complaints()).isEmpty();
    }
  }

  private static void sorts(Browser.Tab tab) {
    String cells =
        "Array.from(document.querySelectorAll('table.sorts tbody tr')).map(r => Number(r.cells[4].textContent))";
    double[] before = Pages.numbers(tab.eval(cells));
    String button = "document.querySelectorAll('table.sorts thead button')[4]";
    assertThat(tab.eval(button + ".textContent").asText()).isEqualTo("drunk, L");
    tab.eval(button + ".click()");
    double[] up = before.clone();
    java.util.Arrays.sort(up);
    assertThat(Pages.numbers(tab.eval(cells))).isEqualTo(up).isNotEqualTo(before);
    assertThat(tab.eval(button + ".closest('th').getAttribute('aria-sort')").asText())
        .isEqualTo("ascending");
    tab.eval(button + ".click()");
    double[] down = Pages.numbers(tab.eval(cells));
    assertThat(down[0]).isEqualTo(up[up.length - 1]);
    assertThat(down[down.length - 1]).isEqualTo(up[0]);
  }

  private static void filters(Browser.Tab tab) {
    tab.eval(
        "(f => { f.value = 'change'; f.dispatchEvent(new Event('input')); })(document.querySelector('.filter'))");
    String shown =
        "Array.from(document.querySelectorAll('table.sorts tbody tr')).filter(r => !r.hidden)";
    int rows = tab.eval(shown + ".length").asInt();
    assertThat(rows).isBetween(1, 30);
    assertThat(tab.eval(shown + ".every(r => r.textContent.includes('change'))").asBoolean())
        .isTrue();
    assertThat(tab.eval("document.querySelector('.count').textContent").asText())
        .startsWith(rows + " of ");
  }

  private static void hides(Browser.Tab tab) {
    String key = "document.querySelectorAll('.chart')[0].querySelectorAll('.key')[0]";
    tab.eval(key + ".click()");
    assertThat(tab.eval("document.querySelectorAll('.chart')[0].plot.series[1].show").asBoolean())
        .isFalse();
    assertThat(tab.eval(key + ".getAttribute('aria-pressed')").asText()).isEqualTo("false");
    tab.eval(key + ".click()");
    assertThat(tab.eval("document.querySelectorAll('.chart')[0].plot.series[1].show").asBoolean())
        .isTrue();
  }

  private static void zooms(Browser.Tab tab) {
    String plot = "document.querySelectorAll('.chart')[0].plot";
    double all = tab.eval(plot + ".scales.x.max - " + plot + ".scales.x.min").asDouble();
    JsonNode over =
        tab.eval(
            "(r => [r.left, r.top, r.width, r.height])(" + plot + ".over.getBoundingClientRect())");
    double left = over.get(0).asDouble();
    double middle = over.get(1).asDouble() + over.get(3).asDouble() / 2;
    double width = over.get(2).asDouble();
    tab.mouse("mouseMoved", left + width / 2, middle);
    tab.waitFor("document.querySelector('.read').textContent.includes('in the evening')");
    tab.mouse("mousePressed", left + width * 0.25, middle);
    tab.mouse("mouseMoved", left + width * 0.5, middle);
    tab.mouse("mouseReleased", left + width * 0.5, middle);
    tab.waitFor(plot + ".scales.x.max - " + plot + ".scales.x.min < " + all * 0.3);
    tab.eval(
        "document.querySelectorAll('.chart')[0].querySelector('[aria-label=\"Show all\"]').click()");
    tab.waitFor(plot + ".scales.x.max - " + plot + ".scales.x.min === " + all);
  }

  /** By keys: the value read out is that of the data. */
  private static void keys(Browser.Tab tab) {
    tab.eval("document.querySelectorAll('.chart')[1].focus()");
    tab.key("ArrowRight");
    tab.key("ArrowRight");
    String read = "document.querySelectorAll('.chart')[1].querySelector('.read').textContent";
    tab.waitFor(read + ".includes('mS/cm')");
    double ec = tab.eval("document.querySelectorAll('.chart')[1].plot.data[3][1]").asDouble();
    String told = tab.eval(read).asText();
    assertThat(told).startsWith("2027-04-13: ").contains("EC in the evening ");
    double said = Double.parseDouble(told.replaceAll(".*evening ([0-9.]+).*", "$1"));
    assertThat(said).isCloseTo(ec, org.assertj.core.data.Offset.offset(0.005));
  }

  @Test
  void fitsAPhone() {
    for (String[] line : Drawn.lines()) {
      try (Browser.Tab tab = tab(PHONE, false, line)) {
        assertThat(tab.eval("document.documentElement.scrollWidth").asInt())
            .as(String.join(" ", line))
            .isLessThanOrEqualTo(PHONE);
      }
    }
  }

  /** WCAG 2.1, 1.4.3 and 1.4.11: 4.5 for text, 3 for what is drawn. */
  @Test
  void contrastIsEnoughInBothThemes() {
    for (boolean dark : new boolean[] {false, true}) {
      for (String[] line : Drawn.lines()) {
        try (Browser.Tab tab = tab(WIDE, dark, line)) {
          JsonNode found = tab.eval(CONTRAST);
          assertThat(found.get("texts").asInt()).isGreaterThan(20);
          assertThat(found.get("poor").toString()).as(String.join(" ", line)).isEqualTo("[]");
          assertThat(found.get("dark").asBoolean()).isEqualTo(dark);
        }
      }
    }
  }

  private static final String CONTRAST =
      """
      (function () {
        function parts(c) { return c.match(/[0-9.]+/g).map(Number); }
        function lum(c) {
          var v = parts(c).slice(0, 3).map(x => { x /= 255; return x <= 0.04045 ? x / 12.92 : Math.pow((x + 0.055) / 1.055, 2.4); });
          return 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2];
        }
        function ratio(a, b) { var x = lum(a), y = lum(b); return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05); }
        function behind(e) {
          for (; e; e = e.parentElement) {
            var c = getComputedStyle(e).backgroundColor, p = parts(c);
            if (p.length < 4 || p[3] > 0) return c;
          }
          return 'rgb(255,255,255)';
        }
        var poor = [], texts = 0;
        document.querySelectorAll('body *').forEach(e => {
          var own = Array.from(e.childNodes).some(n => n.nodeType === 3 && n.textContent.trim());
          if (!own || e.tagName === 'SCRIPT' || !e.getClientRects().length) return;
          texts++;
          var r = ratio(getComputedStyle(e).color, behind(e));
          if (r < 4.5) poor.push(e.tagName + '.' + e.className + ' ' + r.toFixed(2));
        });
        document.querySelectorAll('.key svg').forEach(e => {
          var r = ratio(getComputedStyle(e).color, getComputedStyle(document.documentElement).backgroundColor);
          if (r < 3) poor.push('series ' + r.toFixed(2));
        });
        return {poor: poor, texts: texts, dark: lum(getComputedStyle(document.documentElement).backgroundColor) < 0.2};
      })()""";

  /** What can be operated has a name in the browser's own tree for screen readers. */
  @Test
  void everythingOperableHasAName() {
    for (String[] line : Drawn.lines()) {
      try (Browser.Tab tab = tab(WIDE, false, line)) {
        JsonNode nodes = tab.send("Accessibility.getFullAXTree", Map.of()).get("nodes");
        int named = 0;
        for (JsonNode node : nodes) {
          String role = node.path("role").path("value").asText();
          if (Set.of(
                      "button",
                      "searchbox",
                      "region",
                      "table",
                      "heading",
                      "columnheader",
                      "DisclosureTriangle")
                  .contains(role)
              && !role.equals("table")) {
            assertThat(node.path("name").path("value").asText())
                .as(role + " of " + String.join(" ", line))
                .isNotBlank();
            named++;
          }
        }
        assertThat(named).isGreaterThan(8);
      }
    }
  }

  /** On paper every line is there and nothing is cut off at the side. */
  @Test
  void printsWhole() {
    for (String[] line : Drawn.lines()) {
      try (Browser.Tab tab = tab(PAPER, false, line)) {
        String words = "document.querySelector('main').textContent";
        tab.send("Emulation.setEmulatedMedia", Map.of("media", "print"));
        assertThat(tab.eval("document.documentElement.scrollWidth").asInt())
            .as(String.join(" ", line))
            .isLessThanOrEqualTo(PAPER);
        assertThat(tab.eval(LOST).toString()).isEqualTo("[]");
        assertThat(tab.eval(words + ".length").asInt()).isGreaterThan(200);
        byte[] paper = tab.paper();
        assertThat(new String(paper, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(Browser.pages(paper)).isBetween(1, 20);
      }
    }
  }

  /** Lines of the answer that have no place on paper, or a narrower one than they need. */
  private static final String LOST =
      """
      Array.from(document.querySelectorAll('h1, h2, li, td, th, main p, footer p, pre')).filter(e =>
        !e.closest('.screen, details:not([open]), .read, .axis') && !e.classList.contains('read') && !e.closest('tr[hidden]')
        && e.textContent.trim() && (!e.getClientRects().length || e.scrollWidth > e.clientWidth + 1
          || e.getBoundingClientRect().right > innerWidth + 1)).map(e => e.outerHTML.slice(0, 80))""";

  @Test
  void aHostilePlanRunsNothing() throws IOException {
    String page = Pages.of("check", Hostile.plan(folder).toString());
    // even markup that slipped through would run nothing: the policy in the page stops it
    String slipped =
        page.replace(
            "</main>",
            "<img src=\"x\" onerror=\"window.hurt=2\"/><script>window.hurt=3</script></main>");
    for (String one : List.of(page, slipped)) {
      try (Browser.Tab tab = browser.open(Pages.file(folder, "h.html", one), PHONE, false)) {
        assertThat(tab.eval("document.querySelectorAll('.uplot canvas').length").asInt())
            .isEqualTo(1);
        assertThat(tab.eval("String(window.hurt)").asText()).isEqualTo("undefined");
        assertThat(tab.eval("document.title").asText()).contains(Hostile.NAME);
        if (one.equals(page)) {
          assertThat(tab.complaints()).isEmpty();
          assertThat(tab.eval("document.documentElement.scrollWidth").asInt())
              .isLessThanOrEqualTo(PHONE);
        } else {
          assertThat(tab.complaints()).anyMatch(c -> c.contains("Content Security Policy"));
        }
      }
    }
  }
}
