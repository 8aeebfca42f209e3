/**
 * The answers: one part of a design each, or all of them at once, with what the design gets wrong and the standing
 * cautions. Start with {@link org.orbwright.sheet.SheetCalculator}.
 */
package org.orbwright.sheet;
