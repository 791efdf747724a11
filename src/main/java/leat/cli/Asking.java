package leat.cli;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leat.numeric.Impossible;
import leat.plan.Problem;
import leat.plan.Refused;
import leat.plan.Starter;

/**
 * Asks for everything that is missing at once: what the first refusal asks for is filled in with
 * its example, and the command is asked again, until it asks for nothing more. Nothing of that is
 * shown but the questions.
 */
final class Asking {
  private static final int MOST = 12;

  private Asking() {}

  /** The refusal with all that is missing; the same when it is about something else. */
  static Refused all(Refused first, TypedLine typed, Terminal terminal) {
    List<Problem> asked = new ArrayList<>();
    TypedLine filled = typed.copy();
    Refused refused = first;
    while (refused != null && asked.size() < MOST && fill(refused, asked, filled)) {
      refused = ask(new Call(filled, terminal));
    }
    return asked.isEmpty() ? first : new Refused(asked, first.exitCode());
  }

  /** The flags that a call cannot do without, whatever the plan. */
  static List<String> always(Command command) {
    if (!command.takesPlan()) {
      return withoutPlan(command);
    }
    TypedLine typed = new TypedLine(command);
    typed.values.put(CommonFlags.PLAN.name, List.of("-"));
    byte[] plan = Starter.text(null).getBytes(StandardCharsets.UTF_8);
    return questions(typed, plan);
  }

  /** The flags that a call without a plan cannot do without. */
  static List<String> withoutPlan(Command command) {
    return questions(new TypedLine(command), new byte[0]);
  }

  private static List<String> questions(TypedLine typed, byte[] input) {
    List<String> flags = new ArrayList<>();
    OutputStream nowhere = OutputStream.nullOutputStream();
    Refused first = ask(new Call(typed, terminal(input, nowhere)));
    if (first == null) {
      return flags;
    }
    List<Problem> problems = all(first, typed, terminal(input, nowhere)).problems();
    for (int i = 0; i < problems.size(); i++) {
      String asked = problems.get(i).asked();
      if (asked != null && asked.startsWith("--")) {
        flags.add(asked);
      }
    }
    return flags;
  }

  private static Terminal terminal(byte[] input, OutputStream nowhere) {
    return new Terminal(
        new ByteArrayInputStream(input),
        nowhere,
        nowhere,
        Map.of(),
        Path.of("").toAbsolutePath(),
        null);
  }

  private static Refused ask(Call call) {
    try {
      call.command.answer(call);
      return null;
    } catch (Refused e) {
      return e;
    } catch (Impossible e) {
      // The examples together are no tower: no question.
      return null;
    }
  }

  /** Takes up the questions of a refusal; false when it asks nothing new. */
  private static boolean fill(Refused refused, List<Problem> asked, TypedLine filled) {
    boolean more = false;
    List<Problem> problems = refused.problems();
    for (int i = 0; i < problems.size(); i++) {
      Problem problem = problems.get(i);
      if (problem.asked() == null || isAsked(asked, problem.asked())) {
        return more;
      }
      asked.add(problem);
      put(filled, problem);
      more = true;
    }
    return more;
  }

  private static boolean isAsked(List<Problem> asked, String what) {
    for (int i = 0; i < asked.size(); i++) {
      if (asked.get(i).asked().equals(what)) {
        return true;
      }
    }
    return false;
  }

  private static void put(TypedLine filled, Problem problem) {
    boolean flag = problem.asked().startsWith("--");
    String name = flag ? problem.asked() : CommonFlags.SET.name;
    List<String> values = new ArrayList<>();
    if (filled.values.get(name) != null) {
      values.addAll(filled.values.get(name));
    }
    values.add(flag ? problem.example() : problem.asked() + "=" + problem.example());
    filled.values.put(name, values);
  }
}
