/**
 * The 5 Platonic, 13 Archimedean and 13 Catalan solids with their faces, edges and the outlines of their segments. They
 * are computed once, from exact coordinates or from duality. Start with {@link org.orbwright.solid.SolidCatalogue}.
 *
 * <p><b>Base distance.</b> All 31 solids have a midsphere that touches every edge. In each face kind the foot of the
 * perpendicular from the solid's centre is equally far from every edge. So one base distance, one bevel and one
 * lamination serve a face kind. Every calculator counts on it, and the tests of the solids hold it.
 *
 * <p><b>Half of the panels inverted.</b> The rule by which both sets are shared out over a sphere stands in
 * {@link org.orbwright.solid.PanelMix}.
 */
package org.orbwright.solid;
