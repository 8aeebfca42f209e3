/**
 * The same work without HTTP: commands for a terminal and for shards of sweeps. Start with
 * {@link org.orbwright.api.command.Main}.
 *
 * <p><b>{@code batch}</b> answers lines that are too many for one machine.
 * {@link org.orbwright.api.command.BatchCommand} says what its exit codes mean. Standard input is tested on the image,
 * since Quarkus puts its own in place of it in tests.
 */
package org.orbwright.api.command;
