package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.Diagnosis.SeamDiagnosis;
import org.orbwright.diagnosis.Diagnosis.TiltDiagnosis;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;

/** Compares measurements that tell the same thing; all of them are known to be possible. */
final class Comparisons {
    /** Two unit normals are opposite if their sum is shorter than this. */
    private static final double OPPOSITE = 1e-9;

    private final DiagnosisRequest request;
    private final Design design;
    private final Checks checks;
    private final List<Comparison> found = new ArrayList<>();

    private Comparisons(DiagnosisRequest request, Design design, Checks checks) {
        this.request = request;
        this.design = design;
        this.checks = checks;
    }

    /** All that can be compared, or null if there is nothing. */
    static List<Comparison> of(
            DiagnosisRequest request, Design design, Checks checks, SeamDiagnosis seam, TiltDiagnosis tilt) {
        Comparisons comparisons = new Comparisons(request, design, checks);
        if (seam != null) {
            seam.faces().forEach(face -> comparisons.bevels(face, tilt));
        }
        if (request.acrossFlats() != null && request.faceDistances() != null) {
            design.solid().faceKinds().forEach(comparisons::flats);
        }
        return comparisons.found.isEmpty() ? null : comparisons.found;
    }

    private void bevels(FaceBevel face, TiltDiagnosis tilt) {
        if (face.spread() != null) {
            found.add(Comparison.of(ComparedMeasures.PANELS_OF_TRIO, face.face(), face.spread()));
        }
        if (tilt != null && tilt.face().equals(face.face())) {
            AngleEstimate one = tilt.bevelError();
            AngleEstimate other = face.bevelError();
            AngleEstimate difference =
                    AngleEstimate.of(one.value() - other.value(), Math.hypot(one.uncertainty(), other.uncertainty()));
            found.add(Comparison.of(ComparedMeasures.TILT_AND_SEAM, face.face(), difference));
        }
    }

    /** Which pair a measure across flats belongs to is not known, but where all were measured, the extremes are. */
    private void flats(FaceKind kind) {
        List<Reading> flats = request.acrossFlats().stream()
                .filter(asked ->
                        kind.face().equals(checks.panel(asked.face(), "").face()))
                .map(asked -> checks.length(asked.value(), asked.resolution()))
                .toList();
        List<Reading> sums = sums(kind);
        int pairs = kind.count() / 2;
        if (kind.opposite() && flats.size() == pairs && sums.size() == pairs) {
            Comparator<Reading> byValue = Comparator.comparingDouble(Reading::value);
            found.add(Comparison.of(
                    ComparedMeasures.SMALLEST_FLATS,
                    kind.face(),
                    Collections.min(flats, byValue),
                    Collections.min(sums, byValue)));
            found.add(Comparison.of(
                    ComparedMeasures.LARGEST_FLATS,
                    kind.face(),
                    Collections.max(flats, byValue),
                    Collections.max(sums, byValue)));
        }
    }

    /** The sums of the distances of opposite faces of a kind, where both were measured. */
    private List<Reading> sums(FaceKind kind) {
        Solid solid = design.solid();
        Map<Integer, Reading> distances = new HashMap<>();
        for (FaceReadingRequest asked : request.faceDistances().faces()) {
            int place = Numbering.place(asked.face());
            if (solid.faces().get(place).kind().equals(kind.face())) {
                distances.put(place, checks.length(asked.value(), asked.resolution()));
            }
        }
        List<Reading> sums = new ArrayList<>();
        distances.forEach((one, distance) -> distances.forEach((other, opposite) -> {
            if (one < other && areOpposite(one, other)) {
                sums.add(new Reading(
                        distance.value() + opposite.value(),
                        Math.hypot(distance.uncertainty(), opposite.uncertainty())));
            }
        }));
        return sums;
    }

    private boolean areOpposite(int one, int other) {
        Solid solid = design.solid();
        return solid.normal(solid.faces().get(one))
                        .add(solid.normal(solid.faces().get(other)))
                        .norm()
                < OPPOSITE;
    }
}
