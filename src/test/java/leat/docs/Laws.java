package leat.docs;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import leat.quantity.NumberText;
import leat.quantity.Unit;
import leat.quantity.Units;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The same question asked in another way gets the same answer: flags in another order, in other
 * units, as {@code --set}; the answer in csv, in json and in text.
 */
final class Laws {
  /** What is compared. */
  static final List<String> NAMES =
      List.of("order of flags", "other units", "--set", "csv and json", "text and csv");

  /** Which law was tried, and what is wrong, or null. */
  record Tried(String name, String complaint) {}

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern QUANTITY = Pattern.compile("(\\d+(?:\\.\\d+)?) ?([^\\d\\s.].*)");

  /** A figure: two spaces, its name, its first number. */
  private static final Pattern FIGURE =
      Pattern.compile(
          "  ((?! )(?:(?!  ).)+)  +(-?\\d{1,3}(?: \\d{3})*(?:\\.\\d+)?)(?![\\w:/-]|\\.\\d).*");

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?(?:[eE]-?\\d+)?");

  /** Figures that the text alone tells. */
  private static final Set<String> TEXT_ALONE =
      Set.of(
          "pump in all",
          "charge",
          "rounded one by one",
          "busiest fortnight",
          "pH when stirred",
          "full",
          "strength",
          "contact at the start",
          "printed curve at that flow",
          "ionic strength",
          "warmest day");

  private final Random random;
  private final Path folder;
  private Consumer<String> begins;

  Laws(Random random, Path folder) {
    this.random = random;
    this.folder = folder;
  }

  /** A flag with its value, or an operand, which has no flag. */
  private record Word(Flag flag, List<String> words) {
    String value() {
      return words.get(words.size() - 1);
    }
  }

  Tried next(Consumer<String> begin) {
    begins = begin;
    String name = NAMES.get(random.nextInt(NAMES.size()));
    for (; ; ) {
      Command command = Declared.commands().get(random.nextInt(Declared.commands().size()));
      String[] examples = command.examples();
      List<String> line = Shell.words("leat " + examples[random.nextInt(examples.length)]);
      if (line == null || line.contains("--explain") || command.name().startsWith("plan ")) {
        continue;
      }
      List<Word> words = words(command, line);
      String complaint = null;
      switch (name) {
        case "order of flags":
          complaint = order(command, varied(words, true));
          break;
        case "other units":
          complaint = units(command, varied(words, false));
          break;
        case "--set":
          complaint = set(command, varied(words, false));
          break;
        case "csv and json":
          complaint = csv(command, varied(words, true));
          break;
        default:
          complaint = text(command, varied(words, true));
      }
      return new Tried(name, complaint);
    }
  }

  private static List<Word> words(Command command, List<String> line) {
    List<Word> words = new ArrayList<>();
    for (int i = 1 + command.name().split(" ").length; i < line.size(); i++) {
      String word = line.get(i);
      Flag flag = flag(command, word.replaceFirst("=.*", ""));
      if (flag == null || flag.label() == null || word.contains("=")) {
        words.add(new Word(flag, List.of(word)));
      } else {
        words.add(new Word(flag, List.of(word, line.get(++i))));
      }
    }
    return words;
  }

  private static Flag flag(Command command, String word) {
    for (Flag flag : Declared.allFlags(command)) {
      if (word.equals(flag.name()) || word.equals(flag.shortName()) || word.equals(flag.alias())) {
        return flag;
      }
    }
    return null;
  }

  /** Without the format; numbers larger or smaller where {@code wild}, else now and then one. */
  private List<Word> varied(List<Word> words, boolean wild) {
    List<Word> out = new ArrayList<>();
    for (Word word : words) {
      if (word.flag() != null && word.flag().name().equals("--format")) {
        continue;
      }
      Matcher quantity = QUANTITY.matcher(word.value());
      boolean number = word.flag() != null && word.words().size() == 2 && quantity.matches();
      if (number && random.nextInt(wild ? 2 : 4) == 0) {
        double value = Double.parseDouble(quantity.group(1)) * Math.pow(2, random.nextGaussian());
        String text = NumberText.significant(value, 1 + random.nextInt(3)).replace(" ", "");
        out.add(
            new Word(word.flag(), List.of(word.words().get(0), text + " " + quantity.group(2))));
      } else {
        out.add(word);
      }
    }
    return out;
  }

  private static Trial trial(Command command, List<Word> words, String... more) {
    List<String> args = new ArrayList<>(List.of(command.name().split(" ")));
    words.forEach(w -> args.addAll(w.words()));
    Collections.addAll(args, more);
    return new Trial(args, "");
  }

  private Runner.Said run(Trial trial) {
    begins.accept(trial.reproduced());
    return trial.run(folder);
  }

