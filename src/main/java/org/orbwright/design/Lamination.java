package org.orbwright.design;

import java.util.List;

/**
 * The bands of one face kind's segments.
 *
 * @param index place of the lamination in the request, from 0
 * @param places which of a panel's segments it is for
 * @param bandAngle band angle in radians, -pi/2 to pi/2
 * @param chevron whether every other segment is turned face down
 * @param bands the bands, from the base to the tip
 */
public record Lamination(int index, Places places, double bandAngle, boolean chevron, List<Band> bands) {
    /** Two widths that differ by less than this are one width; a saw is set to a twentieth of a millimetre at best. */
    private static final double SAME_WIDTH = 0.001;

    /** What stands for a lamination that is not known yet: segments without bands. */
    static final Lamination UNKNOWN = new Lamination(0, Places.ALL, 0, false, List.of());

    /** Copies the list of bands. */
    public Lamination {
        bands = List.copyOf(bands);
    }

    /** Whether tilted bands of neighbouring segments lean against each other. */
    public boolean leansBothWays() {
        return chevron && !straight();
    }

    /** Whether the bands run parallel to the base. */
    public boolean straight() {
        return bandAngle == 0;
    }

    /** Width of the glued-up blank, in millimetres. */
    public double width() {
        double width = 0;
        for (Band band : bands) {
            width += band.width();
        }
        return width;
    }

    /**
     * Whether the bands read the same from both edges of the blank, so that upright and inverted segments are alike.
     */
    public boolean palindromic() {
        for (int i = 0, j = bands.size() - 1; i < j; i++, j--) {
            if (!bands.get(i).species().equals(bands.get(j).species())
                    || Math.abs(bands.get(i).width() - bands.get(j).width()) > SAME_WIDTH) {
                return false;
            }
        }
        return true;
    }

    /** Number of sets that sawing gives: two where upright and inverted segments alternate and differ. */
    public int sets() {
        return straight() && !palindromic() ? 2 : 1;
    }

    /** The set that panels are made from where a set is asked for: that one of two, or the only one that there is. */
    public BandSet used(BandSet asked) {
        return sets() == 2 ? asked : BandSet.UPRIGHT;
    }

    /** JSON pointer to this lamination in the request. */
    public String pointer() {
        return "/laminations/" + index;
    }
}
