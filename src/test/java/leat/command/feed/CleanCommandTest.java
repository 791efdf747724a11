package leat.command.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CleanCommandTest {
  static Stream<Row> rows() {
    return Sheet.of("solution-clean.csv").atLeast(7);
  }

  private static String label(String basis) {
    switch (basis) {
      case "w/v available chlorine":
        return "volume";
      case "w/w NaOCl":
        return "hypochlorite-weight";
      default:
        return "weight";
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void saysWhatTheSheetSays(Row r) {
    boolean bleach = "hypochlorite".equals(r.text("agent"));
    List<String> line =
        new ArrayList<>(
            List.of(
                "clean",
                "--volume",
                r.text("final_volume_L") + " L",
                "--with",
                r.text("agent"),
                "--strength",
                r.text("strength_pct") + " %",
                "--basis",
                label(r.text("strength_basis")),
                "--aim",
                bleach ? r.text("target") + " mg/L" : 10 * r.num("target") + " g/L",
                "--format",
                "json"));
    if (r.has("density_kg_L")) {
      line.addAll(List.of("--density", r.text("density_kg_L") + " kg/L"));
    }
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.word("status")).isEqualTo(r.text("status"));
    assertThat(cli.exit).isEqualTo("reached".equals(r.text("status")) ? 0 : 1);
    assertThat(cli.number("bottle_g_L")).isCloseTo(r.num("bottle_g_L"), within(1e-5));
    if (!r.has("bottle_mL")) {
      assertThat(cli.number("bottle_mL")).isNull();
      return;
    }
    assertThat(cli.number("bottle_mL"))
        .isCloseTo(r.num("bottle_mL"), within(1e-6 * r.num("bottle_mL")));
    assertThat(cli.number("water_L")).isCloseTo(r.num("water_L"), within(1e-5));
    assertThat(cli.number("bottle_mL_L"))
        .isCloseTo(r.num("bottle_mL_per_L"), within(1e-6 * r.num("bottle_mL_per_L")));
  }

  @Test
  void aPlanSaysWhatTheLoopNeeds() {
    Cli cli = Cli.run("clean", "--plan", "hard-water.yaml");
    assertThat(cli.exit).isZero();
    assertThat(cli.out)
        .startsWith(
            "Fill 14.5 L of water, add 117 mL of 2.5 % hypochlorite, run 30 min without plants, empty, rinse twice.\n")
        .contains("loop needs            6.20 L      intake mark and towers: it is enough")
        .contains("never together with acid, vinegar or pH-down: chlorine gas");
    assertThat(Cli.run("clean", "--plan", "hard-water.yaml", "--volume", "5 L").out)
        .contains("it is less than the loop needs: the pump will draw air");
  }

  @Test
  void cautionsStandInEveryFormat() {
    Cli csv = Cli.run("clean", "--plan", "hard-water.yaml", "--format", "csv");
    assertThat(csv.err).contains("chlorine gas");
    Cli weak = Cli.run("clean", "--plan", "hard-water.yaml", "--aim", "60 g/L");
    assertThat(weak.exit).isEqualTo(1);
    assertThat(weak.out).startsWith("The bottle is too weak: ").contains("chlorine gas");
  }

  @Test
  void refusals() {
    Cli strong = Cli.run("clean", "--plan", "hard-water.yaml", "--strength", "120 %");
    assertThat(strong.exit).isEqualTo(2);
    assertThat(strong.err).isEqualTo("--strength \"120 %\": a strength cannot be over 100 %\n");
    assertThat(Cli.run("clean", "--with", "vinegar").err).contains("hypochlorite, peroxide");
    assertThat(Cli.run("clean", "--with", "peroxide").err)
        .startsWith("leat clean: --strength is needed");
  }
}
