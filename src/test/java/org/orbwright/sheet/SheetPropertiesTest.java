package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.orbwright.band.BandSurvival;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.Station;
import org.orbwright.band.BandSurvival.VisibleWidth;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.source.Source;

/** What holds for every design. */
@Source(INVARIANT)
@Slow
class SheetPropertiesTest {
    private static final int TRIES = 150;

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }

    private static Answer sheet(Designs design) {
        return SheetCalculator.sheet(design.document(), 5);
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void everyNumberIsFinite(@ForAll("designs") Designs design) {
        AnswerNumbers.assertFinite(AnswerNumbers.of(sheet(design)));
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void millimetresAndInchesGiveTheSameGeometry(@ForAll("designs") Designs design) {
        Designs inches = design.times(1 / 25.4).in(LengthUnit.IN);
        AnswerNumbers.assertScaled(
                AnswerNumbers.ofGeometry(sheet(design)),
                AnswerNumbers.ofGeometry(sheet(inches)),
                1,
                design.size().value());
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void lengthsAreasAndVolumesScale(
            @ForAll("designs") Designs design, @ForAll @DoubleRange(min = 0.25, max = 8) double factor) {
        AnswerNumbers.assertScaled(
                AnswerNumbers.ofGeometry(sheet(design)),
                AnswerNumbers.ofGeometry(sheet(design.times(factor))),
                factor,
                design.size().value());
    }

    private static Stream<BandView> views(BandSurvival bands) {
        return bands.faces().stream()
                .flatMap(face -> face.segments().stream())
                .flatMap(segment -> Stream.concat(
                        segment.upright().stream(),
                        segment.inverted() == null ? Stream.of() : segment.inverted().stream()));
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void theVisibleWidthNeverExceedsWhatIsLeft(@ForAll("designs") Designs design) {
        views(sheet(design).bands()).forEach(SheetPropertiesTest::assertNoWiderThanWhatIsLeft);
    }

    private static void assertNoWiderThanWhatIsLeft(BandView view) {
        VisibleWidth width = view.visibleWidth();
        double most = width.widest() + 1e-9;
        assertTrue(width.edgeMiddle() <= most && width.leftCorner() <= most && width.rightCorner() <= most);
        for (Station station : view.profile()) {
            assertTrue(station.width() >= 0 && station.width() <= most);
        }
        if (view.sphereArea() < 1e-12) {
            assertEquals(0, width.widest(), 1e-3, "nothing can be seen of what is gone");
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void aLargerSphereNeverLowersSurvival(
            @ForAll("designs") Designs design, @ForAll @DoubleRange(min = 0.5, max = 1) double smaller) {
        double seam = 2 * design.build().seamRadius();
        double diameter = Math.min(seam, design.sphere().diameter());
        List<BandView> large = views(sheet(design.diameter(diameter)).bands()).toList();
        List<BandView> small =
                views(sheet(design.diameter(diameter * smaller)).bands()).toList();
        for (int i = 0; i < large.size(); i++) {
            assertTrue(small.get(i).survival() <= large.get(i).survival() + 1e-9);
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void allSegmentsStandOnTheSphere(@ForAll("designs") Designs design) {
        BandSurvival bands = sheet(design).bands();
        double share = bands.faces().stream()
                .flatMap(face -> face.segments().stream())
                .flatMap(segment -> segment.upright().stream())
                .mapToDouble(BandView::shareOfSphere)
                .sum();
        assertEquals(1, share, 1e-11);
        views(bands).forEach(view -> assertTrue(view.survival() >= 0 && view.survival() <= 1));
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void moreKerfNeverGivesMoreSegments(@ForAll("designs") Designs design, @ForAll @DoubleRange(max = 5) double more) {
        List<SegmentCut> thin = cuts(design);
        List<SegmentCut> thick =
                cuts(design.saw(design.saw().kerf() + more, design.saw().endTrim()));
        for (int i = 0; i < thin.size(); i++) {
            assertTrue(thick.get(i).perBlank() <= thin.get(i).perBlank());
        }
    }

    private static List<SegmentCut> cuts(Designs design) {
        return SheetCalculator.segments(design.document()).segments().faces().stream()
                .flatMap(face -> face.segments().stream())
                .toList();
    }
}
