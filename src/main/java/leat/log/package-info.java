/**
 * A logger's rows to litres, days and events: what the sensors say.
 *
 * <p>Follows sheet log.md and its check values log-*.csv. Depends on {@link leat.numeric}, on the
 * sender of {@link leat.level} and on {@code java.time} values only; files, columns and words are
 * the command's. One pass over the rows; memory grows with days and events, never with rows.
 *
 * <p>The way of a row: {@link leat.log.LogTimes} reads its time, {@link leat.log.LogPass} takes it
 * in; it is put in order (two hours), its rest step waits for the hour that follows, then the
 * judges see it. Start with {@link leat.log.LogPass}. Volumes are in m3, times in milliseconds of
 * Unix time, EC in mS/cm.
 *
 * <p>Neighbours: level, numeric.
 */
package leat.log;
