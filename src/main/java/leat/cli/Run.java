package leat.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import leat.answer.Answer;
import leat.answer.Bare;
import leat.answer.Format;
import leat.numeric.Impossible;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.quantity.Nearest;

/**
 * One run of the program: finds the command, reads the line, writes the answer, gives the exit
 * code.
 */
public final class Run {
  private Run() {}

  /** The exit code of a command line. */
  public static int run(String[] args, Terminal terminal, CommandList commands) {
    try {
      return answered(args, terminal, commands);
    } catch (Refused e) {
      tell(terminal, e);
      return e.exitCode();
    } catch (Impossible e) {
      tell(terminal, new Refused(CommandErrors.impossible(e.quantity(), e.getMessage())));
      return 2;
    } catch (Output.ClosedPipe e) {
      return 0;
    } catch (OutOfMemoryError e) {
      tell(terminal, new Refused(CommandErrors.tooLarge()));
      return 2;
    } catch (RuntimeException | StackOverflowError e) {
      if (terminal.environment.get("LEAT_DEBUG") != null) {
        throw e;
      }
      Problem bug = CommandErrors.bug(where(e));
      tell(terminal, new Refused(bug));
      return 70;
    }
  }

  private static int answered(String[] args, Terminal terminal, CommandList commands) {
    if (args.length == 0
        || "--help".equals(args[0])
        || "-h".equals(args[0])
        || "help".equals(args[0]) && args.length == 1) {
      new Output(terminal, null).write(new Help(commands, terminal.columns()).overview());
      return 0;
    }
    boolean version = "--version".equals(args[0]) || "-V".equals(args[0]);
    if (version && args.length == 1) {
      new Output(terminal, null).write(Help.version());
      return 0;
    }
    if ("help".equals(args[0])) {
      Help help = new Help(commands, terminal.columns());
      boolean flags = args.length == 2 && "flags".equals(args[1]);
      new Output(terminal, null).write(flags ? help.flags() : help.of(find(commands, args, 1)));
      return 0;
    }
    Command command = version ? commands.version() : find(commands, args, 0);
    int words = command.name().indexOf(' ') < 0 ? 1 : 2;
    String[] rest = java.util.Arrays.copyOfRange(args, words, args.length);
    TypedLine typed = TypedLine.of(command, rest);
    if (typed.has(CommonFlags.HELP)) {
      new Output(terminal, null).write(new Help(commands, terminal.columns()).of(command));
      return 0;
    }
    Call call = new Call(typed, terminal);
    int code = answer(command, call, terminal);
    tell(terminal, call.asked());
    return code;
  }

  private static int answer(Command command, Call call, Terminal terminal) {
    boolean page = "html".equals(call.format().name);
    refusePageOnScreen(page, command, call, terminal);
    if (call.has(CommonFlags.OUTPUT)) {
      OutputName.refuseMistaken(call);
    }
    Output output = new Output(terminal, call.text("--output"));
    int streamed = command.stream(call, output);
    if (streamed >= 0) {
      return streamed == 0 && call.hasBlankValue() ? 1 : streamed;
    }
    if (command.eachPlan() && call.planNames().size() > 1) {
      return new EachPlan(terminal).run(call, output);
    }
    Answer answer;
    try {
      answer = answerOf(call);
    } catch (Refused e) {
      throw Asking.all(e, call, terminal);
    }
    refusePageOnScreen(answer.isPage(), command, call, terminal);
    // the plan that was read may name the units
    Format format = call.format();
    if (Format.VALUE.equals(format.name)) {
      return values(command, call, output, answer);
    }
    output.write(page ? Page.of(call, answer, format) : format.write(answer));
    tell(terminal, format.aside(answer));
    return answer.exitCode();
  }

  private static void refusePageOnScreen(
      boolean page, Command command, Call call, Terminal terminal) {
    if (page && terminal.isScreen() && call.text("--output") == null) {
      throw new Refused(OutputErrors.pageToScreen(command));
    }
  }

  private static int values(Command command, Call call, Output output, Answer answer) {
    Bare bare = Bare.of(answer, CommonFlags.valueKey(call));
    if (bare == null) {
      throw new Refused(
          CommandErrors.noKey(command, CommonFlags.valueKey(call), Bare.keys(answer)));
    }
    output.write(bare.lines());
    tell(call.terminal, call.format().aside(answer));
    return answer.exitCode() == 0 && bare.blank() ? 1 : answer.exitCode();
  }

  static Answer answerOf(Call call) {
    try {
      return call.command.answer(call);
    } catch (Impossible e) {
      throw new Refused(CommandErrors.impossible(call.place(e.quantity()), e.getMessage()));
    }
  }

  private static Command find(CommandList commands, String[] args, int at) {
    Command command = null;
    if (at + 1 < args.length) {
      command = commands.of(args[at] + " " + args[at + 1]);
    }
    if (command == null) {
      command = commands.of(args[at]);
    }
    if (command == null) {
      throw new Refused(CommandErrors.unknownCommand(args[at], everyName(commands)));
    }
    if (at + 1 < args.length && command.name().indexOf(' ') < 0) {
      refuseNearMiss(commands, command, args[at + 1]);
    }
    return command;
  }

  private static List<String> everyName(CommandList commands) {
    List<String[]> all = commands.all();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      names.add(all.get(i)[1]);
    }
    return names;
  }

  /** A word behind a command that was meant for one of its sub-commands. */
  private static void refuseNearMiss(CommandList commands, Command command, String word) {
    if (word.isEmpty() || !Character.isLetter(word.charAt(0)) || Call.isPlanName(word)) {
      return;
    }
    List<String> subs = commands.subs(command.name());
    boolean takesWords = !command.operands().isEmpty();
    if (!subs.isEmpty() && (!takesWords || Nearest.of(word, subs) != null)) {
      throw new Refused(CommandErrors.unknownSubCommand(command.name(), word, subs));
    }
  }

  /** Tells every problem of a refusal. */
  public static void tell(Terminal terminal, Refused refused) {
    terminal.told().addAll(refused.problems());
    tell(terminal, refused.getMessage());
  }

  public static void tell(Terminal terminal, String text) {
    if (text.isEmpty()) {
      return;
    }
    try {
      terminal.err.write(text.getBytes(StandardCharsets.UTF_8));
      terminal.err.flush();
    } catch (IOException e) {
      // Nobody can be told that standard error is gone.
      return;
    }
  }

  private static String where(Throwable e) {
    StackTraceElement[] trace = e.getStackTrace();
    String place =
        trace.length == 0 ? "" : " at " + trace[0].getFileName() + ":" + trace[0].getLineNumber();
    String message = e.getMessage() == null ? "" : ": " + e.getMessage();
    return e.getClass().getSimpleName() + message + place;
  }
}
