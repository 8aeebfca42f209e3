package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.diagnosis.Diagnoses.gap;
import static org.orbwright.diagnosis.Diagnoses.read;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.tolerance.PanelTolerance;
import org.orbwright.tolerance.SeamTolerance;
import org.orbwright.tolerance.Tolerance;
import org.orbwright.tolerance.Tolerances;

/** What the tolerance makes of an error, the diagnosis finds again. */
class InverseTest {
    private static final int CASES = 500;

    /** The diagnosis takes chords and the tolerance arcs, which differ by the angle squared over 24. */
    private static double secondOrder(double value, double angle) {
        return Math.abs(value) * (angle * angle / 24 * 1.02) + 1e-12;
    }

    @Test
    void diagnosisFindsTheErrorsOfFiveHundredSolids() {
        Random random = new Random(20260302);
        List<Solid> solids = List.copyOf(SolidCatalogue.all());
        for (int i = 0; i < CASES; i++) {
            Designs designs = Designs.of(
                            solids.get(random.nextInt(solids.size())).name())
                    .acrossFlats(100 + 300 * random.nextDouble())
                    .thickness(10 + 20 * random.nextDouble())
                    .land(5 * random.nextDouble());
            double tip = 2 * random.nextDouble() - 1;
            double bevel = 2 * random.nextDouble() - 1;
            Tolerance tolerance =
                    Tolerances.of(designs).tipAngle(tip, 0).bevel(bevel, 0).calculate();
            PanelTolerance panel =
                    tolerance.panels().get(random.nextInt(tolerance.panels().size()));
            SeamTolerance seam =
                    tolerance.seams().get(random.nextInt(tolerance.seams().size()));
            Diagnosis found = Diagnoses.of(designs)
                    .panel(panel.face(), read(panel.gap(), 0.01), panel.opensAt(), null)
                    .seam(List.of(seam.face(), seam.neighbour()), null, gap(seam.gap(), 0.01, seam.opensAt()))
                    .diagnose();
            double foundTip = Math.toDegrees(found.panel().tipAngleError().value());
            assertEquals(tip, foundTip, secondOrder(tip, panel.angleSum()));
            double foundBevel =
                    Math.toDegrees(found.seam().panels().get(1).bevelError().value());
            assertEquals(bevel, foundBevel, secondOrder(bevel, seam.angleSum()));
        }
    }
}
