package org.orbwright.turning;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A design, what differs from panel to panel, and the axis that it turns about.
 *
 * @param design the design
 * @param panels the panels that differ from the design's, or null for none
 * @param densities densities that the caller knows, or null for those of the table of woods
 * @param axis the axis, or null for the one through the first face
 * @param mounting mass of what holds the work, in kilograms, or null for none
 * @param speed in revolutions per minute, or null for no forces
 */
@Describe("A design, what differs from panel to panel, and the axis that it turns about.")
public record BalanceRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "The panels that differ from what the design says; all others are alike. A solid whose panels"
                        + " are all alike is in balance.",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotNull @Valid OddPanelRequest> panels,

        @Describe(
                value = "Densities as they were weighed; for all other woods that of the table is taken, at 12 %"
                        + " moisture content.",
                optional = true)
        @Size(min = 1, max = 60)
        List<@NotNull @Valid WoodDensityRequest> densities,

        @Describe(value = "The axis; the one through face 0 if left out.", optional = true) @Valid
        AxisRequest axis,

        @Describe(
                value = "Mass of the discs, screws and chuck that turn with the work, taken to be in balance"
                        + " themselves;"
                        + " 0 if left out.",
                quantity = Quantity.MASS,
                example = "0.9",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double mounting,

        @Describe(
                value = "A speed to state the force at, in revolutions per minute; no forces if left out. It is the"
                        + " caller's, and stands for no speed that would be safe.",
                example = "400",
                optional = true)
        @DecimalMin("1")
        @DecimalMax("10000")
        Double speed) {

    /** Copies the lists. */
    public BalanceRequest {
        panels = copy(panels);
        densities = copy(densities);
    }

    private static <T> List<T> copy(List<T> list) {
        return list == null ? null : Collections.unmodifiableList(new ArrayList<>(list));
    }

    /** A panel that differs from the design's. */
    @Describe("A panel that differs from what the design says.")
    public record OddPanelRequest(
            @Describe(value = "Number of the panel: of the face in the list of the solid, from 0.", example = "3")
            @NotNull
            @Min(0)
            @Max(199)
            Integer panel,

            @Describe(
                    value = "The set of segments that it is made of; UPRIGHT if left out. INVERTED only where sawing"
                            + " gives two sets.",
                    example = "\"INVERTED\"",
                    optional = true)
            BandSet set,

            @Describe(
                    value = "How many times as heavy its wood is as that of the others, for boards that differ;"
                            + " 1 if left"
                            + " out.",
                    example = "1.12",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10")
            Double heavier,

            @Describe(value = "Woods that stand in it for those of the design; none if left out.", optional = true)
            @Size(min = 1, max = 60)
            List<@NotNull @Valid OtherWoodRequest> woods) {

        /** Copies the list. */
        public OddPanelRequest {
            woods = copy(woods);
        }
    }

    /** A wood that stands for another. */
    @Describe("A wood that stands for another.")
    public record OtherWoodRequest(
            @Describe(value = "The wood of the design.", example = "\"black walnut\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(value = "The wood in its place.", example = "\"white ash\"") @NotBlank @Size(max = 60)
            String by) {}

    /** The density of a wood. */
    @Describe("The density of a wood.")
    public record WoodDensityRequest(
            @Describe(value = "The wood.", example = "\"sugar maple\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(value = "Its density.", quantity = Quantity.DENSITY, example = "690")
            @NotNull
            @DecimalMin("50")
            @DecimalMax("2000")
            Double density) {}
}
