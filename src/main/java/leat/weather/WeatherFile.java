package leat.weather;

import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import leat.climate.Weather;
import leat.climate.WeatherCheck;
import leat.climate.WeatherDay;
import leat.climate.WeatherProblem;
import leat.plan.Named;
import leat.plan.Plan;
import leat.plan.PlanErrors;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.plan.Section;
import leat.plan.WeatherColumns;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The weather file of a plan: comma, semicolon or tab between columns, decimal comma where the
 * separator is no comma, a byte order mark, either line end. An empty cell is not known.
 */
public final class WeatherFile {
  private static final int MOST_BYTES = 16 << 20;
  private static final String[] COLUMNS = WeatherColumns.keys();
  private static final int DATE = 0;
  private static final int TMIN = 1;
  private static final int TMAX = 2;
  private static final int RAIN = 3;
  private static final int PLANTS = 12;

  private final String name;
  private final int[] at = new int[COLUMNS.length];
  private final String[] called = new String[COLUMNS.length];
  private final List<Problem> problems = new ArrayList<>();
  private final List<WeatherDay> days = new ArrayList<>();
  private final List<Integer> lines = new ArrayList<>();
  private boolean decimalComma;
  private boolean badDate;
  private Weather weather;

  private WeatherFile(String name) {
    this.name = name;
  }

  /** Whether a plan names a weather file. */
  public static boolean isNamed(Plan plan) {
    return plan.section("site").has("weather");
  }

  /**
   * The weather file of a plan.
   *
   * @throws Refused with exit code 2 for a wrong file, 3 for one that cannot be read
   */
  public static WeatherFile of(Plan plan) {
    Section site = plan.section("site");
    String path = (String) site.needRaw("weather");
    WeatherFile file = new WeatherFile(path);
    file.read(text(path, plan.beside(path)), site);
    return file;
  }

  private static String text(String name, File file) {
    if (!file.exists() || file.isDirectory()) {
      String why = file.isDirectory() ? "this is a folder" : "no such weather file";
      throw new Refused(List.of(PlanErrors.cannotRead(name, why)), 3);
    }
    if (file.length() > MOST_BYTES) {
      throw new Refused(WeatherErrors.tooLarge(name));
    }
    try {
      String text = new String(Files.readAllBytes(file.toPath()), StandardCharsets.UTF_8);
      return text.startsWith("\ufeff") ? text.substring(1) : text;
    } catch (IOException e) {
      throw new Refused(List.of(PlanErrors.cannotRead(name, "it cannot be read")), 3);
    }
  }

