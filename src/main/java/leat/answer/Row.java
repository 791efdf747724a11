package leat.answer;

/** One row of an answer: a value for each column, null where unknown. */
public final class Row {
  private final Column[] columns;
  private final Object[] values;
  private Row beside;

  Row(Column[] columns) {
    this.columns = columns;
    this.values = new Object[columns.length];
  }

  /** Values that the text alone tells, such as the name of a file: a row of no answer. */
  public static Row aside(Column... columns) {
    return new Row(columns);
  }

  /** Templates filled from this row find the other row's columns, too. */
  public Row with(Row other) {
    Row joined = new Row(columns, values);
    joined.beside = beside == null ? other : beside.with(other);
    return joined;
  }

  private Row(Column[] columns, Object[] values) {
    this.columns = columns;
    this.values = values;
  }

  /** This row or one beside it that has a column of this key, or null. */
  Row holding(String key) {
    return column(key) != null ? this : beside == null ? null : beside.holding(key);
  }

  /** The column of a key, or null. */
  Column column(String key) {
    for (int i = 0; i < columns.length; i++) {
      if (columns[i].key().equals(key)) {
        return columns[i];
      }
    }
    return null;
  }

  private int index(Column column) {
    for (int i = 0; i < columns.length; i++) {
      if (columns[i] == column) {
        return i;
      }
    }
    throw new IllegalArgumentException("column " + column.key() + " is not in this answer");
  }

  private Row put(Column column, Object value) {
    values[index(column)] = value;
    return this;
  }

  /** A quantity in its base unit, or a bare number. */
  public Row set(Column column, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new IllegalStateException(column.key() + " is " + value);
    }
    return put(column, value);
  }

  /** A quantity, or null for unknown. */
  public Row set(Column column, Double value) {
    return value == null ? put(column, null) : set(column, value.doubleValue());
  }

  /** A word. */
  public Row set(Column column, String value) {
    return put(column, value);
  }

  /** Yes or no. */
  public Row set(Column column, boolean value) {
    return put(column, value);
  }

  /** A count. */
  public Row set(Column column, int value) {
    return put(column, value);
  }

  /** A value of a column that holds numbers of several units, or words: written as it is. */
  public Row setAny(Column column, Object value) {
    return value instanceof Double number ? set(column, number.doubleValue()) : put(column, value);
  }

  /** The raw value: Double in the base unit, String, Boolean, Integer or null. */
  public Object get(Column column) {
    return values[index(column)];
  }

  /** Forgets all values. */
  public void clear() {
    java.util.Arrays.fill(values, null);
  }

  Object get(int i) {
    return values[i];
  }
}
