/**
 * An answer as one page of html that stands alone: nothing is fetched, nothing runs in it but its
 * own script, charts and their data are inside. Loaded only when a page is asked for. Start with
 * {@link leat.html.HtmlPage}.
 *
 * <p>Neighbours: answer, quantity.
 */
package leat.html;
