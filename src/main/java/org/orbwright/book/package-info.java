/**
 * A whole build as files with speaking names, for a shop whose programs exchange files and not requests. Start with
 * {@link org.orbwright.book.BuildBook}.
 *
 * <p>The book is a list of files that are made as they are written. Each file is what its own address answers, with the
 * STOPs of the whole build. {@code BuildFiles} in {@code api} adds the JSON and the lists. It alone knows how they are
 * written.
 */
package org.orbwright.book;
