package leat.plan;

import java.util.ArrayList;
import java.util.List;

/** A map of a plan from free names to values of one kind, in the order they were typed. */
public final class Named {
  final List<String> names = new ArrayList<>();
  final List<Object> values = new ArrayList<>();
  final List<Origin> origins = new ArrayList<>();
  final List<Origin> nameOrigins = new ArrayList<>();

  void add(String name, Origin nameOrigin, Object value, Origin origin) {
    names.add(name);
    nameOrigins.add(nameOrigin);
    values.add(value);
    origins.add(origin);
  }

  /** Number of entries. */
  public int size() {
    return names.size();
  }

  /** Name of entry {@code i}. */
  public String name(int i) {
    return names.get(i);
  }

  /** Value of entry {@code i}. */
  public Object value(int i) {
    return values.get(i);
  }

  /** Place of the value of entry {@code i}. */
  Origin origin(int i) {
    return origins.get(i);
  }

  /** Value of a name, or null. */
  public Object get(String name) {
    int i = names.indexOf(name);
    return i < 0 ? null : values.get(i);
  }

  /** A problem at the name of entry {@code i}. */
  public Problem problem(int i, String path, String code, String message) {
    return new Problem(code, nameOrigins.get(i), path + "." + names.get(i), message);
  }
}
