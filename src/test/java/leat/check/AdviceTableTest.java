package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * What a grower is told to do about each finding, word by word, in src/test/resources/plans/
 * advice.txt. Each cure that is told is followed and passes; the last column holds what is a last
 * digit, a size or a key short of it, and breaks the rule still, or the rule (at the part) named
 * behind "->".
 */
class AdviceTableTest {
  private static Plan plan(String file, String sets) {
    File place = new File("examples/" + file);
    if (!place.exists()) {
      place = new File("src/test/resources/plans/rules/" + file);
    }
    return with(PlanFile.read(file, place, null), sets).read();
  }

  private static Plan.Draft with(Plan.Draft draft, String sets) {
    for (String set : sets == null ? new String[0] : sets.split(" ; ")) {
      int equals = set.indexOf('=');
      draft.set(
          set.substring(0, equals).strip(),
          Source.flag("--set", set.substring(equals + 1).strip()));
    }
    return draft;
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/plans/advice.txt",
      delimiter = '|',
      quoteCharacter = '\u0001',
      maxCharsPerColumn = 8192,
      numLinesToSkip = 1)
  void isToldFollowedAndNoMoreThanIsNeeded(
      String rule, String file, String sets, String part, String advice, String notEnough) {
    Plan plan = plan(file, sets);
    Judged finding = Judged.find(plan, rule, part);
    assertThat(finding.advice()).isEqualTo(advice);
    for (Cure cure : finding.finding().isBreach() ? finding.cures() : List.<Cure>of()) {
      Judged after = Judged.find(cure.on(plan), rule, part);
      assertThat(after == null ? Verdict.PASS : after.verdict())
          .as("followed: " + cure.words().render(false))
          .isEqualTo(Verdict.PASS);
    }
    for (String less : notEnough == null ? new String[0] : notEnough.split(" / ")) {
      String[] named = less.split(" -> ");
      Plan changed = plan(file, (sets == null ? "" : sets + " ; ") + named[0].strip());
      String[] breaks = (named.length == 1 ? rule : named[1].strip()).split("@");
      breaks(changed, breaks[0], breaks.length == 1 ? part : breaks[1], less);
    }
  }

  /** At the part, or anywhere when the rule has no finding there any more. */
  private static void breaks(Plan plan, String rule, String part, String as) {
    Judged there = Judged.find(plan, rule, part);
    Judged finding = there == null ? Judged.find(plan, rule, null) : there;
    assertThat(finding.finding().isBreach()).as(as).isTrue();
  }

  /** Season and weather have tests of their own: their cures run whole years. */
  @Test
  void everyRuleWithAdviceHasARow() throws Exception {
    Set<String> covered = new TreeSet<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/plans/advice.txt"))) {
      covered.add(line.substring(0, line.indexOf('|')));
    }
    List<String> missing = new ArrayList<>();
    for (Rule rule : Rules.all()) {
      boolean season = rule.getClass().getPackageName().endsWith("season");
      if (!season && !covered.contains(rule.id())) {
        missing.add(rule.id());
      }
    }
    assertThat(missing)
        .as("rules without a row in plans/advice.txt; with ? for its words a row is told them")
        .isEmpty();
  }
}
