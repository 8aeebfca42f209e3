package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;

/** Which lamination of a design wishes are about. */
final class WishedLamination {
    private WishedLamination() {}

    /** Its place among the design's laminations, from 0. */
    static int find(SolveRequest request, DesignRequest written) {
        if (written.laminations() == null) {
            throw new ImpossibleDesignException(List.of(Violation.missing(
                    "/laminations", "laminations", "the search for widths depends", "the woods of the bands")));
        }
        List<LaminationRequest> laminations = written.laminations();
        int found = -1;
        int count = 0;
        for (int i = 0; i < laminations.size(); i++) {
            LaminationRequest lamination = laminations.get(i);
            boolean sameFace = request.face() == null
                    || lamination.face() == null
                    || request.face().equals(lamination.face());
            boolean samePlaces =
                    request.places() == null || request.places() == requireNonNullElse(lamination.places(), Places.ALL);
            if (sameFace && samePlaces) {
                found = i;
                count++;
            }
        }
        if (count == 1) {
            return found;
        }
        throw unknown(request, count);
    }

    static ImpossibleDesignException unknown(SolveRequest request, int count) {
        Violation violation = new Violation(
                "/solve/face",
                "UNKNOWN_FACE",
                count == 0
                        ? "The design has no lamination for this face kind and these places."
                        : "The design has " + count + " laminations that this could mean.",
                request.face(),
                "the face, and where it has two laminations the places, of one of the design's laminations");
        return new ImpossibleDesignException(List.of(violation));
    }
}
