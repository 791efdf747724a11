package leat.quantity;

/**
 * When something is done again: "at low", "daily", "every 3 d", "none".
 *
 * @param atLow whether it waits for the low mark
 * @param every the time between; null with {@code atLow}, and for never
 */
public record Cadence(boolean atLow, Quantity every) {}
