package leat.season;

/**
 * Days in a row on which the owner is away.
 *
 * @param first the first, counted from 0
 * @param last the last, included
 */
public record AwaySpan(int first, int last) {}
