package org.orbwright.turning;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("Time for one sphere, by the caller's rates.")
public record TurningTime(
        @Describe("The stages in their order.") List<StageTime> stages,

        @Describe(value = "All of them, without drying.", quantity = Quantity.MINUTES, example = "232.867")
        double total) {

    public TurningTime {
        stages = List.copyOf(stages);
    }

    /** Stages of the work. */
    public enum TurningStage {
        /** The discs are fixed and the work is mounted. */
        MOUNTING,
        /** Wood is roughed away. */
        ROUGHING,
        /** The surface is finished with the tool. */
        FINISHING,
        /** The sphere is reversed. */
        REVERSING,
        /** The sphere is sanded. */
        SANDING,
        /** Coats are put on. */
        COATING
    }

    @Describe("Time of one stage.")
    public record StageTime(
            @Describe(value = "The stage.", example = "\"MOUNTING\"")
            TurningStage stage,

            @Describe(value = "Its time.", quantity = Quantity.MINUTES, example = "25")
            double time) {}
}
