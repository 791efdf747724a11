package leat.sweep;

import java.util.ArrayList;
import java.util.List;
import leat.plan.Refused;

/**
 * The one list of measures, in the order they are shown. Each is worked out only when it is asked
 * for; several towers give the worst of them at the refill mark.
 */
public final class Measures {
  private Measures() {}

  /** All measures. */
  public static List<Measure> all() {
    List<Measure> all = new ArrayList<>();
    all.addAll(WaterMeasures.all());
    all.addAll(TankMeasures.all());
    all.addAll(BuildMeasures.all());
    all.addAll(WindMeasures.all());
    all.addAll(RunMeasures.all());
    all.addAll(SeasonMeasures.all());
    return all;
  }

  /** Names of all measures. */
  public static List<String> names() {
    List<String> names = new ArrayList<>();
    for (Measure measure : all()) {
      names.add(measure.name());
    }
    return names;
  }

  /**
   * The measure of a name.
   *
   * @throws Refused with the nearest name
   */
  public static Measure find(String name) {
    for (Measure measure : all()) {
      if (measure.name().equals(name)) {
        return measure;
      }
    }
    throw new Refused(SweepErrors.noMeasure(name, names()));
  }
}
