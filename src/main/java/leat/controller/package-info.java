/**
 * A C header for a tower's controller: constant tables and small functions, C99 without a library.
 * Text only, made from the trade's records: {@link leat.controller.TowerHeader} puts the pieces
 * together, {@link leat.controller.SenderTable}, {@link leat.controller.CapTable}, {@link
 * leat.controller.TimingTable} and {@link leat.controller.MeterFactors} are the pieces.
 *
 * <p>Neighbours: energy, level, numeric, quantity.
 */
package leat.controller;
