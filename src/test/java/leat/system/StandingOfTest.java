package leat.system;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leat.plan.Plan;
import leat.plan.Source;
import leat.plan.Taken;
import leat.stability.Joint;
import leat.stability.Situation;
import leat.stability.StackJoint;
import org.junit.jupiter.api.Test;

/** A plan's towers before the wind. */
class StandingOfTest {
  private static StandingOf stacked() throws IOException {
    String yaml = Files.readString(Path.of("examples/stacked.yaml"));
    return StandingOf.of(Plan.Draft.of(Source.file("stacked.yaml", yaml)).read(), new Taken());
  }

  /** Second route: the joints of each state, asked one by one of the trade. */
  @Test
  void aJointIsTheSameJointInEachState() throws IOException {
    StandingOf standing = stacked();
    int looked = 0;
    for (int t = 0; t < standing.towers(); t++) {
      List<StackJoint> stack = standing.joints(t);
      for (int s = 0; s < standing.states().size(); s++) {
        Situation state = standing.states().get(s);
        List<Joint> own = standing.assembly().joints(standing.column(t), state);
        assertThat(stack).hasSameSizeAs(own);
        for (int i = 0; i < own.size(); i++, looked++) {
          assertThat(stack.get(i).states().get(s)).usingRecursiveComparison().isEqualTo(own.get(i));
        }
      }
      assertThat(standing.joints(t)).as("found once").isSameAs(stack);
    }
    assertThat(looked).isGreaterThan(10);
  }
}
