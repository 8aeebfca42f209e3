/**
 * What a number means on its way in and out: the units a design may be written in, the kinds of quantity an answer is
 * made of, and {@link org.orbwright.quantity.Describe}, which states both beside the number itself. Everything inside
 * the service works in millimetres and radians; these few types are all that is known about units.
 */
package org.orbwright.quantity;
