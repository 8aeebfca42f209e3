package org.orbwright.turning;

import static java.util.Objects.requireNonNullElse;

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
import org.orbwright.quantity.Quantity;

@Describe("What differs from panel to panel, and what holds the work. The axis and the speed are those of the section"
        + " turning.")
public record BalanceRequest(
        @Describe(
                value = "The panels whose wood differs from what the design says. A solid whose panels are all alike is"
                        + " in balance.",
                optional = true)
        @Size(max = 200)
        List<@NotNull @Valid OddPanelRequest> panels,

        @Describe(
                value = "Mass of the discs, screws and chuck that turn with the work, taken to be in balance"
                        + " themselves; 0 if left out.",
                quantity = Quantity.MASS,
                example = "0.9",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double mounting) {

    public BalanceRequest {
        panels = Copies.of(panels);
    }

    /** What is usual: panels that are all alike. */
    public static final BalanceRequest USUAL = new BalanceRequest(null, null);

    /** The same with everything filled in. */
    public BalanceRequest filled() {
        return new BalanceRequest(
                requireNonNullElse(panels, List.<OddPanelRequest>of()).stream()
                        .map(OddPanelRequest::filled)
                        .toList(),
                requireNonNullElse(mounting, 0.0));
    }

    @Describe("A panel that differs from what the design says.")
    public record OddPanelRequest(
            @Describe(
                    value = "Number of the panel: of the face in the list of the solid.",
                    quantity = Quantity.NUMBER,
                    example = "4")
            @NotNull
            @Min(1)
            @Max(200)
            Integer panel,

            @Describe(
                    value = "How many times as heavy its wood is as that of the others, for boards that differ; 1 if"
                            + " left out.",
                    example = "1.12",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("10")
            Double heavier,

            @Describe(value = "Woods that stand in it for those of the design; none if left out.", optional = true)
            @Size(max = 60)
            List<@NotNull @Valid OtherWoodRequest> woods) {

        public OddPanelRequest {
            woods = Copies.of(woods);
        }

        private OddPanelRequest filled() {
            return new OddPanelRequest(panel, requireNonNullElse(heavier, 1.0), requireNonNullElse(woods, List.of()));
        }
    }

    @Describe("A wood that stands for another.")
    public record OtherWoodRequest(
            @Describe(value = "The wood of the design.", example = "\"red alder\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(value = "The wood in its place.", example = "\"garden plum\"") @NotBlank @Size(max = 60)
            String by) {}
}
