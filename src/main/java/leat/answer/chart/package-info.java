/**
 * What is drawn under an answer: a {@link leat.answer.chart.Chart} says it, a page and {@link
 * leat.answer.chart.TextChart} draw it. Loaded only when a chart or a page is asked for. Start with
 * {@link leat.answer.chart.Chart}.
 *
 * <p>Neighbours: quantity.
 */
package leat.answer.chart;
