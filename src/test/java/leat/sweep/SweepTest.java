package leat.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** leat sweep against leat check and leat pump one design at a time, and against brute force. */
class SweepTest {
  private static final String[] BORES = {"10mm", "13mm", "16mm"};
  private static final String[] DERATES = {"60%", "70%", "85%"};

  private static String[] sweep(String plan, String... more) {
    List<String> line =
        new ArrayList<>(
            List.of(
                "sweep",
                plan,
                "--vary",
                "towers[*].riser.bore=" + String.join(",", BORES),
                "--vary",
                "pump.derate=" + String.join(",", DERATES)));
    line.addAll(List.of(more));
    return line.toArray(new String[0]);
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-tower.yaml", "terrace.yaml", "proud-tower.yaml"})
  void everyRowIsWhatTheSingleCommandsSay(String plan) {
    JsonNode rows = Ran.run(sweep(plan, "--all", "--format", "json")).json();
    assertThat(rows).hasSize(BORES.length * DERATES.length);
    int i = 0;
    for (String bore : BORES) {
      for (String derate : DERATES) {
        JsonNode row = rows.get(i++);
        String[] set = {"--set", "towers[*].riser.bore=" + bore, "--set", "pump.derate=" + derate};
        assertThat(row.get("towers[*].riser.bore").asText()).isEqualTo(bore);
        JsonNode checked =
            Ran.run("check", plan, "--format", "json", set[0], set[1], set[2], set[3]).json();
        int[] counts = new int[4];
        List<String> verdicts = List.of("pass", "fail", "warn", "unknown");
        for (JsonNode finding : checked) {
          counts[verdicts.indexOf(finding.get("verdict").asText())]++;
        }
        assertThat(row.get("passes").asInt()).isEqualTo(counts[0]);
        assertThat(row.get("fails").asInt()).isEqualTo(counts[1]);
        assertThat(row.get("warns").asInt()).isEqualTo(counts[2]);
        assertThat(row.get("unknowns").asInt()).isEqualTo(counts[3]);
        double margin = Double.POSITIVE_INFINITY;
        for (JsonNode tower :
            Ran.run("pump", "--plan", plan, "--format", "json", set[0], set[1], set[2], set[3])
                .json()) {
          if (tower.get("at").asText().equals("low")) {
            margin = Math.min(margin, tower.get("margin_pct").asDouble());
          }
        }
        assertThat(row.get("margin_pct").asDouble()).isCloseTo(margin, within(1e-9));
      }
    }
  }

  @Test
  void partsJoinedAreTheWholeOnAnyNumberOfThreads() {
    String whole =
        Ran.run(sweep("first-tower.yaml", "--all", "--format", "csv", "--jobs", "1")).out();
    String many =
        Ran.run(sweep("first-tower.yaml", "--all", "--format", "csv", "--jobs", "3")).out();
    StringBuilder joined = new StringBuilder();
    for (int i = 1; i <= 4; i++) {
      joined.append(
          Ran.run(sweep("first-tower.yaml", "--all", "--format", "csv", "--slice", i + "/4"))
              .out());
    }
    assertThat(many).isEqualTo(whole);
    assertThat(joined).hasToString(whole);
  }

  @Test
  void rankedAndCut() {
    JsonNode best =
        Ran.run(
                sweep(
                    "first-tower.yaml", "--rank=-flow_low_L_min", "--top", "2", "--format", "json"))
            .json();
    assertThat(best).hasSize(2);
    assertThat(best.get(0).get("towers[*].riser.bore").asText()).isEqualTo("16mm");
    assertThat(best.get(0).get("flow_low_L_min").asDouble())
        .isGreaterThanOrEqualTo(best.get(1).get("flow_low_L_min").asDouble());
    Ran none = Ran.run(sweep("first-tower.yaml", "--where", "margin_pct>500"));
    assertThat(none.exit()).isEqualTo(1);
    assertThat(none.out()).contains("none meets what --where asks");
  }

  @Test
  void aDesignThatCannotBeIsToldInItsRow() {
    JsonNode rows =
        Ran.run(
                "sweep",
                "first-tower.yaml",
                "--vary",
                "tank.low=100 mm,900 mm",
                "--all",
                "--format",
                "json")
            .json();
    assertThat(rows.get(0).get("refused").isNull()).isTrue();
    assertThat(rows.get(1).get("refused").asText()).isNotEmpty();
    assertThat(rows.get(1).get("margin_pct").isNull()).isTrue();
  }

  @Test
  void sampleIsTheSameForASeedAndFillsTheRange() {
    String[] line = {
      "sweep",
      "first-tower.yaml",
      "--vary",
      "towers[*].outlet=1.0..1.4 m",
      "--sample",
      "64",
      "--all",
      "--format",
      "json",
      "--rule",
      "none"
    };
    JsonNode rows = Ran.run(line).json();
    assertThat(Ran.run(line).json()).isEqualTo(rows);
    int[] quarters = new int[4];
    for (JsonNode row : rows) {
      double metres = Double.parseDouble(row.get("towers[*].outlet").asText().replace(" m", ""));
      quarters[(int) ((metres - 1.0) / 0.1)]++;
    }
    for (int quarter : quarters) {
      assertThat(quarter).isBetween(15, 17);
    }
  }

  @Test
  void frontAgainstBruteForce() {
    Random random = new Random(5);
    List<Judged> all = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      double[] values = {random.nextInt(20), random.nextInt(20)};
      all.add(new Judged(new Design(i, new int[0], new double[0]), 1, 0, 0, 0, null, values, null));
    }
    List<Judged> brute = new ArrayList<>();
    for (Judged a : all) {
      boolean beaten = false;
      for (Judged b : all) {
        double x = b.measures()[0] - a.measures()[0];
        double y = a.measures()[1] - b.measures()[1];
        beaten |= x >= 0 && y >= 0 && x + y > 0;
      }
      if (!beaten) {
        brute.add(a);
      }
    }
    assertThat(Front.of(all, new int[] {0, 1}, new boolean[] {true, false})).isEqualTo(brute);
  }

