package leat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leat.cli.Declared;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Commands multiply and divide no doubles: the trade gives what is shown. The classes that still do
 * are listed with how often, in calculating-commands.txt, which only gets shorter.
 */
class CalculationTest {
  private static final Path LEFT = Path.of("src/test/resources/calculating-commands.txt");

  @Test
  void commandsMultiplyAndDivideNothing() throws IOException {
    Map<String, Integer> left = new TreeMap<>();
    for (String line : Files.readAllLines(LEFT)) {
      if (!line.startsWith("#") && !line.isBlank()) {
        String[] words = line.strip().split(" ");
        left.put(words[0], Integer.valueOf(words[1]));
      }
    }
    Map<String, Integer> found = calculating("leat/command");
    List<String> more = new ArrayList<>();
    found.forEach(
        (name, times) -> {
          if (times > left.getOrDefault(name, 0)) {
            more.add(name + " " + times);
          }
        });
    System.out.println(
        "Commands that still multiply or divide: "
            + found.size()
            + " classes, "
            + found.values().stream().mapToInt(Integer::intValue).sum()
            + " times");
    assertThat(more)
        .as("a * or / on doubles in a command; the trade gives what is shown")
        .isEmpty();
  }

  /** The reader finds them where they are: the trades are full of them. */
  @Test
  void theyAreSeenWhereTheyAre() throws IOException {
    assertThat(calculating("leat/hydraulics")).hasSizeGreaterThan(10);
  }

  private static Map<String, Integer> calculating(String folder) throws IOException {
    Map<String, Integer> found = new TreeMap<>();
    Path root = Declared.CLASSES.resolve(folder);
    try (var walk = Files.walk(root)) {
      for (Path file : walk.filter(f -> f.toString().endsWith(".class")).toList()) {
        int times = calculations(Files.readAllBytes(file));
        if (times > 0) {
          String name = root.relativize(file).toString();
          String outer = name.substring(0, name.length() - 6).replaceAll("\\$.*", "");
          found.merge(outer, times, Integer::sum);
        }
      }
    }
    return found;
  }

  private static int calculations(byte[] bytes) {
    int[] times = {0};
    new ClassReader(bytes)
        .accept(
            new ClassVisitor(Opcodes.ASM9) {
              @Override
              public MethodVisitor visitMethod(
                  int access, String name, String type, String signature, String[] thrown) {
                return new MethodVisitor(Opcodes.ASM9) {
                  @Override
                  public void visitInsn(int opcode) {
                    boolean calculates =
                        opcode == Opcodes.DMUL || opcode == Opcodes.DDIV || opcode == Opcodes.DREM;
                    times[0] += calculates ? 1 : 0;
                  }
                };
              }
            },
            ClassReader.SKIP_DEBUG);
    return times[0];
  }
}
