package leat.sweep;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Plan;
import leat.plan.Refused;
import leat.plan.Slot;
import leat.quantity.NumberText;
import leat.quantity.Quantity;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Unreadable;
import leat.quantity.Variation;

/**
 * A key and the values it takes: numbers in base units, laid over the bound plan, or texts as in a
 * plan, which are read once each. A key may also be left to a sample between two ends.
 */
public final class Axis {
  /** A last step short of the end by less than this is the end. */
  private static final double ROUNDING = 1e-9;

  private final String path;
  private final Slot slot;
  private final List<String> typed;
  private final List<String> contents;
  private final double[] numbers;
  private final Unit sampledIn;

  private Axis(
      String path,
      Slot slot,
      List<String> typed,
      List<String> contents,
      double[] numbers,
      Unit sampledIn) {
    this.path = path;
    this.slot = slot;
    this.typed = typed;
    this.contents = contents;
    this.numbers = numbers;
    this.sampledIn = sampledIn;
  }

  /** Key path as typed. */
  public String path() {
    return path;
  }

  /** Number of values. */
  public int size() {
    return typed.size();
  }

  /** Whether its values are numbers. */
  public boolean isNumber() {
    return slot != null;
  }

  /** Whether values lie anywhere between its two. */
  public boolean isSampled() {
    return sampledIn != null;
  }

  /** A value as typed. */
  public String typed(int i) {
    return typed.get(i);
  }

  /** A value in the base unit of its key. */
  public double number(int i) {
    return numbers[i];
  }

  /** What is laid over the plan for a text: what was typed, or what its file holds. */
  String value(int i) {
    return contents.get(i);
  }

  /** A number of a sampled key as one would type it. */
  public String typed(double number) {
    return inUnit(sampledIn.fromBase(number), sampledIn);
  }

  private static String inUnit(double value, Unit unit) {
    String number = NumberText.shortest(value);
    return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }

  /**
   * Values of a column of designs.
   *
   * @throws Refused when the key is none, or a value cannot be read
   */
  public static Axis ofRows(Plan plan, String path, List<String> typed) {
    Slot slot = slot(plan, path);
    if (slot == null) {
      return ofTexts(path, typed, typed);
    }
    double[] numbers = new double[typed.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = number(slot.kind(), "design " + (i + 1) + ", " + path, typed.get(i));
    }
    return new Axis(path, slot, typed, null, numbers, null);
  }

  /**
   * An axis.
   *
   * @param plan the plan that is varied
   * @param path key path
   * @param text list with commas, {@code from..to step s}, or {@code from..to} for a sample
   * @throws Refused when the key is none, or a value cannot be read
   */
  public static Axis of(Plan plan, String path, String text) {
    Slot slot = slot(plan, path);
    if (slot == null) {
      List<String> texts = parts(path, text);
      return ofTexts(path, texts, texts);
    }
    String flag = "--vary " + path;
    Kind kind = slot.kind();
    int dots = text.indexOf("..");
    if (dots >= 0 && text.indexOf("step") < 0) {
      return ends(path, slot, flag, text, dots);
    }
    if (dots >= 0) {
      return stepped(path, slot, flag, text);
    }
    List<String> typed = parts(path, text);
    double[] numbers = new double[typed.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = number(kind, flag, typed.get(i));
    }
    return new Axis(path, slot, typed, null, numbers, null);
  }

  /** An axis of texts, such as the fragments of a section: their names and what they hold. */
  public static Axis ofTexts(String path, List<String> names, List<String> contents) {
    return new Axis(path, null, names, contents, null, null);
  }

  /** The slot of a number; null for a key that holds no number. */
  private static Slot slot(Plan plan, String path) {
    try {
      return plan.slot(path);
    } catch (Refused e) {
      if ("no-number-to-vary".equals(e.problems().get(0).code())) {
        return null;
      }
      throw e;
    }
  }

  private static double number(Kind kind, String flag, String typed) {
    return ((Number) KindReader.read(kind, flag, typed)).doubleValue();
  }

  private static Axis ends(String path, Slot slot, String flag, String text, int dots) {
    String high = text.substring(dots + 2).strip();
    String low = text.substring(0, dots).strip();
    double to = number(slot.kind(), flag, high);
    double from = number(slot.kind(), flag, withUnit(low, high));
    if (!(from < to)) {
      throw new Refused(SweepErrors.fromOverTo(flag, text));
    }
    if (slot.kind().dimension() == null) {
      throw new Refused(SweepErrors.noSteps(flag, text));
    }
    try {
      Unit unit = QuantityReader.read(high, slot.kind().dimension()).unit();
      return new Axis(path, slot, List.of(low, high), null, new double[] {from, to}, unit);
    } catch (Unreadable e) {
      throw new Refused(SweepErrors.unreadable(flag, e));
    }
  }

  /** "0.8" before "1.4 m" means metres. */
  private static String withUnit(String low, String high) {
    int unit = high.length();
    while (unit > 0 && !Character.isDigit(high.charAt(unit - 1))) {
      unit--;
    }
    boolean bare = !low.isEmpty() && Character.isDigit(low.charAt(low.length() - 1));
    return bare ? low + high.substring(unit) : low;
  }

  private static Axis stepped(String path, Slot slot, String flag, String text) {
    if (slot.kind().dimension() == null) {
      return counted(path, slot, flag, text);
    }
    List<Quantity> values;
    try {
      values = Variation.of(text, slot.kind().dimension());
    } catch (Unreadable e) {
      throw new Refused(SweepErrors.unreadable(flag, e));
    }
    List<String> typed = new ArrayList<>();
    double[] numbers = new double[values.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = values.get(i).value();
      Unit unit = values.get(i).unit();
      typed.add(inUnit(values.get(i).in(unit), unit));
    }
    return new Axis(path, slot, typed, null, numbers, null);
  }

  /** A range of bare numbers: {@code 4..8 step 1}. */
  private static Axis counted(String path, Slot slot, String flag, String text) {
    int dots = text.indexOf("..");
    int word = text.indexOf("step");
    double from = number(slot.kind(), flag, text.substring(0, dots).strip());
    double to = number(slot.kind(), flag, text.substring(dots + 2, word).strip());
    double step = number(slot.kind(), flag, text.substring(word + "step".length()).strip());
    if (!(from < to)) {
      throw new Refused(SweepErrors.fromOverTo(flag, text));
    }
    if (!(step > 0) || (to - from) / step > Variation.MOST) {
      throw new Refused(SweepErrors.noSteps(flag, text));
    }
    List<String> typed = new ArrayList<>();
    for (int i = 0; i <= (to - from) / step + ROUNDING; i++) {
      typed.add(NumberText.shortest(from + i * step));
    }
    double[] numbers = new double[typed.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = Double.parseDouble(typed.get(i));
    }
    return new Axis(path, slot, typed, null, numbers, null);
  }

  /** Parts a list at its commas, but not inside brackets, braces or quotes. */
  public static List<String> parts(String path, String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    char quote = 0;
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? text.charAt(i) : ',';
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '[' || c == '{') {
        depth++;
      } else if (c == ']' || c == '}') {
        depth--;
      }
      if (i == text.length() || c == ',' && depth == 0 && quote == 0) {
        parts.add(text.substring(from, i).strip());
        from = i + 1;
      }
    }
    for (String part : parts) {
      if (part.isEmpty()) {
        throw new Refused(SweepErrors.emptyValue("--vary " + path, text));
      }
    }
    return parts;
  }
}
