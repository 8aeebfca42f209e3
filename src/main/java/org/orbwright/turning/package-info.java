/**
 * The work on the lathe: how the masses of its panels lie about the axis.
 * {@link org.orbwright.turning.BalanceCalculator} is the place to start.
 */
package org.orbwright.turning;
