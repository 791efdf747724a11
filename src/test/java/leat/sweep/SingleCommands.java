package leat.sweep;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.cli.Ran;

/** One design asked command by command with --set: the slow way to every measure. */
final class SingleCommands {
  private final String plan;
  private final List<String> set;
  private final Map<String, JsonNode> told = new HashMap<>();

  SingleCommands(String plan, Map<String, String> design) {
    this.plan = plan;
    this.set = new ArrayList<>();
    design.forEach((key, value) -> set.addAll(List.of("--set", key + "=" + value)));
  }

  /** Findings of check by verdict: passes, fails, warns, unknowns; null for no plan at all. */
  int[] verdicts() {
    JsonNode found = ask("check");
    List<String> words = List.of("pass", "fail", "warn", "unknown", "off");
    int[] counts = new int[words.size()];
    for (JsonNode finding : found) {
      int at = words.indexOf(finding.get("verdict").asText());
      if (at < 0) {
        return null;
      }
      counts[at]++;
    }
    return counts;
  }

  /** The first rule of the worst verdict; null when all pass. */
  String worstRule() {
    for (String verdict : List.of("fail", "warn")) {
      for (JsonNode finding : ask("check")) {
        if (finding.get("verdict").asText().equals(verdict)) {
          return finding.get("rule").asText();
        }
      }
    }
    return null;
  }

  /** What the command of a measure says; null for unknown. */
  Double value(Measure measure) {
    String command = measure.command();
    String reads = measure.reads();
    switch (command) {
      case "pump":
        return pump(measure.name(), reads);
      case "tank --level FULL":
        return number(ask("tank", "--level", plan("full")), reads);
      case "tank --every 10mm":
        JsonNode marks = ask("tank", "--every", "10 mm");
        return number(marks.get(marks.size() - 1), reads);
      case "level table":
      case "level table --motion rising":
        return level(measure.name());
      case "parts":
        return measure.name().equals("pot_spacing_mm")
            ? fold(ask("parts").get("towers"), reads, Math::min)
            : number(ask("parts"), reads);
      case "wind":
        return wind(reads);
      case "duty":
      case "season":
        return dated(measure.name()) ? number(ask(command), reads) : null;
      default:
        if (!command.startsWith("check ")) {
          throw new AssertionError(measure.name() + ": " + command + " wants a case in value");
        }
        JsonNode found = ask("check", command.substring("check ".length()).split(" "));
        return number(found.get(0), reads);
    }
  }

  /** Measures of a season have no value without its dates, though duty takes a year. */
  private boolean dated(String name) {
    boolean season = name.equals("kwh_season") || name.equals("cost_electricity");
    return !season || text().contains("season:");
  }

  private Double pump(String name, String reads) {
    String at = name.equals("flow_full_L_min") ? "full" : "low";
    Double worst = null;
    for (JsonNode row : ask("pump")) {
      if (!row.get("at").asText().equals(at)) {
        continue;
      }
      Double own = number(row, reads);
      if (own == null) {
        return null;
      }
      boolean more = name.equals("fill_time_s") || name.equals("velocity_m_s");
      boolean sum = name.equals("drain_back_L");
      worst =
          worst == null
              ? own
              : sum ? worst + own : more ? Math.max(worst, own) : Math.min(worst, own);
    }
    return worst;
  }

  private Double wind(String reads) {
    JsonNode told = ask("wind");
    switch (reads) {
      case "opens_at_m_s":
        return fold(told.get("joints"), reads, Math::min);
      case "tension_N":
        return fold(told.get("lines"), reads, Math::max);
      default:
        return fold(told.get("states"), reads, Math::min);
    }
  }

  private Double level(String name) {
    List<JsonNode> steps = steps("unknown");
    List<JsonNode> rising = steps("rising");
    if (steps == null) {
      return null;
    }
    double topBegins = rising.get(rising.size() - 1).get("volume_low_L").asDouble();
    switch (name) {
      case "sender_steps":
        return (double) steps.size();
      case "blind_bottom_L":
        return steps.get(0).get("volume_high_L").asDouble();
      case "top_step_L":
        return topBegins;
      case "blind_top_L":
        return number(ask("tank", "--level", plan("full")), "volume_L") - topBegins;
      default:
        double widest = 0;
        for (JsonNode step : steps.subList(1, steps.size() - 1)) {
          double band = step.get("volume_high_L").asDouble() - step.get("volume_low_L").asDouble();
          widest = Math.max(widest, band);
        }
        return widest;
    }
  }

  /** The bands of single steps from the bottom; null without a sender. */
  private List<JsonNode> steps(String motion) {
    List<JsonNode> steps = new ArrayList<>();
    for (JsonNode row : ask("level", "table", "--motion", motion)) {
      if (row.has("status") && row.get("status").asText().startsWith("ok")) {
        steps.add(row);
      }
    }
    steps.sort((a, b) -> Double.compare(low(a), low(b)));
    for (int i = steps.size() - 1; i > 0; i--) {
      if (low(steps.get(i)) == low(steps.get(i - 1))) {
        steps.remove(i);
      }
    }
    return steps.isEmpty() ? null : steps;
  }

  private static double low(JsonNode row) {
    return row.get("volume_low_L").asDouble();
  }

  private static Double fold(JsonNode rows, String key, DoubleBinaryOperator of) {
    Double all = null;
    for (JsonNode row : rows == null ? List.<JsonNode>of() : rows) {
      Double own = number(row, key);
      all = own == null ? all : all == null ? own : Double.valueOf(of.applyAsDouble(all, own));
    }
    return all;
  }

  private static Double number(JsonNode row, String key) {
    JsonNode value = row == null ? null : row.get(key);
    return value == null || !value.isNumber() ? null : Double.valueOf(value.asDouble());
  }

  /** A mark of the tank, from the design or else from the file. */
  private String plan(String mark) {
    for (String one : set) {
      if (one.startsWith("tank." + mark + "=")) {
        return one.substring(one.indexOf('=') + 1);
      }
    }
    Matcher found = Pattern.compile("\\b" + mark + ": ([0-9.]+ mm)").matcher(text());
    return found.find() ? found.group(1) : "1 mm";
  }

  private String text() {
    try {
      return java.nio.file.Files.readString(java.nio.file.Path.of("examples", plan));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private JsonNode ask(String command, String... more) {
    return told.computeIfAbsent(command + " " + String.join(" ", more), k -> asked(command, more));
  }

  private JsonNode asked(String command, String... more) {
    List<String> line = new ArrayList<>(List.of(command));
    line.addAll(List.of(more));
    line.addAll(command.equals("check") ? List.of(plan) : List.of("--plan", plan));
    line.addAll(set);
    line.addAll(List.of("--format", "json"));
    Ran ran = Ran.run(line.toArray(new String[0]));
    if (ran.out().isBlank()) {
      return com.fasterxml.jackson.databind.node.MissingNode.getInstance();
    }
    return ran.json();
  }
}
