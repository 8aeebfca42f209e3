/**
 * Single values and tables for spreadsheets, and the workbook. Start with {@link org.orbwright.api.cells.CellResource}.
 *
 * <p><b>The query is read here</b> ({@link org.orbwright.api.cells.CellQuery}) and not by the framework, which would
 * end a parameter at a semicolon. Semicolons separate bands.
 *
 * <p><b>What is wrong</b> can be told as text with status 200 ({@link org.orbwright.api.cells.CellErrors}).
 * Spreadsheets hide the text of every other answer.
 */
package org.orbwright.api.cells;
