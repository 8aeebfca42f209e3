/**
 * The ready-made workbook whose cells ask the service: one model, written as OpenDocument (ISO/IEC 26300:2015) and as
 * Office Open XML (ISO/IEC 29500:2016). Start with {@link org.orbwright.workbook.DesignBook}.
 */
package org.orbwright.workbook;
