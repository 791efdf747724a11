package leat.plan;

import leat.quantity.Nearest;
import leat.quantity.Unreadable;

/**
 * Every message a plan can give, one named method each; the error gallery holds an entry for each.
 */
public final class PlanErrors {
  private PlanErrors() {}

  /** A mistake of YAML itself. */
  public static Problem yamlSyntax(Origin at, String problem) {
    String what = problem == null ? "this is not YAML" : problem;
    if (what.contains("'\\t")) {
      return new Problem(
          "yaml-tab", at, "", "a tab cannot start a YAML line or value: indent with spaces");
    }
    return new Problem("yaml-syntax", at, "", "this is not YAML: " + what);
  }

  /** A character YAML does not allow. */
  public static Problem yamlCharacters(Origin at) {
    return new Problem(
        "yaml-characters",
        at,
        "",
        "the file holds control characters that no plan may hold; is it a text file?");
  }

  /** A second document in one file. */
  public static Problem secondDocument(Origin at) {
    return new Problem(
        "second-document",
        at,
        "",
        "a second document begins here; a plan is one document a file: put each tower system into a file of its own");
  }

  /** Nesting too deep. */
  public static Problem tooDeep(Origin at, int deepest) {
    return new Problem(
        "too-deep", at, "", "nested deeper than " + deepest + " levels; a plan needs five");
  }

  /** Too many aliases. */
  public static Problem tooManyAliases(Origin at, int most) {
    return new Problem(
        "too-many-aliases", at, "", "more than " + most + " aliases; a plan needs a handful");
  }

  /** Too many values once aliases are followed. */
  public static Problem tooManyValues(Origin at, String path, int most) {
    return new Problem(
        "too-many-values",
        at,
        path,
        "more than " + most + " values once the aliases are followed; reading stops here");
  }

  /** An alias to nothing. */
  public static Problem unknownAnchor(Origin at, String name) {
    return new Problem(
        "unknown-anchor",
        at,
        "",
        "nothing above is anchored as &" + name + ", so *" + name + " stands for nothing");
  }

  /** A key that is a list or a map. */
  public static Problem keyNotAWord(Origin at) {
    return new Problem("key-not-a-word", at, "", "a key must be a word");
  }

  /** The same key twice. */
  public static Problem duplicateKey(Origin at, String name, int firstLine) {
    return new Problem(
        "duplicate-key",
        at,
        "",
        "\"" + name + "\" stands here a second time; the first is in line " + firstLine);
  }

  /** A merge of something that is no map. */
  public static Problem mergeNeedsMap(Origin at) {
    return new Problem("merge-needs-map", at, "", "<< merges maps only, such as <<: *riser");
  }

  /** An empty file. */
  public static Problem emptyPlan(Source source) {
    return new Problem(
        "empty-plan",
        Origin.start(source),
        "",
        "the plan is empty; `leat plan new` writes one to start from");
  }

  /** A file too large for a plan. */
  public static Problem tooLarge(String name, int mostKilobytes) {
    return new Problem(
        "too-large",
        null,
        name,
        "larger than " + mostKilobytes + " kB; a plan is small enough to read aloud");
  }

  /** A file in another encoding. */
  public static Problem notUtf8(String name) {
    return new Problem("not-utf8", null, name, "this is not UTF-8 text; save the plan as UTF-8");
  }

  /** A file that cannot be read. */
  public static Problem cannotRead(String name, String why) {
    return new Problem("cannot-read", null, name, why);
  }

  /** Standard input asked for twice. */
  public static Problem stdinTwice() {
    return new Problem("stdin-twice", null, "-", "standard input can be read once only");
  }

  /** A scalar or list where a section is needed. */
  public static Problem notAMap(Origin at, String path, Key key) {
    String what =
        path.isEmpty() ? "a plan is a map of keys, such as" : "a section is needed, such as";
    String example =
        path.isEmpty()
            ? " \"tank: {height: 330 mm}\""
            : " \"" + key.name + ": {" + key.keys[0].name + ": " + key.keys[0].example + "}\"";
    return new Problem("not-a-map", at, path, what + example);
  }

  /** Something else where a list of sections is needed. */
  public static Problem notAListOfMaps(Origin at, String path, Key key) {
    return new Problem(
        "not-a-list-of-maps",
        at,
        path,
        "a list is needed, each item with \"- \" before it, such as \"- {"
            + key.keys[0].name
            + ": "
            + key.keys[0].example
            + "}\"");
  }

  /** Something else where a list is needed. */
  public static Problem notAList(Origin at, String path, Key key) {
    return new Problem("not-a-list", at, path, "a list is needed, such as " + key.example);
  }

  /** Something else where a map of names is needed. */
  public static Problem notNamed(Origin at, String path, Key key) {
    return new Problem("not-named", at, path, "a map is needed, such as " + key.example);
  }

  /** A list or map where one value is needed. */
  public static Problem notOneValue(Origin at, String path, Key key) {
    return new Problem(
        "not-one-value", at, path, "one value is needed, such as \"" + key.example + "\"");
  }