  /** The ends of a nudge are single designs. */
  @Test
  void nudgeIsTwoDesigns() {
    JsonNode rows =
        Ran.run("sweep", "terrace.yaml", "--nudge", "--measure", "margin_pct", "--format", "json")
            .json();
    for (JsonNode row : rows) {
      if (row.get("key").asText().equals("pump.derate")) {
        double low = margin("70%");
        double high = margin("85%");
        assertThat(row.get("at_low").asDouble()).isCloseTo(low, within(1e-9));
        assertThat(row.get("at_high").asDouble()).isCloseTo(high, within(1e-9));
        return;
      }
    }
    throw new AssertionError("no nudge of pump.derate: " + rows);
  }

  private static double margin(String derate) {
    double least = Double.POSITIVE_INFINITY;
    for (JsonNode row :
        Ran.run("pump", "-p", "terrace.yaml", "--set", "pump.derate=" + derate, "--format", "json")
            .json()) {
      if (row.get("at").asText().equals("low")) {
        least = Math.min(least, row.get("margin_pct").asDouble());
      }
    }
    return least;
  }

  /** Plain Monte Carlo over single checks, every guess drawn: the share is within its error. */
  @Test
  void doubtAgainstPlainDraws() {
    String[] line = {"check", "terrace.yaml", "--rule", "flow-wanted", "--format", "json"};
    JsonNode told = Ran.run(with(line, "--doubt", "4000")).json().get(0);
    JsonNode guesses = Ran.run("sweep", "terrace.yaml", "--nudge", "--format", "json").json();
    Random random = new Random(11);
    int n = 400;
    int passed = 0;
    for (int i = 0; i < n; i++) {
      List<String> set = new ArrayList<>();
      for (JsonNode guess : guesses) {
        if (guess.get("measure").asText().equals("margin_pct")) {
          String[] low = guess.get("low").asText().split(" ");
          double high = Double.parseDouble(guess.get("high").asText().split(" ")[0]);
          double from = Double.parseDouble(low[0]);
          double value = from + random.nextDouble() * (high - from);
          set.add("--set");
          set.add(guess.get("key").asText() + "=" + value + (low.length > 1 ? " " + low[1] : ""));
        }
      }
      boolean all = true;
      for (JsonNode one : Ran.run(with(line, set.toArray(new String[0]))).json()) {
        all &= one.get("verdict").asText().equals("pass");
      }
      passed += all ? 1 : 0;
    }
    double share = told.get("share_pass").asDouble();
    assertThat(told.get("hangs_on").asText()).isEqualTo("pump.derate");
    assertThat(share).isBetween(0.01, 0.99);
    // four standard errors of the plain draws
    assertThat((double) passed / n).isCloseTo(share, within(4 * Math.sqrt(0.25 / n)));
  }

