package org.orbwright.drawing;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.orbwright.design.Design;

/** The colours in which pictures show the woods of a design, for other forms that have colours. */
public final class WoodColours {
    private static final String OTHER = "#c8b090";

    private WoodColours() {}

    /** A colour for each name, as {@code #rrggbb}: that of the wood, or a plain one for all else. */
    public static List<String> of(Design design, List<String> names) {
        Legend legend = new Legend(design);
        Map<String, String> colours = legend.species().stream()
                .collect(Collectors.toMap(wood -> wood, wood -> Tones.fill(legend.tone(wood))));
        return names.stream().map(name -> colours.getOrDefault(name, OTHER)).toList();
    }
}
