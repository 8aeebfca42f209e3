package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.turning.ControlRequest.RotaryFeed;
import org.orbwright.turning.ControlRequest.Turns;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.PathRequest.CutterRequest;
import org.orbwright.turning.PathRequest.Machine;

/** What stands at the head of a program: what it is for, what it takes for granted, and how it is begun. */
final class ProgramHead {
    private final PathRequest request;
    private final Design design;
    private final ToolPath path;
    private final Milling milling;
    private final ControlRequest control;
    private final List<String> lines = new ArrayList<>();

    private ProgramHead(PathRequest request, TurningRequest turning, Design design, ToolPath path) {
        this.request = request;
        this.design = design;
        this.path = path;
        this.milling = Milling.of(request, turning, design);
        this.control = request.control();
    }

    /**
     * The comments of a head, each of which begins with a word of ours.
     *
     * @param notices what is to be read before all else
     */
    static List<String> lines(
            PathRequest request, TurningRequest turning, Design design, ToolPath path, List<Notice> notices) {
        ProgramHead head = new ProgramHead(request, turning, design, path);
        notices.forEach(notice -> head.comment(notice.line()));
        String name = design.request().name();
        head.comment("Design: " + (name == null || ProgramText.plain(name).isEmpty() ? "" : name + ", ")
                + design.solid().name());
        head.zero();
        if (request.machine() == Machine.ROTARY) {
            head.rotary();
        } else {
            head.threeAxis();
        }
        head.cutter();
        head.start();
        return head.lines;
    }

    private void zero() {
        comment("Lengths in " + (design.unit() == LengthUnit.MM ? "millimetres" : "inches")
                + ". X0 Y0 Z0 is the middle of the sphere. "
                + (control.workOffset() == null
                        ? "The work offset that is active is used."
                        : "The work offset " + control.workOffset() + " is called."));
        comment("No tool length offset is used and "
                + (control.tool() == null ? "no tool is changed" : "T" + control.tool() + " is changed to")
                + ": Z0 is touched off with the tip of this cutter.");
        comment("Stock: radius " + say(path.stock()) + " to the farthest corner. Last pass: sphere of radius "
                + say(path.sphere()) + ", with " + say(millimetres(request.leave())) + " left for sanding.");
    }

    private void rotary() {
        comment("A turns the work about X. The first end of the axis points to plus X.");
        comment("A has to be an axis without limit"
                + (control.turns() == Turns.ABSOLUTE
                        ? " that is not wrapped at 360 degrees. On a table that wraps the cutter goes down and nothing"
                                + " turns. A goes to 0 at the clear height before the first cut. From there it goes"
                                + " on from turn to turn. At the end it is wound back to 0."
                        : ". It may count on or wrap at 360 degrees: each turn is 360 degrees more. A goes to 0 at"
                                + " the clear height before the first cut. At the end a table that counts on is wound"
                                + " back to 0."));
        comment((control.rotaryFeed() == RotaryFeed.INVERSE_TIME
                        ? "F after G93 is one over the minutes of a turn. Some controls take it for seconds."
                        : "F of a turn is in degrees a minute. Some controls take it for a length at a diameter that is"
                                + " set in them.")
                + " See that the first turn takes as long as it should.");
        comment(disc("Disc at plus X: ", milling.holding().head()) + " "
                + disc("Disc at minus X: ", milling.holding().tail()) + " Room beside each: " + say(milling.room())
                + ". Chuck and tailstock are not known to this program.");
    }

    private String disc(String end, Seat seat) {
        return end + "diameter " + say(seat.disc()) + ", " + say(seat.seatDistance()) + " from the middle, neck "
                + say(2 * milling.neck(seat)) + ".";
    }

