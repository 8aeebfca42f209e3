package org.orbwright.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.orbwright.solid.Solid;

/**
 * Spheres of a design that are alike.
 *
 * @param set which segments they are made from
 * @param count how many there are
 * @param panels the set that each panel is made from, in the order of the solid's faces
 */
public record SphereKind(SphereSet set, int count, List<BandSet> panels) {
    public SphereKind {
        panels = List.copyOf(panels);
    }

    /** Spheres all of whose panels are of one set. */
    static SphereKind of(BandSet set, int count, Solid solid) {
        return new SphereKind(
                set == BandSet.UPRIGHT ? SphereSet.UPRIGHT : SphereSet.INVERTED,
                count,
                Collections.nCopies(solid.faces().size(), set));
    }

    /** Spheres with these panels inverted. */
    static SphereKind mixed(Set<Integer> inverted, int count, Solid solid) {
        List<BandSet> panels = new ArrayList<>();
        for (int face = 0; face < solid.faces().size(); face++) {
            panels.add(inverted.contains(face) ? BandSet.INVERTED : BandSet.UPRIGHT);
        }
        return new SphereKind(SphereSet.MIXED, count, panels);
    }

    /** How many panels of a face kind are made from a set. */
    public int panelsOf(Solid solid, String face, BandSet wanted) {
        int count = 0;
        for (int i = 0; i < panels.size(); i++) {
            count += panels.get(i) == wanted && solid.faces().get(i).kind().equals(face) ? 1 : 0;
        }
        return count;
    }

    /** Places of the panels that are made from inverted segments. */
    public List<Integer> inverted() {
        List<Integer> inverted = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            if (panels.get(i) == BandSet.INVERTED) {
                inverted.add(i);
            }
        }
        return inverted;
    }
}
