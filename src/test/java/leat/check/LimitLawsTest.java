package leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.answer.Show;
import leat.plan.Plan;
import leat.plan.PlanFile;
import leat.plan.Source;
import leat.quantity.NumberText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Laws of every rule that holds a number against a limit: the very value as limit is kept, a
 * thousandth more is not asked for, a thousandth less is.
 */
class LimitLawsTest {
  private static final double THOUSANDTH = 1e-3;

  /** Past the end of the curve, or over the shut-off head, no limit of one's own helps. */
  private static final Set<String> WHATEVER_THE_LIMIT = Set.of("pump-on-curve", "reaches-top");

  static Stream<String> plans() {
    List<String> names = new ArrayList<>();
    for (String folder : new String[] {"examples", "src/test/resources/plans/rules"}) {
      for (String name : new TreeSet<>(Set.of(new File(folder).list()))) {
        if (name.endsWith(".yaml")) {
          names.add(folder + "/" + name);
        }
      }
    }
    assertThat(names).hasSizeGreaterThan(20);
    return names.stream();
  }

  private static Plan plan(String file, String limits) {
    Plan.Draft draft = PlanFile.read(file, new File(file), null);
    if (limits != null) {
      draft.set("limits", Source.flag("--set", limits));
    }
    return draft.read();
  }

  private static String typed(Rule rule, double value) {
    Show show = rule.show();
    String number = NumberText.shortest(show.metric().fromBase(value));
    String symbol = show.metric().symbol();
    return "{" + rule.id() + ": " + (symbol.isEmpty() ? number : number + " " + symbol) + "}";
  }

  private static Finding again(String file, Finding was, double limit) {
    Plan plan = plan(file, typed(was.rule(), limit));
    for (Finding finding : was.rule().measure(new Subject(plan))) {
      if (finding.part() == was.part()) {
        return finding;
      }
    }
    return null;
  }

  /** Rules of the season run whole years: they have a test of their own. */
  private static boolean isNumber(Finding finding) {
    return finding.hasValue()
        && finding.hasLimit()
        && finding.rule().takesLimit()
        && finding.rule().allows(finding.value())
        && !finding.rule().getClass().getPackageName().endsWith("season")
        && !finding.rule().id().equals("cost-season");
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theVeryValueIsKeptAndAThousandthDecides(String file) {
    for (Finding finding : Rules.judge(new Subject(plan(file, null)))) {
      if (isNumber(finding)) {
        decides(file, finding);
      }
    }
  }

  private static void decides(String file, Finding finding) {
    double value = finding.value();
    String need = finding.rule().need();
    String what = file + " " + finding.rule().id();
    double over = value + THOUSANDTH * Math.abs(value);
    double under = value - THOUSANDTH * Math.abs(value);
    boolean least = !need.equals(Rule.AT_MOST);
    Finding stricter = again(file, finding, least ? over : under);
    assertThat(stricter.isBreach()).as(what).isTrue();
    assertThat(stricter.margin()).as(what).isCloseTo(-THOUSANDTH, within(2e-6));
    if (finding.isBreach() && WHATEVER_THE_LIMIT.contains(finding.rule().id())) {
      return;
    }
    Finding looser = again(file, finding, least ? under : over);
    assertThat(looser.verdict()).as(what).isEqualTo(Verdict.PASS);
    assertThat(looser.margin()).as(what).isCloseTo(THOUSANDTH, within(2e-6));
    Finding same = again(file, finding, value);
    // typed in L/min a limit comes back with another last digit
    boolean kept = !need.equals(Rule.MORE_THAN) || rounded(same);
    assertThat(same.verdict() == Verdict.PASS).as(what).isEqualTo(kept);
    assertThat(same.margin()).as(what).isCloseTo(0, within(1e-9));
  }

  /** More than a limit, but for its last digit: reaches-top has a tolerance, tower-fed none. */
  private static boolean rounded(Finding same) {
    return same.rule().id().equals("tower-fed") && same.value() > same.limit();
  }

  /** Whatever the verdict, each finding can be written. */
  @ParameterizedTest
  @MethodSource("plans")
  void eachFindingHasItsWordsAndItsPlace(String file) {
    Subject subject = new Subject(plan(file, null));
    for (Finding finding : Rules.judge(subject)) {
      Rule rule = finding.rule();
      String what = file + " " + rule.id();
      assertThat(rule.place(finding)).as(what).matches("[a-z_]+(\\[\\d+])?(\\.[a-z_]+)*");
      if (finding.verdict() == Verdict.UNKNOWN) {
        assertThat(rule.why(subject, finding).render(false)).as(what).isNotBlank();
      } else if (!finding.hasValue()) {
        assertThat(rule.words(subject, finding)).as(what).isNotBlank().isNotEqualTo("-");
      }
      if (finding.isBreach()) {
        assertThat(new Advisor(subject).advice(finding).render(false)).as(what).isNotBlank();
      }
    }
  }

  @Test
  void eachRuleIsFoundByItsIdAndAllStandInOneList() {
    Set<String> ids = new TreeSet<>();
    for (Rule rule : Rules.all()) {
      assertThat(Rules.find(rule.id())).isSameAs(rule);
      assertThat(rule.meaning()).endsWith(".");
      assertThat(rule.source()).isNotBlank();
      assertThat(rule.reads()).isNotBlank();
      assertThat(rule.allowed()).isNotBlank();
      ids.add(rule.id());
    }
    assertThat(ids).containsExactlyInAnyOrder(Rules.ids());
    assertThat(Rules.find("no-such-rule")).isNull();
  }
}
