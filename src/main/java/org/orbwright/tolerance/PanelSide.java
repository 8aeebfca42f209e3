package org.orbwright.tolerance;

import org.orbwright.quantity.Describe;

@Describe("Where the joints of a panel open: at the RIM where its tip angles are together less than the circle, at the"
        + " TIPS where they are more.")
public enum PanelSide {
    RIM,
    TIPS
}
