package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.DesignRequest.PanelRequest;
import org.orbwright.design.DesignRequest.SawRequest;
import org.orbwright.design.DesignRequest.SphereRequest;

/** A request with everything filled in that was left out, so that its author sees what was assumed. */
final class CompletedRequest {
    private CompletedRequest() {}

    static DesignRequest of(DesignRequest request, List<Panel> panels, double diameter) {
        // A diameter that was stated is repeated to the last bit: through millimetres and back it could change.
        Double stated = request.size().by() == SizeBy.SPHERE_DIAMETER
                ? request.size().value()
                : request.sphere().diameter();
        return new DesignRequest(
                request.name(),
                request.unit(),
                request.solid(),
                requireNonNullElse(request.copies(), 1),
                request.size(),
                new PanelRequest(
                        request.panel().thickness(),
                        requireNonNullElse(request.panel().land(), 0.0)),
                laminations(request, panels),
                new SawRequest(
                        request.saw().kerf(), requireNonNullElse(request.saw().endTrim(), 0.0)),
                request.blank(),
                new SphereRequest(
                        stated == null ? Double.valueOf(diameter) : stated,
                        request.sphere().turningAllowance(),
                        request.sphere().minimumWall()));
    }

    private static List<LaminationRequest> laminations(DesignRequest request, List<Panel> panels) {
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
