package org.orbwright.assembly;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("How the build is put together.")
public record AssemblyRequest(
        @Describe(
                value = "The glue and how fast it is used; what is common in shops is taken for what is left out.",
                optional = true)
        @Valid
        GlueRequest glue,

        @Describe(
                value = "Which panels are laid flat together. CAPS: those of each cap, to be taped and glued as one."
                        + " WHOLE: all of them. CAPS if left out.",
                example = "\"CAPS\"",
                optional = true)
        NetForm net) {

    /** The section of a document that states none. */
    public static final AssemblyRequest USUAL = new AssemblyRequest(null, null);

    /**
     * In minutes: the shortest that was read. White glue stays open for 3 to 5 minutes and yellow glue for 5 to 6, at
     * 20 degrees Celsius and 50 % relative humidity (Canadian Woodworking, "Glues").
     */
    private static final double CAUTIOUS_OPEN_TIME = 3;

    /** The same with everything filled in. */
    public AssemblyRequest filled() {
        GlueRequest asked = glue == null ? new GlueRequest(null, null, null) : glue;
        return new AssemblyRequest(
                new GlueRequest(
                        requireNonNullElse(asked.spread(), 200.0),
                        requireNonNullElse(asked.openTime(), CAUTIOUS_OPEN_TIME),
                        requireNonNullElse(asked.seamsPerMinute(), 3.0)),
                requireNonNullElse(net, NetForm.CAPS));
    }

    @Describe("The glue and how fast it is used. Spread and pace that are taken for what is left out are common"
            + " practice, without a source; the glue's data sheet knows better.")
    public record GlueRequest(
            @Describe(
                    value = "Glue on a square metre of joint; 200 if left out.",
                    quantity = Quantity.SPREAD,
                    example = "180",
                    optional = true)
            @DecimalMin("1")
            @DecimalMax("2000")
            Double spread,

            @Describe(
                    value = "Time from the first glue of a stage until its last joint has to be closed; 3 if left out,"
                            + " the shortest that was read: 3 to 5 for white glue and 5 to 6 for yellow glue, at"
                            + " 20 degrees Celsius and 50 % relative humidity (Canadian Woodworking, Glues).",
                    quantity = Quantity.MINUTES,
                    example = "8",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("1440")
            Double openTime,

            @Describe(
                    value = "Seams that are spread with glue and closed in a minute; 3 if left out.",
                    example = "2.5",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("60")
            Double seamsPerMinute) {}
}
