/**
 * Gluing up: strips to blanks, segments to panels, panels to two caps and the caps to the solid, with glue and open
 * time, and the flat layout in which panels are taped together. Start with
 * {@link org.orbwright.assembly.AssemblyCalculator}.
 */
package org.orbwright.assembly;
