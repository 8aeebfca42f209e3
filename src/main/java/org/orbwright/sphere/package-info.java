/**
 * The sphere that comes out of a solid: sizes, removal, wall, land and holding. Start with
 * {@link org.orbwright.sphere.SphereCalculator}.
 *
 * <p><b>A sphere larger than the seams allow</b> is answered up to the larger of the seam radius and the smallest face
 * distance. Between face distance and seam radius it has the finding {@code FLATS_LEFT}. Where a land keeps the seam
 * radius below the face distance it has {@code SEAMS_OPEN}. Beyond both there is no wood at the middle of the edges,
 * and the design is refused (422).
 */
package org.orbwright.sphere;
