package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code --value KEY}: the same values as the columns of csv and the keys of json. */
class ValueTest {
  private static String[] with(String line, String... more) {
    List<String> words = new ArrayList<>(List.of(line.split(" ")));
    words.addAll(List.of(more));
    return words.toArray(new String[0]);
  }

  /** Second route: every column of the csv, read by Commons CSV, line by line. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "level 83 119 5000 -p sender-tub.yaml",
        "level table -p sender-tub.yaml",
        "level --column ohm --rows sender-log.csv -p sender-tub.yaml",
        "log week-log.csv -p logged-tub.yaml",
        "log week-log.csv -p logged-tub.yaml --rows",
        "pump -p terrace.yaml",
        "check terrace.yaml",
        "plan show first-tower.yaml tank",
        "wind roof.yaml",
        "season balcony.yaml",
        "sweep first-tower.yaml --vary pump.derate=70%,85%"
      })
  void equalsTheColumnsOfCsv(String line) throws Exception {
    Cli csv = Cli.run(with(line, "--format", "csv", "--raw"));
    String input = "level --column";
    JsonNode sums = new ObjectMapper().readTree(Cli.run(with(line, "--format", "json")).out);
    try (CSVParser parser =
        CSVParser.builder()
            .setReader(new StringReader(csv.out))
            .setFormat(CSVFormat.RFC4180.builder().setHeader().get())
            .get()) {
      List<CSVRecord> rows = parser.getRecords();
      for (String key : parser.getHeaderNames()) {
        if (line.startsWith(input) && List.of("time", "ohm").contains(key)
            || rows.size() > 1 && sums.has(key)) {
          continue;
        }
        StringBuilder wanted = new StringBuilder();
        boolean blank = false;
        for (CSVRecord row : rows) {
          wanted.append(row.get(key)).append('\n');
          blank |= row.get(key).isEmpty();
        }
        Cli bare = Cli.run(with(line, "--value", key));
        assertThat(bare.out).as(line + " " + key).isEqualTo(wanted.toString());
        assertThat(bare.exit).isEqualTo(csv.exit == 0 && blank ? 1 : csv.exit);
      }
    }
  }

  /** What a season drinks is its sum, though each day has the key too. */
  @Test
  void aSumComesBeforeItsRows() throws Exception {
    JsonNode json =
        new ObjectMapper().readTree(Cli.run("season", "balcony.yaml", "-f", "json").out);
    Cli bare = Cli.run("season", "balcony.yaml", "--value", "water_use_L");
    assertThat(bare.out.lines()).hasSize(1);
    assertThat(Double.parseDouble(bare.out.strip())).isEqualTo(json.get("water_use_L").asDouble());
    assertThat(Cli.run("season", "balcony.yaml", "--value", "volume_L").out.lines())
        .hasSize(json.get("days").size());
  }

  @Test
  void keysOfJsonAlone() {
    Cli season = Cli.run("season", "balcony.yaml", "--value", "cost_season");
    assertThat(season.exit).isIn(0, 1);
    double json = Cli.run("season", "balcony.yaml", "-f", "json").number("cost_season");
    assertThat(Double.parseDouble(season.out.strip())).isEqualTo(json);
    assertThat(Cli.run("wind", "roof.yaml", "--value", "opens_at_m_s").out.lines().count())
        .isGreaterThan(1);
  }

  @Test
  void oneBareNumber() {
    Cli litres = Cli.run("level", "119", "-p", "sender-tub.yaml", "--value", "volume_L", "-q");
    assertThat(litres.out).matches("[0-9]+[.][0-9]+\n");
    assertThat(litres.err).isEmpty();
    String[] comma = {"level", "119", "-p", "sender-tub.yaml", "--value", "volume_L"};
    assertThat(Cli.run(withAll(comma, "--delimiter", ";", "--decimal", ",", "--units", "us")).out)
        .isEqualTo(litres.out);
    assertThat(Cli.run("level", "127", "-p", "sender-tub.yaml", "--value", "status").out)
        .isEqualTo("between-steps\n");
  }

  private static String[] withAll(String[] line, String... more) {
    List<String> words = new ArrayList<>(List.of(line));
    words.addAll(List.of(more));
    return words.toArray(new String[0]);
  }

  @Test
  void unknownIsAnEmptyLineAndANo() {
    Cli open = Cli.run("level", "open", "-p", "sender-tub.yaml", "--value", "volume_L");
    assertThat(open.out).isEqualTo("\n");
    assertThat(open.exit).isEqualTo(1);
    Cli none =
        Cli.piped(
            "ohm\nnothing\n83\n",
            "level",
            "--column",
            "ohm",
            "-p",
            "sender-tub.yaml",
            "--value",
            "volume_L");
    assertThat(none.out).startsWith("\n").hasLineCount(2);
    assertThat(none.exit).isEqualTo(1);
    Cli good =
        Cli.piped(
            "ohm\n82\n83\n",
            "level",
            "--column",
            "ohm",
            "-p",
            "sender-tub.yaml",
            "--value",
            "status");
    assertThat(good.out).isEqualTo("ok\nok\n");
    assertThat(good.exit).isZero();
  }

  @Test
  void refusals() {
    String[] line = {"level", "--column", "ohm", "-p", "sender-tub.yaml", "--value", "volum_L"};
    Cli slip = Cli.piped("ohm\n83\n", line);
    assertThat(slip.exit).isEqualTo(2);
    assertThat(slip.err).contains("did you mean \"volume_L\"?");
    assertThat(slip.out).isEmpty();
    Cli both = Cli.run("oxygen", "--at", "29 C", "--value", "x", "-f", "csv");
    assertThat(both.exit).isEqualTo(2);
    assertThat(both.err).contains("--value and --format ask for different things");
  }
}
