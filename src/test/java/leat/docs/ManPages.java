package leat.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import leat.check.Rule;
import leat.check.Rules;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import leat.command.Commands;
import leat.plan.Key;
import leat.plan.KeyPath;
import leat.plan.Keys;
import leat.quantity.Dimension;
import leat.quantity.Unit;
import leat.quantity.Units;

/**
 * The manual, made from the declarations of commands, flags, keys, units and rules, from the error
 * gallery, and from real runs of the examples.
 */
final class ManPages {
  /** Longest output of an example that is shown whole. */
  private static final int MOST_LINES = 30;

  private final Shell shell;
  private final Function<GalleryCase, Runner.Said> gallery;

  ManPages(Shell shell, Function<GalleryCase, Runner.Said> gallery) {
    this.shell = shell;
    this.gallery = gallery;
  }

  /** Every page by its file name. */
  Map<String, String> all() {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("leat.1", overview());
    for (Command command : Declared.commands()) {
      pages.put(page(command.name()) + ".1", of(command));
    }
    pages.put("leat-plan.5", plan());
    pages.put("leat.7", Pages.guide(shell));
    pages.put("leat-glossary.7", Pages.glossary());
    pages.put("leat-sources.7", Sources.page());
    pages.put("leat-units.7", units());
    pages.put("leat-rules.7", rules());
    pages.put("leat-errors.7", errors());
    pages.put("leat-changes.7", changes());
    return pages;
  }

  static String page(String command) {
    return "leat-" + command.replace(' ', '-');
  }

  /** Whether a page such as {@code leat-plan(5)} exists or is to come with its command. */
  static boolean exists(String reference) {
    if (List.of(
            "leat(1)",
            "leat(7)",
            "leat-plan(5)",
            "leat-glossary(7)",
            "leat-sources(7)",
            "leat-units(7)",
            "leat-rules(7)",
            "leat-errors(7)",
            "leat-changes(7)")
        .contains(reference)) {
      return true;
    }
    List<String> names = new ArrayList<>(List.of(new Commands().names()));
    Declared.commands().forEach(c -> names.add(c.name()));
    return names.stream().anyMatch(n -> reference.equals(page(n) + "(1)"));
  }

  private static String overview() {
    Roff page =
        new Roff(
            "LEAT", 1, "leat", "sizes, checks and runs a recirculating hydroponic tower at home");
    page.head("SYNOPSIS");
    page.marked(
        Roff.bold("leat") + " " + Roff.italic("COMMAND") + " [" + Roff.italic("FLAGS") + "]");
    page.marked(Roff.bold("leat") + " " + Roff.italic("COMMAND") + " " + Roff.bold("--help"));
    page.head("DESCRIPTION");
    page.paragraph(
        "A plan in YAML says what the tower is: tank, pump, riser, towers, timing, feed. Every command reads the same plan,"
            + " or takes its values as flags for a one-off sum. Each answer opens with one sentence; then come the figures,"
            + " what was taken without being named, what to mind, and what to do next.");
    page.paragraph(
        "Values are typed with their unit, in quotes when a space stands between: \"8 L/min\", \"1/2 in\", \"0.31 EUR/kWh\"."
            + " A gallon is the US gallon unless impgal is said.");
    page.head("COMMANDS");
    for (String group : Declared.groups()) {
      boolean first = true;
      for (Command command : Declared.commands()) {
        if (group.equals(Declared.group(command))) {
          if (first) {
            page.subhead(group);
          }
          first = false;
          page.entry(
              "\\fB" + Roff.text(page(command.name())) + "\\fR(1)", Roff.text(command.summary()));
        }
      }
    }
    outcome(page);
    page.head("SAFETY");
    page.paragraph(
        "Water and mains, acids, sanitisers, wind and standing on things can hurt. What leat says is for planning; where someone"
            + " can be hurt, local codes and licensed practice decide.");
    page.head("SEE ALSO");
    page.marked(
        references(
            List.of(
                "leat(7)",
                "leat-plan(5)",
                "leat-glossary(7)",
                "leat-sources(7)",
                "leat-units(7)",
                "leat-rules(7)",
                "leat-errors(7)",
                "leat-changes(7)")));
    return page.toString();
  }

