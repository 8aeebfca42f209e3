/**
 * From the boards on the rack to the last strip: what is left of a board once it is flat, the ways to crosscut and rip
 * it, and the plan that costs least, with a bound that says how good it is. Start with
 * {@link org.orbwright.stock.StockCalculator}; the search is in {@link org.orbwright.stock.CuttingPlanner}.
 */
package org.orbwright.stock;
