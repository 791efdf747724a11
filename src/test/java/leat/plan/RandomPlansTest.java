package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Plans changed at random: read or refused with a place, never broken; what is read can be built.
 */
class RandomPlansTest {
  private static final String[] VALUES = {
    "0 mm",
    "-1 mm",
    "1e9 m",
    "0.1 mm",
    "13 mm",
    "2 m",
    "0 L",
    "55 L",
    "1e-12 L/h",
    "800 L/h",
    "0 s",
    "90 s",
    "9999 h",
    "0 %",
    "100 %",
    "200 %",
    "0 ohm",
    "1 Mohm",
    "yes",
    "~",
    "[]",
    "{}",
    "\"\"",
    "*riser",
    "*nothing",
    "&x 1",
    "0",
    "-0",
    "1",
    "12",
    "1e308",
    "NaN",
    ".inf",
    "-.inf",
    "box",
    "cone",
    "table",
    "lying-cylinder",
    "2027-01-01",
    "\"00:00\"",
    "24:00",
    "EUR",
    "0 EUR",
    "1 USD",
    "[0 L/h @ 2 m]",
    "[1, [2]]",
    "0 mm x 0 mm",
    "1 mm x 1 mm",
    "0 mm to 0 mm",
    "{a: {b: c}}",
    "<<",
    "\u20ac5",
    "\ud83c\udf31",
    "\u0130",
    "'",
    "\"",
    "600 L/h @ 1.7 m",
    "1 L in 1 s",
    "0 L in 1 s",
    "1 L/min @ 400 mm",
  };

  private static String changed(String plan, Random random) {
    String[] lines = plan.split("\n", -1);
    int changes = 1 + random.nextInt(3);
    for (int n = 0; n < changes; n++) {
      int i = random.nextInt(lines.length);
      List<Integer> colons = new java.util.ArrayList<>();
      for (int c = lines[i].indexOf(": "); c >= 0; c = lines[i].indexOf(": ", c + 1)) {
        colons.add(c);
      }
      if (colons.isEmpty() || random.nextInt(12) == 0) {
        int cut = lines[i].isEmpty() ? 0 : random.nextInt(lines[i].length());
        lines[i] = lines[i].substring(0, cut) + VALUES[random.nextInt(VALUES.length)];
        continue;
      }
      int from = colons.get(random.nextInt(colons.size())) + 2;
      int to = from;
      while (to < lines[i].length() && ",}]#".indexOf(lines[i].charAt(to)) < 0) {
        to++;
      }
      String value = VALUES[random.nextInt(VALUES.length)];
      lines[i] = lines[i].substring(0, from) + value + lines[i].substring(to);
    }
    return String.join("\n", lines);
  }

  @Property(tries = 1500)
  void areReadOrRefused(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> good = Plans.good();
    String text = changed(good.get(random.nextInt(good.size())), random);
    Plan plan;
    try {
      plan = Plans.plan(text);
    } catch (Refused e) {
      assertThat(e.getMessage()).startsWith("p.yaml:").endsWith("\n").doesNotContain("Infinity");
      return;
    }
    assertThat(SchemaTest.faults(text)).as(text).isEmpty();
    String shown = PlanShow.of(plan, List.of()).yaml();
    Plans.plan(shown);
  }

  @Property(tries = 500)
  void whatIsReadCanBeJudged(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> good = Plans.good();
    String text = changed(good.get(random.nextInt(good.size())), random);
    Leat run = Leat.in(Path.of("examples"), text, Map.of(), "check", "-", "--format", "csv");
    assertThat(run.code).as(text).isBetween(0, 2);
    if (!text.matches("(?s).*(name|about): *NaN.*")) {
      assertThat(run.out).doesNotContain("NaN").doesNotContain("Infinity");
    }
    Leat tank =
        Leat.in(Path.of("examples"), text, Map.of(), "tank", "--plan", "-", "--every", "50 mm");
    assertThat(tank.code).isBetween(0, 2);
  }
}
