package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.COMMON_PRACTICE;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.ThrowingSupplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Designs;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;
import org.orbwright.source.Source;

/** A limit that a finding or a refusal states, followed as it is printed, clears what it was said about. */
@Source(INVARIANT)
class FollowedLimitsTest {
    private static final Pattern THICKNESS = Pattern.compile("Panels of at least ([0-9.]+) mm");
    private static final Pattern LAND = Pattern.compile("a land of at most ([0-9.]+) mm");
    private static final Pattern DIAMETER = Pattern.compile("for ([0-9.]+) mm at most");

    static List<String> solids() {
        return SolidCatalogue.summaries().stream().map(SolidSummary::name).toList();
    }

    private static double printed(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), text);
        return Double.parseDouble(matcher.group(1));
    }

    private static List<Finding> findings(Designs design) {
        return SheetCalculator.sphere(design.document()).findings();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theAdvisedThicknessLeavesTheWantedWall(String solid) {
        Designs thin = Designs.of(solid).thickness(8).minimumWall(6.1);
        String said = findings(thin).stream()
                .map(Finding::message)
                .filter(message -> THICKNESS.matcher(message).find())
                .findFirst()
                .orElseThrow();
        double largest = findings(thin).stream()
                .map(Finding::message)
                .filter(message -> THICKNESS.matcher(message).find())
                .mapToDouble(message -> printed(THICKNESS, message))
                .max()
                .orElseThrow(() -> new AssertionError(said));
        assertFalse(findings(thin.thickness(largest)).stream()
                .anyMatch(f -> f.code() == FindingCode.WALL_BELOW_MINIMUM || f.code() == FindingCode.BREAK_THROUGH));
    }

    @Test
    void theAdvisedLandClosesTheSeams() {
        Designs open = Designs.of("dodecahedron").thickness(40).land(25).diameter(190.0);
        String said = findings(open).stream()
                .filter(f -> f.code() == FindingCode.SEAMS_OPEN)
                .map(Finding::message)
                .findFirst()
                .orElseThrow();
        assertFalse(
                findings(open.land(printed(LAND, said))).stream().anyMatch(f -> f.code() == FindingCode.SEAMS_OPEN));
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theLargestSphereThatARefusalStatesIsAnswered(String solid) {
        Designs large = Designs.of(solid).diameter(5000.0);
        String said = assertRefused(large::build).getMessage();
        assertFalse(findings(large.diameter(printed(DIAMETER, said))).isEmpty());
    }

    private static ImpossibleDesignException assertRefused(ThrowingSupplier<Design> design) {
        return assertThrows(ImpossibleDesignException.class, design::get);
    }

    @Test
    @Source(CONTRACT)
    void aWallThatBreaksUnderTheToolIsAStopWhateverWasWanted() {
        double enough = SheetCalculator.sphere(Designs.of("cube").minimumWall(1).document())
                .sphere()
                .smallestThickness();
        List<Finding> found = findings(Designs.of("cube").minimumWall(1).thickness(enough));
        assertTrue(found.stream()
                .anyMatch(f -> f.code() == FindingCode.WALL_BELOW_MINIMUM && f.severity() == Severity.STOP));
    }

    @ParameterizedTest
    @CsvSource({
        "tetrahedron, TILT_BEYOND_SAW, true",
        "cube, TILT_BEYOND_SAW, false",
        "dodecahedron, TILT_BEYOND_SAW, false",
        "tetrahedron, MITRE_BEYOND_GAUGE, false",
        "triakis-octahedron, MITRE_BEYOND_GAUGE, true",
        "dodecahedron, MITRE_BEYOND_GAUGE, false"
    })
    @Source(
            value = COMMON_PRACTICE,
            text = "most saws tilt by up to 45 degrees, most mitre gauges turn by up to 60; no source")
    void settingsBeyondCommonMachinesAreNamed(String solid, FindingCode code, boolean found) {
        List<Finding> findings =
                SheetCalculator.angles(Designs.of(solid).document()).findings();
        assertEquals(found, findings.stream().anyMatch(f -> f.code() == code), findings::toString);
    }
}
