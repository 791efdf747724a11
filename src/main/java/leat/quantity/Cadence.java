package leat.quantity;

/**
 * When something is done again: "at low", "daily", "every 3 d".
 *
 * @param atLow whether it waits for the low mark
 * @param every the time between; null with {@code atLow}
 */
public record Cadence(boolean atLow, Quantity every) {}
