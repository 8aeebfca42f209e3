/**
 * Tips and inlays. Which tips of segments break most easily at the saw. The hole that chipped tips leave at a panel's
 * centre, the plug that hides it, and how a chipped segment is cut again. Discs or polygons that are set into panels so
 * that they survive the turning. Start with {@link org.orbwright.inlay.InlayCalculator},
 * {@link org.orbwright.inlay.TipCalculator} and {@link org.orbwright.inlay.ChipCalculator}.
 * {@link org.orbwright.jig.TipCut} tells where the tip lies in each cut.
 *
 * <p>Tips are ordered by the length of their grain, and by nothing else: the table of woods has no strength.
 */
package org.orbwright.inlay;
