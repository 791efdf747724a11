package leat.command.sense;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same rows in another shape give the same answer: laws, no outside source. */
class LogShapesTest {
  private static final String TERRACE = LogFiles.text("terrace.csv");
  private static final String[] LINES = TERRACE.split("\n");

  @TempDir Path folder;

  private JsonNode terrace(String text, String... more) {
    return new LogFiles(folder).told("terrace", text, more);
  }

  /** The answer without what counts the file's own odd rows. */
  private static JsonNode without(JsonNode told, String... keys) {
    ObjectNode copy = told.deepCopy();
    copy.remove(List.of(keys));
    return copy;
  }

  private static String times(UnaryOperator<String> shape) {
    StringBuilder out = new StringBuilder();
    for (String line : LINES) {
      int comma = line.indexOf(',');
      String time = line.substring(0, comma);
      out.append(time.startsWith("2") ? shape.apply(time) : time);
      out.append(line.substring(comma)).append('\n');
    }
    return out.toString();
  }

  @Test
  void timesInUtcLocalAndUnixTime() {
    JsonNode told = terrace(TERRACE);
    assertThat(terrace(times(t -> OffsetDateTime.parse(t).toInstant().toString()))).isEqualTo(told);
    assertThat(terrace(times(t -> "" + OffsetDateTime.parse(t).toEpochSecond()))).isEqualTo(told);
    assertThat(terrace(times(t -> OffsetDateTime.parse(t).toEpochSecond() + "000")))
        .isEqualTo(told);
    ZoneId zone = ZoneId.of("Europe/Vienna");
    assertThat(
            terrace(
                times(
                    t ->
                        OffsetDateTime.parse(t)
                            .atZoneSameInstant(zone)
                            .toLocalDateTime()
                            .toString()
                            .replace('T', ' '))))
        .isEqualTo(told);
  }

  @Test
  void semicolonsDecimalCommasMarkAndLineEnds() {
    String other = "\uFEFF" + TERRACE.replace(',', ';').replace('.', ',').replace("\n", "\r\n");
    assertThat(terrace(other)).isEqualTo(terrace(TERRACE));
  }

  @Test
  void columnsInAnotherOrderAndOneMore() {
    StringBuilder out = new StringBuilder();
    for (String line : LINES) {
      List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
      cells.add(0, cells.remove(4));
      cells.add("\"a, b\"");
      out.append(String.join(",", cells)).append('\n');
    }
    String text = out.toString().replaceFirst("\"a, b\"", "note");
    assertThat(terrace(text)).isEqualTo(terrace(TERRACE));
  }

  @Test
  void twoFilesInOrderAndStandardInput() {
    LogFiles files = new LogFiles(folder);
    String header = LINES[0] + "\n";
    String first = String.join("\n", List.of(LINES).subList(0, 900)) + "\n";
    String rest = String.join("\n", List.of(LINES).subList(900, LINES.length)) + "\n";
    String a = files.write("a.csv", first);
    JsonNode told = terrace(TERRACE);
    assertThat(files.told("terrace", List.of(a, files.write("b.csv", header + rest))))
        .isEqualTo(told);
    assertThat(files.told("terrace", List.of(a, files.write("b.csv", rest)))).isEqualTo(told);
    String plan = files.write("plan.yaml", LogFiles.text("terrace.plan.yaml"));
    Cli piped = Cli.piped(TERRACE, "log", "-", "--plan", plan, "--format", "json");
    assertThat(LogFiles.json(piped.out)).isEqualTo(told);
  }

  @Test
  void aRowForEachValue() {
    String[] names = LINES[0].split(",");
    StringBuilder out = new StringBuilder("entity_id,state,last_changed\n");
    for (String line : LINES) {
      String[] cells = line.split(",", -1);
      for (int c = 1; c < cells.length && cells[0].startsWith("2"); c++) {
        String value = names[c].equals("pump") ? cells[c].equals("1") ? "on" : "off" : cells[c];
        out.append(names[c]).append(',').append(value).append(',').append(cells[0]).append('\n');
      }
      out.append(cells[0].startsWith("2") ? "light.kitchen,on," + cells[0] + "\n" : "");
    }
    JsonNode told =
        terrace(
            out.toString(),
            "--name-column",
            "entity_id",
            "--value-column",
            "state",
            "--set",
            "log.time=last_changed");
    String[] counts = {"rows", "headers_again", "clock_not_set", "duplicates", "taken", "notes"};
    assertThat(without(told, counts)).isEqualTo(without(terrace(TERRACE), counts));
  }

  private static long seconds(String line) {
    String time = line.substring(0, line.indexOf(','));
    return time.startsWith("2027") ? OffsetDateTime.parse(time).toEpochSecond() : 0;
  }

  @Test
  void rowsLateWithinTwoHours() {
    List<String> lines = new ArrayList<>(List.of(LINES));
    for (int i = 5; i + 7 < lines.size(); i += 9) {
      if (seconds(lines.get(i + 7)) - seconds(lines.get(i)) < 7200) {
        java.util.Collections.swap(lines, i, i + 7);
      }
    }
    JsonNode told = terrace(String.join("\n", lines) + "\n");
    assertThat(told.get("late_rows").asInt()).isGreaterThan(500);
    String[] counts = {"late_rows", "duplicates"};
    assertThat(without(told, counts)).isEqualTo(without(terrace(TERRACE), counts));
  }

  @Test
  void otherNamesByThePlan() {
    String text = TERRACE.replace("ohm", "sensor.float").replace("cap_counts", "moist");
    JsonNode told = terrace(text, "--set", "log.reading=sensor.float", "--set", "log.cap=moist");
    assertThat(told).isEqualTo(terrace(TERRACE));
  }

  @Test
  void aRowThatIsBeingWrittenIsLeft() {
    String cut = TERRACE + "2027-06-24T00:00:02+02:00,17";
    assertThat(terrace(cut)).isEqualTo(terrace(TERRACE));
    assertThat(terrace(TERRACE.strip())).isEqualTo(terrace(TERRACE));
  }
}
