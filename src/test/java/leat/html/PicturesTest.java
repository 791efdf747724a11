package leat.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pictures that README shows are taken of real pages. Rendering differs from machine to machine
 * by a dot here and there, so they are written when documents are, and only looked at otherwise.
 */
class PicturesTest {
  private static final int WIDTH = 760;
  private static final int HEIGHT = 485;
  private static final long MOST_BYTES = 100_000;
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};

  private static final Map<String, List<String>> PICTURES =
      Map.of(
          "page-season.png",
          List.of("season", "balcony.yaml"),
          "page-pump.png",
          List.of("pump", "--plan", "terrace.yaml"));

  @Test
  void areThereAndSmall(@TempDir Path folder) throws IOException {
    if (System.getProperty("leat.docs", "check").equals("write")) {
      write(folder);
    }
    String readme = Files.readString(Path.of("README.md"));
    for (String name : PICTURES.keySet()) {
      byte[] picture = Files.readAllBytes(Path.of("examples", name));
      assertThat(picture).startsWith(PNG);
      assertThat((long) picture.length).as(name).isLessThan(MOST_BYTES);
      assertThat(readme).contains("examples/" + name);
    }
  }

  private static void write(Path folder) throws IOException {
    Browser browser = Browser.orNull();
    assumeTrue(browser != null, "no browser");
    for (Map.Entry<String, List<String>> one : PICTURES.entrySet()) {
      Path page = Pages.file(folder, "p.html", Pages.of(one.getValue().toArray(new String[0])));
      try (Browser.Tab tab = browser.open(page, WIDTH, one.getKey().contains("pump"))) {
        int top =
            tab.eval("document.querySelector('.drawn').getBoundingClientRect().top - 16").asInt();
        Files.write(Path.of("examples", one.getKey()), tab.picture(top, WIDTH, HEIGHT));
      }
    }
  }
}
