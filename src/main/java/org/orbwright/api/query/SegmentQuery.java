package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/** Which kind of segment of a panel is asked for. */
public class SegmentQuery {
    @QueryParam("segment")
    @Parameter(description = "Letter of the kind of segment; the first of the face kind if left out.", example = "A")
    String segment;

    /** The segment of the kind, the first where none is named. */
    public Piece piece(Panel panel) {
        return DesignQuery.piece(panel, segment);
    }
}
