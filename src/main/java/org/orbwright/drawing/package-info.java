/**
 * Pictures: the flat panel, the sphere, the survival of the bands, the section through the wood, boards, set-ups of the
 * saw and nets. Start with {@link org.orbwright.drawing.SphereDrawing}, a picture, and with
 * {@link org.orbwright.drawing.SvgWriter} and {@link org.orbwright.drawing.DxfWriter}, which write.
 *
 * <p>A drawing is made of outlines, lines and labels in millimetres ({@link org.orbwright.drawing.Drawing}).
 * {@link org.orbwright.drawing.SvgWriter} writes it as SVG 1.1 and {@link org.orbwright.drawing.PngRenderer} as PNG.
 * Outlines ({@link org.orbwright.drawing.Outline}) are for machines: {@link org.orbwright.drawing.DxfWriter} and
 * {@link org.orbwright.drawing.CutWriter} write them. Every drawing tells woods apart by tone, hatch and label, never
 * by colour alone. A lit sphere, by which woods are chosen, goes without hatches.
 *
 * <p><b>DXF</b> is release 2000 in ASCII with the least that ezdxf's documentation asks for. That needs no library.
 * Release 12 comes on request. It has no unit. {@code $INSUNITS} is written all the same. The unit also stands in the
 * first comment and in a text on the layer NOTE. Closed polylines are cut along, with a bulge where an arc closes them.
 * Single lines are LINE, and circles are true ones.
 *
 * <p><b>STEP is not answered.</b> No library that both makes and checks a boundary runs on the JVM alone. JSDAI writes
 * STEP's entities, and computes no geometry. A boundary of planes, spheres and cylinders written by hand would be
 * trusted more than it was tested.
 *
 * <p><b>Marks on a blank</b> are full lines with the far side of each kerf dashed, as both sides are wanted wood. A
 * quarter of each ring gauge is printed where that saves a page. It is turned about two lines at right angles.
 *
 * <p><b>Pictures of dots are drawn in strips</b> ({@link org.orbwright.drawing.StripImage}), so that the largest take
 * little more memory than their files. They wait for memory, which is reckoned before they are drawn.
 */
package org.orbwright.drawing;