  private void read(String text, Section site) {
    int end = text.indexOf('\n');
    String first = end < 0 ? text : text.substring(0, end);
    char delimiter = first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    decimalComma = delimiter != ',';
    CSVFormat csv =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(csv).get()) {
      boolean header = true;
      for (CSVRecord record : parser) {
        if (header) {
          header(record, site);
          header = false;
        } else {
          row(record, (int) parser.getCurrentLineNumber());
        }
      }
      if (header || days.isEmpty() && problems.isEmpty()) {
        throw new Refused(WeatherErrors.empty(name));
      }
    } catch (IOException | UncheckedIOException e) {
      throw new Refused(WeatherErrors.broken(name));
    }
    judge();
  }

  private void header(CSVRecord record, Section site) {
    List<String> there = new ArrayList<>();
    for (int i = 0; i < record.size(); i++) {
      there.add(record.get(i).strip());
    }
    Named own = site.named("weather_columns");
    for (int i = 0; i < COLUMNS.length; i++) {
      String other = (String) own.get(COLUMNS[i]);
      called[i] = other == null ? WeatherColumns.usual(i) : other;
      at[i] = there.indexOf(called[i]);
      if (at[i] < 0 && other != null) {
        problems.add(WeatherErrors.noColumn(name, COLUMNS[i], other, there));
      }
    }
    if (at[DATE] < 0 && problems.isEmpty()) {
      problems.add(WeatherErrors.noColumn(name, "date", called[DATE], there));
    }
    boolean temperatures = at[TMIN] >= 0 && at[TMAX] >= 0;
    if (!temperatures && at[PLANTS] < 0 && problems.isEmpty()) {
      int missing = at[TMIN] < 0 ? TMIN : TMAX;
      problems.add(WeatherErrors.noColumn(name, COLUMNS[missing], called[missing], there));
    }
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
  }

  private void row(CSVRecord record, int line) {
    if (record.size() > largest() + 1 && decimalsSplit(record)) {
      problems.add(WeatherErrors.decimalCommas(name, line));
      return;
    }
    LocalDate date = date(record, line);
    double[] v = new double[COLUMNS.length];
    for (int i = 1; i < v.length; i++) {
      v[i] = at[i] < 0 ? Double.NaN : number(cell(record, i), i, line);
    }
    if (date != null) {
      lines.add(line);
      days.add(
          new WeatherDay(
              date, v[1], v[2], v[3], v[4], v[5], v[6], v[7], v[8], v[9], v[10], v[11], v[12],
              v[13]));
    }
  }

  private int headerSize = -1;

  private int largest() {
    if (headerSize < 0) {
      for (int i = 0; i < at.length; i++) {
        headerSize = Math.max(headerSize, at[i]);
      }
    }
    return headerSize;
  }

  /** More cells than the header names and all of them whole numbers: 5,3 was split in two. */
  private static boolean decimalsSplit(CSVRecord record) {
    for (int i = 1; i < record.size(); i++) {
      String cell = record.get(i).strip();
      for (int k = 0; k < cell.length(); k++) {
        if ("0123456789-+".indexOf(cell.charAt(k)) < 0) {
          return false;
        }
      }
    }
    return true;
  }

  private String cell(CSVRecord record, int column) {
    return at[column] < record.size() ? record.get(at[column]).strip() : "";
  }

  private LocalDate date(CSVRecord record, int line) {
    String typed = cell(record, DATE);
    LocalDate date = null;
    try {
      date = typed.length() == 10 ? LocalDate.parse(typed) : null;
    } catch (DateTimeParseException e) {
      date = null;
    }
    // One message shows the form; the other rows are most often written like it.
    if (date == null && !badDate) {
      badDate = true;
      problems.add(WeatherErrors.notADate(name, line, called[DATE], typed));
    }
    return date;
  }

  private double number(String typed, int column, int line) {
    if (typed.isEmpty() || typed.equals("-") || typed.equalsIgnoreCase("na")) {
      return Double.NaN;
    }
    String cell = decimalComma && typed.indexOf('.') < 0 ? typed.replace(',', '.') : typed;
    for (int k = 0; k < cell.length(); k++) {
      if ("0123456789.-+eE".indexOf(cell.charAt(k)) < 0) {
        return bad(typed, column, line);
      }
    }
    try {
      double number = Double.parseDouble(cell);
      return Double.isInfinite(number) ? bad(typed, column, line) : number;
    } catch (NumberFormatException e) {
      return bad(typed, column, line);
    }
  }

  private double bad(String typed, int column, int line) {
    problems.add(WeatherErrors.notANumber(name, line, called[column], typed));
    return Double.NaN;
  }

  private void judge() {
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
    List<WeatherProblem> found = WeatherCheck.problems(days);
    for (int i = 0; i < found.size(); i++) {
      WeatherProblem one = found.get(i);
      problems.add(WeatherErrors.impossible(name, lines.get(one.row()), called(one), one));
    }
    if (!problems.isEmpty()) {
      throw new Refused(problems);
    }
    weather = Weather.of(days);
    if (weather.size() == 0) {
      throw new Refused(WeatherErrors.empty(name));
    }
  }

  /** The file's own name of the column that a problem is about. */
  private String called(WeatherProblem problem) {
    for (int i = 0; i < COLUMNS.length; i++) {
      if (WeatherColumns.usual(i).equals(problem.column())) {
        return called[i];
      }
    }
    return problem.column();
  }

  /** Name of the file as the plan has it. */
  public String name() {
    return name;
  }

  /** Its days. */
  public Weather weather() {
    return weather;
  }
}
