package leat.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import leat.answer.Answer;
import leat.answer.Format;
import leat.numeric.Impossible;
import leat.plan.Problem;
import leat.plan.Refused;

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
    } catch (RuntimeException | StackOverflowError | LinkageError e) {
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
      new Output(terminal, null).write(Help.overview(commands));
      return 0;
    }
    if ("--version".equals(args[0]) || "-V".equals(args[0])) {
      new Output(terminal, null).write(Help.version());
      return 0;
    }
    if ("help".equals(args[0])) {
      Command asked = find(commands, args, 1);
      new Output(terminal, null).write(Help.of(asked));
      return 0;
    }
    Command command = find(commands, args, 0);
    int words = command.name().indexOf(' ') < 0 ? 1 : 2;
    String[] rest = java.util.Arrays.copyOfRange(args, words, args.length);
    CommandLines.Typed typed = CommandLines.parse(command, rest);
    if (typed.has(CommonFlags.HELP)) {
      new Output(terminal, null).write(Help.of(command));
      return 0;
    }
    Call call = new Call(command, typed, terminal);
    int code = answer(command, call, terminal);
    tell(terminal, call.asked());
    return code;
  }

  private static int answer(Command command, Call call, Terminal terminal) {
    Format format = call.format();
    Output output = new Output(terminal, call.text("--output"));
    int streamed = command.stream(call, output);
    if (streamed >= 0) {
      return streamed;
    }
    Answer answer = answerOf(command, call);
    output.write(format.write(answer));
    tell(terminal, format.aside(answer));
    return answer.exitCode();
  }

  private static Answer answerOf(Command command, Call call) {
    try {
      return command.answer(call);
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
      throw new Refused(CommandErrors.unknownCommand(args[at], commands.names()));
    }
    return command;
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
