/**
 * What a number means on its way in and out. These are the units a design may be written in, and the kinds of quantity
 * an answer is made of. Start with {@link org.orbwright.quantity.Describe}, which states both beside the number itself.
 * Everything inside the service works in millimetres and radians. These few types are all that is known about units.
 *
 * <p><b>One description for each number.</b> Every component of a document or an answer carries {@code @Describe}:
 * words, quantity, example, and whether it may be left out. The {@code api} derives the contract's descriptions, units
 * and bounds from it, and the conversion and rounding of every answer. So a number's unit is stated once, beside the
 * number. The core stays free of JSON and OpenAPI. That is why this small package lies below all others.
 *
 * <p><b>Rounding.</b> A number is rounded once, on its way out. {@link org.orbwright.quantity.Quantity} says how many
 * decimals an answer keeps. Only limits and proofs are rounded before, to the side on which they hold
 * ({@link org.orbwright.quantity.Rounding}).
 *
 * <p><b>Numbers of panels, corners and seams.</b> Inside they are places in lists, from 0. Outside they are numbers,
 * from 1. {@code Quantity.NUMBER} numbers answers; {@link org.orbwright.quantity.Numbering} numbers requests, texts and
 * pictures. No other class adds or takes away 1 for these.
 *
 * <p><b>Fractions of an inch</b> are the nearest sixty-fourth with the signed rest in thousandths. A rest of up to
 * 1/128 in that nobody sees would open a joint.
 */
package org.orbwright.quantity;
