/**
 * What goes to the bench on paper: {@link org.orbwright.paper.ShopSheetCalculator} puts the answers of the capabilities
 * into the order of the work, and {@link org.orbwright.paper.PdfWriter} and {@link org.orbwright.paper.HtmlWriter}
 * write it down. {@link org.orbwright.paper.TextWriter} writes a sheet for a terminal. Nothing is calculated here that
 * another package answers.
 */
package org.orbwright.paper;