  private String of(Command command) {
    String name = "leat " + command.name();
    Roff page =
        new Roff(
            page(command.name()).toUpperCase(java.util.Locale.ROOT),
            1,
            page(command.name()),
            command.summary());
    page.head("SYNOPSIS");
    page.marked(
        Roff.bold(name)
            + (command.operands().isEmpty() ? "" : " " + Roff.italic(command.operands()))
            + " ["
            + Roff.italic("FLAGS")
            + "]");
    page.head("DESCRIPTION");
    for (String paragraph : command.manual()) {
      page.paragraph(paragraph);
    }
    if (command.flags().length > 0) {
      page.head("FLAGS");
      flags(page, command.flags());
    }
    page.head("FLAGS OF EVERY COMMAND");
    flags(page, Declared.commonFlags(command));
    page.head("EXAMPLES");
    for (String example : command.examples()) {
      page.verbatim("$ leat " + example + "\n" + shown(example));
    }
    outcome(page);
    page.head("SEE ALSO");
    List<String> also = new ArrayList<>(List.of("leat(1)"));
    also.addAll(List.of(command.seeAlso()));
    page.marked(references(also));
    return page.toString();
  }

  /** What a terminal shows after an example, its end left out when it is long. */
  private String shown(String example) {
    Shell.Shown shown = shell.run("leat " + example);
    String[] lines = shown.text().stripTrailing().split("\n");
    if (lines.length <= MOST_LINES) {
      return String.join("\n", lines);
    }
    int left = lines.length - MOST_LINES + 1;
    return String.join("\n", List.of(lines).subList(0, MOST_LINES - 1))
        + "\n... "
        + left
        + " more lines";
  }

  private static void flags(Roff page, Flag[] flags) {
    for (Flag flag : flags) {
      StringBuilder tag = new StringBuilder();
      for (String name : new String[] {flag.shortName(), flag.name(), flag.alias()}) {
        if (name != null) {
          tag.append(tag.length() == 0 ? "" : ", ").append(Roff.bold(name));
        }
      }
      if (flag.label() != null) {
        tag.append(' ').append(Roff.italic(flag.label()));
      }
      StringBuilder text = new StringBuilder(flag.meaning());
      String[] words = flag.kind() == null ? null : flag.kind().words();
      if (words != null && !List.of(flag.meaning().split("[ ,:;]+")).containsAll(List.of(words))) {
        text.append(": ").append(String.join(", ", words));
      } else if (words == null && !flag.example().isEmpty()) {
        text.append(", such as \"").append(flag.example()).append('"');
      }
      if (flag.isRepeatable()) {
        text.append(". May be given several times");
      }
      if (flag.planPath() != null) {
        text.append(". Sets ").append(flag.planPath()).append(" of the plan");
      }
      page.entry(tag.toString(), Roff.text(text.append('.').toString().replace("..", ".")));
    }
  }

  private static void outcome(Roff page) {
    page.head("EXIT STATUS");
    page.entry("0", "Answered.");
    page.entry(
        "1",
        "Answered, and the answer is no: it does not reach, a rule fails, the size is too small.");
    page.entry("2", "Wrong command line or bad input; nothing was computed.");
    page.entry("3", "A file could not be read or written.");
    page.entry("70", "A bug in leat.");
    page.head("ENVIRONMENT");
    page.entry(Roff.bold("LEAT_PLAN"), "The plan to read when none is named.");
    page.entry(Roff.bold("LEAT_UNITS"), "Units of text, metric or us, unless a plan names them.");
    page.entry(
        Roff.bold("COLUMNS"),
        "Width that text is wrapped to; on a terminal its own width. Command lines, csv and json "
            + "stay whole.");
    page.entry(Roff.bold("NO_COLOR"), "When set, no word is coloured on a terminal.");
    page.entry(Roff.bold("LEAT_DEBUG"), "When set, a bug in leat shows its stack trace.");
  }

  static String references(List<String> names) {
    StringBuilder out = new StringBuilder();
    for (String name : names) {
      int open = name.indexOf('(');
      out.append(out.length() == 0 ? "" : ",\n").append(Roff.bold(name.substring(0, open)));
      out.append(name.substring(open));
    }
    return out.toString();
  }

  // leat-plan(5)

