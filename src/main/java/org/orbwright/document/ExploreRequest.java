package org.orbwright.document;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.quantity.Describe;

@Describe("A sweep: fields of the design are varied, and numbers of each sheet are answered as a row.")
public record ExploreRequest(
        @Describe("The fields that are varied. They are combined in all ways, the last one fastest.")
        @NotNull
        @Size(min = 1, max = 24)
        List<@NotNull @Valid VaryRequest> vary,

        @Describe(
                value = "The numbers of the sheet that are wanted, by JSON pointer into its JSON.",
                example = "[\"/sphere/thinnestWall\", \"/bands/faces/0/segments/0/upright/0/survival\"]")
        @NotNull
        @Size(min = 1, max = 24)
        List<@NotBlank @Size(max = 200) String> outputs) {

    /** The most designs that a sweep within one request may have. */
    public static final int MAX_DESIGNS = 10_000;

    public ExploreRequest {
        vary = Copies.of(vary);
        outputs = Copies.of(outputs);
    }

    @Describe("A field and the values that it takes: either a list of values, or a range in even steps.")
    public record VaryRequest(
            @Describe(
                    value = "The field, by JSON pointer into the document; it has to hold a number or to be left out.",
                    example = "\"/sphere/diameter\"")
            @NotBlank
            @Size(max = 200)
            String field,

            @Describe(
                    value = "The values, in the design's unit or in degrees.",
                    example = "[200, 203, 206]",
                    optional = true)
            @Size(min = 1, max = MAX_DESIGNS)
            List<@NotNull @DecimalMin("-100000") @DecimalMax("100000") Double> values,

            @Describe(value = "First value of a range.", example = "190", optional = true)
            @DecimalMin("-100000")
            @DecimalMax("100000")
            Double from,

            @Describe(value = "Last value of a range.", example = "205", optional = true)
            @DecimalMin("-100000")
            @DecimalMax("100000")
            Double to,

            @Describe(value = "Number of values in a range, both ends included.", example = "16", optional = true)
            @Min(2)
            @Max(MAX_DESIGNS)
            Integer count) {

        /** Copies the list of values. */
        public VaryRequest {
            values = Copies.of(values);
        }
    }
}
