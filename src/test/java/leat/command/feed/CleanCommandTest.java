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
            "Fill 43.7 L of water, add 352 mL of 2.5 % hypochlorite, run 30 min without plants, empty, rinse twice.\n")
        .contains("filled to the full mark, 44.1 L, so that the whole wall gets wet")
        .contains("loop needs            6.20 L      intake mark and towers: it is enough")
        .contains("never together with acid, vinegar or pH-down: chlorine gas");
    assertThat(Cli.run("clean", "--plan", "hard-water.yaml", "--volume", "5 L").out)
        .contains("it is less than the loop needs: the pump will draw air")
        .contains("the wall above that up to the full mark stays dry");
  }

  @Test
  void cautionsStandInEveryFormat() {
    Cli csv = Cli.run("clean", "--plan", "hard-water.yaml", "--format", "csv");
    assertThat(csv.err).contains("chlorine gas");
    Cli weak = Cli.run("clean", "-p", "hard-water.yaml", "--strength", "0.1 %", "--aim", "2 g/L");
    assertThat(weak.exit).isEqualTo(1);
    assertThat(weak.out).startsWith("The bottle is too weak: ").contains("chlorine gas");
  }

  @Test
  void refusals() {
    Cli strong = Cli.run("clean", "--plan", "hard-water.yaml", "--strength", "120 %");
    assertThat(strong.exit).isEqualTo(2);
    assertThat(strong.err).isEqualTo("--strength \"120 %\": a strength cannot be over 100 %\n");
    assertThat(Cli.run("clean", "--with", "vinegar").err).contains("hypochlorite, peroxide");
    assertThat(Cli.run("clean", "--plan", "hard-water.yaml", "--strength", "40 %").err)
        .isEqualTo(
            "--strength \"40 %\": no bleach is over 20 %: household bleach has 2 to 6 %, pool chlorine 12 to 15 %\n");
    assertThat(Cli.run("clean", "--plan", "hard-water.yaml", "--aim", "20 g/L").err)
        .isEqualTo(
            "--aim \"20 g/L\": free chlorine for cleaning lies between 5 and 5000 mg/L; 200 mg/L is usual\n");
    assertThat(Cli.run("clean", "--plan", "hard-water.yaml", "--aim", "20 L").exit).isEqualTo(2);
    assertThat(Cli.run("clean", "--with", "peroxide").err)
        .startsWith("leat clean: --strength is needed");
  }

  /** 0.3 % is 3 g/L: row CL05 of the sheet, typed both ways. */
  @Test
  void anAimInPerCent() {
    String[] line = {
      "clean",
      "--volume",
      "20 L",
      "--with",
      "peroxide",
      "--strength",
      "3 %",
      "--aim",
      "0.3 %",
      "-f",
      "json"
    };
    assertThat(Cli.run(line).number("bottle_mL")).isCloseTo(1981.1788, within(2e-3));
    line[8] = "3 g/L";
    assertThat(Cli.run(line).number("bottle_mL")).isCloseTo(1981.1788, within(2e-3));
  }

  @Test
  void bleachIsHypochlorite() {
    Cli bleach =
        Cli.run(
            "clean", "--volume", "25 L", "--with", "bleach", "--strength", "2.5 %", "-f", "json");
    assertThat(bleach.number("bottle_mL")).isCloseTo(200, within(1e-9));
  }

  /**
   * A plan with peroxide asked for bleach: 12 % and 4 g/L are of the other bottle, and 200 mg/L for
   * 30 minutes is what bleach does (common practice, sheet solution-clean.csv, row CL01).
   */
  @Test
  void theOtherSanitiserTakesNothingOfThePlansBottle() {
    String[] line = {
      "clean",
      "--plan",
      "hard-water.yaml",
      "--set",
      "clean={with: peroxide, strength: 12 %, aim: 4 g/L, contact: 9 h}",
      "--volume",
      "25 L",
      "-f",
      "json",
      "--with",
      "bleach",
      "--strength",
      "2.5 %"
    };
    Cli bleach = Cli.run(line);
    assertThat(bleach.number("bottle_mL")).isCloseTo(200, within(1e-9));
    assertThat(bleach.number("contact_min")).isEqualTo(30);
    assertThat(bleach.out).contains("200 mg/L of free chlorine").contains("\"30 min\"");
    Cli noStrength = Cli.run(java.util.Arrays.copyOf(line, line.length - 2));
    assertThat(noStrength.exit).isEqualTo(2);
    assertThat(noStrength.err).startsWith("leat clean: --strength is needed");
    line[10] = "peroxide";
    line[11] = "--contact";
    line[12] = "8 h";
    Cli peroxide = Cli.run(java.util.Arrays.copyOf(line, line.length - 2));
    assertThat(peroxide.number("strength_mg_L")).isEqualTo(4000);
    assertThat(peroxide.number("contact_min")).isEqualTo(540);
  }

  /** The tub of the plan holds less than 90 L to its rim. */
  @Test
  void moreThanTheTubHolds() {
    Cli over = Cli.run("clean", "--plan", "hard-water.yaml", "--volume", "90 L");
    assertThat(over.exit).isEqualTo(2);
    assertThat(over.err).startsWith("--volume: the tank holds ").contains("to the rim");
  }

  /** The plan takes what the flag takes: 0.3 % of peroxide is 3 g/L, row CL05 of the sheet. */
  @Test
  void thePlansAimInPerCent() {
    String[] line = {
      "clean",
      "--volume",
      "20 L",
      "--set",
      "clean={with: peroxide, strength: 3 %, aim: 0.3 %}",
      "-f",
      "json"
    };
    assertThat(Cli.run(line).number("bottle_mL")).isCloseTo(1981.1788, within(2e-3));
    line[4] = "clean={with: peroxide, strength: 3 %, aim: 3 L}";
    assertThat(Cli.run(line).err).contains("a concentration is needed");
  }
}
