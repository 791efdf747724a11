package leat.quantity;

/**
 * A point of a pump's curve: "400 L/h @ 2.1 m".
 *
 * @param flow before the at sign
 * @param head after it
 */
public record PumpPoint(Quantity flow, Quantity head) {}
