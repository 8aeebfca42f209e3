package org.orbwright.paper;

import static org.orbwright.paper.DesignSections.name;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SawAngles.SegmentAngles;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.sheet.Answer;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** The parts of a sheet in a few tables each, to be read at a glance. */
final class SummarySections {
    private static final int MASS_DECIMALS = 3;
    private static final int SHARE_DECIMALS = 1;
    private static final int BOARD_FEET_DECIMALS = 2;
    private static final int CUBIC_METRES_DECIMALS = 5;
    private static final String NONE = "-";

    private final Answer sheet;
    private final LengthUnit unit;

    private SummarySections(Answer sheet) {
        this.sheet = sheet;
        this.unit = sheet.document().unit();
    }

    /** One section for each part that the sheet has. */
    static List<Section> of(Answer sheet) {
        SummarySections summary = new SummarySections(sheet);
        List<Section> sections = new ArrayList<>(List.of(summary.angles(), summary.segments()));
        if (sheet.yield() != null) {
            sections.add(summary.yields());
        }
        sections.add(summary.sphere());
        if (sheet.bands() != null) {
            sections.add(summary.bands());
        }
        return sections;
    }

    /** What is seen of each band on the sphere, beside its width on the flat panel. */
    static Section bands(Answer sheet) {
        return new SummarySections(sheet).bands();
    }

    private SetUp section(String title) {
        return new SetUp(title, unit, sheet.cautions());
    }

    private Section angles() {
        List<List<String>> tilts = new ArrayList<>();
        List<List<String>> mitres = new ArrayList<>();
        for (FaceAngles face : sheet.angles().faces()) {
            tilts.add(List.of(
                    face.face(),
                    Integer.toString(face.sides()),
                    Integer.toString(face.count()),
                    SetUp.degrees(face.bevel()),
                    SetUp.degrees(face.bladeTilt())));
            for (SegmentAngles segment : face.segments()) {
                mitres.add(List.of(
                        face.face(),
                        segment.segment(),
                        SetUp.degrees(segment.tipAngle()),
                        SetUp.degrees(segment.mitreGaugeLeft()),
                        SetUp.degrees(segment.mitreGaugeRight())));
            }
        }
        return section("Angles of the saw")
                .table(List.of("Panel", "Sides", "In one sphere", "Bevel, °", "Blade tilt, °"), tilts)
                .table(List.of("Panel", "Segment", "Tip, °", "Mitre left, °", "Mitre right, °"), mitres)
                .text("The blade tilt counts from upright, the mitre from square.")
                .build();
    }

    private Section segments() {
        SetUp section = section("Segments");
        List<List<String>> sizes = new ArrayList<>();
        List<List<String>> counts = new ArrayList<>();
        for (FaceSegments face : sheet.segments().faces()) {
            for (SegmentCut segment : face.segments()) {
                String panel = name(face.face(), face.places());
                String letter = DesignSections.letter(segment);
                sizes.add(List.of(
                        panel,
                        letter,
                        section.cell(face.baseDistance()),
                        section.cell(segment.base()),
                        section.cell(segment.legLeft()),
                        section.cell(segment.legRight())));
                counts.add(List.of(
                        panel,
                        letter,
                        Integer.toString(segment.perSphere()),
                        Integer.toString(segment.total()),
                        section.cell(segment.stopDistance()),
                        count(segment.perBlank())));
            }
        }
        return section.table(
                        List.of(
                                "Panel",
                                "Segment",
                                section.column("Height"),
                                section.column("Base"),
                                section.column("Left leg"),
                                section.column("Right leg")),
                        sizes)
                .table(
                        List.of(
                                "Panel",
                                "Segment",
                                "In one sphere",
                                "In all",
                                section.column("Stop to blade"),
                                "From one blank"),
                        counts)
                .build();
    }

    private Section yields() {
        SetUp section = section("Blanks and strips");
        List<List<String>> blanks = new ArrayList<>();
        List<List<String>> strips = new ArrayList<>();
        for (LaminationYield lamination : sheet.yield().laminations()) {
            String panel = name(lamination.face(), lamination.places());
            blanks.add(List.of(
                    panel,
                    count(lamination.blanks()),
                    section.cell(lamination.blankLength()),
                    section.cell(lamination.blankWidth()),
                    section.cell(lamination.blankThickness())));
            for (StripYield strip : lamination.strips()) {
                strips.add(List.of(
                        panel,
                        Integer.toString(strip.band()),
                        strip.species(),
                        count(strip.count()),
                        section.cell(strip.length()),
                        section.cell(strip.width()),
                        section.cell(strip.thickness())));
            }
        }
        List<String> size = List.of(section.column("Length"), section.column("Width"), section.column("Thickness"));
        return section.table(headings(List.of("Panel", "Blanks"), size), blanks)
                .table(headings(List.of("Panel", "Band", "Wood", "Strips"), size), strips)
                .text("Bands are numbered from the base to the tip.")
                .table(woodHeadings(), woods())
                .build();
    }

