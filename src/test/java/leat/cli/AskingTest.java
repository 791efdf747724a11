package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import leat.command.Commands;
import org.junit.jupiter.api.Test;

/** Operands that are plans, questions asked at once, near misses, units set once, screens. */
class AskingTest {
  private static String[] run(Map<String, String> environment, boolean screen, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(new byte[0]),
            out,
            err,
            environment,
            Path.of("examples"),
            null);
    int exit = Commands.run(args, screen ? terminal.onScreen() : terminal);
    return new String[] {
      String.valueOf(exit),
      out.toString(StandardCharsets.UTF_8),
      err.toString(StandardCharsets.UTF_8)
    };
  }

  @Test
  void anOperandThatEndsInYamlIsAPlan() {
    Ran operand = Ran.run("tank", "first-tower.yaml", "--level", "200 mm", "--format", "json");
    Ran flag = Ran.run("tank", "--plan", "first-tower.yaml", "--level=200 mm", "--format", "json");
    assertThat(operand.exit()).as(operand.err()).isZero();
    assertThat(operand.out()).isEqualTo(flag.out());
    assertThat(Ran.run("tank", "first-tower.yaml", "--level", "200 mm").out())
        .contains("--plan first-tower.yaml");
    assertThat(Ran.run("tank", "first-tower.yaml", "-p", "terrace.yaml").exit()).isEqualTo(2);
  }

  @Test
  void whatIsMissingIsAskedForAtOnce() {
    assertThat(Ran.run("head").err().lines().toList()).hasSizeGreaterThan(2);
    Ran tank = Ran.run("tank", "--level", "200 mm");
    assertThat(tank.exit()).isEqualTo(2);
    assertThat(tank.err()).contains("--shape: needed", "--height: needed");
    // whatever is not asked for is not shown
    assertThat(tank.out()).isEmpty();
  }

  @Test
  void helpSaysWhatIsRequired() {
    assertThat(Ran.run("help", "head").out())
        .startsWith("Head lost in a riser at a flow.\n")
        .containsPattern("--flow FLOW .*\\(required\\)")
        .containsPattern("(?s)--bore LENGTH.*?\\(required without a plan\\)")
        .contains("elbow", "`leat help flags`");
    assertThat(Ran.run("help", "tank").out()).contains("(default 0 mm)");
    assertThat(Ran.run("help", "acid").out()).contains("nitric-60");
    assertThat(Ran.run("help", "flags").out()).contains("--units SYSTEM", "(default metric)");
    assertThat(Ran.run("help").out()).contains("  dose salts ", "  plan set ");
  }

  @Test
  void aTowerGoesByItsName() {
    String set = "towers[NORTH].outlet=1.2 m";
    Ran named = Ran.run("pump", "--plan", "terrace.yaml", "--set", set, "--format", "csv");
    Ran counted =
        Ran.run(
            "pump", "--plan", "terrace.yaml", "--set", "towers[0].outlet=1.2 m", "--format", "csv");
    assertThat(named.exit()).as(named.err()).isEqualTo(counted.exit());
    assertThat(named.out()).isNotEmpty().isEqualTo(counted.out());
    assertThat(Ran.run("plan", "show", "terrace.yaml", "towers[North].riser").out())
        .isNotEmpty()
        .isEqualTo(Ran.run("plan", "show", "terrace.yaml", "towers[0].riser").out());
  }

  @Test
  void unitsAreSetOnce() {
    String[] sum = {
      "head", "--flow", "8 L/min", "--lift", "1.9 m", "--bore", "13 mm", "--length=2 m"
    };
    assertThat(run(Map.of("LEAT_UNITS", "us"), false, sum)[1]).contains(" gal/min", " ft");
    assertThat(run(Map.of("LEAT_UNITS", "usa"), false, sum)[0]).isEqualTo("2");
    String[] plan = {"tank", "first-tower.yaml", "--set", "units=us", "--level", "200 mm"};
    assertThat(run(Map.of(), false, plan)[1]).contains(" gal", " in");
    String[] metric = {
      "tank", "first-tower.yaml", "--set", "units=us", "--units=metric", "--level", "200 mm"
    };
    assertThat(run(Map.of("LEAT_UNITS", "us"), false, metric)[1])
        .contains(" L")
        .doesNotContain("gal");
  }

  @Test
  void aNarrowScreenIsWrappedForAndNoNumberLeavesItsUnit() {
    Map<String, String> narrow = Map.of("COLUMNS", "60");
    String[] line = {"tank", "first-tower.yaml", "--level", "200 mm"};
    String wrapped = run(narrow, false, line)[1];
    String whole = run(Map.of(), false, line)[1];
    assertThat(wrapped).isNotEqualTo(whole);
    assertThat(wrapped.replaceAll("\\s+", " ")).isEqualTo(whole.replaceAll("\\s+", " "));
    wrapped
        .lines()
        .filter(l -> !l.startsWith("Next: "))
        .forEach(l -> assertThat(l.length()).as(l).isLessThanOrEqualTo(60));
    assertThat(wrapped.lines().filter(l -> l.matches(".* [0-9.]+")).toList())
        .isSubsetOf(whole.lines().toList());
    String[] csv = {"tank", "first-tower.yaml", "--every", "10 mm", "--format", "csv"};
    assertThat(run(narrow, false, csv)[1]).isEqualTo(run(Map.of(), false, csv)[1]);
  }

  @Test
  void colourIsForVerdictsOnAScreen() {
    String[] line = {"check", "proud-tower.yaml"};
    String plain = run(Map.of(), false, line)[1];
    String painted = run(Map.of(), true, line)[1];
    assertThat(painted).contains("\u001b[31mFAIL\u001b[0m");
    assertThat(painted.replaceAll("\u001b\\[[0-9]+m", "")).isEqualTo(plain);
    assertThat(run(Map.of("COLUMNS", "60"), true, line)[1]).contains("\u001b[31mFAIL\u001b[0m");
    assertThat(run(Map.of("NO_COLOR", "1"), true, line)[1]).isEqualTo(plain);
    assertThat(run(Map.of(), false, "check", "proud-tower.yaml", "--color", "always")[1])
        .isEqualTo(painted);
    assertThat(run(Map.of(), true, "check", "proud-tower.yaml", "--color", "never")[1])
        .isEqualTo(plain);
  }
}
