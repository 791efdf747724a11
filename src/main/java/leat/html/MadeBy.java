package leat.html;

import java.util.List;

/**
 * How a page came to be.
 *
 * @param title of the page
 * @param command the command line, as one would type it
 * @param lines version, plan and dates
 */
public record MadeBy(String title, String command, List<String> lines) {}
