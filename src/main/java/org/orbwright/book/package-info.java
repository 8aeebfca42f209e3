/**
 * A whole build as files with speaking names, for a shop whose programs exchange files and not requests. Start with
 * {@link org.orbwright.book.BuildBook}. Each file is what its own address answers; the JSON and the lists come from the
 * edge, which alone knows how they are written.
 */
package org.orbwright.book;
