package leat;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.cli.Declared;
import leat.plan.Taken;
import leat.plan.Value;
import org.junit.jupiter.api.Test;

/** What may know what; see DEVELOPERS.md. */
class ArchitectureTest {
  private static final JavaClasses LEAT =
      new ClassFileImporter().importPath(Declared.CLASSES.resolve("leat"));

  /** Packages that are not the trade; every other package is one of the trade. */
  private static final Set<String> HOUSE =
      Set.of(
          "answer",
          "check",
          "cli",
          "command",
          "controller",
          "html",
          "numeric",
          "paper",
          "plan",
          "quantity",
          "sweep",
          "system",
          "weather");

  private static final String[] JDK = {
    "java.lang..", "java.util", "java.util.function", "java.time.."
  };
  private static final String[] JDK_OF_THE_HOUSE = {
    "java.lang..",
    "java.util",
    "java.util.concurrent..",
    "java.util.function",
    "java.util.stream..",
    "java.math..",
    "java.time..",
    "java.text.."
  };

  /** The packages of the trade, those that come later too. */
  static List<String> trade() {
    Set<String> names = new TreeSet<>();
    for (JavaClass one : LEAT) {
      String[] parts = one.getPackageName().split("\\.");
      if (parts.length > 1 && parts[0].equals("leat") && !HOUSE.contains(parts[1])) {
        names.add(parts[1]);
      }
    }
    assertThat(names).contains("hydraulics", "level", "solution", "energy");
    return new ArrayList<>(names);
  }

  private static void onlyKnows(String who, String[] jdk, String... others) {
    List<String> allowed = new ArrayList<>(List.of(jdk));
    allowed.add("leat." + who + "..");
    for (String other : others) {
      allowed.add(other.contains(".") ? other : "leat." + other + "..");
    }
    DescribedPredicate<JavaClass> known =
        resideInAnyPackage(allowed.toArray(new String[0]))
            .or(DescribedPredicate.describe("arrays of bare values", JavaClass::isPrimitive))
            .or(
                DescribedPredicate.describe(
                    "arrays", c -> c.isArray() && c.getBaseComponentType().isPrimitive()));
    classes()
        .that(resideInAPackage("leat." + who + ".."))
        .should()
        .onlyDependOnClassesThat(known)
        .because("see DEVELOPERS.md, the house in a page")
        .check(LEAT);
  }

  /** Who may know whom: "the trade" is every package of it; package-info says the same. */
  private static final Map<String, List<String>> NEIGHBOURS =
      Map.ofEntries(
          Map.entry("numeric", List.of()),
          Map.entry("quantity", List.of()),
          Map.entry("answer", List.of("quantity")),
          Map.entry("html", List.of("answer", "quantity")),
          // The plan asks the trade for the names of fittings and walls, and what physics refuses.
          Map.entry("plan", List.of("numeric", "quantity", "the trade")),
          Map.entry("system", List.of("numeric", "plan", "quantity", "the trade")),
          Map.entry(
              "check",
              List.of("answer", "numeric", "plan", "quantity", "system", "the trade", "weather")),
          Map.entry("paper", List.of("html", "numeric", "quantity")),
          Map.entry("controller", List.of("energy", "level", "numeric", "quantity")),
          Map.entry("cli", List.of("answer", "html", "numeric", "plan", "quantity")),
          Map.entry(
              "command",
              List.of(
                  "answer",
                  "check",
                  "cli",
                  "controller",
                  "html",
                  "numeric",
                  "paper",
                  "plan",
                  "quantity",
                  "sweep",
                  "system",
                  "the trade",
                  "weather")),
          Map.entry(
              "sweep",
              List.of("answer", "check", "numeric", "plan", "quantity", "system", "the trade")),
          Map.entry("season", List.of("numeric", "the trade")),
          Map.entry("weather", List.of("numeric", "plan", "quantity", "system", "the trade")),
          Map.entry("log", List.of("level", "numeric")));

  /** Libraries and file access, for those who have them. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.of(
          "plan", List.of("org.yaml.snakeyaml..", "java.io", "java.nio..", "java.security"),
          "sweep", List.of("org.hipparchus.."),
          "html", List.of("java.io", "java.nio.charset", "java.security", "java.util.regex"),
          "cli", List.of("picocli..", "org.apache.commons.csv..", "java.io", "java.nio.."),
          "command", List.of("org.apache.commons.csv..", "java.io", "java.nio.."),
          "weather", List.of("org.apache.commons.csv..", "java.io", "java.nio.."));

  private static List<String> neighbours(String who) {
    return NEIGHBOURS.getOrDefault(who, List.of("numeric"));
  }

  @Test
  void everybodyKnowsHisNeighboursOnly() {
    Set<String> all = new TreeSet<>(HOUSE);
    all.addAll(trade());
    for (String who : all) {
      List<String> others = new ArrayList<>(LIBRARIES.getOrDefault(who, List.of()));
      for (String neighbour : neighbours(who)) {
        others.addAll(neighbour.equals("the trade") ? trade() : List.of(neighbour));
      }
      boolean pure = trade().contains(who) || who.equals("numeric");
      onlyKnows(who, pure ? JDK : JDK_OF_THE_HOUSE, others.toArray(new String[0]));
    }
  }

  /** Every package says what is here, where to start reading, and its neighbours as above. */
  @Test
  void everyPackageIntroducesItself() throws IOException {
    try (Stream<Path> folders = Files.walk(Path.of("src/main/java/leat"))) {
      for (Path folder : (Iterable<Path>) folders.filter(Files::isDirectory)::iterator) {
        Path info = folder.resolve("package-info.java");
        assertThat(info).exists();
        if (folder.endsWith("leat")) {
          continue;
        }
        String top = Path.of("src/main/java/leat").relativize(folder).getName(0).toString();
        List<String> known = neighbours(top);
        String wanted = known.isEmpty() ? "none" : String.join(", ", known);
        String text = Files.readString(info).replaceAll("\\s*\\n \\*\\s*", " ");
        assertThat(text).as(info.toString()).contains("Neighbours: " + wanted + ".");
      }
    }
  }

