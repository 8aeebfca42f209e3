package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.inlay.InlayRequest;
import org.orbwright.inlay.InlayRequest.ChipRequest;
import org.orbwright.inlay.InlayRequest.ShapeKind;
import org.orbwright.inlay.InlayRequest.ShapeRequest;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;

/** What is found about tips, chips and plugs, and the document that comes back. */
@Source(CONTRACT)
class InlayFindingsTest {
    private static Document document(Designs designs, ShapeRequest shape, Double chip) {
        return document(designs, shape, chip, null);
    }

    private static Document document(Designs designs, ShapeRequest shape, Double chip, Double plugStep) {
        InlayRequest inlays = new InlayRequest(
                null,
                shape,
                null,
                null,
                chip == null ? null : new ChipRequest(chip, null, null, null, plugStep),
                null,
                null,
                null);
        return designs.document(Section.INLAYS, inlays);
    }

    private static List<Finding> found(FindingCode code, Document document) {
        return SheetCalculator.inlays(document).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static Designs of(String solid) {
        return Designs.of(solid).acrossFlats(300).thickness(30);
    }

    @Test
    @DisplayName("grain over distance is 2 tan of half the tip angle: 3.46 for 120, 2 for 90, 1.45 for 72 degrees")
    @Source(value = HAND, text = "2 tan 60 = 3.464, 2 tan 45 = 2, 2 tan 36 = 1.453")
    void tipsSharperThanARightAngleAreAtRisk() {
        for (String solid : List.of("icosahedron", "cube")) {
            assertEquals(List.of(), found(FindingCode.TIP_SHORT_GRAIN, document(of(solid), null, null)));
        }
        List<Finding> found = found(FindingCode.TIP_SHORT_GRAIN, document(of("dodecahedron"), null, null));
        assertEquals(1, found.size());
        assertEquals(Severity.NOTE, found.get(0).severity());
        assertEquals("/laminations/0/bandAngle", found.get(0).field());
        assertTrue(
                found.get(0)
                        .message()
                        .startsWith("5 mm from the tip of segment A of the pentagon panels the grain is"
                                + " only 7.26 mm long."),
                found.get(0).message());
    }

    @Test
    @DisplayName("a decagon's tip of 36 degrees: 2 tan 18 = 0.65, less than 1")
    @Source(value = HAND, text = "2 tan 18 = 0.650")
    void tipsWhoseGrainIsShorterThanItsDistanceAreWarnedOf() {
        Designs decagons = of("truncated-dodecahedron")
                .laminations(List.of(
                        Designs.lamination("triangle", 0, Designs.widths((Double) null)),
                        Designs.lamination("decagon", 90, Designs.widths((Double) null))));
        InlayRequest triangles = new InlayRequest("triangle", null, null, null, null, null, null, null);
        assertEquals(List.of(), found(FindingCode.TIP_SHORT_GRAIN, decagons.document(Section.INLAYS, triangles)));
        Designs across = decagons.laminations(List.of(
                Designs.lamination("triangle", 0, Designs.widths((Double) null)),
                Designs.lamination("decagon", 0, Designs.widths((Double) null))));
        List<Finding> found = found(FindingCode.TIP_SHORT_GRAIN, across.document(Section.INLAYS, triangles));
        assertEquals(1, found.size());
        assertEquals(Severity.WARN, found.get(0).severity());
        assertEquals("/laminations/1/bandAngle", found.get(0).field());
    }

    @Test
    void plugThatDoesNotFitStops() {
        List<Finding> found = found(FindingCode.PLUG_DOES_NOT_FIT, document(of("dodecahedron"), null, 80.0));
        assertEquals(1, found.size());
        assertEquals(Severity.STOP, found.get(0).severity());
        assertEquals("/inlays/chips/length", found.get(0).field());
        assertTrue(found.get(0).message().contains("A plug of 160 mm hides it, but does not fit"));
    }

    @Test
    void plugIsMeasuredAgainstADiscWhateverShapeIsStated() {
        Designs design = Designs.of("icosahedron").acrossFlats(212).thickness(30);
        ShapeRequest polygon = new ShapeRequest(ShapeKind.POLYGON, 3, 20.0);
        Answer answer = SheetCalculator.inlays(document(design, polygon, 38.0));
        ShapeRequest disc = new ShapeRequest(ShapeKind.DISC, null, 20.0);
        double largest = SheetCalculator.inlays(document(design, disc, 38.0))
                .inlays()
                .largest()
                .diameter();
        assertTrue(answer.inlays().largest().diameter() > 76);
        assertEquals(largest, answer.inlays().chips().plug().largestDiameter(), 1e-9);
        String message = found(FindingCode.PLUG_DOES_NOT_FIT, document(design, polygon, 38.0))
                .get(0)
                .message();
        assertTrue(message.contains("A plug of 76 mm hides it"), message);
        assertTrue(message.contains("no disc above " + Math.floor(largest * 100) / 100 + " mm does."), message);
    }

    @Test
    void plugThatOnlyItsStepMakesTooLargeIsNoMatterWhereAnInlayCoversTheHole() {
        ShapeRequest disc = new ShapeRequest(ShapeKind.DISC, null, 30.0);
        Designs design = Designs.of("icosahedron").acrossFlats(212).thickness(30);
        assertFalse(SheetCalculator.inlays(document(design, disc, 2.0, 100.0))
                .inlays()
                .chips()
                .plug()
                .fits());
        assertEquals(List.of(), found(FindingCode.PLUG_DOES_NOT_FIT, document(design, disc, 2.0, 100.0)));
        List<Finding> found = found(FindingCode.PLUG_DOES_NOT_FIT, document(design, null, 2.0, 100.0));
        assertEquals(Severity.STOP, found.get(0).severity());
        assertEquals("/inlays/chips/plugStep", found.get(0).field());
        assertTrue(found.get(0).message().endsWith("A finer step gives a smaller plug."));
    }

    @Test
    void holeBesideAStatedInlayWarns() {
        ShapeRequest disc = new ShapeRequest(ShapeKind.DISC, null, 10.0);
        List<Finding> found = found(FindingCode.TIPS_NOT_COVERED, document(of("dodecahedron"), disc, 5.01));
        assertEquals(Severity.WARN, found.get(0).severity());
        assertTrue(
                found.get(0).message().contains("a hole of 10.02 mm across"),
                found.get(0).message());
        assertEquals(List.of(), found(FindingCode.TIPS_NOT_COVERED, document(of("dodecahedron"), disc, 5.0)));
    }

    @Test
    void documentComesBackWithThePlugAndAnswersTheSame() {
        Answer answer = SheetCalculator.inlays(document(of("dodecahedron"), null, 3.2));
        InlayRequest section = answer.document().inlays();
        assertEquals(7, section.shape().diameter());
        assertEquals(ShapeKind.DISC, section.shape().kind());
        Answer again = SheetCalculator.inlays(answer.document());
        assertEquals(answer.document(), again.document());
        assertEquals(answer.inlays().pocket(), again.inlays().pocket());
        assertTrue(again.inlays().chips().hole().coveredByInlay());
    }

    @Test
    void withoutAShapeThereIsNoPocketToDraw() {
        Document nothing = document(of("dodecahedron"), null, null);
        assertNull(SheetCalculator.inlays(nothing).document().inlays().shape());
        ImpossibleDesignException refusal =
                assertThrows(ImpossibleDesignException.class, () -> SheetCalculator.pocket(nothing));
        assertEquals("/inlays/shape", refusal.violations().get(0).path());
        assertTrue(refusal.violations().get(0).isMissing());
        assertFalse(SheetCalculator.pocket(document(of("dodecahedron"), null, 2.0))
                .inlays()
                .covered()
                .isEmpty());
    }
}
