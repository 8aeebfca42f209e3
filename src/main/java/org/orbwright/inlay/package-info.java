/**
 * Tips and inlays: the hole that chipped tips leave at a panel's centre and what covers it, and discs or polygons set
 * into the panels so that they survive the turning. Start with {@link org.orbwright.inlay.InlayCalculator}.
 */
package org.orbwright.inlay;
