package leat.sweep;

/**
 * One design of a grid.
 *
 * @param index its place in the order, from 0
 * @param at which value of each axis; -1 where a number lies between ends
 * @param numbers the number of each axis in its base unit; NaN where it is a text
 */
public record Design(long index, int[] at, double[] numbers) {}
