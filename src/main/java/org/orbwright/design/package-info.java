/**
 * The design: what a caller writes ({@link org.orbwright.design.DesignRequest}), and what it means once it is checked
 * against the solid and brought to millimetres and radians ({@link org.orbwright.design.Design}). Start with
 * {@link org.orbwright.design.Design#of}.
 */
package org.orbwright.design;
