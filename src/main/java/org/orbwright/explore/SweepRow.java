package org.orbwright.explore;

import java.util.List;
import java.util.Map;
import org.orbwright.sheet.Finding.Severity;

/**
 * One row of a sweep: a design and what was read off its sheet.
 *
 * @param inputs the values of the varied fields, as the caller states them
 * @param outputs the wanted numbers in the units of the answers, null where the sheet lacks one; empty for a refused
 *     design
 * @param codes the codes of the design's findings of each severity, each once; of a refused design none
 * @param problem why the design cannot exist, or null
 */
public record SweepRow(List<Double> inputs, List<Double> outputs, Map<Severity, List<String>> codes, String problem) {}
