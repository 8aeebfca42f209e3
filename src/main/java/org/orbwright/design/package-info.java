/**
 * The design: what a caller writes ({@link org.orbwright.design.DesignRequest}), and what it means once it is checked
 * against the solid and brought to millimetres and radians ({@link org.orbwright.design.Design}). Start with
 * {@link org.orbwright.design.Design#of}.
 *
 * <p><b>What is left out</b> is null in the request. A calculator asks for what it cannot do without by
 * {@code Design.require}, which refuses with {@code MISSING}. So no list says which part of an answer needs which
 * field.
 *
 * <p><b>Sets.</b> {@code Design.spheres()} says panel by panel of what set the spheres are made. Every count, picture
 * and order of gluing follows it. {@code MIXED} inverts half of the panels of each face kind, by the rule in
 * {@link org.orbwright.solid.PanelMix}.
 *
 * <p><b>Every other segment.</b> A lamination may be for the odd or the even segments of a panel. The design then has
 * two panels of one face kind, each with half of the segments. Calculators that add up panels work unchanged. What does
 * not depend on the lamination asks {@code Design.facePanels()}. All faces of a kind list their segments from the same
 * one on. So every other segment has the same hand in each face.
 *
 * <p><b>Chevrons and mirrored segments.</b> A chevron turns every other segment face down, which changes the sign of
 * its band angle ({@code Piece.angle}). {@link org.orbwright.design.Piece} says when a mirrored segment is a piece of
 * its own.
 */
package org.orbwright.design;
