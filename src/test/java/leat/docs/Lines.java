package leat.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.cli.Command;
import leat.cli.Declared;
import leat.cli.Flag;
import leat.plan.Key;
import leat.plan.Keys;
import leat.plan.Kind;
import leat.quantity.Unit;
import leat.quantity.Units;

/** Random command lines from the declared flags: plausible, broken and hostile. */
final class Lines {
  private static final String[] NUMBERS = {
    "0",
    "1",
    "2",
    "7",
    "13",
    "90",
    "1/2",
    "1 1/2",
    "0.3",
    "5.5",
    "100",
    "1000",
    "1e3",
    "-1",
    "-0.0",
    "1e15",
    "1e-15",
    "1e14",
    "1e300",
    "1e-300",
    "999999999999999",
    "0.000001",
    "1/0",
    "0/1",
    "+3",
    ".5",
    "5."
  };
  private static final String[] HOSTILE = {
    "",
    " ",
    "-",
    "--",
    "nan",
    "NaN",
    "Infinity",
    "-inf",
    "1e999",
    "5,5 L",
    "1,000 L/h",
    "13'000 L",
    "0x10",
    "\u0661 m",
    "\uD83D\uDCA7",
    "\u00b5S/cm",
    "1 \u00b5S/cm",
    "\u0001",
    "a\tb",
    "a\nb",
    "%s%n",
    "${HOME}",
    "@x",
    "\"",
    "'",
    "\\",
    "=",
    "15 m",
    "[1, 2]",
    "{a: 1}",
    "&a *a",
    "null",
    "true",
    "~",
    "22:00",
    "2027-02-30",
    "9999-12-31",
    "0000-00-00",
    "1 m @ 2",
    "@",
    "= =",
    "x",
    "1 x 2",
    "1 m x",
    "..",
    "1..2 m",
    "2..1 L",
    "0..1e9 m step 1 mm",
    "10 L in 0 s",
    "10 L in 65 s",
    "N=150",
    "towers[0].riser.bore=13 mm",
    "towers[99].outlet=1 m",
    "towers[*].outlet=3 m",
    "tank=",
    "tank.low=",
    "a.b.c.d=1",
    "=1",
    "pump.curve=[0 L/h @ 2 m, 600 L/h @ 1 m, 500 L/h @ 0 m]",
    "tank.shape=cone",
    "pump.derate=0%",
    "limits.pump-margin=1e9 %"
  };
  private static final String[] PLANS = {
    "first-tower.yaml",
    "proud-tower.yaml",
    "terrace.yaml",
    "nowhere.yaml",
    "folder",
    "-",
    "",
    "broken.yaml"
  };
  private static final String[] FILES = {"out.txt", "none/out.txt", "folder", "-", ""};
  private static final List<Command> COMMANDS = Declared.commands();
  private static final List<Unit> UNITS = Units.all();
  private static final List<String> PATHS = new ArrayList<>();

  static {
    paths(Keys.PLAN, "");
  }

  private static void paths(Key section, String path) {
    for (Key key : section.keys()) {
      PATHS.add(path + key.name());
      paths(key, path + key.name() + (key.shape() == Key.Shape.SECTIONS ? "[0]." : "."));
    }
  }

  private final Random random;

  Lines(Random random) {
    this.random = random;
  }

  /** One command line; {@code plan} is named now and then where a plan is wanted. */
  List<String> next(String plan) {
    Command command = COMMANDS.get(random.nextInt(COMMANDS.size()));
    List<String> args = new ArrayList<>(List.of(command.name().split(" ")));
    int start = random.nextInt(10);
    if (start < 5) {
      String[] examples = command.examples();
      List<String> words = Shell.words("leat " + examples[random.nextInt(examples.length)]);
      if (words != null) {
        args = new ArrayList<>(words.subList(1, words.size()));
      }
    } else if (start == 9 && random.nextInt(20) == 0) {
      args =
          new ArrayList<>(
              List.of(
                  new String[] {"help", "--help", "--version", "", "nothing"}[random.nextInt(5)]));
    }
    swapPlans(args, plan);
    Flag[] own = command.flags();
    Flag[] all = Declared.allFlags(command);
    for (int n = random.nextInt(start < 5 ? 3 : 7); n > 0; n--) {
      add(args, own.length > 0 && random.nextInt(3) > 0 ? own : all, plan);
    }
    if (command.operands().contains("PLAN") && random.nextInt(3) > 0) {
      args.add(plan(plan));
    } else if (!command.operands().isEmpty() && random.nextBoolean()) {
      args.add(value(null));
    }
    mangle(args);
    return args;
  }

