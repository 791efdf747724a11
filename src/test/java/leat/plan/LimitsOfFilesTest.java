package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no plan, or too much of one: refused at once, with little memory. */
class LimitsOfFilesTest {
  @TempDir Path folder;

  private Leat check(byte[] bytes) throws IOException {
    Files.write(folder.resolve("p.yaml"), bytes);
    return Leat.in(folder, "", Map.of(), "check", "p.yaml");
  }

  private Leat check(String text) throws IOException {
    return check(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Bytes this thread allocates and time it takes, both small. */
  private static String refusedQuickly(String yaml) {
    com.sun.management.ThreadMXBean memory =
        (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    return Assertions.assertTimeout(
        Duration.ofSeconds(4),
        () -> {
          long before = memory.getCurrentThreadAllocatedBytes();
          String told = Plans.refused(yaml);
          long used = memory.getCurrentThreadAllocatedBytes() - before;
          assertThat(used).isLessThan(150_000_000L);
          return told;
        });
  }

  @Test
  void billionLaughs() {
    StringBuilder yaml =
        new StringBuilder("pump:\n  a: &a [lol, lol, lol, lol, lol, lol, lol, lol]\n");
    for (char c = 'b'; c <= 'k'; c++) {
      String one = "*" + (char) (c - 1);
      yaml.append("  ").append(c).append(": &").append(c).append(" [");
      yaml.append(String.join(", ", java.util.Collections.nCopies(9, one))).append("]\n");
    }
    assertThat(refusedQuickly(yaml.toString())).contains("pump.a: unknown key");
    String sections = yaml.toString().replace("pump:\n", "x: 1\ntowers:\n");
    assertThat(refusedQuickly(sections)).contains("p.yaml:1:1: x: unknown key");
  }

  @Test
  void billionLaughsThroughDeclaredKeys() {
    StringBuilder yaml = new StringBuilder("towers:\n");
    yaml.append("- modules: &m [").append("{pots: 4},".repeat(400)).append("]\n");
    yaml.append("- modules: *m\n".repeat(450));
    assertThat(refusedQuickly(yaml.toString()))
        .contains("more than 20000 values once the aliases are followed; reading stops here");
  }

  @Test
  void mergeBomb() {
    StringBuilder yaml = new StringBuilder("pump: &a {");
    for (int i = 0; i < 9000; i++) {
      yaml.append("k").append(i).append(": 1, ");
    }
    yaml.append("}\ntank: {<<: [").append("*a, ".repeat(400)).append("]}\n");
    assertThat(refusedQuickly(yaml.toString())).contains("more than 20000 values");
  }

  @Test
  void aMillionAliases() throws IOException {
    String few = "name: &a b\ntowers: [" + "*a,".repeat(300_000) + "]\n";
    assertThat(refusedQuickly(few)).contains("more than 500 aliases; a plan needs a handful");
    String many = "name: &a b\ntowers: [" + "*a,".repeat(1_000_000) + "]\n";
    Leat run = check(many);
    assertThat(run.code).isEqualTo(2);
    assertThat(run.err)
        .isEqualTo("p.yaml: larger than 1000 kB; a plan is small enough to read aloud\n");
  }

  @Test
  void manyValuesAndManyKeys() {
    assertThat(refusedQuickly("pump: {curve: [" + "1,".repeat(450_000) + "]}\n"))
        .contains("more than 20000 values");
    StringBuilder yaml = new StringBuilder();
    for (int i = 0; i < 9000; i++) {
      yaml.append("key_").append(i).append(": 1\n");
    }
    assertThat(refusedQuickly(yaml.toString())).contains("and 8980 more\n");
  }

  @Test
  void deep() {
    String open = "[".repeat(400_000);
    assertThat(refusedQuickly("name: " + open)).contains("nested deeper than 20 levels");
    assertThat(refusedQuickly("name: " + "{a: ".repeat(200_000))).contains("nested deeper");
    StringBuilder blocks = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      blocks.append(" ".repeat(i)).append("a:\n");
    }
    assertThat(refusedQuickly(blocks.toString())).contains("nested deeper");
  }

  @Test
  void tenMegabytes() throws IOException {
    byte[] bytes = new byte[10_000_000];
    java.util.Arrays.fill(bytes, (byte) 'a');
    Leat run = check(bytes);
    assertThat(run.code).isEqualTo(2);
    assertThat(run.err).startsWith("p.yaml: larger than 1000 kB");
  }

  @Test
  void notText() throws IOException {
    assertThat(check(new byte[] {'n', 'a', 'm', 'e', ':', '\n', (byte) 0xe4}).err)
        .isEqualTo("p.yaml: line 2 is not UTF-8 text; save the plan as UTF-8\n");
    assertThat(check("name: a\u0007b\n").err)
        .startsWith("p.yaml:1:8: the file holds control characters that no plan may hold");
    assertThat(check(new byte[] {(byte) 0xff, (byte) 0xfe, 'n', 0}).code).isEqualTo(2);
    assertThat(check("").err).startsWith("p.yaml:1:1: the plan is empty; `leat plan new`");
    assertThat(check("# only a remark\n").err).startsWith("p.yaml:1:1: the plan is empty");
    assertThat(check("---\n").code).isEqualTo(2);
  }

  @Test
  void foldersAndMissingFilesAreThree() throws IOException {
    Files.createDirectory(folder.resolve("d.yaml"));
    Leat run = Leat.in(folder, "", Map.of(), "check", "d.yaml");
    assertThat(run.code).isEqualTo(3);
    assertThat(run.err).isEqualTo("d.yaml: this is a folder, not a plan\n");
    Leat missing = Leat.in(folder, "", Map.of(), "tank", "--plan", "no.yaml", "--level", "1 mm");
    assertThat(missing.code).isEqualTo(3);
    assertThat(missing.err).isEqualTo("no.yaml: no such file\n");
  }

  @Test
  void byteOrderMarkAndLineEndsAreTaken() throws IOException {
    String crlf = "\ufeff" + Plans.sketch().replace("\n", "\r\n");
    Files.writeString(folder.resolve("a.yaml"), crlf);
    Files.writeString(folder.resolve("b.yaml"), Plans.sketch());
    Leat a = Leat.in(folder, "", Map.of(), "plan", "show", "a.yaml", "--format", "csv");
    Leat b = Leat.in(folder, "", Map.of(), "plan", "show", "b.yaml", "--format", "csv");
    assertThat(a.code).isZero();
    assertThat(a.out).isEqualTo(b.out).contains("pump.power,24 W,plan,");
    assertThat(check("\ufeffname: x\r\ntank: {full: 3}\r\n").err)
        .isEqualTo(
            "p.yaml:2:14: tank.full: a length needs its unit, such as \"13 mm\"; got \"3\"\n"
                + "  2 | tank: {full: 3}\n    |              ^\n");
  }

  @Test
  void standardInputOnce() {
    String plan = Starter.text(null);
    assertThat(Leat.in(folder, plan, Map.of(), "check", "-").code).isZero();
    Leat twice = Leat.in(folder, plan, Map.of(), "check", "-", "-");
    assertThat(twice.code).isEqualTo(2);
    assertThat(twice.err).contains("standard input can be read once only");
  }

  @Test
  void leatPlan() throws IOException {
    Files.writeString(folder.resolve("mine.yaml"), Starter.text("mine"));
    Map<String, String> environment = Map.of("LEAT_PLAN", "mine.yaml");
    Leat run = Leat.in(folder, "", environment, "plan", "show", "name");
    assertThat(run.out).isEqualTo("name: mine\n");
    assertThat(Leat.in(folder, "", environment, "check").code).isZero();
    Files.writeString(folder.resolve("other.yaml"), Starter.text("other"));
    assertThat(Leat.in(folder, "", environment, "plan", "show", "other.yaml", "name").out)
        .isEqualTo("name: other\n");
    assertThat(Leat.in(folder, "", Map.of("LEAT_PLAN", ""), "plan", "show").err)
        .startsWith("leat plan show: a plan is needed");
    assertThat(Leat.in(folder, "", Map.of("LEAT_PLAN", "gone.yaml"), "check").code).isEqualTo(3);
  }
}
