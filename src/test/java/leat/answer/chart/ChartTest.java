package leat.answer.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.cli.Ran;
import leat.quantity.Units;
import org.junit.jupiter.api.Test;

class ChartTest {
  private static final double GAP = Double.NaN;

  private static Chart ramp() {
    return Chart.of("A ramp", Axis.number("step", 3), Axis.of("height", Show.M))
        .line("up", new double[] {0, 10, 20}, new double[] {0, 1, 2});
  }

  /** The scale's whole steps, worked by hand: 0 to 2 in steps of 0.5, 11 cells a metre. */
  @Test
  void drawsALineWhereItIs() {
    String[] lines = TextChart.of(ramp(), false, 40, false).split("\n");
    assertThat(lines[0]).isEqualTo("A ramp");
    assertThat(lines[1]).isEqualTo("  height, m");
    assertThat(lines[2]).startsWith("  2.0+").endsWith("*");
    int zero = 2;
    while (!lines[zero].startsWith("  0.0+")) {
      zero++;
    }
    assertThat(lines[zero]).startsWith("  0.0+*");
    int middle = (2 + zero) / 2;
    assertThat(lines[middle]).startsWith("  1.0+");
    int at = lines[middle].indexOf('*');
    assertThat(at - 6).isCloseTo((40 - 7) / 2, org.assertj.core.data.Offset.offset(2));
    assertThat(lines[zero + 2].strip()).startsWith("0").endsWith("20");
    assertThat(lines[lines.length - 1]).isEqualTo("  * up");
  }

  @Test
  void staysInItsWidthAndInAscii() {
    String[][] lines = {
      {"season", "balcony.yaml"},
      {"pump", "--plan", "terrace.yaml"},
      {"check", "terrace.yaml"},
      {"sow", "balcony.yaml"},
      {"duty", "--plan", "night-rate.yaml"}
    };
    for (String[] line : lines) {
      String[] all = java.util.Arrays.copyOf(line, line.length + 1);
      all[line.length] = "--chart";
      String out = Ran.run(all).out();
      String bare = Ran.run(line).out();
      int from = out.indexOf("\n\n");
      String chart = out.substring(from, out.lastIndexOf("\n\n"));
      assertThat(chart.lines()).allMatch(l -> l.length() <= 80, "80 columns");
      assertThat(chart.chars())
          .as(String.join(" ", line))
          .allMatch(c -> c == '\n' || c >= ' ' && c < 127);
      // the text around it is that of the answer without a chart
      assertThat(out.substring(0, from + 1) + out.substring(out.lastIndexOf("\n\n") + 2))
          .isEqualTo(bare);
    }
  }

  @Test
  void boxCharactersWhereTheTerminalTakesThem() {
    assertThat(TextChart.of(ramp(), false, 0, true))
        .contains("\u2502", "\u2514")
        .doesNotContain("|");
    Chart bars =
        Chart.of("B", Axis.names("n", "a"), Axis.number("v", 3)).bars("v", new double[] {4});
    assertThat(TextChart.of(bars, false, 0, true)).contains("\u2588\u2588");
  }

  @Test
  void aGapStaysAGap() {
    double[] x = {0, 1, 2, 3, 4};
    Chart chart =
        Chart.of("Gap", Axis.number("x", 2), Axis.number("y", 2))
            .line("flat", x, new double[] {5, 5, GAP, 5, 5});
    String drawn = null;
    for (String line : TextChart.of(chart, false, 50, false).split("\n")) {
      drawn = line.contains("***") ? line : drawn;
    }
    assertThat(drawn).containsPattern("\\*{8,} {15,}\\*{8,}$");
  }

  @Test
  void nothingToDrawIsSaid() {
    Chart empty =
        Chart.of("E", Axis.number("x", 2), Axis.number("y", 2))
            .line("l", new double[] {1}, new double[] {GAP});
    assertThat(empty.isEmpty()).isTrue();
    assertThat(TextChart.of(empty, false, 0, false)).isEqualTo("E\n  nothing to draw\n");
    assertThat(Ran.run("pump", "--plan", "first-tower.yaml", "--needed", "--chart").out())
        .contains("No chart: this answer has no numbers to draw.");
  }

