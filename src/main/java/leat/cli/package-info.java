/**
 * What every command shares: flags, the call with its plan, help, the run with its exit code,
 * output to file or terminal, rows in and out. Follows the contract of DEVELOPERS.md. Start with
 * {@link leat.cli.Run} and {@link leat.cli.Command}.
 *
 * <p>Neighbours: answer, html, numeric, plan, quantity.
 */
package leat.cli;
