/**
 * Sweeps over documents: one or two numbers of a document are varied, and chosen numbers of each sheet are read off.
 * Fields and answers are named by JSON pointers (RFC 6901), which are the same as in the JSON of a document and of a
 * sheet. Start with {@link org.orbwright.explore.Sweep}.
 *
 * <p><b>Varied values keep the bounds of written ones.</b> {@link org.orbwright.explore.FieldBounds} reads them from
 * the records' Bean Validation. It is the one class here that may know of it.
 */
package org.orbwright.explore;
