package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SparesRequest;
import org.orbwright.design.DesignRequest.SphereRequest;

/** A design with everything filled in that has a default, so that its author sees what was assumed. */
final class CompletedRequest {
    private final DesignRequest request;

    private CompletedRequest(DesignRequest request) {
        this.request = request;
    }

    /**
     * Fills a design in.
     *
     * @param panels its panels
     * @param sphere the diameter, allowance and wall that were worked out, in the design's unit
     */
    static DesignRequest of(DesignRequest request, List<Panel> panels, SphereRequest sphere) {
        CompletedRequest completed = new CompletedRequest(request);
        return new DesignRequest(
                request.name(),
                request.unit(),
                request.solid(),
                requireNonNullElse(request.copies(), 1),
                requireNonNullElse(request.sets(), Sets.TWINS),
                request.invertedPanels(),
                completed.spares(),
                request.size(),
                completed.panel(),
                request.laminations() == null ? null : completed.laminations(panels),
                request.woods(),
                completed.saw(),
                request.blank(),
                completed.sphere(sphere));
    }

    private SparesRequest spares() {
        SparesRequest asked = request.spares() == null ? new SparesRequest(null, null) : request.spares();
        return new SparesRequest(requireNonNullElse(asked.segments(), 0), requireNonNullElse(asked.strips(), 0));
    }

    private PanelRequest panel() {
        PanelRequest asked = request.panel() == null ? new PanelRequest(null, null) : request.panel();
        return new PanelRequest(
                asked.thickness(), requireNonNullElse(asked.land(), 0.0), requireNonNullElse(asked.layers(), 1));
    }

    private SawRequest saw() {
        SawRequest asked = request.saw();
        return asked == null ? null : new SawRequest(asked.kerf(), requireNonNullElse(asked.endTrim(), 0.0));
    }

    /** What was stated is repeated to the last bit: through millimetres and back it could change. */
    private SphereRequest sphere(SphereRequest workedOut) {
        SphereRequest asked = request.sphere() == null ? new SphereRequest(null, null, null) : request.sphere();
        Double stated =
                request.size().by() == SizeBy.SPHERE_DIAMETER ? request.size().value() : asked.diameter();
        return new SphereRequest(
                requireNonNullElse(stated, workedOut.diameter()),
                requireNonNullElse(asked.turningAllowance(), workedOut.turningAllowance()),
                requireNonNullElse(asked.minimumWall(), workedOut.minimumWall()));
    }

    private List<LaminationRequest> laminations(List<Panel> panels) {
        LaminationRequest[] completed = new LaminationRequest[panels.size()];
        for (Panel panel : panels) {
            int index = panel.lamination().index();
            LaminationRequest asked = request.laminations().get(index);
            List<BandRequest> bands = new ArrayList<>();
            for (int i = 0; i < asked.bands().size(); i++) {
                double width = panel.lamination().bands().get(i).width();
                BandRequest band = asked.bands().get(i);
                bands.add(
                        band.width() == null
                                ? new BandRequest(band.species(), request.unit().fromMillimetres(width))
                                : band);
            }
            completed[index] = new LaminationRequest(
                    panel.face(),
                    panel.places(),
                    requireNonNullElse(asked.bandAngle(), 0.0),
                    requireNonNullElse(asked.chevron(), false),
                    bands);
        }
        return List.of(completed);
    }
}
