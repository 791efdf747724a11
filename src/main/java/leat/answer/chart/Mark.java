package leat.answer.chart;

/**
 * A limit or a moment: a line across the chart with a word on it.
 *
 * @param label what it is
 * @param value where, in the base unit of its axis
 * @param across whether it lies at a value of y, over the whole width
 */
public record Mark(String label, double value, boolean across) {}
