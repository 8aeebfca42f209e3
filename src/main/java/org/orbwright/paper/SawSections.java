package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.design.Panel;
import org.orbwright.drawing.SawSetUpDrawing;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigPlan.LegCut;
import org.orbwright.jig.JigPlan.UprightCut;
import org.orbwright.jig.JigSetting;
import org.orbwright.jig.JigSetting.MeasuredAngle;
import org.orbwright.jig.TipCut;
import org.orbwright.jig.TipCut.CutSide;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.segment.SegmentPlan.FaceSegments;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.sheet.Caution.Step;

/** The set-ups of the saw. */
final class SawSections {
    /** Two settings that are printed alike are one; in radians. */
    private static final double SAME_SETTING = 1e-9;

    private SawSections() {}

    static Section crosscuts(Answers answers) {
        SetUp section = answers.section("Crosscutting the segments");
        section.cautions(Step.SETTING_UP, Step.CROSSCUTTING);
        section.length("Sine bar, between the rolls", answers.jig().sineBar())
                .length("Run over which rises are measured", answers.jig().run())
                .angle("Trial error of an angle", answers.jig().trialError());
        List<FaceSegments> faces = answers.segments().faces();
        for (int i = 0; i < faces.size(); i++) {
            FaceSegments face = faces.get(i);
            LaminationYield yield = answers.yields() == null
                    ? null
                    : answers.yields().laminations().get(i);
            for (int j = 0; j < face.segments().size(); j++) {
                SegmentCut segment = face.segments().get(j);
                section.heading("Segment " + DesignSections.letter(segment) + ", "
                        + DesignSections.name(face.face(), face.places()));
                if (!segment.mirrored()) {
                    JigSegment jig = jig(answers, face.face(), segment.segment());
                    settings(jig, section);
                    tips(jig, section);
                    if (answers.design().has(DesignPart.KERF)) {
                        legs(answers.design(), answers.design().panels().get(i), jig, section);
                    }
                } else {
                    section.text("The mirror image of segment " + segment.segment()
                            + ": its settings with left and right changed.");
                }
                outline(segment, section);
                if (yield != null) {
                    counts(yield.segments().get(j), section);
                }
            }
        }
        return section.build();
    }

    private static JigSegment jig(Answers answers, String face, String letter) {
        return answers.jig().faces().stream()
                .filter(each -> each.face().equals(face))
                .flatMap(each -> each.segments().stream())
                .filter(each -> each.segment().equals(letter))
                .findFirst()
                .orElseThrow();
    }

    private static void settings(JigSegment segment, SetUp section) {
        LegCut left = segment.left();
        LegCut right = segment.right();
        boolean alike = alike(segment);
        mitre(alike ? "both legs" : "left leg, " + up(left), left.mitre(), section);
        if (!alike) {
            mitre("right leg, " + up(right), right.mitre(), section);
        }
        section.text("Left leg: " + up(left) + ". Right leg: the wood turned over, " + up(right)
                + ", so that the gauge stays on its side of square.");
        section.measure("Stop to blade, along the edge that carries the base", segment.stopDistance())
                .measureAngle("Angle at the tip", segment.tip().angle())
                .length("Hold-down from the stop, left leg", left.holdDownFromStop())
                .length("Hold-down from the stop, right leg", right.holdDownFromStop())
                .length("Hold-down from the edge that carries the base", left.holdDownFromBase());
    }

    private static boolean alike(JigSegment segment) {
        return Math.abs(segment.left().mitre().angle() - segment.right().mitre().angle()) < SAME_SETTING;
    }

    /** A picture of each cut; both legs of equal angles are cut on one set-up. */
    private static void legs(Design design, Panel panel, JigSegment segment, SetUp section) {
        if (alike(segment)) {
            section.text("Both legs are cut on this set-up, the right one with the wood turned over.");
        }
        for (CutSide leg : alike(segment) ? List.of(CutSide.LEFT) : List.of(CutSide.values())) {
            section.sketch(SawSetUpDrawing.leg(design, panel, segment, leg));
        }
    }

