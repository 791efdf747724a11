package leat.command.plans;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A C compiler, where one is installed: compiles a program round a header and runs it. */
final class CProgram {
  private static final String[] NAMES = {"cc", "gcc", "clang", "tcc"};

  private CProgram() {}

  /** Path of a compiler, or null, which is said once in one line. */
  static String compiler() {
    for (String name : NAMES) {
      for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
        if (new File(folder, name).canExecute()) {
          return new File(folder, name).getPath();
        }
      }
    }
    System.err.println("no C compiler here: the header of a controller was not compiled");
    return null;
  }

  /** What the program prints, a line each; it is compiled as C99 with every warning an error. */
  static List<String> run(Path folder, String header, String program) throws Exception {
    Files.writeString(folder.resolve("tower.h"), header);
    Path source = folder.resolve("program.c");
    Files.writeString(source, "#include <stdio.h>\n#include \"tower.h\"\n" + program);
    List<String> line = new ArrayList<>();
    line.add(compiler());
    if (!line.get(0).endsWith("tcc")) {
      line.addAll(List.of("-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic"));
    }
    Path made = folder.resolve("program");
    line.addAll(List.of("-o", made.toString(), source.toString()));
    said(line);
    return said(List.of(made.toString())).lines().toList();
  }

  private static String said(List<String> line) throws IOException, InterruptedException {
    Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
      throw new AssertionError(line + "\n" + said);
    }
    return said;
  }
}
