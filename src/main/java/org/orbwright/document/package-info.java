/**
 * The document: one JSON file that holds a whole build. The design proper stands at its top, and what one address needs
 * beyond that stands in a section which bears the name of the last part of that address. Every address reads the whole
 * document and computes from the design and from its own section. So one file serves them all, and what two answers
 * rest on cannot differ. Start with {@link org.orbwright.document.Document}.
 *
 * <p>A section's record stands in the package of its capability; the sections of sweeps and of paper stand here, since
 * those two packages are built on the answers to a document.
 */
package org.orbwright.document;
