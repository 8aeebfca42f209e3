package org.orbwright.design;

import org.orbwright.quantity.Describe;

@Describe(
        "Which sets of segments the spheres are made from, where sawing gives two. TWINS: half of the copies from each"
                + " set, of an odd number the larger half upright. UPRIGHT or INVERTED: all of them from one set. MIXED: panels"
                + " of both sets shared out evenly over each sphere, like panels kept apart. BY_PANEL: the panels listed in"
                + " invertedPanels are inverted. TWINS if left out. Tilted bands, and bands that read the same from both edges,"
                + " give one set: their panels are the same whatever is stated here.")
public enum Sets {
    /** Half of the copies from each set; of an odd number the larger half upright. */
    TWINS,
    /** All spheres from upright segments. */
    UPRIGHT,
    /** All spheres from inverted segments. */
    INVERTED,
    /** Half of the panels of each sphere from each set, like panels kept apart. */
    MIXED,
    /** Panels are inverted as they are listed. */
    BY_PANEL
}
