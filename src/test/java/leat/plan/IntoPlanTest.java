package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an answer tells to put into the plan can be typed as it stands, and leaves a plan. */
class IntoPlanTest {
  private static final String SET = "Next: leat plan set ";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pump --plan terrace.yaml --measured;10 L in 65 s @ 250 mm | pump.measured=9.231 L/min @ 250 mm",
        "pump --plan terrace.yaml --units us --measured;1 gal in 25 s | pump.measured=2.400 gal/min",
        "ec --plan hard-water.yaml 1.36mS/cm --standard 1.413mS/cm | meters.ec.slope=1.039",
        "crops --plan hard-water.yaml lettuce basil | target.ec=1.4 mS/cm",
        "duty --plan first-tower.yaml --suggest | timing=[{run: 26 s, rest: 30 min},",
        "level;fit --plan sender-tub.yaml pours.csv | sender.below=10.5 ohm",
        "level;ladder --plan sender-tub.yaml --bought --range 0-190 --steps 12 --length 220mm | sender.steps=[45 mm = 0 ohm,",
        "level;ladder --plan sender-tub.yaml --empty 10ohm --full 180ohm --steps 8 --first 45mm --last 280mm | sender.ladder={reeds: 8,",
      })
  void theCommandCanBeTyped(String line, String change, @TempDir Path folder) throws IOException {
    copyExamples(folder);
    String[] words = line.strip().split(" ");
    List<String> args = new ArrayList<>();
    for (String word : words) {
      args.addAll(Arrays.asList(word.startsWith("level;") ? word.split(";") : new String[] {word}));
    }
    args = spaced(args, line);
    Leat said = Leat.in(folder, "", Map.of(), args.toArray(new String[0]));
    assertThat(said.code).as(said.err).isZero();
    String set = said.out.lines().filter(l -> l.startsWith(SET)).findFirst().orElseThrow();
    assertThat(set).contains(change.strip());
    assertThat(said.out).contains("Next: or by hand: ");
    List<String> typed = shell(set.substring("Next: leat ".length()));
    Leat done = Leat.in(folder, "", Map.of(), typed.toArray(new String[0]));
    assertThat(done.code).as(done.err).isZero();
    Leat read = Leat.in(folder, "", Map.of(), "check", typed.get(2), "--format", "csv");
    assertThat(read.code).as(read.err).isBetween(0, 1);
  }

  /** A measured flow is written with blanks: the words behind ";" are one. */
  private static List<String> spaced(List<String> args, String line) {
    int from = line.indexOf("--measured;");
    if (from < 0) {
      return args;
    }
    List<String> all = new ArrayList<>(Arrays.asList(line.substring(0, from).strip().split(" ")));
    all.add("--measured");
    all.add(line.substring(from + "--measured;".length()).strip());
    return all;
  }

  private static void copyExamples(Path folder) throws IOException {
    for (String name :
        new String[] {
          "terrace.yaml", "hard-water.yaml", "first-tower.yaml", "sender-tub.yaml", "pours.csv"
        }) {
      Files.copy(Path.of("examples", name), folder.resolve(name));
    }
  }

  /** Words of a POSIX shell with quotes of both kinds and nothing to expand. */
  private static List<String> shell(String line) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    char quote = 0;
    for (char c : line.toCharArray()) {
      if (quote == 0 && (c == '"' || c == '\'')) {
        quote = c;
      } else if (c == quote) {
        quote = 0;
      } else if (c == ' ' && quote == 0) {
        words.add(word.toString());
        word.setLength(0);
      } else {
        word.append(c);
      }
    }
    words.add(word.toString());
    return words;
  }

  @Test
  void whatSaysTheSameInAnotherWayGoesFirst() {
    PlanEdit plan = PlanEdit.of("p.yaml", "sender: {steps: [40 mm = 10 ohm, 60 mm = 27 ohm]}\n");
    PlanHint hint = PlanHint.of("sender.edges", "[2 L = 10 ohm, 4 L = 30 ohm]");
    assertThat(hint.sets(plan))
        .containsExactly("sender.steps=", "sender.edges=[2 L = 10 ohm, 4 L = 30 ohm]");
    assertThat(hint.byHand(plan, true))
        .containsExactly(
            "in p.yaml, line 1, under sender, remove  steps",
            "in p.yaml, below line 1, under sender, write  edges: [2 L = 10 ohm, 4 L = 30 ohm]");
  }

  @Test
  void aKeyThatAnAnchorSharesIsForTheHand() {
    String shared =
        "backup: &b {battery: 12 V}\ntowers:\n  - {riser: &r {bore: 10 mm}}\n  - {riser: *r}\n";
    PlanEdit plan = PlanEdit.of("p.yaml", shared);
    PlanHint hint = PlanHint.of("towers[1].riser.bore", "12 mm");
    assertThat(hint.sets(plan)).isEmpty();
    assertThat(hint.byHand(plan, false)).hasSize(1);
    assertThat(hint.byHand(plan, false).get(0)).contains("the anchor &r");
  }

  @Test
  void keysOfANewSectionStandTogether() {
    PlanHint hint = PlanHint.of("meters.ec.slope", "1.04", "meters.ec.checked", "2027-06-12");
    assertThat(hint.lines()).containsExactly("meters: {ec: {slope: 1.04, checked: 2027-06-12}}");
    assertThat(hint.byHand(PlanEdit.of("p.yaml", "name: a\n"), true))
        .containsExactly(
            "at the end of p.yaml write  meters: {ec: {slope: 1.04, checked: 2027-06-12}}");
  }
}
