/**
 * Quantities at the edge: what a person types ("1/2 in", "240 GPH", "600 L/h @ 1.7 m") becomes a
 * number in the base of its dimension, and numbers become text.
 *
 * <p>Start with {@link leat.quantity.QuantityReader} and the table in {@link leat.quantity.Units}.
 * Depends on nothing but the JDK; the trade packages do not know it. Messages are in {@link
 * leat.quantity.QuantityErrors}.
 *
 * <p>Neighbours: none.
 */
package leat.quantity;
