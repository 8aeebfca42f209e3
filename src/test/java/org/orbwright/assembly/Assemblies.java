package org.orbwright.assembly;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.orbwright.assembly.AssemblyPlan.Cap;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.assembly.AssemblyRequest.GlueRequest;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.SolidNames;

/** Plans of assembly for tests. */
public final class Assemblies {
    private Assemblies() {}

    static Stream<String> solids() {
        return SolidNames.each();
    }

    /** A small design of a solid: a shortest edge of 10 mm, panels 1 mm thick with a land of 0.2 mm. */
    static Designs small(String solid) {
        return Designs.of(solid).edge(10).thickness(1).land(0.2).allowance(0.1).minimumWall(0.1);
    }

    /** A request with 200 g/m2 and one seam a minute, so that the open time is the number of seams that fit. */
    public static Document document(Designs design, double mostSeams) {
        return design.document(Section.ASSEMBLY, request(mostSeams));
    }

    private static AssemblyRequest request(double mostSeams) {
        return new AssemblyRequest(new GlueRequest(200.0, mostSeams, 1.0), null);
    }

    static AssemblyPlan plan(Designs design, double mostSeams) {
        return AssemblyCalculator.plan(request(mostSeams), design.build());
    }

    /** A plan with so much time that nothing is split. */
    static AssemblyPlan plan(Designs design) {
        return plan(design, 1000);
    }

    /** The seams of all stages by number; one that occurs twice fails. */
    static Map<Integer, GluedSeam> seams(AssemblyPlan plan) {
        Map<Integer, GluedSeam> seams = new TreeMap<>();
        plan.stages()
                .forEach(stage -> stage.seams().forEach(seam -> {
                    if (seams.put(seam.seam(), seam) != null) {
                        throw new AssertionError("seam " + seam.seam() + " is glued twice");
                    }
                }));
        return seams;
    }

    static Cap cap(AssemblyPlan plan, int panel) {
        return plan.panels().get(panel).cap();
    }
}