  /** A line that reads a plan and nothing that is broken by itself. */
  List<String> ofPlan(String plan) {
    for (; ; ) {
      Command command = COMMANDS.get(random.nextInt(COMMANDS.size()));
      String[] examples = command.examples();
      List<String> words = Shell.words("leat " + examples[random.nextInt(examples.length)]);
      if (words == null || words.get(1).equals("plan") && random.nextInt(10) > 0) {
        continue;
      }
      List<String> args = new ArrayList<>(words.subList(1, words.size()));
      boolean reads = false;
      for (int i = 0; i < args.size(); i++) {
        if (args.get(i).endsWith(".yaml")) {
          args.set(i, reads ? args.get(i) : plan);
          reads = true;
        }
      }
      if (reads) {
        if (random.nextInt(3) == 0) {
          args.addAll(List.of("--format", random.nextBoolean() ? "json" : "csv"));
        } else if (random.nextInt(3) == 0) {
          args.addAll(List.of("--units", "us"));
        }
        return args;
      }
    }
  }

  private void swapPlans(List<String> args, String plan) {
    for (int i = 0; i < args.size(); i++) {
      if (args.get(i).endsWith(".yaml") && random.nextInt(3) > 0) {
        args.set(i, plan);
      }
    }
  }

  private void add(List<String> args, Flag[] flags, String plan) {
    Flag flag = flags[random.nextInt(flags.length)];
    String name = flag.shortName() != null && random.nextBoolean() ? flag.shortName() : flag.name();
    if (flag.label() == null) {
      args.add(name);
      return;
    }
    String value = valueOf(flag, plan);
    if (random.nextInt(8) == 0 && name.startsWith("--")) {
      args.add(name + "=" + value);
    } else {
      args.add(name);
      args.add(value);
    }
  }

  private String valueOf(Flag flag, String plan) {
    if (flag.name().equals("--plan")) {
      return plan(plan);
    }
    if (flag.label().equals("FILE")) {
      return FILES[random.nextInt(FILES.length)];
    }
    if (flag.name().equals("--set") && random.nextInt(4) > 0) {
      return PATHS.get(random.nextInt(PATHS.size())) + "=" + value(null);
    }
    if (random.nextInt(3) == 0) {
      return flag.example();
    }
    return value(flag.kind());
  }

  private String plan(String plan) {
    return random.nextInt(4) > 0 ? plan : PLANS[random.nextInt(PLANS.length)];
  }

  /** A value that suits the kind, or does not. */
  private String value(Kind kind) {
    int dice = random.nextInt(10);
    if (dice < 2) {
      String hostile = HOSTILE[random.nextInt(HOSTILE.length)];
      // A text may be repeated in the answer, where only our own numbers are looked for.
      return kind != null && kind.word().equals("a text") && hostile.contains("n") ? "x" : hostile;
    }
    if (kind != null && kind.words() != null && dice < 8) {
      return kind.words()[random.nextInt(kind.words().length)];
    }
    List<Unit> units =
        kind == null || kind.dimension() == null || dice == 9 ? UNITS : Units.of(kind.dimension());
    String unit = units.isEmpty() ? "" : units.get(random.nextInt(units.size())).symbol();
    String first = number() + " " + unit;
    if (dice == 8) {
      String mark = new String[] {" x ", "@", " = ", " in ", "..", " to "}[random.nextInt(6)];
      return first + mark + number() + " " + UNITS.get(random.nextInt(UNITS.size())).symbol();
    }
    return first;
  }

  private String number() {
    int dice = random.nextInt(10);
    if (dice < 5) {
      return NUMBERS[random.nextInt(NUMBERS.length)];
    }
    double number = Math.pow(10, random.nextDouble() * (dice < 8 ? 4 : 24) - (dice < 8 ? 2 : 12));
    return leat.quantity.NumberText.significant(number, 1 + random.nextInt(6)).replace(" ", "");
  }

  private void mangle(List<String> args) {
    if (args.size() > 1 && random.nextInt(12) == 0) {
      args.remove(1 + random.nextInt(args.size() - 1));
    }
    if (random.nextInt(20) == 0) {
      args.add(random.nextInt(args.size() + 1), HOSTILE[random.nextInt(HOSTILE.length)]);
    }
    if (args.size() > 1 && random.nextInt(12) == 0) {
      int at = 1 + random.nextInt(args.size() - 1);
      args.set(at, Mutations.of(random, args.get(at)));
    }
    if (random.nextInt(4) == 0) {
      args.add("--format");
      args.add("json");
    }
  }
}
