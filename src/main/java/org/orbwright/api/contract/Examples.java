package org.orbwright.api.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.examples.Example;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.JsonResources;

/**
 * The contract's examples: the worked documents, and answers to one of them that were recorded from the service itself.
 * A test asks for each of them again and compares.
 */
final class Examples {
    /** The document whose parts the examples of the parameters name. */
    private static final String MAIN = "icosahedron-mixed";

    /** A document on a line. */
    static final String LINE = "{\"unit\":\"mm\",\"solid\":\"cube\",\"size\":{\"by\":\"EDGE\",\"value\":90},"
            + "\"panel\":{\"thickness\":20}}\n";

    private static final ObjectMapper JSON = new ObjectMapper();

    private Examples() {}

    /** Declares every worked document once. */
    static void addTo(Components components) {
        DesignLibrary.all()
                .forEach((name, design) -> components.addExample(name, example(design.title(), design.json())));
    }

    /** Refers to every worked document; pages fill in the first, which has every section. */
    static void addDesigns(MediaType body) {
        refer(MAIN, body);
        DesignLibrary.all().keySet().stream().filter(name -> !name.equals(MAIN)).forEach(name -> refer(name, body));
    }

    private static void refer(String name, MediaType body) {
        body.addExample(name, OASFactory.createExample().ref("#/components/examples/" + name));
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
