/**
 * The solids: the 5 Platonic, 13 Archimedean and 13 Catalan polyhedra with their faces, edges and the outlines of their
 * segments, computed once from exact coordinates or from duality. Start with
 * {@link org.orbwright.solid.SolidCatalogue}.
 *
 * <p>All of them have a midsphere that touches every edge, and in each face kind the feet of the perpendiculars from
 * the solid's centre are equally far from every edge. One base distance therefore serves a whole face kind.
 */
package org.orbwright.solid;
