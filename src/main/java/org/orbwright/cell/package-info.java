/**
 * Single numbers and tables of a design's sheet, for spreadsheets: a design written as a handful of texts, and the
 * names of what may be asked of it. Start with {@link org.orbwright.cell.CellDesign} and
 * {@link org.orbwright.cell.Cell}.
 */
package org.orbwright.cell;
