package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.wood.NamedWood;

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
        List<Finding> findings = new ArrayList<>();
        fields.forEach((name, field) -> design.woods()
                .named(name)
                .filter(named -> !named.others().isEmpty())
                .ifPresent(named -> findings.add(unclear(name, named, field))));
        return findings;
    }

    private static Finding unclear(String name, NamedWood named, String field) {
        return new Finding(
                FindingCode.WOOD_NAME_UNCLEAR,
                Finding.Severity.NOTE,
                "The name " + name + " may mean several woods. The numbers here are those of "
                        + named.wood().name() + ", whose width moves most. It may also mean "
                        + Words.either(named.others()) + ". Write the name of the wood that you have.",
                field);
    }
}
