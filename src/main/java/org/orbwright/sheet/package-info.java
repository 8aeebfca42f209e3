/**
 * The answers: one part of a design each, or all of them at once, with what the design gets wrong and the standing
 * cautions. Start with {@link org.orbwright.sheet.SheetCalculator}, {@link org.orbwright.sheet.Work} and
 * {@link org.orbwright.sheet.Answer}.
 *
 * <p><b>One answer for all addresses.</b> {@link org.orbwright.sheet.Work} adds one part after the other, with its
 * findings, cautions and filled-in section. {@link org.orbwright.sheet.SheetCalculator} says which parts an address
 * has. {@code Answer.document} repeats what was used, so that it can be posted again.
 *
 * <p><b>Parts that wait.</b> A calculator refuses what it cannot do without with {@code MISSING}. For {@code /v1/sheet}
 * and {@code /v1/build}, {@code Work.where} turns that refusal into the note {@code PART_LEFT_OUT}.
 *
 * <p><b>Limits are rounded to the side on which they hold</b> in sentences ({@code sayAtLeast}, {@code sayAtMost}).
 * Findings allow for what answers are rounded to. So a limit that was stated can be followed.
 */
package org.orbwright.sheet;
