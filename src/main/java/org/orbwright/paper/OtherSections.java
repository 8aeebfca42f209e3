package org.orbwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.orbwright.inlay.ChipPlan;
import org.orbwright.inlay.ChipPlan.Recut;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayPlan.InlaidPanel;
import org.orbwright.inlay.TipComparison;
import org.orbwright.inlay.TipComparison.TipRisk;
import org.orbwright.movement.Movement;
import org.orbwright.movement.Movement.PanelGap;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.notice.Article;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Numbering;
import org.orbwright.sheet.Caution.Step;
import org.orbwright.turning.Balance;

/** What a build answers beyond the common steps: the wood's movement, inlays and balance. */
final class OtherSections {
    private static final int PERCENT_DECIMALS = 1;
    private static final int KILOGRAM_DECIMALS = 3;

    private OtherSections() {}

    static Section movement(Answers answers) {
        Movement movement = answers.build().movement();
        SetUp section = answers.section("Movement of the wood")
                .number("Moisture of the stock", movement.moisture().stock(), PERCENT_DECIMALS, "%")
                .number("Moisture in the driest season", movement.moisture().driest(), PERCENT_DECIMALS, "%")
                .number("Moisture in the dampest season", movement.moisture().dampest(), PERCENT_DECIMALS, "%");
        for (PanelMovement panel : movement.panels()) {
            gap(panel, "driest", panel.driest(), section);
            gap(panel, "dampest", panel.dampest(), section);
        }
        return section.build();
    }

    private static void gap(PanelMovement panel, String season, PanelGap gap, SetUp section) {
        if (gap != null) {
            section.length(
                    Article.first(panel.face()) + " panel would open in the " + season + " season, at the "
                            + gap.opensAt().name().toLowerCase(Locale.ROOT) + ", by",
                    gap.gap());
        }
    }

    static Section inlays(Answers answers) {
        InlayPlan plan = answers.build().inlays();
        SetUp section = answers.section("Inlays").cautions(Step.CROSSCUTTING, Step.INLAYING);
        tips(answers, plan.tips(), section);
        if (plan.chips() != null) {
            chips(plan, section);
        }
        if (plan.pocket() != null) {
            section.heading("Pocket in the " + plan.face() + " panels")
                    .measure("Depth, from the outer face", plan.pocket().depth())
                    .length(
                            "Deepest that leaves the wanted floor",
                            plan.pocket().deepest())
                    .length("Inlay left at its rim after turning", plan.pocket().rimThickness());
        }
        Map<String, List<Integer>> motifs = new LinkedHashMap<>();
        for (InlaidPanel panel : plan.panels()) {
            motifs.computeIfAbsent(panel.motif() == null ? "no motif" : panel.motif(), motif -> new ArrayList<>())
                    .add(Numbering.of(panel.panel()));
        }
        List<List<String>> rows = new ArrayList<>();
        motifs.forEach((motif, panels) ->
                rows.add(List.of(motif, panels.stream().map(String::valueOf).collect(Collectors.joining(", ")))));
        return section.table(List.of("Motif", "Panels"), rows).build();
    }

    /** The tips that break most easily first. */
    private static void tips(Answers answers, TipComparison tips, SetUp section) {
        section.heading("Tips, the one with the shortest grain first");
        tips.help().forEach(section::text);
        LengthUnit unit = answers.design().unit();
        List<List<String>> rows = new ArrayList<>();
        for (TipRisk tip : tips.tips()) {
            rows.add(List.of(
                    tip.face() + " " + tip.segment() + (tip.mirrored() ? ", mirrored" : ""),
                    tip.set().name().toLowerCase(Locale.ROOT),
                    String.join(", ", tip.woods()),
                    tip.grain().name().toLowerCase(Locale.ROOT),
                    unit.sayNumber(tip.grainLength())));
        }
        section.length("Distance from the tip", tips.distance())
                .table(List.of("Segment", "Set", "Wood", "Grain", "Grain length, " + unit.symbol()), rows);
    }

    private static void chips(InlayPlan plan, SetUp section) {
        ChipPlan chips = plan.chips();
        section.heading("Chipped tips of the " + plan.face() + " panels");
        if (chips.hole().vanishes()) {
            section.text("Turning takes the chips away: no hole stays.");
        } else {
            section.length("Hole after turning, straight across", chips.hole().diameter())
                    .length("Plug that hides it, diameter", chips.plug().diameter())
                    .length("Its pocket, from the outer face", chips.plug().depth());
            if (!chips.plug().fits()) {
                section.text("This plug does not fit; see the findings.");
            }
        }
        for (Recut recut : chips.recuts()) {
            section.length("To cut segment " + recut.segment() + " again: blank wider by", recut.wider())
                    .length("and the stop at first further away by", recut.stopFurther());
        }
    }

    static Section balance(Answers answers) {
        Balance balance = answers.build().balance();
        SetUp section = answers.section("Balance on the lathe").cautions(Step.MOUNTING, Step.BALANCING);
        body("glued-up solid", balance.solid(), section);
        if (balance.sphere() != null) {
            body("finished sphere", balance.sphere(), section);
        }
        return section.build();
    }

    private static void body(String name, Balance.HeldBody body, SetUp section) {
        section.heading(name)
                .number("Mass that turns", body.turningMass(), KILOGRAM_DECIMALS, "kg")
                .length("Centre of mass off the axis", body.offAxis());
        if (body.heavyPanel() != null) {
            section.count("Heavy panel", Numbering.of(body.heavyPanel()));
        }
    }
}
