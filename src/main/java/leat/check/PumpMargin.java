package leat.check;

import java.util.ArrayList;
import java.util.List;
import leat.answer.Phrase;
import leat.answer.Show;
import leat.hydraulics.ManifoldFlow;
import leat.hydraulics.OperatingPoint;
import leat.system.Waterway;

/**
 * The pump's head at no flow stands well over the highest outlet, with the tank at its refill mark.
 */
final class PumpMargin extends Rule {
  @Override
  public String id() {
    return "pump-margin";
  }

  @Override
  public String meaning() {
    return "Shut-off head that is left, less the lift at the refill mark, over the lift. A thin margin is eaten by wear and slime.";
  }

  @Override
  public String need() {
    return AT_LEAST;
  }

  @Override
  public Show show() {
    return Show.PERCENT;
  }

  @Override
  public Double usualLimit() {
    return OperatingPoint.USUAL_MARGIN;
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  public String reads() {
    return "pump.curve pump.derate pump.measured tank.low towers[].outlet";
  }

  @Override
  public List<Finding> judge(Subject subject) {
    Waterway way = subject.waterway();
    ManifoldFlow low = way.flows(way.low());
    double limit = limit(subject);
    List<Finding> found = new ArrayList<>();
    for (int t = 0; t < way.towers(); t++) {
      int i = way.riserOf(t);
      if (low.marginShare(i).isEmpty()) {
        continue;
      }
      double lift = low.manifold().riser(i).lift();
      double outlet = way.low() + low.shutoffHead() / (1 + limit);
      Phrase advice =
          Phrase.of("pump.shutoff_head of ")
              .add(
                  low.shutoffHead() > 0
                      ? way.printed().shutoffHead() * lift * (1 + limit) / low.shutoffHead()
                      : 0,
                  Show.M)
              .add(", or towers[" + t + "].outlet at ")
              .add(outlet, Show.M);
      found.add(
          atLeast(low.marginShare(i).getAsDouble(), limit, Verdict.FAIL, advice).at(way.name(t)));
    }
    return found;
  }
}
