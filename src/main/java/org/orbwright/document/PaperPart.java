package org.orbwright.document;

import org.orbwright.quantity.Describe;

@Describe("A part of the shop sheet, in the order of the work.")
public enum PaperPart {
    /** The design in brief, with its pictures. */
    SUMMARY,
    /** What is seen of each band. */
    BANDS,
    /** Movement of the wood. */
    MOVEMENT,
    /** What is bought, and how each board is cut. */
    BOARDS,
    /** The strips. */
    STRIPS,
    /** The blanks. */
    BLANKS,
    /** Crosscuts and the closing test. */
    SEGMENTS,
    /** A table to write trials of the saw into. */
    TRIALS,
    /** Segments to panels. */
    PANELS,
    /** The bevels. */
    BEVELS,
    /** Tips, inlays and motifs. */
    INLAYS,
    /** Panels to the solid. */
    SOLID,
    /** Balance on the lathe. */
    BALANCE,
    /** Mounting, roughing and cups. */
    TURNING,
    /** Sanding and finishing. */
    FINISH,
    /** Full-size templates. */
    TEMPLATES
}
