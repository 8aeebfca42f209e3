package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.turning.PathMove;
import org.orbwright.turning.ToolPath;

/** The way of a cutter over the sphere. */
@Describe("The way of a cutter over the sphere.")
public record PathAnswer(
        @Describe("The design as it was understood, with everything filled in that was left out.")
        DesignRequest design,

        ToolPath path,

        @Describe("What this part of the design gets wrong or nearly wrong, gravest first.")
        List<Finding> findings,

        @Describe("Standing advice on the hazards of the steps that this part is about.")
        List<Caution> cautions)
        implements Table {

    @Override
    public Class<PathMove> rowType() {
        return PathMove.class;
    }

    @Override
    public List<PathMove> rows() {
        return path.moves();
    }
}
