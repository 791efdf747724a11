package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Terminal;
import leat.command.Commands;
import leat.plan.KeyPath;
import org.junit.jupiter.api.Test;

/**
 * Which command asks for which key, measured: every example of every command, as it stands, over
 * every plan, and over plans told in other ways. The table in {@code ReadBy} must say the same.
 */
class ReadByTest {
  private static final Path TABLE = Path.of("src/main/java/leat/plan/ReadBy.java");

  /** Commands that show or change keys, whatever they mean. */
  private static final Set<String> SHOW_ALL =
      Set.of("plan", "plan show", "plan keys", "plan new", "plan set");

  private static final List<String> PLANS =
      List.of(
          "first-tower.yaml",
          "terrace.yaml",
          "hard-water.yaml",
          "night-rate.yaml",
          "sender-tub.yaml",
          "poured-tub.yaml",
          "weighed-salts.yaml",
          "roof.yaml",
          "stacked.yaml",
          "kitchen.yaml",
          "balcony.yaml",
          "roof-months.yaml",
          "greenhouse.yaml",
          "away.yaml",
          "../src/test/resources/plans/sketch.yaml");

  /** Other ways to tell the same things, each on its own. */
  private static final List<String[]> WAYS =
      List.of(
          new String[] {},
          new String[] {
            "tank={shape: box, bottom: 500 mm x 400 mm, height: 330 mm, corner: 20 mm, full: 270 mm, low: 90 mm, intake: 35 mm}"
          },
          new String[] {
            "tank={shape: cone, bottom: 400 mm, top: 500 mm, height: 400 mm, full: 330 mm, low: 90 mm}"
          },
          new String[] {
            "tank={shape: cylinder, diameter: 450 mm, height: 400 mm, full: 330 mm, low: 90 mm}"
          },
          new String[] {
            "tank={shape: lying-cylinder, diameter: 400 mm, length: 600 mm, full: 330 mm, low: 90 mm}"
          },
          new String[] {
            "tank={shape: table, table: [0 mm = 0 L, 200 mm = 30 L, 400 mm = 70 L], between: smooth, full: 330 mm, low: 90 mm, bodies: [{area: 60 cm2, from: 0 mm, to: 80 mm}]}"
          },
          new String[] {
            "tank={shape: sloping-floor, top: 600 mm x 400 mm, height: 400 mm, floor_rise: 40 mm, floor_flat: 150 mm, full: 330 mm, low: 90 mm}"
          },
          new String[] {
            "tank={shape: sections, sections: [0 mm = 1440 cm2, 400 mm = 1944 cm2], full: 330 mm, low: 90 mm}"
          },
          new String[] {"tank.drain={bore: 19 mm, height: 12 mm, length: 0.5 m, drop: 0.3 m}"},
          new String[] {
            "pump={curve: [0 L/h @ 2.6 m, 900 L/h @ 0 m], derate: 80 %, speed: 90 %, power: 20 W, power_factor: 60 %, supply: {mains: 230 V}}"
          },
          new String[] {
            "pump.supply={dc: 12 V, cable: {length: 14 m, section: 1.5 mm2}}", "pump.power=18 W"
          },
          new String[] {"pipe={bore: 19 mm, length: 0.6 m, roughness: 0.01 mm, k: 2}"},
          new String[] {"drinks=", "thirst=1.2"},
          new String[] {"site.gust_factor=1.5", "tank.friction=0.25", "site.shelter=1.1"},
          new String[] {"site.wind={speed: 12 m/s, is: gust}", "towers[0].guys.anchor=tank"},
          new String[] {
            "controller={power: 2 W, relay: {rated: 10 A, cycles: 100000, coil: 0.4 W, coil_when: off, inrush: 6}}"
          },
          new String[] {
            "backup={battery: 12 V, capacity: 20 Ah, chemistry: lead, hours: 6 h, reserve: 10 %}"
          },
          new String[] {"limits={cost-season: 50 EUR, reach: 1.5 m}"},
          new String[] {
            "tariff={price: 0.31 EUR/kWh, standing: 0.4 EUR/d, bands: [{price: 0.2 EUR/kWh, from: \"22:00\", to: \"06:00\", months: [1, 2], days: [mon]}]}"
          },
          new String[] {
            "timing=[{run: 90 s, rest: 12 min}, {run: 60 s, rest: 25 min, from: \"22:00\", to: \"06:00\", months: [6, 7], days: [mon, tue]}]"
          });

