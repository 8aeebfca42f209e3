package org.orbwright.solid;

import java.util.Map;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which panels of a sphere are made from the inverted set of segments when both sets are shared out evenly over it.
 *
 * <p>The rule, each step choosing among what the step before leaves:
 *
 * <ol>
 *   <li>Half of the panels of every face kind are inverted. Every kind of the catalogue has an even number of faces.
 *   <li>As few seams as possible join two panels of the same set.
 *   <li>The normals of the inverted panels, each as long as its face is large, add up to the shortest vector. The work
 *       is then nearest to balance.
 *   <li>The first panel is upright. A walk leads from it to the panels nearest to those it has passed, the lower number
 *       first among equals. The choice that inverts a panel earlier on that walk is taken.
 * </ol>
 *
 * <p>The number of like seams is the fewest for all 31 solids. The corners prove it for 26 of them: at a corner where
 * an odd number of faces meet, at least one seam is between two of the same set. Searches prove it for the
 * cuboctahedron, rhombicuboctahedron, truncated cuboctahedron, icosidodecahedron and rhombicosidodecahedron.
 *
 * <p>Steps 3 and 4 hold for 27 solids, for which the search looks at every choice that could be better. It stops early
 * for the four below:
 *
 * <ul>
 *   <li>Rhombicosidodecahedron and truncated icosidodecahedron: a search without a limit ended with the same panels.
 *   <li>Snub dodecahedron and pentagonal hexecontahedron: the vector is the shortest found, not proved to be shortest.
 * </ul>
 */
public final class PanelMix {
    private static final Map<String, SortedSet<Integer>> KNOWN = new ConcurrentHashMap<>();

    private PanelMix() {}

    /**
     * Numbers of the inverted panels of a solid of the catalogue, in rising order. Searched for once for each solid.
     */
    public static SortedSet<Integer> inverted(Solid solid) {
        return KNOWN.computeIfAbsent(solid.name(), name -> PanelMixSearch.inverted(solid));
    }
}
