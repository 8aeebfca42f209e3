package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.orbwright.assembly.AssemblyPlan;
import org.orbwright.assembly.AssemblyRequest;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.jig.JigPlan;
import org.orbwright.jig.JigRequest;
import org.orbwright.sheet.AssemblyAnswer;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.JigAnswer;
import org.orbwright.sheet.Sheet;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.sheet.TurningAnswer;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;

/**
 * What the capabilities answer for one design.
 *
 * @param design the design
 * @param sheet angles, segments, yield and sphere
 * @param jig the set-ups of the saw
 * @param assembly the order of gluing
 * @param turning the work on the lathe
 * @param findings all their findings, each once, gravest first
 * @param cautions all their cautions, each once
 */
record Answers(
        Design design,
        Sheet sheet,
        JigPlan jig,
        AssemblyPlan assembly,
        TurningPlan turning,
        List<Finding> findings,
        List<Caution> cautions) {
    /** The sheet prints no profiles of bands; these are the fewest. */
    private static final int STATIONS = 2;

    /**
     * Asks every capability for what is usual.
     *
     * @param request a design that keeps its Bean Validation constraints
     * @param pointer JSON pointer to it in the larger request
     * @throws ImpossibleDesignException if the design cannot exist
     */
    static Answers of(DesignRequest request, String pointer) {
        Design design = Design.of(request, pointer);
        Sheet sheet = SheetCalculator.sheet(design, STATIONS);
        JigAnswer jig = SheetCalculator.jig(new JigRequest(request, null, null));
        AssemblyAnswer assembly = SheetCalculator.assembly(new AssemblyRequest(request, null));
        TurningAnswer turning =
                SheetCalculator.turning(new TurningRequest(request, null, null, null, null, null, null, null));
        Map<String, Finding> findings = new LinkedHashMap<>();
        Stream.of(sheet.findings(), jig.findings(), assembly.findings(), turning.findings())
                .flatMap(List::stream)
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(finding -> findings.putIfAbsent(finding.message(), finding));
        Set<Caution> cautions = new LinkedHashSet<>(sheet.cautions());
        cautions.addAll(jig.cautions());
        return new Answers(
                design,
                sheet,
                jig.jig(),
                assembly.assembly(),
                turning.turning(),
                new ArrayList<>(findings.values()),
                new ArrayList<>(cautions));
    }

    /** An empty section. */
    SetUp section(String title) {
        return new SetUp(title, design.unit(), cautions);
    }
}