  private static String plan() {
    Roff page = new Roff("LEAT-PLAN", 5, "leat-plan", "the plan of a tower, in YAML");
    page.head("DESCRIPTION");
    page.paragraph(
        "A plan says what one tower system is: one YAML document a file, small enough to read aloud. Every key is optional until a"
            + " command needs it; the command then names it. Every physical value is a quantity with its unit, such as 330 mm or"
            + " 1/2 in; leat-units(7) lists what can be typed. An unknown key is an error that names the nearest known one."
            + " Anchors, aliases and merge keys work.");
    page.paragraph(
        "Any key can be set for one call with --set KEY=VALUE, the key by its path: pump.derate=70%, towers[0].outlet=1.2m,"
            + " towers[*].riser.bore=16mm for all of a list. An empty value removes the key.");
    page.head("KEYS");
    keys(page, Keys.PLAN, "", "");
    page.head("SEE ALSO");
    page.marked(references(List.of("leat(1)", "leat-check(1)", "leat-units(7)", "leat-rules(7)")));
    return page.toString();
  }

  private static void keys(Roff page, Key section, String path, String inherited) {
    for (Key key : section.keys()) {
      String inside = path.isEmpty() ? key.name() : path + "." + key.name();
      if (key.keys().length == 0 && SHOWN.containsKey(inside)) {
        key(page, key, inside, inherited);
      }
    }
    for (Key key : section.keys()) {
      String inside = path.isEmpty() ? key.name() : path + "." + key.name();
      if (key.keys().length > 0 && SHOWN.containsKey(inside)) {
        String reader = SHOWN.get(inside);
        page.subhead(inside);
        boolean many = key.shape() == Key.Shape.SECTIONS;
        page.paragraph(
            sentence(key.meaning())
                + (many ? " A list; each item may have these keys." : "")
                + (reader.isEmpty() ? "" : " Read by " + words(reader) + "."));
        keys(page, key, many ? inside + "[]" : inside, reader);
      }
    }
  }

  /** The keys that some command reads, with those commands. */
  private static final Map<String, String> SHOWN = new LinkedHashMap<>();

  static {
    KeyPath.shown().forEach(k -> SHOWN.put(k.path(), k.readBy()));
  }

  private static void key(Roff page, Key key, String path, String inherited) {
    String kind = key.kind() == null ? "" : key.kind().word();
    if (key.shape() == Key.Shape.LIST) {
      kind = "a list, each " + kind;
    } else if (key.shape() == Key.Shape.NAMED) {
      kind = "a map from names, each to " + kind;
    }
    StringBuilder text = new StringBuilder(sentence(key.meaning())).append(' ');
    text.append(sentence(kind));
    if (!key.example().isEmpty()) {
      text.append(" Such as \"")
          .append(key.name())
          .append(": ")
          .append(key.example())
          .append("\".");
    }
    if (key.byDefault() != null) {
      text.append(" Taken when not named: ").append(key.byDefault()).append('.');
    }
    String readBy = SHOWN.get(path);
    if (!readBy.isEmpty() && !readBy.equals(inherited)) {
      text.append(" Read by ").append(words(readBy)).append('.');
    }
    page.entry(Roff.bold(path), Roff.text(text.toString()));
  }

  private static String words(String spaced) {
    return spaced.replace(" ", ", ");
  }

  private static String sentence(String clause) {
    if (clause.isEmpty()) {
      return "";
    }
    char first = clause.charAt(0);
    boolean acronym = clause.length() > 1 && Character.isUpperCase(clause.charAt(1));
    String start = acronym ? clause : Character.toUpperCase(first) + clause.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }

  // leat-units(7)

  private static String units() {
    Roff page =
        new Roff("LEAT-UNITS", 7, "leat-units", "the units that flags and plans understand");
    page.head("DESCRIPTION");
    page.paragraph(
        "A quantity is a number, then a unit, with or without a space: 13 mm, 1/2 in, 1 1/2 in, 5 ft 3 in, 1e3 L/h. Decimals take a"
            + " point. A bare number where a unit is needed is an error. Where only the case of letters differs (mS, ms, MS)"
            + " nothing is guessed. The micro sign, degree signs, superscripts and the ohm sign are read like their plain letters.");
    for (Dimension dimension : Dimension.values()) {
      List<Unit> units = Units.of(dimension);
      if (units.isEmpty()) {
        continue;
      }
      page.subhead(noun(dimension));
      page.paragraph(
          "Such as \""
              + dimension.example()
              + "\"."
              + (dimension.base().isEmpty()
                  ? ""
                  : " Factors below are to " + dimension.base() + "."));
      for (Unit unit : units) {
        unit(page, dimension, unit);
      }
    }
    page.head("SEE ALSO");
    page.marked(references(List.of("leat(1)", "leat-plan(5)")));
    return page.toString();
  }

