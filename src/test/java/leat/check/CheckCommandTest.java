package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command: sentence, exit codes, several plans, comparison, explanations. */
class CheckCommandTest {
  private static final String[] FIRST = {"check", "first-tower.yaml"};

  private static Cli run(String... more) {
    String[] all = java.util.Arrays.copyOf(FIRST, FIRST.length + more.length);
    System.arraycopy(more, 0, all, FIRST.length, more.length);
    return Cli.run(all);
  }

  @Test
  void theSentenceCountsAndStrictCountsUnknownsToo() {
    Cli plain = run();
    assertThat(plain.exit).isZero();
    assertThat(plain.out)
        .startsWith("Nothing fails: 24 pass, 5 warn, 6 need values that the plan lacks.\n");
    assertThat(run("--strict").exit).isEqualTo(1);
    assertThat(run("--strict").out)
        .startsWith(
            "Nothing fails: 24 pass, 5 warn, 6 need values that the plan lacks. By --strict that is a no.\n");
    assertThat(run("--rule", "pump-margin", "--strict").exit).isZero();
    assertThat(run("--rule", "oxygen").exit).isZero();
    assertThat(run("--rule", "oxygen", "--strict").exit).isEqualTo(1);
    assertThat(run("--rule", "oxygen", "--strict", "--known").exit).isZero();
    assertThat(run("--rule", "gap-clear", "--rule", "strainer-holds", "--strict", "--known").exit)
        .isEqualTo(1);
  }

  @Test
  void oneRuleIsJudgedAlone() {
    Cli csv = run("--rule", "pump-margin", "-f", "csv");
    assertThat(csv.out.lines()).hasSize(2);
    assertThat(csv.out.lines().skip(1)).allMatch(l -> l.contains(",pump-margin,pass,"));
  }

  @Test
  void takenStandsBelow() {
    assertThat(run().out).contains("\nTaken: water 20 C; ");
  }

  @Test
  void severalPlansEachUnderItsOwnSentence(@TempDir Path folder) throws Exception {
    String broken1 =
        Files.writeString(folder.resolve("broken.yaml"), "pump: {power: 3 L}\n").toString();
    Cli text = run(broken1, "none.yaml");
    assertThat(text.exit).isEqualTo(3);
    int first = text.out.indexOf("first-tower.yaml: Nothing fails: ");
    int line = text.out.indexOf("  warn     valve-needed");
    int broken = text.out.indexOf(broken1 + ": it cannot be read.");
    int none = text.out.indexOf("none.yaml: it cannot be read.");
    assertThat(List.of(first, line, broken, none)).isSorted().allMatch(i -> i >= 0);
    Cli csv = Cli.run("check", broken1, "first-tower.yaml", "-f", "csv");
    assertThat(csv.exit).isEqualTo(2);
    assertThat(csv.out).contains("\n" + broken1 + ",,unreadable,,,,,,,,,\n");
    assertThat(csv.out).contains("first-tower.yaml,pump-margin,pass,");
  }

  @Test
  void csvHasPlaceAndTowerAndNoWordAmongNumbers() throws Exception {
    for (String plan : List.of("first-tower.yaml", "terrace.yaml", "weighed-salts.yaml")) {
      new ObjectMapper()
          .readTree(Cli.run("check", plan, "-f", "json").out)
          .forEach(
              row -> {
                assertThat(row.get("place").asText()).as(row.toString()).isNotEmpty();
                assertThat(row.get("value").isNumber() || row.get("value").isNull()).isTrue();
                assertThat(row.get("limit").isNumber() || row.get("limit").isNull()).isTrue();
                assertThat(row.get("tower").isNull())
                    .as(row.toString())
                    .isEqualTo(!row.get("place").asText().startsWith("towers["));
              });
    }
  }

  @Test
  void plansSideBySide() {
    Cli same = run("first-tower.yaml", "--compare");
    assertThat(same.out).startsWith("The plans do not differ: 35 are alike.");
    Cli csv = run("proud-tower.yaml", "--compare", "-f", "csv");
    assertThat(csv.out)
        .startsWith(
            "rule,place,tower,need,unit,first_tower_verdict,first_tower_value,first_tower_words,proud_tower_verdict,proud_tower_value,proud_tower_words\n");
    assertThat(csv.out).contains("rest-day,timing[0],,at most,min,pass,12,,fail,40,\n");
    assertThat(csv.out)
        .doesNotContain("starts-per-hour,timing[0],,at most,/h,pass,4.44444444444,,pass,4.44");
    assertThat(csv.exit).isEqualTo(1);
  }

  /** A plan that cannot be read is no plan without findings. */
  @Test
  void anUnreadablePlanIsNotCompared() {
    Cli one = run("missing.yaml", "--compare");
    assertThat(one.exit).isEqualTo(3);
    assertThat(one.out)
        .startsWith("Nothing is compared: fewer than two plans could be read.\nTaken: ");
    Cli two = run("first-tower.yaml", "missing.yaml", "--compare");
    assertThat(two.exit).isEqualTo(3);
    assertThat(two.out).startsWith("The plans do not differ: 35 are alike.");
  }

  /** A rule that one plan answers by tower and the other not at all has one row. */
  @Test
  void aVerdictOnTheWholePlanStandsBesideThoseOfItsParts(@TempDir Path folder) throws Exception {
    String first = Files.readString(Path.of("examples/first-tower.yaml"));
    String lacking = first.replace("diameter: 104 mm, freeboard: 20 mm", "diameter: 104 mm");
    assertThat(lacking).isNotEqualTo(first);
    String other = Files.writeString(folder.resolve("other.yaml"), lacking).toString();
    for (Cli csv :
        new Cli[] {
          run(other, "--compare", "-f", "csv"),
          Cli.run("check", other, "first-tower.yaml", "--compare", "-f", "csv")
        }) {
      assertThat(csv.out.lines().filter(l -> l.startsWith("strainer-holds,"))).hasSize(1);
      assertThat(csv.out.lines().filter(l -> l.startsWith("strainer-holds,")))
          .allMatch(l -> l.contains(",unknown,") && l.contains(",warn,"));
    }
  }

  @Test
  void aRuleIsExplainedWithThePlansNumbers() throws Exception {
    Cli alone = Cli.run("check", "--explain", "no-siphon");
    assertThat(alone.exit).isZero();
    assertThat(alone.out).startsWith("Rule no-siphon.\n");
    Cli with = Cli.run("check", "--explain", "no-siphon", "first-tower.yaml");
    assertThat(with.out)
        .contains("towers[0].outlet  ", "1.30 m", "tank.full", "270 mm", "1.03 m")
        .doesNotContain("gap");
    Cli json = Cli.run("check", "--explain", "no-siphon", "first-tower.yaml", "-f", "json");
    assertThat(new ObjectMapper().readTree(json.out).get(0).get("reads").asText())
        .isEqualTo("towers[0].outlet: 1.30 m; tank.full: 270 mm");
    Cli csv = Cli.run("check", "--explain", "no-siphon", "-f", "csv");
    assertThat(csv.out.lines()).hasSize(2);
    assertThat(Cli.run("check", "--explain", "siphon-back").err).contains("\"no-siphon\"");
  }
}
