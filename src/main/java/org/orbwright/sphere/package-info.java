/**
 * The sphere that comes out of a solid: sizes, removal, wall, land and holding. Start with
 * {@link org.orbwright.sphere.SphereCalculator}.
 */
package org.orbwright.sphere;
