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
        SetUp section = section("Angles of the saw");
        List<List<String>> tilts = new ArrayList<>();
        List<List<String>> mitres = new ArrayList<>();
        for (FaceAngles face : sheet.angles().faces()) {
            String bevel = SetUp.degrees(face.bevel());
            tilts.add(section.row(face.face(), face.sides(), face.count(), bevel, SetUp.degrees(face.bladeTilt())));
            for (SegmentAngles segment : face.segments()) {
                mitres.add(List.of(
                        face.face(),
                        segment.segment(),
                        SetUp.degrees(segment.tipAngle()),
                        SetUp.degrees(segment.mitreGaugeLeft()),
                        SetUp.degrees(segment.mitreGaugeRight())));
            }
        }
        return section.table(List.of("Panel", "Sides", "In one sphere", "Bevel, °", "Blade tilt, °"), tilts)
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
                sizes.add(section.row(
                        panel, letter, face.baseDistance(), segment.base(), segment.legLeft(), segment.legRight()));
                counts.add(section.row(
                        panel,
                        letter,
                        segment.perSphere(),
                        segment.total(),
                        segment.stopDistance(),
                        segment.perBlank()));
            }
        }
        return section.table(section.headings("Panel", "Segment", "Height,", "Base,", "Left leg,", "Right leg,"), sizes)
                .table(
                        section.headings(
                                "Panel", "Segment", "In one sphere", "In all", "Stop to blade,", "From one blank"),
                        counts)
                .build();
    }

    private Section yields() {
        SetUp section = section("Blanks and strips");
        List<List<String>> blanks = new ArrayList<>();
        List<List<String>> strips = new ArrayList<>();
        for (LaminationYield lamination : sheet.yield().laminations()) {
            String panel = name(lamination.face(), lamination.places());
            blanks.add(section.row(
                    panel,
                    lamination.blanks(),
                    lamination.blankLength(),
                    lamination.blankWidth(),
                    lamination.blankThickness()));
            for (StripYield strip : lamination.strips()) {
                strips.add(section.row(
                        panel,
                        strip.band(),
                        strip.species(),
                        strip.count(),
                        strip.length(),
                        strip.width(),
                        strip.thickness()));
            }
        }
        return section.table(section.headings("Panel", "Blanks", "Length,", "Width,", "Thickness,"), blanks)
                .table(section.headings("Panel", "Band", "Wood", "Strips", "Length,", "Width,", "Thickness,"), strips)
                .text("Bands are numbered from the base to the tip.")
                .table(
                        List.of(
                                "Wood",
                                "Strips",
                                metric() ? "In strips, m³" : "In strips, board feet",
                                "In spheres, kg"),
                        woods(section))
                .build();
    }

    private boolean metric() {
        return unit == LengthUnit.MM;
    }

    private List<List<String>> woods(SetUp section) {
        Quantity quantity = metric() ? Quantity.CUBIC_METRES : Quantity.BOARD_FEET;
        int decimals = metric() ? CUBIC_METRES_DECIMALS : BOARD_FEET_DECIMALS;
        List<List<String>> rows = new ArrayList<>();
        for (SpeciesYield wood : sheet.yield().species()) {
            Double volume = wood.stripVolume();
            String strips = volume == null ? NONE : Rounding.plain(volume * quantity.factor(unit), decimals);
            rows.add(section.row(wood.species(), wood.strips(), strips, mass(wood.finishedMass())));
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
            removals.add(section.row(
                    face.face(),
                    face.removal().faceCentre(),
                    face.removal().edgeMiddle(),
                    face.removal().corner()));
            if (face.wall() != null) {
                walls.add(section.row(
                        face.face(),
                        face.wall().faceCentre(),
                        face.wall().edgeMiddle(),
                        face.wall().corner()));
            }
        }
        section.table(section.headings("Wood turned away", "At the centre,", "Edge middle,", "Corner,"), removals)
                .table(section.headings("Wall left", "At the centre,", "Edge middle,", "Corner,"), walls);
        if (sheet.yield() != null) {
            section.table(
                    List.of("Sphere", "Copies", "Mass, kg"),
                    sheet.yield().spheres().stream()
                            .map(each -> section.row(each.set().name(), each.count(), mass(each.mass())))
                            .toList());
        }
        return section.build();
    }

    private Section bands() {
        SetUp section = section("Bands that are seen on the sphere");
        List<List<String>> rows = new ArrayList<>();
        for (FaceBands face : sheet.bands().faces()) {
            for (SegmentBands segment : face.segments()) {
                String letter =
                        segment.segment() + (segment.mirrored() ? "*" : "") + (segment.turned() ? ", face down" : "");
                String panel = name(face.face(), face.places());
                segment.upright().forEach(band -> rows.add(band(panel, letter, "upright", band, section)));
                if (segment.inverted() != null && face.sets() > 1) {
                    segment.inverted().forEach(band -> rows.add(band(panel, letter, "inverted", band, section)));
                }
            }
        }
        return section.table(
                        section.headings(
                                "Panel",
                                "Segment",
                                "Set",
                                "Band",
                                "Wood",
                                "Flat,",
                                "Edge middle,",
                                "Left corner,",
                                "Right corner,",
                                "Left, %"),
                        rows)
                .text("The last column is the share of the flat band's area that is left above the sphere.")
                .build();
    }

    private static List<String> band(String panel, String letter, String set, BandView band, SetUp section) {
        return section.row(
                panel,
                letter,
                set,
                band.band(),
                band.species(),
                band.flatWidth(),
                band.visibleWidth().edgeMiddle(),
                band.visibleWidth().leftCorner(),
                band.visibleWidth().rightCorner(),
                Rounding.plain(100 * band.survival(), SHARE_DECIMALS));
    }

    private static String mass(Double kilograms) {
        return kilograms == null ? NONE : Rounding.plain(kilograms, MASS_DECIMALS);
    }
}
