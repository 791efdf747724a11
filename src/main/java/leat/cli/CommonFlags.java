package leat.cli;

import leat.plan.Kind;

/** Flags that every command has. */
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
          "only the values of this column of csv or key of json, bare, a line each; an empty line for an unknown one, and exit code 1");
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
}
