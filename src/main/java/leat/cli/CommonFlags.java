package leat.cli;

import leat.answer.Format;
import leat.plan.Kind;
import leat.plan.KindReader;
import leat.plan.Refused;

/** Flags that every command has, and the format that they ask for. */
final class CommonFlags {
  private CommonFlags() {}

  static final Flag PLAN =
      Flag.of(
          "--plan",
          "-p",
          "FILE",
          Kind.TEXT,
          "terrace.yaml",
          "the plan to read; - is standard input; LEAT_PLAN names it otherwise");
  static final Flag SET =
      Flag.of(
              "--set",
              "KEY=VALUE",
              Kind.TEXT,
              "pump.derate=70%",
              "sets a key of the plan, the value as in YAML; an empty one removes it")
          .repeatable();
  static final Flag FORMAT = format(new String[] {"text", "csv", "json", "html"});

  private static Flag format(String[] all) {
    return Flag.of(
            "--format",
            "-f",
            "FORMAT",
            Kind.choice(all),
            "json",
            "what the answer is written as; html is one page for a browser, charts inside, without any network")
        .byDefault("text");
  }

  static final Flag VALUE =
      Flag.of(
          "--value",
          "KEY",
          Kind.TEXT,
          "volume_L",
          "only the values of this column of csv or key of json, bare, a line each, and of a sum and its rows the sum; an empty line for an unknown one, and exit code 1");
  static final Flag OUTPUT =
      Flag.of(
          "--output",
          "-o",
          "FILE",
          Kind.TEXT,
          "answer.csv",
          "writes the answer to a file, whole or not at all");
  static final Flag UNITS =
      Flag.of(
              "--units",
              "SYSTEM",
              Kind.choice("metric", "us"),
              "us",
              "units of text, where neither the plan nor LEAT_UNITS names them; csv and json stay metric")
          .byDefault("metric");
  static final Flag DELIMITER =
      Flag.of("--delimiter", "CHAR", Kind.TEXT, ";", "between the columns of csv, read or written");
  static final Flag DECIMAL =
      Flag.of("--decimal", "CHAR", Kind.TEXT, ",", "decimal sign of csv, read or written");
  static final Flag RAW =
      Flag.on(
          "--raw",
          "csv keeps words that begin with = + - @ or a tab as they are; otherwise an apostrophe keeps a spreadsheet from running them");
  static final Flag QUIET =
      Flag.on(
          "--quiet",
          "-q",
          "no Taken, Mind, Next, nothing on standard error but errors; text keeps one last line where somebody can be hurt");
  static final Flag EXPLAIN =
      Flag.on("--explain", "shows each formula with the numbers in it, its range and its source");
  static final Flag COLOR =
      Flag.of(
              "--color",
              "WHEN",
              Kind.choice("auto", "always", "never"),
              "never",
              "colour of FAIL, warn and pass; auto is on a terminal where NO_COLOR is not set")
          .byDefault("auto");
  static final Flag CHART =
      Flag.on(
          "--chart",
          "text draws the answer, too, in plain characters; a page of html has its charts anyway");
  static final Flag HELP = Flag.on("--help", "-h", "shows this help");

  /** All of them. */
  static Flag[] everywhere() {
    return new Flag[] {
      PLAN, SET, FORMAT, VALUE, OUTPUT, UNITS, DELIMITER, DECIMAL, RAW, COLOR, CHART, QUIET,
      EXPLAIN, HELP
    };
  }

  private static Flag formatOf(Command command) {
    String[] all = command.formats();
    return all.length == 4 ? FORMAT : format(all);
  }

  static Flag[] of(Command command) {
    Flag[] all = everywhere();
    Flag[] has = new Flag[all.length];
    int n = 0;
    for (int i = 0; i < all.length; i++) {
      boolean ofPlan = all[i] == PLAN || all[i] == SET;
      if ((command.takesPlan() || !ofPlan) && (command.draws() || all[i] != CHART)) {
        has[n++] = all[i] == FORMAT ? formatOf(command) : all[i];
      }
    }
    return java.util.Arrays.copyOf(has, n);
  }

  /** All flags of a command, its own first. */
  static Flag[] all(Command command) {
    Flag[] own = command.flags();
    Flag[] common = of(command);
    Flag[] all = java.util.Arrays.copyOf(own, own.length + common.length);
    System.arraycopy(common, 0, all, own.length, common.length);
    return all;
  }

  /** The key of --value, whose values alone are asked for, or null. */
  static String valueKey(Call call) {
    String key = call.text(VALUE.name);
    if (key != null && call.has(FORMAT.name)) {
      throw new Refused(CommandErrors.notBoth(call.command, VALUE.name, FORMAT.name));
    }
    if (key != null && call.command.draws() && call.has(CHART.name)) {
      throw new Refused(CommandErrors.notBoth(call.command, VALUE.name, CHART.name));
    }
    return key;
  }

  /** The format that a call asks for. */
  static Format formatOf(Call call) {
    String format = valueKey(call) != null ? Format.VALUE : formatName(call);
    char delimiter = character(call, DELIMITER, ',');
    char decimal = character(call, DECIMAL, '.');
    if (delimiter == decimal) {
      throw new Refused(CommandErrors.sameSeparators(delimiter));
    }
    boolean us = "us".equals(units(call));
    boolean quiet = call.has(QUIET.name);
    boolean explain = call.has(EXPLAIN.name);
    Format asked = new Format(format, us, quiet, explain, call.has(RAW.name), delimiter, decimal);
    if (call.command.draws() && call.has(CHART.name)) {
      if (!"text".equals(format) && !"html".equals(format)) {
        throw new Refused(OutputErrors.chartInText(call.command, format));
      }
      asked.charted(call.terminal.takesBoxes());
    }
    return onScreen(call, asked);
  }

  private static Format onScreen(Call call, Format asked) {
    boolean toScreen = call.text(OUTPUT.name) == null;
    String color = (String) valueOr(call, COLOR, "auto");
    boolean painted = "always".equals(color) || "auto".equals(color) && call.terminal.wantsColor();
    return asked.on(toScreen ? call.terminal.columns() : 0, toScreen && painted);
  }

  private static String formatName(Call call) {
    return (String) valueOr(call, FORMAT, "text");
  }

  /** Whether a call is answered in text of US customary units. */
  static boolean isUsText(Call call) {
    return "us".equals(units(call)) && "text".equals(formatName(call));
  }

  /** Units of text: those of the flag, else of the plan that was read, else of LEAT_UNITS. */
  private static String units(Call call) {
    String asked = (String) call.value(UNITS.name);
    if (asked != null || call.unitsOfPlan() != null) {
      return asked != null ? asked : call.unitsOfPlan();
    }
    String usual = call.terminal.environment.get("LEAT_UNITS");
    if (usual == null || usual.isEmpty()) {
      return "metric";
    }
    return (String) KindReader.read(UNITS.kind, "LEAT_UNITS", usual);
  }

  private static Object valueOr(Call call, Flag flag, Object otherwise) {
    Object value = call.value(flag.name);
    return value == null ? otherwise : value;
  }

  private static char character(Call call, Flag flag, char otherwise) {
    String text = call.text(flag.name);
    if (text == null) {
      return otherwise;
    }
    if ("\\t".equals(text) || "tab".equals(text)) {
      return '\t';
    }
    if (text.length() != 1 || Character.isLetterOrDigit(text.charAt(0)) || text.charAt(0) == '"') {
      throw new Refused(CommandErrors.notACharacter(flag.name, text));
    }
    return text.charAt(0);
  }
}
