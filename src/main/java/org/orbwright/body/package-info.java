/**
 * Bodies: a segment, a bevelled panel, the glued-up solid, the finished sphere, a mounting disc and a pocket as closed
 * meshes of triangles. {@link org.orbwright.body.BodyCalculator} makes them. Every band of every segment is a convex
 * piece of wood ({@link org.orbwright.body.WoodCutter}); {@link org.orbwright.body.WoodComplex} joins the pieces so
 * that neighbours share their corners, cuts them to the sphere, and leaves out what lies inside a body of one wood.
 * {@link org.orbwright.body.StlWriter}, {@link org.orbwright.body.ObjWriter}, {@link org.orbwright.body.ThreeMfWriter}
 * and {@link org.orbwright.body.GlbWriter} write them.
 */
package org.orbwright.body;
