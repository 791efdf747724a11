package leat.cli;

import java.util.ArrayList;
import java.util.List;
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

  static TypedLine withPicocli(Command command, String[] args) {
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
    TypedLine typed = new TypedLine(command);
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
