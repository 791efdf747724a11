package leat.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leat.cli.Cli;
import leat.html.Browser;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards and strips printed by a real browser; skipped where none is installed. */
class PaperInBrowserTest {
  private static final double INCH = 25.4;
  private static final int DPI = 300;

  @TempDir Path folder;
  private Browser browser;

  @BeforeEach
  void open() {
    browser = Browser.orNull();
    assumeTrue(browser != null, "no browser");
  }

  private byte[] printed(String... line) throws Exception {
    List<String> words = new ArrayList<>(List.of("plan", "card", "-q"));
    words.addAll(List.of(line));
    Path file = folder.resolve("page.html");
    Files.writeString(file, Cli.run(words.toArray(new String[0])).out);
    try (Browser.Tab tab = browser.open(file, 800, false)) {
      assertThat(tab.complaints()).as(String.join(" ", line)).isEmpty();
      return tab.paper();
    }
  }

  @Test
  void everyCardIsOnePage() throws Exception {
    try (var plans = Files.list(Path.of("examples"))) {
      for (Path plan :
          (Iterable<Path>) plans.filter(p -> p.toString().endsWith(".yaml"))::iterator) {
        for (String paper : List.of("a4", "letter")) {
          byte[] pdf = printed(plan.getFileName().toString(), "--paper", paper);
          assertThat(Browser.pages(pdf)).as(plan + " " + paper).isEqualTo(1);
        }
      }
    }
  }

  /** Everything that a plan can put on a card, and the longest names that it takes. */
  @Test
  void theFullestCardIsOnePage() throws Exception {
    String bottle = "{name: " + "long name ".repeat(9) + ", rate: 1 mL/L}";
    List<String> line =
        new ArrayList<>(List.of("logged-tub.yaml", "--paper", "letter", "--units", "us"));
    String[] sets = {
      "name=" + "A tower with a name that does not end ".repeat(4),
      "feed={parts: ["
          + String.join(", ", bottle, bottle, bottle, bottle)
          + "], rate_ec: 1.9 mS/cm}",
      "water={ec: 1.45 mS/cm}",
      "target={ec: 1.6 mS/cm, ec_low: 1.2 mS/cm, ec_high: 2 mS/cm, ph: 5.8, ph_low: 5.5, ph_high: 6.5}",
      "meters={ec: {slope: 1.037, checked: 2027-04-02}, ph: {offset: -0.1, checked: 2027-04-02}}",
      "season={from: 2027-04-10, to: 2027-10-15, change: {every: 21 d}}",
      "tank.rim_overflow=310 mm",
      "sender.divider={supply: 3.3 V, resistor: 180 ohm}",
      "timing=[{run: 90 s, rest: 12 min}"
          + ", {run: 60 s, rest: 25 min, from: \"22:00\", to: \"06:00\", days: [mon, tue, wed, thu, fri, sat], months: [1, 2, 3, 4, 5, 6, 7, 8, 9]}"
          + ", {run: 61 s, rest: 25 min, from: \"08:00\", to: \"09:00\"}"
          + ", {run: 62 s, rest: 25 min, from: \"10:00\", to: \"11:00\"}"
          + ", {run: 63 s, rest: 25 min, from: \"12:00\", to: \"13:00\"}"
          + ", {run: 64 s, rest: 25 min, from: \"14:00\", to: \"15:00\"}"
          + ", {run: 65 s, rest: 25 min, from: \"16:00\", to: \"17:00\"}]"
    };
    for (String set : sets) {
      line.addAll(List.of("--set", set));
    }
    byte[] pdf = printed(line.toArray(new String[0]));
    assertThat(Browser.pages(pdf)).isEqualTo(1);
  }

  /** 100 mm within 0.2, measured on the printed page at 300 dots an inch. */
  @Test
  void theLineIsAHundredMillimetres() throws Exception {
    for (String paper : List.of("a4", "letter")) {
      byte[] pdf = printed("first-tower.yaml", "--dipstick", "--paper", paper);
      assertThat(Browser.pages(pdf)).isEqualTo(2);
      Path file = folder.resolve("strip.pdf");
      Files.write(file, pdf);
      Path ppm = folder.resolve("strip.ppm");
      Process process = null;
      try {
        process =
            new ProcessBuilder(
                    "pdftoppm",
                    "-r",
                    "" + DPI,
                    "-f",
                    "1",
                    "-l",
                    "1",
                    "-singlefile",
                    file.toString(),
                    folder.resolve("strip").toString())
                .redirectErrorStream(true)
                .start();
      } catch (java.io.IOException e) {
        System.out.println(
            "The line of 100 mm was not measured on paper: no pdftoppm (apt-get install poppler-utils).");
        assumeTrue(false, "no pdftoppm");
      }
      assertThat(process.waitFor()).isZero();
      int[] red = red(Files.readAllBytes(ppm));
      assertThat((red[1] - red[0] + 1) * INCH / DPI).as(paper).isCloseTo(100, within(0.2));
    }
  }

  /** First and last column of red dots in a picture of three bytes a dot (the format P6). */
  private static int[] red(byte[] ppm) {
    int[] head = new int[3];
    int at = 2;
    for (int i = 0; i < head.length; i++) {
      while (Character.isWhitespace(ppm[at])) {
        at++;
      }
      int from = at;
      while (!Character.isWhitespace(ppm[at])) {
        at++;
      }
      head[i] = Integer.parseInt(new String(ppm, from, at - from, StandardCharsets.US_ASCII));
    }
    ByteBuffer dots = ByteBuffer.wrap(ppm, at + 1, ppm.length - at - 1);
    int least = Integer.MAX_VALUE;
    int most = -1;
    for (int i = 0; i < head[0] * head[1]; i++) {
      int r = dots.get() & 255;
      int g = dots.get() & 255;
      int b = dots.get() & 255;
      if (r > 150 && g < 100 && b < 100) {
        least = Math.min(least, i % head[0]);
        most = Math.max(most, i % head[0]);
      }
    }
    return new int[] {least, most};
  }
}
