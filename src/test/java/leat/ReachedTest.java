package leat;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leat.cli.Declared;
import org.junit.jupiter.api.Test;

/**
 * No class that no command line reaches. From {@code main} along every call; a call of a method may
 * mean each method that overrides it. A constant is copied into its users by the compiler, so a
 * class of constants alone shows no call and is left out. Methods that nothing reaches are listed
 * in target/unreached.txt. But for a record's parts and what every record and enum has, each of
 * them stands in {@link #BY_TESTS_ALONE} with its reason; the list grows by nobody's oversight, and
 * {@code -Dleat.docs=write} shortens it when one is gone.
 */
class ReachedTest {
  private static final JavaClasses LEAT =
      new ClassFileImporter().importPath(Declared.CLASSES.resolve("leat"));

  /** What every class has, or runs for a constant alone. */
  private static final Set<String> BY_ALL =
      Set.of("<clinit>", "toString", "hashCode", "equals", "values", "valueOf");

  /** What the JDK calls: it orders, and it asks a map which entry may go. */
  private static final Set<String> FROM_OUTSIDE = Set.of("compare", "removeEldestEntry");

  /** Methods that tests alone ask. */
  private static final Path BY_TESTS_ALONE =
      Path.of("src/test/resources/reached/by-tests-alone.txt");

  /** More than so many were never judged worth it; who needs one more gives up another. */
  private static final int MOST = 45;

  private final Set<JavaCodeUnit> reached = new HashSet<>();
  private final Set<JavaClass> loaded = new HashSet<>();
  private final Deque<JavaCodeUnit> next = new ArrayDeque<>();

  private void walk() {
    reach(LEAT.get("leat.Main").getMethod("main", String[].class));
    reach(LEAT.get("leat.Training").getMethod("main", String[].class));
    while (!next.isEmpty()) {
      for (JavaAccess<?> access : next.poll().getAccessesFromSelf()) {
        load(access.getTargetOwner());
        if (access.getTarget().resolveMember().orElse(null) instanceof JavaCodeUnit unit) {
          reach(unit);
          if (unit instanceof JavaMethod method) {
            overriding(method);
          }
        }
      }
    }
  }

  private void reach(JavaCodeUnit unit) {
    load(unit.getOwner());
    if (reached.add(unit)) {
      next.add(unit);
    }
  }

  private void load(JavaClass type) {
    if (loaded.add(type)) {
      type.getStaticInitializer().ifPresent(this::reach);
    }
  }

  private void overriding(JavaMethod method) {
    for (JavaClass sub : method.getOwner().getAllSubclasses()) {
      for (JavaMethod m : sub.getMethods()) {
        if (m.getName().equals(method.getName())
            && m.getParameters().size() == method.getParameters().size()) {
          reach(m);
        }
      }
    }
  }

  private static boolean constantsAlone(JavaClass type) {
    return type.getMethods().isEmpty() && !type.isInterface();
  }

  private static String outermost(JavaClass type) {
    String name = type.getName();
    return name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
  }

  @Test
  void everyClassIsReachedByACommandLine() throws IOException {
    walk();
    Set<String> used = new HashSet<>();
    for (JavaCodeUnit unit : reached) {
      if (!BY_ALL.contains(unit.getName())) {
        used.add(outermost(unit.getOwner()));
      }
    }
    Set<String> unused = new TreeSet<>();
    Set<String> methods = new TreeSet<>();
    Set<String> own = new TreeSet<>();
    for (JavaClass type : LEAT) {
      String name = outermost(type);
      if (!used.contains(name) && !constantsAlone(type) && !name.endsWith("package-info")) {
        unused.add(name);
      }
      for (JavaMethod m : type.getMethods()) {
        if (!reached.contains(m)) {
          methods.add(m.getFullName());
          if (!comesByItself(type, m)) {
            own.add(m.getFullName());
          }
        }
      }
    }
    Files.write(Path.of("target/unreached.txt"), methods);
    assertThat(used).hasSizeGreaterThan(900);
    assertThat(unused).as("classes that no command line reaches").isEmpty();
    Set<String> listed = byTestsAlone(own);
    Set<String> unlisted = new TreeSet<>(own);
    unlisted.removeAll(listed);
    assertThat(unlisted)
        .as("methods that no command line reaches, and %s does not excuse", BY_TESTS_ALONE)
        .isEmpty();
    listed.removeAll(own);
    assertThat(listed)
        .as("reached after all, or gone: -Dtest=ReachedTest -Dleat.docs=write strikes them out")
        .isEmpty();
  }

  private static boolean comesByItself(JavaClass type, JavaMethod m) {
    boolean part =
        type.isRecord() && m.getParameters().isEmpty() && type.tryGetField(m.getName()).isPresent();
    return part
        || m.getModifiers().contains(JavaModifier.SYNTHETIC)
        || BY_ALL.contains(m.getName())
        || FROM_OUTSIDE.contains(m.getName());
  }

  /** The list without its remarks; written anew without what is reached or gone. */
  private static Set<String> byTestsAlone(Set<String> found) throws IOException {
    List<String> kept = new ArrayList<>();
    Set<String> listed = new TreeSet<>();
    for (String line : Files.readAllLines(BY_TESTS_ALONE)) {
      boolean method = !line.isBlank() && !line.startsWith("#");
      String name = line.split("  # ")[0];
      assertThat(!method || line.length() > name.length()).as(line + " has its reason").isTrue();
      if (!method || found.contains(name)) {
        kept.add(line);
      }
      if (method) {
        listed.add(name);
      }
    }
    assertThat(listed).as("the list grows shorter only").hasSizeLessThanOrEqualTo(MOST);
    if ("write".equals(System.getProperty("leat.docs"))) {
      Files.write(BY_TESTS_ALONE, kept);
      listed.retainAll(found);
    }
    return listed;
  }
}
