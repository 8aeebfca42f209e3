package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.diagnosis.DiagnosisRequest.FaceDistancesRequest;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.FlatsReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.LengthReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.PanelTestRequest;
import org.orbwright.diagnosis.DiagnosisRequest.SeamGapRequest;
import org.orbwright.diagnosis.DiagnosisRequest.SeamTestRequest;
import org.orbwright.diagnosis.DiagnosisRequest.TiltReadingRequest;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.tolerance.PanelSide;
import org.orbwright.tolerance.SeamSide;

/** A diagnosis that a test adds measurements to; without any until then. */
public final class Diagnoses {
    /** What the glue bridges, in millimetres. */
    public static final double GLUE = 0.1;

    private final Designs design;
    private PanelTestRequest panel;
    private SeamTestRequest seam;
    private List<FlatsReadingRequest> flats;
    private FaceDistancesRequest distances;
    private TiltReadingRequest tilt;
    private List<DialInRequest> dials;

    private Diagnoses(Designs design) {
        this.design = design;
    }

    /** Without measurements. */
    public static Diagnoses of(Designs design) {
        return new Diagnoses(design);
    }

    /** A reading. */
    public static LengthReadingRequest read(double value, double resolution) {
        return new LengthReadingRequest(value, resolution);
    }

    /** A gap of a seam. */
    public static SeamGapRequest gap(double value, double resolution, SeamSide side) {
        return new SeamGapRequest(value, resolution, side);
    }

    /** A test panel. */
    public Diagnoses panel(String face, LengthReadingRequest gap, PanelSide side, LengthReadingRequest distance) {
        panel = new PanelTestRequest(face, gap, side, distance);
        return this;
    }

    /** A pair or trio. */
    public Diagnoses seam(List<String> faces, LengthReadingRequest distance, SeamGapRequest... gaps) {
        seam = new SeamTestRequest(faces, List.of(gaps), distance);
        return this;
    }

    /** Measures across flats. */
    public Diagnoses flats(String face, double resolution, double... values) {
        flats = flats == null ? new ArrayList<>() : flats;
        for (double value : values) {
            flats.add(new FlatsReadingRequest(face, value, resolution));
        }
        return this;
    }

    /** Distances of the faces, the first one's first; the disc's face by its place. */
    public Diagnoses distances(Integer discFace, double resolution, double... values) {
        List<FaceReadingRequest> faces = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            faces.add(new FaceReadingRequest(Numbering.of(i), values[i], resolution));
        }
        return distances(discFace, faces);
    }

    /** Distances of faces; the disc's face by its place. */
    public Diagnoses distances(Integer discFace, List<FaceReadingRequest> faces) {
        distances = new FaceDistancesRequest(discFace == null ? null : Numbering.of(discFace), faces);
        return this;
    }

    /** A blade tilt. */
    public Diagnoses tilt(String face, double value, double resolution) {
        tilt = new TiltReadingRequest(face, value, resolution);
        return this;
    }

    /** Trials of a setting. */
    public Diagnoses dial(DialInRequest dial) {
        dials = dials == null ? new ArrayList<>() : dials;
        dials.add(dial);
        return this;
    }

    /** The request. */
    public Document document() {
        return design.document(Section.DIAGNOSIS, request());
    }

    /** The section. */
    public DiagnosisRequest request() {
        return new DiagnosisRequest(panel, seam, flats, distances, tilt, dials);
    }

    /** The answer. */
    Diagnosis diagnose() {
        return DiagnosisCalculator.calculate(request(), design.build(), GLUE);
    }

    /** Checks the one rule that is broken. */
    void assertRefused(String path, String code, String rejected) {
        List<Violation> violations =
                assertThrows(ImpossibleDesignException.class, this::diagnose).violations();
        assertEquals(1, violations.size(), violations::toString);
        assertEquals(path, violations.get(0).path());
        assertEquals(code, violations.get(0).code());
        assertEquals(rejected, violations.get(0).rejected());
    }
}
