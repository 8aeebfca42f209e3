/**
 * Gluing up: strips to blanks, segments to panels, panels to two caps and the caps to the solid. Glue and open time are
 * here, and the nets in which a cap's panels are taped together. Start with
 * {@link org.orbwright.assembly.AssemblyCalculator}.
 *
 * <p><b>Caps</b> are divided by the height of the faces' poles ({@link org.orbwright.assembly.Heights}). So both caps
 * always hang together. The seam between them is one loop, and no seam faces the wrong way.
 * {@link org.orbwright.assembly.CapFinder} chooses the axis. Every solid has one along which no seam slides. A
 * tetrahedron has two caps of two panels.
 *
 * <p><b>Area of a seam.</b> Its face is a trapezium, as its ends point to the centre
 * ({@link org.orbwright.assembly.SeamSizes}). Joints inside a panel are rectangles: panels are bevelled after they are
 * glued.
 *
 * <p><b>Open time.</b> What joins at once stays in one stage. That is a panel with all its neighbours, the last segment
 * of a ring, a straight joint, or the loop between two caps. {@link org.orbwright.assembly.SolidStages} says what is
 * done where the loop does not fit.
 *
 * <p><b>Nets</b> are laid in the order of gluing, each cap by itself ({@link org.orbwright.assembly.Unfolding}). All
 * caps and all whole solids lie flat in one piece. This is tested for lands up to a thousand edges. Where the stages
 * glue the second cap's panels one by one, its net says so ({@code followsStages}).
 */
package org.orbwright.assembly;
