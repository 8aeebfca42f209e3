package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayPlan.InlaidPanel;
import org.orbwright.movement.Movement;
import org.orbwright.movement.Movement.PanelGap;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.notice.Article;
import org.orbwright.paper.ShopSheet.Section;
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
        SetUp section = answers.section("Inlays").cautions(Step.INLAYING);
        section.heading("Pocket in the " + plan.face() + " panels")
                .measure("Depth, from the outer face", plan.pocket().depth())
                .length("Deepest that leaves the wanted floor", plan.pocket().deepest())
                .length("Inlay left at its rim after turning", plan.pocket().rimThickness());
        List<List<String>> rows = new ArrayList<>();
        for (InlaidPanel panel : plan.panels()) {
            rows.add(List.of(Integer.toString(panel.panel()), panel.motif() == null ? "" : panel.motif()));
        }
        return section.table(List.of("Panel", "Motif"), rows).build();
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
            section.count("Heavy panel", body.heavyPanel());
        }
    }
}
