package leat.quantity;

/**
 * What is in the tank and how far the plants are grown: "30 L @ 60 %".
 *
 * @param volume of solution
 * @param grown share of the full-size plants
 */
public record TankState(Quantity volume, Quantity grown) {}
