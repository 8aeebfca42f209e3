package org.orbwright.segment;

import static org.orbwright.quantity.Quantity.BOARD_FEET;
import static org.orbwright.quantity.Quantity.CUBIC_METRES;
import static org.orbwright.quantity.Quantity.DENSITY;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.MASS;
import static org.orbwright.quantity.Quantity.NUMBER;
import static org.orbwright.quantity.Quantity.VOLUME;

import java.util.List;
import org.orbwright.design.Places;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Describe;

@Describe("What has to be glued up and sawn for the wanted copies, and what comes of it.")
public record Yield(
        @Describe("Blanks, strips and segments of each face kind.")
        List<LaminationYield> laminations,

        @Describe("The spheres that are made, those that are alike together.")
        List<SphereYield> spheres,

        @Describe("Stock and finished wood of each species, for all copies.")
        List<SpeciesYield> species) {

    /** Volume of a wood in all glued-up solids, in cubic millimetres. */
    public double solidVolume(String wood) {
        double volume = 0;
        for (SphereYield sphere : spheres) {
            for (SpeciesInSphere part : sphere.species()) {
                volume += part.species().equals(wood) ? part.solidVolume() * sphere.count() : 0;
            }
        }
        return volume;
    }

    @Describe("Blanks, strips and segments of one face kind.")
    public record LaminationYield(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Which of the panel's segments these are: all, or every other one.", example = "\"ALL\"")
            Places places,

            @Describe(
                    value = "Sets that one blank gives: 1 if the bands read the same from both edges or are tilted,"
                            + " else 2, upright and inverted.",
                    example = "2",
                    min = 1,
                    max = 2)
            int sets,

            @Describe(
                    value = "Blanks needed for all copies; left out where the blank is too short for one segment.",
                    example = "8",
                    optional = true,
                    max = 1e9)
            Integer blanks,

            @Describe(value = "Width of a blank across its bands.", quantity = LENGTH, example = "39.3425")
            double blankWidth,

            @Describe(value = "Length of a blank.", quantity = LENGTH, example = "720")
            double blankLength,

            @Describe(value = "Thickness of a blank: the panel's.", quantity = LENGTH, example = "30")
            double blankThickness,

            @Describe("The segments sawn, per kind.") List<SegmentYield> segments,

            @Describe("The strips to be ripped, per band from the base to the tip.")
            List<StripYield> strips) {}

    @Describe("The segments of one kind that are needed, sawn and left over.")
    public record SegmentYield(
            @Describe(value = "The kind of segment, by letter within the face kind.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether this is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Whole segments that one blank gives.", example = "8", max = 1e9)
            int perBlank,

            @Describe(
                    value = "Blanks for this kind; left out where the blank is too short for one segment.",
                    example = "8",
                    optional = true,
                    max = 1e9)
            Integer blanks,

            @Describe(
                    value = "How many of these blanks are turned end for end before the first cut, so that the sets"
                            + " even out.",
                    example = "0",
                    max = 1e9)
            int turnedBlanks,

            @Describe(value = "Upright segments needed, spares included.", example = "32", max = 1e9)
            int uprightNeeded,

            @Describe(value = "Inverted segments needed, spares included.", example = "32", max = 1e9)
            int invertedNeeded,

            @Describe(value = "Upright segments left over.", example = "0", max = 1e9)
            int uprightLeft,

            @Describe(value = "Inverted segments left over.", example = "0", max = 1e9)
            int invertedLeft) {}

    @Describe("The strips of one band.")
    public record StripYield(
            @Describe(value = "The band, from 1 at the base.", example = "1", min = 1, max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Width of the strip.", quantity = LENGTH, example = "17")
            double width,

            @Describe(
                    value = "Thickness of the strip: that of a layer of the panel.",
                    quantity = LENGTH,
                    example = "30")
            double thickness,

            @Describe(value = "Length of the strip: the blank's.", quantity = LENGTH, example = "720")
            double length,

            @Describe(
                    value =
                            "Strips of this band: one for each layer of each blank, and the spares; left out where the blank"
                                    + " is too short.",
                    example = "8",
                    optional = true,
                    max = 1e9)
            Integer count) {}

    @Describe("Spheres that are alike.")
    public record SphereYield(
            @Describe(value = "The segments that the sphere is made from.", example = "\"MIXED\"")
            SphereSet set,

            @Describe(
                    value = "Numbers of the panels that are made from inverted segments, as the catalogue numbers the"
                            + " solid's faces.",
                    quantity = NUMBER,
                    example = "[2,3,4,6,8,9,12,13,16,18]",
                    max = 200)
            List<Integer> invertedPanels,

            @Describe(value = "How many of them are made.", example = "1", max = 1000)
            int count,

            @Describe(
                    value = "Wood in one finished, hollow sphere; left out where the sphere breaks through to the"
                            + " hollow.",
                    quantity = VOLUME,
                    example = "2358594.8",
                    optional = true)
            Double volume,

            @Describe(
                    value = "Mass of one finished sphere; left out where the density of a wood is not known.",
                    quantity = MASS,
                    example = "1.5192",
                    optional = true)
            Double mass,

            @Describe("The woods in it.") List<SpeciesInSphere> species) {}

    @Describe("One wood in one sphere.")
    public record SpeciesInSphere(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Volume of it in the glued-up solid.", quantity = VOLUME, example = "2085480.8")
            double solidVolume,

            @Describe(
                    value = "Volume of it in the finished sphere.",
                    quantity = VOLUME,
                    example = "1113021.4",
                    optional = true)
            Double sphereVolume,

            @Describe(value = "Mass of it in the finished sphere.", quantity = MASS, example = "0.748", optional = true)
            Double sphereMass) {}

    @Describe("Stock and finished wood of one species, for all copies.")
    public record SpeciesYield(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Strips of it.", example = "16", optional = true, max = 1e9)
            Integer strips,

            @Describe(
                    value = "Length of all its strips together.",
                    quantity = LENGTH,
                    example = "11520",
                    optional = true)
            Double stripLength,

            @Describe(value = "Volume of its strips.", quantity = VOLUME, example = "4379183.9", optional = true)
            Double stripVolume,

            @Describe(value = "Volume of its strips.", quantity = BOARD_FEET, example = "1.8558", optional = true)
            Double stripBoardFeet,

            @Describe(value = "Volume of its strips.", quantity = CUBIC_METRES, example = "0.00437918", optional = true)
            Double stripCubicMetres,

            @Describe(
                    value = "Volume of it in all finished spheres.",
                    quantity = VOLUME,
                    example = "1113021.4",
                    optional = true)
            Double finishedVolume,

            @Describe(
                    value = "Density at 12 % moisture content, from the specific gravity of the wood table; left out"
                            + " where it is not known.",
                    quantity = DENSITY,
                    example = "672",
                    optional = true)
            Double density,

            @Describe(value = "Mass of its strips.", quantity = MASS, example = "2.9428", optional = true)
            Double stripMass,

            @Describe(
                    value = "Mass of it in all finished spheres.",
                    quantity = MASS,
                    example = "0.748",
                    optional = true)
            Double finishedMass) {}
}
