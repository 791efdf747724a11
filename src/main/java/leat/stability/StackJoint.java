package leat.stability;

import java.util.List;

/**
 * One joint of a stack over all states it is looked at in: grown plants catch more wind, young ones
 * press less on it, and either may be the worse.
 *
 * <p>Source: {@link Joint} of each state.
 *
 * @param states the same joint in each state, at least one
 */
public record StackJoint(List<Joint> states) {
  /** Height over the foot plane, m. */
  public double height() {
    return states.get(0).height();
  }

  /**
   * Gust that opens it.
   *
   * @param density of air, kg/m3
   * @return m/s; null when no wind does
   */
  public Double opensAt(double density) {
    Double least = null;
    for (Joint joint : states) {
      least = least(least, joint.opensAt(density));
    }
    return least;
  }

  /**
   * Gust that rolls the parts above over its rim.
   *
   * @param density of air, kg/m3
   * @return m/s; null when no wind does
   */
  public Double rollsAt(double density) {
    Double least = null;
    for (Joint joint : states) {
      least = least(least, joint.rollsAt(density));
    }
    return least;
  }

  /** Whether the parts above roll over in a state at a pressure in Pa. */
  public boolean rolls(double pressure) {
    for (Joint joint : states) {
      if (joint.rolls(pressure)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whole preload that keeps it shut in each state.
   *
   * @param pressure of the wind, Pa
   * @return N; 0 when the weight does
   */
  public double tieToStayShut(double pressure) {
    double most = 0;
    for (Joint joint : states) {
      most = Math.max(most, joint.tieToStayShut(pressure));
    }
    return most;
  }

  /** The lesser of two gusts, either null for none. */
  public static Double least(Double one, Double other) {
    return one == null || other != null && other < one ? other : one;
  }
}
