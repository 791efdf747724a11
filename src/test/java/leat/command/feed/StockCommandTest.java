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

class StockCommandTest {
  /** Bottles of the sheet; ST07 rests on a table of gypsum that was found to be the hydrate's. */
  static Stream<Row> bottles() {
    return Sheet.of("solution-stock.csv")
        .where(r -> r.num("dilution") == 1 && !r.id().equals("ST07"))
        .atLeast(6);
  }

  static Stream<Row> mixes() {
    return Sheet.of("solution-stock.csv").where(r -> r.num("dilution") > 1).atLeast(3);
  }

  private static List<String> line(Row r, double makes) {
    List<String> line = new ArrayList<>(List.of("stock", "--one-bottle", "--format", "csv", "-q"));
    for (String salt : r.text("salts_g").split(";")) {
      line.addAll(List.of("--weigh", salt));
    }
    line.addAll(List.of("--bottle", r.text("bottle_L") + " L", "--makes", makes + " L"));
    line.addAll(List.of("--coldest", r.text("temperature_C") + " C"));
    line.addAll(List.of("--set", "target.ph=" + r.text("ph")));
    return line;
  }

  private static List<String[]> table(Cli cli) {
    List<String[]> rows = new ArrayList<>();
    for (String row : cli.out.split("\n")) {
      rows.add(row.split(",", -1));
    }
    return rows;
  }

  @ParameterizedTest
  @MethodSource("bottles")
  void judgesABottleAsTheSheetDoes(Row r) {
    Cli cli = Cli.run(line(r, 200).toArray(new String[0]));
    List<String[]> rows = table(cli);
    String[] shares = r.text("share_of_solubility").split(";");
    assertThat(rows).hasSize(shares.length + 1);
    boolean no = List.of("crystals", "keep-apart", "precipitates").contains(r.text("verdict"));
    assertThat(cli.exit).isEqualTo(no ? 1 : 0);
    for (int i = 0; i < shares.length; i++) {
      String[] want = shares[i].split("=");
      String[] got = rows.get(i + 1);
      assertThat(got[1]).isEqualTo(want[0]);
      double share = 100 * Double.parseDouble(want[1]);
      assertThat(Double.parseDouble(got[3])).isCloseTo(share, within(1e-5 * share));
      assertThat(got[4]).as(r.idAndProvenance()).isEqualTo(r.text("verdict"));
    }
  }

  @ParameterizedTest
  @MethodSource("mixes")
  void judgesTheTankAsTheSheetDoes(Row r) {
    Cli cli = Cli.run(line(r, r.num("dilution") * r.num("bottle_L")).toArray(new String[0]));
    String[] got = table(cli).get(1);
    assertThat(got[9]).as(r.idAndProvenance()).isEqualTo(r.text("verdict"));
    if (r.has("si_gypsum")) {
      assertThat(Double.parseDouble(got[10]))
          .isCloseTo(r.num("si_gypsum"), within(r.num("tol_si")));
    }
    if (r.has("si_brushite")) {
      assertThat(Double.parseDouble(got[11]))
          .isCloseTo(r.num("si_brushite"), within(r.num("tol_si")));
    }
  }

  private static final String[] TWO = {
    "stock",
    "--weigh",
    "calcium-nitrate-4h2o=180",
    "--weigh",
    "potassium-nitrate=80 g",
    "--weigh",
    "magnesium-sulfate-7h2o=0.095 kg",
    "--weigh",
    "monopotassium-phosphate=27",
    "--bottle",
    "1 L",
    "--makes",
    "200 L",
    "--coldest",
    "10 C"
  };

  @Test
  void twoBottlesKeepCalciumApart() {
    Cli cli = Cli.run(TWO);
    assertThat(cli.exit).isZero();
    assertThat(cli.out)
        .startsWith(
            "Two bottles of 1.00 L, each for 200 L of tower water: nothing settles out down to 10.0 C.\n")
        .contains("bottle 1: clear         calcium-nitrate-4h2o     180 g       11 % of what")
        .contains("bottle 2: clear         potassium-nitrate        80.0 g      38 % of what")
        .contains("takes 5.0 mL/L of each");
  }

  @Test
  void oneBottleForBothIsNo() {
    List<String> line = new ArrayList<>(List.of(TWO));
    line.add("--one-bottle");
    Cli cli = Cli.run(line.toArray(new String[0]));
    assertThat(cli.exit).isEqualTo(1);
    assertThat(cli.out).contains("calcium must not share a bottle with sulfate or phosphate");
  }

  @Test
  void gramsForATankAreMadeAsStrongAsTheColdAllows() {
    Cli cli =
        Cli.run(
            "stock",
            "--weigh",
            "potassium-nitrate=18",
            "--for",
            "45 L",
            "--bottle",
            "1 L",
            "--coldest",
            "5 C",
            "--format",
            "csv",
            "-q");
    String[] got = table(cli).get(1);
    // 80 % of 17.1 g in 100 g at 5 C (half way between 13.3 and 20.9, solution-tank.md) a litre.
    assertThat(Double.parseDouble(got[2])).isCloseTo(136.8, within(1e-6));
    assertThat(Double.parseDouble(got[6])).isCloseTo(136.8 / 18 * 45, within(1e-6));
    assertThat(Double.parseDouble(got[3])).isCloseTo(80, within(1e-6));
    assertThat(got[4]).isEqualTo("clear");
  }

  @Test
  void boughtBottlesOfAPlan() {
    Cli cli =
        Cli.run("stock", "--plan", "hard-water.yaml", "--bottle", "1 L", "--format", "csv", "-q");
    String[] got = table(cli).get(2);
    assertThat(got[0]).isEqualTo("leaf B");
    assertThat(Double.parseDouble(got[6])).isCloseTo(400, within(1e-6));
    // 20 April to 1 October: 165 days; 44.06 L x (first + 7 changes) + 4 L/d x 165.
    assertThat(Double.parseDouble(got[7])).isCloseTo(44.0575723041 * 8 + 660, within(1e-6));
    assertThat(got[8]).isEqualTo("3");
  }

  @Test
  void refusals() {
    Cli typo = Cli.run("stock", "--weigh", "potassium-nitrat=18", "--bottle", "1 L");
    assertThat(typo.exit).isEqualTo(2);
    assertThat(typo.err)
        .isEqualTo("--weigh: no salt \"potassium-nitrat\"; did you mean \"potassium-nitrate\"?\n");
    Cli negative = Cli.run("stock", "--weigh", "potassium-nitrate=-1", "--bottle", "1 L");
    assertThat(negative.exit).isEqualTo(2);
    assertThat(negative.err)
        .isEqualTo("--weigh potassium-nitrate: a weight cannot be negative; leave it out\n");
    assertThat(Cli.run("stock").err).startsWith("leat stock: --weigh is needed");
    assertThat(Cli.run("stock", "--weigh", "potassium-nitrate=1", "--bottle", "1 L").err)
        .startsWith("leat stock: --makes is needed");
    Cli inThePlan =
        Cli.run("stock", "--set", "feed.stock={bottle: 1 L, makes: 200 L, grams: {gypsumm: 1 g}}");
    assertThat(inThePlan.exit).isEqualTo(2);
    assertThat(inThePlan.err).contains("no salt \"gypsumm\"; did you mean \"gypsum\"?");
  }
}
