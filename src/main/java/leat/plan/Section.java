package leat.plan;

import java.util.List;
import leat.quantity.NumberText;
import leat.quantity.Quantity;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Unreadable;

/**
 * The read values of one section of a plan. Absent values are asked for in three ways: {@code
 * maybe} (null), {@code get} (the declared default, noted in what the caller takes), {@code need}
 * (refused with the key's name and an example).
 */
public final class Section {
  final Key key;
  final String path;
  final Object[] values;
  final Node[] nodes;
  private final Asker asker;

  /** Empty sections for those that are not given, made when first asked for. */
  private final Section[] absent;

  Section(Key key, String path, Asker asker) {
    this.key = key;
    this.path = path;
    this.asker = asker;
    this.values = new Object[key.keys.length];
    this.nodes = new Node[key.keys.length];
    this.absent = new Section[key.keys.length];
  }

  private Section(Section same) {
    this.key = same.key;
    this.path = same.path;
    this.asker = same.asker;
    this.values = same.values.clone();
    this.nodes = same.nodes.clone();
    this.absent = same.absent;
  }

  /** A copy whose values can be changed; the sections in it are shared. */
  Section copy() {
    return new Section(this);
  }

  /** Sets a value in a fresh copy; null takes it away. */
  void lay(int i, Object value) {
    values[i] = value;
    nodes[i] = null;
  }

  private int index(String name) {
    int i = key.indexOf(name);
    asker.ask(this, key.keys[i]);
    return i;
  }

  /** Path of a key of this section, such as {@code towers[0].riser.bore}. */
  public String path(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  /** Whether the key was given. */
  public boolean has(String name) {
    return values[index(name)] != null;
  }

  /** Whether any key of this section was given. */
  public boolean isGiven() {
    for (int i = 0; i < values.length; i++) {
      Object value = values[i];
      if (value instanceof Section inner ? inner.isGiven() : value != null) {
        return true;
      }
    }
    return false;
  }

  /** The value or null. */
  public Object raw(String name) {
    return values[index(name)];
  }

  /** The text as typed, or null; a number laid over without a text in the unit of its example. */
  public String typed(String name) {
    int i = index(name);
    if (nodes[i] != null) {
      return nodes[i].text;
    }
    return values[i] instanceof Double laid ? written(key.keys[i], laid) : null;
  }

  private static String written(Key key, double value) {
    if (key.kind.dimension() == null) {
      return NumberText.shortest(value);
    }
    try {
      Unit unit = QuantityReader.read(key.example, key.kind.dimension()).unit();
      return NumberText.shortest(unit.fromBase(value)) + " " + unit.symbol();
    } catch (Unreadable e) {
      throw new IllegalStateException(key.name + ": an example that cannot be read", e);
    }
  }

  /** A quantity in its base unit or a bare number, or null. */
  public Double maybe(String name) {
    Object value = raw(name);
    return value == null ? null : Double.valueOf(((Number) value).doubleValue());
  }

  /** A quantity in its base unit or a bare number; refused when absent. */
  public double need(String name) {
    return ((Number) needRaw(name)).doubleValue();
  }

  /** Any value; refused when absent. */
  public Object needRaw(String name) {
    Object value = raw(name);
    if (value == null) {
      throw missing(name);
    }
    return value;
  }

  /** The refusal for an absent key. */
  public Refused missing(String name) {
    Key missing = key.keys[index(name)];
    String flag = asker.planName() == null ? asker.flagFor(path(name)) : null;
    return new Refused(
        flag == null
            ? PlanErrors.missing(asker.planName(), path(name), missing, asker.example(missing))
            : PlanErrors.missingFlag(flag, missing));
  }

  /**
   * A quantity in its base unit or a bare number; the declared default, noted as taken, when
   * absent.
   */
  public double get(String name, Taken taken) {
    return ((Number) orDefault(name, taken)).doubleValue();
  }

  /** Any value; the declared default, noted as taken, when absent. */
  public Object orDefault(String name, Taken taken) {
    int i = index(name);
    if (values[i] != null) {
      return values[i];
    }
    taken.note(key.keys[i].takenAs);
    return key.keys[i].defaultValue();
  }

  /** A quantity, a bare number, true or false, or its absence; it is read when it is asked. */
  public Value value(String name) {
    int i = key.indexOf(name);
    return new Value(this, key.keys[i], key.keys[i].keys.length > 0 ? null : values[i], null);
  }

  /** The same, which can tell later that its declared default was taken. */
  public Value value(String name, Taken taken) {
    int i = key.indexOf(name);
    return new Value(this, key.keys[i], values[i], taken);
  }

  /** A key is asked for. */
  void ask(Key asked) {
    asker.ask(this, asked);
  }

  /** A quantity or the fallback, noted as taken in these words. */
  public double getOr(String name, double otherwise, String as, Taken taken) {
    Double value = maybe(name);
    if (value != null) {
      return value;
    }
    taken.note(as);
    return otherwise;
  }

  /** true or false, with its declared default. */
  public boolean yes(String name, Taken taken) {
    return (Boolean) orDefault(name, taken);
  }

  /** A text or choice, with its declared default. */
  public String word(String name, Taken taken) {
    return (String) orDefault(name, taken);
  }

  /** A text or choice, or null. */
  public String text(String name) {
    return (String) raw(name);
  }

  /** A whole number, with its declared default. */
  public int count(String name, Taken taken) {
    return (int) get(name, taken);
  }

  /** A whole number, or another one when absent. */
  public int countOr(String name, int otherwise) {
    Double value = maybe(name);
    return value == null ? otherwise : value.intValue();
  }

  /** A section; an empty one when absent. */
  public Section section(String name) {
    int i = index(name);
    if (values[i] != null) {
      return (Section) values[i];
    }
    if (absent[i] == null) {
      absent[i] = new Section(key.keys[i], path(name), asker);
    }
    return absent[i];
  }

  /** A list of sections; empty when absent. */
  @SuppressWarnings("unchecked")
  public List<Section> sections(String name) {
    List<?> list = (List<?>) raw(name);
    return list == null ? List.of() : (List<Section>) list;
  }

  /** A list of values; empty when absent. */
  public List<?> list(String name) {
    List<?> list = (List<?>) raw(name);
    return list == null ? List.of() : list;
  }

  /** A map from names to values; empty when absent. */
  public Named named(String name) {
    Object value = raw(name);
    return value == null ? new Named() : (Named) value;
  }

  /** Place where the key was typed, or null. */
  Origin origin(String name) {
    Node node = nodes[index(name)];
    return node == null ? null : node.origin;
  }

  /** The node of a key, or null. */
  Node node(String name) {
    return nodes[index(name)];
  }

  /** A problem at a key of this section; at its flag when it was not typed in a file. */
  public Problem problem(String name, String code, String message) {
    return new Problem(code, origin(name), path(name), message);
  }

  /** Place of item {@code i} of a list, narrowed to a quantity in it. */
  Origin itemOrigin(String name, int i, Quantity part, boolean last) {
    Node item = node(name).children.get(i);
    String text = item.text;
    int start = last ? text.lastIndexOf(part.typed()) : text.indexOf(part.typed());
    return item.origin.part(start, start + part.typed().length());
  }
}
