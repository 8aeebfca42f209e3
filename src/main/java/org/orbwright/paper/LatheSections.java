package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.drawing.SectionDrawing;
import org.orbwright.notice.Article;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.sphere.SphereSizing.FaceSizing;
import org.orbwright.turning.CupHold;
import org.orbwright.turning.FinishPlan;
import org.orbwright.turning.Holding;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.Roughing;
import org.orbwright.turning.Roughing.PolygonProfile;
import org.orbwright.turning.SpeedLimits.SpeedLimit;

/** The work on the lathe. */
final class LatheSections {
    private static final int WHOLE = 0;
    private static final int SHARE_DECIMALS = 1;
    private static final int PERCENT = 100;
    /** In square millimetres. */
    private static final double SQUARE_CENTIMETRE = 100;

    private LatheSections() {}

    static Section mounting(Answers answers) {
        Holding holding = answers.turning().holding();
        SetUp section = answers.section("Mounting between discs");
        section.cautions(Step.MOUNTING);
        section.measure("Swing about this axis", holding.swing());
        seat("headstock", holding.head(), section);
        seat("tailstock", holding.tail(), section);
        section.number(
                "Share of the sphere that the tool reaches", holding.reachedShare() * PERCENT, SHARE_DECIMALS, "%");
        for (FaceSizing face : answers.sphere().faces()) {
            section.length("Disc that finds the centre of " + Article.with(face.face()), face.mountingDiscDiameter());
        }
        section.check(
                "Every seam looked at; discs glued on centre, glue hard; work turned once by hand, clear of bed and"
                        + " rest.");
        return section.build();
    }

    private static void seat(String end, Seat seat, SetUp section) {
        section.measure("Disc at the " + end, seat.disc())
                .length("From the solid's centre to it", seat.seatDistance())
                .length("Cap left there for the reversed sphere", seat.capDiameter());
    }

    static Section roughing(Answers answers) {
        Roughing roughing = answers.turning().roughing();
        SetUp section = answers.section("Roughing to the sphere");
        section.cautions(Step.TURNING);
        if (answers.build().path() != null) {
            section.cautions(Step.MILLING);
        }
        limits(answers, section);
        section.measure("Diameter as it leaves the tool", roughing.turnedDiameter());
        section.heading("Polygon method");
        section.text(
                "A cylinder as long as it is thick, then corner after corner taken off until the polygon is nearly the"
                        + " sphere. Marks stand half a side from the middle of each side.");
        section.table(
                section.headings("Sides", "Half a side,", "From the corner,", "Corner above the sphere,"),
                roughing.profiles().stream()
                        .map(p -> section.row(p.sides(), p.halfSide(), p.fromCorner(), p.aboveSphere()))
                        .toList());
        List<List<String>> corners = new ArrayList<>();
        for (PolygonProfile profile : roughing.profiles()) {
            profile.corners()
                    .forEach(corner -> corners.add(section.row(profile.sides(), corner.at(), corner.diameter(), "")));
        }
        section.table(section.headings("Sides", "Corner from the middle,", "Diameter,", "Measured"), corners);
        gauges(roughing, section);
        section.heading("Turning the sphere around").cautions(Step.REVERSING);
        if (answers.turning().cups() != null) {
            cups(answers.turning().cups(), section);
        }
        section.check("Caps and marks of the discs turned away; the sphere is round all over.");
        return section.build();
    }

    private static void cups(CupHold cups, SetUp section) {
        section.length("Cup: the sphere stands in it by", cups.depth())
                .length("Sphere's centre to the plane of the rim", cups.rimDistance());
        if (cups.positions() != null) {
            section.count("Positions that reach the whole sphere", cups.positions());
        }
    }

    private static void limits(Answers answers, SetUp section) {
        section.heading("Speeds to stay under");
        section.text(
                "These are limits by a rule of thumb (common practice, no source): diameter in inches times turns a"
                        + " minute is 6000 for segmented and hollow work, 9000 for sound, balanced, solid work. Lower"
                        + " speeds"
                        + " can still be dangerous. Start at the lathe's lowest speed.");
        speed("glued-up solid", answers.turning().speeds().solid(), section);
        speed("sphere", answers.turning().speeds().sphere(), section);
    }

    private static void speed(String body, SpeedLimit limit, SetUp section) {
        section.number("Limit for the " + body + " by 6000", limit.thumbLow(), WHOLE, "turns/min")
                .number("Limit for the " + body + " by 9000", limit.thumbHigh(), WHOLE, "turns/min");
    }

    private static void gauges(Roughing roughing, SetUp section) {
        section.heading("Callipers");
        section.text(
                "Diameters along the axis, from the middle to the end, and how deep a parting tool goes there from the"
                        + " cylinder.");
        section.table(
                section.headings("From the middle,", "Diameter,", "Depth,", "Measured"),
                roughing.depths().stream()
                        .map(station -> section.row(station.at(), station.diameter(), station.depth(), ""))
                        .toList());
        section.heading("Ring gauges");
        section.text("Laid anywhere on the sphere, a ring touches all around, and the sphere stands through it by the"
                + " sagitta. A ring that rocks lies on a ridge.");
        section.table(
                section.headings("Inner diameter of the ring,", "Sagitta,", "Measured"),
                roughing.gauges().stream()
                        .map(gauge -> section.row(gauge.chord(), gauge.sagitta(), ""))
                        .toList());
        section.check("The rings touch all around wherever they are laid.");
    }

    static Section finishing(Answers answers) {
        SetUp section = answers.section("Sanding and finishing");
        section.cautions(Step.SANDING, Step.FINISHING);
        section.measure("Diameter of the finished sphere", answers.sphere().diameter())
                .wall(answers.sphere().thinnestWall());
        boolean metric = answers.design().unit() == LengthUnit.MM;
        double area = answers.sphere().area();
        section.number(
                "Surface of one sphere",
                metric ? area / SQUARE_CENTIMETRE : area * Quantity.AREA.factor(LengthUnit.IN),
                SHARE_DECIMALS,
                metric ? "cm²" : "in²");
        if (answers.turning().finish() != null) {
            finish(answers.turning().finish(), section);
        }
        if (answers.turning().time() != null) {
            section.number(
                    "Time for one sphere, without drying",
                    answers.turning().time().total(),
                    WHOLE,
                    "min");
        }
        section.check("Sanded, each grit finer than the one before; what sanding takes comes off the diameter. Grits"
                        + " used: ______ ______ ______")
                .check("Coats of finish, each dry before the next.");
        walls(answers, section);
        return section.build();
    }

    /** The wall is seen in sections, one for each face kind. */
    static void walls(Answers answers, SetUp section) {
        for (FaceSizing face : answers.sphere().faces()) {
            section.sketch(SectionDrawing.draw(answers.design(), face.face()));
        }
    }

    private static void finish(FinishPlan finish, SetUp section) {
        section.table(
                section.headings("Grit", "Diameter before,", "Diameter after,", "Measured"),
                finish.grits().stream()
                        .map(grit -> section.row(grit.grit(), grit.before(), grit.after(), ""))
                        .toList());
        if (finish.finish() != null) {
            section.number(
                            "Finish for all coats of one sphere",
                            finish.finish() * Quantity.MILLILITRES.factor(LengthUnit.MM),
                            SHARE_DECIMALS,
                            "ml")
                    .number("Until the last coat is dry", finish.dryingHours(), WHOLE, "h");
        }
    }
}
