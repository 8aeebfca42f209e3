package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Bow;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Note;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;

/**
 * Writes outlines as a drawing interchange file of release 12 (AC1009, ASCII), which nearly every CAD and CAM program
 * reads. Coordinates are in the design's unit. Release 12 has no place for a unit: it is said in a comment at the head,
 * in a text on the layer NOTE, and in the header variable {@code $INSUNITS} of later releases, which readers of release
 * 12 pass over. Notices are comments at the head, and STOPs are texts on the layer NOTE too, below the outlines.
 */
public final class DxfWriter {
    private static final int DECIMALS = 8;
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

    private final LengthUnit unit;
    private final StringBuilder text = new StringBuilder();
    private final Map<Layer, String> names = new LinkedHashMap<>();

    private DxfWriter(LengthUnit unit) {
        this.unit = unit;
    }

    /**
     * The outlines as a file.
     *
     * @param outline the outlines
     * @param unit the unit of its coordinates
     * @param notices what it tells whoever opens it
     */
    public static String write(Outline outline, LengthUnit unit, List<Notice> notices) {
        return new DxfWriter(unit).file(outline, notices);
    }

    private String file(Outline outline, List<Notice> notices) {
        OutlineExtent extent = OutlineExtent.of(outline);
        List<Note> notes = notes(outline, extent, Notice.stops(notices));
        outline.shapes().forEach(shape -> name(shape.layer()));
        name(Layer.of(LayerKind.NOTE));
        comment(outline.title() + "; lengths in " + unit.symbol());
        notices.forEach(notice -> comment(notice.line()));
        header(extent);
        tables();
        section("BLOCKS");
        put(0, "ENDSEC");
        section("ENTITIES");
        outline.shapes().forEach(this::entity);
        notes.forEach(this::entity);
        put(0, "ENDSEC");
        put(0, "EOF");
        return text.toString();
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

    private void comment(String words) {
        Notice.wrapped(ascii(words), LONGEST_LINE).forEach(line -> put(999, line));
    }

    private void header(OutlineExtent extent) {
        section("HEADER");
        put(9, "$ACADVER");
        put(1, "AC1009");
        put(9, "$INSUNITS");
        put(70, String.valueOf(unit == LengthUnit.MM ? MILLIMETRES : INCHES));
        put(9, "$EXTMIN");
        point(new At(extent.left(), extent.low()));
        put(9, "$EXTMAX");
        point(new At(extent.right(), extent.high()));
        put(0, "ENDSEC");
    }

    private void tables() {
        section("TABLES");
        table("LTYPE", 1);
        put(0, "LTYPE");
        put(2, "CONTINUOUS");
        put(70, "0");
        put(3, "Solid line");
        put(72, "65");
        put(73, "0");
        put(40, "0");
        put(0, "ENDTAB");
        table("LAYER", names.size());
        names.forEach((layer, name) -> {
            put(0, "LAYER");
            put(2, name);
            put(70, "0");
            put(62, String.valueOf(layer.kind().colour()));
            put(6, "CONTINUOUS");
        });
        put(0, "ENDTAB");
        table("STYLE", 1);
        put(0, "STYLE");
        put(2, "STANDARD");
        put(70, "0");
        put(40, "0");
        put(41, "1");
        put(50, "0");
        put(71, "0");
        put(42, "1");
        put(3, "txt");
        put(4, "");
        put(0, "ENDTAB");
        put(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        put(0, "TABLE");
        put(2, name);
        put(70, String.valueOf(entries));
    }

    private void section(String name) {
        put(0, "SECTION");
        put(2, name);
    }

    private void entity(Shape shape) {
        String layer = names.get(shape.layer());
        if (shape instanceof Chain chain) {
            chain(chain, layer);
        } else if (shape instanceof Round round) {
            start("CIRCLE", layer);
            point(round.centre());
            length(40, round.radius());
        } else if (shape instanceof Bow bow) {
            start("ARC", layer);
            point(bow.centre());
            length(40, bow.radius());
            put(50, Rounding.plain(Math.toDegrees(bow.from()), DECIMALS));
            put(51, Rounding.plain(Math.toDegrees(bow.to()), DECIMALS));
        } else if (shape instanceof Note note) {
            start("TEXT", layer);
            point(note.at());
            length(40, note.height());
            put(1, ascii(note.text()));
        }
    }

    private void chain(Chain chain, String layer) {
        if (chain.points().size() == 2) {
            start("LINE", layer);
            point(chain.points().get(0));
            At end = chain.points().get(1);
            length(11, end.x());
            length(21, end.y());
            put(31, "0");
            return;
        }
        start("POLYLINE", layer);
        put(66, "1");
        point(new At(0, 0));
        put(70, chain.closed() ? "1" : "0");
        for (At at : chain.points()) {
            start("VERTEX", layer);
            point(at);
        }
        start("SEQEND", layer);
    }

    private void start(String entity, String layer) {
        put(0, entity);
        put(8, layer);
    }

    private void point(At at) {
        length(10, at.x());
        length(20, at.y());
        put(30, "0");
    }

    private void length(int code, double millimetres) {
        put(code, Rounding.plain(unit.fromMillimetres(millimetres), DECIMALS));
    }

    private void put(int code, String value) {
        text.append(String.format(Locale.ROOT, "%3d", code))
                .append('\n')
                .append(value)
                .append('\n');
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
