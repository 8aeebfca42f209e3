package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.movement.DimensionalChange;
import org.orbwright.movement.LaminationMovement;
import org.orbwright.movement.LaminationMovement.BandJoint;
import org.orbwright.movement.LaminationMovement.BandMovement;
import org.orbwright.movement.Movement;
import org.orbwright.movement.Movement.MoistureContents;
import org.orbwright.movement.Movement.Season;
import org.orbwright.movement.SpeciesMass;
import org.orbwright.quantity.Rounding;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** What the movement of a design gets wrong or nearly wrong. */
final class MovementFindings {
    /**
     * Step on the finished wall, or gap of a panel, in millimetres that disturbs. Common practice, no source: a
     * fingertip finds far smaller steps (R. S. Johansson and R. H. LaMotte, 1983: 0.00085 mm on polished silicon).
     */
    static final double DISTURBS = 0.05;
    /** Percentage points between the stock and the middle of the seasons. Common practice, no source. */
    private static final double FAR = 2;
    /** What is within this of a limit keeps it, in millimetres or percent: more than answers are rounded to. */
    private static final double EXACT = 2e-4;

    private static final int SHOWN_DECIMALS = 1;
    /** Where the request holds the design. */
    private final Design design;

    private final Movement movement;
    private final MoistureContents moisture;
    private final List<Finding> findings = new ArrayList<>();

    private MovementFindings(Design design, Movement movement) {
        this.design = design;
        this.movement = movement;
        this.moisture = movement.moisture();
    }

    static List<Finding> of(Design design, Movement movement) {
        MovementFindings finder = new MovementFindings(design, movement);
        finder.stock();
        finder.outside("stock", "from", finder.moisture.stock(), "/movement/stock");
        finder.outside("driest season", "to", finder.moisture.driest(), "/movement/home/driest");
        finder.outside("dampest season", "to", finder.moisture.dampest(), "/movement/home/dampest");
        finder.mismatches();
        StrainFindings.of(design, movement).forEach(finder.findings::add);
        movement.species().forEach(finder::unknown);
        return finder.findings;
    }

    private static String moisture(double percent) {
        return Rounding.plain(percent, SHOWN_DECIMALS) + " %";
    }

    private void stock() {
        double off = moisture.stock() - moisture.home();
        if (Math.abs(off) <= FAR + EXACT) {
            return;
        }
        boolean damp = off > 0;
        findings.add(FindingCode.STOCK_MOISTURE_FAR.warn(
                "The stock's moisture content of " + moisture(moisture.stock()) + " is "
                        + Rounding.plain(Math.abs(off), SHOWN_DECIMALS) + " percentage points "
                        + (damp ? "above" : "below") + " the middle of the home's " + moisture(moisture.driest())
                        + " to " + moisture(moisture.dampest())
                        + ". Before it is ripped, stack it with stickers between the boards in air as "
                        + (damp ? "dry" : "damp") + " as that of the home, until it stops "
                        + (damp ? "losing" : "gaining") + " weight.",
                "/movement/stock"));
    }

    private void outside(String whose, String way, double content, String field) {
        if (DimensionalChange.isOutside(content)) {
            boolean saturated = content > DimensionalChange.SATURATION;
            findings.add(FindingCode.MOISTURE_OUTSIDE_TABLE.note(
                    "The moisture content of the " + whose + " is " + moisture(content)
                            + ", but the coefficients hold for " + moisture(DimensionalChange.DRIEST) + " to "
                            + moisture(DimensionalChange.DAMPEST) + ". Movement " + way
                            + " it follows equation 13-3 of the Wood Handbook (FPL-GTR-190), which is approximate. It"
                            + " rests on the shrinkage from green to ovendry that the coefficients stand for."
                            + (saturated
                                    ? " Above " + moisture(DimensionalChange.SATURATION)
                                            + " wood does not move, so movement is counted " + way + " there."
                                    : ""),
                    field));
        }
    }

    private void mismatches() {
        for (int i = 0; i < design.panels().size(); i++) {
            LaminationMovement lamination = movement.laminations().get(i);
            for (BandJoint joint : lamination.joints()) {
                Double step = joint.wallStep();
                if (step != null && Math.abs(step) > DISTURBS + EXACT) {
                    mismatch(design.panels().get(i), lamination, joint);
                }
            }
        }
    }

    private void mismatch(Panel panel, LaminationMovement lamination, BandJoint joint) {
        BandMovement outer = lamination.bands().get(joint.band() - 1);
        BandMovement inner = lamination.bands().get(joint.band());
        boolean outerProud = joint.wallStep() > 0;
        findings.add(FindingCode.MOVEMENT_MISMATCH.warn(
                "In the " + (moisture.worse() == Season.DRIEST ? "driest" : "dampest") + " season "
                        + name(outerProud ? outer : inner) + " stands up to "
                        + design.say(Math.abs(joint.wallStep())) + " above " + name(outerProud ? inner : outer)
                        + " in the " + Words.half(panel.places()) + panel.face()
                        + " panels. A fingertip feels that step. Stock nearer to the home's moisture content makes it"
                        + " smaller. So do strips that are turned to move alike in thickness.",
                panel.lamination().pointer() + "/bands/" + joint.band() + "/species"));
    }

    private static String name(BandMovement band) {
        return "band " + band.band() + " (" + band.species() + ")";
    }

    private void unknown(SpeciesMass wood) {
        String species = wood.species();
        List<String> missing = missing(design.woods().find(species));
        if (!missing.isEmpty()) {
            boolean both = missing.size() > 1;
            findings.add(FindingCode.MOVEMENT_UNKNOWN.note(
                    "The " + String.join(" and ", missing) + (both ? " coefficients" : " coefficient") + " of "
                            + species
                            + (both ? " are" : " is") + " not known, so movements that depend on "
                            + (both ? "them" : "it") + " are left out. State " + (both ? "them" : "it") + " in woods."
                            + (both ? Words.known(WoodTable.similar(species, known -> true)) : ""),
                    design.woodFields().get(species)));
        }
        if (wood.solidsAtStock() == null) {
            findings.add(YieldFindings.unknownDensity(design, species));
        }
    }

    private static List<String> missing(Optional<WoodSpecies> wood) {
        List<String> missing = new ArrayList<>();
        if (wood.flatMap(known -> known.radialCoefficient().stream().boxed().findFirst())
                .isEmpty()) {
            missing.add("radial");
        }
        if (wood.flatMap(known -> known.tangentialCoefficient().stream().boxed().findFirst())
                .isEmpty()) {
            missing.add("tangential");
        }
        return missing;
    }
}
