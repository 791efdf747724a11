package leat.answer.chart;

/**
 * An event: part of the x axis that is shaded.
 *
 * @param label what happened
 * @param from where it begins
 * @param to where it ends; the same for a moment
 */
public record Span(String label, double from, double to) {}