  /** Words that may change places: each flag once, operands and repeated ones keep their order. */
  private String order(Command command, List<Word> words) {
    List<Word> single = new ArrayList<>();
    List<Word> rest = new ArrayList<>();
    for (Word word : words) {
      boolean free = word.flag() != null && !word.flag().isRepeatable();
      (free ? single : rest).add(word);
    }
    Collections.shuffle(single, random);
    List<Word> other = new ArrayList<>(rest);
    for (Word word : single) {
      other.add(random.nextInt(other.size() + 1), word);
    }
    Trial one = trial(command, words, "--format", "json");
    Trial two = trial(command, other, "--format=json");
    Runner.Said a = run(one);
    Runner.Said b = run(two);
    boolean same = a.exit() == b.exit() && (a.exit() > 1 || a.out().equals(b.out()));
    return same ? null : differ(one, two, a, b, "");
  }

  private String units(Command command, List<Word> words) {
    List<Word> other = new ArrayList<>();
    boolean changed = false;
    for (Word word : words) {
      boolean quantity =
          word.words().size() == 2
              && word.flag().kind() != null
              && word.flag().kind().dimension() != null;
      String text = quantity ? inAnotherUnit(word) : null;
      changed |= text != null;
      other.add(text == null ? word : new Word(word.flag(), List.of(word.words().get(0), text)));
    }
    return changed ? compared(command, words, other) : null;
  }

  /** Exactly the same in another unit, or null where that has no end of digits. */
  private String inAnotherUnit(Word word) {
    Matcher typed = QUANTITY.matcher(word.value());
    List<Unit> units = Units.of(word.flag().kind().dimension());
    Unit to = units.get(random.nextInt(units.size()));
    if (!typed.matches() || to.timesPi()) {
      return null;
    }
    for (Unit from : units) {
      if (from.symbol().equals(typed.group(2)) && !from.timesPi()) {
        BigDecimal up =
            new BigDecimal(typed.group(1))
                .add(BigDecimal.valueOf(from.offset()))
                .multiply(BigDecimal.valueOf(from.numerator()))
                .multiply(BigDecimal.valueOf(to.denominator()));
        BigDecimal down =
            BigDecimal.valueOf(from.denominator()).multiply(BigDecimal.valueOf(to.numerator()));
        BigDecimal[] parts = up.movePointRight(12).divideAndRemainder(down);
        BigDecimal exact = parts[0].movePointLeft(12).subtract(BigDecimal.valueOf(to.offset()));
        boolean ends = parts[1].signum() == 0 && exact.stripTrailingZeros().precision() <= 12;
        return ends ? exact.stripTrailingZeros().toPlainString() + " " + to.symbol() : null;
      }
    }
    return null;
  }

  private String set(Command command, List<Word> words) {
    List<Word> other = new ArrayList<>();
    boolean changed = false;
    for (Word word : words) {
      boolean key = word.flag() != null && word.flag().planPath() != null;
      if (key && !word.flag().isRepeatable() && word.words().size() == 2) {
        other.add(new Word(null, List.of("--set", word.flag().planPath() + "=" + word.value())));
        changed = true;
      } else {
        other.add(word);
      }
    }
    return changed ? compared(command, words, other) : null;
  }

  /** Two ways that both have an answer have the same. */
  private String compared(Command command, List<Word> words, List<Word> others) {
    Trial one = trial(command, words, "--format", "json");
    Trial two = trial(command, others, "--format", "json");
    Runner.Said a = run(one);
    Runner.Said b = run(two);
    if (a.exit() > 1 || b.exit() > 1 || a.out().isEmpty() || !a.out().matches("(?s)\\s*[\\[{].*")) {
      return null;
    }
    String where = a.exit() == b.exit() ? difference(json(a), json(b), "") : "exit";
    return where == null ? null : differ(one, two, a, b, where);
  }

