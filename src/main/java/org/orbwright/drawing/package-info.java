/**
 * Pictures: the flat panel, the sphere, the survival of the bands and the section through the wood. A drawing is made
 * of outlines, lines and labels in millimetres ({@link org.orbwright.drawing.Drawing});
 * {@link org.orbwright.drawing.SvgWriter} writes it as SVG 1.1 and {@link org.orbwright.drawing.PngRenderer} as PNG.
 * Outlines ({@link org.orbwright.drawing.Outline}) are for machines: {@link org.orbwright.drawing.DxfWriter} and
 * {@link org.orbwright.drawing.CutWriter} write them. Every drawing tells woods apart by tone, hatch and label, never
 * by colour alone.
 */
package org.orbwright.drawing;