  private static String noun(Dimension dimension) {
    return dimension.word().substring(dimension.word().indexOf(' ') + 1);
  }

  private static void unit(Roff page, Dimension dimension, Unit unit) {
    StringBuilder text = new StringBuilder(unit.name());
    if (!unit.aliases().isEmpty()) {
      text.append("; also ").append(String.join(", ", unit.aliases()));
    }
    double one = unit.toBase(1) - unit.toBase(0);
    text.append(". Factor ").append(leat.quantity.NumberText.shortest(one)).append('.');
    page.entry(
        unit.symbol().isEmpty() ? "(no unit)" : Roff.bold(unit.symbol()),
        Roff.text(text.toString()));
  }

  // leat-rules(7)

  private static String rules() {
    Roff page =
        new Roff("LEAT-RULES", 7, "leat-rules", "the design rules that leat check judges by");
    page.head("DESCRIPTION");
    page.paragraph(
        "Each rule measures one thing in a plan and holds it against a limit. A rule whose keys are missing is unknown, never a pass."
            + " A limit of your own stands in the plan: limits: {ID: VALUE}.");
    page.head("RULES");
    for (Rule rule : Rules.all()) {
      StringBuilder text = new StringBuilder(sentence(rule.meaning()));
      text.append(" Need: ").append(rule.need());
      if (rule.usualLimit() != null && rule.show() != null) {
        text.append(' ')
            .append(leat.answer.Phrase.of("").add(rule.usualLimit(), rule.show()).render(false));
      }
      text.append(". Limit from: ").append(rule.source());
      text.append(". Reads ").append(words(rule.reads())).append('.');
      page.entry(Roff.bold(rule.id()), Roff.text(text.toString().replace("..", ".")));
    }
    page.head("SEE ALSO");
    page.marked(references(List.of("leat-check(1)", "leat-plan(5)")));
    return page.toString();
  }

  // leat-changes(7)

  /** Written by hand in src/test/docs/changes.txt: numbers that changed first. */
  private static String changes() {
    Roff page = new Roff("LEAT-CHANGES", 7, "leat-changes", "what changed since version 0.1.0");
    try {
      for (String line : Files.readAllLines(Path.of("src/test/docs/changes.txt"))) {
        if (line.startsWith("- ")) {
          page.paragraph(line.substring(2));
        } else if (!line.isBlank()) {
          page.head(line.toUpperCase(java.util.Locale.ROOT));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return page.toString();
  }

  // leat-errors(7)

  private String errors() {
    Roff page = new Roff("LEAT-ERRORS", 7, "leat-errors", "what leat says to mistakes");
    page.head("DESCRIPTION");
    page.paragraph(
        "A message names the place (a flag, or file, line and column), says what is needed with an example, and what was found."
            + " All mistakes of a plan are reported at once. Messages go to standard error; nothing is computed then.");
    page.head("MESSAGES");
    Map<String, GalleryCase> first = new TreeMap<>();
    for (GalleryCase one : GalleryCase.all()) {
      if (one.file.getFileName().toString().equals(one.code + ".case")) {
        first.put(one.code, one);
      }
    }
    for (GalleryCase one : first.values()) {
      Runner.Said said = gallery.apply(one);
      page.subhead(one.code);
      page.paragraph(one.why + " Exit status " + said.exit() + ".");
      page.verbatim("$ " + cut(one.line) + "\n" + cut(said.err().stripTrailing()));
    }
    page.head("SEE ALSO");
    page.marked(references(List.of("leat(1)", "leat-plan(5)")));
    return page.toString();
  }

  private static String cut(String text) {
    StringBuilder out = new StringBuilder();
    for (String line : text.split("\n")) {
      out.append(out.length() == 0 ? "" : "\n");
      out.append(line.length() > 240 ? line.substring(0, 240) + "..." : line);
    }
    return out.toString();
  }

  static final Path FOLDER = Path.of("man");
}
