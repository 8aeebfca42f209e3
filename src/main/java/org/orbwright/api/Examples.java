package org.orbwright.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.examples.Example;
import org.eclipse.microprofile.openapi.models.media.MediaType;

/**
 * The contract's examples: the worked designs, and answers to them that were recorded from the service itself. A test
 * asks for each of them again and compares.
 */
final class Examples {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String PATH = "planToolPath";
    private static final String STOCK = "planStock";
    private static final String TURNING = "planTurning";
    private static final String INLAYS = "planInlays";
    /** Operations that take the requests of another one: these are declared once, like the designs. */
    private static final Map<String, String> SHARED = Map.ofEntries(
            Map.entry(STOCK, STOCK),
            Map.entry("listCuts", STOCK),
            Map.entry("listPurchases", STOCK),
            Map.entry("drawBoard", STOCK),
            Map.entry(TURNING, TURNING),
            Map.entry("drawDisc", TURNING),
            Map.entry("drawTemplates", TURNING),
            Map.entry("buildDisc", TURNING),
            Map.entry(INLAYS, INLAYS),
            Map.entry("drawPocket", INLAYS),
            Map.entry("buildPocket", INLAYS),
            Map.entry(PATH, PATH),
            Map.entry("writeProgram", PATH));

    private Examples() {}

    /** Declares every worked design and every shared request once. */
    static void addTo(Components components) {
        DesignLibrary.all()
                .forEach((name, design) -> components.addExample(name, example(design.title(), design.json())));
        new TreeSet<>(SHARED.values())
                .forEach(operation -> requests(operation)
                        .forEach(
                                (name, json) -> components.addExample(name, example("A request about " + name, json))));
    }

    /** Refers to every worked design. */
    static void addDesigns(MediaType body) {
        refer(DesignLibrary.all().keySet(), body);
    }

    private static void refer(Set<String> names, MediaType body) {
        names.forEach(name -> body.addExample(name, OASFactory.createExample().ref("#/components/examples/" + name)));
    }

    private static Map<String, String> requests(String operation) {
        return JsonResources.in("requests/" + operation);
    }

    /** Adds the requests of an operation: those that it shares or its own, or where it has none the worked designs. */
    static void addRequests(String operation, MediaType body) {
        if (SHARED.containsKey(operation)) {
            refer(requests(SHARED.get(operation)).keySet(), body);
            return;
        }
        Map<String, String> own = requests(operation);
        own.forEach((name, json) -> body.addExample(name, example("A request about " + name, json)));
        if (own.isEmpty()) {
            addDesigns(body);
        }
    }

    /** Adds the recorded answers of an operation, or those that are declared once as a problem. */
    static void addAnswers(String operation, MediaType answer) {
        if (operation.equals("findDesign")) {
            addDesigns(answer);
            return;
        }
        Map<String, String> recorded = JsonResources.in("examples/" + operation);
        recorded.forEach((name, json) -> answer.addExample(name, example("The answer for " + name, json)));
    }

    private static Example example(String summary, String json) {
        try {
            return OASFactory.createExample().summary(summary).value(JSON.readValue(json, Object.class));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an example is not JSON: " + summary, e);
        }
    }
}
