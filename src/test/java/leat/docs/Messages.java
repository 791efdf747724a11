package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import leat.cli.Declared;
import leat.plan.Problem;
import leat.quantity.Unreadable;

/** Every message the program can give: the methods of the classes named {@code ...Errors}. */
final class Messages {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern BUILT =
      Pattern.compile("new\\s+(?:Problem|Unreadable)\\(\\s*\"([a-z][a-z0-9-]*)\"");
  private static final Pattern CALLED =
      Pattern.compile("(?<!new )\\b(?:problem|refused|unreadable)\\(([^;]*)");
  private static final Pattern PASSED = Pattern.compile("\\b\\w+Errors\\s*\\.\\w+\\(");
  private static final Pattern WORD = Pattern.compile("\"([a-z][a-z0-9]*(?:-[a-z0-9]+)*)\"");

  private Messages() {}

  /** Code of each message, and the methods that give it. */
  static Map<String, List<String>> byCode() {
    Map<String, List<String>> all = new TreeMap<>();
    for (Class<?> errors : classes()) {
      String source = read(errors);
      for (Method method : errors.getDeclaredMethods()) {
        if (isMessage(method)) {
          String name = errors.getSimpleName() + "." + method.getName();
          for (String code : codes(name, body(source, method.getName()))) {
            List<String> methods = all.computeIfAbsent(code, c -> new ArrayList<>());
            if (!methods.contains(name)) {
              methods.add(name);
            }
          }
        }
      }
    }
    return all;
  }

  private static boolean isMessage(Method method) {
    return Modifier.isPublic(method.getModifiers())
        && Modifier.isStatic(method.getModifiers())
        && !method.isSynthetic()
        && (method.getReturnType() == Problem.class || method.getReturnType() == Unreadable.class);
  }

  /** The classes named {@code ...Errors}, wherever they are. */
  static List<Class<?>> classes() {
    List<Class<?>> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Declared.CLASSES.resolve("leat"))) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        String name = Declared.CLASSES.relativize(file).toString();
        if (name.endsWith("Errors.class")) {
          found.add(Class.forName(name.substring(0, name.length() - 6).replace('/', '.')));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
    assertThat(found).hasSizeGreaterThanOrEqualTo(4);
    return found;
  }

  private static String read(Class<?> type) {
    return Golden.read(SOURCES.resolve(type.getName().replace('.', '/') + ".java"));
  }

  /** All overloads of a method, from their heads to their closing braces. */
  private static String body(String source, String method) {
    StringBuilder bodies = new StringBuilder();
    Matcher head = Pattern.compile("\n  (?:public )?static \\w+ " + method + "\\(").matcher(source);
    while (head.find()) {
      bodies.append(source, head.start(), source.indexOf("\n  }", head.start()));
    }
    return bodies.toString();
  }

  private static List<String> codes(String name, String body) {
    List<String> codes = new ArrayList<>();
    boolean passesOn =
        body.contains(".code()") || body.contains("String code") || PASSED.matcher(body).find();
    Matcher built = BUILT.matcher(body);
    while (built.find()) {
      codes.add(built.group(1));
    }
    Matcher called = CALLED.matcher(body);
    while (codes.isEmpty() && called.find()) {
      String only = null;
      Matcher word = WORD.matcher(called.group(1));
      while (word.find()) {
        if (only == null || !only.contains("-") && word.group(1).contains("-")) {
          only = word.group(1);
        }
      }
      if (only != null && (only.contains("-") || !passesOn)) {
        codes.add(only);
      }
    }
    assertThat(codes.isEmpty() && !passesOn)
        .as("the code of %s cannot be read from its source: give it as a literal", name)
        .isFalse();
    return codes;
  }
}
