/**
 * leat: {@link leat.Main} starts the one command that was named; {@link leat.Training} loads its
 * classes once for the start archive.
 *
 * <p>Neighbours: cli, command.
 */
package leat;
