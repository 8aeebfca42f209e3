/**
 * Setting up the saw: every mitre and tilt as a gauge block stack and as a rise over a run, the trial cuts that prove
 * it, and the bevel cut that leaves the land. Start with {@link org.orbwright.jig.JigCalculator}.
 */
package org.orbwright.jig;
