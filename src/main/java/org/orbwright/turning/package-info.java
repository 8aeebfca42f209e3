/**
 * The work on the lathe: how it is held, how it becomes a sphere, what it weighs and what pulls at it, sanding, finish
 * and time. {@link org.orbwright.turning.TurningCalculator} and {@link org.orbwright.turning.BalanceCalculator} are the
 * places to start.
 */
package org.orbwright.turning;
