package leat.docs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leat.quantity.NumberText;

/** Random damage to the texts of plans. */
final class Mutations {
  private static final String[] SCRAPS = {
    "\t", " ", "\r", "\n", ":", ": ", "- ", "[", "]", "{", "}", ",", "\"", "'", "#", "&a ", "*a",
    "<<: *a", "---\n", "...\n", "|", ">", "!!int ", "%", "@", "0", "-", "e9", ".", "\u00a0",
    "\uFEFF", "\u00b5", "\u0000", "null", "nan", ".inf", "1e400", "0 mm", "-1 m"
  };

  /** A number that stands alone: no part of a name, a date or a time. */
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.:/-])\\d+(?:\\.\\d+)?(?![\\w.:/-])");

  private static final String[] EXTREMES = {
    "0", "1", "-1", "0.000001", "1000000", "1e12", "1e-12", "0.1", "100"
  };

  private Mutations() {}

  /** A plan text with one to four things wrong. */
  static String ofPlan(Random random, String plan) {
    String text = plan;
    for (int n = 1 + random.nextInt(4); n > 0; n--) {
      text = random.nextInt(3) == 0 ? of(random, text) : ofLines(random, text);
    }
    return text;
  }

  /** A plan that is still well written: numbers of it larger or smaller, whole blocks gone. */
  static String ofNumbers(Random random, String plan) {
    String text = plan;
    for (int n = random.nextInt(3); n > 1; n--) {
      text = withoutBlock(random, text);
    }
    boolean all = random.nextInt(4) == 0;
    Matcher number = NUMBER.matcher(text);
    StringBuilder out = new StringBuilder();
    while (number.find()) {
      boolean change = all || random.nextInt(12) == 0;
      number.appendReplacement(out, change ? other(random, number.group()) : number.group());
    }
    return number.appendTail(out).toString();
  }

  private static String other(Random random, String number) {
    int dice = random.nextInt(12);
    if (dice == 0) {
      return EXTREMES[random.nextInt(EXTREMES.length)];
    }
    double factor = Math.pow(10, (random.nextDouble() - 0.5) * (dice < 4 ? 4 : 0.5));
    double value = Double.parseDouble(number) * factor;
    String text = NumberText.significant(value, 1 + random.nextInt(4)).replace(" ", "");
    return number.contains(".") ? text : text.replaceAll("(\\d)\\..*", "$1");
  }

  /** Without a line and those that are indented deeper below it. */
  private static String withoutBlock(Random random, String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int at = random.nextInt(lines.size());
    int depth = indent(lines.get(at));
    lines.remove(at);
    while (at < lines.size() && !lines.get(at).isBlank() && indent(lines.get(at)) > depth) {
      lines.remove(at);
    }
    return String.join("\n", lines);
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  /** Damage to single characters. */
  static String of(Random random, String text) {
    if (text.isEmpty()) {
      return SCRAPS[random.nextInt(SCRAPS.length)];
    }
    int at = random.nextInt(text.length());
    switch (random.nextInt(5)) {
      case 0:
        return text.substring(0, at) + text.substring(at + 1);
      case 1:
        return text.substring(0, at) + SCRAPS[random.nextInt(SCRAPS.length)] + text.substring(at);
      case 2:
        return text.substring(0, at);
      case 3:
        return digit(random, text, at);
      default:
        return text.substring(0, at) + (char) (32 + random.nextInt(95)) + text.substring(at + 1);
    }
  }

  /** The next digit becomes another, or many. */
  private static String digit(Random random, String text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        String other =
            new String[] {"0", "9", "-1", "00", "1e9", "0.0001", "1/0"}[random.nextInt(7)];
        return text.substring(0, i) + other + text.substring(i + 1);
      }
    }
    return text;
  }

  private static String ofLines(Random random, String text) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    int at = random.nextInt(lines.size());
    int other = random.nextInt(lines.size());
    switch (random.nextInt(6)) {
      case 0:
        lines.remove(at);
        break;
      case 1:
        lines.add(at, lines.get(other));
        break;
      case 2:
        lines.set(at, swapped(lines.get(at), lines.get(other)));
        break;
      case 3:
        lines.set(at, lines.get(at).replaceFirst("  ", "\t"));
        break;
      case 4:
        return text.replace("\n", "\r\n");
      default:
        lines.set(at, digit(random, lines.get(at), 0));
    }
    return String.join("\n", lines);
  }

  /** The key of one line with the value of another. */
  private static String swapped(String line, String other) {
    int colon = line.indexOf(':');
    int behind = other.indexOf(':');
    return colon < 0 || behind < 0 ? other : line.substring(0, colon) + other.substring(behind);
  }
}
