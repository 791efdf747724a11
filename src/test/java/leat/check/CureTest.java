package leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import leat.answer.Show;
import leat.plan.Plan;
import leat.plan.PlanFile;
import org.junit.jupiter.api.Test;

/** A cure's numbers are rounded to what is shown, to the side that passes, and typed so. */
class CureTest {
  @Test
  void whatMustBeReachedIsRoundedUpAndWhatMustNotBePassedDown() {
    Cure least = Cure.atLeast("tank.low", 0.060101, Show.MM);
    assertThat(least.keys()).containsExactly("tank.low");
    assertThat(least.values()).containsExactly("60.2 mm");
    assertThat(least.words().render(false)).isEqualTo("tank.low of 60.2 mm");
    Cure most = Cure.atMost("tank.low", 0.060199, Show.MM);
    assertThat(most.values()).containsExactly("60.1 mm");
    assertThat(most.words().render(false)).isEqualTo("tank.low of 60.1 mm");
    // in US units the side is kept: 60.101 mm are 2.3662 in
    assertThat(least.words().render(true)).isEqualTo("tank.low of 2.37 in");
    assertThat(Cure.atMost("tank.low", 0.060199, Show.MM).words().render(true))
        .isEqualTo("tank.low of 2.37 in");
    assertThat(Cure.atMost("tank.low", 0.060325, Show.MM).words().render(true))
        .as("2.375 in")
        .isEqualTo("tank.low of 2.37 in");
  }

  @Test
  void severalKeysAndARemark() {
    Cure cure =
        Cure.typed("towers[0].riser.valve", "ball")
            .andAtMost("towers[0].wanted", 4.019 / 60000, Show.L_MIN)
            .andAtLeast("timing[0].rest", 611, Show.MIN)
            .remark(" (for now)");
    assertThat(cure.keys())
        .containsExactly("towers[0].riser.valve", "towers[0].wanted", "timing[0].rest");
    assertThat(cure.values()).containsExactly("ball", "4.01 L/min", "10.2 min");
    assertThat(cure.words().render(false))
        .isEqualTo(
            "towers[0].riser.valve of ball with towers[0].wanted of 4.01 L/min with timing[0].rest of 10.2 min (for now)");
  }

  @Test
  void itIsWrittenIntoThePlan() {
    Plan plan =
        PlanFile.read("first-tower.yaml", new File("examples/first-tower.yaml"), null).read();
    Plan changed =
        Cure.atMost("tank.full", 0.2508, Show.MM).andTyped("timing[0].run", "2 min").on(plan);
    assertThat(changed.section("tank").need("full")).isEqualTo(0.25);
    assertThat(changed.root().sections("timing").get(0).need("run")).isEqualTo(120);
    assertThat(plan.section("tank").need("full")).as("the plan itself stays").isEqualTo(0.27);
  }

  @Test
  void twoCuresGoTogetherUnlessTheyChangeOneKey() {
    Cure full = Cure.typed("tank.full", "250 mm");
    Cure both = full.and(Cure.typed("timing[0].run", "2 min").andTyped("tank.low", "80 mm"));
    assertThat(both.keys()).containsExactly("tank.full", "timing[0].run", "tank.low");
    assertThat(both.values()).containsExactly("250 mm", "2 min", "80 mm");
    assertThat(both.words().render(false))
        .isEqualTo("tank.full of 250 mm with timing[0].run of 2 min with tank.low of 80 mm");
    assertThat(full.and(Cure.typed("tank.full", "240 mm"))).isNull();
    assertThat(full.and(Cure.typed("tank.low", "80 mm").andTyped("tank.full", "1 mm"))).isNull();
    assertThat(full.keys()).as("neither is changed").containsExactly("tank.full");
  }
}
