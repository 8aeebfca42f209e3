package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A face kind while its faces and segments are being counted. */
final class FaceKindDraft {
    /** The kinds of segment are lettered; no face of the catalogue has more than three. */
    private static final String LETTERS = "ABC";

    final FaceOutline first;
    private final List<SegmentKind> kinds = new ArrayList<>();
    private int count;
    private int mirroredCount;
    private boolean opposite = true;

    FaceKindDraft(FaceOutline first) {
        this.first = first;
        List<SegmentKind> found = new ArrayList<>();
        for (int i = 0; i < first.sides(); i++) {
            SegmentKind kind = segmentKind(first, i);
            if (found.stream().noneMatch(other -> sameOutline(other, kind))) {
                found.add(kind);
            }
        }
        found.sort(Comparator.comparing((SegmentKind k) -> k.baseLeft() + k.baseRight())
                .reversed());
        for (SegmentKind kind : found) {
            kinds.add(counted(kind, LETTERS.substring(kinds.size(), kinds.size() + 1), perFace(kind), 0, 0));
        }
    }

    /** Counts one more face of this kind. */
    Face add(int number, FaceOutline outline, List<Integer> corners, boolean hasOpposite) {
        boolean mirrored = !first.sameAs(outline);
        List<Face.Part> parts = new ArrayList<>();
        for (int i = 0; i < outline.sides(); i++) {
            SegmentKind kind = segmentKind(outline, i);
            int at = indexOf(kind);
            boolean turned = outline.left().get(i) > outline.right().get(i) + FaceOutline.SAME;
            SegmentKind old = kinds.get(at);
            int plain = old.count() + (turned ? 0 : 1);
            int mirroredOnes = old.mirroredCount() + (turned ? 1 : 0);
            kinds.set(at, counted(old, old.segment(), old.perFace(), plain, mirroredOnes));
            parts.add(new Face.Part(old.segment(), turned));
        }
        count++;
        mirroredCount += mirrored ? 1 : 0;
        opposite &= hasOpposite;
        return new Face(number, first.name(), mirrored, corners, parts);
    }

    FaceKind finish() {
        double cornerRadius = kinds.stream()
                .mapToDouble(k -> Math.max(k.leftCornerRadius(), k.rightCornerRadius()))
                .max()
                .orElseThrow();
        return new FaceKind(
                first.name(),
                first.sides(),
                count,
                mirroredCount,
                first.distance(),
                first.baseDistance(),
                cornerRadius,
                first.area(),
                opposite,
                kinds);
    }

    private int indexOf(SegmentKind kind) {
        for (int i = 0; i < kinds.size(); i++) {
            if (sameOutline(kinds.get(i), kind)) {
                return i;
            }
        }
        throw new IllegalStateException("A face has a segment that the first face of its kind lacks");
    }

    private static boolean sameOutline(SegmentKind a, SegmentKind b) {
        return Math.abs(a.baseLeft() - b.baseLeft()) < FaceOutline.SAME
                && Math.abs(a.baseRight() - b.baseRight()) < FaceOutline.SAME;
    }

    private static SegmentKind segmentKind(FaceOutline outline, int edge) {
        double left = Math.min(outline.left().get(edge), outline.right().get(edge));
        double right = Math.max(outline.left().get(edge), outline.right().get(edge));
        if (right - left < FaceOutline.SAME) {
            left = (left + right) / 2;
            right = left;
        }
        double seam = Math.hypot(outline.distance(), outline.baseDistance());
        return new SegmentKind(
                "",
                outline.baseDistance(),
                left,
                right,
                seam,
                Math.hypot(seam, left),
                Math.hypot(seam, right),
                0,
                0,
                0);
    }

    private int perFace(SegmentKind kind) {
        int count = 0;
        for (int i = 0; i < first.sides(); i++) {
            count += sameOutline(segmentKind(first, i), kind) ? 1 : 0;
        }
        return count;
    }

    private static SegmentKind counted(SegmentKind k, String letter, int perFace, int plain, int mirrored) {
        return new SegmentKind(
                letter,
                k.baseDistance(),
                k.baseLeft(),
                k.baseRight(),
                k.seamRadius(),
                k.leftCornerRadius(),
                k.rightCornerRadius(),
                perFace,
                plain,
                mirrored);
    }
}
