package leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several plans after pump, tank or duty: each is answered as it is alone. */
class EachPlanTest {
  private static final String[] PLANS = {"first-tower.yaml", "terrace.yaml"};

  private static String[] line(String command, String... plans) {
    String[] words = command.split(" ");
    String[] all = java.util.Arrays.copyOf(words, words.length + plans.length);
    System.arraycopy(plans, 0, all, words.length, plans.length);
    return all;
  }

  @ParameterizedTest
  @ValueSource(strings = {"pump", "tank --level 200mm", "duty"})
  void aBlockEachInText(String command) {
    String both = Cli.run(line(command, PLANS)).out;
    for (String plan : PLANS) {
      assertThat(both).contains(plan + ":\n" + Cli.run(line(command, plan)).out);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"pump", "tank --level 200mm", "duty"})
  void csvAndJsonNameThePlanFirst(String command) throws Exception {
    String csv = Cli.run(line(command + " --format csv", PLANS)).out;
    StringBuilder expected = new StringBuilder();
    for (String plan : PLANS) {
      String[] rows = Cli.run(line(command + " --format csv", plan)).out.split("\n");
      expected.append(expected.isEmpty() ? "plan," + rows[0] + "\n" : "");
      for (int i = 1; i < rows.length; i++) {
        expected.append(plan).append(',').append(rows[i]).append('\n');
      }
    }
    assertThat(csv).isEqualTo(expected.toString());
    JsonNode json =
        new ObjectMapper().readTree(Cli.run(line(command + " --format json", PLANS)).out);
    assertThat(json.get(0).fieldNames().next()).isEqualTo("plan");
    assertThat(json.get(json.size() - 1).get("plan").asText()).isEqualTo("terrace.yaml");
  }

  @Test
  void aPlanThatIsMissingStopsNoOther() {
    Cli said = Cli.run("duty", "first-tower.yaml", "none.yaml", "terrace.yaml");
    assertThat(said.exit).isEqualTo(3);
    assertThat(said.err).contains("none.yaml: no such file");
    assertThat(said.out).contains("first-tower.yaml:\n").contains("terrace.yaml:\n");
    assertThat(Cli.run("pump", "proud-tower.yaml", "first-tower.yaml").exit).isEqualTo(1);
  }

  @Test
  void whatTheCommandLineLacksIsSaidOnce() {
    Cli said = Cli.run(line("tank", PLANS));
    assertThat(said.exit).isEqualTo(2);
    assertThat(said.err).isEqualTo(Cli.run(line("tank", PLANS[0])).err).isNotEmpty();
  }
}
