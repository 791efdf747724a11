package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import leat.quantity.Unreadable;
import org.junit.jupiter.api.Test;

class PlanErrorsTest {
  @Test
  void everyMessageIsAMethodThatAGalleryCanFind() {
    for (Method method : PlanErrors.class.getDeclaredMethods()) {
      if (method.isSynthetic() || Modifier.isPrivate(method.getModifiers())) {
        continue;
      }
      assertThat(Modifier.isPublic(method.getModifiers())).as(method.getName()).isTrue();
      assertThat(Modifier.isStatic(method.getModifiers())).as(method.getName()).isTrue();
      assertThat(method.getReturnType()).isIn(Problem.class, Unreadable.class);
    }
  }

  @Test
  void allMistakesAtOnceInTheirOrder() {
    String yaml =
        "tank: {full: 3, full: 4}\n"
            + "pump:\n  powr: 1 W\n  power: -1 W\n  curve: [0 L/h @ 2 m, 5 L/h @ 3 m]\n"
            + "season: {from: 2027-10-01, to: 2027-04-01}\n";
    assertThat(Plans.told(yaml))
        .extracting(l -> l.substring(0, l.indexOf(": ")))
        .containsExactly(
            "p.yaml:1:14",
            "p.yaml:1:17",
            "p.yaml:3:3",
            "p.yaml:4:10",
            "p.yaml:5:32",
            "p.yaml:6:32");
  }

  @Test
  void twentyAreShown() {
    StringBuilder yaml = new StringBuilder();
    for (int i = 0; i < 25; i++) {
      yaml.append("k").append(i).append(": 1\n");
    }
    assertThat(Plans.told(yaml.toString())).hasSize(21).last().isEqualTo("and 5 more");
  }

  @Test
  void aMistakeUnderAnAnchorIsToldOnce() {
    assertThat(
            Plans.told(
                "towers:\n- riser: &r {bore: 0 mm}\n- riser: *r\n- riser: {<<: *r, length: 1 m}\n"))
        .containsExactly(
            "p.yaml:2:20: towers[0].riser.bore: it must be above 0, such as \"13 mm\"; got \"0 mm\"");
  }

  @Test
  void anchorsAndMerges() {
    Plan plan =
        Plans.plan(
            "towers:\n- riser: &r {bore: 13 mm, length: 1 m}\n- riser: {<<: *r, length: 2 m}\n"
                + "- riser: {length: 3 m, <<: [{bore: 10 mm}, *r]}\n- riser:\n    <<: *r\n");
    assertThat(Plans.at(plan.root(), "towers[1].riser.bore")).isEqualTo(0.013);
    assertThat(Plans.at(plan.root(), "towers[1].riser.length")).isEqualTo(2.0);
    assertThat(Plans.at(plan.root(), "towers[2].riser.bore")).isEqualTo(0.01);
    assertThat(Plans.at(plan.root(), "towers[2].riser.length")).isEqualTo(3.0);
    assertThat(Plans.at(plan.root(), "towers[3].riser.length")).isEqualTo(1.0);
  }

  @Test
  void theCurrencyOfThePlan() {
    assertThat(Plans.plan("name: a\n").currency()).isNull();
    assertThat(Plans.plan("currency: CHF\n").currency()).isEqualTo("CHF");
    assertThat(Plans.plan("prices: {pump: 20 USD, tank: 5 USD}\n").currency()).isEqualTo("USD");
    assertThat(Plans.plan(Plans.sketch()).currency()).isEqualTo("EUR");
  }
}
