package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class RowStreamTest {
  private static final String BAND =
      "ok,116,140,19.5288153635,17.5857349562,21.4718957708,42.5419440905,false";
  private static final String HEAD =
      "reading_ohm,status,level_low_mm,level_high_mm,volume_L,volume_low_L,volume_high_L,full_pct,below_low";

  private static Ran rows(String input, String... more) {
    String[] args = new String[5 + more.length];
    System.arraycopy(
        new String[] {"level", "--plan", "sender-tub.yaml", "--column", "ohm"}, 0, args, 0, 5);
    System.arraycopy(more, 0, args, 5, more.length);
    return Ran.withInput(input, args);
  }

  @Test
  void inputColumnsStayAndBadRowsKeepTheirPlace() {
    Ran cli = rows("id,ohm,say\n1,83,\"a, b\"\n2,,x\n3,abc,y\n4,open,z\n5\n");
    assertThat(cli.out())
        .isEqualTo(
            "id,ohm,say,"
                + HEAD
                + "\n1,83,\"a, b\",82.6,"
                + BAND
                + "\n2,,x,,no-reading,,,,,,,\n3,abc,y,,bad-row,,,,,,,\n4,open,z,,open,,,,,,,\n5,,,,no-reading,,,,,,,\n");
    assertThat(cli.err())
        .isEqualTo(
            "Mind: 1 of 5 rows could not be read; the first: row 3, column ohm: expected a reading in ohm, such as 83, or open; got \"abc\"\n");
    assertThat(cli.exit()).isZero();
  }

  @Test
  void semicolonsDecimalCommasMarkAndCarriageReturns() {
    Ran cli = rows("\ufeffid;ohm\r\n1;83,0\r\n\r\n2;\"83,0\"\r\n");
    String band = BAND.replace(',', ';').replace('.', ',');
    assertThat(cli.out())
        .isEqualTo(
            "id;ohm;"
                + HEAD.replace(',', ';')
                + "\n1;83,0;82,6;"
                + band
                + "\n2;\"83,0\";82,6;"
                + band
                + "\n");
  }

  @Test
  void outputSeparatorsAsAsked() {
    Ran cli = rows("id;ohm\n1;83\n", "--delimiter", ";", "--decimal", ",");
    assertThat(cli.lines()[1]).startsWith("1;83;82,6;ok;116;140;19,5288153635;");
  }

  @Test
  void jsonRows() {
    Ran cli = rows("id,ohm\n1,83\n2,x\n", "--format", "json");
    assertThat(cli.json()).hasSize(2);
    assertThat(cli.json().get(0).get("id").asText()).isEqualTo("1");
    assertThat(cli.json().get(0).get("volume_low_L").asDouble()).isEqualTo(17.5857349562);
    assertThat(cli.json().get(1).get("status").asText()).isEqualTo("bad-row");
    assertThat(rows("ohm\n", "--format", "json").json()).isEmpty();
  }

  @Test
  void strictClashTypoAndNothing() {
    assertThat(rows("ohm\n83\nabc\n83\n", "--strict").exit()).isEqualTo(2);
    assertThat(rows("ohm\n83\nabc\n", "--strict").err())
        .isEqualTo(
            "standard input: row 2, column ohm: expected a reading in ohm, such as 83, or open; got \"abc\"\n");
    assertThat(rows("ohm,status\n83,x\n").err())
        .isEqualTo(
            "standard input: the rows have a column \"status\" already; --prefix leat_ puts something before the answer's names\n");
    assertThat(rows("ohm,status\n83,x\n", "--prefix", "leat_").lines()[0])
        .startsWith("ohm,status,leat_reading_ohm,leat_status,");
    assertThat(rows("oh\n83\n").err())
        .isEqualTo("standard input: no column \"ohm\"; did you mean \"oh\"?\n");
    assertThat(rows("").err())
        .isEqualTo(
            "standard input: there are no rows, not even a header line with the column names\n");
    assertThat(rows("", "--rows", "none.csv").exit()).isEqualTo(3);
  }

  @Test
  void tooManyCellsKeepTheColumns() {
    Ran cli = rows("id,ohm\n1,83,extra\n2,83\n");
    assertThat(cli.lines()[1]).isEqualTo("1,\"83,extra\",,bad-row,,,,,,,");
    assertThat(cli.err()).contains("row 1, column ohm: it has 3 cells, the header 2");
  }

  @Test
  void aStrayQuoteSpoilsOneRowOfAMillion() throws IOException {
    int n = 1_000_000;
    StringBuilder in = new StringBuilder("id,ohm\n");
    for (int i = 1; i <= n; i++) {
      in.append(i).append(i == n / 2 ? ",\"83\n" : ",83\n");
    }
    Ran cli = rows(in.toString());
    String[] lines = cli.lines();
    assertThat(lines).hasSize(n + 2);
    assertThat(lines[n / 2]).isEqualTo("500000,\"\"\"83\",,bad-row,,,,,,,");
    assertThat(lines[n / 2 + 1]).isEqualTo("500001,83,82.6," + BAND);
    assertThat(lines[n]).isEqualTo("1000000,83,82.6," + BAND);
    assertThat(cli.err()).startsWith("Mind: 1 of 1000000 rows could not be read");
  }

  @Test
  void aLineWithoutEndIsRefused() {
    Ran cli = rows("ohm\n" + "8".repeat(3 << 20));
    assertThat(cli.exit()).isEqualTo(2);
    assertThat(cli.err()).contains("a line is longer than 1 MB");
  }

  @Test
  void keptAnswersAreTheSameAsFreshOnes() {
    Random random = new Random(7);
    StringBuilder in = new StringBuilder("ohm\n");
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      String cell = String.valueOf(random.nextInt(30_000) / 100.0);
      cells.add(cell);
      in.append(cell).append('\n');
    }
    String[] lines = rows(in.toString()).lines();
    for (int i = 0; i < cells.size(); i += 97) {
      String fresh =
          Ran.run("level", cells.get(i), "--plan", "sender-tub.yaml", "--format", "csv").lines()[1];
      assertThat(lines[i + 1]).isEqualTo(cells.get(i) + "," + fresh);
    }
  }

  /** Records against Commons CSV, over random texts with quotes, line ends and short reads. */
  @Test
  void recordsAsCommonsCsvReadsThem() throws IOException {
    Random random = new Random(11);
    String[] pieces = {
      "a", "1.5", "\"\"", "\"x\"", "\"a,b\"", "\"a\nb\"", "\"q\"\"q\"", "", "é", "5\"7"
    };
    for (int round = 0; round < 2000; round++) {
      StringBuilder text = new StringBuilder();
      int lines = 1 + random.nextInt(6);
      for (int i = 0; i < lines; i++) {
        int cells = 1 + random.nextInt(4);
        for (int c = 0; c < cells; c++) {
          text.append(c == 0 ? "" : ",").append(pieces[random.nextInt(pieces.length)]);
        }
        text.append(random.nextBoolean() ? "\n" : "\r\n");
      }
      assertThat(own(text.toString(), random))
          .as(text.toString())
          .isEqualTo(commons(text.toString()));
    }
  }

  private static List<List<String>> own(String text, Random random) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    InputStream dribble =
        new ByteArrayInputStream(bytes) {
          @Override
          public int read(byte[] b, int off, int len) {
            return super.read(b, off, Math.min(len, 1 + random.nextInt(5)));
          }
        };
    RowLines lines = new RowLines(dribble, "test");
    List<List<String>> all = new ArrayList<>();
    while (lines.advance()) {
      lines.split();
      assertThat(lines.isBroken()).as(text).isFalse();
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < lines.cells(); i++) {
        cells.add(lines.text(i));
      }
      all.add(cells);
    }
    return all;
  }

  private static List<List<String>> commons(String text) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
    List<List<String>> all = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
      for (CSVRecord record : parser) {
        all.add(record.toList());
      }
    }
    return all;
  }
}
