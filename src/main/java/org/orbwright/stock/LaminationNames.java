package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;

/**
 * What the laminations of a design are called at the bench: by their face kind, and by the half of its segments where
 * every other segment has a lamination of its own. The only lamination of a design needs no name.
 */
public final class LaminationNames {
    private final List<LaminationRequest> laminations;
    private final List<String> faces;

    private LaminationNames(List<LaminationRequest> laminations) {
        this.laminations = laminations;
        this.faces = laminations.stream()
                .map(LaminationNames::face)
                .filter(face -> !face.isEmpty())
                .distinct()
                .toList();
    }

    /** The names of the laminations as a document lists them. */
    public static LaminationNames of(List<LaminationRequest> laminations) {
        return new LaminationNames(laminations);
    }

    private static String face(LaminationRequest lamination) {
        return lamination.face() == null ? "" : lamination.face();
    }

    /** A label that begins with the lamination's name, such as {@code pentagon, band 2}. Laminations count from 1. */
    public String before(int lamination, String label) {
        List<String> parts = parts(lamination, face(laminations.get(lamination - 1)), " segments");
        parts.add(label);
        return String.join(", ", parts);
    }

    /** The same where there is little room, such as {@code p2}: the face's first letters, as many as tell it apart. */
    public String shortlyBefore(int lamination, String label) {
        List<String> parts = parts(lamination, initials(face(laminations.get(lamination - 1))), "");
        if (isHalf(lamination)) {
            parts.add("");
        }
        return String.join(" ", parts) + label;
    }

    private boolean isHalf(int lamination) {
        Places places = laminations.get(lamination - 1).places();
        return places != null && places != Places.ALL;
    }

    private List<String> parts(int lamination, String face, String segments) {
        List<String> parts = new ArrayList<>();
        if (faces.size() > 1) {
            parts.add(face);
        }
        if (isHalf(lamination)) {
            Places places = laminations.get(lamination - 1).places();
            parts.add(places.name().toLowerCase(Locale.ROOT) + segments);
        }
        return parts;
    }

    private String initials(String face) {
        int letters = Math.min(1, face.length());
        while (letters < face.length() && isShared(face.substring(0, letters))) {
            letters++;
        }
        return face.substring(0, letters);
    }

    private boolean isShared(String initials) {
        return faces.stream().filter(face -> face.startsWith(initials)).count() > 1;
    }

    /** The steps of a cut list with the name of the lamination before the label of each strip. */
    public List<CutStep> on(List<CutStep> steps) {
        return steps.stream()
                .map(step -> step.lamination() == null ? step : step.labelled(before(step.lamination(), step.label())))
                .toList();
    }
}
