package leat.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words about danger stay when all others are left out. */
class SafetyTest {
  private static Answer answer() {
    Column flow = Column.of("flow_L_min", "flow", Show.L_MIN);
    Answer answer = new Answer(flow);
    Row row = answer.row().set(flow, 8 / 60000.0);
    answer.sentence(row, "It gives {flow_L_min}.").taken(Phrase.of("water 20 C"));
    answer.mind("guess", "A guess.");
    answer.safety("mains", "Mains beside the water.");
    return answer.safety("acid", "Acid into water.").next("leat pump");
  }

  private static Format format(String name, boolean quiet) {
    return new Format(name, false, quiet, false, false, ',', '.');
  }

  @Test
  void quietTextKeepsOneLastLine() {
    assertThat(format("text", true).write(answer()))
        .isEqualTo("It gives 8.00 L/min.\nMind: Mains beside the water. Acid into water.\n");
  }

  @Test
  void otherwiseEachIsALineOfItsOwn() {
    assertThat(format("text", false).write(answer()))
        .contains("Mind: A guess.\nMind: Mains beside the water.\nMind: Acid into water.\n");
  }

  @Test
  void jsonKeepsItsNotes() {
    assertThat(format("json", true).write(answer()))
        .contains("\"code\": \"mains\"", "\"code\": \"acid\"")
        .doesNotContain("guess", "taken");
  }

  @Test
  void csvSaysNothing() {
    assertThat(format("csv", true).aside(answer())).isEmpty();
    assertThat(format("csv", false).aside(answer())).contains("Mind: Acid into water.\n");
  }
}
