package leat.plan;

import java.nio.charset.StandardCharsets;

/**
 * A plan is read or refused with problems that can be shown, whatever its bytes. Driven by coverage
 * with {@code mvn -Pjazzer}; the corpus is tried in every build.
 */
public final class PlanFuzz {
  private PlanFuzz() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    String yaml = new String(data, StandardCharsets.UTF_8);
    try {
      Plan plan = Plan.Draft.of(Source.file("p.yaml", yaml)).read();
      if (plan.title() == null) {
        throw new AssertionError("a plan without a title: " + yaml);
      }
    } catch (Refused e) {
      for (Problem problem : e.problems()) {
        check(problem);
      }
    }
  }

  private static void check(Problem problem) {
    String shown = problem.render();
    for (int i = 0; i < shown.length(); i++) {
      if (Character.isISOControl(shown.charAt(i)) && shown.charAt(i) != '\n') {
        throw new AssertionError("a control character reaches the terminal: " + problem.code());
      }
    }
    if (shown.isBlank() || problem.message().isBlank()) {
      throw new AssertionError("refused without a word: " + problem.code());
    }
  }
}
