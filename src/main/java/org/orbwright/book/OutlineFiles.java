package org.orbwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.CutWriter;
import org.orbwright.drawing.DxfRelease;
import org.orbwright.drawing.DxfWriter;
import org.orbwright.drawing.LatheOutlines;
import org.orbwright.drawing.Outline;
import org.orbwright.drawing.PanelOutline;
import org.orbwright.drawing.PocketOutline;
import org.orbwright.sheet.Answer;
import org.orbwright.turning.Holding.Seat;

/** What is cut out, as drawing interchange files and as SVG of the cuts alone. */
final class OutlineFiles {
    private final Design design;
    private final Answer build;
    private final List<BookFile> files = new ArrayList<>();

    OutlineFiles(Design design, Answer build) {
        this.design = design;
        this.build = build;
    }

    List<BookFile> files() {
        if (!design.has(DesignPart.THICKNESS)) {
            return files;
        }
        for (Panel panel : design.facePanels()) {
            for (BandSet set : design.setsMade(panel.face())) {
                add(
                        BookFile.name("panel", panel.face(), PictureFiles.word(set)),
                        "the " + panel.face() + " panel, " + PictureFiles.word(set),
                        () -> PanelOutline.of(design, panel.face(), set));
            }
        }
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.sawn()) {
                for (BandSet set : design.setsOf(panel)) {
                    String letter = piece.segment() + (piece.mirrored() ? "*" : "");
                    add(
                            BookFile.name(
                                    "segment", panel.face(), PictureFiles.half(panel), letter, PictureFiles.word(set)),
                            "segment " + letter + ", " + panel.face() + " " + PictureFiles.half(panel) + " "
                                    + PictureFiles.word(set),
                            () -> PanelOutline.ofSegment(design, panel, piece, set));
                }
            }
        }
        if (build.turning() != null && build.document().turning() != null) {
            disc("headstock", build.turning().holding().head());
            disc("tailstock", build.turning().holding().tail());
            add(
                    "gauges",
                    "ring gauges and a template of the sphere",
                    () -> LatheOutlines.templates(design, build.turning()).outline());
        }
        if (build.inlays() != null && build.inlays().pocket() != null) {
            add(
                    "pocket",
                    "the pocket for an inlay",
                    () -> PocketOutline.of(design, build.document().inlays().shape(), build.inlays())
                            .outline());
        }
        return files;
    }

    private void disc(String end, Seat seat) {
        if (seat.disc() > 0) {
            add(
                    BookFile.name("disc", end),
                    "the mounting disc at the " + end,
                    () -> LatheOutlines.disc(design, build.document().turning(), seat)
                            .outline());
        }
    }

    private void add(String name, String what, Supplier<Outline> outline) {
        files.add(BookFile.text(
                "outlines/" + name + ".dxf",
                what,
                () -> DxfWriter.write(outline.get(), DxfRelease.R2000, design.unit(), build.notices())));
        files.add(BookFile.text(
                "outlines/" + name + "-cut.svg",
                what + ", the cuts alone at true size",
                () -> CutWriter.write(outline.get(), design.unit(), build.notices())));
    }
}
