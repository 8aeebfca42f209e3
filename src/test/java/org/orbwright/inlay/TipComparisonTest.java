package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.nothing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Band;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.inlay.TipComparison.GrainRun;
import org.orbwright.inlay.TipComparison.TipRisk;

/** How tips are compared. */
class TipComparisonTest {
    private static final int STEPS = 60;

    private static DesignRequest pentagons(double bandAngle) {
        return sketch().size(SizeBy.EDGE, 80)
                .laminations(lamination(null, bandAngle, 20.0, 15.0, null))
                .request();
    }

    @Test
    @DisplayName("5 mm from a pentagon's tip the grain is 2 * 5 tan 36 = 7.26543 mm long")
    void grainAcrossATip() {
        TipComparison tips = nothing(pentagons(0)).tipDistance(5).plan().tips();
        assertEquals(5, tips.distance());
        TipRisk tip = tips.tips().get(0);
        assertEquals(GrainRun.ACROSS, tip.grain());
        assertEquals(Math.PI / 2, tip.grainAngle(), 1e-12);
        assertEquals(72, Math.toDegrees(tip.tipAngle()), 1e-9);
        assertEquals(7.26543, tip.grainLength(), 5e-6);
        assertEquals(tip.grainLength(), tip.width(), 1e-12);
    }

    @Test
    void tipsOfBothSetsHaveTheWoodsOfTheTwoEdges() {
        DesignRequest request = sketch().copies(2)
                .size(SizeBy.EDGE, 80)
                .laminations(lamination(null, null, 20.0, 15.0, null))
                .request();
        List<TipRisk> tips = nothing(request).tipDistance(5).plan().tips().tips();
        assertEquals(List.of(1, 1), tips.stream().map(TipRisk::rank).toList());
        TipRisk upright = tips.get(0).set() == BandSet.UPRIGHT ? tips.get(0) : tips.get(1);
        TipRisk inverted = tips.get(0).set() == BandSet.UPRIGHT ? tips.get(1) : tips.get(0);
        assertEquals(List.of("wood 3"), upright.woods());
        assertEquals(List.of("wood 1"), inverted.woods());
        assertEquals(20, inverted.bandWidth());
        // The rest: 80 * 0.688191 - 35 = 20.0553.
        assertEquals(20.0553, upright.bandWidth(), 5e-5);
    }

    @Test
    @DisplayName("grain along the axis runs from the tip to the base: 80 * 0.688191 = 55.0553 mm")
    void grainAlongATip() {
        TipRisk tip = nothing(pentagons(90)).plan().tips().tips().get(0);
        assertEquals(GrainRun.ALONG, tip.grain());
        assertEquals(0, tip.grainAngle(), 1e-12);
        assertEquals(55.0553, tip.grainLength(), 5e-5);
    }

    @Test
    void sharperTipsComeFirst() {
        DesignRequest request = sketch().solid("truncated-dodecahedron")
                .size(SizeBy.EDGE, 60)
                .panel(20, null)
                .laminations(lamination("triangle", null, 5.0, null), lamination("decagon", null, 5.0, null))
                .request();
        List<TipRisk> tips = nothing(request).face("triangle").plan().tips().tips();
        assertEquals("decagon", tips.get(0).face());
        assertEquals("triangle", tips.get(tips.size() - 1).face());
        assertEquals(10 * Math.tan(Math.toRadians(18)), tips.get(0).grainLength(), 1e-12);
        assertEquals(
                10 * Math.tan(Math.toRadians(60)), tips.get(tips.size() - 1).grainLength(), 1e-12);
    }

    @Test
    void distanceBeyondTheBaseIsRefusedAndTheUsualOneNeverIs() {
        Violation violation = nothing(pentagons(0)).tipDistance(56).refusal();
        assertEquals("/inlays/tipDistance", violation.path());
        assertEquals("BEYOND_BASE", violation.code());
        DesignRequest small = sketch().size(SizeBy.EDGE, 8)
                .panel(1.5, null)
                .wall(0.1)
                .allowance(0)
                .laminations(lamination(null, null, 2.0, null))
                .request();
        // Half of 8 * 0.688191.
        assertEquals(2.752764, nothing(small).plan().tips().distance(), 5e-7);
    }

