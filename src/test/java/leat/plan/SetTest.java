package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code --set}, flags laid over a plan, and key paths. */
class SetTest {
  private static Plan.Draft sketch() {
    return Plan.Draft.of(Source.file("p.yaml", Plans.sketch()));
  }

  private static Plan set(String path, String value) {
    return sketch().set(path, Source.flag("--set " + path, value)).read();
  }

  private static Object set(String path, String value, String read) {
    return Plans.at(set(path, value).root(), read);
  }

  @Test
  void everyShapeCanBeSet() {
    assertThat(set("pump.derate", "70%", "pump.derate")).isEqualTo(0.7);
    assertThat(
            (List<?>)
                set(
                    "pump.curve",
                    "[0 L/h @ 2.6 m, 900 L/h @ 0 L]".replace("0 L]", "0 m]"),
                    "pump.curve"))
        .hasSize(2);
    assertThat(set("towers[0].riser.bore", "10 mm", "towers[0].riser.bore")).isEqualTo(0.01);
    assertThat(set("timing[1].from", "23:00", "timing[1].from")).isEqualTo(1380);
    assertThat(set("limits.pump-margin", "15 %", "limits.pump-margin")).isEqualTo("15 %");
    assertThat(set("towers[0].riser.fittings.elbow", "3", "towers[0].riser.fittings.elbow"))
        .hasToString("CountAt[count=3, size=null]");
    assertThat(set("rain", "{ec: 0.1 mS/cm}", "rain.ec")).isEqualTo(0.1);
    assertThat(set("timing[3]", "{run: 5 s, rest: 1 h}", "timing[3].run")).isEqualTo(5.0);
    assertThat(set("name", "yes", "name")).isEqualTo("yes");
  }

  @Test
  void anAliasIsChangedInOnePlaceOnly() {
    Plan plan = set("towers[0].riser.bore", "10 mm");
    assertThat(Plans.at(plan.root(), "towers[1].riser.bore")).isEqualTo(0.013);
    Plan all = set("towers[*].riser.bore", "10 mm");
    assertThat(Plans.at(all.root(), "towers[0].riser.bore")).isEqualTo(0.01);
    assertThat(Plans.at(all.root(), "towers[1].riser.bore")).isEqualTo(0.01);
  }

  @Test
  void emptyRemoves() {
    assertThat(set("pump.power", "").section("pump").has("power")).isFalse();
    assertThat(set("pump.body", " ").section("pump").has("body")).isFalse();
    assertThat(set("timing[1]", "").root().sections("timing")).hasSize(2);
    assertThat(set("crops[*]", "").root().sections("crops")).isEmpty();
    assertThat(set("sender", "").section("sender").isGiven()).isFalse();
    assertThat(set("towers[*].guys", "").root().sections("towers").get(1).section("guys").isGiven())
        .isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\0',
      value = {
        "pump.derat|1 %|--set pump.derat: no key \"derat\" there; did you mean \"derate\"?",
        "tower[0].outlet|1 m|--set tower[0].outlet: no key \"tower\" there; did you mean \"towers\"?",
        "towers[3].outlet|1 m|--set towers[3].outlet: the list has 2 items (north, south), counted from [0]",
        "towers[9999999].outlet|1 m|--set towers[9999999].outlet: a number, a name or * stands in brackets, such as towers[0] or towers[*]; got \"9999999\"",
        "towers[-1].outlet|1 m|--set towers[-1].outlet: a number, a name or * stands in brackets, such as towers[0] or towers[*]; got \"-1\"",
        "towers[0.outlet|1 m|--set towers[0.outlet: KEY=VALUE is needed, such as pump.derate=70%",
        "towers.outlet|1 m|--set towers.outlet: no key \"outlet\" there; did you mean \"towers[0].outlet\"?",
        "pump[0].power|1 W|--set pump[0].power: no key \"[0]\" there",
        "pump..power|1 W|--set pump..power: KEY=VALUE is needed, such as pump.derate=70%",
        "rain.q|1|--set rain.q: no key \"q\" there; rain has ec",
        "pump.power|#5|--set pump.power: YAML reads this as a comment; put the value in quotes, or leave it empty to remove the key",
        "pump.power|5|--set pump.power: a power needs its unit, such as \"22 W\"; got \"5\"",
        "pump.power|[5 W]|--set pump.power: one value is needed, such as \"22 W\"",
        "pump.power|{a|--set pump.power: this is not YAML: a comma or the closing bracket is missing before this",
        "pump.power|*a|--set pump.power: nothing above is anchored as &a, so *a stands for nothing",
        "tank.full|401 mm|--set tank.full: it lies above the rim: \"401 mm\" against height \"400 mm\"",
        "tariff.price|0.2 USD/kWh|--set tariff.price: a plan has one currency: this is USD, \"currency\" says EUR",
      })
  void mistakesAreTold(String path, String value, String told) {
    try {
      set(path, value);
    } catch (Refused e) {
      assertThat(e.getMessage()).isEqualTo(told + "\n");
      return;
    }
    throw new AssertionError("accepted");
  }

  @Test
  void aFlagLaysAsideWhatThePlanSaysInAnotherWay() {
    Plan ends =
        sketch()
            .setText("pump.shutoff_head", "--shutoff-head", "2 m")
            .setText("pump.max_flow", "--max-flow", "900 L/h")
            .read();
    assertThat(ends.section("pump").has("curve")).isFalse();
    Plan derate = set("pump.derate", "60 %");
    assertThat(derate.section("pump").has("measured")).isFalse();
    Plan k = sketch().setText("towers[*].riser.k", "--k", "2").read();
    assertThat(k.root().sections("towers").get(1).section("riser").has("fittings")).isFalse();
    Plan material = set("pipe.material", "printed");
    assertThat(material.section("pipe").text("material")).isEqualTo("printed");
    Plan steps = set("sender.steps", "[40 mm = 10 ohm, 60 mm = 27 ohm]");
    assertThat(steps.section("sender").has("edges")).isFalse();
  }

  @Test
  void twoFlagsThatSayTheSameAreTold() {
    Plan.Draft draft =
        Plan.Draft.empty()
            .setText("pump.shutoff_head", "--shutoff-head", "2 m")
            .setList("pump.curve", "--point", List.of("0 L/h @ 2 m", "9 L/h @ 0 m"));
    try {
      draft.read();
      throw new AssertionError("accepted");
    } catch (Refused e) {
      assertThat(e.getMessage())
          .isEqualTo(
              "--shutoff-head: shutoff_head and curve say the same thing; keep one of them\n");
    }
  }

  @Test
  void aMistakeOfAFlagIsNamedByTheFlag() {
    Leat run =
        Leat.run(
            "tank",
            "--shape",
            "box",
            "--bottom",
            "300 mm x 200 mm",
            "--height",
            "300 mm",
            "--corner",
            "150 mm",
            "--level",
            "20 mm");
    assertThat(run.code).isEqualTo(2);
    assertThat(run.err)
        .isEqualTo("--corner: a corner radius cannot be over half the smaller side\n");
    Leat missing = Leat.run("tank", "--level", "20 mm");
    assertThat(missing.err)
        .startsWith("--shape: needed (shape of the inside), such as --shape \"tapered-box\"\n");
    Leat full =
        Leat.run("tank", "--plan", "first-tower.yaml", "--set", "tank.shape=", "--level", "20 mm");
    assertThat(full.err)
        .isEqualTo(
            "first-tower.yaml: tank.shape: needed (shape of the inside), such as \"shape: tapered-box\"\n");
  }
}
