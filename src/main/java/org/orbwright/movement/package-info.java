/**
 * Movement: how much moisture the stock and the home hold, how far every band moves between them, and what the joints
 * and the finished surface have to take. Start with {@link org.orbwright.movement.MovementCalculator}.
 */
package org.orbwright.movement;
