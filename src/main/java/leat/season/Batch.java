package leat.season;

import java.time.LocalDate;

/**
 * One sowing with its dates.
 *
 * @param number counted from 1 over the kept batches, those without a plant too
 * @param sow sowing
 * @param transplant first day in the pot
 * @param harvest the day it is cut: it drinks no more
 * @param free the first day on which the pot may take another
 * @param plants pots it takes
 * @param seeds seeds, enough on average
 * @param seeds90 seeds, enough nine times of ten
 */
public record Batch(
    int number,
    LocalDate sow,
    LocalDate transplant,
    LocalDate harvest,
    LocalDate free,
    int plants,
    int seeds,
    int seeds90) {}
