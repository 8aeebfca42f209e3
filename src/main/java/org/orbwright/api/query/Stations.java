package org.orbwright.api.query;

import java.math.BigDecimal;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** The number of stations of a profile, as the query states it and the contract describes it. */
public final class Stations {
    /** The query parameter. */
    public static final String NAME = "stations";
    /** The fewest. */
    public static final int FEWEST = 2;
    /** The most. */
    public static final int MOST = 91;
    /** How many there are if none are asked for. */
    public static final String DEFAULT = "9";

    private static final String DESCRIPTION =
            "Stations of each band's profile along the base, from the edge middle to the corner.";

    private Stations() {}

    /** Completes the parameter of an operation that says no more of it than its name. */
    public static void describe(Parameter parameter) {
        parameter.setDescription(DESCRIPTION);
        parameter.setExample(Integer.valueOf(DEFAULT));
        parameter.setSchema(OASFactory.createSchema()
                .addType(SchemaType.INTEGER)
                .minimum(BigDecimal.valueOf(FEWEST))
                .maximum(BigDecimal.valueOf(MOST))
                .defaultValue(Integer.valueOf(DEFAULT)));
    }

    /** Reads the query parameter, null if there is none. */
    public static int parse(String query) {
        return Query.whole(NAME, query, FEWEST, MOST, DEFAULT);
    }
}
