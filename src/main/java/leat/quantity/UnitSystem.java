package leat.quantity;

/** Who writes a unit: metric countries, the United States, or both. */
public enum UnitSystem {
  METRIC,
  US,
  BOTH
}