    private boolean metric() {
        return unit == LengthUnit.MM;
    }

    private List<String> woodHeadings() {
        return List.of("Wood", "Strips", metric() ? "In strips, m³" : "In strips, board feet", "In spheres, kg");
    }

    private List<List<String>> woods() {
        Quantity quantity = metric() ? Quantity.CUBIC_METRES : Quantity.BOARD_FEET;
        int decimals = metric() ? CUBIC_METRES_DECIMALS : BOARD_FEET_DECIMALS;
        List<List<String>> rows = new ArrayList<>();
        for (SpeciesYield wood : sheet.yield().species()) {
            Double volume = wood.stripVolume();
            rows.add(List.of(
                    wood.species(),
                    count(wood.strips()),
                    volume == null ? NONE : Rounding.plain(volume * quantity.factor(unit), decimals),
                    mass(wood.finishedMass())));
        }
        return rows;
    }

    private Section sphere() {
        SphereSizing sphere = sheet.sphere();
        SetUp section = section("Sphere and wall")
                .length("Across flats", sphere.acrossFlats())
                .length("Shortest edge", sphere.edge())
                .length("Over the corners, to swing clear", sphere.swingDiameter())
                .length("Diameter of the sphere", sphere.diameter())
                .length("Largest sphere that the solid gives", sphere.largestDiameter());
        if (sphere.thinnestWall() != null) {
            section.wall(sphere.thinnestWall());
        }
        List<List<String>> removals = new ArrayList<>();
        List<List<String>> walls = new ArrayList<>();
        for (FaceSizing face : sphere.faces()) {
            removals.add(List.of(
                    face.face(),
                    section.cell(face.removal().faceCentre()),
                    section.cell(face.removal().edgeMiddle()),
                    section.cell(face.removal().corner())));
            if (face.wall() != null) {
                walls.add(List.of(
                        face.face(),
                        section.cell(face.wall().faceCentre()),
                        section.cell(face.wall().edgeMiddle()),
                        section.cell(face.wall().corner())));
            }
        }
        List<String> places =
                List.of(section.column("At the centre"), section.column("Edge middle"), section.column("Corner"));
        section.table(headings(List.of("Wood turned away"), places), removals)
                .table(headings(List.of("Wall left"), places), walls);
        if (sheet.yield() != null) {
            section.table(List.of("Sphere", "Copies", "Mass, kg"), spheres());
        }
        return section.build();
    }

    private List<List<String>> spheres() {
        List<List<String>> rows = new ArrayList<>();
        for (SphereYield sphere : sheet.yield().spheres()) {
            rows.add(List.of(sphere.set().name(), Integer.toString(sphere.count()), mass(sphere.mass())));
        }
        return rows;
    }

    private Section bands() {
        SetUp section = section("Bands that are seen on the sphere");
        List<List<String>> rows = new ArrayList<>();
        for (FaceBands face : sheet.bands().faces()) {
            for (SegmentBands segment : face.segments()) {
                String letter =
                        segment.segment() + (segment.mirrored() ? "*" : "") + (segment.turned() ? ", face down" : "");
                List<String> of = List.of(name(face.face(), face.places()), letter);
                segment.upright().forEach(band -> rows.add(band(of, "upright", band, section)));
                if (segment.inverted() != null && face.sets() > 1) {
                    segment.inverted().forEach(band -> rows.add(band(of, "inverted", band, section)));
                }
            }
        }
        return section.table(
                        List.of(
                                "Panel",
                                "Segment",
                                "Set",
                                "Band",
                                "Wood",
                                section.column("Flat"),
                                section.column("Edge middle"),
                                section.column("Left corner"),
                                section.column("Right corner"),
                                "Left, %"),
                        rows)
                .text("The last column is the share of the flat band's area that is left above the sphere.")
                .build();
    }

    private static List<String> band(List<String> of, String set, BandView band, SetUp section) {
        return headings(
                of,
                List.of(
                        set,
                        Integer.toString(band.band()),
                        band.species(),
                        section.cell(band.flatWidth()),
                        section.cell(band.visibleWidth().edgeMiddle()),
                        section.cell(band.visibleWidth().leftCorner()),
                        section.cell(band.visibleWidth().rightCorner()),
                        Rounding.plain(100 * band.survival(), SHARE_DECIMALS)));
    }

    private static List<String> headings(List<String> first, List<String> last) {
        List<String> all = new ArrayList<>(first);
        all.addAll(last);
        return all;
    }

    private static String count(Integer count) {
        return count == null ? NONE : count.toString();
    }

    private static String mass(Double kilograms) {
        return kilograms == null ? NONE : Rounding.plain(kilograms, MASS_DECIMALS);
    }
}
