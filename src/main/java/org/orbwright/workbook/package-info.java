/**
 * The ready-made workbook whose cells ask the service. Start with {@link org.orbwright.workbook.Workbook}.
 *
 * <p><b>Resources, and no library.</b> The parts of both files lie among the resources as XML that is filled in. No
 * library was found that writes OpenDocument and Office Open XML with a chart. {@code WorkbookTest} holds both files
 * alike, cell by cell. Change a cell in both.
 *
 * <p><b>Stored values.</b> The values beside the formulas are the service's own answers for the design in the cells
 * ({@link org.orbwright.workbook.Contents}), since previews do not calculate. Calc evaluates functions that fetch as
 * soon as it opens a file. So each formula falls back to the stored answer while the query is the example's.
 */
package org.orbwright.workbook;
