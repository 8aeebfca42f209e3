/**
 * What may stand behind the question mark of an address. Start with {@link org.orbwright.api.query.Query}.
 *
 * <p><b>No query parameter is passed over.</b> A misspelt one would be a silent default.
 * {@link org.orbwright.api.query.DeclaredQuery} refuses those that an address does not declare, and those that are
 * stated twice.
 *
 * <p><b>What means nothing beside the rest</b> is refused where it is read. Examples are {@code width} without PNG,
 * {@code set} of the full solid, and {@code deviation} of a pocket with sides.
 *
 * <p><b>{@code format} goes before Accept</b>, since many shop tools cannot set a header
 * ({@link org.orbwright.api.query.Format}).
 */
package org.orbwright.api.query;
