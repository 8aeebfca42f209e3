/**
 * The work on the lathe: how it is held, how it becomes a sphere, what it weighs and what pulls at it. Sanding, finish,
 * time and a cutter's way over the sphere are here too. Start with {@link org.orbwright.turning.TurningCalculator},
 * {@link org.orbwright.turning.BalanceCalculator} and {@link org.orbwright.turning.PathCalculator}.
 *
 * <p><b>Speeds</b> are limits with what they rest on. Nothing in this project calls one safe, and nothing should.
 *
 * <p><b>A ring on a corner or an edge</b> rests on the highest wood in its circle, which is on panels' rims. Screws
 * bite from the lowest. The default ring is the largest on which all wood stands clear of the sphere.
 *
 * <p><b>Balance</b> answers the first moment alone, and no couple. {@link org.orbwright.band.SegmentMoment} has its
 * closed form.
 *
 * <p><b>Tool paths.</b> {@link org.orbwright.turning.RingPlanner} says where a half begins, and why. Between rings the
 * depth straight down has a closed form: a cutter at the same place that rests on the sphere of the pass before. Where
 * it exceeds a pass, the cutter goes around in between. The ridge between two rings has a closed form for every end of
 * a cutter.
 *
 * <p><b>A flat end overlaps where rings begin</b>, by twice the cutter's undersize. Rings that only touched would leave
 * a fin with a cutter a few hundredths small. The fin would stand through all of the stock.
 *
 * <p><b>The rotary axis goes to 0 above the work</b>, and is wound back there. Otherwise a second run would unwind it
 * with the cutter lowered.
 *
 * <p><b>What does not suffice is refused</b>, not found: holders, discs and limits of the machine. All moves are
 * checked.
 *
 * <p><b>Programs for controls</b> differ in words, never in the way. {@link org.orbwright.turning.ControlRequest} names
 * the source of each word. The defaults are what most controls take:
 *
 * <ul>
 *   <li>A turn is 360 degrees more (G91), since a table that wraps does not move for an absolute 360.
 *   <li>A turn has inverse-time feed (G93), since controls differ in what a feed in degrees means. Some take F after
 *       G93 for seconds, which the head says.
 *   <li>I and J follow G91.1. A control that refuses it stops. One that took I and J absolutely would cut into the
 *       sphere.
 *   <li>Straight moves around a circle are the sides of a polygon outside it
 *       ({@link org.orbwright.turning.RingSegments}).
 * </ul>
 *
 * <p><b>How programs are tested.</b> The tests read them as a control does that parks anywhere, demands a waited-for
 * spindle and ends with A where it began. They run them over a section of stock, discs, cutter and holder.
 * {@code src/test/cad/rs274.sh} lets LinuxCNC's own interpreter run every variant.
 */
package org.orbwright.turning;