    private static void tips(JigSegment segment, SetUp section) {
        List<List<String>> rows = new ArrayList<>();
        for (TipCut cut : segment.tipCuts()) {
            rows.add(List.of(
                    Integer.toString(rows.size() + 1),
                    words(cut.freedWith()),
                    words(cut.cut()),
                    words(cut.leg()),
                    words(cut.faceDown()),
                    words(cut.segmentSide()),
                    words(cut.bladeAtTip())));
        }
        section.table(List.of("", "Freed with", "Cut", "Leg", "Face down", "Segment's side", "Blade at the tip"), rows);
        section.text(
                "Freed with: the edge that is at the gauge in the second cut. Before that the wood is turned over.");
        for (int i = 0; i < segment.tipCuts().size(); i++) {
            section.text((i + 1) + ": " + segment.tipCuts().get(i).backing());
        }
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static void mitre(String which, JigSetting setting, SetUp section) {
        section.measureAngle("Mitre gauge from square, " + which, setting.angle());
        proof("the line square to the blade", "the blade", setting, section);
    }

    /** How a setting is measured the better way, and what a trial cut shows. */
    private static void proof(String line, String complementLine, JigSetting setting, SetUp section) {
        boolean direct = setting.measureBy() == MeasuredAngle.ANGLE;
        if (!direct) {
            section.angle("The same from " + complementLine, setting.complement());
        }
        String from = ", from " + (direct ? line : complementLine);
        section.length(
                        "Stack under the sine bar" + from,
                        direct ? setting.sineBarStack() : setting.sineBarStackComplement())
                .length("Rise over the run" + from, direct ? setting.rise() : setting.riseToBlade());
        section.check("Trial cut in scrap: one part turned over, the sawn ends together.")
                .measureAngle("The pair stands at", setting.trialPairAngle())
                .measure("Chord over both legs of the run", setting.trialPairChord())
                .length(
                        "If the chord is short by this much, the angle is too large by the trial error",
                        setting.trialPairChordChange());
    }

    private static void outline(SegmentCut segment, SetUp section) {
        section.measure("Base", segment.base())
                .measure("Left leg", segment.legLeft())
                .measure("Right leg", segment.legRight());
    }

    private static void counts(SegmentYield segment, SetUp section) {
        boolean bothSets = segment.invertedNeeded() + segment.invertedLeft() > 0;
        String inverted = segment.invertedNeeded() > 0 ? " and " + segment.invertedNeeded() + " inverted" : "";
        String needed = segment.uprightNeeded() + (bothSets ? " upright" : "") + inverted;
        String left = bothSets
                ? segment.uprightLeft() + " upright and " + segment.invertedLeft() + " inverted"
                : Integer.toString(segment.uprightLeft());
        String turned = segment.turnedBlanks() > 0
                ? " Turn " + segment.turnedBlanks() + " of the blanks end for end before the first cut."
                : "";
        section.check("Cut " + needed + " segments. Left over: " + left + "." + turned);
    }

    static Section closingTest(Answers answers) {
        SetUp section = answers.section("Closing test");
        section.text(
                "Put the segments of a panel together dry, tips together, before any glue. The last joint shows the"
                        + " errors of all sawn legs added up. If it stays open, the tip angles are too small: turn the"
                        + " mitres further from square. If the last segment has no room, they are too large.");
        String error = SetUp.degrees(answers.jig().trialError());
        for (JigFace face : answers.jig().faces()) {
            section.heading(face.face() + ", " + face.sides() + " segments")
                    .count("A mitre error is multiplied by", face.closing().timesError())
                    .angle(
                            "With " + error + "° at every leg the last joint is off by",
                            face.closing().gapAngle())
                    .length(
                            "Its gap at the farthest corner is then",
                            face.closing().gap())
                    .measure("Gap wanted at the last joint", 0)
                    .check("The last joint is closed along its whole length.");
        }
        return section.build();
    }

    static Section bevels(Answers answers) {
        SetUp section = answers.section("Bevelling the panels");
        section.cautions(Step.SETTING_UP, Step.BEVELLING);
        boolean land = answers.design().land() > 0;
        section.text("The panel lies inner face down, and the blade takes most from the inner face. "
                        + (land
                                ? "It comes out below the land, which bears on a fence above the blade."
                                : "There is no land: it comes out at the rim of the outer face, where no wood"
                                        + " is left to bear on a fence; see the findings."))
                .angle("Trial error of an angle", answers.jig().trialError());
        for (JigFace face : answers.jig().faces()) {
            BevelCut bevel = face.bevel();
            section.heading(face.face() + " panels")
                    .measureAngle("Blade tilt from upright", bevel.tilt().angle());
            proof("upright", "the table", bevel.tilt(), section);
            section.measure("Highest tooth over the table", bevel.bladeHeight())
                    .measure("Width of the seam, along the blade", bevel.seamWidth())
                    .measure((land ? "Fence" : "Outer rim") + " to where the blade leaves the table", bevel.inset());
            if (land) {
                section.measure("Land left upright", bevel.land())
                        .length("Fence to the blade without a land", bevel.shiftOverThickness())
                        .length("Fence moved towards the blade for the land", bevel.fenceShift());
            }
            section.length("Hold-down from the rim that is cut", bevel.holdDownFromRim());
            if (bevel.upright() != null) {
                upright(bevel.upright(), section);
            }
            section.check("One edge bevelled, measured against these numbers, then all others.");
            if (answers.design().has(DesignPart.KERF)) {
                section.sketch(SawSetUpDrawing.bevel(answers.design(), face));
            }
        }
        if (answers.turning() == null) {
            LatheSections.walls(answers, section);
        }
        return section.build();
    }

    private static void upright(UprightCut cut, SetUp section) {
        section.text("The tilt is steeper than saws commonly go. The same cut with the panel upright, clamped with"
                        + " its outer face to a carrier, the blade leaning away from the carrier:")
                .measureAngle("Blade tilt with the panel upright", cut.tilt().angle());
        proof("upright", "the table", cut.tilt(), section);
        section.measure("Carrier's face to the blade", cut.carrierToBlade())
                .measure("Highest tooth over the table, panel upright", cut.bladeHeight());
    }

    private static String up(LegCut cut) {
        return words(cut.faceUp()) + " face up";
    }
}
