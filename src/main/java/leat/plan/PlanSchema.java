package leat.plan;

import java.util.ArrayList;
import java.util.List;
import leat.quantity.JsonText;

/**
 * The JSON Schema (draft 2020-12) of a plan, made from {@link Keys}. It accepts all that the reader
 * accepts; what two values mean together, and the finer ranges, are for the reader.
 */
public final class PlanSchema {
  private final StringBuilder out = new StringBuilder();
  private final List<Kind> kinds = new ArrayList<>();
  private int depth;

  private PlanSchema() {}

  /** The schema as indented JSON, ending in a line feed. */
  public static String text() {
    return new PlanSchema().write();
  }

  private String write() {
    open('{');
    field("$schema", JsonText.string("https://json-schema.org/draft/2020-12/schema"));
    field("title", JsonText.string("A plan of leat"));
    field("description", JsonText.string("One recirculating hydroponic tower system"));
    section(Keys.PLAN, false);
    name("$defs");
    open('{');
    for (int i = 0; i < kinds.size(); i++) {
      name(defName(kinds.get(i)));
      value("{" + kinds.get(i).schema() + "}");
    }
    close('}');
    close('}');
    return out.append('\n').toString();
  }

  private void section(Key section, boolean mayBeEmpty) {
    field("type", mayBeEmpty ? "[\"object\",\"null\"]" : "\"object\"");
    field("additionalProperties", "false");
    name("properties");
    open('{');
    for (int i = 0; i < section.keys.length; i++) {
      name(section.keys[i].name);
      key(section.keys[i]);
    }
    close('}');
  }

  private void key(Key key) {
    open('{');
    field("description", JsonText.string(key.meaning));
    switch (key.shape) {
      case SECTION:
        section(key, true);
        break;
      case SECTIONS:
        field("type", "[\"array\",\"null\"]");
        name("items");
        open('{');
        section(key, true);
        close('}');
        break;
      case LIST:
        field("type", "[\"array\",\"null\"]");
        if (key.fewest > 0) {
          field("minItems", String.valueOf(key.fewest));
        }
        field("items", "{" + scalar(key) + "}");
        break;
      case NAMED:
        field("type", "[\"object\",\"null\"]");
        if (key.allowedNames != null) {
          field("propertyNames", "{" + Kind.enumOf(key.allowedNames) + "}");
        }
        field("additionalProperties", "{" + scalar(key) + "}");
        break;
      default:
        field("anyOf", "[{" + scalar(key) + "},{\"type\":\"null\"}]");
        if (key.byDefault != null) {
          field("default", typed(key, key.byDefault));
        }
        field("examples", "[" + typed(key, key.example) + "]");
    }
    close('}');
  }

  private String scalar(Key key) {
    StringBuilder one = new StringBuilder();
    if (key.kind.words() != null) {
      one.append(key.kind.schema());
    } else {
      one.append("\"$ref\":").append(JsonText.string("#/$defs/" + defName(key.kind)));
      note(key.kind);
    }
    if (key.least == 0) {
      one.append(",\"not\":{\"type\":\"string\",\"pattern\":");
      one.append(JsonText.string(key.open ? NOT_ABOVE_0 : NEGATIVE)).append('}');
    }
    if (key.kind == Kind.NUMBER || key.kind == Kind.COUNT) {
      bound(one, key.open ? "exclusiveMinimum" : "minimum", key.least);
      bound(one, "maximum", key.most);
    }
    return one.toString();
  }

  private static final String NEGATIVE = "^[ \\t]*[-\\u2212][ \\t]*(?:[0.]*[1-9])";
  private static final String NOT_ABOVE_0 =
      NEGATIVE + "|^[ \\t]*[-+\\u2212]?[0.]+(?:[^0-9.,/ ]| +[^0-9 ]|$)";

  private static void bound(StringBuilder one, String word, double limit) {
    if (!Double.isInfinite(limit)) {
      one.append(",\"").append(word).append("\":").append(leat.quantity.NumberText.shortest(limit));
    }
  }

  private void note(Kind kind) {
    String name = defName(kind);
    for (int i = 0; i < kinds.size(); i++) {
      if (defName(kinds.get(i)).equals(name)) {
        return;
      }
    }
    kinds.add(kind);
  }

  /** "a flow at a head" as "flow-at-a-head". */
  private static String defName(Kind kind) {
    String word = kind.word();
    if (word.startsWith("a ") || word.startsWith("an ")) {
      word = word.substring(word.indexOf(' ') + 1);
    }
    return word.replace(",", "").replace("'", "").replace(' ', '-');
  }

  private static String typed(Key key, String value) {
    boolean bare =
        key.kind == Kind.YES_NO
            || (key.kind == Kind.NUMBER || key.kind == Kind.COUNT) && isPlainNumber(value);
    if (bare) {
      return value;
    }
    return JsonText.string(unquoted(value));
  }

  private static boolean isPlainNumber(String value) {
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      if (!(c >= '0' && c <= '9' || c == '.' || c == '-')) {
        return false;
      }
    }
    return true;
  }

  private static String unquoted(String value) {
    boolean quoted = value.length() > 1 && value.charAt(0) == '"' && value.endsWith("\"");
    return quoted ? value.substring(1, value.length() - 1) : value;
  }

  // Indented JSON.

  private boolean first = true;

  private void open(char bracket) {
    out.append(bracket);
    depth++;
    first = true;
  }

  private void close(char bracket) {
    depth--;
    if (!first) {
      indent();
    }
    out.append(bracket);
    first = false;
  }

  private void indent() {
    out.append('\n').append("  ".repeat(depth));
  }

  private void name(String name) {
    out.append(first ? "" : ",");
    first = false;
    indent();
    out.append(JsonText.string(name)).append(": ");
  }

  private void value(String json) {
    out.append(json);
  }

  private void field(String name, String json) {
    name(name);
    value(json);
  }
}