  @Test
  void noCycles() {
    slices().matching("leat.(*)..").should().beFreeOfCycles().check(LEAT);
  }

  private static DescribedPredicate<JavaAccess<?>> access(
      String what, String owner, String... names) {
    return DescribedPredicate.describe(
        what,
        a -> {
          AccessTarget target = a.getTarget();
          boolean named = names.length == 0;
          for (String name : names) {
            named |= target.getName().equals(name);
          }
          return named && target.getOwner().getName().startsWith(owner);
        });
  }

  private static void never(DescribedPredicate<JavaAccess<?>> access, String... except) {
    noClasses()
        .that(
            DescribedPredicate.describe(
                "others", c -> !List.of(except).contains(c.getSimpleName())))
        .should()
        .accessTargetWhere(access)
        .check(LEAT);
  }

  @Test
  void nobodyPrintsOrEndsTheProcess() {
    never(access("standard streams", "java.lang.System", "out", "err", "in"));
    never(access("the end of the process", "java.lang.System", "exit"));
    never(access("the runtime's halt", "java.lang.Runtime", "halt", "exit", "exec"), "Main");
  }

  /** No secrets and no network: what stands in a plan stays on the machine. */
  @Test
  void nobodyOpensSocketsOrRunsPrograms() {
    never(access("the network", "java.net."));
    never(access("another network", "javax.net."));
    never(access("other programs", "java.lang.ProcessBuilder"));
    never(access("other programs", "java.lang.Runtime", "exec"));
  }

  @Test
  void clockZoneLocaleAndChanceComeFromOutside() {
    never(
        DescribedPredicate.describe(
            "now() without a clock",
            a ->
                a.getTarget().getFullName().startsWith("java.time.")
                    && a.getTarget().getName().equals("now")
                    && !a.getTarget().getFullName().endsWith("(java.time.Clock)")));
    never(
        access("the system's clock", "java.time.Clock", "systemUTC", "systemDefaultZone"),
        "Terminal");
    never(access("milliseconds", "java.lang.System", "currentTimeMillis", "nanoTime"), "Progress");
    never(access("dates of the old kind", "java.util.Date"));
    never(access("the default zone", "java.time.ZoneId", "systemDefault"));
    never(access("the default zone", "java.util.TimeZone"));
    never(access("the default locale", "java.util.Locale", "getDefault"), "Machine");
    never(access("chance", "java.util.Random"));
    never(access("chance", "java.util.concurrent.ThreadLocalRandom"));
    never(access("chance", "java.lang.Math", "random"));
  }

  /** Calls that take the machine's locale or character set when none is named. */
  @Test
  void nothingHangsOnTheMachine() {
    DescribedPredicate<JavaAccess<?>> bare =
        DescribedPredicate.describe(
            "the machine's own locale or character set",
            a -> {
              String target = a.getTarget().getFullName();
              return target.equals("java.lang.String.toLowerCase()")
                  || target.equals("java.lang.String.toUpperCase()")
                  || target.equals("java.lang.String.getBytes()")
                  || target.equals("java.lang.String.<init>([B)")
                  || target.startsWith("java.lang.String.format(java.lang.String")
                  || target.startsWith("java.lang.String.formatted(")
                  || target.equals("java.io.InputStreamReader.<init>(java.io.InputStream)")
                  || target.startsWith("java.io.FileReader.<init>")
                  || target.startsWith("java.io.PrintStream.<init>")
                  || target.startsWith("java.text.DecimalFormat.<init>")
                  || target.startsWith("java.text.NumberFormat.");
            });
    never(bare);
  }

  /** Start-up: these cost more than a whole answer, so no class that a start loads has them. */
  @Test
  void nothingSlowToStart() throws Exception {
    String[] slow = {
      "java/lang/invoke/LambdaMetafactory",
      "java/util/stream/",
      "java/util/regex/",
      "makeConcatWithConstants"
    };
    List<String> found = new ArrayList<>();
    Set<String> loaded = new TreeSet<>(loadedBy("sum"));
    loaded.addAll(loadedBy("plan"));
    assertThat(loaded).hasSizeGreaterThan(200);
    assertThat(loaded)
        .as("pages and charts are loaded where they are asked for")
        .noneMatch(name -> name.startsWith("leat.html.") || name.startsWith("leat.answer.chart."));
    for (String name : loaded) {
      Path file = Declared.CLASSES.resolve(name.replace('.', '/') + ".class");
      String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
      for (String word : slow) {
        if (bytes.contains(word)) {
          found.add(name + " uses " + word);
        }
      }
    }
    assertThat(found).isEmpty();
    never(access("String.format", "java.lang.String", "format", "formatted"));
  }

