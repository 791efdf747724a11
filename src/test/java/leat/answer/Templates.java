package leat.answer;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/** The templates that stand in the sources of the commands, read by the Java compiler itself. */
final class Templates {
  static final Path SOURCES = Path.of("src/main/java/leat/command");

  /** A key in braces, as {@link Template} reads it; braces of a plan's YAML hold blanks. */
  static final Pattern KEY = Pattern.compile("\\{([A-Za-z][A-Za-z0-9_]*)(!|:[a-z]+)?}");

  /** One template and where it stands. */
  record Found(Path file, long line, String text) {
    String place() {
      return SOURCES.relativize(file) + ":" + line;
    }

    /** The folder of the class: a group of commands. */
    String room() {
      return file.getParent().getFileName().toString();
    }
  }

  private Templates() {}

  /** All templates with a key in them. */
  static List<Found> all() {
    List<Found> found = new ArrayList<>();
    scan(found, new TreeSet<>());
    return found;
  }

  /** Keys of all columns that a call of Column names by a literal, as room:key. */
  static Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    scan(new ArrayList<>(), keys);
    return keys;
  }

  private static void scan(List<Found> found, Set<String> keys) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (var manager = compiler.getStandardFileManager(null, null, null);
        Stream<Path> walk = Files.walk(SOURCES)) {
      List<Path> files = walk.filter(f -> f.toString().endsWith(".java")).sorted().toList();
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, List.of(), null, manager.getJavaFileObjectsFromPaths(files));
      for (CompilationUnitTree unit : task.parse()) {
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        new Literals(unit, positions, found, keys).scan(unit, null);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static final class Literals extends TreeScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final SourcePositions positions;
    private final Path file;
    private final List<Found> found;
    private final Set<String> keys;

    Literals(
        CompilationUnitTree unit, SourcePositions positions, List<Found> found, Set<String> keys) {
      this.unit = unit;
      this.positions = positions;
      this.file = Path.of("").toAbsolutePath().relativize(Path.of(unit.getSourceFile().toUri()));
      this.found = found;
      this.keys = keys;
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void none) {
      String name = call.getMethodSelect().toString();
      if (name.matches("(leat\\.answer\\.)?Column\\.(of|number|plain|money)")
          && !call.getArguments().isEmpty()) {
        String key = text(call.getArguments().get(0));
        if (key != null) {
          keys.add(file.getParent().getFileName() + ":" + key);
        }
      } else if (name.matches("Ends\\.(of|money|seasons)")) {
        // a sum of the season and the two ends of its interval
        String key = text(call.getArguments().get(0));
        String unit = name.equals("Ends.of") ? text(call.getArguments().get(1)) : "";
        for (String end : new String[] {"", "_low", "_high"}) {
          keys.add(file.getParent().getFileName() + ":" + key + end + unit);
        }
      }
      return super.visitMethodInvocation(call, none);
    }

    @Override
    public Void visitBinary(BinaryTree tree, Void none) {
      String text = text(tree);
      return text == null ? super.visitBinary(tree, none) : take(text, tree);
    }

    @Override
    public Void visitLiteral(LiteralTree tree, Void none) {
      return tree.getValue() instanceof String text ? take(text, tree) : null;
    }

    private Void take(String text, Tree tree) {
      if (KEY.matcher(text.replace("{{", "")).find()) {
        long line = unit.getLineMap().getLineNumber(position(tree));
        found.add(new Found(file, line, text));
      }
      return null;
    }

    private long position(Tree tree) {
      return positions.getStartPosition(unit, tree);
    }

    /** The text of a literal or of literals joined by a plus; null for anything else. */
    private static String text(ExpressionTree tree) {
      if (tree instanceof LiteralTree literal) {
        return literal.getValue() instanceof String text ? text : null;
      }
      if (tree instanceof ParenthesizedTree inner) {
        return text(inner.getExpression());
      }
      if (tree instanceof BinaryTree plus && plus.getKind() == Tree.Kind.PLUS) {
        String left = text(plus.getLeftOperand());
        String right = text(plus.getRightOperand());
        return left == null || right == null ? null : left + right;
      }
      return null;
    }
  }
}