  /** An unknown key. */
  public static Problem unknownKey(Origin at, String path, String name, Key section) {
    String near = Binder.nearestKey(name, section);
    StringBuilder out = new StringBuilder("unknown key");
    if (near != null) {
      out.append("; did you mean \"").append(near).append("\"?");
    } else {
      out.append("; ").append(section.name.isEmpty() ? "a plan" : section.name).append(" has ");
      for (int i = 0; i < section.keys.length; i++) {
        out.append(i == 0 ? "" : ", ").append(section.keys[i].name);
      }
    }
    return new Problem("unknown-key", at, path, out.toString());
  }

  /** A value beyond what makes sense. */
  public static Problem outOfRange(Origin at, String path, Key key, String typed) {
    String why;
    if (key.most != Double.POSITIVE_INFINITY) {
      why = "out of the range that makes sense";
    } else {
      why = key.open ? "it must be above 0" : "it cannot be negative";
    }
    return new Problem(
        "out-of-range", at, path, why + ", such as \"" + key.example + "\"; got \"" + typed + "\"");
  }

  /** A value whose text cannot be read. */
  public static Problem unreadable(Origin at, String path, Unreadable e) {
    return new Problem(e.code(), at.part(e.start(), e.end()), path, e.message());
  }

  /** A key that the command needs and the plan lacks. */
  public static Problem missing(String planName, String path, Key key) {
    StringBuilder out = new StringBuilder();
    out.append("needed");
    if (!key.meaning.isEmpty()) {
      out.append(" (").append(key.meaning).append(")");
    }
    if (!key.example.isEmpty()) {
      out.append(", such as \"").append(key.name).append(": ").append(key.example).append('"');
    }
    String where = planName == null ? path : planName + ": " + path;
    return new Problem("missing-key", null, where, out.toString());
  }

  /** A level over another one. */
  public static Problem levelOver(Section section, String name, String other, String why) {
    return section.problem(
        name,
        "level-over",
        why
            + ": \""
            + section.typed(name)
            + "\" against "
            + other
            + " \""
            + section.typed(other)
            + "\"");
  }

  /** A key path that leads nowhere. */
  public static Problem noSuchPath(Origin at, String path, String part, String near) {
    return new Problem(
        "no-such-path",
        at,
        path,
        "no key \"" + part + "\" there" + (near == null ? "" : "; did you mean \"" + near + "\"?"));
  }

  /** An index behind a list's end. */
  public static Problem noSuchIndex(Origin at, String path, int size) {
    return new Problem(
        "no-such-index",
        at,
        path,
        size == 0
            ? "the list is empty: [0] adds its first item"
            : "the list has " + size + (size == 1 ? " item" : " items") + ", counted from [0]");
  }

  /** --set without its equals sign or with a broken path. */
  public static Problem badSet(Origin at) {
    return new Problem("bad-set", at, "", "KEY=VALUE is needed, such as pump.derate=70%");
  }

  // Values read by the plan's own kinds.

  /** A word that older YAML readers take for a truth value or nothing. */
  public static Unreadable quoteIt(String typed) {
    return new Unreadable(
        "quote-it",
        "put it in quotes: some YAML readers take " + typed + " for something else than text",
        0,
        typed.length(),
        null);
  }

  /** Neither true nor false. */
  public static Unreadable notTrueOrFalse(String typed) {
    return new Unreadable(
        "not-true-or-false",
        "true or false is needed; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** None of the words that may stand there. */
  public static Unreadable notOneOf(String typed, String[] words) {
    String near = Nearest.of(typed, java.util.Arrays.asList(words));
    return new Unreadable(
        "not-one-of",
        "one of "
            + String.join(", ", words)
            + " is needed; got \""
            + typed
            + "\""
            + (near == null ? "" : "; did you mean \"" + near + "\"?"),
        0,
        typed.length(),
        near);
  }

  /** Not a date. */
  public static Unreadable notADate(String typed) {
    return new Unreadable(
        "not-a-date",
        "a date is needed, such as 2027-04-10; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** A day the month does not have. */
  public static Unreadable noSuchDay(String typed, int days) {
    return new Unreadable(
        "no-such-day",
        "that month has " + days + " days; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** Not a time of day. */
  public static Unreadable notAClock(String typed) {
    return new Unreadable(
        "not-a-clock",
        "a time of day is needed, such as \"22:00\"; got \"" + typed + "\"",
        0,
        typed.length(),
        null);
  }

  /** A time of day without quotes. */
  public static Unreadable quoteTheClock(String typed) {
    return new Unreadable(
        "quote-the-clock",
        "put it in quotes: \""
            + typed
            + "\"; without them some YAML readers take it for a number in base 60",
        0,
        typed.length(),
        "\"" + typed + "\"");
  }

  /** Not a whole number. */
  public static Unreadable notACount(String typed) {
    return new Unreadable(
        "not-a-count", "a whole number is needed; got \"" + typed + "\"", 0, typed.length(), null);
  }
}
