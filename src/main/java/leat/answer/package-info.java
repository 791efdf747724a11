/**
 * An answer: its sentence, figures, rows under one list of {@link leat.answer.Column}s, what was
 * taken for granted, notes and workings, and the writers that turn it into text, CSV or JSON.
 * Nobody else formats a number.
 *
 * <p>Depends on {@code leat.quantity} only. Start with {@link leat.answer.Answer}.
 *
 * <p>Neighbours: quantity.
 */
package leat.answer;
