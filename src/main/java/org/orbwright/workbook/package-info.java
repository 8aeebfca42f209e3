/**
 * The ready-made workbook whose cells ask the service. The parts of both files lie among the resources as they are
 * handed out, since no library was found that writes OpenDocument and Office Open XML with a chart. A test holds them
 * alike, cell by cell. The values beside the formulas are those of the service for the design that stands in the cells.
 * Start with {@link org.orbwright.workbook.Workbook}.
 */
package org.orbwright.workbook;
