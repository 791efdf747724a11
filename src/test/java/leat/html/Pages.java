package leat.html;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.cli.Ran;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Pages made for tests, and what stands in them. */
final class Pages {
  private static final Pattern DATA =
      Pattern.compile(
          "<script type=\"application/json\" id=\"charts\">(.*?)</script>", Pattern.DOTALL);

  private Pages() {}

  /** The page of a command line. */
  static String of(String... line) {
    List<String> all = new ArrayList<>(List.of(line));
    all.addAll(List.of("--format", "html"));
    Ran ran = Ran.run(all.toArray(new String[0]));
    if (!ran.out().startsWith("<!DOCTYPE html>")) {
      throw new AssertionError(String.join(" ", all) + ": " + ran.err() + ran.out());
    }
    return ran.out();
  }

  static Path file(Path folder, String name, String page) {
    try {
      return Files.writeString(folder.resolve(name), page);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** The data of the charts. */
  static JsonNode charts(String page) {
    Matcher matcher = DATA.matcher(page);
    if (!matcher.find()) {
      throw new AssertionError("no charts in the page");
    }
    try {
      return new ObjectMapper().readTree(matcher.group(1));
    } catch (IOException e) {
      throw new AssertionError(matcher.group(1), e);
    }
  }

  /** The page read by a strict parser, without what stands in style and script. */
  static Document parsed(String page) throws Exception {
    String bare =
        page.replaceAll("(?s)<(script|style)([^>]*)>.*?</\\1>", "<$1$2></$1>")
            .replace("<!DOCTYPE html>", "");
    return javax.xml.parsers.DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(bare)));
  }

  /** The numbers of a column of csv; NaN for an empty cell. */
  static double[] column(String csv, String key) {
    String[] lines = csv.split("\n");
    int at = List.of(lines[0].split(",")).indexOf(key);
    double[] values = new double[lines.length - 1];
    for (int i = 0; i < values.length; i++) {
      String cell = lines[i + 1].split(",", -1)[at];
      values[i] = cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
    }
    return values;
  }

  /** Where the values of the first series of a kind stand in the data of a chart. */
  static int column(JsonNode chart, String kind) {
    int at = 1;
    for (JsonNode series : chart.get("series")) {
      at += series.get("low").asBoolean() ? 1 : 0;
      if (series.get("kind").asText().equals(kind)) {
        return at;
      }
      at++;
    }
    throw new AssertionError("no " + kind + " in " + chart);
  }

  /** The numbers of a list of the data; NaN for a gap. */
  static double[] numbers(JsonNode list) {
    double[] values = new double[list.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = list.get(i).isNumber() ? list.get(i).asDouble() : Double.NaN;
    }
    return values;
  }
}
