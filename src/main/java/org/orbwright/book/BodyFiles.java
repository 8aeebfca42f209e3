package org.orbwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.orbwright.body.Body;
import org.orbwright.body.BodyCalculator;
import org.orbwright.body.BodyOptions;
import org.orbwright.body.GlbWriter;
import org.orbwright.body.StlWriter;
import org.orbwright.body.ThreeMfWriter;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.design.SphereKind;
import org.orbwright.design.SphereSet;
import org.orbwright.drawing.WoodColours;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.sheet.Answer;

/** Bodies for CAD, CAM and viewers; a sphere that turning leaves nothing of has none. */
final class BodyFiles {
    private final Design design;
    private final Answer build;
    private final List<BookFile> files = new ArrayList<>();

    BodyFiles(Design design, Answer build) {
        this.design = design;
        this.build = build;
    }

    List<BookFile> files() {
        // Slicers and CAM programs take every number of an STL for millimetres.
        files.add(new BookFile(
                "bodies/solid.stl",
                "the glued-up solid as if it were full, in millimetres: the stock of a CAM program",
                () -> StlWriter.write(BodyCalculator.solid(design).parts().get(0), LengthUnit.MM, build.notices())));
        if (!design.has(DesignPart.THICKNESS)) {
            return files;
        }
        for (Panel panel : design.facePanels()) {
            for (BandSet set : design.setsMade(panel.face())) {
                woods(
                        BookFile.name("panel", panel.face(), PictureFiles.word(set)),
                        "the bevelled " + panel.face() + " panel, " + PictureFiles.word(set),
                        () -> BodyCalculator.panel(design, panel.face(), options(set)));
            }
        }
        for (SphereKind sphere : design.spheres()) {
            String set = PictureFiles.word(sphere.set());
            BodyOptions options = options(
                    sphere.set() == SphereSet.MIXED ? null : sphere.panels().get(0));
            woods(
                    BookFile.name("shell", set),
                    "the glued-up solid with its hollow, " + set,
                    () -> BodyCalculator.shell(design, options));
            Body finished = BodyCalculator.sphere(design, options);
            if (!finished.parts().isEmpty()) {
                woods(BookFile.name("sphere", set), "the finished sphere, " + set, () -> finished);
                files.add(new BookFile(
                        "bodies/" + BookFile.name("sphere", set) + ".glb",
                        "the same to be turned around on a screen",
                        () -> GlbWriter.write(finished, colours(finished), build.notices())));
            }
        }
        return files;
    }

    private BodyOptions options(BandSet set) {
        return new BodyOptions(set, !design.has(DesignPart.LAMINATIONS), null);
    }

    private void woods(String name, String what, Supplier<Body> body) {
        files.add(new BookFile("bodies/" + name + ".3mf", what, () -> {
            Body made = body.get();
            return ThreeMfWriter.write(made, colours(made), design.unit(), build.notices());
        }));
    }

    private List<String> colours(Body body) {
        return WoodColours.of(design, body.parts().stream().map(Body.Part::name).toList());
    }
}
