package leat.energy;

/** When the relay's coil draws, which follows from the contact the pump hangs on. */
public enum Coil {
  /** The pump hangs on the normally-open contact: the coil draws while it runs. */
  WHILE_RUNNING,
  /**
   * The pump hangs on the normally-closed contact (it runs when the controller fails): the coil
   * draws while it rests.
   */
  WHILE_RESTING,
  /** No coil, or its power is not counted. */
  NEVER;

  /** Share of the time the coil draws when the pump runs {@code pumpShare} of it, both 0 to 1. */
  double share(double pumpShare) {
    if (this == WHILE_RUNNING) {
      return pumpShare;
    }
    return this == WHILE_RESTING ? 1 - pumpShare : 0;
  }
}
