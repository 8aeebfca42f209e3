package org.orbwright.sheet;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.orbwright.design.Design;
import org.orbwright.wood.NamedWood;
import org.orbwright.wood.WoodRequest;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.Woods;

/** Which woods were taken for the names in a document, wherever a number depends on them. */
final class WoodFindings {
    private WoodFindings() {}

    /** The findings about the woods of the bands, each at the first band of its name. */
    static List<Finding> of(Design design) {
        return of(design, design.woodFields());
    }

    /**
     * The findings about named woods.
     *
     * @param fields JSON pointers to the names, by name
     */
    static List<Finding> of(Design design, Map<String, String> fields) {
        List<Finding> findings = overruled(design, fields.keySet());
        fields.forEach((name, field) -> design.woods()
                .named(name)
                .filter(named -> !named.others().isEmpty())
                .ifPresent(named -> findings.add(unclear(name, named, field))));
        return findings;
    }

    /** Notes the woods of the document, as far as they are used, whose numbers stand in place of those of the table. */
    private static List<Finding> overruled(Design design, Collection<String> used) {
        List<Finding> findings = new ArrayList<>();
        List<WoodRequest> woods = requireNonNullElse(design.request().woods(), List.of());
        Set<WoodRequest> stated = used.stream()
                .flatMap(name -> design.woods().named(name).stream())
                .map(NamedWood::stated)
                .collect(Collectors.toSet());
        for (int i = 0; i < woods.size(); i++) {
            WoodRequest wood = woods.get(i);
            List<String> numbers = overruled(wood);
            if (stated.contains(wood) && !numbers.isEmpty()) {
                findings.add(FindingCode.OWN_WOOD.note(
                        "The document states numbers of its own for " + wood.name() + ": " + String.join(", ", numbers)
                                + ". They are used in place of those of the table of woods.",
                        "/woods/" + i));
            }
        }
        return findings;
    }

    /** Which numbers a wood of the document states that the table has too. */
    private static List<String> overruled(WoodRequest wood) {
        Optional<WoodSpecies> table = Woods.TABLE.find(wood.name());
        List<String> numbers = new ArrayList<>();
        if (wood.radialCoefficient() != null && table.isPresent()) {
            numbers.add("radial coefficient");
        }
        if (wood.tangentialCoefficient() != null && table.isPresent()) {
            numbers.add("tangential coefficient");
        }
        if (wood.density() != null
                && table.filter(known -> known.specificGravity().isPresent()).isPresent()) {
            numbers.add("density");
        }
        return numbers;
    }

    private static Finding unclear(String name, NamedWood named, String field) {
        return FindingCode.WOOD_NAME_UNCLEAR.note(
                "The name " + name + " may mean several woods. The numbers here are those of "
                        + named.wood().name() + ", whose width moves most. It may also mean "
                        + Words.either(named.others()) + ". Write the name of the wood that you have.",
                field);
    }
}
