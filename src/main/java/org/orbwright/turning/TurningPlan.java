package org.orbwright.turning;

import org.orbwright.quantity.Describe;

@Describe("From the glued-up solid to the finished sphere. It says what fits, not what is safe.")
public record TurningPlan(
        Holding holding,

        @Describe(value = "How cups hold the sphere; left out without cups.", optional = true)
        CupHold cups,

        Roughing roughing,
        SpeedLimits speeds,

        @Describe(value = "Sanding and coats; left out if they were not asked for.", optional = true)
        FinishPlan finish,

        @Describe(value = "Time for one sphere; left out without rates.", optional = true)
        TurningTime time) {}
