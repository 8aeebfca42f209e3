/**
 * Diagnosis: from what is measured on test pieces and shells back to the settings that are off, with uncertainties.
 * Start with {@link org.orbwright.diagnosis.DiagnosisCalculator}, whose comment says what can be inferred from what,
 * and with {@link org.orbwright.diagnosis.DialInCalculator}.
 *
 * <p><b>Two centres of a shell.</b> {@link org.orbwright.diagnosis.CentreFit} fits one by weighted least squares. It is
 * refused where the faces leave an unknown free. {@link org.orbwright.diagnosis.RoomiestFit} finds the centre of the
 * largest sphere, and which faces decide it. The sphere is judged by the second.
 *
 * <p><b>Measures that tell the same thing</b> are compared, and a contradiction is a finding.
 */
package org.orbwright.diagnosis;
