/**
 * The document: one JSON file that holds a whole build. The design proper stands at its top. What one address needs
 * beyond that stands in a section, which has the name of the last part of that address. Every address reads the whole
 * document and computes from the design and from its own section. So one file serves them all, and what two answers
 * rest on cannot differ. Start with {@link org.orbwright.document.Document} and {@link org.orbwright.document.Section}.
 *
 * <p><b>Where sections stand.</b> A section's record stands in the package of its capability. The sections of sweeps
 * and of paper stand here, since those two packages are built on the answers to a document. A calculator takes the
 * sections that it uses, each filled in by its own {@code filled(...)}.
 *
 * <p><b>Checks.</b> The whole document is checked alike at every address. Bean Validation stands on {@code Document}
 * and on records named {@code ...Request} alone. Sweeps read it too, so that varied values keep the same bounds. A
 * calculator asks for a section that it cannot do without by {@code Section.required}. A section that is missing is
 * refused with {@code MISSING}. Pointers of violations and findings are those of the document.
 */
package org.orbwright.document;