  /** The classes of leat that the training runs of the start archive load, measured. */
  private static Set<String> loadedBy(String kind) throws Exception {
    Path list = Files.createTempFile("leat-loaded", ".txt");
    Process process =
        new ProcessBuilder(
                System.getProperty("java.home") + "/bin/java",
                "-Xlog:class+load:file=" + list,
                "-cp",
                System.getProperty("java.class.path"),
                "leat.Training",
                kind,
                "examples")
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    Set<String> names = new TreeSet<>();
    for (String line : Files.readAllLines(list)) {
      for (String word : line.split(" ")) {
        if (word.startsWith("leat.")) {
          names.add(word);
        }
      }
    }
    Files.delete(list);
    return names;
  }

  /** Smaller, larger and without its sign are no formulas; everything else of Math is. */
  @Test
  void commandsDoNotCalculate() {
    noClasses()
        .that(resideInAPackage("leat.command.."))
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe(
                "a calculation",
                a ->
                    a.getTarget().getOwner().getName().matches("java.lang.(Strict)?Math")
                        && !a.getTarget().getName().matches("min|max|abs")))
        .check(LEAT);
  }

  /**
   * A plan and its sections are values: what a reader takes by default, the reader collects. What
   * is found once from the values themselves may be kept, and the keys that were asked for, which
   * {@code LEAT_DEBUG=reads} tells.
   */
  @Test
  void aPlanKeepsNothingOfItsReaders() {
    Set<String> kept = Set.of("Plan.asWritten", "Asker.asked", "Asker.us", "Asker.currency");
    for (String name : List.of("Plan", "Section", "Value", "Asker", "Slot")) {
      JavaClass one = LEAT.get("leat.plan." + name);
      for (JavaField field : one.getFields()) {
        boolean fixed = field.getModifiers().contains(JavaModifier.FINAL);
        assertThat(fixed || kept.contains(name + "." + field.getName()))
            .as(field.getFullName() + " is set once")
            .isTrue();
        boolean given = name.equals("Value");
        assertThat(!field.getRawType().isEquivalentTo(Taken.class) || given)
            .as(field.getFullName() + " is what a reader takes")
            .isTrue();
      }
    }
    noClasses()
        .that(resideInAPackage("leat.plan"))
        .should()
        .callConstructor(Taken.class)
        .because("whoever asks makes it")
        .check(LEAT);
    noClasses()
        .that(resideInAPackage("leat.system"))
        .and(DescribedPredicate.describe("others", c -> !c.getSimpleName().equals("DerateOf")))
        .should()
        .callConstructor(Taken.class)
        .because("what is taken there is told by the caller")
        .check(LEAT);
    for (JavaClass one : LEAT) {
      for (JavaField field : one.getFields()) {
        boolean shared = field.getModifiers().contains(JavaModifier.STATIC);
        assertThat(shared && field.getRawType().isEquivalentTo(Taken.class))
            .as(field.getFullName() + " is shared by all")
            .isFalse();
      }
    }
  }

  /**
   * What {@code system} makes of a plan holds values, alone or in lists: neither the plan, nor what
   * can be asked for any key. A {@link Value} is one number that knows its own key, and nothing
   * more is read through it.
   */
  @Test
  void whatAPlanDescribesHoldsNoPlan() {
    Set<String> readers =
        Set.of("Plan", "Section", "Asker", "Taken", "Slot", "Key", "KeyPath", "Named", "Node");
    int fields = 0;
    for (JavaClass one : LEAT) {
      if (one.getPackageName().equals("leat.system")) {
        for (JavaField field : one.getFields()) {
          fields++;
          assertThat(field.getAllInvolvedRawTypes())
              .as(field.getFullName() + " is a value")
              .noneMatch(
                  type ->
                      type.getBaseComponentType().getPackageName().equals("leat.plan")
                          && readers.contains(type.getBaseComponentType().getSimpleName()));
        }
      }
    }
    assertThat(fields).as("fields that were looked at").isGreaterThan(200);
  }

  /** Messages are built by named methods, so that the gallery can show each. */
  @Test
  void messagesAreNamed() {
    noClasses()
        .that(
            DescribedPredicate.describe(
                "no list of messages",
                c ->
                    !c.getSimpleName().endsWith("Errors")
                        && !Set.of("Problem", "Unreadable", "QuantityReader", "Section", "Named")
                            .contains(c.getSimpleName())))
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe(
                "building a message",
                a ->
                    a.getTarget()
                        .getFullName()
                        .matches("leat\\.(plan\\.Problem|quantity\\.Unreadable)\\.<init>.*")))
        .check(LEAT);
  }
}
