package org.orbwright.drawing;

import java.util.List;
import org.orbwright.design.Design;

/** What stands below a picture at true size: a scale bar, sentences, lines of measures and the key to the woods. */
final class Caption {
    /** Width of the text as a share of the sheet's. */
    private static final double ROOM = 0.94;

    private Caption() {}

    /**
     * A drawing with its caption below a picture: sentences, then measures on lines of their own. Of the legend's woods
     * those that are drawn have a place in the key. The caption is added to the marks of the picture.
     */
    static Drawing below(
            Design design,
            String title,
            String description,
            double width,
            double bottom,
            String sentences,
            List<String> lines,
            Legend legend,
            List<Mark> marks) {
        double letters = Legend.letters(width);
        marks.addAll(ScaleBar.marks(design.unit(), width, bottom));
        double top = bottom + (ScaleBar.HEIGHT + 0.5) * letters;
        for (List<String> block : List.of(List.of(sentences), lines)) {
            List<String> wrapped = block.stream()
                    .flatMap(line -> Lettering.wrap(line, width * ROOM, letters).stream())
                    .toList();
            marks.addAll(Callout.text(width * (1 - ROOM) / 2, top, letters, Anchor.START, wrapped));
            top += Callout.textHeight(wrapped.size(), letters) + letters / 2;
        }
        Legend shown = legend.drawn(marks);
        double key = top + letters;
        marks.addAll(shown.marks(width, key));
        return new Drawing(title, description, width, key + shown.height(width), shown.species(), marks);
    }
}
