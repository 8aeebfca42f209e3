/**
 * Single numbers and tables of a design's sheet, for spreadsheets. Here are a design written as a handful of texts, and
 * the names of what may be asked of it. Start with {@link org.orbwright.cell.CellDesign} and
 * {@link org.orbwright.cell.Cell}.
 *
 * <p><b>A cell is looked up in the JSON of the whole sheet.</b> So a spreadsheet gets the very digits that
 * {@code /v1/sheet} has. A sheet costs less than the request. A cell says what it depends on
 * ({@link org.orbwright.cell.Inputs}), and the rest may be left out.
 *
 * <p><b>Bands in a text</b> are a small grammar ({@link org.orbwright.cell.WrittenBands}). It refuses what it cannot
 * take apart: a wood's name there has no comma and no number.
 */
package org.orbwright.cell;
