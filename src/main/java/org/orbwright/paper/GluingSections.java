package org.orbwright.paper;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyPlan.AssembledSpheres;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyPlan.SolidStage;
import org.orbwright.assembly.AssemblyPlan.SolidWork;
import org.orbwright.assembly.Net;
import org.orbwright.assembly.Net.Hinge;
import org.orbwright.assembly.Net.NetSeam;
import org.orbwright.assembly.PanelGluing;
import org.orbwright.assembly.PanelGluing.PanelStage;
import org.orbwright.assembly.PanelGluing.PanelWork;
import org.orbwright.design.BandSet;
import org.orbwright.design.SphereSet;
import org.orbwright.drawing.NetDrawing;
import org.orbwright.drawing.PanelDrawing;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Numbering;
import org.orbwright.sheet.Caution.Step;

/** Gluing segments to panels and panels to the solid. */
final class GluingSections {
    /** In millimetres. */
    private static final double METRE = 1000;

    private static final double FOOT = 304.8;
    private static final int LENGTH_DECIMALS = 1;

    private GluingSections() {}

    static Section panels(Answers answers) {
        SetUp section = answers.section("Gluing the panels");
        section.cautions(Step.GLUING);
        for (PanelGluing gluing : answers.assembly().panelGluings()) {
            int panels = gluing.perSphere() * answers.design().copies();
            section.heading(gluing.face() + " panels")
                    .count("Panels for one sphere", gluing.perSphere())
                    .count("Panels for all spheres", panels);
            if (gluing.inHalves()) {
                section.cautions(Step.DISC_SANDING)
                        .text("Made in two halves: true the straight joint of both before they are glued. It removes"
                                + " wood, and the panel is smaller across that joint by what is taken.");
            }
            for (PanelStage stage : gluing.stages()) {
                section.check("Stage " + stage.stage() + ": " + work(stage.work()) + ", "
                        + counted(stage.joints().size(), "joint") + ", " + DesignSections.glue(stage.glue()) + " and "
                        + DesignSections.minutes(stage.glue()) + " for each panel.");
            }
            section.measure(
                    "Joint, from the centre to the corner",
                    gluing.joints().get(0).length());
            for (BandSet set : answers.design().setsMade(gluing.face())) {
                section.picture(PanelDrawing.draw(answers.design(), gluing.face(), set));
            }
        }
        return section.build();
    }

    private static String work(PanelWork work) {
        return switch (work) {
            case WHOLE -> "the whole panel";
            case FIRST_HALF -> "the first half";
            case SECOND_HALF -> "the second half";
            case STRAIGHT_JOINT -> "the two halves along their straight joint";
        };
    }

    static Section solid(Answers answers) {
        AssemblyPlan plan = answers.assembly();
        SetUp section = answers.section("Gluing the solid");
        section.cautions(Step.GLUING);
        section.text(
                "Panels have the same numbers here and in all pictures. Let the glue of each stage get hard before the"
                        + " next.");
        for (AssembledSpheres spheres : plan.spheres()) {
            section.count(from(spheres.set()), spheres.spheres());
            if (spheres.set() == SphereSet.MIXED) {
                section.text("Panels from inverted segments: " + numbers(spheres.invertedPanels()) + ".");
            }
        }
        plan.nets().forEach(net -> net(section, net));
        plan.nets()
                .forEach(net -> section.picture(
                        NetDrawing.draw(answers.design(), answers.design().sphere(null), List.of(net))));
        for (SolidStage stage : plan.stages()) {
            section.heading("Stage " + stage.stage() + ": " + work(stage.work()));
            section.text((stage.panels().isEmpty() ? "" : "Panels in their order: " + numbers(stage.panels()) + ". ")
                    + counted(stage.seams().size(), "seam") + ", " + DesignSections.glue(stage.glue()) + ", "
                    + DesignSections.minutes(stage.glue()) + ".");
            section.check("Seams, new panel to a panel already glued: "
                    + pairs(stage.seams(), GluedSeam::panel, GluedSeam::neighbour) + ".");
        }
        boolean metric = answers.design().unit() == LengthUnit.MM;
        section.heading("Glue lines of one sphere")
                .count("Joints", plan.totals().joints())
                .count("Seams", plan.totals().seams())
                .number(
                        "Length of all",
                        plan.totals().glueLength() / (metric ? METRE : FOOT),
                        LENGTH_DECIMALS,
                        metric ? "m" : "ft");
        return section.build();
    }

    private static void net(SetUp section, Net net) {
        section.heading(NetDrawing.name(net) + ", laid flat");
        if (net.followsStages()) {
            section.check("Tape on the outer faces, new panel to a panel already taped: "
                    + pairs(net.hinges(), Hinge::panel, Hinge::neighbour) + ".");
            section.text(
                    "Turn it over. Glue taped and folded seams as the stages below say, as many at a time as a stage"
                            + " has. These close as it is folded up: "
                            + pairs(net.folding(), NetSeam::panel, NetSeam::neighbour) + ".");
            if (!net.last().isEmpty()) {
                section.text("These seams close last, with the other cap: "
                        + pairs(net.last(), NetSeam::panel, NetSeam::neighbour) + ".");
            }
        } else {
            section.text("This net is for a trial without glue: its panels are glued in another order.");
        }
    }

    private static <S> String pairs(List<S> seams, ToIntFunction<S> panel, ToIntFunction<S> neighbour) {
        return seams.stream()
                .map(seam -> Numbering.of(panel.applyAsInt(seam)) + " to " + Numbering.of(neighbour.applyAsInt(seam)))
                .collect(Collectors.joining(", "));
    }

    private static String from(SphereSet set) {
        return switch (set) {
            case UPRIGHT -> "Spheres from upright segments";
            case INVERTED -> "Spheres from inverted segments";
            case MIXED -> "Spheres with panels of both sets";
        };
    }

    private static String work(SolidWork work) {
        return switch (work) {
            case FIRST_CAP -> "panels of the first cap";
            case SECOND_CAP -> "panels of the second cap";
            case CLOSING -> "the seam between the two caps";
            case ONTO_FIRST_CAP -> "panels onto the first cap";
        };
    }

    private static String numbers(List<Integer> panels) {
        return Numbering.of(panels).stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
