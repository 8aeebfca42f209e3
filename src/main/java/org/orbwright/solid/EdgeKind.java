package org.orbwright.solid;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("A kind of edges with the same length between the same face kinds.")
public record EdgeKind(
        @Describe(value = "One of the two face kinds.", example = "\"pentagon\"")
        String face,

        @Describe(value = "The other face kind, which may be the same.", example = "\"pentagon\"")
        String neighbour,

        @Describe(value = "Edges of this kind.", example = "30", min = 1, max = 180)
        int count,

        @Describe(value = "Length of the edge.", quantity = Quantity.UNIT_EDGE, example = "1")
        double length,

        @Describe(
                value = "Dihedral angle between the two faces, inside the solid.",
                quantity = Quantity.CATALOGUE_ANGLE,
                example = "116.5650511771",
                max = 180)
        double dihedral,

        @Describe(
                value = "Bevel on the panel of the first face kind: the angle between its face and the seam.",
                quantity = Quantity.CATALOGUE_ANGLE,
                example = "58.2825255885",
                max = 90)
        double bevel,

        @Describe(
                value = "Bevel on the panel of the neighbour.",
                quantity = Quantity.CATALOGUE_ANGLE,
                example = "58.2825255885",
                max = 90)
        double neighbourBevel) {}
