/**
 * Bodies: a segment, a bevelled panel, the glued-up solid, the finished sphere, a mounting disc and a pocket as closed
 * meshes of triangles. Start with {@link org.orbwright.body.BodyCalculator}, which makes them, and with
 * {@link org.orbwright.body.WoodComplex}.
 *
 * <p>{@link org.orbwright.body.StlWriter}, {@link org.orbwright.body.ObjWriter},
 * {@link org.orbwright.body.ThreeMfWriter} and {@link org.orbwright.body.GlbWriter} write bodies.
 *
 * <p><b>Convex pieces.</b> Every band of every segment is a convex piece of wood
 * ({@link org.orbwright.body.WoodCutter}). Where two pieces meet, each side's face is split by the other side's planes.
 * Corners of either are put into the edges of both. What two pieces of one body have in common is left out. So flat
 * bodies are exact, and woods fit together without gaps.
 *
 * <p><b>The sphere cuts every flat face by itself.</b> Neighbours share the face, so they share its arc. A part of the
 * sphere has only arcs for its rim. Seen from the centre it lies as simply as a polygon
 * ({@link org.orbwright.body.PatchMesher}). With no edge longer than {@code sqrt(3 d (2 R - d))} no triangle lies
 * deeper than {@code d}.
 *
 * <p><b>Woods that touch along an edge</b> (chevrons at a corner) get an edge each, with a point of its own in the
 * middle. By numbers every mesh is a closed surface. STL has no numbers, so there such an edge has four triangles.
 *
 * <p><b>3MF</b> has one object that is built, and the woods are its components, as the core specification has it.
 * PrusaSlicer 2.5 takes them apart, in their places. It would keep a single list of triangles together (from memory).
 *
 * <p><b>3MF is written through</b> {@link org.orbwright.xml.Xml}. That took 1.5 times as long as adding up strings, and
 * holds no second copy. It was 0.5 s against 0.34 s for 80,000 triangles on two busy cores.
 *
 * <p><b>Numbers of a body</b> state the mesh's volume beside the closed form's. That tells a caller what the deviation
 * costs.
 */
package org.orbwright.body;
