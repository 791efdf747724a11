package leat;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * How long methods are, from the line of the type to the closing brace: the share within 20 lines
 * by package, and the longer ones, in target/method-lengths.txt.
 */
class MethodLengthTest {
  private static final int WITHIN = 20;

  /** Least share of a package, per cent; the goal is 90, and these have been reached. */
  private static final double USUAL = 89;

  private static final Map<String, Double> REACHED = Map.of("command", 95.0);

  private final Map<String, int[]> shares = new TreeMap<>();
  private final List<String> longer = new ArrayList<>();

  private void measure() throws IOException {
    Path top = Path.of("src/main/java/leat");
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
        Stream<Path> all = Files.walk(top)) {
      List<Path> sources = all.filter(p -> p.toString().endsWith(".java")).toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      SourcePositions at = Trees.instance(task).getSourcePositions();
      for (CompilationUnitTree unit : task.parse()) {
        Path file = top.toAbsolutePath().relativize(Path.of(unit.getSourceFile().toUri()));
        String room = file.getNameCount() == 1 ? "leat" : file.getName(0).toString();
        methods(unit, at, room, file.toString());
      }
    }
  }

  private void methods(CompilationUnitTree unit, SourcePositions at, String room, String file) {
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethod(MethodTree method, Void nothing) {
        if (method.getBody() != null) {
          long from =
              at.getStartPosition(
                  unit, method.getReturnType() == null ? method : method.getReturnType());
          long lines =
              unit.getLineMap().getLineNumber(at.getEndPosition(unit, method))
                  - unit.getLineMap().getLineNumber(from)
                  + 1;
          int[] share = shares.computeIfAbsent(room, r -> new int[2]);
          share[0]++;
          share[1] += lines <= WITHIN ? 1 : 0;
          if (lines > WITHIN) {
            longer.add(String.format("%4d  %s %s", lines, file, method.getName()));
          }
        }
        return super.visitMethod(method, nothing);
      }
    }.scan(unit, null);
  }

  @Test
  void mostAreReadAtAGlance() throws IOException {
    measure();
    List<String> lines = new ArrayList<>();
    List<String> under = new ArrayList<>();
    shares.forEach(
        (room, share) -> {
          double percent = 100.0 * share[1] / share[0];
          lines.add(
              String.format("%-12s %5d methods, %5.1f %% within 20", room, share[0], percent));
          if (percent < REACHED.getOrDefault(room, USUAL)) {
            under.add(lines.get(lines.size() - 1));
          }
        });
    longer.sort(Collections.reverseOrder());
    lines.addAll(longer);
    Files.write(Path.of("target/method-lengths.txt"), lines);
    assertThat(shares).containsKeys("command", "cli", "check", "hydraulics");
    assertThat(under).as("see target/method-lengths.txt").isEmpty();
  }
}
