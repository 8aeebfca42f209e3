/**
 * Diagnosis: from what is measured on test pieces and shells back to the settings that are off, with uncertainties.
 * Start with {@link org.orbwright.diagnosis.DiagnosisCalculator}, whose comment says what can be inferred from what.
 */
package org.orbwright.diagnosis;
