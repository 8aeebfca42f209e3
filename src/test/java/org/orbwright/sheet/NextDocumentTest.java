package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.SizeBy;
import org.orbwright.diagnosis.DiagnosisRequest;
import org.orbwright.diagnosis.DiagnosisRequest.FlatsReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.LengthReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.PanelTestRequest;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.source.Source;
import org.orbwright.stock.StockRequest;
import org.orbwright.stock.StockRequest.Joint;
import org.orbwright.stock.StockRequest.SeamRequest;
import org.orbwright.stock.StockRequest.SearchRequest;
import org.orbwright.tolerance.PanelSide;

/** Documents that come back as they should now be, ready to be posted again. */
@Source(CONTRACT)
class NextDocumentTest {
    @Nested
    class Stock {
        private static Document withBoards(Designs design, SeamRequest seams) {
            return design.document(
                    Section.STOCK, new StockRequest(null, null, null, seams, null, new SearchRequest(0.01, 30.0)));
        }

        private static SegmentCut cut(Document document) {
            return SheetCalculator.segments(document)
                    .segments()
                    .faces()
                    .get(0)
                    .segments()
                    .get(0);
        }

        /** A cube 200 mm across: base b = 200, legs at 45 degrees, so N segments take (N+1) 100 + (N-1) 3 root 2. */
        @Test
        @Source(
                value = HAND,
                text = "N triangles of base 200 with legs at 45 degrees take (N + 1) 100 + (N - 1) 3 sqrt 2")
        void blanksGetAsShortAsTheirSegmentsAllow() {
            Document written = withBoards(Designs.of("cube").blank(1000), null);
            Answer answer = SheetCalculator.stock(written);
            double nine = 9 * 100 + 7 * 3 * Math.sqrt(2);
            assertEquals(8, cut(written).perBlank());
            assertEquals(nine, answer.document().blank().length(), 1e-4);
            assertTrue(answer.document().blank().length() >= nine);
            assertTrue(answer.findings().stream()
                    .anyMatch(finding -> finding.code() == FindingCode.BLANK_LONGER_THAN_NEEDED));
        }

        @ParameterizedTest
        @CsvSource({"MM, cube, 1", "MM, dodecahedron, 1", "MM, rhombic-triacontahedron, 1", "IN, icosahedron, 25.4"})
        @Source(INVARIANT)
        void postedAgainTheDocumentHasAsManySegmentsAndStaysAsItIs(LengthUnit unit, String solid, double factor) {
            Document written =
                    withBoards(Designs.of(solid).times(1 / factor).in(unit).allowance(0.5), null);
            Document next = SheetCalculator.stock(written).document();
            assertEquals(cut(written).perBlank(), cut(next).perBlank());
            Answer again = SheetCalculator.stock(next);
            assertEquals(next, again.document());
            assertTrue(again.findings().stream()
                    .noneMatch(finding -> finding.code() == FindingCode.BLANK_LONGER_THAN_NEEDED));
        }

        @Test
        @Source(value = HAND, text = "a cube of 200 mm has bases of 200 mm")
        void aBlankThatIsTooShortGetsTheLengthOfOneSegment() {
            Document written = withBoards(Designs.of("cube").blank(60), null);
            assertEquals(0, cut(written).perBlank());
            Document next = SheetCalculator.stock(written).document();
            assertEquals(200, next.blank().length(), 1e-4);
            assertEquals(1, cut(next).perBlank());
        }

        @Test
        void blanksWithSeamsKeepTheirLength() {
            SeamRequest seams = new SeamRequest(Joint.BUTT, null, 150.0, 20.0, 1);
            Document next =
                    SheetCalculator.stock(withBoards(Designs.of("cube"), seams)).document();
            assertEquals(1000.0, next.blank().length());
        }
    }

    @Nested
    class Diagnosis {
        private static DiagnosisRequest measured(double gap, Double... flats) {
            PanelTestRequest panel =
                    new PanelTestRequest(null, new LengthReadingRequest(gap, 0.01), PanelSide.RIM, null);
            List<FlatsReadingRequest> pairs = List.of(flats).stream()
                    .map(value -> new FlatsReadingRequest(null, value, 0.05))
                    .toList();
            return new DiagnosisRequest(panel, null, pairs, null, null, null);
        }

        @Test
        void theErrorThatWasMeasuredBecomesThatOfTheSaw() {
            Answer answer =
                    SheetCalculator.diagnosis(Designs.of("cube").document(Section.DIAGNOSIS, measured(0.5, 200.0)));
            double error =
                    Math.toDegrees(answer.diagnosis().panel().tipAngleError().value());
            assertEquals(
                    error, answer.document().tolerance().errors().tipAngle().setting(), 5e-5);
            assertEquals(0.0, answer.document().tolerance().errors().bevel().setting());
            Answer tolerance = SheetCalculator.tolerance(answer.document());
            assertEquals(answer.document().tolerance(), tolerance.document().tolerance());
        }

        @Test
        void anErrorThatCannotBeToldFromNoneStaysAsItWasStated() {
            Document next = SheetCalculator.diagnosis(
                            Designs.of("cube").document(Section.DIAGNOSIS, measured(0.001, 200.0)))
                    .document();
            assertEquals(0.0, next.tolerance().errors().tipAngle().setting());
        }

        /** The allowance of 2 mm is turned away on either side of the largest sphere, 195 mm across. */
        @ParameterizedTest
        @CsvSource({"ACROSS_FLATS, 200", "SPHERE_DIAMETER, 198"})
        @Source(value = HAND, text = "195 mm less 2 mm on either side")
        void aSphereThatTheShellDoesNotHoldBecomesOneThatItHolds(SizeBy by, double size) {
            Document written = Designs.of("cube")
                    .size(by, size)
                    .diameter(198.0)
                    .document(Section.DIAGNOSIS, measured(0.5, 195.0, 196.0));
            Answer answer = SheetCalculator.diagnosis(written);
            assertTrue(has(answer, FindingCode.SPHERE_BEYOND_SHELL));
            assertEquals(191, answer.document().sphere().diameter(), 1e-9);
            Answer again = SheetCalculator.diagnosis(answer.document());
            assertTrue(!has(again, FindingCode.SPHERE_BEYOND_SHELL));
            assertEquals(
                    SheetCalculator.sphere(written).sphere().acrossFlats(),
                    SheetCalculator.sphere(answer.document()).sphere().acrossFlats(),
                    1e-9);
        }

        @Test
        void whatTheAnswerDoesNotUseIsKept() {
            Document written = Designs.of("cube")
                    .document(Section.DIAGNOSIS, measured(0.5, 200.0))
                    .with(Section.JIG, new org.orbwright.jig.JigRequest(120.0, null));
            assertEquals(
                    written.jig(), SheetCalculator.diagnosis(written).document().jig());
            assertNull(SheetCalculator.sheet(written, 5).document().jig());
        }

        private static boolean has(Answer answer, FindingCode code) {
            return answer.findings().stream().anyMatch(finding -> finding.code() == code);
        }
    }
}
