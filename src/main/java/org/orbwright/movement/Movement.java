package org.orbwright.movement;

import static org.orbwright.quantity.Quantity.ANGLE;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.PERCENT;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("How far the wood of a design moves with the seasons, and what its joints and its surface have to take."
        + " From 6 % to 14 % moisture content, changes follow equation 13-2 of the Wood Handbook (FPL-GTR-190). Beyond,"
        + " they follow its equation 13-3, which is approximate. Above 30 % wood does not move. What depends on a wood"
        + " whose movement is not known is left out.")
public record Movement(
        @Describe("The moisture contents that everything else follows from.")
        MoistureContents moisture,

        @Describe("Movement of each lamination, its bands and its segments.")
        List<LaminationMovement> laminations,

        @Describe(
                "What the joints between the segments of each face kind have to take; faces that are mirror images are"
                        + " listed on their own.")
        List<PanelMovement> panels,

        @Describe("Mass of each wood, for all copies.") List<SpeciesMass> species) {

    public Movement {
        laminations = List.copyOf(laminations);
        panels = List.copyOf(panels);
        species = List.copyOf(species);
    }

    @Describe("A season of the home: the driest or the dampest one.")
    public enum Season {
        /** The driest season. */
        DRIEST,
        /** The dampest season. */
        DAMPEST
    }

    @Describe("Where the joints of a panel would open if the glue let them. RIM: the segments have become too high for"
            + " their bases. TIPS: they have become too low. NOWHERE: nothing moves.")
    public enum OpensAt {
        RIM,
        TIPS,
        NOWHERE
    }

    @Describe("The moisture contents of stock and home, water over ovendry mass. Those that follow from temperature and"
            + " humidity are for Sitka spruce, midway between taking water up and giving it off (Wood Handbook,"
            + " FPL-GTR-282, p. 4-3 and 4-4). Other woods depart from it. Between taking up and giving off alone lie 1"
            + " to 4 percentage points (Swedish Wood).")
    public record MoistureContents(
            @Describe(value = "Moisture content of the stock.", quantity = PERCENT, example = "10")
            double stock,

            @Describe(value = "Moisture content in the driest season.", quantity = PERCENT, example = "6.5014")
            double driest,

            @Describe(value = "Moisture content in the dampest season.", quantity = PERCENT, example = "11.3185")
            double dampest,

            @Describe(value = "The middle between driest and dampest.", quantity = PERCENT, example = "8.91")
            double home,

            @Describe(
                    value = "The season to which the wood moves further from the stock; the driest if both are as far.",
                    example = "\"DRIEST\"")
            Season worse) {

        /** Share by which wood of a coefficient grows from the stock to the driest season. */
        double toDriest(double coefficient) {
            return DimensionalChange.strain(coefficient, stock, driest);
        }

        /** Share by which wood of a coefficient grows from the stock to the dampest season. */
        double toDampest(double coefficient) {
            return DimensionalChange.strain(coefficient, stock, dampest);
        }

        /** Share by which wood of a coefficient grows from the stock to the worse season. */
        double toWorse(double coefficient) {
            return worse == Season.DRIEST ? toDriest(coefficient) : toDampest(coefficient);
        }
    }

    @Describe("How a length changes with moisture; below 0 it shrinks.")
    public record LengthChange(
            @Describe(
                    value = "Change from the stock's moisture content to the driest season.",
                    quantity = LENGTH,
                    example = "-0.4051",
                    min = -1e18)
            double toDriest,

            @Describe(
                    value = "Change from the stock's moisture content to the dampest season.",
                    quantity = LENGTH,
                    example = "0.1527",
                    min = -1e18)
            double toDampest,

            @Describe(
                    value = "Change from the driest to the dampest season.",
                    quantity = LENGTH,
                    example = "0.5577",
                    min = -1e18)
            double betweenSeasons) {

        static LengthChange of(double toDriest, double toDampest) {
            return new LengthChange(toDriest, toDampest, toDampest - toDriest);
        }
    }

    @Describe("How an angle changes with moisture; below 0 it becomes smaller.")
    public record AngleChange(
            @Describe(
                    value = "Change from the stock's moisture content to the driest season.",
                    quantity = ANGLE,
                    example = "0.5122",
                    min = -1e18)
            double toDriest,

            @Describe(
                    value = "Change from the stock's moisture content to the dampest season.",
                    quantity = ANGLE,
                    example = "-0.1923",
                    min = -1e18)
            double toDampest,

            @Describe(
                    value = "Change from the driest to the dampest season.",
                    quantity = ANGLE,
                    example = "-0.7045",
                    min = -1e18)
            double betweenSeasons) {

        static AngleChange of(double toDriest, double toDampest) {
            return new AngleChange(toDriest, toDampest, toDampest - toDriest);
        }
    }

    @Describe("What the joints between the segments of one panel have to take.")
    public record PanelMovement(
            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(
                    value = "Whether these panels are mirror images of the first ones. Tilted bands lie differently in"
                            + " them.",
                    example = "false")
            boolean mirrored,

            @Describe(value = "Base distance at the stock's moisture content.", quantity = LENGTH, example = "39.3425")
            double baseDistance,

            @Describe(
                    value = "Change of the sum of all tip angles of the panel. Below 0 they no longer close the circle;"
                            + " above 0 they are too much for it.",
                    optional = true)
            AngleChange angleSumChange,

            @Describe(value = "What would open in the driest season.", optional = true)
            PanelGap driest,

            @Describe(value = "What would open in the dampest season.", optional = true)
            PanelGap dampest) {}

    @Describe("What would open between the segments of a panel in a season, if it all opened in one joint.")
    public record PanelGap(
            @Describe(
                    value = "Change of the sum of tip angles times the base distance.",
                    quantity = LENGTH,
                    example = "1.0551")
            double gap,

            @Describe(value = "Where it would open: at the rim or at the tips.", example = "\"TIPS\"")
            OpensAt opensAt) {}
}
