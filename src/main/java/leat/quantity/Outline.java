package leat.quantity;

/**
 * What the wind meets: "0.255 m2 @ 1.2 m x 1.2".
 *
 * @param area an area
 * @param height of its centre, a length
 * @param coefficient of drag, a bare number
 */
public record Outline(Quantity area, Quantity height, Quantity coefficient) {}
