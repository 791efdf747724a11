package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leat.command.Commands;
import leat.plan.Refused;
import org.junit.jupiter.api.Test;

/** The plain lane and picocli read a line alike, or the plain lane leaves it alone. */
class CommandLinesTest {
  private static final String[] VALUES = {
    "8 L/min",
    "",
    "-",
    "-3 C",
    "1.9 m",
    "a=b",
    "--",
    "--lift",
    "terrace.yaml",
    "true",
    "@file",
    "'x'",
    "\"y\"",
    "${sys:user.home}",
    "-x",
    "--k=2"
  };

  @Test
  void agreesWithPicocliOnRandomLines() {
    Random random = new Random(20270612);
    int plain = 0;
    for (int n = 0; n < 20_000; n++) {
      String[] names = new Commands().names();
      String name = names[random.nextInt(names.length)];
      Command command = new Commands().of(name);
      String[] args = line(random, CommonFlags.all(command));
      TypedLine fast = TypedLine.plain(command, args);
      if (fast == null) {
        continue;
      }
      plain++;
      TypedLine slow = null;
      try {
        slow = CommandLines.withPicocli(command, args);
      } catch (Refused e) {
        throw new AssertionError(String.join("|", args) + ": picocli refuses: " + e.getMessage());
      }
      assertThat(fast.values).as(String.join("|", args)).isEqualTo(slow.values);
      assertThat(fast.operands).as(String.join("|", args)).isEqualTo(slow.operands);
    }
    assertThat(plain).isGreaterThan(3000);
  }

  private static String[] line(Random random, Flag[] flags) {
    List<String> args = new ArrayList<>();
    int parts = random.nextInt(6);
    for (int i = 0; i < parts; i++) {
      Flag flag = flags[random.nextInt(flags.length)];
      int kind = random.nextInt(10);
      if (kind == 0) {
        args.add(VALUES[random.nextInt(VALUES.length)]);
        continue;
      }
      args.add(
          kind == 1 && flag.shortName != null
              ? flag.shortName
              : kind == 2 && flag.alias != null ? flag.alias : flag.name);
      if (flag.hasValue() && kind != 3) {
        args.add(random.nextBoolean() ? flag.example : VALUES[random.nextInt(VALUES.length)]);
      }
    }
    return args.toArray(new String[0]);
  }
}
