package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code plan show}: what is shown can be pasted back and means the same. */
class PlanShowTest {
  private static PlanShow show(Plan plan, String... keys) {
    return PlanShow.of(plan, List.of(keys));
  }

  @Test
  void whatIsShownReadsBackAsTheSame() {
    for (String text : Plans.good()) {
      Plan plan = Plans.plan(text);
      String yaml = show(plan).yaml();
      Plan again = Plans.plan(yaml);
      for (PlanShow.Entry entry : show(plan).entries()) {
        Object before = "default".equals(entry.from()) ? null : Plans.at(plan.root(), entry.path());
        Object after = Plans.at(again.root(), entry.path());
        if (before == null) {
          assertThat(entry.from()).isEqualTo("default");
        } else if (before instanceof Number
            || before instanceof String
            || before instanceof Boolean) {
          assertThat(after).as(entry.path()).isEqualTo(before);
        }
        assertThat(after).as(entry.path()).isNotNull();
      }
      assertThat(SchemaTest.faults(yaml)).isEmpty();
      assertThat(show(again).yaml().replaceAll(" +#.*", ""))
          .isEqualTo(yaml.replaceAll(" +#.*", ""));
    }
  }

  @Test
  void oddTextsSurvive() {
    String[] odd = {
      "yes",
      "12:30",
      "a: b",
      "a #b",
      "- x",
      "\"q\"",
      "it's",
      "{a}",
      "[",
      "*a",
      "&a",
      "!t",
      "%d",
      "@x",
      "`",
      "a\nb",
      "a\tb",
      "\u00e4\u00f6 \ud83c\udf31",
      "  edge ",
      "",
      "?",
      ":",
      "-",
      "#",
      "null",
      "~",
      "---",
      "a\\b",
      "\u2028",
      "\u0085",
      "\ufeffx",
      "a,b",
      "\u007f",
      "0x1F",
      "1e3",
    };
    for (String text : odd) {
      Plan plan =
          Plan.Draft.empty()
              .setText("name", "--name", text)
              .setText("limits.a", "--l", text)
              .read();
      Plan again = Plans.plan(show(plan).yaml());
      assertThat(again.root().text("name")).isEqualTo(text);
      assertThat(again.root().named("limits").get("a")).isEqualTo(text);
      assertThat(Plans.plan(Starter.text(text)).root().text("name")).isEqualTo(text);
    }
  }

  @Test
  void saysWhereAValueIsFrom() throws Exception {
    Leat run =
        Leat.run(
            "plan",
            "show",
            "first-tower.yaml",
            "pump",
            "tank.drain",
            "--set",
            "pump.power=20 W",
            "--format",
            "json");
    assertThat(run.code).isZero();
    JsonNode rows = new ObjectMapper().readTree(run.out);
    assertThat(row(rows, "pump.shutoff_head")).isEqualTo("2.4 m plan 21");
    assertThat(row(rows, "pump.power")).isEqualTo("20 W --set null");
    assertThat(row(rows, "pump.speed")).isEqualTo("100 % default null");
    assertThat(row(rows, "tank.drain")).isEqualTo("null nothing null");
    assertThat(row(rows, "pump.derate")).as("measured wins, so no default").isNull();
  }

  private static String row(JsonNode rows, String key) {
    for (JsonNode row : rows) {
      if (row.get("key").asText().equals(key)) {
        return row.get("value").asText() + " " + row.get("from").asText() + " " + row.get("line");
      }
    }
    return null;
  }

  @Test
  void picksParts() {
    Plan plan = Plans.plan(Plans.sketch());
    assertThat(show(plan, "towers[*].riser.bore").yaml())
        .isEqualTo("towers:\n  - riser:\n      bore: 13 mm\n  - riser:\n      bore: 13 mm\n");
    assertThat(show(plan, "towers[1].outlet", "rain").yaml())
        .isEqualTo("towers:\n  - outlet: 1.50 m\nrain:\n  ec: 0.03 mS/cm\n");
    assertThat(show(plan, "timing[1]").yaml())
        .isEqualTo(
            "timing:\n  - run: 60 s\n    rest: 25 min\n    from: \"22:00\"\n    to: \"06:00\"\n");
    assertThat(show(plan, "drinks").yaml())
        .isEqualTo("# drinks: not in the plan, and no default\n");
    assertThat(show(plan, "towers[7]").yaml()).isEqualTo("# towers[7]: not in the plan\n");
    assertThat(show(plan, "pipe.roughness").yaml())
        .isEqualTo(
            "pipe:\n  roughness: 0.0015 mm                  # default: wall 0.0015 mm, smooth tube\n");
    assertThat(show(plan, "log.decimal").yaml()).isEqualTo("log:\n  decimal: \",\"\n");
  }

  @Test
  void materialLaysTheDefaultRoughnessAside() {
    Plan plan = Plans.plan("pipe: {bore: 13 mm, material: printed}\n");
    assertThat(show(plan, "pipe").yaml()).doesNotContain("roughness");
  }

  @Test
  void refusesUnknownKeysAndMissingPlans() {
    assertThat(Leat.run("plan", "show", "first-tower.yaml", "pmp").err)
        .isEqualTo("leat plan show: no key \"pmp\" there; did you mean \"pump\"?\n");
    assertThat(Leat.run("plan", "show").code).isEqualTo(2);
    assertThat(Leat.run("plan", "show", "gone.yaml").code).isEqualTo(3);
  }
}
