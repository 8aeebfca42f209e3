package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.assembly.BlankGluing;
import org.orbwright.assembly.GlueWork;
import org.orbwright.design.BandSet;
import org.orbwright.design.Places;
import org.orbwright.drawing.SphereDrawing;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.Layout;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.sphere.SphereSizing;

/** The design in brief, its strips and its blanks. */
final class DesignSections {
    /** The finished sphere is drawn as its own endpoint draws it. */
    private static final double AZIMUTH = Math.toRadians(25);

    private static final double ELEVATION = Math.toRadians(20);
    private static final int BOARD_FEET_DECIMALS = 2;
    private static final int CUBIC_METRES_DECIMALS = 5;

    private DesignSections() {}

    static Section brief(Answers answers) {
        SphereSizing sphere = answers.sheet().sphere();
        SetUp section = answers.section("The design in brief");
        section.cautions(Step.GENERAL)
                .text("Solid: " + answers.design().solid().name() + ". Take the set-ups in their order, tick each box,"
                        + " and write what you measured into the blanks.");
        if (answers.design().unit() == LengthUnit.IN) {
            section.text("Beside inches in decimals stands the nearest 1/64 in as a rule shows it. What follows it is"
                    + " how much the true measure is more (+) or less (-) than that, in inches: 3 9/64 + 0.003 is three"
                    + " thousandths more than 3 9/64.");
        }
        section.count("Spheres", answers.design().copies())
                .length("Across flats", sphere.acrossFlats())
                .length("Shortest edge, at the joint distance", sphere.edge())
                .length("Panel thickness", answers.design().thickness())
                .length("Land", answers.design().land())
                .length("Diameter over the corners, to swing clear", sphere.swingDiameter())
                .length("Diameter of the sphere", sphere.diameter())
                .length("Largest sphere that the solid gives", sphere.largestDiameter())
                .length("Thinnest wall", sphere.thinnestWall())
                .count("Segments in one sphere", answers.sheet().segments().perSphere())
                .count("Segments in all spheres", answers.sheet().segments().total());
        List<List<String>> rows = new ArrayList<>();
        for (FaceSegments face : answers.sheet().segments().faces()) {
            rows.add(List.of(
                    name(face.face(), face.places()),
                    Integer.toString(face.panelsPerSphere()),
                    Integer.toString(face.panels()),
                    section.cell(face.baseDistance())));
        }
        section.table(List.of("Panel", "In one sphere", "In all", section.column("Base distance")), rows);
        section.picture(SphereDrawing.draw(answers.design(), BandSet.UPRIGHT, AZIMUTH, ELEVATION));
        return section.build();
    }

    static Section strips(Answers answers) {
        SetUp section = answers.section("Stock and strips");
        section.cautions(Step.RIPPING);
        for (LaminationYield lamination : answers.sheet().yield().laminations()) {
            section.heading("Strips for the " + name(lamination.face(), lamination.places()) + " blanks")
                    .measure("Thickness", lamination.blankThickness())
                    .length("Length", lamination.blankLength());
            List<List<String>> rows = new ArrayList<>();
            for (StripYield strip : lamination.strips()) {
                rows.add(List.of(
                        Integer.toString(strip.band()),
                        strip.species(),
                        section.cell(strip.width()),
                        counted(strip.count()),
                        ""));
            }
            section.table(List.of("Band", "Wood", section.column("Width"), "Strips", "Measured"), rows)
                    .check("Bands are numbered from the base to the tip. All strips ripped, and each pile marked with"
                            + " its band.");
        }
        section.heading("Wood in all strips, without kerfs and waste");
        boolean metric = answers.design().unit() == LengthUnit.MM;
        Quantity quantity = metric ? Quantity.CUBIC_METRES : Quantity.BOARD_FEET;
        for (SpeciesYield wood : answers.sheet().yield().species()) {
            if (wood.stripVolume() != null) {
                section.number(
                        wood.species() + ", " + wood.strips() + " strips",
                        wood.stripVolume() * quantity.factor(answers.design().unit()),
                        metric ? CUBIC_METRES_DECIMALS : BOARD_FEET_DECIMALS,
                        metric ? "m³" : "board feet");
            }
        }
        return section.build();
    }

    static Section blanks(Answers answers) {
        SetUp section = answers.section("Blanks");
        section.cautions(Step.GLUING);
        List<LaminationYield> laminations = answers.sheet().yield().laminations();
        for (int i = 0; i < laminations.size(); i++) {
            LaminationYield lamination = laminations.get(i);
            BlankGluing gluing = answers.assembly().blankGluings().get(i);
            section.heading(name(lamination.face(), lamination.places()) + " blanks");
            if (lamination.blanks() == null) {
                section.text("The blank is too short for one segment: see the findings.");
            } else {
                section.count("Blanks", lamination.blanks());
            }
            section.measure("Width across the bands", lamination.blankWidth())
                    .measure("Thickness", lamination.blankThickness())
                    .length("Length", lamination.blankLength());
            for (GlueWork stage : gluing.stages()) {
                section.check("Glue " + stage.seams() + (stage.seams() == 1 ? " joint" : " joints") + " of each blank:"
                        + " about " + glue(stage) + ", " + minutes(stage) + ".");
            }
            section.check("Glue hard; both faces flat and parallel; edge of the first band marked.");
            yields(answers.sheet().segments().faces().get(i), section);
        }
        return section.build();
    }

    private static void yields(FaceSegments face, SetUp section) {
        for (SegmentCut segment : face.segments()) {
            section.count("Segments " + letter(segment) + " from one blank", segment.perBlank())
                    .length("Length they take, trims and kerfs included", segment.lengthUsed())
                    .length("Length left over", segment.lengthLeft());
            if (face.layout() == Layout.STICKS) {
                section.text("Bands are tilted: sticks are sawn across the blank at the band angle, and each gives one"
                        + " segment.");
            }
        }
    }

    /** About how much glue a stage takes. */
    static String glue(GlueWork work) {
        return String.format(Locale.ROOT, "%.1f g of glue", work.glueMass() * 1000);
    }

    /** How long a stage takes, and whether that fits. */
    static String minutes(GlueWork work) {
        String time = String.format(Locale.ROOT, "%.1f min", work.time());
        return work.fits() ? time : time + ", which is longer than the open time";
    }

    /** A panel's name with the half that is meant. */
    static String name(String face, Places places) {
        return places == Places.ALL ? face : face + ", " + places.name().toLowerCase(Locale.ROOT) + " segments";
    }

    /** A segment's letter; an asterisk marks the mirror image. */
    static String letter(SegmentCut segment) {
        return segment.segment() + (segment.mirrored() ? "*" : "");
    }

    private static String counted(Integer count) {
        return count == null ? "-" : count.toString();
    }
}
