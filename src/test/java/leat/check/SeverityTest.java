package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
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

/** How severe each breach of each rule is: the verdict itself, not only that it is none. */
class SeverityTest {
  private static Plan plan(String file, String sets) {
    File place = new File("examples/" + file);
    if (!place.exists()) {
      place = new File("src/test/resources/plans/rules/" + file);
    }
    Plan.Draft draft = PlanFile.read(file, place, null);
    for (String set : sets == null ? new String[0] : sets.split(" ; ")) {
      int equals = set.indexOf('=');
      draft.set(set.substring(0, equals), Source.flag("--set", set.substring(equals + 1)));
    }
    return draft.read();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/plans/severity.txt", delimiter = '|', numLinesToSkip = 1)
  void isAsTheTableSays(String rule, Verdict verdict, String file, String sets) {
    List<Verdict> found = new ArrayList<>();
    for (Finding finding : Rules.judge(new Subject(plan(file, sets)))) {
      if (finding.rule().id().equals(rule)) {
        found.add(finding.verdict());
      }
    }
    assertThat(found).contains(verdict);
    if (verdict == Verdict.WARN) {
      assertThat(found).doesNotContain(Verdict.FAIL);
    }
    if (verdict == Verdict.FAIL) {
      assertThat(found).doesNotContain(Verdict.WARN);
    }
  }

  @Test
  void noRuleIsLeftOut() throws Exception {
    Set<String> covered = new TreeSet<>();
    List<String> lines =
        java.nio.file.Files.readAllLines(
            java.nio.file.Path.of("src/test/resources/plans/severity.txt"));
    lines.forEach(line -> covered.add(line.substring(0, line.indexOf('|'))));
    List<String> missing = new ArrayList<>(List.of(Rules.ids()));
    missing.removeAll(covered);
    assertThat(missing)
        .as("rules without a row in plans/severity.txt: a plan, sets, and the verdict they bring")
        .isEmpty();
  }
}
