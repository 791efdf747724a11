package leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import leat.cli.Command;
import leat.cli.Declared;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command line that a document shows is run, and what it says compared. */
class DocsTest {
  @TempDir Path folder;

  static List<String> examples() {
    List<String> all = new ArrayList<>();
    for (Command command : Declared.commands()) {
      for (String example : command.examples()) {
        all.add(example);
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleAnswers(String example) {
    Shell.Shown shown = new Shell(folder).run("leat " + example);
    assertThat(shown.exit()).as("leat %s\n%s", example, shown.text()).isBetween(0, 1);
    assertThat(shown.text()).isNotBlank();
  }

  /** The machine's language changes nothing: decimals, letters, digits. */
  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab"})
  void everyLocaleGetsTheSame(String tag) {
    Shell shell = new Shell(folder);
    Locale before = Locale.getDefault();
    for (String example : examples()) {
      String plain = shell.run("leat " + example).text();
      try {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(shell.run("leat " + example).text()).as(example).isEqualTo(plain);
      } finally {
        Locale.setDefault(before);
      }
    }
  }

  @Test
  void everyCommandHasExamplesAndManual() {
    for (Command command : Declared.commands()) {
      assertThat(command.manual()).as(command.name()).isNotEmpty();
      assertThat(command.examples()).as(command.name()).isNotEmpty();
      for (String example : command.examples()) {
        assertThat(example + " ").startsWith(command.name() + " ");
      }
      for (String page : command.seeAlso()) {
        assertThat(ManPages.exists(page)).as("%s of %s", page, command.name()).isTrue();
      }
    }
  }

  @Test
  void manual(@TempDir Path gallery) throws IOException {
    ManPages pages =
        new ManPages(
            new Shell(folder),
            one -> {
              try {
                return one.run(Files.createTempDirectory(gallery, "case"));
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            });
    Map<String, String> all = pages.all();
    all.forEach((name, text) -> Golden.check(ManPages.FOLDER.resolve(name), text));
    TreeSet<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.list(ManPages.FOLDER)) {
      files.forEach(f -> there.add(f.getFileName().toString()));
    }
    there.removeAll(all.keySet());
    for (String stale : there) {
      if (Golden.writes()) {
        Files.delete(ManPages.FOLDER.resolve(stale));
      } else {
        assertThat(stale).as("a page of nothing in %s", ManPages.FOLDER).isNull();
      }
    }
  }

  /** The glossary tells words that the program uses, and no others. */
  @Test
  void everyTermOfTheGlossaryIsUsed() throws IOException {
    StringBuilder said = new StringBuilder();
    try (Stream<Path> files = Files.list(ManPages.FOLDER)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        if (!file.endsWith("leat-glossary.7") && !file.endsWith("leat-sources.7")) {
          said.append(Golden.read(file).replace("\\-", "-"));
        }
      }
    }
    String all = said.toString().toLowerCase(Locale.ROOT);
    assertThat(Pages.terms()).hasSizeGreaterThan(70);
    assertThat(new ArrayList<>(Pages.terms().keySet()))
        .isSortedAccordingTo(String.CASE_INSENSITIVE_ORDER)
        .allSatisfy(t -> assertThat(all).as(t).contains(t.toLowerCase(Locale.ROOT)));
  }

  /** With its margins no line of the manual is over 120 characters wide. */
  @Test
  void noPageIsTooWide() throws IOException {
    try (Stream<Path> files = Files.list(ManPages.FOLDER)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        boolean asItIs = false;
        for (String line : Golden.read(file).lines().toList()) {
          asItIs = line.equals(".nf") || asItIs && !line.equals(".fi");
          String plain = line.replaceAll("\\\\\\[u....\\]|\\\\\\(..|\\\\.", "x");
          for (String piece : asItIs ? List.of(plain) : List.of(plain.split(" "))) {
            assertThat(piece.length()).as("%s: %s", file, line).isLessThanOrEqualTo(Roff.WIDEST);
          }
        }
      }
    }
  }

  @Test
  void completion() {
    Golden.check(Completion.FILE, Completion.script());
    Golden.check(OtherShells.FISH, OtherShells.fish());
    Golden.check(OtherShells.ZSH, OtherShells.zsh());
  }

  /** Fish and zsh read their scripts and complete with them, where they are installed. */
  @Test
  void completionInOtherShells() throws Exception {
    String fish = "source ../" + OtherShells.FISH + "; complete -C ";
    List<String> said = said("fish", "-c", fish + "'leat check --explain pump-mar'");
    if (said != null) {
      assertThat(said).anyMatch(l -> l.startsWith("pump-margin"));
      assertThat(said("fish", "-c", fish + "'leat crops lett'")).contains("lettuce");
      assertThat(said("fish", "-c", fish + "'leat dose salts --sal'"))
          .anyMatch(l -> l.startsWith("--salt"));
      assertThat(said("fish", "-c", fish + "'leat acid --acid nitric-6'"))
          .anyMatch(l -> l.startsWith("nitric-6"));
      assertThat(said("fish", "-c", fish + "'leat duty back'"))
          .anyMatch(l -> l.startsWith("backup"));
    }
    List<String> zsh = said("zsh", "-f", "-c", "zsh -n ../" + OtherShells.ZSH + " && echo whole");
    if (zsh != null) {
      assertThat(zsh).containsExactly("whole");
    }
    assertThat(OtherShells.zsh()).contains("--acid'[", "nitric-60").contains("_leat_rules=(");
    // Behind --explain rules are offered in zsh too, and fish parts at a tab that is written out.
    assertThat(OtherShells.zsh()).contains("'*:operand:_leat_plan_or_rule'");
    assertThat(OtherShells.fish()).contains("string split -f1 \\t |");
  }

  /** What a program says, or null when it is not installed. */
  private static List<String> said(String... command) throws Exception {
    Process process;
    try {
      process =
          new ProcessBuilder(command)
              .directory(Runner.EXAMPLES.toFile())
              .redirectErrorStream(true)
              .start();
    } catch (IOException e) {
      return null;
    }
    process.getOutputStream().close();
    List<String> lines = new String(process.getInputStream().readAllBytes()).lines().toList();
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    return lines;
  }

  /** Asks a real bash, where there is one. */
  @Test
  void completionInBash() throws Exception {
    assertThat(completed("leat ch")).contains("check");
    assertThat(completed("leat head --lif")).containsExactly("--lift");
    assertThat(completed("leat tank --shape tap")).containsExactly("tapered-box");
    assertThat(completed("leat tank --format=js")).containsExactly("json");
    assertThat(completed("leat tank -f j")).containsExactly("json");
    assertThat(completed("leat check first")).containsExactly("first-tower.yaml");
    assertThat(completed("leat tank --plan first")).containsExactly("first-tower.yaml");
    assertThat(completed("leat tank --set pump.der")).containsExactly("pump.derate=");
    assertThat(completed("leat check --rule pump-mar")).containsExactly("pump-margin");
    assertThat(completed("leat tank --level ")).isEmpty();
    assertThat(completed("leat crops lett")).contains("lettuce");
    assertThat(completed("leat acid --acid nitric-6")).contains("nitric-60");
    assertThat(completed("leat dose salts --salt magnesium-s")).contains("magnesium-sulfate-7h2o");
    assertThat(completed("leat check --explain pump-mar")).containsExactly("pump-margin");
    assertThat(completed("leat head --fitting elb")).contains("elbow=");
    assertThat(completed("leat pump first")).containsExactly("first-tower.yaml");
    assertThat(completed("leat plan set first")).containsExactly("first-tower.yaml");
    assertThat(completed("leat plan set first-tower.yaml pump.der"))
        .containsExactly("pump.derate=");
    assertThat(completed("leat duty ba")).containsExactly("backup");
  }

  private static List<String> completed(String line) throws Exception {
    String script =
        "source ../"
            + Completion.FILE
            + "\nread -r -a COMP_WORDS <<< \"${1//=/ = }\"\ncase $1 in *' ') COMP_WORDS+=('') ;; esac\n"
            + "COMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n"
            + "_leat leat \"${COMP_WORDS[COMP_CWORD]}\" \"${COMP_WORDS[COMP_CWORD-1]}\"\n"
            + "printf '%s\\n' \"${COMPREPLY[@]}\"";
    Process process;
    try {
      process =
          new ProcessBuilder("bash", "-c", script, "bash", line)
              .directory(Runner.EXAMPLES.toFile())
              .redirectErrorStream(true)
              .start();
    } catch (IOException e) {
      org.junit.jupiter.api.Assumptions.abort("no bash here");
      return List.of();
    }
    process.getOutputStream().close();
    List<String> lines = new String(process.getInputStream().readAllBytes()).lines().toList();
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    return lines.stream().filter(l -> !l.isEmpty()).toList();
  }

  @Test
  void readme() {
    Path readme = Path.of("README.md");
    Golden.check(
        readme, executed(Golden.read(readme), new Shell(folder), l -> l.startsWith("leat ")));
  }

  @Test
  void readmeNamesTheMainJob() {
    String readme = Golden.read(Path.of("README.md"));
    String line = readme.lines().filter(l -> l.startsWith("$ scripts/leat ")).findFirst().get();
    String[] args = line.substring(15).split(" +#")[0].split(" ");
    assertThat(Runner.in(Path.of("").toAbsolutePath()).run(args).exit()).as(line).isBetween(0, 1);
  }

  /**
   * A document whose fenced blocks hold lines that begin {@code $}: each that runs with what it
   * shows behind it, the others as they are.
   */
  static String executed(String document, Shell shell, Predicate<String> runs) {
    StringBuilder out = new StringBuilder();
    boolean fenced = false;
    boolean shown = false;
    for (String line : document.split("\n", -1)) {
      if (line.startsWith("```")) {
        fenced = !fenced;
        shown = false;
      } else if (fenced && line.startsWith("$ ")) {
        if (shown) {
          out.append('\n');
        }
        shown = runs.test(line.substring(2));
        if (shown) {
          Shell.Shown said = shell.run(line.substring(2));
          assertThat(said.exit()).as("%s\n%s", line, said.text()).isBetween(0, 1);
          out.append(line).append('\n').append(said.text());
          continue;
        }
      } else if (fenced && shown) {
        continue;
      }
      out.append(line).append('\n');
    }
    out.setLength(out.length() - 1);
    return out.toString();
  }
}
