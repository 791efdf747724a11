package leat.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leat.plan.Refused;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Builds picocli's model of one command from its declared flags, and reads a command line with it.
 */
final class CommandLines {
  private CommandLines() {}

  private static PositionalParamSpec operands(Command command) {
    return PositionalParamSpec.builder()
        .paramLabel(command.operands().isEmpty() ? "OPERAND" : command.operands())
        .hidden(command.operands().isEmpty())
        .arity("0..*")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .build();
  }

  private static OptionSpec option(Flag flag) {
    List<String> names = new ArrayList<>();
    names.add(flag.name);
    if (flag.shortName != null) {
      names.add(flag.shortName);
    }
    if (flag.alias != null) {
      names.add(flag.alias);
    }
    OptionSpec.Builder builder =
        OptionSpec.builder(names.toArray(new String[0])).description(flag.meaning);
    if (!flag.hasValue()) {
      return builder.type(boolean.class).usageHelp(flag == CommonFlags.HELP).build();
    }
    builder.paramLabel(flag.label).arity("1");
    if (flag.repeatable) {
      return builder.type(List.class).auxiliaryTypes(String.class).build();
    }
    return builder.type(String.class).build();
  }

  /**
   * Only the flags that were typed are built: each costs a fraction of a millisecond, and no other
   * can match.
   */
  private static CommandSpec specFor(Command command, String[] args) {
    CommandSpec spec = CommandSpec.create().name("leat " + command.name());
    Flag[] flags = CommonFlags.all(command);
    for (int i = 0; i < flags.length; i++) {
      if (isTyped(flags[i], args)) {
        spec.addOption(option(flags[i]));
      }
    }
    return spec.addPositional(operands(command));
  }

  private static boolean isTyped(Flag flag, String[] args) {
    for (int i = 0; i < args.length; i++) {
      if (args[i].startsWith(flag.name)
          || flag.shortName != null && args[i].startsWith(flag.shortName)
          || flag.alias != null && args[i].startsWith(flag.alias)) {
        return true;
      }
    }
    return false;
  }

  static CommandLine of(Command command, String[] args) {
    CommandLine line = new CommandLine(specFor(command, args));
    line.setExpandAtFiles(false);
    line.setInterpolateVariables(false);
    line.setUnmatchedOptionsArePositionalParams(true);
    return line;
  }

  /** What was typed: values by flag name, in order, and operands. */
  static final class Typed {
    final Map<String, List<String>> values = new HashMap<>();
    final List<String> operands = new ArrayList<>();
    List<String> words = List.of();

    boolean has(Flag flag) {
      return values.containsKey(flag.name);
    }

    /** The same line with one plan in place of all that are operands. */
    Typed with(String plan) {
      Typed other = new Typed();
      other.values.putAll(values);
      for (int i = 0; i < operands.size(); i++) {
        if (!Call.isPlanName(operands.get(i))) {
          other.operands.add(operands.get(i));
        }
      }
      other.operands.add(plan);
      return other;
    }
  }

  static Typed parse(Command command, String[] args) {
    Typed plain = plain(command, args);
    Typed typed = plain != null ? plain : withPicocli(command, args);
    typed.words = java.util.Arrays.asList(args);
    return typed;
  }

  /**
   * Reads a plain line, each flag written out with its value behind or joined to it, without
   * picocli, which costs half of a one-off sum's start; null for anything else, also for every
   * mistake.
   */
  static Typed plain(Command command, String[] args) {
    Flag[] flags = CommonFlags.all(command);
    Typed typed = new Typed();
    for (int i = 0; i < args.length; i++) {
      String arg = args[i];
      int equals = arg.startsWith("--") ? arg.indexOf('=') : -1;
      Flag flag = named(flags, equals < 0 ? arg : arg.substring(0, equals));
      if (flag == null || equals > 0 && !flag.hasValue()) {
        if (arg.startsWith("-")) {
          return null;
        }
        typed.operands.add(arg);
        continue;
      }
      String value = "true";
      if (equals > 0) {
        // joined to its flag a value may begin with a minus
        value = arg.substring(equals + 1);
      } else if (flag.hasValue()) {
        i++;
        if (i == args.length || args[i].startsWith("-")) {
          return null;
        }
        value = args[i];
      }
      List<String> values = typed.values.get(flag.name);
      if (values == null) {
        values = new ArrayList<>();
        typed.values.put(flag.name, values);
      } else if (!flag.repeatable) {
        return null;
      }
      values.add(value);
    }
    return typed;
  }

  private static Flag named(Flag[] flags, String arg) {
    for (int i = 0; i < flags.length; i++) {
      Flag flag = flags[i];
      if (arg.equals(flag.name) || arg.equals(flag.shortName) || arg.equals(flag.alias)) {
        return flag;
      }
    }
    return null;
  }

  static Typed withPicocli(Command command, String[] args) {
    CommandLine.ParseResult result;
    try {
      result = of(command, args).parseArgs(args);
    } catch (CommandLine.OverwrittenOptionException e) {
      throw new Refused(
          CommandErrors.flagTwice(command, ((OptionSpec) e.getOverwritten()).longestName()));
    } catch (CommandLine.MissingParameterException e) {
      throw new Refused(CommandErrors.missingValue(command, missingFlag(e)));
    } catch (CommandLine.ParameterException e) {
      throw new Refused(CommandErrors.badCommandLine(command, e.getMessage()));
    }
    Typed typed = new Typed();
    List<OptionSpec> matched = result.matchedOptions();
    for (int i = 0; i < matched.size(); i++) {
      OptionSpec option = matched.get(i);
      typed.values.put(option.names()[0], new ArrayList<>(option.stringValues()));
    }
    List<PositionalParamSpec> positionals = result.matchedPositionals();
    if (!positionals.isEmpty()) {
      // one list of operands, which picocli names again for every group of them
      typed.operands.addAll(positionals.get(0).stringValues());
    }
    return typed;
  }

  private static String missingFlag(CommandLine.MissingParameterException e) {
    if (!e.getMissing().isEmpty() && e.getMissing().get(0) instanceof OptionSpec option) {
      return option.names()[0];
    }
    return "";
  }
}
