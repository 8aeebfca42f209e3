/**
 * Setting up the saw: every mitre and tilt as a gauge block stack and as a rise over a run. With it come the trial cuts
 * that prove a setting, and the bevel cut that leaves the land. Start with {@link org.orbwright.jig.JigCalculator}.
 *
 * <p><b>From which line.</b> A setting names the line that it is measured from: square to the blade, the blade, an
 * upright or the table. Of an angle and its complement the one of at most 45 degrees is measured better. Its stack has
 * the smaller error, and its rise is no longer than the run.
 */
package org.orbwright.jig;
