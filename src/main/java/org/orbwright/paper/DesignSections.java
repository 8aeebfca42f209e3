package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.orbwright.assembly.BlankGluing;
import org.orbwright.assembly.GlueWork;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Places;
import org.orbwright.design.SphereKind;
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
import org.orbwright.stock.StockPlan.StripNeed;

/** The design in brief, its strips and its blanks. */
final class DesignSections {
    /** Angles from square that are written as 0; in radians. */
    private static final double SQUARE = Math.toRadians(0.005);

    private static final int BOARD_FEET_DECIMALS = 2;
    private static final int CUBIC_METRES_DECIMALS = 5;

    private DesignSections() {}

    /** What is read before the first cut, for a sheet without its summary. */
    static Section before(Answers answers) {
        SetUp section = answers.section("Before the first cut");
        begin(answers, section);
        return section.build();
    }

    private static void begin(Answers answers, SetUp section) {
        section.cautions(Step.GENERAL)
                .text("Solid: " + answers.design().solid().name()
                        + ". Take the set-ups in their order, tick each box, and write what you measured into"
                        + " the boxes.");
        if (answers.design().unit() == LengthUnit.IN) {
            section.text(
                    "Beside inches in decimals stands the nearest 1/64 in as a rule shows it. What follows it is how"
                            + " much the true measure is more (+) or less (-), in inches. 3 9/64 + 0.003 is three"
                            + " thousandths more than 3 9/64.");
        }
    }

    static Section brief(Answers answers) {
        SphereSizing sphere = answers.sphere();
        SetUp section = answers.section("The design in brief");
        begin(answers, section);
        section.count("Spheres", answers.design().copies())
                .length("Across flats", sphere.acrossFlats())
                .length("Shortest edge, at the joint distance", sphere.edge())
                .length("Land", answers.design().land())
                .length("Diameter over the corners, to swing clear", sphere.swingDiameter())
                .length("Diameter of the sphere", sphere.diameter())
                .length("Largest sphere that the solid gives", sphere.largestDiameter())
                .count("Segments in one sphere", answers.segments().perSphere())
                .count("Segments to saw, spares included", answers.segments().total());
        if (answers.design().has(DesignPart.THICKNESS)) {
            section.length("Panel thickness", answers.design().thickness()).wall(sphere.thinnestWall());
        }
        section.table(
                section.headings("Panel", "In one sphere", "In all", "Base distance,"),
                answers.segments().faces().stream()
                        .map(face -> section.row(
                                name(face.face(), face.places()),
                                face.panelsPerSphere(),
                                face.panels(),
                                face.baseDistance()))
                        .toList());
        for (SphereKind kind : answers.design().spheres()) {
            section.picture(
                    SphereDrawing.draw(answers.design(), kind, SphereDrawing.AZIMUTH, SphereDrawing.ELEVATION, true));
        }
        return section.build();
    }

