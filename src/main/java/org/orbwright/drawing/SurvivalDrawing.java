package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.Station;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
import org.orbwright.drawing.SideLabels.Target;

/**
 * The survival profile of one segment: how much of each band can be seen on the sphere, along the base. Straight bands
 * are stacked from the panel's centre outwards; tilted ones, which no order along the sphere fits, have a line each.
 */
public final class SurvivalDrawing {
    private static final double WIDTH = 240;
    /** Radius of a number on a line, in letters. */
    private static final double NUMBER = 0.8;

    private static final Pen[] PENS = {Pen.MEDIUM, Pen.DASHED, Pen.THICK};

    private final Design design;
    private final BandSet set;
    private final Panel panel;
    private final SegmentBands segment;
    private final List<BandView> bands;
    private final Legend legend;
    private final Plot plot;
    private final double letters = Legend.letters(WIDTH);
    private final List<Mark> marks = new ArrayList<>();
    private final List<Target> targets = new ArrayList<>();

    private SurvivalDrawing(Design design, Panel panel, BandSet set, int stations) {
        this.design = design;
        this.panel = panel;
        this.set = set;
        this.legend = new Legend(design);
        FaceBands face = BandCalculator.calculate(design, stations).faces().stream()
                .filter(f -> f.face().equals(panel.face()) && f.places() == panel.places())
                .findFirst()
                .orElseThrow();
        this.segment = face.segments().get(0);
        this.bands = set == BandSet.INVERTED ? segment.inverted() : segment.upright();
        List<Station> stationsOfOne = bands.get(0).profile();
        this.plot = new Plot(
                design.unit(),
                WIDTH,
                stationsOfOne.get(0).along(),
                stationsOfOne.get(stationsOfOne.size() - 1).along(),
                highest(stationsOfOne.size()));
    }

    /**
     * Draws the profile of the first kind of segment of a face kind, which is null for a solid with only one. Places
     * tell its lamination where every other segment has its own; null for the only or the first one. Stations run from
     * the edge middle to a corner and are at least 2.
     */
    public static Drawing draw(Design design, String face, Places places, BandSet set, int stations) {
        Panel panel = DrawnFace.of(design, face, places);
        return new SurvivalDrawing(design, panel, panel.lamination().used(set), stations).drawing();
    }

    /** The highest point of the plot: of the stack, or of any line. */
    private double highest(int stations) {
        double highest = 0;
        for (int i = 0; i < stations; i++) {
            double sum = 0;
            for (BandView band : bands) {
                double width = band.profile().get(i).width();
                sum = panel.lamination().straight() ? sum + width : Math.max(sum, width);
            }
            highest = Math.max(highest, sum);
        }
        return highest;
    }

    private Drawing drawing() {
        marks.add(Callout.heading(heading(), WIDTH, letters));
        if (panel.lamination().straight()) {
            stack();
        } else {
            lines();
        }
        marks.addAll(plot.axes(
                "from the edge middle along the base, " + design.unit().symbol(), axisName()));
        marks.addAll(SideLabels.marks(targets, plot.right() + 2 * letters, plot.top(), plot.bottom(), WIDTH, letters));
        double key = plot.bottom() + 6 * letters;
        Legend shown = legend.drawn(marks);
        marks.addAll(shown.marks(WIDTH, key));
        return new Drawing(heading(), description(), WIDTH, key + shown.height(WIDTH), shown.species(), marks);
    }

    private String axisName() {
        String what = panel.lamination().straight()
                ? "seen along the sphere from the panel's centre, "
                : "of each band seen along the sphere, ";
        return what + design.unit().symbol();
    }

    private void stack() {
        double[] below = new double[bands.get(0).profile().size()];
        for (int i = bands.size() - 1; i >= 0; i--) {
            BandView band = bands.get(i);
            double[] above = below.clone();
            for (int k = 0; k < above.length; k++) {
                above[k] += band.profile().get(k).width();
            }
            if (widest(band) > 0) {
                marks.add(new Area(between(band, below, above), legend.tone(band.species()), Pen.MEDIUM));
            }
            targets.add(target(band, below));
            below = above;
        }
    }