  private static JsonNode json(Runner.Said said) {
    try {
      return JSON.readTree(said.out());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Where two answers differ by more than rounding; words may name the flags as typed. */
  private static String difference(JsonNode a, JsonNode b, String at) {
    if (a.isNumber() && b.isNumber()) {
      double x = a.doubleValue();
      double y = b.doubleValue();
      return Math.abs(x - y) <= 1e-9 * Math.max(1e-3, Math.max(Math.abs(x), Math.abs(y)))
          ? null
          : at + " " + x + " " + y;
    }
    if (a.isTextual() && b.isTextual()) {
      return null;
    }
    if (a.getNodeType() != b.getNodeType()) {
      return at + " " + a + " " + b;
    }
    for (Iterator<String> names = a.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (name.matches("taken|notes|next|problems")) {
        continue;
      }
      String inner =
          b.has(name) ? difference(a.get(name), b.get(name), at + "." + name) : at + "." + name;
      if (inner != null) {
        return inner;
      }
    }
    for (int i = 0; a.isArray() && i < a.size(); i++) {
      String inner = i < b.size() ? difference(a.get(i), b.get(i), at + "[" + i + "]") : "fewer";
      if (inner != null) {
        return inner;
      }
    }
    return a.isBoolean() && a.booleanValue() != b.booleanValue() ? at + " " + a : null;
  }

  /** Rows of csv and of json hold the same, cell by cell, where json is rows too. */
  private String csv(Command command, List<Word> words) {
    Trial one = trial(command, words, "--format", "json", "--quiet");
    Trial two = trial(command, words, "--format", "csv", "--quiet");
    Runner.Said a = run(one);
    Runner.Said b = run(two);
    if (a.exit() != b.exit()) {
      return differ(one, two, a, b, "exit");
    }
    if (a.exit() > 1 || a.out().isBlank() || !a.out().matches("(?s)\\s*[\\[{].*")) {
      return null;
    }
    JsonNode json = json(a);
    List<CSVRecord> rows = rows(b);
    Predicate<JsonNode> nested =
        n -> n.isObject() || n.isArray() && n.size() > 0 && n.get(0).isObject();
    for (JsonNode cell : json.isObject() ? json : JSON.createObjectNode()) {
      if (nested.test(cell)) {
        return null;
      }
    }
    int count = json.isArray() ? json.size() : 1;
    if (count != rows.size()) {
      return differ(one, two, a, b, count + " objects, " + rows.size() + " rows");
    }
    for (int i = 0; i < count; i++) {
      JsonNode object = json.isArray() ? json.get(i) : json;
      for (String column : rows.get(i).getParser().getHeaderNames()) {
        JsonNode cell = object.get(column);
        if (cell != null && !cell.isArray() && !same(rows.get(i).get(column), cell)) {
          return differ(one, two, a, b, column + " of row " + i + ": " + cell);
        }
      }
    }
    return null;
  }

  private static boolean same(String csv, JsonNode json) {
    if (json.isNumber()) {
      return !csv.isEmpty() && Double.parseDouble(csv) == json.doubleValue();
    }
    String text = json.isNull() ? "" : json.asText();
    // A text cell of a plan may begin with an apostrophe against formulas.
    return csv.equals(text) || csv.equals("'" + text);
  }

  private static List<CSVRecord> rows(Runner.Said said) {
    try (CSVParser parser =
        CSVParser.parse(
            said.out(), CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The number of each figure is one of json or csv, rounded to the digits that are shown. */
  private String text(Command command, List<Word> words) {
    if (words.stream().anyMatch(w -> w.flag() != null && w.flag().name().equals("--rows"))) {
      return null;
    }
    Trial one = trial(command, words, "--format", "text");
    Trial two = trial(command, words, "--format", "json");
    Runner.Said a = run(one);
    Runner.Said b = run(two);
    if (a.exit() != b.exit()) {
      return differ(one, two, a, b, "exit");
    }
    List<BigDecimal> numbers = new ArrayList<>();
    if (a.exit() <= 1) {
      numbers(b.out(), numbers);
      numbers(run(trial(command, words, "--format", "csv")).out(), numbers);
      words.forEach(w -> numbers(w.value(), numbers));
    }
    for (String line : a.exit() > 1 ? new String[0] : a.out().split("\n")) {
      Matcher figure = FIGURE.matcher(line);
      if (figure.matches()
          && !TEXT_ALONE.contains(figure.group(1))
          && figure.group(2).replaceAll("\\D", "").length() >= 3
          && numbers.stream().noneMatch(n -> rounds(n, figure.group(2)))) {
        return differ(one, two, a, b, "in no json or csv: " + line);
      }
    }
    return null;
  }

  private static void numbers(String text, List<BigDecimal> into) {
    for (Matcher number = NUMBER.matcher(text); number.find(); ) {
      into.add(new BigDecimal(number.group()).round(new MathContext(15)));
    }
  }

  private static boolean rounds(BigDecimal value, String shown) {
    BigDecimal number = new BigDecimal(shown.replace(" ", ""));
    int zeros = Math.min(0, number.stripTrailingZeros().scale());
    int scale = number.scale() > 0 ? number.scale() : zeros;
    return value.abs().setScale(scale, RoundingMode.HALF_UP).compareTo(number.abs()) == 0;
  }

  private static String differ(Trial one, Trial two, Runner.Said a, Runner.Said b, String where) {
    return where
        + "\n"
        + one.reproduced()
        + "\n"
        + two.reproduced()
        + "\n"
        + a.exit()
        + "\n"
        + a.both()
        + "\n"
        + b.exit()
        + "\n"
        + b.both();
  }
}
