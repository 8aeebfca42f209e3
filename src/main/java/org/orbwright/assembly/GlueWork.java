package org.orbwright.assembly;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("The glue and the time that one stage takes.")
public record GlueWork(
        @Describe(value = "Seams, or joints of a blank or a panel, that are glued.", example = "3", max = 1000)
        int seams,

        @Describe(value = "Their length together.", quantity = Quantity.LENGTH, example = "2160")
        double glueLength,

        @Describe(value = "Area of the faces that meet there.", quantity = Quantity.AREA, example = "64800")
        double glueArea,

        @Describe(value = "Glue for it.", quantity = Quantity.GRAMS, example = "11.016")
        double glueMass,

        @Describe(value = "Time to spread the glue and close them.", quantity = Quantity.MINUTES, example = "1.5")
        double time,

        @Describe(value = "Whether that fits into the open time.", example = "true")
        boolean fits) {

    static GlueWork of(Glue glue, int seams, double length, double area) {
        return new GlueWork(seams, length, area, glue.mass(area), glue.time(seams), seams <= glue.mostSeams());
    }
}
