package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.quantity.Numbering;
import org.orbwright.quantity.Quantity;
import org.orbwright.quantity.Rounding;
import org.orbwright.turning.Balance;
import org.orbwright.turning.Balance.HeldBody;
import org.orbwright.turning.TurningRequest;

/** What the balance of the work on the lathe gets wrong or nearly wrong. */
final class BalanceFindings {
    private static final String PANELS = "/balance/panels";
    /** In millimetres. */
    private static final double COUNTERWEIGHT_AT = 100;

    private BalanceFindings() {}

    static List<Finding> of(TurningRequest turning, Design design, Balance balance) {
        List<Finding> findings = new ArrayList<>();
        add(findings, turning, design, balance.solid(), "glued-up solid");
        if (balance.sphere() != null) {
            add(findings, turning, design, balance.sphere(), "finished sphere");
        }
        return findings;
    }

    private static void add(List<Finding> findings, TurningRequest turning, Design design, HeldBody body, String name) {
        if (body.heavyPanel() == null) {
            return;
        }
        findings.add(FindingCode.OFF_BALANCE.note(
                "The centre of mass of the " + name + " lies " + design.say(body.offAxis())
                        + " off the axis, towards panel " + Numbering.of(body.heavyPanel()) + ". To balance it, put "
                        + opposite(body.imbalance() * Quantity.IMBALANCE.factor(design.unit())) + ".",
                PANELS));
        // The force is as large as the weight: it would lift a lathe that weighs no more than the work and its mount.
        if (body.forceToWeight() != null && body.forceToWeight() >= 1) {
            findings.add(FindingCode.IMBALANCE_LIFTS.warn(
                    "At " + Rounding.plain(turning.speed().turns(), 0) + " turns a minute the " + name + " pulls with "
                            + Rounding.plain(body.force(), 1) + " N to its heavy side, "
                            + Rounding.plain(body.forceToWeight(), 1)
                            + " times the weight of all that turns. Balance it or turn it much slower.",
                    "/turning/speed/turns"));
        }
    }

    /** A mass that can be weighed, at a distance that can be measured. */
    private static String opposite(double gramMillimetres) {
        double grams = gramMillimetres / COUNTERWEIGHT_AT;
        return Rounding.plain(gramMillimetres, 0) + " g mm on the opposite side, for example "
                + Rounding.plain(grams, grams < 10 ? 1 : 0) + " g at " + Rounding.plain(COUNTERWEIGHT_AT, 0) + " mm";
    }
}
