package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;

/**
 * A design whose widths were looked for.
 *
 * @param design the design with the widths found, in steps if a step was given; the last band of the rest has none
 * @param widths how they were found
 */
public record SolvedDesign(DesignRequest design, WidthSolution widths) {

    /** The same design with everything filled in but the widths of bands that take what is left. */
    public DesignRequest opened(DesignRequest filled) {
        List<LaminationRequest> laminations = new ArrayList<>();
        for (int i = 0; i < filled.laminations().size(); i++) {
            List<BandRequest> bands = new ArrayList<>();
            LaminationRequest full = filled.laminations().get(i);
            for (int j = 0; j < full.bands().size(); j++) {
                boolean open = design.laminations().get(i).bands().get(j).width() == null;
                BandRequest band = full.bands().get(j);
                bands.add(open ? new BandRequest(band.species(), null) : band);
            }
            laminations.add(full.withBands(bands));
        }
        return filled.withLaminations(laminations);
    }
}
