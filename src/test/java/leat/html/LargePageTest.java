package leat.html;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Format;
import leat.answer.Told;
import leat.answer.chart.Axis;
import leat.answer.chart.Chart;
import org.junit.jupiter.api.Test;

/** Pages of answers that are very long, or have holes. */
class LargePageTest {
  private static final Column N = Column.number("n", "n", 6);

  private static String page(Answer answer) {
    Format format = new Format("html", false, false, false, false, ',', '.');
    MadeBy made = new MadeBy("test", "leat test", List.of());
    return new AnswerPage(new Told(answer, format), made, new BarePaths(List.of())).write();
  }

  @Test
  void theTableEndsAtTenThousandRowsAndSaysSo() {
    Answer answer = new Answer(N);
    for (int i = 0; i < 10_100; i++) {
      answer.row().set(N, i);
    }
    String page = page(answer);
    assertThat(page).contains("The first 10000 of 10100 rows; --format csv has all.");
    assertThat(page).contains("<td>9999</td>").doesNotContain("<td>10000</td>");
  }

  @Test
  void aMillionValuesAreThinnedAndSaid() {
    int n = 1_000_000;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = i;
      y[i] = i % 1000;
    }
    y[123_456] = 5000;
    String page =
        page(
            new Answer(N)
                .chart(
                    Chart.of("Long", Axis.number("x", 3), Axis.number("y", 3)).line("saw", x, y)));
    assertThat(page)
        .contains(
            "saw: 1000000 values, of which the least and the greatest of each stretch are drawn.");
    assertThat(page.length()).isLessThan(300_000);
    JsonNode chart = Pages.charts(page).get(0);
    assertThat(chart.get("y").get("max").asDouble()).isEqualTo(5000);
    assertThat(Pages.numbers(chart.get("data").get(1))).contains(5000);
  }

  @Test
  void aGapIsNullAndOneRowIsAList() {
    Answer answer = new Answer(N);
    answer.row().set(N, 4);
    answer.chart(
        Chart.of("Gap", Axis.number("x", 3), Axis.number("y", 3))
            .line("l", new double[] {0, 1, 2}, new double[] {1, Double.NaN, 3})
            .points("p", new double[] {1, 1}, new double[] {7, 8}));
    String page = page(answer);
    JsonNode data = Pages.charts(page).get(0).get("data");
    // two points at one place take two lines; where a series has nothing stands an empty word
    assertThat(data.get(0).toString()).isEqualTo("[0,1,1,2]");
    assertThat(data.get(1).toString()).isEqualTo("[1,null,\"\",3]");
    assertThat(data.get(2).toString()).isEqualTo("[\"\",7,8,\"\"]");
    assertThat(page)
        .contains("<th scope=\"row\">n</th><td>4</td>")
        .doesNotContain("class=\"sorts\"");
  }

  @Test
  void nothingToDrawIsSaid() {
    String page =
        page(
            new Answer(N)
                .chart(
                    Chart.of("None", Axis.number("x", 3), Axis.number("y", 3))
                        .line("l", new double[] {0}, new double[] {Double.NaN})));
    assertThat(page).contains("Nothing to draw: no number is known here.");
  }

  @Test
  void pathsAreBare() {
    BarePaths paths =
        new BarePaths(List.of("--plan", "/home/a b/x.yaml", "pump=/srv/p/a.yaml,b.yaml"));
    assertThat(paths.of("/home/a b/x.yaml: full")).isEqualTo("x.yaml: full");
    assertThat(paths.of("see /var/lib/leat/w.csv, 6.5 / 5.4 L/min, 15 min/15 min, 4.44 /h"))
        .isEqualTo("see w.csv, 6.5 / 5.4 L/min, 15 min/15 min, 4.44 /h");
    assertThat(paths.of("--vary pump=/srv/p/a.yaml,/srv/q/b.yaml"))
        .isEqualTo("--vary pump=a.yaml,b.yaml");
    assertThat(paths.of("~/plans/t.yaml")).isEqualTo("t.yaml");
  }
}
