package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.INVARIANT;

import org.junit.jupiter.api.Test;
import org.orbwright.source.Source;

/** A request in inches that states its size by the finished sphere, and comes back completed. */
@Source(INVARIANT)
class CompletedInchesTest {

    /** Once broken: the diameter went through millimetres, came back a rounding off, and conflicted with the size. */
    @Test
    void completedRequestBySphereDiameterInInchesIsAcceptedAgain() {
        for (int hundredths = 500; hundredths <= 1200; hundredths++) {
            double value = hundredths / 100.0;
            Design once = DesignTest.inInches(SizeBy.SPHERE_DIAMETER, value).design();
            assertEquals(value, once.request().sphere().diameter());
            assertEquals(once.sphereRadius(), Design.of(once.request()).sphereRadius());
        }
    }
}
