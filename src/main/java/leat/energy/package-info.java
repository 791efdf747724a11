/**
 * Running the pump: timing, energy and money, the least run and the longest rest, relay and pump
 * life, a battery for a power cut, the cable to a low-voltage pump.
 *
 * <p>Follows sheet energy.md and its check values energy-*.csv. Depends on {@link leat.numeric} and
 * {@code java.time} values only; dates and the zone are passed in, no clock is read. Energy is in
 * joules, prices are per joule, charge is in coulombs, life in seconds; what is counted by the day
 * says so in its name.
 *
 * <p>Start with {@link leat.energy.Timing} and {@link leat.energy.Duty} (one timing, one price);
 * then {@link leat.energy.Timetable}, {@link leat.energy.Tariff} and {@link leat.energy.Bill}
 * (timings and prices that change by the clock).
 *
 * <p>Neighbours: numeric.
 */
package leat.energy;
