package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.Design;
import org.orbwright.jig.JigCalculator;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigRequest;
import org.orbwright.jig.TipCut.CutSide;

/** Set-ups measured on the sheet, with angles by JTS, and held against the plan of the jig. */
class SawSetUpDrawingTest {
    /** Coordinates are written to a thousandth of a millimetre, on lines of 10 mm and more. */
    private static final double WRITTEN = 0.0005;

    static Stream<Design> designs() {
        return Stream.of(
                DrawnDesigns.on("icosahedron", 0, 30, 3, null),
                DrawnDesigns.on("rhombic-dodecahedron", 0, 30, 0, null),
                DrawnDesigns.on("deltoidal-hexecontahedron", -35, 30, 0, null),
                DrawnDesigns.on("truncated-icosidodecahedron", 0, 30, 1, null),
                DrawnDesigns.example("cube-with-chevrons"),
                DrawnDesigns.example("truncated-icosahedron"));
    }

    private static List<JigFace> faces(Design design) {
        return JigCalculator.plan(new JigRequest(null, null), design).faces();
    }

    private static List<List<Coordinate>> lines(Drawing drawing, Pen pen) {
        return drawing.marks().stream()
                .filter(mark -> mark instanceof Line line
                        && line.pen() == pen
                        && !line.path().toString().contains("A"))
                .map(mark -> DrawnPaths.parts(((Line) mark).path()).get(0))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void gaugeStopAndBladeLieAsTheJigSays(Design design) {
        for (JigFace face : faces(design)) {
            for (JigSegment segment : face.segments()) {
                for (CutSide side : CutSide.values()) {
                    leg(design, face, segment, side);
                }
            }
        }
    }

    private static void leg(Design design, JigFace face, JigSegment segment, CutSide side) {
        Drawing drawing = SawSetUpDrawing.leg(design, DrawnFace.of(design, face.face()), segment, side);
        double angle = (side == CutSide.LEFT ? segment.left() : segment.right())
                .mitre()
                .angle();
        List<Coordinate> fence = lines(drawing, Pen.THICK).get(0);
        List<Coordinate> blade = lines(drawing, Pen.THICK).get(1);
        assertEquals(blade.get(0).x, blade.get(1).x, WRITTEN, "the blade runs up the sheet");
        double between = Angle.angleBetween(
                new Coordinate(fence.get(1).x - fence.get(0).x, fence.get(1).y - fence.get(0).y),
                new Coordinate(0, 0),
                new Coordinate(0, -1));
        assertEquals(Math.PI / 2 - angle, between, WRITTEN);
        // The kerf's drawn width gives the scale.
        List<Coordinate> slot = DrawnPaths.parts(((Paper) drawing.marks().stream()
                                .filter(mark -> mark instanceof Paper paper
                                        && paper.pen() == Pen.MEDIUM
                                        && DrawnPaths.parts(paper.path()).get(0).get(0).y
                                                == DrawnPaths.parts(paper.path())
                                                        .get(0)
                                                        .get(1)
                                                        .y)
                                .findFirst()
                                .orElseThrow())
                        .path())
                .get(0);
        double scale = (slot.get(1).x - slot.get(0).x) / design.kerf();
        assertTrue(slot.get(0).x < blade.get(0).x, "the kerf is taken from the offcut's side");
        Coordinate stop = drawing.marks().stream()
                .filter(Ink.class::isInstance)
                .map(mark -> DrawnPaths.parts(((Ink) mark).path()).get(0))
                .map(corners -> foot(corners.get(0), fence))
                .findFirst()
                .orElseThrow();
        double rise = (blade.get(0).x - fence.get(0).x) / (fence.get(1).x - fence.get(0).x);
        Coordinate crossing = new Coordinate(blade.get(0).x, fence.get(0).y + rise * (fence.get(1).y - fence.get(0).y));
        assertEquals(segment.stopDistance(), crossing.distance(stop) / scale, 0.01 * segment.stopDistance());
    }

    /** The nearest point of the fence. */
    private static Coordinate foot(Coordinate point, List<Coordinate> fence) {
        return new org.locationtech.jts.geom.LineSegment(fence.get(0), fence.get(1)).project(point);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void bladeTiltsAndComesOutAsTheJigSays(Design design) {
        for (JigFace face : faces(design)) {
            BevelCut cut = face.bevel();
            Drawing drawing = SawSetUpDrawing.bevel(design, face);
            List<Coordinate> blade = lines(drawing, Pen.THICK).get(0);
            List<Coordinate> table = lines(drawing, Pen.THICK).get(1);
            Coordinate out = blade.get(0);
            Coordinate top = blade.get(1);
            assertEquals(cut.tilt().angle(), Angle.angleBetween(top, out, new Coordinate(out.x, out.y - 1)), WRITTEN);
            double up = table.get(0).y - top.y;
            List<Coordinate> wedge = lines(drawing, Pen.DASHED).get(0);
            assertEquals(cut.inset() / cut.bladeHeight(), (wedge.get(2).x - wedge.get(1).x) / up, 0.001);
            assertEquals(wedge.get(0).x, top.x, 0.002, "the highest tooth is below the land");
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void isAStripWithReadableLettersAndTheSentenceOnGuards(Design design) {
        for (JigFace face : faces(design)) {
            for (Drawing drawing : List.of(
                    SawSetUpDrawing.leg(
                            design, design.panels().get(0), face.segments().get(0), CutSide.LEFT),
                    SawSetUpDrawing.bevel(design, face))) {
                SvgDocument.of(drawing).check(drawing);
                assertTrue(drawing.width() == 180 && drawing.height() <= 70);
                String all = "";
                for (Mark mark : drawing.marks()) {
                    EveryDrawingTest.labelOnSheet(drawing, mark);
                    if (mark instanceof Label label) {
                        assertTrue(label.size() >= 3, label.text());
                        all += label.text() + " ";
                    }
                }
                assertTrue(all.contains("Guards are left out, and of a hold-down only its place is shown."), all);
            }
        }
    }
}
