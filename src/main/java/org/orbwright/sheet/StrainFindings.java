package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.movement.LaminationMovement.BandMovement;
import org.orbwright.movement.Movement;
import org.orbwright.movement.Movement.LengthChange;
import org.orbwright.movement.Movement.OpensAt;
import org.orbwright.movement.Movement.PanelGap;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.movement.Movement.Season;
import org.orbwright.notice.Article;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding.Severity;

/**
 * Whether glued panels are likely to survive the seasons. What would open a panel's joints is held by the glue, so the
 * wood is strained across its grain, by up to about as much as its bands would have moved if they lay free. Sound wood
 * yields at a strain of about 0.4 %, and strains of 0.9 % or more are necessary to make it fail, between 35 % and 65 %
 * relative humidity (The Structural Conservation of Panel Paintings, Getty Conservation Institute 1998, on the
 * transport of panels). Nothing is known here of the strength of a joint, nor of how far wood gives way in time.
 */
final class StrainFindings {
    private static final double YIELDS = 0.004;
    private static final double FAILS = 0.009;
    private static final int DEGREE_DECIMALS = 1;
    private static final int PERCENT_DECIMALS = 2;

    private final Design design;
    private final Movement movement;

    private StrainFindings(Design design, Movement movement) {
        this.design = design;
        this.movement = movement;
    }

    static List<Finding> of(Design design, Movement movement) {
        StrainFindings finder = new StrainFindings(design, movement);
        List<Finding> findings = new ArrayList<>();
        for (PanelMovement panel : movement.panels()) {
            // A mirror image is strained alike: its woods and widths are the same.
            if (!panel.mirrored() && panel.angleSumChange() != null) {
                finder.panel(panel, findings);
            }
        }
        return findings;
    }

    private void panel(PanelMovement panel, List<Finding> findings) {
        double dry = panel.angleSumChange().toDriest();
        double damp = panel.angleSumChange().toDampest();
        Season season = Math.abs(dry) >= Math.abs(damp) ? Season.DRIEST : Season.DAMPEST;
        PanelGap gap = season == Season.DRIEST ? panel.driest() : panel.dampest();
        if (gap.gap() <= MovementFindings.DISTURBS) {
            return;
        }
        double strain = strain(panel.face(), season);
        double degrees = Math.toDegrees(Math.max(Math.abs(dry), Math.abs(damp)));
        findings.add(FindingCode.PANEL_STRAINED.finding(
                strain > YIELDS ? Severity.WARN : Severity.NOTE,
                "In the " + (season == Season.DRIEST ? "driest" : "dampest") + " season the joints of "
                        + Article.with(panel.face()) + " panel would open by "
                        + Rounding.plain(degrees, DEGREE_DECIMALS)
                        + " degrees in all, which is " + design.say(gap.gap()) + " at the "
                        + (gap.opensAt() == OpensAt.RIM ? "rim" : "tips")
                        + ". Glue holds them together, and strains the wood across its grain by up to about "
                        + percent(strain) + ". " + survives(strain),
                "/movement/stock"));
    }

    /** The most that a lamination of a face kind moves, as a share of its width. */
    private double strain(String face, Season season) {
        return movement.laminations().stream()
                .filter(lamination -> lamination.face().equals(face))
                .mapToDouble(lamination -> strain(lamination.bands(), season))
                .max()
                .orElseThrow();
    }

    /** A band of tilted ones that no segment has a part of may be of a wood that is not known. */
    private static double strain(List<BandMovement> bands, Season season) {
        double width = 0;
        double change = 0;
        for (BandMovement band : bands) {
            LengthChange moved = band.widthChange();
            if (moved != null) {
                width += band.width();
                change += season == Season.DRIEST ? moved.toDriest() : moved.toDampest();
            }
        }
        return Math.abs(change) / width;
    }

    private static String survives(double strain) {
        String limits = "Sound wood yields at about " + percent(YIELDS) + ", and fails at " + percent(FAILS)
                + " or more (The Structural Conservation of Panel Paintings, Getty 1998). ";
        if (strain <= YIELDS) {
            return limits + "A sound panel is likely to survive this.";
        }
        String nearer = " Stock that is nearer to the home's moisture content lessens the strain.";
        return strain < FAILS
                ? limits + "A sound panel may survive it with a lasting set. A weak joint may open." + nearer
                : limits + "Do not count on the panel to survive: a joint may open, or the wood may crack." + nearer;
    }

    private static String percent(double share) {
        return Rounding.plain(100 * share, PERCENT_DECIMALS) + " %";
    }
}
