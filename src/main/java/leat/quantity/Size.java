package leat.quantity;

/**
 * Length by width: "540 mm x 360 mm".
 *
 * @param length the first number, a length
 * @param width the second, a length
 */
public record Size(Quantity length, Quantity width) {}
