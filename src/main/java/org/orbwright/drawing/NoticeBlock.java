package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.orbwright.notice.Notice;

/** The STOPs of a drawing in white letters on a block of ink above it. */
final class NoticeBlock {
    /** Lines that are shown, so that no picture grows without bounds; the description holds all of them. */
    private static final int MOST_LINES = 22;
    /** Room for letters, as a share of the width: they are bold, and so a little wider than is reckoned with. */
    private static final double ROOM = 0.88;

    private static final double INDENT = 0.03;
    /** Between the lines, in letters. */
    private static final double SPACING = 1.35;

    private NoticeBlock() {}

    /** The drawing below its STOPs. */
    static Drawing above(Drawing drawing, List<Notice> notices) {
        double width = drawing.width();
        double letters = Legend.letters(width);
        List<String> lines = lines(Notice.stops(notices), ROOM * width, letters);
        double height = lines.isEmpty() ? 0 : letters * (SPACING * lines.size() + 1);
        List<Mark> marks = new ArrayList<>();
        if (!lines.isEmpty()) {
            marks.add(new Ink(new Box(0, 0, width, height).path()));
        }
        for (int i = 0; i < lines.size(); i++) {
            double y = letters * (SPACING * (i + 1) + 0.15);
            marks.add(new Label(INDENT * width, y, letters, Anchor.START, lines.get(i), Letters.REVERSED));
        }
        drawing.marks().forEach(mark -> marks.add(mark.lowered(height)));
        String description = Stream.concat(notices.stream().map(Notice::line), Stream.of(drawing.description()))
                .collect(Collectors.joining(" "));
        return new Drawing(drawing.title(), description, width, drawing.height() + height, drawing.species(), marks);
    }

    private static List<String> lines(List<Notice> stops, double room, double letters) {
        List<String> lines = stops.stream()
                .flatMap(stop -> Lettering.wrap(stop.line(), room, letters).stream())
                .toList();
        if (lines.size() <= MOST_LINES) {
            return lines;
        }
        List<String> shown = new ArrayList<>(lines.subList(0, MOST_LINES - 1));
        shown.add("... There are " + stops.size() + " STOPs. The description of this picture has all of them.");
        return shown;
    }
}