    private void threeAxis() {
        comment("The first end of the axis points up. This mills the upper half only, up to the pole."
                + " There must be no disc, no screw and no centre on the upper end.");
        comment("For the other half the work is turned over. How the milled half is then held and aligned is not known"
                + " to this program. It may be a cup or a bed of the sphere's own radius, with marks.");
        comment("Circles run counter-clockwise from above around the work: with M3 that is conventional cutting.");
        Seat lower = milling.holding().tail();
        comment("Lower disc: diameter " + say(lower.disc()) + ", " + say(lower.seatDistance())
                + " below the middle. Room above it: " + say(milling.room()) + ". No move goes below "
                + say(path.lowest()) + ".");
        comment(
                switch (control.arcs()) {
                    case CIRCLES -> "I and J are taken from the start of the circle, which G91.1 says.";
                    case CIRCLES_WITHOUT_G91_1 ->
                        "I and J have to be taken from the start of the circle. A control that takes"
                                + " them from zero cuts into the sphere: look at the first circle in air.";
                    case SEGMENTS ->
                        "Circles are straight moves, at most " + design.sayAtLeast(RingSegments.STRAY)
                                + " outside the circle, before rounding.";
                });
    }

    private void cutter() {
        CutterRequest cutter = request.cutter();
        comment("Cutter: " + cutter.shape().name().replace('_', ' ') + ", diameter "
                + say(millimetres(cutter.diameter()))
                + (cutter.rimRadius() == null ? "" : ", rim radius " + say(millimetres(cutter.rimRadius())))
                + ". It goes straight down into wood and has to cut at its centre.");
        if (path.overlap() != null) {
            overlap(request.machine() == Machine.ROTARY ? "in the middle plane" : "at the pole");
        }
        comment(
                path.stickOutNeeded() == null
                        ? "No holder was stated, and none is checked."
                        : "Holder: diameter " + say(millimetres(cutter.holder())) + ". The cutter has to stand out at"
                                + " least " + design.sayAtLeast(path.stickOutNeeded()) + ", and "
                                + say(millimetres(cutter.stickOut())) + " is stated.");
        comment("Spindle: " + Rounding.plain(request.spindle(), 0) + " turns a minute. Feed: "
                + say(millimetres(request.feed())) + " a minute, straight down " + say(path.plungeFeed())
                + " a minute. Time with feed: " + Rounding.plain(path.minutes(), 1) + " minutes.");
    }

    private void overlap(String where) {
        double undersize = millimetres(milling.request().cutter().undersize());
        comment(
                undersize == 0
                        ? "Its flat only touches itself " + where
                                + ": a cutter that is smaller than stated leaves a fin."
                        : "Its flat overlaps by " + design.sayAtMost(path.overlap()) + " " + where
                                + ". A cutter that is up to " + design.sayAtMost(undersize)
                                + " smaller in diameter leaves no fin there.");
    }

    private void start() {
        comment("Do not start in the middle of the program.");
        comment("Before the start jog the cutter above the work and all that holds it, higher than Z "
                + design.sayAtLeast(path.clearHeight())
                + ". The first move goes straight to that height. It does not move X or Y.");
        if (control.tool() != null) {
            comment("The tool change may move the cutter, and some controls apply a tool offset with M6. After it"
                    + " the program waits: see that the cutter is above the work and that Z is right. Some controls do"
                    + " not jog while they wait: there the place of the tool change must be above the work.");
        }
        comment("G4 " + control.dwell().word() + " waits " + ControlRequest.WAIT.toSeconds() + " seconds where "
                + switch (control.dwell()) {
                    case P_SECONDS ->
                        "P is in seconds. Some controls wait " + ControlRequest.WAIT.toSeconds() + " milliseconds";
                    case P_MILLISECONDS ->
                        "P is in milliseconds. Some controls wait " + ControlRequest.WAIT.toMillis() + " seconds";
                    case X_SECONDS -> "X is in seconds";
                }
                + ". See that the spindle is at speed before the first cut.");
    }

    private double millimetres(Double stated) {
        return stated == null ? 0 : milling.millimetres(stated);
    }

    private String say(double millimetres) {
        return design.say(millimetres);
    }

    private void comment(String text) {
        lines.add(text);
    }
}
