package leat.answer;

import leat.quantity.JsonText;

/** One value of a column as JSON. */
public final class JsonValue {
  private JsonValue() {}

  /** Appends the value in the column's metric unit; null for unknown. */
  public static void append(StringBuilder out, Object value, Column column) {
    if (value == null) {
      out.append("null");
    } else if (value instanceof Double number) {
      out.append(CsvWriter.number(number, column));
    } else if (value instanceof Boolean || value instanceof Integer) {
      out.append(value);
    } else {
      out.append(JsonText.string(String.valueOf(value)));
    }
  }
}
