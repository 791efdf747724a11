package leat.system;

import leat.numeric.Impossible;
import leat.plan.Problem;
import leat.plan.Section;

/** Every message about a sender that a plan describes, one named method each. */
public final class SenderErrors {
  private static final String[] SENDER = {
    "steps",
    "edges",
    "edge_error",
    "below",
    "hysteresis",
    "tolerance",
    "reading",
    "lead",
    "open_above",
    "short_below"
  };
  private static final String[] LADDER = {
    "reeds", "first", "pitch", "resistors", "empty", "full", "pull_in", "drop_out", "stops"
  };
  private static final String[] DIVIDER = {
    "supply",
    "resistor",
    "bits",
    "reference",
    "resistor_tolerance",
    "supply_tolerance",
    "reference_tolerance",
    "adc_error"
  };

  private SenderErrors() {}

  /** A hysteresis as a length where only litres are known. */
  public static Problem hysteresisNeedsShape(Section sender) {
    return sender.problem(
        "hysteresis",
        "hysteresis-needs-shape",
        "a hysteresis as a length needs the tank's shape; in a tank of unknown shape write"
            + " hysteresis_volume, such as \"0.8 L\"");
  }

  /** A hysteresis in litres where levels are known. */
  public static Problem hysteresisIsLength(Section sender) {
    return sender.problem(
        "hysteresis_volume",
        "hysteresis-is-length",
        "the tank's shape is known here, so write hysteresis as a length, such as \"4 mm\"");
  }

  /** As many levels as reeds are needed. */
  public static Problem reedsDiffer(Section ladder, int levels) {
    return ladder.problem(
        "levels",
        "reeds-differ",
        "there are " + levels + " levels for " + ladder.typed("reeds") + " reeds");
  }

  /** What the trade refuses, at the key that holds it. */
  public static Problem refused(Section sender, Impossible e) {
    String word = "no_reed".equals(e.quantity()) ? "reeds" : e.quantity();
    if (isOneOf(SENDER, word) && sender.has(word)) {
      return sender.problem(word, "sender-refused", e.getMessage());
    }
    Section ladder = sender.section("ladder");
    if (isOneOf(LADDER, word) && ladder.isGiven()) {
      return ladder.problem(word, "sender-refused", e.getMessage());
    }
    if ("steps".equals(word)) {
      String key = ladder.isGiven() ? "ladder" : sender.has("edges") ? "edges" : "steps";
      return sender.problem(key, "sender-refused", e.getMessage());
    }
    Section divider = sender.section("divider");
    if (isOneOf(DIVIDER, word)) {
      return divider.problem(word, "sender-refused", e.getMessage());
    }
    return new Problem("sender-refused", null, "sender", word + ": " + e.getMessage());
  }

  private static boolean isOneOf(String[] words, String word) {
    for (int i = 0; i < words.length; i++) {
      if (words[i].equals(word)) {
        return true;
      }
    }
    return false;
  }
}