  /**
   * The plans that are told in these ways, beside the example's own; others are read as written.
   */
  private static final List<String> TOLD_ANEW =
      List.of("first-tower.yaml", "../src/test/resources/plans/sketch.yaml");

  @Test
  void theTableIsWhatIsReallyAsked() {
    Map<String, Set<String>> asked = new LinkedHashMap<>();
    KeyPath.all().forEach(k -> asked.put(k.path(), new LinkedHashSet<>()));
    for (Command command : Declared.commands()) {
      if (!SHOW_ALL.contains(command.name())) {
        for (String example : command.examples()) {
          boolean named = example.contains(".yaml") || !command.takesPlan();
          String first = command.name().split(" ")[0];
          overPlans(first, named ? example : example + " --plan " + PLANS.get(0), asked);
        }
        if (command.takesPlan()) {
          overPlans(
              command.name().split(" ")[0], command.name() + " --plan " + PLANS.get(0), asked);
        }
      }
    }
    StringBuilder table = new StringBuilder("TABLE =\n      \"\"\"\n");
    asked.forEach(
        (path, by) -> {
          if (!by.isEmpty()) {
            table
                .append("      ")
                .append(path)
                .append(": ")
                .append(String.join(" ", by))
                .append('\n');
          }
        });
    String java = Golden.read(TABLE);
    int start = java.indexOf("TABLE =");
    int end = java.indexOf("      \"\"\";", start);
    Golden.check(TABLE, java.substring(0, start) + table + java.substring(end));
    assertThat(asked.get("towers[].riser.bore")).contains("pump", "check");
    assertThat(asked.get("pump.body")).isEmpty();
  }

  private static void overPlans(String name, String example, Map<String, Set<String>> asked) {
    String named = null;
    for (String word : example.split(" ")) {
      named = word.endsWith(".yaml") ? word : named;
    }
    if (named == null) {
      return;
    }
    Set<String> plans = new LinkedHashSet<>(PLANS);
    plans.add(named);
    for (String plan : plans) {
      for (String[] way :
          TOLD_ANEW.contains(plan) || plan.equals(named)
              ? WAYS
              : List.<String[]>of(new String[] {})) {
        List<String> words = unwritten(words(example.replace(named, plan)));
        for (String set : way) {
          words.addAll(List.of("--set", set));
        }
        for (String path : asked(words)) {
          asked.get(path).add(name);
        }
      }
    }
  }

  /** The line without the file that it writes. */
  private static List<String> unwritten(List<String> words) {
    List<String> all = new ArrayList<>(words);
    int out = all.indexOf("-o");
    if (out >= 0) {
      all.subList(out, out + 2).clear();
    }
    return all;
  }

  private static List<String> asked(List<String> words) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(new byte[0]),
            new ByteArrayOutputStream(),
            err,
            Map.of("LEAT_DEBUG", "reads"),
            Path.of("examples"),
            null);
    Commands.run(words.toArray(new String[0]), terminal);
    List<String> paths = new ArrayList<>();
    for (String line : err.toString(StandardCharsets.UTF_8).split("\n")) {
      if (line.startsWith("asked ")) {
        paths.add(line.substring("asked ".length()));
      }
    }
    return paths;
  }

  /** Words of a line, with double quotes around those that hold spaces. */
  private static List<String> words(String line) {
    return Arrays.stream(line.split(" (?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"))
        .map(word -> word.replace("\"", ""))
        .toList();
  }
}
