/**
 * Calendar files: whole-day events as text of RFC 5545 (iCalendar). {@link
 * leat.season.ical.Calendar} writes, {@link leat.season.ical.Event} is one entry. Knows nothing of
 * the season; depends on leat.numeric and the JDK only. Tests read it back with a calendar library.
 *
 * <p>Neighbours: numeric, the trade.
 */
package leat.season.ical;