    /** Walks along the grain with small steps, and asks of points near the tip which band they lie in. */
    @Property(tries = 200)
    void grainAndBandsAreThoseOfPointsInTheSegment(
            @ForAll("designs") DesignRequest request, @ForAll @DoubleRange(min = 0.05, max = 0.9) double part) {
        Design design = Design.of(request);
        double smallest =
                design.panels().stream().mapToDouble(Panel::baseDistance).min().orElseThrow();
        double distance = part * smallest;
        List<TipRisk> tips = nothing(request)
                .face(design.panels().get(0).face())
                .tipDistance(distance / design.unit().millimetres())
                .plan()
                .tips()
                .tips();
        double before = 0;
        for (TipRisk tip : tips) {
            Panel panel = design.panels().stream()
                    .filter(p -> p.face().equals(tip.face()))
                    .findFirst()
                    .orElseThrow();
            Piece piece = panel.sawn().stream()
                    .filter(p -> p.segment().equals(tip.segment()) && p.mirrored() == tip.mirrored())
                    .findFirst()
                    .orElseThrow();
            double angle = panel.lamination().bandAngle();
            double walked = walk(piece, distance, -Math.sin(angle), Math.cos(angle))
                    + walk(piece, distance, Math.sin(angle), -Math.cos(angle));
            assertEquals(walked, tip.grainLength(), 1e-7 * walked);
            assertTrue(tip.grainLength() >= before - 1e-6);
            before = tip.grainLength();
            assertTrue(tip.bands().containsAll(sampled(panel, piece, tip.set(), distance)));
            assertTrue(reaching(panel, piece, tip.set(), distance).containsAll(tip.bands()));
            assertTrue(sampled(panel, piece, tip.set(), 1e-6 * distance)
                    .contains(tip.bands().get(0)));
        }
    }

    private static boolean inside(Piece piece, double x, double y) {
        return x <= piece.base() && y * piece.base() <= x * piece.right() && -y * piece.base() <= x * piece.left();
    }

    private static double walk(Piece piece, double distance, double dx, double dy) {
        double step = piece.base() + piece.baseLength();
        double walked = 0;
        for (int i = 0; i < STEPS; i++) {
            if (inside(piece, distance + (walked + step) * dx, (walked + step) * dy)) {
                walked += step;
            }
            step /= 2;
        }
        return walked;
    }

    /** The bands of a grid of points: strips are laid off from the top of the piece, one after the other. */
    private static Set<Integer> sampled(Panel panel, Piece piece, BandSet set, double distance) {
        double angle = panel.lamination().bandAngle();
        List<Band> bands = panel.lamination().bands();
        Set<Integer> found = new LinkedHashSet<>();
        for (int i = 1; i < STEPS; i++) {
            for (int j = 1; j < STEPS; j++) {
                double x = distance * i / STEPS;
                double y = x / piece.base() * (-piece.left() + piece.baseLength() * j / STEPS);
                double below = piece.top(angle) - x * Math.cos(angle) - y * Math.sin(angle);
                int place = 0;
                while (place < bands.size() - 1
                        && below >= bands.get(number(bands, set, place)).width()) {
                    below -= bands.get(number(bands, set, place)).width();
                    place++;
                }
                found.add(number(bands, set, place) + 1);
            }
        }
        return found;
    }

    /** The bands whose strip overlaps the depths of the three corners of the wood at the tip. */
    private static Set<Integer> reaching(Panel panel, Piece piece, BandSet set, double distance) {
        double angle = panel.lamination().bandAngle();
        List<Band> bands = panel.lamination().bands();
        double tip = piece.top(angle);
        double left = tip - distance * (Math.cos(angle) - piece.left() / piece.base() * Math.sin(angle));
        double right = tip - distance * (Math.cos(angle) + piece.right() / piece.base() * Math.sin(angle));
        double least = Math.min(tip, Math.min(left, right));
        double most = Math.max(tip, Math.max(left, right));
        Set<Integer> found = new LinkedHashSet<>();
        double from = 0;
        for (int place = 0; place < bands.size(); place++) {
            double to = from + bands.get(number(bands, set, place)).width();
            boolean last = place == bands.size() - 1;
            if ((last || to > least - 1e-6) && from < most + 1e-6) {
                found.add(number(bands, set, place) + 1);
            }
            from = to;
        }
        return found;
    }

    private static int number(List<Band> bands, BandSet set, int place) {
        return set == BandSet.UPRIGHT ? place : bands.size() - 1 - place;
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(GeneratedDesigns.anyBandAngle());
    }
}
