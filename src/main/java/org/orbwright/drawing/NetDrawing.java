package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.Net;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.design.Design;
import org.orbwright.design.SphereKind;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Numbering;

/**
 * The panels of a sphere laid flat at true size and seen from outside, as they are taped together: with their bands,
 * their numbers, the hinges between them, and at every free edge the number of the panel that it is glued to.
 */
public final class NetDrawing {
    /** Margin at each side, as a share of the sheet's width. */
    private static final double MARGIN = 0.04;
    /** The sheet is at least this wide for a layout of height 1. */
    private static final double SHEET_PER_HEIGHT = 0.8;

    private final Design design;
    private final SphereKind sphere;
    private final List<Net> nets;
    private final Legend legend;
    private final double width;
    private final double letters;

    private NetDrawing(Design design, SphereKind sphere, List<Net> nets) {
        this.design = design;
        this.sphere = sphere;
        this.nets = nets;
        this.legend = new Legend(design);
        this.width = nets.stream()
                .mapToDouble(net -> Math.max(net.width() / (1 - 2 * MARGIN), SHEET_PER_HEIGHT * net.height()))
                .max()
                .orElseThrow();
        this.letters = Legend.letters(width);
    }

    /** Draws nets of a design below each other, each panel from the set that the sphere makes it from. */
    public static Drawing draw(Design design, SphereKind sphere, List<Net> nets) {
        return new NetDrawing(design, sphere, nets).drawing();
    }

    private Drawing drawing() {
        String name = (nets.size() == 1 ? name(nets.get(0)) : "Panels") + " of the "
                + design.solid().name() + ", laid flat";
        List<Mark> marks = new ArrayList<>();
        marks.add(Callout.heading(name, width, letters));
        double bottom = 3 * letters;
        for (Net net : nets) {
            marks.add(new Label(width * 0.03, bottom + 1.5 * letters, letters, Anchor.START, heading(net)));
            bottom += 2.5 * letters + net.height();
            double left = (width - net.width()) / 2;
            marks.addAll(new NetMarks(design, sphere, net, legend, letters, left, bottom).marks());
            bottom += letters;
        }
        double scale = bottom + letters;
        marks.addAll(ScaleBar.marks(design.unit(), width, scale));
        double top = scale + ScaleBar.HEIGHT * letters;
        List<String> lines = Lettering.wrap(caption(), width * 0.94, letters);
        marks.addAll(Callout.text(width * 0.03, top, letters, Anchor.START, lines));
        double key = top + Callout.textHeight(lines.size(), letters) + 1.5 * letters;
        Legend shown = legend.drawn(marks);
        marks.addAll(shown.marks(width, key));
        return new Drawing(name, description(), width, key + shown.height(width), shown.species(), marks);
    }

    private String heading(Net net) {
        return name(net) + ", " + design.say(net.width()) + " by " + design.say(net.height());
    }

    /** What a net is of, for a heading. */
    public static String name(Net net) {
        if (net.cap() == null) {
            return "Whole solid";
        }
        return net.cap() == Cap.FIRST ? "First cap" : "Second cap";
    }

    private String caption() {
        boolean caps = nets.get(0).cap() != null;
        return "Outer faces up. Dashed: hinges of tape on the outer faces, from which the panels fold away: turn the"
                + " taped sheet over, then fold up. "
                + gaps()
                + "White on a disc: the panels' numbers. Without a disc, at a free edge: the number of the panel that"
                + " it is glued to. Edges in medium lines close when it is folded up."
                + (caps ? " Edges in thick lines close last, with the other cap." : "")
                + trial();
    }

    /** What is not glued as it lies here. */
    private String trial() {
        if (nets.stream().allMatch(Net::followsStages)) {
            return "";
        }
        return nets.get(0).cap() == null
                ? " Glue the caps as the stages say; this net is for a trial without glue."
                : " The second cap's panels are glued onto the first cap one by one, as the stages say: their net is"
                        + " for a trial without glue.";
    }

    /** The gaps that a land asks for; nothing without a land. */
    private String gaps() {
        if (design.land() == 0) {
            return "";
        }
        DoubleSummaryStatistics gaps = nets.stream()
                .flatMap(net -> net.hinges().stream())
                .mapToDouble(Hinge::gap)
                .summaryStatistics();
        String least = design.say(gaps.getMin());
        String most = design.say(gaps.getMax());
        String apart = least.equals(most) ? least : least + " to " + most;
        return "Hinged panels lie " + apart + " apart, as far as the land of " + design.say(design.land())
                + " holds their outer rims apart in the solid; the tape bridges the gap. ";
    }

    private String description() {
        String trees = nets.stream().map(NetDrawing::tree).collect(Collectors.joining(" "));
        int panels = nets.stream().mapToInt(net -> net.panels().size()).sum();
        return "The outer faces of " + panels + " panels of "
                + Article.with(design.solid().name())
                + " at true size, laid flat and seen from outside, with the bands of "
                + Legend.setName(sphere.set()) + " segments. " + trees + " " + caption();
    }

    private static String tree(Net net) {
        String hinges = net.hinges().stream()
                .map(hinge -> Numbering.of(hinge.panel()) + " on " + Numbering.of(hinge.neighbour()))
                .collect(Collectors.joining(", "));
        return "Around panel " + Numbering.of(net.panels().get(0).panel()) + ", on a hinge: " + hinges + ".";
    }
}
