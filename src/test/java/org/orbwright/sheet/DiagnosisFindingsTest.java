package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.diagnosis.Diagnoses.gap;
import static org.orbwright.diagnosis.Diagnoses.read;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.PUBLISHED;
import static org.orbwright.tolerance.SeamSide.INSIDE;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.diagnosis.Diagnoses;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.source.Source;
import org.orbwright.tolerance.PanelSide;

@Source(CONTRACT)
class DiagnosisFindingsTest {
    private static final Designs CUBE = Designs.of("cube");
    /** Seams of 25 sqrt(2) mm. */
    private static final double LEVER = 25 * Math.sqrt(2);

    private static Answer answer(Diagnoses of) {
        return SheetCalculator.diagnosis(of.document());
    }

    private static List<FindingCode> codes(Diagnoses of) {
        return answer(of).findings().stream().map(Finding::code).toList();
    }

    private static void assertFound(Diagnoses of, FindingCode code, Severity severity, String says) {
        Finding found = answer(of).findings().stream()
                .filter(finding -> finding.code() == code)
                .findFirst()
                .orElseThrow();
        assertEquals(severity, found.severity());
        assertTrue(found.message().contains(says), found.message());
    }

    private static double opens(double degrees) {
        return 2 * LEVER * Math.sin(Math.toRadians(degrees) / 2);
    }

    /** Three seams that are open by these degrees. */
    private static Diagnoses trio(double one, double two, double three) {
        return Diagnoses.of(CUBE)
                .seam(
                        List.of("square", "square", "square"),
                        null,
                        gap(opens(one), 0.02, INSIDE),
                        gap(opens(two), 0.02, INSIDE),
                        gap(opens(three), 0.02, INSIDE));
    }

    @Test
    @DisplayName(
            "hand calculation: sums of 0.4, 0.5 and 0.3 are errors of 0.1, 0.3 and 0.2, 0.2 on the mean, 0.2 apart")
    @Source(value = HAND, text = "three sums of two errors tell the three errors; uncertainties by JCGM 100:2008")
    void oneSettingForAllPanelsOfAKind() {
        FaceBevel face = answer(trio(0.4, 0.5, 0.3)).diagnosis().seam().faces().get(0);
        assertEquals(3, face.panels());
        assertEquals(-0.2, Math.toDegrees(face.bevelError().value()), 1e-9);
        assertEquals(0.2, Math.toDegrees(face.spread().value()), 1e-9);
        // Each reading tells u = 0.02 / sqrt(12) / 35.36 mm: the mean takes a sixth of three, the spread two whole
        // ones.
        double each = 0.02 / Math.sqrt(12) / LEVER;
        assertEquals(each * Math.sqrt(3) / 6, face.bevelError().uncertainty(), 1e-8);
        assertEquals(each * Math.sqrt(2), face.spread().uncertainty(), 1e-8);
    }

    @Test
    @Source(
            value = PUBLISHED,
            text = "JCGM 100:2008: a reading of the resolution r has the standard uncertainty r / sqrt(12); "
                    + "independent ones add up by squares")
    void panelsThatAreAlikeLieApartByTheUncertaintyOfTwoReadings() {
        FaceBevel face = answer(trio(0.4, 0.4, 0.4)).diagnosis().seam().faces().get(0);
        assertEquals(0, face.spread().value(), 1e-12);
        assertEquals(0.02 / Math.sqrt(6) / LEVER, face.spread().uncertainty(), 1e-8);
    }

    @Test
    @Source(value = HAND, text = "two panels that are alike share the error of their seam")
    void aPairDoesNotTellHowFarItsPanelsLieApart() {
        FaceBevel face = answer(Diagnoses.of(CUBE).seam(null, null, gap(opens(0.2), 0.02, INSIDE)))
                .diagnosis()
                .seam()
                .faces()
                .get(0);
        assertEquals(-0.1, Math.toDegrees(face.bevelError().value()), 1e-9);
        assertNull(face.spread());
    }

    @Test
    @Source(
            value = PUBLISHED,
            text = "JCGM 100:2008: a reading of the resolution r has the standard uncertainty r / sqrt(12); "
                    + "independent ones add up by squares")
    void panelsOfATrioThatDifferAreWarnedOf() {
        assertFound(trio(0.4, 0.5, 0.3), FindingCode.MEASURES_DISAGREE, WARN, "differ by 0.2 degrees");
        assertEquals(List.of(), codes(trio(0.4, 0.4, 0.4)));
        // Twice sqrt(2) x 0.00936 degrees.
        assertEquals(List.of(), codes(trio(0.4, 0.4, 0.426)));
        assertEquals(List.of(FindingCode.MEASURES_DISAGREE), codes(trio(0.4, 0.4, 0.427)));
    }

    @Test
    void anUnclearBevelIsNotedOnce() {
        assertEquals(List.of(FindingCode.BELOW_RESOLUTION), codes(trio(0, 0, 0)));
    }

