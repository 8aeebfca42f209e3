package org.orbwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.orbwright.assembly.Net;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
import org.orbwright.design.SphereKind;
import org.orbwright.drawing.BoardDrawing;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.NetDrawing;
import org.orbwright.drawing.PanelDrawing;
import org.orbwright.drawing.SawSetUpDrawing;
import org.orbwright.drawing.SectionDrawing;
import org.orbwright.drawing.SphereDrawing;
import org.orbwright.drawing.SurvivalDrawing;
import org.orbwright.drawing.SvgWriter;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.TipCut.CutSide;
import org.orbwright.sheet.Answer;
import org.orbwright.stock.CutBoard;

/** The pictures of a build, each with the STOPs above it. */
final class PictureFiles {
    /** Stations of the plot of what is left of the bands, as its address has them. */
    private static final int STATIONS = 31;

    private final Design design;
    private final Answer build;
    private final List<BookFile> files = new ArrayList<>();

    PictureFiles(Design design, Answer build) {
        this.design = design;
        this.build = build;
    }

    List<BookFile> files() {
        for (SphereKind sphere : design.spheres()) {
            String set = word(sphere.set());
            add(
                    BookFile.name("sphere", set),
                    "the finished sphere, " + set,
                    () -> SphereDrawing.draw(design, sphere, SphereDrawing.AZIMUTH, SphereDrawing.ELEVATION, true));
        }
        for (Panel panel : design.facePanels()) {
            for (BandSet set : design.setsMade(panel.face())) {
                add(
                        BookFile.name("panel", panel.face(), word(set)),
                        "the flat " + panel.face() + " panel, " + word(set),
                        () -> PanelDrawing.draw(design, panel.face(), set));
            }
        }
        if (build.jig() != null && design.has(DesignPart.KERF)) {
            setUps();
        }
        if (build.bands() != null) {
            survival();
        }
        if (build.sphere().thinnestWall() != null) {
            add("section", "sections through the wood", () -> SectionDrawing.draw(design));
        }
        if (build.assembly() != null) {
            for (Net net : build.assembly().nets()) {
                add(
                        BookFile.name("net", NetDrawing.name(net)),
                        NetDrawing.name(net) + ", laid flat for taping",
                        () -> NetDrawing.draw(design, design.sphere(null), List.of(net)));
            }
        }
        if (build.stock() != null) {
            for (CutBoard board : build.stock().boards()) {
                add(
                        "board-" + board.number(),
                        "board " + board.number() + " with its cuts",
                        () -> BoardDrawing.draw(design, build.stock(), board.number()));
            }
        }
        return files;
    }

    private void setUps() {
        for (JigFace face : build.jig().faces()) {
            for (Panel panel : design.panels()) {
                if (panel.face().equals(face.face())) {
                    face.segments().forEach(segment -> legs(panel, segment));
                }
            }
            add(
                    BookFile.name("set-up", face.face(), "bevel"),
                    "the saw set up for the bevels of the " + face.face() + " panels",
                    () -> SawSetUpDrawing.bevel(design, face));
        }
    }

    private void legs(Panel panel, JigSegment segment) {
        for (CutSide leg : CutSide.values()) {
            add(
                    BookFile.name("set-up", panel.face(), half(panel), segment.segment(), word(leg), "leg"),
                    "the saw set up for the " + word(leg) + " leg of segment " + segment.segment() + ", " + panel.face()
                            + " " + half(panel),
                    () -> SawSetUpDrawing.leg(design, panel, segment, leg));
        }
    }

    private void survival() {
        for (Panel panel : design.panels()) {
            for (BandSet set : design.setsOf(panel)) {
                add(
                        BookFile.name("bands", panel.face(), half(panel), word(set)),
                        "what is left of the bands, " + panel.face() + " " + half(panel) + " " + word(set),
                        () -> SurvivalDrawing.draw(design, panel.face(), panel.places(), set, STATIONS));
            }
        }
    }

    private void add(String name, String what, Supplier<Drawing> drawing) {
        files.add(BookFile.text(
                "pictures/" + name + ".svg",
                what,
                () -> SvgWriter.write(drawing.get().with(build.notices()))));
    }

    /** The half of a panel's segments that is meant; empty for all of them. */
    static String half(Panel panel) {
        return panel.places() == Places.ALL ? "" : word(panel.places());
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
