/**
 * Movement: how much moisture the stock and the home hold, and how far every band moves between them. What the joints
 * and the finished surface have to take follows from it. Start with {@link org.orbwright.movement.MovementCalculator}.
 *
 * <p><b>Every strip moves as if it lay free.</b> What neighbours would have to hold is no stress here. It is answered
 * as the angle by which a panel no longer closes, and as steps along glue lines.
 *
 * <p><b>Tilted bands need no rule of their own</b>: a segment's points are shifted square to its bands
 * ({@link org.orbwright.movement.MovedSegment}).
 *
 * <p><b>Grain</b> is the angle between growth rings and the strip's width. Between radial and tangential the
 * coefficients are mixed by the squares of cosine and sine, without shear.
 */
package org.orbwright.movement;
