package leat.plan;

import leat.numeric.Impossible;
import leat.quantity.DateWords;
import leat.quantity.Dimension;
import leat.quantity.Nearest;
import leat.quantity.NumberText;
import leat.quantity.Quantity;
import leat.quantity.QuantityReader;
import leat.quantity.Unit;
import leat.quantity.Units;
import leat.quantity.Unreadable;

/**
 * Every message a plan can give, one named method each; the error gallery holds an entry for each.
 */
public final class PlanErrors {
  private PlanErrors() {}

  /** A mistake of YAML itself. */
  public static Problem yamlSyntax(Origin at, String problem) {
    String what = problem == null ? "this is not YAML" : problem;
    if (what.contains("(TAB)") || what.contains("'\\t'")) {
      return new Problem(
          "yaml-tab", at, "", "a tab cannot start a YAML line or value: indent with spaces");
    }
    return new Problem("yaml-syntax", at, "", "this is not YAML: " + inPlainWords(what, at));
  }

  /** The parser speaks of tokens and blocks; a grower knows lines, brackets and quotes. */
  private static String inPlainWords(String what, Origin at) {
    boolean stray = what.startsWith("mapping values are not allowed");
    if (stray && at.isFirstColon() || what.startsWith("expected <block end>")) {
      return "this line does not fit under the one above; keys of one section begin in the same column, and each has a colon behind it";
    }
    if (stray) {
      return "a second \": \" in one line; put a text that holds it in quotes, or begin a new line";
    }
    if (what.startsWith("expected ',' or")) {
      return "a comma or the closing bracket is missing before this";
    }
    if (what.startsWith("found unexpected end of stream")) {
      return "a quote is opened and never closed";
    }
    if (what.startsWith("could not find expected ':'")) {
      return "a key needs a colon and a space behind it, such as \"full: 280 mm\"";
    }
    if (what.startsWith("found character")) {
      return "a value cannot begin with this character; put it in quotes";
    }
    if (what.startsWith("expected the node content")) {
      return "a value is missing before this";
    }
    return what;
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

  /** A tag such as !!str. */
  public static Problem yamlTag(Origin at) {
    return new Problem(
        "yaml-tag", at, "", "a plan takes no YAML tags such as !!str; put a text in quotes");
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
  public static Problem notUtf8(String name, int line) {
    return new Problem(
        "not-utf8", null, name, "line " + line + " is not UTF-8 text; save the plan as UTF-8");
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
            : " \"" + key.name + ": " + oneItem(key) + "\"";
    return new Problem("not-a-map", at, path, what + example);
  }

  /** Something else where a list of sections is needed. */
  public static Problem notAListOfMaps(Origin at, String path, Key key) {
    return new Problem(
        "not-a-list-of-maps",
        at,
        path,
        "a list is needed, each item with \"- \" before it, such as \"- " + oneItem(key) + "\"");
  }

  private static String oneItem(Key key) {
    return "{" + key.keys[0].name + ": " + key.keys[0].example() + "}";
  }

  /** A list with too few items. */
  public static Problem tooFew(Origin at, String path, Key key) {
    return new Problem(
        "too-few",
        at,
        path,
        "at least "
            + key.fewest
            + (key.fewest == 1 ? " is" : " are")
            + " needed, such as "
            + key.example);
  }

  /** A name that a map cannot hold. */
  public static Problem unknownName(Origin at, String path, String name, Key key) {
    String near = Nearest.of(name, java.util.Arrays.asList(key.allowedNames));
    return new Problem(
        "unknown-name",
        at,
        path,
        "no such name"
            + (near == null
                ? "; known: " + String.join(", ", key.allowedNames)
                : "; did you mean \"" + near + "\"?"));
  }

  /** A price in another currency than the plan's. */
  public static Problem otherCurrency(
      Origin at, String path, String found, String wanted, String firstPath) {
    return new Problem(
        "other-currency",
        at,
        path,
        "a plan has one currency: this is "
            + found
            + ", "
            + (firstPath == null ? "\"currency\"" : firstPath)
            + " says "
            + wanted);
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
    String mend = near == null ? rightPlace(name, section) : "; did you mean \"" + near + "\"?";
    return new Problem("unknown-key", at, path, "unknown key" + mend);
  }

  private static String rightPlace(String name, Key section) {
    String place = elsewhere(Keys.PLAN, name);
    if (place == null || place.indexOf('.') != place.lastIndexOf('.')) {
      return knownKeys(section);
    }
    return place.equals(name)
        ? "; \"" + name + "\" is a key of the whole plan, not of " + section.name
        : section.name.isEmpty()
            ? "; did you mean \"" + place + "\"?"
            : knownKeys(section) + "; or did you mean \"" + place + "\"?";
  }

  /** Path of a key of this name in another section, or null. */
  private static String elsewhere(Key section, String name) {
    for (int i = 0; i < section.keys.length; i++) {
      Key key = section.keys[i];
      if (key.name.equals(name)) {
        return name;
      }
      String deeper = elsewhere(key, name);
      if (deeper != null) {
        return key.name + (key.shape == Key.Shape.SECTIONS ? "[]." : ".") + deeper;
      }
    }
    return null;
  }

  private static String knownKeys(Key section) {
    StringBuilder out = new StringBuilder("; ");
    out.append(section.name.isEmpty() ? "a plan" : section.name).append(" has ");
    for (int i = 0; i < section.keys.length; i++) {
      out.append(i == 0 ? "" : ", ").append(section.keys[i].name);
    }
    return out.toString();
  }

  /** A value beyond what makes sense. */
  public static Problem outOfRange(Origin at, String path, Key key, double value, String typed) {
    String why;
    if (value <= 0 && key.open) {
      why = "it must be above 0";
    } else if (value < 0 && key.least == 0) {
      why = "it cannot be negative";
    } else if (key.least == 0) {
      why = "it can be " + limit(key.most, key) + " at most";
    } else {
      why = "it must lie between " + limit(key.least, key) + " and " + limit(key.most, key);
    }
    return new Problem(
        "out-of-range",
        at,
        path,
        why + ", such as " + quoted(key.example) + "; got \"" + typed + "\"");
  }

  private static String limit(double base, Key key) {
    Dimension dimension = key.kind.dimension();
    if (dimension == null) {
      return NumberText.shortest(base);
    }
    switch (dimension) {
      case SHARE:
        return Quantity.of(Units.PERCENT.fromBase(base), Units.PERCENT).text();
      case ANGLE:
        return Quantity.of(Units.DEG.fromBase(base), Units.DEG).text();
      case TIME:
        Unit typed = QuantityReader.read(key.example, dimension).unit();
        return Quantity.of(typed.fromBase(base), typed).text();
      default:
        return NumberText.shortest(base) + " " + dimension.base();
    }
  }

  /** A value whose text cannot be read. */
  public static Problem unreadable(Origin at, String path, Unreadable e) {
    return new Problem(e.code(), at.part(e.start(), e.end()), path, e.message());
  }

  /** A value that the key beside this one takes. */
  public static Problem forOtherKey(Origin at, String path, Unreadable e, String other) {
    String message = e.message() + "; that is a value for " + other;
    return new Problem("for-other-key", at.part(e.start(), e.end()), path, message);
  }

  /** A key that the command needs and the plan lacks. */
  public static Problem missing(String planName, String path, Key key, String example) {
    StringBuilder out = new StringBuilder();
    out.append("needed");
    if (!key.meaning.isEmpty()) {
      out.append(" (").append(key.meaning).append(")");
    }
    out.append(", such as ").append(quoted(key.name + ": " + example));
    String where = planName == null ? path : planName + ": " + path;
    return new Problem("missing-key", null, where, out.toString()).asking(path, example);
  }

  /** A key that is missing where no plan is read, and has a flag. */
  public static Problem missingFlag(String flag, Key key) {
    String value = key.shape == Key.Shape.ONE ? key.example : firstItem(key.example);
    return new Problem(
            "missing-key",
            null,
            flag,
            "needed (" + key.meaning + "), such as " + flag + " \"" + value + "\"")
        .asking(flag, value);
  }

  /** In quotes, unless it has quotes of its own. */
  private static String quoted(String example) {
    return example.indexOf('"') >= 0 ? example : "\"" + example + "\"";
  }

  private static String firstItem(String list) {
    int comma = list.indexOf(',');
    return comma < 0 ? list : list.substring(1, comma);
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

  /** A key path that leads nowhere; {@code section} is where its part was looked for, or null. */
  public static Problem noSuchPath(Origin at, String path, String part, String near, Key section) {
    String mend = near == null ? "" : "; did you mean \"" + near + "\"?";
    if (near == null && section != null && section.keys.length > 0) {
      mend = knownKeys(section);
    }
    return new Problem("no-such-path", at, path, "no key \"" + part + "\" there" + mend);
  }

  /** Something else than a number or a star in brackets. */
  public static Problem badIndex(Origin at, String typed) {
    return new Problem(
        "bad-index",
        at,
        "",
        "a number, a name or * stands in brackets, such as towers[0] or towers[*]; got \""
            + typed
            + "\"");
  }

  /** A value that YAML reads as a comment. */
  public static Problem onlyAComment(Origin at) {
    return new Problem(
        "only-a-comment",
        at,
        "",
        "YAML reads this as a comment; put the value in quotes, or leave it empty to remove the key");
  }

  /** An index behind a list's end; {@code names} of its items, as far as they have some. */
  public static Problem noSuchIndex(
      Origin at, String path, int size, java.util.List<String> names) {
    String there = names.isEmpty() ? "" : " (" + String.join(", ", names) + ")";
    return new Problem(
        "no-such-index",
        at,
        path,
        size == 0
            ? "the list is empty: [0] adds its first item"
            : "the list has "
                + size
                + (size == 1 ? " item" : " items")
                + there
                + ", counted from [0]");
  }

  /** One key of an item behind a list's end: an index counted from 1, as a rule. */
  public static Problem loneKey(
      Origin at, String path, String item, int size, java.util.List<String> names) {
    String there = names.isEmpty() ? "" : " (" + String.join(", ", names) + ")";
    String list = item.substring(0, item.lastIndexOf('['));
    return new Problem(
        "lone-key",
        at,
        path,
        "the list has "
            + size
            + (size == 1 ? " item" : " items")
            + there
            + ", counted from [0]: the last is "
            + list
            + "["
            + (size - 1)
            + "]; a new one is written whole, such as "
            + item
            + "={...}");
  }

  /** A name in brackets that no item of the list has. */
  public static Problem noSuchItem(
      Origin at, String path, String item, java.util.List<String> names) {
    String near = leat.quantity.Nearest.of(item, names);
    return new Problem(
        "no-such-item",
        at,
        path,
        "none there is named \""
            + item
            + "\""
            + (near != null
                ? "; did you mean [" + near + "]?"
                : names.isEmpty()
                    ? "; none has a name: count them from [0]"
                    : "; there is " + String.join(", ", names)));
  }

  /** A key that stands elsewhere in the file, under an anchor, and would change there, too. */
  public static Problem throughAlias(Origin at, String path, String anchor, int line) {
    return new Problem(
        "through-alias",
        at,
        path,
        "it comes from the anchor &"
            + anchor
            + " in line "
            + line
            + ", which other places share: change it there, or write the value out here first");
  }

  /** A value of several lines, or a map without braces. */
  public static Problem oneLineWanted(Origin at) {
    return new Problem(
        "one-line-wanted",
        at,
        "",
        "one line is wanted, maps in {} and lists in [], such as timing=[{run: 90 s, rest: 12 min}]");
  }

  /** A path whose values are varied as numbers, but are none. */
  public static Problem noNumber(Origin at, String path, Key key) {
    return new Problem(
        "no-number-to-vary",
        at,
        path,
        "only a number can be varied; this is "
            + (key.kind == null ? "a section" : key.kind.word()));
  }

  /** A word behind KEY=VALUE: the shell parted the value from its unit. */
  public static Problem splitSet(String word, String together) {
    return new Problem(
        "split-set",
        Origin.flag(word, word),
        "",
        "KEY=VALUE is needed; a value with a space in it stands in quotes: \"" + together + "\"");
  }

  /** --set without its equals sign or with a broken path. */
  public static Problem badSet(Origin at) {
    return new Problem("bad-set", at, "", "KEY=VALUE is needed, such as pump.derate=70%");
  }

  // What only several values together show.

  /** Two keys that say the same thing. */
  public static Problem oneOfTwo(Section section, String one, String other) {
    return section.problem(
        other, "one-of-two", other + " and " + one + " say the same thing; keep one of them");
  }

  /** What a formula of the trade refuses. */
  public static Problem refusedByTrade(Section section, String name, Impossible e) {
    return section.problem(name, "impossible-value", e.getMessage());
  }

  /** A box with one length. */
  public static Problem sizeOfBox(Section tank, String name) {
    return tank.problem(
        name, "size-of-box", "a box needs length and width, such as \"540 mm x 360 mm\"");
  }

  /** A cone with two lengths. */
  public static Problem sizeOfCone(Section tank, String name) {
    return tank.problem(name, "size-of-cone", "a cone needs one diameter, such as \"300 mm\"");
  }

  /** An item of a list that does not rise over the one before. */
  public static Problem mustRise(
      Origin at, String path, String what, Quantity got, Quantity before) {
    String how = got.value() == before.value() ? " stands here twice" : " comes after ";
    String mistake =
        got.value() == before.value()
            ? "\"" + got.typed() + "\"" + how
            : "\"" + got.typed() + "\"" + how + "\"" + before.typed() + "\"";
    return new Problem(
        "must-rise", at, path, "the " + what + " must rise from item to item; " + mistake);
  }

  /** A head that rises with the flow. */
  public static Problem headRises(Origin at, String path, Quantity got, Quantity before) {
    return new Problem(
        "head-rises",
        at,
        path,
        "a pump's head cannot rise with its flow; \""
            + got.typed()
            + "\" comes after \""
            + before.typed()
            + "\"");
  }

  /** A pump curve that does not begin at no flow. */
  public static Problem curveStart(Origin at, String path, Quantity got) {
    return new Problem(
        "curve-start",
        at,
        path,
        "the first point is the head at no flow, such as \"0 L/h @ 2.4 m\"; got \""
            + got.typed()
            + "\"");
  }

  /** Readings of a sender that go up and down. */
  public static Problem readingTurns(Origin at, String path, Quantity got, Quantity before) {
    return new Problem(
        "reading-turns",
        at,
        path,
        "a sender's readings only rise or only fall from step to step; \""
            + got.typed()
            + "\" comes after \""
            + before.typed()
            + "\"");
  }

  /** A step over the rim. */
  public static Problem stepOverRim(Origin at, String path, Quantity got, double rim) {
    return new Problem(
        "step-over-rim",
        at,
        path,
        "\""
            + got.typed()
            + "\" lies above the rim of the tank, "
            + NumberText.shortest(Units.MM.fromBase(rim))
            + " mm");
  }

  /** A level over the rim where no key gives the rim. */
  public static Problem overRim(Section section, String name, double rim) {
    return section.problem(
        name,
        "over-rim",
        "\""
            + section.typed(name)
            + "\" lies above the rim of the tank, "
            + NumberText.shortest(Units.MM.fromBase(rim))
            + " mm");
  }

  /** A name of an element or oxide that is none. */
  public static Problem notAnElement(Named elements, int i, String path, String why) {
    return elements.problem(i, path, "not-an-element", why);
  }

  /** Two counts that must differ. */
  public static Problem sameCounts(Section sensor) {
    return sensor.problem(
        "dry", "same-counts", "wet and dry read the same, so the sensor tells nothing");
  }

  /** Half a window. */
  public static Problem halfWindow(Section entry, String given, String lacking) {
    return entry.problem(
        given,
        "half-window",
        "\""
            + given
            + "\" needs \""
            + lacking
            + "\" beside it, such as "
            + lacking
            + ": \"06:00\"");
  }

  /** A window that begins at 24:00. */
  public static Problem windowStart(Section entry) {
    return entry.problem("from", "window-start", "a window begins before 24:00; write \"00:00\"");
  }

  /** A first timing that does not hold always. */
  public static Problem firstHasWindow(Section entry, String name) {
    return entry.problem(
        name,
        "first-has-window",
        "the first timing holds whenever no later one does, so it has no hours, months or days of its own;"
            + " put one before it, such as \"- {run: 90 s, rest: 12 min}\"");
  }

  /** A date before the one it must follow. */
  public static Problem dateOrder(Section section, String name, String other) {
    return section.problem(
        name,
        "date-order",
        "it ends before it starts: \""
            + section.typed(name)
            + "\" against "
            + other
            + " \""
            + section.typed(other)
            + "\"");
  }

  /** The same name twice in a list. */
  public static Problem namedTwice(Section section, String name) {
    return section.problem(
        "name", "named-twice", "\"" + name + "\" is the name of another one in this list already");
  }

  /** A tower that is none. */
  public static Problem noSuchTower(Section crop, String name, java.util.List<String> towers) {
    String near = Nearest.of(name, towers);
    return crop.problem(
        "tower",
        "no-such-tower",
        "no tower is named \""
            + name
            + "\""
            + (near == null
                ? "; there are " + String.join(", ", towers)
                : "; did you mean \"" + near + "\"?"));
  }

  // Values read by the plan's own kinds.

  /** A word that older YAML readers take for a truth value or nothing. */
  public static Unreadable quoteIt(String typed) {
    return new Unreadable(
        "quote-it",
        typed.isEmpty()
            ? "a value is needed"
            : "put it in quotes: some YAML readers take " + typed + " for something else than text",
        0,
        typed.length(),
        null);
  }

  /** Neither true nor false. */
  public static Unreadable notTrueOrFalse(String typed) {
    String meant = Binder.truthValue(typed);
    return new Unreadable(
        "not-true-or-false",
        "true or false is needed, in small letters; got \""
            + typed
            + "\""
            + (meant == null ? "" : "; did you mean \"" + meant + "\"?"),
        0,
        typed.length(),
        meant);
  }

  /** None of the words that may stand there. */
  public static Unreadable notOneOf(String typed, String[] words) {
    String near = OtherWords.among(typed, words);
    near = near == null ? Nearest.of(typed, java.util.Arrays.asList(words)) : near;
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

  /** No month. */
  public static Unreadable notAMonth(String typed) {
    String near = Nearest.of(typed, DateWords.months());
    return new Unreadable(
        "not-a-month",
        "a month is 1 to 12 or its name, such as 7 or July; got \""
            + typed
            + "\""
            + (near == null ? "" : "; did you mean \"" + near + "\"?"),
        0,
        typed.length(),
        null);
  }

  /** A number with a leading zero. */
  public static Unreadable leadingZero(String typed) {
    return new Unreadable(
        "leading-zero",
        "no leading zero: some YAML readers take " + typed + " for a number in base 8",
        0,
        typed.length(),
        null);
  }

  /** Not the code of a currency. */
  public static Unreadable notACurrency(String typed, String near) {
    return new Unreadable(
        "not-a-currency",
        "the code of a currency is needed, such as EUR; got \""
            + typed
            + "\""
            + (near == null ? "" : "; did you mean \"" + near + "\"?"),
        0,
        typed.length(),
        near);
  }

  /** A negative part of several: "-5 L/h @ 2 m". */
  public static Unreadable partNegative(String typed, String part) {
    int start = typed.indexOf(part);
    return new Unreadable(
        "part-negative", "\"" + part + "\" cannot be negative", start, start + part.length(), null);
  }

  /** A fitting whose size the trade refuses, in a plan. */
  public static Problem fitting(Origin at, String path, String name, Impossible e) {
    return fitting(at, path, "\"" + name + "\": " + e.quantity() + ": " + e.getMessage());
  }

  /** A fitting whose size does not suit, typed in a plan. */
  public static Problem fitting(Origin at, String path, String message) {
    return new Problem("fitting-size", at, path, message);
  }

  /** A fitting whose size does not suit, typed behind a flag. */
  public static Unreadable fitting(String typed, String message) {
    return new Unreadable("fitting-size", message, 0, typed.length(), null);
  }

  /** A part of several that is 0 or less: "0 mm x 360 mm". */
  public static Unreadable partNotAbove0(String typed, String part) {
    int start = typed.indexOf(part);
    return new Unreadable(
        "part-not-above-0", "\"" + part + "\" must be above 0", start, start + part.length(), null);
  }
}
