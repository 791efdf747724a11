package leat.answer;

/**
 * One readable line with the keys of columns in it, filled from a row: {@code "Lifting {flow_L_min}
 * takes {total_head_m} of head"}.
 *
 * <p>{@code {key}} is the value with its unit, as its column shows it; {@code {key!}} leaves the
 * unit out; {@code {low_key..high_key}} is a range, one number where both read the same; {@code {key:duration}} shows a time in the unit that reads best; {@code {key:money}} as
 * a till prints it; {@code {key:up}} must be reached and is rounded up, {@code {key:down}} must not
 * be passed and is rounded down; {@code {{} is a brace. Unknown values read "-".
 */
final class Template {
  /** Templates that were filled, while somebody keeps them; null otherwise. */
  private static java.util.Set<String> used;

  private Template() {}

  /** Keeps each template that is filled from now on: a test compares them with the source. */
  static void keep(java.util.Set<String> into) {
    used = into;
  }

  static Phrase fill(Row row, String template) {
    if (used != null) {
      used.add(template);
    }
    Phrase phrase = Phrase.of();
    int at = 0;
    while (true) {
      int open = template.indexOf('{', at);
      if (open < 0) {
        return phrase.add(Phrase.said(template.substring(at)));
      }
      phrase.add(Phrase.said(template.substring(at, open)));
      if (template.startsWith("{{", open)) {
        phrase.add("{");
        at = open + 2;
      } else {
        int close = template.indexOf('}', open);
        if (close < 0) {
          throw new IllegalArgumentException("no closing brace: " + template);
        }
        put(phrase, row, template.substring(open + 1, close), template);
        at = close + 1;
      }
    }
  }

  private static void put(Phrase phrase, Row row, String asked, String template) {
    int dots = asked.indexOf("..");
    if (dots > 0) {
      range(phrase, row, asked.substring(0, dots), asked.substring(dots + 2), template);
      return;
    }
    boolean bare = asked.endsWith("!");
    int colon = asked.indexOf(':');
    String key = bare ? asked.substring(0, asked.length() - 1) : asked;
    key = colon < 0 ? key : asked.substring(0, colon);
    Row holder = holder(row, key, template);
    Column column = holder.column(key);
    Object value = holder.get(column);
    if (value instanceof Double number && asked.endsWith(":up")) {
      phrase.addAtLeast(number, column.show());
    } else if (value instanceof Double number && asked.endsWith(":down")) {
      phrase.addAtMost(number, column.show());
    } else if (value instanceof Double number && colon >= 0) {
      as(phrase, number, asked.substring(colon + 1), template);
    } else if (value instanceof Double number && bare && column.show() != null) {
      phrase.addBare(number, column.show());
    } else {
      phrase.add(Answer.phrase(holder, column));
    }
  }

  private static Row holder(Row row, String key, String template) {
    Row holder = row == null ? null : row.holding(key);
    if (holder == null) {
      throw new IllegalArgumentException("no column " + key + " for: " + template);
    }
    return holder;
  }

  private static void range(Phrase phrase, Row row, String low, String high, String template) {
    Row from = holder(row, low, template);
    Row to = holder(row, high, template);
    Object least = from.get(from.column(low));
    Object most = to.get(to.column(high));
    if (least == null || most == null) {
      phrase.add("-");
    } else if (to.column(high).show() != null) {
      phrase.range((Double) least, (Double) most, to.column(high).show());
    } else {
      Phrase first = Answer.phrase(from, from.column(low));
      Phrase last = Answer.phrase(to, to.column(high));
      phrase.add(first);
      if (!first.render(false).equals(last.render(false))) {
        phrase.add(" to ").add(last);
      }
    }
  }

  private static void as(Phrase phrase, double value, String how, String template) {
    switch (how) {
      case "duration":
        phrase.duration(value);
        return;
      case "money":
        phrase.money(value, null);
        return;
      default:
        throw new IllegalArgumentException("no way to show " + how + ": " + template);
    }
  }
}
