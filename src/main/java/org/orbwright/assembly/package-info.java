/**
 * Gluing up: strips to blanks, segments to panels, panels to two caps and the caps to the solid, with glue and open
 * time, and the nets in which the panels of a cap are taped together. Start with
 * {@link org.orbwright.assembly.AssemblyCalculator}.
 */
package org.orbwright.assembly;
