package leat.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leat.plan.GuessRange;
import leat.plan.Key;
import leat.plan.Plan;
import leat.plan.Section;
import leat.plan.Taken;
import leat.quantity.NumberText;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Unreadable;
import leat.system.PipeOf;
import leat.system.Waterway;

/**
 * A number of a plan that nobody has measured, and the ends of its range in the base unit of its
 * key. The range is declared beside the key.
 *
 * @param path key path; of towers that are alike one path for all
 * @param low low end
 * @param high high end
 * @param unit as its key is typed; null for a bare number
 * @param range the declaration
 */
public record Guess(String path, double low, double high, Unit unit, GuessRange range) {
  private record Found(String path, Key key, Double value) {}

  /** The guesses of a plan, in the order of its keys. */
  public static List<Guess> of(Plan plan) {
    Map<String, List<Found>> byPattern = new LinkedHashMap<>();
    walk(plan, plan.root(), leat.plan.Keys.PLAN, "", "", byPattern);
    List<Guess> all = new ArrayList<>();
    int towers = plan.root().sections("towers").size();
    byPattern.forEach(
        (pattern, found) -> {
          boolean every = pattern.indexOf('*') >= 0 && found.size() == towers && areAlike(found);
          for (Found one : every ? found.subList(0, 1) : found) {
            all.add(guess(every ? pattern : one.path(), one));
          }
        });
    return all;
  }

  private static boolean areAlike(List<Found> found) {
    for (Found one : found) {
      if (!java.util.Objects.equals(one.value(), found.get(0).value())) {
        return false;
      }
    }
    return true;
  }

  private static Guess guess(String path, Found found) {
    GuessRange range = found.key().guess(found.value() != null);
    return new Guess(
        path, range.lowOf(found.value()), range.highOf(found.value()), unit(found.key()), range);
  }

  private static Unit unit(Key key) {
    if (key.kind().dimension() == null) {
      return null;
    }
    try {
      return QuantityReader.read(key.example(), key.kind().dimension()).unit();
    } catch (Unreadable e) {
      throw new IllegalStateException(key.name() + ": an example that cannot be read", e);
    }
  }

  private static void walk(
      Plan plan,
      Section section,
      Key declared,
      String path,
      String pattern,
      Map<String, List<Found>> found) {
    for (Key key : declared.keys()) {
      String own = path.isEmpty() ? key.name() : path + "." + key.name();
      String like = pattern.isEmpty() ? key.name() : pattern + "." + key.name();
      if (key.shape() == Key.Shape.SECTION) {
        walk(plan, section.section(key.name()), key, own, like, found);
      } else if (key.shape() == Key.Shape.SECTIONS) {
        List<Section> items = section.sections(key.name());
        for (int i = 0; i < items.size(); i++) {
          walk(plan, items.get(i), key, own + "[" + i + "]", like + "[*]", found);
        }
      } else if (key.shape() == Key.Shape.ONE && (path.isEmpty() || section.isGiven())) {
        Found one = found(plan, section, key, own);
        if (one != null) {
          found.computeIfAbsent(like, k -> new ArrayList<>()).add(one);
        }
      }
    }
  }

  /** A key that is a guess in this plan, or null. */
  private static Found found(Plan plan, Section section, Key key, String path) {
    if (key.guess(false) == null) {
      return null;
    }
    GuessRange range = key.guess(section.has(key.name()));
    if (range == null || isSettled(plan, range.unless())) {
      return null;
    }
    Double value = section.maybe(key.name());
    if (value == null && range.of() != GuessRange.Of.UNTOLD) {
      value = taken(plan, section, key, path);
    }
    boolean asked = range.of() != GuessRange.Of.FACTORS || value != null && value > 0;
    return asked ? new Found(path, key, value) : null;
  }

  /**
   * Whether the plan states the key that settles a guess. A flow that was caught settles the pipes
   * too: what they are off by is in the share of the printed head that explains it.
   */
  private static boolean isSettled(Plan plan, String by) {
    if (by == null) {
      return false;
    }
    int dot = by.indexOf('.');
    return plan.section(by.substring(0, dot)).has(by.substring(dot + 1));
  }

  /** What is taken for a key that is not stated; null when nothing is. */
  private static Double taken(Plan plan, Section section, Key key, String path) {
    boolean riser = path.endsWith(".riser." + key.name());
    if (riser || path.startsWith("pipe.")) {
      switch (key.name()) {
        case "k":
          return Waterway.fittingsK(plan, section, riser, new Taken());
        case "roughness":
          return PipeOf.roughness(section, new Taken());
        default:
          return null;
      }
    }
    return key.guess(false).of() == GuessRange.Of.FACTORS ? key.defaultNumber() : null;
  }

  /** The low end as one types it. */
  public String typedLow() {
    return typed(low);
  }

  /** The high end as one types it. */
  public String typedHigh() {
    return typed(high);
  }

  private String typed(double base) {
    String number = NumberText.shortest(unit == null ? base : unit.fromBase(base));
    return unit == null || unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
  }
}