  private static String[] with(String[] line, String... more) {
    List<String> all = new ArrayList<>(List.of(line));
    all.addAll(List.of(more));
    return all.toArray(new String[0]);
  }

  /** One answer under both names, and the same again for the same seed. */
  @Test
  void checkAndSweepDoubtTheSame() {
    String[] check = {"check", "proud-tower.yaml", "--doubt", "100", "--format", "csv"};
    String[] sweep = {"sweep", "proud-tower.yaml", "--doubt", "100", "--format", "csv"};
    String told = Ran.run(check).out();
    assertThat(told).startsWith("rule,share_pass,hangs_on\n").contains("reaches-top,0,\n");
    assertThat(Ran.run(sweep).out()).isEqualTo(told);
    assertThat(Ran.run(with(check, "--seed", "8")).out()).isNotEqualTo(told);
    JsonNode rows =
        Ran.run("check", "proud-tower.yaml", "--doubt", "100", "--format", "json").json();
    assertThat(rows.get(0).fieldNames().next()).isEqualTo("rule");
    assertThat(Ran.run("check", "proud-tower.yaml", "--doubt", "100").out())
        .contains("hangs on a guess")
        .contains("pump.measured   tells most about");
  }

  /** A bucket settles what the pipes are off by; a stated tolerance is known; prices are none. */
  @Test
  void whatIsKnownIsNoGuess() {
    assertThat(guesses("terrace.yaml"))
        .contains(
            "pump.derate", "towers[*].riser.k", "towers[*].riser.bore", "towers[*].riser.roughness")
        .contains("thirst", "pipe.k")
        .noneMatch(key -> key.contains("price"));
    assertThat(guesses("terrace.yaml", "--set", "pump.measured=7 L/min"))
        .doesNotContain("pump.derate", "towers[*].riser.k", "pipe.k")
        .contains("thirst");
    assertThat(guesses("sender-tub.yaml"))
        .contains("sender.divider.adc_error", "sender.divider.resistor_tolerance")
        .doesNotContain("sender.tolerance");
    assertThat(guesses("terrace.yaml", "--set", "towers[1].riser.bore=16 mm"))
        .contains("towers[0].riser.bore", "towers[1].riser.bore")
        .doesNotContain("towers[*].riser.bore");
  }

  private static List<String> guesses(String plan, String... more) {
    List<String> keys = new ArrayList<>();
    String[] line = {"sweep", plan, "--nudge", "--measure", "margin_pct", "--format", "json"};
    Ran.run(with(line, more)).json().forEach(row -> keys.add(row.get("key").asText()));
    return keys;
  }