    private PathData between(BandView band, double[] below, double[] above) {
        List<Station> profile = band.profile();
        PathData path = new PathData();
        for (int k = 0; k < above.length; k++) {
            plot.add(path, profile.get(k).along(), above[k], k == 0);
        }
        for (int k = below.length - 1; k >= 0; k--) {
            plot.add(path, profile.get(k).along(), below[k], false);
        }
        return path.close();
    }

    /** A band is pointed at where it is nearest to the labels on the right and still wide enough to be found. */
    private Target target(BandView band, double[] below) {
        List<Station> profile = band.profile();
        double enough = 0.5 * widest(band);
        int place = profile.size() - 1;
        while (profile.get(place).width() < enough) {
            place--;
        }
        double height = below[place] + profile.get(place).width() / 2;
        boolean seen = widest(band) > 0;
        return new Target(plot.x(profile.get(place).along()), plot.y(height), label(band), seen);
    }

    private void lines() {
        List<double[]> numbers = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            BandView band = bands.get(i);
            List<Station> profile = band.profile();
            PathData path = new PathData();
            for (int k = 0; k < profile.size(); k++) {
                plot.add(path, profile.get(k).along(), profile.get(k).width(), k == 0);
            }
            marks.add(new Line(path, PENS[i % PENS.length]));
            numbers.add(number(profile, (i + 1.0) / (bands.size() + 1), numbers));
            Station last = profile.get(profile.size() - 1);
            targets.add(new Target(plot.x(last.along()), plot.y(last.width()), label(band), last.width() > 0));
        }
        for (int i = 0; i < numbers.size(); i++) {
            double[] at = numbers.get(i);
            if (widest(bands.get(i)) > 0) {
                String text = String.valueOf(bands.get(i).band());
                marks.addAll(Callout.balloon(at[0], at[1], NUMBER * letters, text));
            }
        }
    }

    /** Where a line's number goes: at a share of the part where the band is seen, or further on to keep clear. */
    private double[] number(List<Station> profile, double share, List<double[]> taken) {
        int[] seen = IntStream.range(0, profile.size())
                .filter(k -> profile.get(k).width() > 0)
                .toArray();
        double[] first = at(profile.get(seen.length == 0 ? 0 : seen[(int) (share * seen.length)]));
        for (int i = 0; i < seen.length; i++) {
            double[] tried = at(profile.get(seen[((int) (share * seen.length) + i) % seen.length]));
            if (taken.stream().allMatch(t -> Math.hypot(t[0] - tried[0], t[1] - tried[1]) > 2 * NUMBER * letters)) {
                return tried;
            }
        }
        return first;
    }

    private double[] at(Station station) {
        return new double[] {plot.x(station.along()), plot.y(station.width())};
    }

    private static double widest(BandView band) {
        return band.profile().stream().mapToDouble(Station::width).max().orElse(0);
    }

    private static String label(BandView band) {
        return band.band() + " " + band.species() + (widest(band) > 0 ? "" : ": not seen");
    }

    private String heading() {
        String which = panel.lamination().sets() == 2 ? ", " + Legend.setName(set) : "";
        String kind = panel.kind().segments().size() > 1 ? ", segment " + segment.segment() : "";
        return "Bands of the " + panel.face() + " on the sphere" + kind + which;
    }

    private String description() {
        String seen = bands.stream()
                .map(band -> "Band " + band.band() + ", " + band.species() + ", "
                        + design.say(band.flatWidth()) + " on the flat panel: "
                        + design.say(band.visibleWidth().edgeMiddle()) + " at the edge middle, "
                        + design.say(band.visibleWidth().leftCorner()) + " at the left corner, "
                        + design.say(band.visibleWidth().rightCorner()) + " at the right corner.")
                .collect(Collectors.joining(" "));
        return "A plot of the width of each band that can be seen on the finished sphere of "
                + design.say(2 * design.sphereRadius())
                + " in diameter. It runs along the base of a segment of the face kind " + panel.face()
                + ". From the base to the tip: " + seen;
    }
}
