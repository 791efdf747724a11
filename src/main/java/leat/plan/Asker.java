package leat.plan;

import java.util.ArrayList;
import java.util.List;

/** Whom to tell of a missing key: the plan's file name, or the flags that can set keys. */
final class Asker {
  private final String planName;
  private final List<String> flagPaths;
  private final List<String> flags;

  private boolean us;
  private String currency;

  /** The keys that were asked for, kept for {@code LEAT_DEBUG=reads} alone; null otherwise. */
  private List<String> asked;

  Asker(String planName, List<String> flagPaths, List<String> flags) {
    this.planName = planName;
    this.flagPaths = flagPaths;
    this.flags = flags;
  }

  /** How the plan writes its values: its units and its currency, where it names them. */
  void speaks(String units, String currency) {
    this.us = "us".equals(units);
    this.currency = currency;
  }

  /** A key's example as the plan would write it. */
  String example(Key key) {
    String example = us ? UsExample.of(key.example()) : key.example();
    return currency == null ? example : example.replace(" EUR", " " + currency);
  }

  /** From now on the keys that are asked for are kept, in their order. */
  void record() {
    asked = new ArrayList<>();
  }

  /** Whether the keys that are asked for are kept. */
  boolean isRecording() {
    return asked != null;
  }

  /** A key was asked for; {@code towers[0].riser.bore} is kept as {@code towers[].riser.bore}. */
  void ask(Section section, Key key) {
    if (asked == null || key.keys.length > 0) {
      return;
    }
    String path = everyItem(section.path(key.name));
    if (!asked.contains(path)) {
      asked.add(path);
    }
  }

  private static String everyItem(String path) {
    StringBuilder out = new StringBuilder();
    boolean inside = false;
    for (int i = 0; i < path.length(); i++) {
      char c = path.charAt(i);
      inside = c == '[' || inside && c != ']';
      if (!inside || c == '[') {
        out.append(c);
      }
    }
    return out.toString();
  }

  /** The keys asked for; empty when they were not kept. */
  List<String> asked() {
    return asked == null ? List.of() : asked;
  }

  /** The flag that sets a key, {@code towers[*]} meaning each of the towers; or null. */
  String flagFor(String path) {
    for (int i = 0; i < flagPaths.size(); i++) {
      if (flagPaths.get(i).equals(path) || flagPaths.get(i).replace("[*]", "[0]").equals(path)) {
        return flags.get(i);
      }
    }
    return null;
  }

  /** File name of the plan, or null when everything came from flags. */
  String planName() {
    return planName;
  }
}