  private static Ran varied(String... vary) {
    List<String> line = new ArrayList<>(List.of("sweep", "first-tower.yaml"));
    for (String one : vary) {
      line.add(one.startsWith("--") ? one : "--vary");
      if (!one.startsWith("--")) {
        line.add(one);
      }
    }
    return Ran.run(line.toArray(new String[0]));
  }

  private static void refused(String says, String... vary) {
    Ran ran = varied(vary);
    assertThat(ran.exit()).as(ran.out() + ran.err()).isEqualTo(2);
    assertThat(ran.err()).contains(says);
    assertThat(ran.out()).isEmpty();
  }

  /** What issue and habit bring: told in one line, with the mend where there is one. */
  @Test
  void badInput() {
    String bore = "towers[*].riser.bore=10mm,12mm";
    refused("did you mean \"bore\"", "towers[*].riser.bor=10mm");
    refused("which is a volume", "tank.low=90mm,4 L");
    refused("from low to high", "tank.low=0.1..0.09 m step 1 mm");
    refused("a step must be above 0", "tank.low=90..100 mm step 0 mm");
    refused("a step must be above 0", "tank.low=90..100 mm step -1 mm");
    refused("step 1 is needed", "towers[*].modules[*].count=4..8 step 0");
    refused("a value is missing", "pump.power= ");
    refused("is varied twice", bore, "towers[*].riser.bore=9mm");
    refused("--slice: i/n is needed", bore, "--slice=0/4");
    refused("--slice: i/n is needed", bore, "--slice=5/4");
    refused("did you mean margin_pct?", bore, "--rank=margn_pct");
    refused("leat sweep --measures lists them", bore, "--pareto=margin_pct,nosuch");
    refused("--yes if you mean it", million("towers[*].riser.bore"), million("pump.power"), wide());
    assertThat(varied(bore, "--where=margin_pct>900").exit()).isEqualTo(1);
  }

  private static String million(String key) {
    return key.equals("pump.power")
        ? key + "=10..109.99 W step 0.01 W"
        : key + "=9..18.99 mm step 0.001 mm";
  }

  private static String wide() {
    return "tank.low=90..189.99 mm step 0.01 mm";
  }

  /** A key that the plan does not have yet may be varied, and counts may go in steps. */
  @Test
  void whatIsAllowed() {
    Ran altitude = varied("site.altitude=100m,200m", "--format=csv");
    assertThat(altitude.lines()).hasSize(4);
    Ran counts = varied("towers[*].modules[*].count=4..8 step 2", "--all", "--format=csv");
    assertThat(counts.lines()).hasSize(5);
    assertThat(counts.lines()[1]).startsWith("4,");
    assertThat(counts.lines()[3]).startsWith("8,");
  }

  /** A ranking that puts the worse first is said; equals stay as they came. */
  @Test
  void rankingSaysWhatIsBetter() {
    String bore = "towers[*].riser.bore=10mm,12mm";
    assertThat(varied(bore, "--rank=margin_pct").err() + varied(bore, "--rank=margin_pct").out())
        .contains("--rank=-margin_pct turns it round");
    assertThat(varied(bore, "--rank=-margin_pct").out()).doesNotContain("turns it round");
    String[] equal = varied("pump.power=12W,11W,13W", "--rank=margin_pct", "--format=csv").lines();
    assertThat(equal[1]).startsWith("12W");
    assertThat(equal[2]).startsWith("11W");
    assertThat(equal[3]).startsWith("13W");
  }

  /** Bars of a nudge: the widest fills the scale, the plan as it is stands in each. */
  @Test
  void nudgeDrawsBars() {
    Ran text = Ran.run("sweep", "terrace.yaml", "--nudge", "--measure", "margin_pct");
    assertThat(text.out()).contains("|").containsPattern("={10,}").contains("70 % to 85 %");
    String csv = Ran.run("sweep", "terrace.yaml", "--nudge", "--format", "csv").out();
    assertThat(csv).startsWith("key,low,high,measure,at_low,at_high\npump.derate,70 %,85 %,");
  }
}