    @Test
    @DisplayName("JCGM 100:2008 by hand: 2 x hypot(0.1 / sqrt(12), 0.0027) = 0.058 degrees between gauge and seams")
    @Source(
            value = PUBLISHED,
            text = "JCGM 100:2008: a reading of the resolution r has the standard uncertainty r / sqrt(12); "
                    + "independent ones add up by squares")
    void aGaugeThatContradictsTheSeamsIsWarnedOf() {
        assertEquals(List.of(), codes(trio(0.4, 0.4, 0.4).tilt(null, 45.25, 0.1)));
        assertFound(trio(0.4, 0.4, 0.4).tilt(null, 45.26, 0.1), FindingCode.MEASURES_DISAGREE, WARN, "angle gauge");
        assertFound(trio(0.4, 0.4, 0.4).tilt(null, 44.8, 0.1), FindingCode.MEASURES_DISAGREE, WARN, "0.4 degrees");
    }

    private static Diagnoses shell(double... flats) {
        return Diagnoses.of(CUBE)
                .distances(null, 0.05, 100, 100.2, 100, 100, 100, 100)
                .flats(null, 0.05, flats);
    }

    @Test
    @DisplayName("JCGM 100:2008 by hand: three readings of 0.05 mm, 2 x sqrt(3) x 0.05 / sqrt(12) = 0.05 mm")
    @Source(
            value = PUBLISHED,
            text = "JCGM 100:2008: a reading of the resolution r has the standard uncertainty r / sqrt(12); "
                    + "independent ones add up by squares")
    void diametersThatContradictTheDistancesAreWarnedOf() {
        List<FindingCode> shift = codes(Diagnoses.of(CUBE).distances(null, 0.05, 100, 100.2, 100, 100, 100, 100));
        assertTrue(!shift.contains(FindingCode.MEASURES_DISAGREE));
        assertEquals(shift, codes(shell(200, 200.2, 200)));
        assertEquals(shift, codes(shell(200, 200.151, 200)));
        assertFound(shell(200, 200.149, 200), FindingCode.MEASURES_DISAGREE, WARN, "largest");
        assertFound(shell(199.94, 200.2, 200), FindingCode.MEASURES_DISAGREE, WARN, "smallest");
        // A pair that is missing may be the smallest.
        assertNull(answer(shell(200.1, 200.2)).diagnosis().comparisons());
    }

    @Test
    @DisplayName("hand calculation: a reading to 0.1 degrees tells an error of 0.055 from 0, though 2 u = 0.058")
    @Source(value = HAND, text = "half of the resolution either way bounds a single reading")
    void aSingleReadingIsJudgedByItsBounds() {
        assertEquals(List.of(), codes(Diagnoses.of(CUBE).tilt(null, 45.055, 0.1)));
        assertFound(
                Diagnoses.of(CUBE).tilt(null, 45.049, 0.1),
                FindingCode.BELOW_RESOLUTION,
                NOTE,
                "half of the gauge's resolution");
    }

    @Test
    void facesThatWereNotMeasuredAreNoted() {
        Diagnoses flats = Diagnoses.of(CUBE).flats(null, 0.05, 200);
        assertFound(flats, FindingCode.FACES_NOT_MEASURED, NOTE, "2 pairs of faces");
        assertNull(answer(flats).diagnosis().acrossFlats().outOfRound());
        List<FaceReadingRequest> four = List.of(0, 1, 2, 3).stream()
                .map(face -> new FaceReadingRequest(Numbering.of(face), 88.9, 0.05))
                .toList();
        Diagnoses few = Diagnoses.of(Designs.example("dodecahedron-with-land")).distances(null, four);
        assertFound(few, FindingCode.FACES_NOT_MEASURED, NOTE, "8 faces");
        assertNull(answer(few).diagnosis().faceDistances().outOfRound());
    }

    @Test
    void theSphereIsJudgedAboutTheCentreThatLeavesMostRoom() {
        double[] distances = new double[12];
        Arrays.fill(distances, 88.9);
        distances[4] += 0.6;
        Designs lantern = Designs.example("dodecahedron-with-land");
        assertTrue(!codes(Diagnoses.of(lantern.diameter(177.79)).distances(null, 0.05, distances))
                .contains(FindingCode.SPHERE_BEYOND_SHELL));
        distances[0] -= 0.1;
        assertFound(
                Diagnoses.of(lantern.diameter(177.79)).distances(null, 0.05, distances),
                FindingCode.SPHERE_BEYOND_SHELL,
                WARN,
                "a flat would stay");
    }

    @Test
    @Source(value = HAND, text = "twice (88.9 - 16) times midradius over inradius of a dodecahedron, 1.17557")
    void theSeamsOfALargeLandAreSaidToLimit() {
        assertFound(
                Diagnoses.of(Designs.example("dodecahedron-with-land").land(16).diameter(172.0))
                        .flats(null, 0.05, 177.8),
                FindingCode.SPHERE_BEYOND_SHELL,
                WARN,
                "By its designed seams the shell leaves room for a sphere of 171.39 mm");
    }

    @Test
    void numbersThatPrintAlikeGetADigitMore() {
        assertFound(
                Diagnoses.of(CUBE).panel(null, read(0.0576, 0.1), PanelSide.RIM, null),
                FindingCode.BELOW_RESOLUTION,
                NOTE,
                "degrees");
        // An error of 0.00583 degrees within 0.00585.
        assertFound(
                Diagnoses.of(CUBE).panel(null, read(0.0576, 0.1), PanelSide.RIM, null),
                FindingCode.BELOW_RESOLUTION,
                NOTE,
                "-0.00583 degrees, is within its uncertainty of 0.00585 degrees");
    }
}
