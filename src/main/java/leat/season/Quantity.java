package leat.season;

/** A number that a season's sums give: litres, a count, the cost of the season. */
public interface Quantity {
  /** The number. */
  double of(Totals totals);
}