    static Section strips(Answers answers) {
        SetUp section = answers.section("Strips");
        section.cautions(Step.RIPPING);
        section.text(
                answers.stock() == null
                        ? "No allowances are stated, so strips have the sizes of their bands."
                        : "Strips leave the saw wider and thicker than their bands, by what is planed off later.");
        List<LaminationYield> laminations = answers.yields().laminations();
        for (int i = 0; i < laminations.size(); i++) {
            LaminationYield lamination = laminations.get(i);
            int index = answers.design().panels().get(i).lamination().index();
            section.heading("Strips for " + blanks(lamination)).length("Length", lamination.blankLength());
            List<List<String>> rows = new ArrayList<>();
            for (StripYield strip : lamination.strips()) {
                Optional<StripNeed> ripped = StockSections.ripped(answers, index, strip.band());
                rows.add(section.row(
                        strip.band(),
                        strip.species(),
                        ripped.map(StripNeed::width).orElse(strip.width()),
                        ripped.map(StripNeed::thickness).orElse(strip.thickness()),
                        strip.width(),
                        strip.count(),
                        ""));
            }
            section.table(
                            section.headings(
                                    "Band",
                                    "Wood",
                                    "Rip to,",
                                    "Thickness,",
                                    "Width in the blank,",
                                    "Strips",
                                    "Measured"),
                            rows)
                    .check("Bands are numbered from the base to the tip. All strips ripped, and each pile marked with"
                            + " its band.");
        }
        section.heading("Wood in all strips, without kerfs and waste");
        boolean metric = answers.design().unit() == LengthUnit.MM;
        Quantity quantity = metric ? Quantity.CUBIC_METRES : Quantity.BOARD_FEET;
        for (SpeciesYield wood : answers.yields().species()) {
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
        section.cautions(Step.GLUING, Step.SURFACING);
        List<LaminationYield> laminations = answers.yields().laminations();
        for (int i = 0; i < laminations.size(); i++) {
            LaminationYield lamination = laminations.get(i);
            BlankGluing gluing = answers.assembly().blankGluings().get(i);
            section.heading(blanks(lamination));
            if (lamination.blanks() == null) {
                section.text("The blank is too short for one segment: see the findings.");
            } else {
                section.count("Blanks", lamination.blanks());
            }
            section.measure("Width across the bands", lamination.blankWidth())
                    .measure("Thickness", lamination.blankThickness())
                    .length("Length", lamination.blankLength());
            String part = gluing.layers() > 1 ? " of each layer:" : " of each blank:";
            for (GlueWork stage : gluing.stages()) {
                section.check("Glue " + stage.seams() + (stage.seams() == 1 ? " joint" : " joints") + part + " about "
                        + glue(stage) + ", " + minutes(stage) + ".");
            }
            for (GlueWork stage : gluing.layerStages()) {
                section.check("Plane the layers, and glue " + (stage.seams() + 1)
                        + " of them face to face, bands on bands: about " + glue(stage) + ", " + minutes(stage) + ".");
            }
            section.check("Glue hard; both faces flat and parallel; edge of the first band marked.");
            FaceSegments face = answers.segments().faces().get(i);
            yields(face, lamination, section);
            if (face.layout() == Layout.STICKS) {
                sticks(
                        answers.design().panels().get(i).lamination().bandAngle(),
                        face,
                        answers.design().kerf(),
                        section);
            }
        }
        return section.build();
    }

    private static void yields(FaceSegments face, LaminationYield lamination, SetUp section) {
        for (int i = 0; i < face.segments().size(); i++) {
            SegmentCut segment = face.segments().get(i);
            Integer blanks = lamination.segments().get(i).blanks();
            if (face.segments().size() > 1 && blanks != null) {
                section.count("Blanks for segment " + letter(segment), blanks);
            }
            section.count("Segments " + letter(segment) + " from one blank", segment.perBlank())
                    .length("Length they take, trims and kerfs included", segment.lengthUsed())
                    .length("Length left over", segment.lengthLeft());
        }
    }

    /**
     * How sticks are sawn across a blank whose bands are tilted. The gauge's angle and the stop are those of a cut that
     * crosses parallel bands at the band angle.
     */
    private static void sticks(double bandAngle, FaceSegments face, double kerf, SetUp section) {
        double fromSquare = Math.PI / 2 - Math.abs(bandAngle);
        double sin = Math.sin(Math.abs(bandAngle));
        section.heading("Sticks from the " + name(face.face(), face.places()) + " blanks")
                .cautions(Step.CROSSCUTTING);
        section.text("Bands are tilted: sticks are sawn across the blank at the band angle, and each gives one"
                        + " segment. The blank lies with its outer face up and the edge of its first band towards"
                        + " you. "
                        + lean(bandAngle, fromSquare))
                .angle("Band angle, between the base and the bands", bandAngle)
                .measureAngle("Mitre gauge from square, for the sticks", fromSquare)
                .measure("Width of a stick, square to its sides", face.baseDistance())
                .measure("The same along the blank's edge", face.baseDistance() / sin)
                .length("Stick and kerf, along the blank's edge", (face.baseDistance() + kerf) / sin)
                .check("Sticks sawn, the edge of the first band marked on each; base along one side of the stick, tip"
                        + " on the other.");
    }

    private static String lean(double bandAngle, double fromSquare) {
        if (fromSquare < SQUARE) {
            return "Cuts are square to its edge.";
        }
        return "From that edge to the far one cuts lean to the " + (bandAngle > 0 ? "left." : "right.");
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

    /** The blanks of a face kind, or of the half of its segments that is meant. */
    private static String blanks(LaminationYield lamination) {
        return lamination.places() == Places.ALL
                ? lamination.face() + " blanks"
                : "blanks of the " + lamination.face() + "'s "
                        + lamination.places().name().toLowerCase(Locale.ROOT) + " segments";
    }

    /** A panel's name with the half that is meant. */
    static String name(String face, Places places) {
        return places == Places.ALL ? face : face + ", " + places.name().toLowerCase(Locale.ROOT) + " segments";
    }

    /** A segment's letter; an asterisk marks the mirror image. */
    static String letter(SegmentCut segment) {
        return segment.segment() + (segment.mirrored() ? "*" : "");
    }
}
