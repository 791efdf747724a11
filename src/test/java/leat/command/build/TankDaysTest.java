package leat.command.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Arrays;
import leat.cli.Cli;
import org.junit.jupiter.api.Test;

/** How long a tank lasts, by what the plan says that the plants drink; sums by hand. */
class TankDaysTest {
  private static final String[] LINE = {"tank", "--plan", "hard-water.yaml", "--days", "5"};

  private static Cli run(String... more) {
    String[] line = Arrays.copyOf(LINE, LINE.length + more.length);
    System.arraycopy(more, 0, line, LINE.length, more.length);
    return Cli.run(line);
  }

  private static double drunk(String... more) throws Exception {
    String[] line = Arrays.copyOf(more, more.length + 2);
    line[more.length] = "--format";
    line[more.length + 1] = "json";
    JsonNode one = new ObjectMapper().readTree(run(line).out);
    assertThat(one.get("drunk_L").asDouble())
        .isCloseTo(5 * one.get("drinks_L_d").asDouble(), within(1e-9));
    return one.get("drunk_L").asDouble();
  }

  @Test
  void byThePlan() throws Exception {
    assertThat(drunk()).as("drinks: 4 L/d").isCloseTo(20, within(1e-9));
    assertThat(drunk("--thirst", "6 L/d")).as("a flag wins").isCloseTo(30, within(1e-9));
    assertThat(
            drunk(
                "--set",
                "drinks=",
                "--set",
                "crops=[{name: lettuce, pots: 16, water: 0.12 L/d}, {name: chard, pots: 8, water: 0.2 L/d}]"))
        .as("16 x 0.12 and 8 x 0.2 L/d")
        .isCloseTo(17.6, within(1e-9));
    assertThat(run().out).contains("4.00 L/d, as the plan says");
    assertThat(run("--thirst", "6 L/d").out).doesNotContain("as the plan says");
    assertThat(run("--set", "drinks=5 L/d", "--set", "thirst=120 %").out)
        .as("5 L/d times 1.2, as season has it")
        .contains("6.00 L/d, as the plan says");
  }

  @Test
  void whatIsMissingIsNamed() {
    String[] shape = {
      "tank",
      "--shape",
      "box",
      "--bottom",
      "540 mm x 360 mm",
      "--height",
      "330 mm",
      "--full",
      "280 mm",
      "--low",
      "80 mm",
      "--days",
      "5"
    };
    assertThat(Cli.run(shape).err)
        .contains("--thirst is needed", "drinks or the crops of the plan");
    assertThat(run("--set", "drinks=", "--set", "crops=").err)
        .contains("drinks: needed (what the plants take a day");
    assertThat(run("--set", "drinks=").err).contains("crops[0].water: needed");
    assertThat(Cli.run("tank", "--plan", "hard-water.yaml", "--thirst", "6 L/d").err)
        .startsWith("leat tank: --days is needed");
  }
}