  @Test
  void onePointIsDrawn() {
    Chart one =
        Chart.of("One", Axis.number("x", 2), Axis.number("y", 2))
            .points("p", new double[] {7}, new double[] {3});
    assertThat(TextChart.of(one, false, 40, false)).contains("*");
    Scale along = Scale.along(one, false);
    assertThat(along.low()).isLessThan(7);
    assertThat(along.high()).isGreaterThan(7);
  }

  @Test
  void seriesOfOneChartHaveSignsOfTheirOwn() {
    double[] x = {0, 1};
    Chart chart = Chart.of("T", Axis.number("x", 2), Axis.number("y", 2));
    for (int i = 0; i < 5; i++) {
      chart.line("l" + i, x, new double[] {i, i});
    }
    assertThat(TextChart.of(chart, false, 0, false)).contains("* l0   o l1   + l2   x l3   # l4");
  }

  @Test
  void scalesAreWholeEasySteps() {
    Scale up = Scale.up(ramp(), false, 5);
    assertThat(new double[] {up.low(), up.high(), up.step()}).containsExactly(0, 2, 0.5);
    Scale feet = Scale.up(ramp(), true, 5);
    // 2 m are 6.56 ft
    assertThat(new double[] {feet.low(), feet.high(), feet.step()}).containsExactly(0, 8, 2);
    assertThat(Scale.step(7.3, 5)).isEqualTo(2);
    assertThat(Scale.step(0.009, 5)).isEqualTo(0.002);
    Chart limited = ramp().limit("limit", 2.6);
    assertThat(Scale.up(limited, false, 5).high()).isEqualTo(3);
    Chart fromZero =
        Chart.of("z", Axis.number("x", 2), Axis.number("y", 2))
            .line("l", new double[] {0, 1}, new double[] {50, 60})
            .fromZero();
    assertThat(Scale.up(fromZero, false, 5).low()).isZero();
  }

  @Test
  void daysAreMoments() {
    double[] days = Axis.days(LocalDate.of(2027, 3, 27), 3);
    // 2027-03-27 is day 20 904 since 1970-01-01; days of local clocks have 86 400 s here
    assertThat(days).containsExactly(20904 * 86400.0, 20905 * 86400.0, 20906 * 86400.0);
    assertThat(Axis.time("day").text(days[1])).isEqualTo("2027-03-28");
    assertThat(Axis.of("v", Show.L).text(Axis.of("v", Show.L).shown(Units.L.toBase(12.34), false)))
        .isEqualTo("12.3");
  }

  /** Of a million values the picture keeps every stretch's least and greatest, and the gaps. */
  @Test
  void thinsWithoutLosingAPeak() {
    int n = 1_000_000;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = i;
      y[i] = Math.sin(i / 1000.0);
    }
    y[333_333] = 99;
    y[777_777] = -99;
    for (int i = 500_000; i < 510_000; i++) {
      y[i] = GAP;
    }
    Series thin = Thinned.of(new Series(Series.Kind.LINE, "l", x, null, y, null, ""), 4000);
    assertThat(thin.size()).isBetween(3000, 6000);
    assertThat(thin.y()).contains(99, -99);
    boolean gap = false;
    for (int i = 0; i < thin.size(); i++) {
      assertThat(i == 0 || thin.x()[i] > thin.x()[i - 1]).isTrue();
      gap |= Double.isNaN(thin.y()[i]);
    }
    assertThat(gap).isTrue();
  }

  @Test
  void barsTellTheirWords() {
    Chart chart =
        Chart.of(
                "B",
                Axis.names("n", "short", "a name that is far too long for its place"),
                Axis.of("v", Show.L))
            .bars("v", new double[] {Units.L.toBase(2), GAP}, Phrase.of("two"), null);
    String out = TextChart.of(chart, false, 60, false);
    assertThat(out).contains("two", "a name that is far too l..");
    assertThat(out.lines()).allMatch(l -> l.length() <= 60);
  }

  @Test
  void asManyValuesAsPlaces() {
    assertThatThrownBy(() -> ramp().line("x", new double[2], new double[3]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
