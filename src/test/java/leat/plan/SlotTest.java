package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers laid over a bound plan, held against the same numbers read as text. */
class SlotTest {
  private static Plan plan(String file) {
    return PlanFile.read(file, new File("examples/" + file), null).read();
  }

  private static double bore(Plan plan, int tower) {
    return plan.root().sections("towers").get(tower).section("riser").need("bore");
  }

  @Test
  void laysANumberOverEveryTower() {
    Plan plan = plan("terrace.yaml");
    Plan laid = plan.with(plan.slot("towers[*].riser.bore"), 0.016);
    Plan read = plan.with("towers[*].riser.bore", "16 mm");
    for (int t = 0; t < 2; t++) {
      assertThat(bore(laid, t)).isEqualTo(bore(read, t)).isEqualTo(0.016);
      assertThat(bore(plan, t)).as("the plan itself").isEqualTo(0.013);
    }
  }

  @Test
  void laysANumberOverOneTowerAndSharesTheOther() {
    Plan plan = plan("terrace.yaml");
    Plan laid = plan.with(plan.slot("towers[1].riser.bore"), 0.016);
    assertThat(bore(laid, 0)).isEqualTo(0.013);
    assertThat(bore(laid, 1)).isEqualTo(0.016);
    assertThat(laid.root().sections("towers").get(0))
        .isSameAs(plan.root().sections("towers").get(0));
    assertThat(laid.section("pump")).isSameAs(plan.section("pump"));
  }

  @Test
  void aRivalIsLaidAside() {
    Plan plan = plan("first-tower.yaml");
    Plan laid = plan.with(plan.slot("pump.derate"), 0.7);
    assertThat(laid.section("pump").has("measured")).isFalse();
    assertThat(laid.section("pump").need("derate")).isEqualTo(0.7);
    assertThat(
            laid.with(plan.slot("towers[0].riser.k"), 2.0)
                .root()
                .sections("towers")
                .get(0)
                .section("riser")
                .named("fittings")
                .size())
        .isZero();
  }

  @Test
  void aSectionThatIsNotThereIsMade() {
    Plan plan = plan("first-tower.yaml");
    assertThat(plan.section("dry_limit").isGiven()).isFalse();
    Plan laid = plan.with(plan.slot("dry_limit.day"), 1800);
    assertThat(laid.section("dry_limit").need("day")).isEqualTo(1800);
  }

  @Test
  void textAndNumbersCanBeMixed() {
    Plan plan = plan("first-tower.yaml");
    Plan laid = plan.with(plan.slot("towers[0].riser.bore"), 0.009);
    Plan more = laid.with("pump.derate", "70 %");
    assertThat(bore(more, 0)).isEqualTo(0.009);
    assertThat(more.section("pump").need("derate")).isEqualTo(0.7);
    assertThat(bore(laid.with("towers[0].riser.bore", "8 mm"), 0)).isEqualTo(0.008);
  }

  @Test
  void theTowerAsWrittenStays() {
    Plan plan = plan("first-tower.yaml");
    Plan laid = plan.with(plan.slot("towers[0].riser.bore"), 0.009);
    assertThat(bore(laid.asWritten(), 0)).isEqualTo(0.013);
  }

  @Test
  void whatCannotBeIsRefused() {
    Plan plan = plan("first-tower.yaml");
    assertThatThrownBy(() -> plan.with(plan.slot("towers[0].riser.bore"), 0))
        .hasMessageContaining("it must be above 0");
    assertThatThrownBy(() -> plan.with(plan.slot("tank.low"), 0.3))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("tank.low");
    assertThatThrownBy(() -> plan.slot("towers[0].riser.bor")).hasMessageContaining("bore");
    assertThatThrownBy(() -> plan.slot("towers[3].riser.bore")).hasMessageContaining("1 item");
    assertThatThrownBy(() -> plan.slot("pump.measured")).hasMessageContaining("only a number");
    assertThatThrownBy(() -> plan.slot("pump")).hasMessageContaining("only a number");
  }

  @Test
  void numbersLaidTogetherAreHeldAgainstEachOther() {
    Plan plan = plan("first-tower.yaml");
    Slot[] levels = {plan.slot("tank.low"), plan.slot("tank.full")};
    Plan both = plan.with(levels, new double[] {0.28, 0.3});
    assertThat(both.section("tank").need("low")).isEqualTo(0.28);
    assertThatThrownBy(() -> plan.with(levels[0], 0.28)).hasMessageContaining("refill mark");
  }

  /** Second route: every sense check on the whole plan. */
  @Test
  void looksAtAllThatANumberCanUpset() {
    int laid = 0;
    int upset = 0;
    for (String file : new String[] {"first-tower.yaml", "terrace.yaml", "proud-tower.yaml"}) {
      Plan plan = plan(file);
      for (KeyPath key : KeyPath.all()) {
        for (String path :
            new String[] {key.path().replace("[]", "[*]"), key.path().replace("[]", "[0]")}) {
          for (double number : new double[] {0, 1e-4, 0.01, 0.25, 1, 7, 400, 1440}) {
            String whole = found(plan, path, number, false);
            if (whole != null) {
              laid++;
              upset += whole.isEmpty() ? 0 : 1;
              assertThat(found(plan, path, number, true)).as(path + " " + number).isEqualTo(whole);
            }
          }
        }
      }
    }
    assertThat(laid).isGreaterThan(1000);
    assertThat(upset).isGreaterThan(20);
  }

  /** What is wrong with a plan with a number laid over; null when it cannot be laid. */
  private static String found(Plan plan, String path, double number, boolean near) {
    Section root;
    try {
      root = plan.slot(path).lay(plan.root(), number);
    } catch (Refused e) {
      return null;
    }
    List<Problem> problems = new ArrayList<>();
    PlanSense.check(root, near ? plan.root() : null, problems);
    StringBuilder told = new StringBuilder();
    for (Problem problem : problems) {
      told.append(problem.code()).append(' ').append(problem.path()).append('\n');
    }
    return told.toString();
  }
}
