package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Note;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;

/**
 * Writes outlines as a drawing interchange file in ASCII (Autodesk, DXF Reference). The unit stands in the header
 * variable {@code $INSUNITS}, in a comment at the head and in a text on the layer NOTE; release 12 does not know that
 * variable, and its readers pass over it. Notices are comments at the head, and STOPs are texts on the layer NOTE too,
 * below the outlines.
 */
public final class DxfWriter {
    private static final int INCHES = 1;
    private static final int MILLIMETRES = 4;
    /** Release 12 allows 31 letters in a name. */
    private static final int LONGEST_NAME = 31;
    /** Letters of the note, as a share of the drawing's size. */
    private static final double LETTERS = 0.025;
    /** From one line of text to the next, in letters. */
    private static final double SPACING = 1.6;
    /** Letters of a text before release 2000 (Autodesk, DXF Reference, "Group Code Value Types"). */
    private static final int LONGEST_LINE = 255;

    private final DxfRelease release;
    private final LengthUnit unit;
    private final DxfPairs pairs;
    private final DxfFrame frame;
    private final Map<Layer, String> names = new LinkedHashMap<>();

    private DxfWriter(DxfRelease release, LengthUnit unit) {
        this.release = release;
        this.unit = unit;
        this.pairs = new DxfPairs(release, unit);
        this.frame = new DxfFrame(pairs, release);
    }

    /** The outlines as a file for a release, in a unit; the notices are what it tells whoever opens it. */
    public static String write(Outline outline, DxfRelease release, LengthUnit unit, List<Notice> notices) {
        return new DxfWriter(release, unit).file(outline, notices);
    }

    private String file(Outline outline, List<Notice> notices) {
        OutlineExtent extent = OutlineExtent.of(outline);
        List<Note> notes = notes(outline, extent, Notice.stops(notices));
        outline.shapes().forEach(shape -> name(shape.layer()));
        name(Layer.of(LayerKind.NOTE));
        frame.open(names, extent);
        pairs.section("ENTITIES");
        outline.shapes().forEach(this::shape);
        notes.forEach(this::shape);
        pairs.put(0, "ENDSEC");
        frame.close();
        pairs.put(0, "EOF");
        return head(outline, extent, notices) + pairs;
    }

    /** The title and the STOPs below the outlines, in lines no longer than those are large. */
    private List<Note> notes(Outline outline, OutlineExtent extent, List<Notice> stops) {
        double size = Math.max(extent.width(), extent.height());
        double letters = LETTERS * size;
        List<String> lines = new ArrayList<>();
        lines.add(outline.title() + ", lengths in " + unit.symbol());
        stops.forEach(stop -> lines.addAll(Lettering.wrap(stop.line(), size, letters)));
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            At at = new At(extent.left(), extent.low() - letters * (2 + SPACING * i));
            notes.add(new Note(Layer.of(LayerKind.NOTE), at, letters, lines.get(i)));
        }
        return notes;
    }

    /** It comes first, but names a handle that is free when all else is written. */
    private String head(Outline outline, OutlineExtent extent, List<Notice> notices) {
        DxfPairs head = new DxfPairs(release, unit);
        comment(head, outline.title() + "; lengths in " + unit.symbol());
        notices.forEach(notice -> comment(head, notice.line()));
        head.section("HEADER");
        head.put(9, "$ACADVER");
        head.put(1, release.version());
        head.modern(9, "$HANDSEED");
        head.modern(5, pairs.next());
        head.put(9, "$INSUNITS");
        head.put(70, unit == LengthUnit.MM ? MILLIMETRES : INCHES);
        head.put(9, "$EXTMIN");
        head.point(new At(extent.left(), extent.low()));
        head.put(9, "$EXTMAX");
        head.point(new At(extent.right(), extent.high()));
        head.put(0, "ENDSEC");
        return head.toString();
    }

    private static void comment(DxfPairs head, String words) {
        Notice.wrapped(ascii(words), LONGEST_LINE).forEach(line -> head.put(999, line));
    }

    private void shape(Shape shape) {
        String layer = names.get(shape.layer());
        if (shape instanceof Chain chain) {
            chain(chain, layer);
        } else if (shape instanceof Round round) {
            entity("CIRCLE", layer, "AcDbCircle");
            pairs.point(round.centre());
            pairs.length(40, round.radius());
        } else if (shape instanceof Note note) {
            entity("TEXT", layer, "AcDbText");
            pairs.point(note.at());
            pairs.length(40, note.height());
            pairs.put(1, ascii(note.text()));
            pairs.modern(100, "AcDbText");
        }
    }

    private void chain(Chain chain, String layer) {
        if (chain.points().size() == 2) {
            entity("LINE", layer, "AcDbLine");
            pairs.point(chain.points().get(0));
            pairs.point(11, chain.points().get(1));
            pairs.put(31, "0");
        } else if (release == DxfRelease.R12) {
            polyline(chain, layer);
        } else {
            entity("LWPOLYLINE", layer, "AcDbPolyline");
            pairs.put(90, chain.points().size());
            pairs.put(70, chain.closed() ? 1 : 0);
            chain.points().forEach(at -> pairs.point(10, at));
            bulge(chain);
        }
    }

    /** What release 12 has in place of a light polyline. */
    private void polyline(Chain chain, String layer) {
        entity("POLYLINE", layer, "");
        pairs.put(66, 1);
        pairs.point(new At(0, 0));
        pairs.put(70, chain.closed() ? 1 : 0);
        for (At at : chain.points()) {
            entity("VERTEX", layer, "");
            pairs.point(at);
        }
        bulge(chain);
        entity("SEQEND", layer, "");
    }

    /** It belongs to the point where the arc starts, which is the last. */
    private void bulge(Chain chain) {
        if (chain.bulge() != 0) {
            pairs.number(42, chain.bulge());
        }
    }

    private void entity(String type, String layer, String kind) {
        pairs.put(0, type);
        pairs.handle(5, frame.modelSpace());
        pairs.modern(100, "AcDbEntity");
        pairs.put(8, layer);
        pairs.modern(100, kind);
    }

    /** A name that release 12 allows: capitals, digits and underscores, each once. */
    private void name(Layer layer) {
        if (names.containsKey(layer)) {
            return;
        }
        String wood = layer.wood().toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]+", "_");
        String name = layer.kind() + (wood.isEmpty() ? "" : "_" + wood);
        String cut = name.substring(0, Math.min(name.length(), LONGEST_NAME));
        for (int i = 2; names.containsValue(cut); i++) {
            String end = "_" + i;
            cut = name.substring(0, Math.min(name.length(), LONGEST_NAME - end.length())) + end;
        }
        names.put(layer, cut);
    }

    private static String ascii(String words) {
        return words.replaceAll("[^ -~]", "?");
    }
}
