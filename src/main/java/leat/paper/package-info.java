/**
 * What is printed and cut out: the card by the tower and the dipstick, as pages of html with SVG in
 * millimetres. {@link leat.paper.CardPage} lays out words that came ready, {@link leat.paper.Strip}
 * draws levels. Start with {@link leat.paper.PaperSize}.
 *
 * <p>Neighbours: html, numeric, quantity.
 */
package leat.paper;
