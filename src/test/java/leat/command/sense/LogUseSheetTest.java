package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leat.Sheet;
import leat.Sheet.Row;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Use per day from nothing but the moments at which steps change.
 *
 * <p>Source: level-use.csv, worked out by brute force from a volume stepped every 18 s; a mean over
 * whole days is not the sheet's mean over the span of the edges: within a tenth, as the sheet on
 * logs asks.
 */
class LogUseSheetTest {
  private static final Instant START = Instant.parse("2027-06-01T00:00:00Z");
  private static final int OHM_PER_STEP = 10;

  @TempDir Path folder;

  static Stream<Row> threeDaysAndMore() {
    return Sheet.of("level-use.csv")
        .where(r -> r.text("result").equals("rate") && r.num("span_h") >= 72)
        .atLeast(8);
  }

  static Stream<Row> tooLittle() {
    return Sheet.of("level-use.csv").where(r -> !r.text("result").equals("rate")).atLeast(2);
  }

  @ParameterizedTest
  @MethodSource("threeDaysAndMore")
  void useIsWithinATenth(Row row) throws IOException {
    JsonNode told = told(edges(row), sampled(row));
    double sheet = row.num("use_L_per_day");
    assertThat(told.get("gaps").asInt()).isLessThanOrEqualTo(1);
    assertThat(told.get("use_L_day").asDouble()).isCloseTo(sheet, within(0.1 * sheet));
  }

  /** One change of a step, or none, tells no use. */
  @ParameterizedTest
  @MethodSource("tooLittle")
  void noUseIsMadeUp(Row row) throws IOException {
    assertThat(told(edges(row), sampled(row)).get("use_L_day").isNull()).isTrue();
  }

  /**
   * A log that somebody keeps by hand: 3.2 L a day by arithmetic, looked at every so many hours.
   * The last day is not over at its first row, and no silence of the log's own pace is a gap.
   */
  @ParameterizedTest
  @CsvSource({"1", "3", "6", "12"})
  void rowsFarApart(int hours) throws IOException {
    List<Double> edges = edges(threeDaysAndMore().findFirst().orElseThrow());
    List<int[]> rows = new ArrayList<>();
    for (int h = 0; h <= 240; h += hours) {
      double litres = 43 - 3.2 * h / 24;
      rows.add(new int[] {60 * h, (int) edges.stream().filter(e -> e <= litres).count()});
    }
    JsonNode told = told(edges, rows);
    assertThat(told.get("gaps").asInt()).isZero();
    assertThat(told.get("use_L_day").asDouble()).isCloseTo(3.2, within(0.32));
    assertThat(told.get("use_low_L_day").asDouble()).isLessThan(3.2);
    assertThat(told.get("use_high_L_day").asDouble()).isGreaterThan(3.2);
    assertThat(told.get("days").get(10).get("sure").asBoolean()).as("a day begun").isFalse();
  }

  /** Days that are all alike have no range: the same number is not told as one. */
  @Test
  void aRangeOfOneNumberIsNone() throws IOException {
    Row row = Sheet.of("level-use.csv").where(r -> r.id().equals("US03")).rows().get(0);
    told(edges(row), sampled(row));
    String plan = folder.resolve("tub.yaml").toString();
    assertThat(Cli.run("log", folder.resolve("log.csv").toString(), "--plan", plan).out)
        .contains("the plants drink 2.39 L per day; the refill mark");
  }

  /** Falling edges, L, from the lowest. */
  private static List<Double> edges(Row row) {
    List<Double> edges = new ArrayList<>();
    for (String edge : row.text("falling_edge_L_list").split(";")) {
      edges.add(Double.valueOf(edge.substring(edge.indexOf('=') + 1)));
    }
    return edges;
  }

  /** Minute and step of each row of a series such as "0..11.5:17;11.75..30:16". */
  private static List<int[]> sampled(Row row) {
    String[] parts = row.text("series_h_step").split(";");
    double[] from = new double[parts.length];
    double[] to = new double[parts.length];
    double every = 24;
    for (int i = 0; i < parts.length; i++) {
      from[i] = Double.parseDouble(parts[i].substring(0, parts[i].indexOf("..")));
      to[i] =
          Double.parseDouble(parts[i].substring(parts[i].indexOf("..") + 2, parts[i].indexOf(':')));
      every = i == 0 ? every : Math.min(every, from[i] - to[i - 1]);
    }
    every = parts.length == 1 ? 0.25 : every;
    List<int[]> rows = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      int step = Integer.parseInt(parts[i].substring(parts[i].indexOf(':') + 1));
      for (double h = from[i]; h <= to[i] + 1e-9; h += every) {
        rows.add(new int[] {(int) Math.round(60 * h), step});
      }
    }
    return rows;
  }

  private JsonNode told(List<Double> edges, List<int[]> rows) throws IOException {
    StringBuilder sender = new StringBuilder("  below: " + OHM_PER_STEP + " ohm\n  edges:\n");
    for (int k = 0; k < edges.size(); k++) {
      sender.append("    - ").append(edges.get(k)).append(" L = ");
      sender.append(OHM_PER_STEP * (k + 2)).append(" ohm\n");
    }
    Path plan = folder.resolve("tub.yaml");
    Files.writeString(
        plan,
        "site: { time_zone: UTC }\n"
            + "tank: { shape: box, bottom: 500 mm x 340 mm, height: 400 mm, full: 350 mm, low: 40 mm, intake: 30 mm }\n"
            + "sender:\n"
            + sender);
    StringBuilder log = new StringBuilder("time,ohm,pump\n");
    for (int[] row : rows) {
      log.append(START.plusSeconds(60L * row[0])).append(',');
      log.append(OHM_PER_STEP * (row[1] + 1)).append(",0\n");
    }
    Path file = folder.resolve("log.csv");
    Files.writeString(file, log);
    return LogFiles.json(
        Cli.run("log", file.toString(), "--plan", plan.toString(), "--format", "json").out);
  }
}
